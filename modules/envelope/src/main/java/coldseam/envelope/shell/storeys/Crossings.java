package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Lines of the plan over which a slope of one stack goes through a slope of another, or through one of its levels: parted
 * there, no cell has ends that cross.
 */
record Crossings(
        Stacks stacks,
        ImmutableList<Footprint> outer,
        StoreyLevels levels,
        StoreyParts parts,
        ImmutableList<Optional<RoofForm>> forms) {

    /** m of height within which two planes are one. */
    private static final double SAME = 5e-6;

    /** z of everything level that ends a storey above or below; none where there is one stack. */
    ImmutableList<Long> flats() {
        return stacks.all().size() == 1
                ? Lists.immutable.empty()
                : Lists.immutable
                        .fromStream(java.util.stream.IntStream.range(0, stacks.count())
                                .boxed())
                        .flatCollect(this::flats)
                        .toSortedSet()
                        .toImmutableList();
    }

    private ImmutableList<Long> flats(int k) {
        MutableList<Long> flats = Lists.mutable.empty();
        for (int part = 0; part <= stacks.stack(k).otherBases().size(); part++) {
            flats.add(levels.soffit(k, parts.underside(k, part)));
        }
        if (stacks.carries(k)) {
            flats.add(levels.takeOver().get(k));
            flats.add(levels.flat(k, parts.find(stacks.storey(k).terrace())));
            stacks.storey(k)
                    .lowerRoof()
                    .ifPresent(roof -> flats.add(levels.flat(k, parts.find(Optional.of(roof.assembly())))));
        } else {
            forms.get(k).ifPresent(form -> flats.add(form.eaves()));
        }
        return flats.toImmutable();
    }

    ImmutableList<Plan.Line> lines() {
        MutableList<Plan.Line> lines = Lists.mutable.empty();
        for (int k = 0; k < stacks.count(); k++) {
            for (int l = 0; l < stacks.count(); l++) {
                if (stacks.stack(k) != stacks.stack(l)) {
                    between(k, l, lines);
                }
            }
        }
        return lines.toImmutable();
    }

    private void between(int k, int l, MutableList<Plan.Line> lines) {
        ImmutableList<RoofForm.Sheet> slopes = sheets(k);
        RoofForm form = forms.get(k).orElse(null);
        Polygon other = outer.get(l).polygon();
        for (RoofForm.Sheet slope : slopes) {
            for (long level : flats(l).castToList()) {
                add(slope.part(), other, p -> Vertex.metres(form.height(slope.plane(), p) - level), k, lines);
            }
            if (k < l) {
                RoofForm opposite = forms.get(l).orElse(null);
                sheets(l)
                        .forEach(sheet -> add(
                                slope.part(),
                                sheet.part(),
                                p -> Vertex.metres(form.height(slope.plane(), p) - opposite.height(sheet.plane(), p)),
                                k,
                                lines));
            }
        }
    }

    private ImmutableList<RoofForm.Sheet> sheets(int k) {
        return forms.get(k).map(RoofForm::sheets).orElse(Lists.immutable.empty());
    }

    private static void add(
            Geometry one, Geometry other, ToDoubleFunction<Vertex> over, int storey, MutableList<Plan.Line> lines) {
        if (!one.getEnvelopeInternal().intersects(other.getEnvelopeInternal())) {
            return;
        }
        Geometry both = OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION);
        for (int g = 0; g < both.getNumGeometries(); g++) {
            if (both.getGeometryN(g) instanceof Polygon polygon && polygon.getArea() > 0) {
                MutableList<Vertex> ends = ends(polygon.getExteriorRing().getCoordinates(), over);
                if (ends.notEmpty()) {
                    Vertex to = ends.maxBy(end -> end.minus(ends.getFirst()).length());
                    Vertex start = ends.maxBy(end -> end.minus(to).length());
                    if (!start.equals(to)) {
                        lines.add(new Plan.Line(start, to, new Plan.Tag(Plan.Kind.CROSSING, storey, lines.size())));
                    }
                }
            }
        }
    }

    /** Where along an outline a height that is linear over it is zero; none where it is zero all over. */
    private static MutableList<Vertex> ends(Coordinate[] ring, ToDoubleFunction<Vertex> over) {
        MutableList<Vertex> ends = Lists.mutable.empty();
        int zeros = 0;
        for (int i = 0; i + 1 < ring.length; i++) {
            Vertex a = vertex(ring[i].x, ring[i].y);
            Vertex b = vertex(ring[i + 1].x, ring[i + 1].y);
            double atA = over.applyAsDouble(a);
            double atB = over.applyAsDouble(b);
            if (Math.abs(atA) <= SAME) {
                ends.add(a);
                zeros++;
            } else if (atA * atB < 0) {
                ends.add(a.toward(b, atA / (atA - atB)));
            }
        }
        return zeros == ring.length - 1 ? Lists.mutable.empty() : ends;
    }

    private static Vertex vertex(double x, double y) {
        return new Vertex(Vertex.units(x), Vertex.units(y), 0);
    }
}
