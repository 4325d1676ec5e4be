package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.corners.Corner;
import coldseam.envelope.shell.corners.CornerFrame;
import coldseam.envelope.shell.corners.Corners;
import java.util.List;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Corners of every shell against the solid that its surfaces enclose: each house of {@link Shapes}. */
class CornerTruthsTest {

    private static final ImmutableMap<String, Shell> SHELLS = Shapes.SHELLS;

    /** m from a corner at which it is asked whether there is a room: as near as surfaces are looked for. */
    private static final double NEAR = 0.005;

    /** How often the surfaces run round a point: 1 indoors, 0 outdoors, by the solid angles of their triangles. */
    private static double turns(Shell shell, Point3 at) {
        double sum = 0;
        for (Surface surface : shell.surfaces().newWithAll(shell.steps())) {
            ImmutableList<Point3> rays = surface.outline().collect(corner -> Vectors.minus(corner, at));
            for (int i = 1; i + 1 < rays.size(); i++) {
                sum += angle(rays.getFirst(), rays.get(i), rays.get(i + 1));
            }
        }
        return sum / (4 * Math.PI);
    }

    private static double angle(Point3 a, Point3 b, Point3 c) {
        double la = Vectors.length(a);
        double lb = Vectors.length(b);
        double lc = Vectors.length(c);
        return 2
                * Math.atan2(
                        Vectors.dot(a, Vectors.cross(b, c)),
                        la * lb * lc + Vectors.dot(a, b) * lc + Vectors.dot(b, c) * la + Vectors.dot(c, a) * lb);
    }

    /** In the octants that are rooms one is indoors, in the others not. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void roomsLieWhereTheFrameSays(String house) {
        Shell shell = SHELLS.get(house);
        for (Corner corner : Corners.of(shell)) {
            Optional<CornerFrame> found = CornerFrame.of(corner);
            if (found.isEmpty()) {
                continue;
            }
            ImmutableList<Point3> axes = found.get().axes();
            for (int octant = 0; octant < 8; octant++) {
                Point3 at = corner.at();
                for (int axis = 0; axis < 3; axis++) {
                    double way = (octant >> axis & 1) == 1 ? NEAR : -NEAR;
                    at = Vectors.plus(at, Vectors.times(axes.get(axis), way));
                }
                assertEquals(
                        found.get().rooms() >> octant & 1,
                        turns(shell, at),
                        1e-6,
                        corner.name() + ", octant " + octant);
            }
            for (int axis = 0; axis < 3; axis++) {
                assertEquals(axis, found.get().axis(axes.get(axis)), corner.name());
                assertEquals(axis, found.get().axis(Vectors.times(axes.get(axis), -1)), corner.name());
                assertTrue(found.get().grows(axes.get(axis)), corner.name());
                assertTrue(!found.get().grows(Vectors.times(axes.get(axis), -1)), corner.name());
            }
            assertEquals(axes.get(2).z() > 0, found.get().upwards(), corner.name());
            // The walls of the upright edge come first.
            corner.ends().detectOptional(end -> Math.abs(end.away().z()) > 0.9).ifPresent(end -> {
                assertEquals(end.edge().first().normal(), axes.get(0), corner.name());
                assertEquals(end.edge().second().orElseThrow().normal(), axes.get(1), corner.name());
            });
        }
    }

    /** It has a frame where all its surfaces and edges are upright or level and square to one another and no step ends, and no other. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void squareCornersHaveAFrame(String house) {
        Shell shell = SHELLS.get(house);
        for (Corner corner : Corners.of(shell)) {
            boolean atStep = shell.steps().flatCollect(Surface::outline).anySatisfy(each -> near(each, corner.at()));
            ImmutableList<Point3> ways = corner.surfaces()
                    .collect(Surface::normal)
                    .newWithAll(corner.ends().collect(Corner.End::away));
            boolean square = ways.allSatisfy(one -> ways.allSatisfy(other -> {
                double cosine = Math.abs(Vectors.dot(one, other));
                return cosine < 1e-3 || cosine > 1 - 1e-3;
            }));
            boolean plumb = ways.allSatisfy(way -> Math.abs(way.z()) < 1e-3 || Math.abs(way.z()) > 1 - 1e-3);
            if (!square || !plumb) {
                assertEquals(Optional.empty(), CornerFrame.of(corner), corner.name());
            } else if (!atStep && distinct(corner.surfaces().collect(Surface::normal)) == 3) {
                assertTrue(CornerFrame.of(corner).isPresent(), corner.name());
            }
        }
    }

    private static int distinct(ImmutableList<Point3> normals) {
        return normals.distinctBy(n -> List.of(Math.rint(n.x() * 500), Math.rint(n.y() * 500), Math.rint(n.z() * 500)))
                .size();
    }

    /** Every surface around it is beside one of its edges, and every edge ends there or passes. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void itsEdgesLieBetweenItsSurfaces(String house) {
        Shell shell = SHELLS.get(house);
        ImmutableList<Corner> corners = Corners.of(shell);
        assertEquals(corners.size(), corners.collect(Corner::name).distinct().size());
        for (Corner corner : corners) {
            for (Corner.End end : corner.ends()) {
                Edge edge = end.edge();
                assertTrue(reaches(shell, edge, corner.at()), corner.name() + ": " + edge.name());
                assertTrue(corner.surfaces().contains(edge.first()), corner.name());
                assertTrue(corner.surfaces().contains(edge.second().orElseThrow()), corner.name());
                Point3 along = Vectors.unit(Vectors.minus(edge.to(), edge.from()));
                assertEquals(1, Math.abs(Vectors.dot(along, end.away())), 1e-9, corner.name());
                boolean from = near(edge.from(), corner.at());
                boolean to = near(edge.to(), corner.at());
                if (from || to) {
                    assertEquals(from ? 1 : -1, Vectors.dot(along, end.away()), 1e-9, corner.name());
                    assertEquals(
                            1, corner.ends().count(each -> each.edge() == edge), corner.name() + ": " + edge.name());
                }
            }
            assertEquals(corner.ends().collect(end -> end.edge().angle()), corner.angles());
        }
    }

    /** Whether an edge passes a corner, or what lies within half a metre of it plumb or across the ends of a step does. */
    private static boolean reaches(Shell shell, Edge edge, Point3 corner) {
        ImmutableList<Point3> across = shell.steps()
                .select(step -> step.outline().anySatisfy(each -> near(each, corner)))
                .flatCollect(Surface::outline)
                .select(each -> Vectors.length(Vectors.minus(each, corner)) < 0.25);
        return across.newWith(corner).anySatisfy(each -> {
            Point3 along = Vectors.minus(edge.to(), edge.from());
            double share = Vectors.dot(along, Vectors.minus(each, edge.from())) / Vectors.dot(along, along);
            Point3 nearest = Vectors.plus(edge.from(), Vectors.times(along, Math.max(0, Math.min(1, share))));
            Point3 off = Vectors.minus(each, nearest);
            return Math.hypot(off.x(), off.y()) < 0.001 && Math.abs(off.z()) < 0.5;
        });
    }

    private static boolean near(Point3 one, Point3 other) {
        return Vectors.length(Vectors.minus(one, other)) < 0.001;
    }
}
