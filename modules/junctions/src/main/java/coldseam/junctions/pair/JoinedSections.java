package coldseam.junctions.pair;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.junctions.section.Band;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.SeamRun;
import coldseam.junctions.section.Shapes;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Two seams' sections, cut where both show the same, and put together there: the first as it lies, the second turned over, so that
 * x is the distance from the first seam's line; what comes of it lies as the first seam's own section does.
 *
 * <p>Each layer is cut where it is undisturbed in both, which need not be at one place in all of them: a lintel may reach farther
 * up in the wall's structure than a floor's strip hangs down in the board outside it. So is the air on either side, where eaves may
 * hang down before a window whose lintel ends below them. What both draw of one conductivity at one place, such as a lintel cast
 * with the slab over it, is no disturbance.
 */
final class JoinedSections {

    /** m; less than this deep, something only touches. */
    private static final double TOUCH = 1e-6;

    /** m before a face, within which what is drawn there lies on it. */
    private static final double ON_THE_FACE = 1e-4;

    /** m, past all that is drawn. */
    private static final double PAST = 1;

    /** Of a conductivity or a resistance, within which two are one. */
    private static final double ALIKE = 1e-9;

    private final SeamRun one;
    private final SeamRun other;
    private final double distance;
    private final double far;
    private final Geometry same;
    private final ImmutableList<Strip> strips;

    /**
     * A layer, or the air on one side, from its inner to its outer face.
     *
     * @param left x, up to which the first seam disturbs it
     * @param right x, from which on the second one does
     * @param cut where the first one's half ends
     */
    private record Strip(double from, double to, double left, double right, double cut) {}

    /**
     * @param one a seam
     * @param other beside it
     * @param distance m between their lines
     */
    JoinedSections(SeamRun one, SeamRun other, double distance) {
        this.one = one;
        this.other = other.turned(distance);
        this.distance = distance;
        this.far = far();
        this.same = same();
        ImmutableList<Band.Stratum> layers = solved(one.surface());
        double outside = layers.getLast().solvedOutside();
        this.strips = Lists.immutable
                .of(air(-far, 0))
                .newWithAll(layers.collect(each -> layer(each, outside)))
                .newWith(air(outside, far));
    }

    /** m, by which the two would have to be farther apart to be cut in two; zero where they can be. */
    double lacking() {
        double worst =
                strips.collectDouble(strip -> strip.left() - strip.right()).max();
        return worst > TOUCH ? worst : 0;
    }

    /** Where each one's line meets the inner and the outer face, in the joined section. */
    ImmutableList<Point> seams() {
        double outside = solved(one.surface()).getLast().solvedOutside();
        return Lists.immutable
                .of(new Point(0, 0), new Point(0, outside), new Point(distance, 0), new Point(distance, outside))
                .collect(one.page()::apply);
    }

    /** What one lays before a face lies on the layer behind it. */
    private Strip layer(Band.Stratum layer, double outside) {
        double from = layer.solvedInside();
        double to = layer.solvedOutside();
        double before = from <= 0 ? from - ON_THE_FACE : from;
        double behind = to >= outside ? to + ON_THE_FACE : to;
        double left = -far;
        double right = far;
        for (SeamRun run : Lists.immutable.of(one, other)) {
            boolean first = run == one;
            Geometry whole = first ? box(-far, from, one.end(), to) : box(other.end(), from, far, to);
            Geometry plain = Shapes.union(run.faces()
                    .select(face -> alike(face.conductivity(), layer.conductivity()))
                    .collect(Composition.Face::area));
            Geometry disturbed = Shapes.union(Lists.immutable.of(
                    Shapes.difference(whole, plain), drawn(run, before, from), drawn(run, to, behind)));
            Envelope reach = reach(disturbed);
            left = first && !reach.isNull() ? reach.getMaxX() : left;
            right = !first && !reach.isNull() ? reach.getMinX() : right;
        }
        return new Strip(from, to, left, right, (Math.max(left, other.end()) + Math.min(right, one.end())) / 2);
    }

    private Strip air(double from, double to) {
        Envelope first = reach(drawn(one, from, to));
        Envelope second = reach(drawn(other, from, to));
        double left = first.isNull() ? -far : first.getMaxX();
        double right = second.isNull() ? far : second.getMinX();
        return new Strip(from, to, left, right, (left + right) / 2);
    }

