package coldseam.report.section;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.PointResult;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionEnd;
import coldseam.junctions.plan.SectionPlan.Piece;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Pictures of points: the half that was solved and its mirror image, turned as the surface lies, cut off a little past what
 * goes through.
 */
final class PointPictures {

    /** m, how much of the surface is shown beyond the widest body, at least and at most. */
    private static final double LEAST = 0.12;

    private static final double MOST = 0.3;

    /** Share of the surface's thickness that is shown beyond the widest body. */
    private static final double SHARE = 0.6;

    private final PointResult result;

    /** m, from the axis to where the picture is cut off. */
    private final double shown;

    /** m, height above the inner face from and to which it is shown. */
    private final double lowest;

    private final double highest;

    private PointPictures(PointResult result) {
        this.result = result;
        Section section = result.solution().section();
        double whole = result.radius();
        double widest = section.regions()
                .flatCollect(region -> region.outline().corners())
                .collectDouble(Point::x)
                .select(x -> x < whole - 1e-6)
                .maxIfEmpty(0);
        double thickness = result.setup().host().thickness();
        double beyond = Math.max(LEAST, Math.min(MOST, SHARE * thickness));
        this.shown = Math.min(whole, widest + beyond);
        this.lowest = -beyond;
        this.highest = thickness + beyond;
    }

    /**
     * The picture of a point.
     *
     * @param limits temperatures whose isotherms are marked
     */
    static SectionPicture of(PointResult result, ImmutableList<SectionPicture.Limit> limits, UnitSystem system) {
        return new PointPictures(result).picture(limits, system);
    }

    private SectionPicture picture(ImmutableList<SectionPicture.Limit> limits, UnitSystem system) {
        double indoor = result.setup().indoorTemperature();
        double outdoor = result.setup().outdoorTemperature();
        double coldest = outdoor + result.temperatureFactor() * (indoor - outdoor);
        ImmutableList<PaintedPart> parts = result.pieces().flatCollect(this::parts);
        Section whole = whole();
        return new SectionPicture(
                parts,
                Lists.immutable.empty(),
                PlanarSubdivision.of(parts.collect(PaintedPart::outline)),
                SectionEnd.of(whole),
                whole,
                this::isotherm,
                system,
                limits,
                Lists.immutable.empty(),
                Optional.empty(),
                Optional.empty(),
                Lists.immutable.empty(),
                Optional.of(new SectionPicture.Coldest(turned(result.coldest()), coldest)));
    }

    private ImmutableList<PaintedPart> parts(Piece piece) {
        return mirrored(piece.outline())
                .collect(outline -> PaintedPart.of(outline, piece.material(), piece.role(), piece.solved()));
    }

    /** Radius and height on paper: outdoors is up for roofs, down for floors, right for walls. */
    private Point turned(Point p) {
        return switch (result.setup().flow()) {
            case UPWARDS -> p;
            case DOWNWARDS -> new Point(p.x(), -p.y());
            case HORIZONTAL -> new Point(p.y(), p.x());
        };
    }

    private static Point mirror(Point p) {
        return new Point(-p.x(), p.y());
    }

    /** A rectangle of the solved half, with its mirror image; in one where it touches the axis. */
    private ImmutableList<Polygon> mirrored(Polygon outline) {
        double inner = outline.corners().collectDouble(Point::x).min();
        double outer = Math.min(shown, outline.corners().collectDouble(Point::x).max());
        double from = Math.max(lowest, outline.corners().collectDouble(Point::y).min());
        double to = Math.min(highest, outline.corners().collectDouble(Point::y).max());
        if (to <= from || outer <= inner) {
            return Lists.immutable.empty();
        }
        return inner <= 0
                ? Lists.immutable.of(rectangle(-outer, outer, from, to))
                : Lists.immutable.of(rectangle(inner, outer, from, to), rectangle(-outer, -inner, from, to));
    }

    private Polygon rectangle(double left, double right, double from, double to) {
        Point a = turned(new Point(left, from));
        Point b = turned(new Point(right, to));
        return Polygon.rectangle(
                Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    private Section whole() {
        Section section = result.solution().section();
        return new Section(
                section.name(),
                Symmetry.PLANAR,
                section.regions()
                        .flatCollect(region -> mirrored(region.outline())
                                .collect(outline -> new Region(region.material(), region.conductivity(), outline))),
                section.environments(),
                section.boundaries()
                        .collect(boundary -> new Boundary(
                                boundary.environment(), path(boundary.path()), boundary.surfaceResistance())),
                section.probes());
    }

    /** The lines of the half, and their mirror images. */
    private ImmutableList<ImmutableList<Point>> isotherm(double temperature) {
        ImmutableList<ImmutableList<Point>> lines =
                result.solution().field().isotherm(temperature).flatCollect(this::cut);
        return lines.newWithAll(lines.collect(line -> line.collect(PointPictures::mirror)))
                .collect(line -> line.collect(this::turned));
    }

    /** From the mirrored rim over the axis to the rim. */
    private ImmutableList<Point> path(ImmutableList<Point> half) {
        ImmutableList<Point> near = half.collect(p -> new Point(Math.min(p.x(), shown), within(p.y())));
        ImmutableList<Point> left = near.collect(PointPictures::mirror).toReversed();
        ImmutableList<Point> right = near.getFirst().x() == 0 ? near.drop(1) : near;
        return left.newWithAll(right).collect(this::turned);
    }

    private double within(double height) {
        return Math.max(lowest, Math.min(highest, height));
    }

    private boolean isShown(Point p) {
        return p.x() <= shown && p.y() >= lowest && p.y() <= highest;
    }

    /** The runs of a line that are shown, each up to the picture's rim. */
    private ImmutableList<ImmutableList<Point>> cut(ImmutableList<Point> line) {
        MutableList<ImmutableList<Point>> runs = Lists.mutable.empty();
        MutableList<Point> run = Lists.mutable.empty();
        for (int i = 0; i < line.size(); i++) {
            Point p = line.get(i);
            boolean here = isShown(p);
            if (here || i > 0 && isShown(line.get(i - 1))) {
                run.add(here ? p : atRim(line.get(i - 1), p));
            }
            if (here && run.size() == 1 && i > 0) {
                run.add(0, atRim(p, line.get(i - 1)));
            }
            if (!here || i == line.size() - 1) {
                if (run.size() > 1) {
                    runs.add(run.toImmutable());
                }
                run.clear();
            }
        }
        return runs.toImmutable();
    }

    /** Where the way from a shown point to one that is not leaves the picture. */
    private Point atRim(Point in, Point out) {
        double t = 1;
        t = Math.min(t, part(shown - in.x(), out.x() - in.x()));
        t = Math.min(t, part(highest - in.y(), out.y() - in.y()));
        t = Math.min(t, part(lowest - in.y(), out.y() - in.y()));
        return new Point(in.x() + t * (out.x() - in.x()), in.y() + t * (out.y() - in.y()));
    }

    private static double part(double room, double step) {
        return step != 0 && room / step >= 0 ? room / step : 1;
    }
}
