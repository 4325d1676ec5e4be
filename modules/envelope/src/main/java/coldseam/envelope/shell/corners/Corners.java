package coldseam.envelope.shell.corners;

import coldseam.envelope.Body;
import coldseam.envelope.Compass;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.envelope.shell.mesh.FacetNames;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * All vertices of a shell: where three or more edges of two surfaces meet. The sides of openings and the seams that only the
 * house file names make none.
 *
 * <p>Where walls differ in thickness a narrow step closes the outer shell, and edges that meet for the eye end at different
 * corners of it; they are one vertex. So are a deck's edge and that of the storey's floor behind it, which lie at other
 * heights of one wall.
 */
public final class Corners {

    /** m; the shell's corners lie on a lattice of 0.1 mm. */
    private static final double ONE = 0.001;

    /** m, by which the way over a point is longer than an edge that passes it: a millimetre beside one of some metres. */
    private static final double DETOUR = 1e-6;

    /** m; the widest end of a step at which two places are one vertex. */
    private static final double STEP = 0.25;

    /** m; how far above or below a vertex a floor's edge may end that bears in behind it. */
    private static final double FLOOR = 0.5;

    private final Shell shell;
    private final ImmutableList<Edge> edges;
    private final ImmutableList<Reach> reaches;

    private Corners(Shell shell) {
        this.shell = shell;
        this.edges = shell.edges()
                .select(edge -> edge.second().isPresent() && edge.opening().isEmpty());
        this.reaches = edges.collect(Reach::of);
    }

    /** The box round an edge outside of which nothing is at its ends, nor on the way between them: most places are outside. */
    private record Reach(Edge edge, Point3 low, Point3 high) {

        static Reach of(Edge edge) {
            Point3 from = edge.from();
            Point3 to = edge.to();
            // A way that is longer by d over a length l leaves it by less than √(l d).
            double beside = ONE + Math.sqrt(DETOUR * (distance(from, to) + DETOUR));
            Point3 by = new Point3(beside, beside, beside);
            return new Reach(
                    edge,
                    Vectors.minus(
                            new Point3(
                                    Math.min(from.x(), to.x()), Math.min(from.y(), to.y()), Math.min(from.z(), to.z())),
                            by),
                    Vectors.plus(
                            new Point3(
                                    Math.max(from.x(), to.x()), Math.max(from.y(), to.y()), Math.max(from.z(), to.z())),
                            by));
        }

        boolean holds(Point3 point) {
            return point.x() > low.x()
                    && point.x() < high.x()
                    && point.y() > low.y()
                    && point.y() < high.y()
                    && point.z() > low.z()
                    && point.z() < high.z();
        }
    }

    /** In the order of the shell's edges. */
    public static ImmutableList<Corner> of(Shell shell) {
        return new Corners(shell).all();
    }

    private ImmutableList<Corner> all() {
        MutableList<MutableList<Point3>> places = Lists.mutable.empty();
        edges.reject(Corners::ofFloor).forEach(edge -> {
            add(places, edge.from());
            add(places, edge.to());
        });
        edges.select(Corners::ofFloor).forEach(edge -> {
            addFloor(places, edge.from());
            addFloor(places, edge.to());
        });
        ImmutableList<Corner> found = places.collect(this::corner)
                .select(corner -> corner.ends().size() > 2)
                .toImmutable();
        ImmutableList<String> names = FacetNames.numbered(found.collect(Corner::name));
        return found.collectWithIndex((corner, i) ->
                        new Corner(names.get(i), corner.at(), corner.ends(), corner.surfaces(), corner.place()))
                .toImmutable();
    }

    private void add(MutableList<MutableList<Point3>> places, Point3 point) {
        MutableList<Point3> same = places.detect(
                place -> place.anySatisfy(other -> distance(other, point) < ONE || acrossStep(other, point)));
        if (same == null) {
            places.add(Lists.mutable.of(point));
        } else {
            same.add(point);
        }
    }

    private static boolean ofFloor(Edge edge) {
        return edge.kind().storeyFloor().isPresent();
    }

    /** A floor's edge ends where others do, or straight above or below where a level one does. */
    private void addFloor(MutableList<MutableList<Point3>> places, Point3 point) {
        MutableList<Point3> near = places.detect(place ->
                place.anySatisfy(other -> Math.hypot(other.x() - point.x(), other.y() - point.y()) < ONE
                        && Math.abs(other.z() - point.z()) < FLOOR));
        if (near == null) {
            places.add(Lists.mutable.of(point));
        } else {
            near.add(point);
        }
    }

    /** Whether two points are ends of one step's narrow side. */
    private boolean acrossStep(Point3 one, Point3 other) {
        return distance(one, other) < STEP && shell.steps().anySatisfy(step -> has(step, one) && has(step, other));
    }

    private static boolean has(Surface step, Point3 point) {
        return step.outline().anySatisfy(corner -> distance(corner, point) < ONE);
    }

    private static double distance(Point3 one, Point3 other) {
        return Vectors.length(Vectors.minus(one, other));
    }

    private Corner corner(MutableList<Point3> place) {
        MutableList<Corner.End> ends = Lists.mutable.empty();
        reaches.forEach(reach -> {
            if (place.noneSatisfy(reach::holds)) {
                return;
            }
            Edge edge = reach.edge();
            Point3 along = Vectors.unit(Vectors.minus(edge.to(), edge.from()));
            Point3 back = Vectors.times(along, -1);
            if (isAt(place, edge.from())) {
                ends.add(new Corner.End(edge, along));
            } else if (isAt(place, edge.to())) {
                ends.add(new Corner.End(edge, back));
            } else if (place.anySatisfy(point -> passes(edge, point))) {
                ends.add(new Corner.End(edge, back));
                ends.add(new Corner.End(edge, along));
            }
        });
        ImmutableList<Surface> around = shell.surfaces()
                .select(surface ->
                        ends.anySatisfy(end -> end.edge().first().name().equals(surface.name())
                                || end.edge().second().orElseThrow().name().equals(surface.name())));
        return new Corner(
                around.collect(Surface::name).makeString(" / "),
                place.getFirst(),
                ends.toImmutable(),
                around,
                words(around));
    }

    private static boolean isAt(MutableList<Point3> place, Point3 end) {
        return place.anySatisfy(point -> distance(point, end) < ONE);
    }

    private static boolean passes(Edge edge, Point3 point) {
        return distance(edge.from(), point) + distance(point, edge.to()) - distance(edge.from(), edge.to()) < DETOUR;
    }

    private static String words(ImmutableList<Surface> around) {
        ImmutableList<Surface> walls = around.select(surface -> surface.use() == Body.Use.WALL);
        Point3 out = walls.injectInto(Vectors.ZERO, (sum, wall) -> Vectors.plus(sum, wall.normal()));
        Optional<Surface> flat = around.detectOptional(surface -> surface.use() != Body.Use.WALL);
        String where = Math.hypot(out.x(), out.y()) < 0.1
                ? ""
                : Compass.of(out.x(), out.y()).word() + " corner, ";
        return where
                + flat.map(surface -> "at the " + surface.name())
                        .orElseGet(() ->
                                walls.collect(Surface::storey).distinct().makeString("between the ", " and the ", ""));
    }
}
