package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.corners.Corner;
import coldseam.envelope.shell.corners.Corners;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must be true of every shell, reckoned from its outlines alone: each house of {@link Shapes}. */
class ShellTruthsTest {

    /** m, m² and m³: corners lie on a lattice of a micrometre, nodes of a roof up to a tenth of a millimetre off. */
    private static final double NODES = 1e-3;

    private static final ImmutableMap<String, Shell> SHELLS = Shapes.SHELLS;

    private static Shell shell(String house) {
        return SHELLS.get(house);
    }

    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void surfacesAreTheirOutlines(String house) {
        Shell shell = shell(house);
        for (Surface surface : shell.surfaces().newWithAll(shell.steps())) {
            Point3 vector = Vectors.areaVector(surface.outline());
            assertEquals(Vectors.length(vector), surface.externalArea(), NODES, surface.name());
            assertEquals(1, Vectors.dot(Vectors.unit(vector), surface.normal()), 1e-6, surface.name());
            assertEquals(
                    Vectors.dot(Vectors.areaVector(surface.innerOutline()), surface.normal()),
                    surface.internalArea(),
                    NODES,
                    surface.name());
            for (Point3 each : surface.outline()) {
                assertEquals(0, height(surface, each), NODES, surface.name());
            }
        }
    }

    /** Whatever is within the walls is their thickness within. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void innerFacesLieBehindTheirBuildUp(String house) {
        for (Surface surface : shell(house).surfaces()) {
            double thickness = thickness(surface);
            for (Point3 each : surface.innerOutline()) {
                assertEquals(-thickness, height(surface, each), NODES, surface.name());
            }
        }
    }

    /** The divergence theorem over the outer faces. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void volumeIsWhatTheOutlinesEnclose(String house) {
        Shell shell = shell(house);
        double six = 0;
        for (Surface surface : shell.surfaces().newWithAll(shell.steps())) {
            ImmutableList<Point3> outline = surface.outline();
            for (int i = 1; i + 1 < outline.size(); i++) {
                six += Vectors.dot(outline.getFirst(), Vectors.cross(outline.get(i), outline.get(i + 1)));
            }
        }
        assertEquals(six / 6, shell.externalVolume(), 50 * NODES);
    }

    /** A gable stands in the plane of the wall it is said to stand over. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void gablesStandOverTheirWalls(String house) {
        ImmutableList<Surface> all = shell(house).surfaces();
        for (Surface gable : all.select(each -> each.name().startsWith("gable over "))) {
            String wall = gable.name().replaceAll("^gable over | \\(\\d+\\)$", "");
            all.select(each -> each.name().replaceAll(" \\(\\d+\\)$", "").equals(wall))
                    .forEach(each -> {
                        assertEquals(1, Vectors.dot(each.normal(), gable.normal()), 1e-6, gable.name());
                        assertEquals(0, height(each, gable.outline().getFirst()), NODES, gable.name());
                    });
        }
    }

    /** Both surfaces pass through the edge, which a door shortens, at its angle, and their inner faces meet where their thicknesses say. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void edgesAreWhereTheirSurfacesMeet(String house) {
        Shell shell = shell(house);
        ImmutableList<Edge> doors = shell.edges().select(ShellTruthsTest::underADoor);
        for (Edge edge : shell.edges()
                .select(each -> each.opening().isEmpty() && each.second().isPresent())) {
            Surface first = edge.first();
            String name = edge.name();
            double taken = doors.select(door -> on(edge, door.from()) && on(edge, door.to()))
                    .sumOfDouble(Edge::externalLength);
            assertEquals(
                    Vectors.length(Vectors.minus(edge.to(), edge.from())), edge.externalLength() + taken, NODES, name);
            assertEquals(0, height(first, edge.from()), NODES, name);
            assertEquals(0, height(first, edge.to()), NODES, name);
            Surface second = edge.second().orElseThrow();
            // Beside a jog of floors or decks the edge runs on the first one's outer face; indoors both are one plane.
            double jog = edge.angle() == 180 && Math.abs(first.normal().z()) > 0.999
                    ? thickness(first) - thickness(second)
                    : 0;
            assertEquals(jog, height(second, edge.from()), NODES, name);
            assertEquals(jog, height(second, edge.to()), NODES, name);
            double angle = Math.toRadians(edge.angle());
            assertEquals(-Math.cos(angle), Vectors.dot(first.normal(), second.normal()), 1e-5, name);
            if (edge.angle() != 180) {
                double a = thickness(first);
                double b = thickness(second);
                assertEquals((b + a * Math.cos(angle)) / Math.sin(angle), edge.firstSetBack(), NODES, name);
                assertEquals((a + b * Math.cos(angle)) / Math.sin(angle), edge.secondSetBack(), NODES, name);
                Point3 inwards =
                        Vectors.minus(inside(second), Vectors.times(Vectors.plus(edge.from(), edge.to()), 0.5));
                assertTrue(edge.angle() < 180 == Vectors.dot(first.normal(), inwards) < 0 || !convex(second), name);
            }
        }
    }

    /** A house that is turned by a few degrees and stands elsewhere is the same, to its surfaces' and edges' names. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void elsewhereItIsTheSame(String name) {
        House house = Shapes.house(name);
        if (!(house.body() instanceof Body.Storeys body)) {
            return;
        }
        Shell here = shell(name);
        Shell there = ShellBuilder.build(AnyAngleTest.with(house, AnyAngleTest.moved(body, p -> {
            Point2 turned = AnyAngleTest.turned(p, 7);
            return new Point2(turned.x() - 217.5, turned.y() + 83.25);
        })));
        AnyAngleTest.assertSame(AnyAngleTest.takeOff(here), AnyAngleTest.takeOff(there), NODES, name);
        assertEquals(
                here.surfaces().collect(ShellTruthsTest::nameOf).toSet(),
                there.surfaces().collect(ShellTruthsTest::nameOf).toSet());
        assertEquals(here.floorArea(), there.floorArea(), 10 * NODES);
        assertEquals(here.groundFloorArea(), there.groundFloorArea(), 10 * NODES);
        assertEquals(here.exposedPerimeter(), there.exposedPerimeter(), 10 * NODES);
    }

    /** Without the side of the house on which a part of something level lies: a few degrees further it may be another. */
    private static String nameOf(Surface surface) {
        return surface.name().replaceAll(", [a-z-]+ side( .*)?$", "");
    }