    /** What a section shows between two depths, where there is air beside the surface. */
    private Geometry drawn(SeamRun run, double from, double to) {
        Geometry strip = box(-far, from, far, to);
        return strip.isEmpty()
                ? strip
                : Shapes.union(run.faces().collect(face -> Shapes.intersection(face.area(), strip)));
    }

    /** Where both show something of one conductivity. */
    private Geometry same() {
        return Shapes.union(one.faces()
                .flatCollect(mine -> other.faces()
                        .select(theirs -> alike(mine.conductivity(), theirs.conductivity()))
                        .collect(theirs -> Shapes.intersection(mine.area(), theirs.area()))));
    }

    /** What a disturbance spans that only one of the two shows; null where nothing is left. */
    private Envelope reach(Geometry disturbed) {
        Geometry thick = Shapes.difference(disturbed, same).buffer(-TOUCH);
        Envelope reach = thick.getEnvelopeInternal();
        reach.expandBy(thick.isEmpty() ? 0 : TOUCH);
        return reach;
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
                + PAST;
    }

    private static Geometry box(double x0, double y0, double x1, double y1) {
        return y1 - y0 > TOUCH ? Shapes.FACTORY.toGeometry(new Envelope(x0, x1, y0, y1)) : Shapes.nothing();
    }

    private Section joined(Section first, Section second) {
        Geometry left = Shapes.union(strips.collect(each -> box(-far, each.from(), each.cut(), each.to())));
        Geometry right = Shapes.union(strips.collect(each -> box(each.cut(), each.from(), far, each.to())));
        Section joined = new Section(
                first.name() + " beside " + second.name(),
                first.symmetry(),
                regions(first, left).newWithAll(regions(second, right)),
                first.environments().newWithAll(second.environments()).distinct(),
                boundaries(first, true).newWithAll(boundaries(second, false)),
                Lists.immutable.empty());
        return SeamRun.laid(joined, one.page());
    }

    private static ImmutableList<Region> regions(Section of, Geometry within) {
        return of.regions()
                .flatCollect(region -> Shapes.within(region.outline(), within)
                        .collect(outline -> new Region(region.material(), region.conductivity(), outline)));
    }

    private ImmutableList<Boundary> boundaries(Section of, boolean first) {
        return of.boundaries()
                .flatCollect(boundary -> kept(boundary.path(), first)
                        .collect(path -> new Boundary(boundary.environment(), path, boundary.surfaceResistance())));
    }

    /** What of a way lies in one's half: it turns where the strips do, and what lies on a face belongs to the layer behind it. */
    private ImmutableList<ImmutableList<Point>> kept(ImmutableList<Point> path, boolean first) {
        MutableList<MutableList<Point>> ways = Lists.mutable.empty();
        for (int i = 0; i + 1 < path.size(); i++) {
            Point a = path.get(i);
            Point b = path.get(i + 1);
            MutableList<Point> stops = Lists.mutable.of(a, b);
            for (Strip strip : strips) {
                between(a.y(), b.y(), strip.to()).ifPresent(share -> stops.add(along(a, b, share)));
                between(a.x(), b.x(), strip.cut()).ifPresent(share -> stops.add(along(a, b, share)));
            }
            stops.sortThisByDouble(stop -> Math.hypot(stop.x() - a.x(), stop.y() - a.y()));
            for (int j = 0; j + 1 < stops.size(); j++) {
                Point from = stops.get(j);
                Point to = stops.get(j + 1);
                Point middle = along(from, to, 0.5);
                if (from.equals(to) || middle.x() <= strip(middle.y()).cut() != first) {
                    continue;
                }
                if (ways.isEmpty() || !ways.getLast().getLast().equals(from)) {
                    ways.add(Lists.mutable.of(from));
                }
                ways.getLast().add(to);
            }
        }
        return ways.<ImmutableList<Point>>collect(MutableList::toImmutable).toImmutable();
    }

    /** The one at a depth; of two, one on a face, that of the layer. */
    private Strip strip(double y) {
        int first = 1;
        int last = strips.size() - 2;
        for (int i = first; i <= last; i++) {
            if (y <= strips.get(i).to() + TOUCH) {
                return y < strips.get(i).from() - TOUCH ? strips.get(i - 1) : strips.get(i);
            }
        }
        return strips.getLast();
    }

    /** The share of the way from a to b at which a value is passed. */
    private static OptionalDouble between(double a, double b, double value) {
        return (a - value) * (b - value) < 0 ? OptionalDouble.of((value - a) / (b - a)) : OptionalDouble.empty();
    }

    private static Point along(Point a, Point b, double share) {
        return new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
    }
}
