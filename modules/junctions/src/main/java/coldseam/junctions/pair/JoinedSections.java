package coldseam.junctions.pair;

import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.SeamRun;
import coldseam.junctions.section.Shapes;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Two seams' sections, cut where both show nothing but the layers of their common surface, and put together there: the first as it
 * lies, the second turned over, so that x is the distance from the first seam's line.
 *
 * <p>Each layer is cut where it is undisturbed in both, which need not be at one place in all of them: a lintel may reach farther
 * up in the wall's structure than a floor's strip hangs down in the board outside it. The air indoors goes with the innermost layer, that outside
 * with the outermost.
 */
final class JoinedSections {

    /** m; less than this deep, something only touches. */
    private static final double TOUCH = 1e-6;

    /** m, past all that is drawn. */
    private static final double PAST = 1;

    /** Of a conductivity or a resistance, within which two are one. */
    private static final double ALIKE = 1e-9;

    private final SeamRun one;
    private final SeamRun other;
    private final double distance;
    private final ImmutableList<Strip> strips;
    private final double lacking;

    /** A layer as it is cut: from its inner to its outer face, and where its left half ends. */
    private record Strip(double from, double to, double cut) {}

    JoinedSections(SeamRun one, SeamRun other, double distance) {
        this.one = one;
        this.other = other;
        this.distance = distance;
        ImmutableList<Band.Stratum> layers = solved(one.surface());
        double worst = 0;
        MutableList<Strip> list = Lists.mutable.empty();
        for (int i = 0; i < layers.size(); i++) {
            Band.Stratum layer = layers.get(i);
            double from = i == 0 ? -far() : layer.solvedInside();
            double to = i == layers.size() - 1 ? far() : layer.solvedOutside();
            double left = reach(one, layer, from, to);
            double right = distance - reach(other, layer, from, to);
            worst = Math.max(worst, left - right);
            list.add(new Strip(from, to, cut(left, right)));
        }
        this.strips = list.toImmutable();
        this.lacking = worst;
    }

    /** m, by which the two would have to be farther apart to show an undisturbed place between them; zero where they do. */
    double lacking() {
        return lacking > TOUCH ? lacking : 0;
    }

    /** Whether both show one surface: its layers, and what is before it on both sides. */
    static boolean alike(SeamRun one, SeamRun other) {
        Band a = one.surface();
        Band b = other.surface();
        ImmutableList<Band.Stratum> first = solved(a);
        ImmutableList<Band.Stratum> second = solved(b);
        return first.size() == second.size()
                && first.notEmpty()
                && first.zip(second)
                        .allSatisfy(pair -> Math.abs(pair.getOne().solvedOutside()
                                                - pair.getTwo().solvedOutside())
                                        < TOUCH
                                && alike(
                                        pair.getOne().conductivity(),
                                        pair.getTwo().conductivity()))
                && alike(a.rsi(), b.rsi())
                && alike(a.rse(), b.rse())
                && a.exposure().equals(b.exposure())
                && one.heatFlow()
                        .environments()
                        .allSatisfy(each -> other.heatFlow()
                                .environments()
                                .noneSatisfy(there -> there.name().equals(each.name()) && !there.equals(each)));
    }

    private static boolean alike(double one, double other) {
        return Math.abs(one - other) <= ALIKE * Math.abs(one);
    }

    /** Of the heat flow. */
    Section heatFlow() {
        return joined(one.heatFlow(), other.heatFlow());
    }

    /** With 0.25 m²·K/W indoors. */
    Section surfaceTemperature() {
        return joined(one.surfaceTemperature(), other.surfaceTemperature());
    }

    private static ImmutableList<Band.Stratum> solved(Band surface) {
        return surface.strata().select(Band.Stratum::solved);
    }

    private double far() {
        return Lists.immutable
                        .of(one, other)
                        .flatCollect(SeamRun::faces)
                        .collect(face -> face.area().getEnvelopeInternal())
                        .collectDouble(box -> Math.max(
                                Math.max(Math.abs(box.getMinX()), Math.abs(box.getMaxX())),
                                Math.max(Math.abs(box.getMinY()), Math.abs(box.getMaxY()))))
                        .max()
                + distance
                + PAST;
    }

    /** Halfway between what both disturb, and no farther than where a section ends. */
    private double cut(double left, double right) {
        double least = Math.max(left, distance - other.end());
        double most = Math.min(right, one.end());
        return (least + most) / 2;
    }

    /** x, up to which something else is in a strip than the layer, with air beside it. */
    private double reach(SeamRun run, Band.Stratum layer, double from, double to) {
        double far = far();
        ImmutableList<Geometry> alike = run.faces()
                .select(face -> alike(face.conductivity(), layer.conductivity()))
                .collect(Composition.Face::area);
        double reach = reach(Shapes.difference(
                box(-far, layer.solvedInside(), run.end(), layer.solvedOutside()), Shapes.union(alike)));
        for (Geometry air : Lists.immutable.of(
                box(-far, from, run.end(), layer.solvedInside()), box(-far, layer.solvedOutside(), run.end(), to))) {
            for (Composition.Face face : run.faces()) {
                reach = Math.max(reach, reach(Shapes.intersection(face.area(), air)));
            }
        }
        return reach;
    }

    private static double reach(Geometry area) {
        Geometry thick = area.isEmpty() ? area : area.buffer(-TOUCH);
        return thick.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : thick.getEnvelopeInternal().getMaxX() + TOUCH;
    }

    private static Geometry box(double x0, double y0, double x1, double y1) {
        return y1 - y0 > TOUCH ? Shapes.FACTORY.toGeometry(new Envelope(x0, x1, y0, y1)) : Shapes.nothing();
    }

    private Section joined(Section first, Section second) {
        double far = far();
        Geometry left = Shapes.union(strips.collect(each -> box(-far, each.from(), each.cut(), each.to())));
        Geometry right = Shapes.union(strips.collect(each -> box(-far, each.from(), distance - each.cut(), each.to())));
        UnaryOperator<Point> turned = at -> new Point(distance - at.x(), at.y());
        return new Section(
                first.name() + " beside " + second.name(),
                first.symmetry(),
                regions(first, left, at -> at).newWithAll(regions(second, right, turned)),
                environments(first, second),
                boundaries(first, left, at -> at).newWithAll(boundaries(second, right, turned)),
                Lists.immutable.empty());
    }

    private static ImmutableList<Environment> environments(Section first, Section second) {
        return first.environments().newWithAll(second.environments()).distinct();
    }

    private static ImmutableList<Region> regions(Section of, Geometry within, UnaryOperator<Point> placed) {
        return of.regions()
                .flatCollect(region -> Shapes.within(region.outline(), within)
                        .collect(outline -> new Region(
                                region.material(),
                                region.conductivity(),
                                new Polygon(outline.corners().collect(placed::apply)))));
    }

    private static ImmutableList<Boundary> boundaries(Section of, Geometry within, UnaryOperator<Point> placed) {
        return of.boundaries()
                .flatCollect(boundary -> Shapes.within(boundary.path(), within)
                        .collect(path -> new Boundary(
                                boundary.environment(), path.collect(placed::apply), boundary.surfaceResistance())));
    }
}