    private static double height(Surface surface, Point3 point) {
        return Vectors.dot(
                surface.normal(), Vectors.minus(point, surface.outline().getFirst()));
    }

    private static boolean underADoor(Edge edge) {
        return edge.opening().isPresent() && edge.kind().label().matches(".*threshold.*|.*at the door");
    }

    /** Whether a point lies over an edge: a door stands on the floor, as much higher as that is thick. */
    private static boolean on(Edge edge, Point3 point) {
        Point3 along = Vectors.minus(edge.to(), edge.from());
        Point3 to = Vectors.minus(point, edge.from());
        double share = Vectors.dot(to, along) / Vectors.dot(along, along);
        Point3 off = Vectors.minus(to, Vectors.times(along, share));
        return share > -1e-6 && share < 1 + 1e-6 && Math.hypot(off.x(), off.y()) < NODES && off.z() > -1 && off.z() < 1;
    }

    private static double thickness(Surface surface) {
        return surface.assembly().map(Assembly::thickness).orElse(0.0);
    }

    private static Point3 inside(Surface surface) {
        return Vectors.mean(surface.outline());
    }

    private static boolean convex(Surface surface) {
        ImmutableList<Point3> outline = surface.outline();
        for (int i = 0; i < outline.size(); i++) {
            Point3 a = outline.get(i);
            Point3 b = outline.get((i + 1) % outline.size());
            Point3 c = outline.get((i + 2) % outline.size());
            if (Vectors.dot(surface.normal(), Vectors.cross(Vectors.minus(b, a), Vectors.minus(c, b))) < -1e-9) {
                return false;
            }
        }
        return true;
    }

    /** Wherever ends of three edges come together there is a corner, which has them all. */
    @ParameterizedTest
    @MethodSource("coldseam.envelope.shell.Shapes#names")
    void threeEdgesMakeACorner(String house) {
        Shell shell = shell(house);
        ImmutableList<Edge> edges = shell.edges()
                .select(edge -> edge.second().isPresent() && edge.opening().isEmpty());
        ImmutableList<Corner> corners = Corners.of(shell);
        for (Point3 end : edges.flatCollect(edge -> List.of(edge.from(), edge.to()))) {
            ImmutableList<Edge> here = edges.select(edge -> near(edge.from(), end) || near(edge.to(), end));
            if (here.size() > 2) {
                assertTrue(
                        corners.anySatisfy(corner -> here.allSatisfy(edge -> corner.ends()
                                .anySatisfy(each -> each.edge().name().equals(edge.name())))),
                        () -> here.collect(Edge::name).makeString());
            }
        }
        for (Corner corner : corners) {
            assertTrue(corner.ends().size() > 2, corner.name());
            for (Corner.End end : corner.ends()) {
                assertEquals(1, Vectors.length(end.away()), 1e-9, corner.name());
            }
        }
    }

    private static boolean near(Point3 one, Point3 other) {
        return Vectors.length(Vectors.minus(one, other)) < 1e-6;
    }
}
