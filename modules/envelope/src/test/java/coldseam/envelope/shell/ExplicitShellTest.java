package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.fault.ShellException;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.junit.jupiter.api.Test;

/** Bodies of explicit surfaces: outer corners by name, letters below and above a plan's corners. */
class ExplicitShellTest {

    private static final double ROUND_OFF = 1e-9;

    private final MutableMap<String, Point3> points = Maps.mutable.empty();
    private final MutableList<Body.ExplicitSurface> surfaces = Lists.mutable.empty();

    /** The slab's underside lies at 0 m. */
    private final MutableList<Body.Level> levels =
            Lists.mutable.of(new Body.Level("ground floor", 0.5, 0, Optional.empty()));

    /** m, z of the ground all round. */
    private double ground;

    /** Points of ground that lies uneven. */
    private final MutableList<String> terrain = Lists.mutable.empty();

    private void point(String name, double x, double y, double z) {
        points.put(name, new Point3(x, y, z));
    }

    private void surface(String name, Body.Use use, String assembly, String... corners) {
        surfaces.add(new Body.ExplicitSurface(
                name,
                Lists.immutable.of(corners),
                assembly.isEmpty() ? Optional.empty() : Optional.of(assembly),
                use == Body.Use.FLOOR ? Exposure.ground() : Exposure.outdoors(),
                use,
                0,
                false));
    }

    private Shell build() {
        return ShellBuilder.build(Houses.house(new Body.Explicit(
                points.toImmutable(), surfaces.toImmutable(), ground, terrain.toImmutable(), levels.toImmutable())));
    }

    /** A room of 10 m × 4 m × 3 m under a terrace before a room of 10 m × 4 m under a roof that rises from 4 m to 6 m. */
    private void terraceBelowARoof() {
        double[][] plan = {{0, 0}, {10, 0}, {10, 4}, {0, 4}, {10, 8}, {0, 8}};
        String[] names = {"a", "b", "c", "d", "e", "f"};
        for (int i = 0; i < 6; i++) {
            point(names[i] + "0", plan[i][0], plan[i][1], 0);
        }
        point("a3", 0, 0, 3);
        point("b3", 10, 0, 3);
        point("c3", 10, 4, 3);
        point("d3", 0, 4, 3);
        point("e6", 10, 8, 6);
        point("f6", 0, 8, 6);
        surface("slab", Body.Use.FLOOR, "slab", "a0", "f0", "e0", "b0");
        surface("south wall", Body.Use.WALL, "wall", "a0", "b0", "b3", "a3");
        surface("east wall", Body.Use.WALL, "wall", "b0", "e0", "e6", "c3", "b3");
        surface("north wall", Body.Use.WALL, "wall", "e0", "f0", "f6", "e6");
        surface("west wall", Body.Use.WALL, "wall", "f0", "a0", "a3", "d3", "f6");
        surface("terrace", Body.Use.TERRACE, "deck", "a3", "b3", "c3", "d3");
        surface("roof", Body.Use.ROOF, "roof", "d3", "c3", "e6", "f6");
    }

    /** What the tool parts bears its whole's name as well; a comma in a name of the file's own says nothing. */
    @Test
    void aNameWithACommaIsNoPartOfAnother() {
        terraceBelowARoof();
        surfaces.replaceAll(each -> new Body.ExplicitSurface(
                each.name().replace("terrace", "roof, its low part"),
                each.points(),
                each.assembly(),
                each.exposure(),
                each.use(),
                0,
                false));
        assertEquals(
                Lists.immutable.of("roof"),
                build().surfaces()
                        .select(surface -> surface.names().contains("roof"))
                        .collect(Surface::name));
        ImmutableList<Surface> gable = ShellBuilder.build(Houses.house(Houses.body(
                        Houses.roof(Body.Roof.Form.GABLE, 40, 0, false),
                        Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"))))
                .surfaces();
        assertEquals(
                Lists.immutable.of("roof, south slope", "roof, north slope").toSet(),
                gable.select(surface -> surface.names().contains("roof"))
                        .collect(Surface::name)
                        .toSet());
    }

    @Test
    void terraceRunsIntoARoof() {
        terraceBelowARoof();
        Shell shell = build();
        ShellBuilderTest.assertClosed(shell);
        assertEquals(10 * (4 * 3 + 4 * 4.5), shell.externalVolume(), ROUND_OFF);
        assertEquals(10, ShellBuilderTest.length(shell, JunctionKind.TERRACE_TO_ROOF), ROUND_OFF);
        Edge edge = shell.edges().detect(e -> e.kind() == JunctionKind.TERRACE_TO_ROOF);
        assertEquals("terrace", edge.first().name());
        assertEquals("roof", edge.second().orElseThrow().name());
        assertEquals(180 + Math.toDegrees(Math.atan2(3, 4)), edge.angle(), 1e-9);
        assertEquals(10, ShellBuilderTest.length(shell, JunctionKind.HIGH_EAVES), ROUND_OFF);
        assertEquals(2 * 5, ShellBuilderTest.length(shell, JunctionKind.VERGE), ROUND_OFF);
        assertEquals(9.2 * 7.2, shell.floorArea(), ROUND_OFF);
        ShellPropertiesTest.assertSetBacks(shell);
    }

    @Test
    void sidesAreSplitWhereANeighbourEnds() {
        terraceBelowARoof();
        // The floor in two parts: corners c0 and d0 lie in the middle of the side walls' feet.
        surfaces.remove(0);
        surface("slab south", Body.Use.FLOOR, "slab", "a0", "d0", "c0", "b0");
        surface("slab north", Body.Use.FLOOR, "slab", "d0", "f0", "e0", "c0");
        Shell shell = build();
        ShellBuilderTest.assertClosed(shell);
        assertEquals(36, ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), ROUND_OFF);
        assertEquals(6, ShellBuilderTest.count(shell, JunctionKind.SLAB_EDGE), "no junction between the two slabs");
    }

    @Test
    void missingSurfaceIsNamedWithItsEdges() {
        terraceBelowARoof();
        surfaces.removeIf(s -> s.name().equals("terrace"));
        Shell shell = build();
        assertEquals(4, shell.openEdges().size());
        assertEquals(28, shell.openEdges().sumOfDouble(OpenEdge::length), ROUND_OFF);
        assertTrue(shell.openEdges().anySatisfy(e -> e.surfaces().equals(Lists.immutable.of("south wall"))));
        assertEquals(-40, shell.areaVectorSum().z(), ROUND_OFF);
        assertTrue(shell.openEdges().anySatisfy(e -> e.place().endsWith("where nothing meets south wall")));
    }

    @Test
    void surfaceGivenTwiceIsRefused() {
        terraceBelowARoof();
        surface("deck again", Body.Use.TERRACE, "deck", "a3", "b3", "c3", "d3");
        refusedOnce(
                "\"deck again\": it lies on \"terrace\" at [5.000 m, 2.000 m, 3.000 m]. Give what lies there once.");
    }

    @Test
    void faultsAreAllNamed() {
        terraceBelowARoof();
        point("x", 5, 5, 9);
        surface("kinked", Body.Use.WALL, "wall", "a0", "b0", "b3", "x");
        surface("line", Body.Use.WALL, "wall", "a0", "b0", "a0");
        ImmutableList<String> faults =
                assertThrows(ShellException.class, this::build).faults();
        assertEquals(2, faults.size(), faults.toString());
        assertTrue(faults.anySatisfy(f -> f.contains("\"kinked\"") && f.contains("do not lie in one plane")));
        assertTrue(faults.anySatisfy(f -> f.contains("\"line\"") && f.contains("lie on one line")));
    }

    @Test
    void clockwiseSurfacesAreRefused() {
        terraceBelowARoof();
        Body.ExplicitSurface south = surfaces.remove(1);
        surfaces.add(new Body.ExplicitSurface(
                south.name(), south.points().toReversed(), south.assembly(), south.exposure(), south.use(), 0, false));
        assertEquals(
                Lists.immutable.of(
                        "Surface \"south wall\": its points run clockwise, its neighbours' run counterclockwise seen from"
                                + " outdoors. Reverse them."),
                assertThrows(ShellException.class, this::build).faults());
        MutableList<Body.ExplicitSurface> reversed = Lists.mutable.empty();
        surfaces.clear();
        terraceBelowARoof();
        surfaces.forEach(s -> reversed.add(new Body.ExplicitSurface(
                s.name(), s.points().toReversed(), s.assembly(), s.exposure(), s.use(), 0, false)));
        surfaces.clear();
        surfaces.addAll(reversed);
        assertEquals(1, assertThrows(ShellException.class, this::build).faults().size());
    }

    private ImmutableList<String> refused() {
        return assertThrows(ShellException.class, this::build).faults();
    }

    private void refusedOnce(String... parts) {
        ImmutableList<String> faults = refused();
        assertEquals(1, faults.size(), faults.toString());
        for (String part : parts) {
            assertTrue(faults.getFirst().contains(part), faults.getFirst());
        }
    }

    /** A box of 4 m from a corner on, by names of its own. */
    private void box(String name, double x, double y, double z) {
        double[][] plan = {{0, 0}, {4, 0}, {4, 4}, {0, 4}};
        for (int i = 0; i < 4; i++) {
            point(name + i, x + plan[i][0], y + plan[i][1], z);
            point(name + "t" + i, x + plan[i][0], y + plan[i][1], z + 3);
        }
        surface(name + " floor", Body.Use.FLOOR, "slab", name + 0, name + 3, name + 2, name + 1);
        surface(name + " roof", Body.Use.ROOF, "roof", name + "t0", name + "t1", name + "t2", name + "t3");
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            surface(name + " wall " + i, Body.Use.WALL, "wall", name + i, name + j, name + "t" + j, name + "t" + i);
        }
    }

    private void change(String name, Body.Use use, Exposure exposure) {
        surfaces.replaceAll(s -> s.name().equals(name)
                ? new Body.ExplicitSurface(s.name(), s.points(), s.assembly(), exposure, use, 0, false)
                : s);
    }

    /** Lets all walls of a box face the same. */
    private void walls(String box, Exposure exposure) {
        for (int i = 0; i < 4; i++) {
            change(box + " wall " + i, Body.Use.WALL, exposure);
        }
    }

    @Test
    void twoBoxesApartAreTwoRooms() {
        box("a", 0, 0, 0);
        box("b", 10, 0, 0);
        Shell shell = build();
        assertTrue(shell.closed());
        assertEquals(2 * 48, shell.externalVolume(), ROUND_OFF);
    }

    @Test
    void twoBoxesThroughOneAnotherAreRefused() {
        box("a", 0, 0, 0);
        box("b", 2, 1, 1);
        assertTrue(
                refused()
                        .anySatisfy(
                                f -> f.contains("\"b wall 0\": it passes through \"a wall 1\" at [4.000 m, 1.000 m,")),
                refused().toString());
    }

    /** Half in one another with three pairs of walls in one plane: no side passes through any surface. */
    @Test
    void twoBoxesInOneLineThroughOneAnotherAreRefused() {
        box("a", 0, 0, 0);
        box("b", 2, 0, 0);
        assertEquals(
                Lists.immutable.of("b floor", "b roof", "b wall 0", "b wall 2"),
                refused()
                        .select(f -> f.contains("Give what lies there once"))
                        .collect(f -> f.substring(9, f.indexOf('"', 9)))
                        .toSortedList());
    }

    /** A wall between two heated rooms was counted as two outer walls. */
    @Test
    void aWallBetweenTwoRoomsIsNoPartOfTheShell() {
        box("a", 0, 0, 0);
        box("b", 4, 0, 0);
        refusedOnce(
                "\"b wall 3\": it lies on \"a wall 1\" at [4.000 m, 2.000 m, 1.500 m]. What stands between two heated rooms");
        surfaces.removeIf(s -> s.name().equals("a wall 1") || s.name().equals("b wall 3"));
        Shell shell = build();
        assertTrue(shell.closed());
        assertEquals(2 * 48, shell.externalVolume(), ROUND_OFF);
    }

    @Test
    void aRoomInARoomIsRefused() {
        box("a", 0, 0, 0);
        points.collectValues((name, p) -> new Point3(3 * p.x() - 4, 3 * p.y() - 4, 3 * p.z() - 3))
                .forEachKeyValue((name, p) -> point("x" + name, p.x(), p.y(), p.z()));
        surfaces.toImmutable()
                .forEach(s -> surface(
                        "x" + s.name(),
                        s.use(),
                        s.assembly().orElseThrow(),
                        s.points().collect(name -> "x" + name).toArray(new String[0])));
        levels.set(0, new Body.Level("ground floor", -2.5, 0, Optional.empty()));
        ground = -3;
        refusedOnce("\"a floor\": it and what it meets stand inside the room that \"xa floor\" bounds");
    }

    @Test
    void levelsFitTheBody() {
        box("a", 0, 0, 0);
        levels.set(0, new Body.Level("ground floor", 0, 0, Optional.empty()));
        refusedOnce(
                "Level \"ground floor\": it lies at 0.000 m, but the upper face of the lowest floor, \"a floor\", at 0.500 m");
        levels.set(0, new Body.Level("ground floor", 0.5, 0, Optional.empty()));
        levels.add(new Body.Level("attic", 3, 0.3, Optional.empty()));
        refusedOnce("Level \"attic\": it lies at 3.000 m, where no wall reaches; walls go from 0.000 m to 3.000 m");
    }

    @Test
    void parapetsAndGablesStandWhereTheyCan() {
        terraceBelowARoof();
        surfaces.replaceAll(s -> new Body.ExplicitSurface(
                s.name(), s.points(), s.assembly(), s.exposure(), s.use(), s.use() == Body.Use.ROOF ? 0.3 : 0, false));
        refusedOnce("\"roof\": it slopes by 36.9° and has a parapet-height");
        surfaces.replaceAll(s -> new Body.ExplicitSurface(
                s.name(),
                s.points(),
                s.assembly(),
                s.exposure(),
                s.use(),
                0,
                s.name().equals("east wall")));
        refusedOnce("\"east wall\": it is said to go on as the gable of a loft, but meets no ceiling");
    }

    /** A wall in the shape of a U is cut into three parts, one below and two above; rooms over the level count once. */
    @Test
    void wallsAreCutWhereTheyPassAFloor() {
        double[][] section = {{0, 0}, {10, 0}, {10, 6}, {7, 6}, {7, 2}, {3, 2}, {3, 6}, {0, 6}};
        for (int i = 0; i < section.length; i++) {
            point("s" + i, section[i][0], 0, section[i][1]);
            point("n" + i, section[i][0], 8, section[i][1]);
        }
        surface("south", Body.Use.WALL, "wall", "s0", "s1", "s2", "s3", "s4", "s5", "s6", "s7");
        surface("north", Body.Use.WALL, "wall", "n7", "n6", "n5", "n4", "n3", "n2", "n1", "n0");
        Body.Use[] uses = {
            Body.Use.FLOOR,
            Body.Use.WALL,
            Body.Use.ROOF,
            Body.Use.WALL,
            Body.Use.TERRACE,
            Body.Use.WALL,
            Body.Use.ROOF,
            Body.Use.WALL
        };
        for (int i = 0; i < 8; i++) {
            int j = (i + 1) % 8;
            String assembly = uses[i] == Body.Use.WALL ? "wall" : uses[i] == Body.Use.FLOOR ? "slab" : "roof";
            surface("side " + i, uses[i], assembly, "s" + j, "s" + i, "n" + i, "n" + j);
        }
        levels.add(new Body.Level("towers", 3, 0.3, Optional.empty()));
        Shell shell = build();
        ShellBuilderTest.assertClosed(shell);
        assertEquals(
                Lists.immutable.of("south, ground floor", "south, towers", "south, towers (2)"),
                shell.surfaces()
                        .collect(Surface::name)
                        .select(name -> name.startsWith("south"))
                        .toSortedList());
        // Two towers of 3 m by 8 m outside; the walls are 0.4 m thick.
        assertEquals(4 * 3 + 4 * 8, ShellBuilderTest.length(shell, JunctionKind.INTERMEDIATE_FLOOR), ROUND_OFF);
        assertEquals(9.2 * 7.2 + 2 * 2.2 * 7.2, shell.floorArea(), 1e-6);
        ShellPropertiesTest.assertSetBacks(shell);
        // The terrace, 2 m high and 0.45 m thick, covers what lies under a level of 1.8 m.
        levels.set(1, new Body.Level("towers", 1.8, 0.3, Optional.empty()));
        Shell lower = build();
        assertEquals("ground floor", ShellBuilderTest.surface(lower, "side 4").storey());
        assertEquals("towers", ShellBuilderTest.surface(lower, "side 2").storey());
        assertEquals("ground floor", ShellBuilderTest.surface(lower, "side 0").storey());
        // Beside the terrace's edge there is no room over that level.
        assertEquals(4 * 3 + 2 * 8, ShellBuilderTest.length(lower, JunctionKind.INTERMEDIATE_FLOOR), ROUND_OFF);
    }

    /** Beside a floor that hangs over at the level a wall goes down to its underside, elsewhere it is cut at the level. */
    @Test
    void aWallBesideAnOverhangIsCutBesideTheLowerRoom() {
        double[][] section = {{0, 0}, {9, 0}, {9, 3}, {10, 3}, {10, 6}, {0, 6}};
        for (int i = 0; i < section.length; i++) {
            point("s" + i, section[i][0], 0, section[i][1]);
            point("n" + i, section[i][0], 8, section[i][1]);
        }
        surface("south", Body.Use.WALL, "wall", "s0", "s1", "s2", "s3", "s4", "s5");
        surface("north", Body.Use.WALL, "wall", "n5", "n4", "n3", "n2", "n1", "n0");
        surface("slab", Body.Use.FLOOR, "slab", "s1", "s0", "n0", "n1");
        surface("east below", Body.Use.WALL, "wall", "s2", "s1", "n1", "n2");
        surface("overhang", Body.Use.OVERHANG, "slab", "s3", "s2", "n2", "n3");
        surface("east above", Body.Use.WALL, "wall", "s4", "s3", "n3", "n4");
        surface("roof", Body.Use.ROOF, "roof", "s5", "s4", "n4", "n5");
        surface("west", Body.Use.WALL, "wall", "s0", "s5", "n5", "n0");
        levels.add(new Body.Level("upper floor", 3.5, 0.3, Optional.empty()));
        Shell shell = build();
        ShellBuilderTest.assertClosed(shell);
        assertEquals(
                Lists.immutable.of("south, ground floor", "south, upper floor"),
                shell.surfaces().collect(Surface::name).select(name -> name.startsWith("south")));
        // The lower room's south, north and west side.
        assertEquals(9 + 9 + 8, ShellBuilderTest.length(shell, JunctionKind.INTERMEDIATE_FLOOR), ROUND_OFF);
    }

    @Test
    void aRoomInsideOutBesideARoomIsRefused() {
        box("a", 0, 0, 0);
        int own = surfaces.size();
        box("b", 10, 0, 0);
        for (int i = own; i < surfaces.size(); i++) {
            Body.ExplicitSurface s = surfaces.get(i);
            surfaces.set(
                    i,
                    new Body.ExplicitSurface(
                            s.name(), s.points().toReversed(), s.assembly(), s.exposure(), s.use(), 0, false));
        }
        refusedOnce("\"b floor\": it and what it meets enclose nothing");
    }

    @Test
    void usesFitTheWayASurfaceFaces() {
        box("a", 0, 0, 0);
        change("a roof", Body.Use.FLOOR, Exposure.ground());
        refusedOnce("\"a roof\"", "inclined 0° to the upward vertical, but a floor faces downwards");
        change("a roof", Body.Use.WALL, Exposure.outdoors());
        refusedOnce("\"a roof\"", "a wall stands");
        change("a roof", Body.Use.ROOF, Exposure.outdoors());
        change("a wall 1", Body.Use.TERRACE, Exposure.outdoors());
        refusedOnce("\"a wall 1\"", "inclined 90°", "a terrace is level");
        change("a wall 1", Body.Use.CEILING, Exposure.outdoors());
        refusedOnce("a ceiling under a loft faces upwards");
        change("a wall 1", Body.Use.ROOF, Exposure.outdoors());
        refusedOnce("a roof faces upwards, less than 90°");
    }

    /** A wall may lean; what one walks under is a floor or an overhang, with a build-up that is looked at from below. */
    @Test
    void anUndersideIsNoWall() {
        box("a", 0, 0, 0);
        point("at1", 8, 0, 3);
        point("at2", 8, 4, 3);
        refusedOnce("\"a wall 1\"", "inclined 143° to the upward vertical, but a wall stands, 26° to 135°");
        change("a wall 1", Body.Use.OVERHANG, Exposure.outdoors());
        assertTrue(build().closed());
        change("a wall 1", Body.Use.WALL, Exposure.outdoors());
        point("at1", 6.9, 0, 3);
        point("at2", 6.9, 4, 3);
        assertTrue(build().closed());
    }

    @Test
    void whatFacesTheGroundOrACrawlSpaceLiesWhereItCan() {
        box("a", 0, 0, 0);
        change("a wall 2", Body.Use.WALL, Exposure.ground());
        refusedOnce("\"a wall 2\": it faces the ground, but begins at 0.000 m and the ground lies at 0.000 m");
        change("a wall 2", Body.Use.WALL, new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1));
        refusedOnce("\"a wall 2\": it faces a crawl space, but no floor does");
        change("a wall 2", Body.Use.WALL, Exposure.outdoors());
        change("a roof", Body.Use.ROOF, Exposure.ground());
        refusedOnce("\"a roof\": it faces the ground, but only floors and walls can");
    }

    @Test
    void aFloorOnTheGroundLiesNoHigherThanItsFill() {
        box("a", 0, 0, 1.2);
        levels.set(0, new Body.Level("ground floor", 1.7, 0, Optional.empty()));
        assertTrue(build().closed());
        surfaces.clear();
        box("a", 0, 0, 1.21);
        levels.set(0, new Body.Level("ground floor", 1.71, 0, Optional.empty()));
        refusedOnce(
                "\"a floor\": it lies on the ground, but its underside is at 1.210 m",
                "at 0.000 m; up to 1.2 m of fill");
    }

    /** It counted as in the ground up to its head. */
    @Test
    void aWallInTheGroundEndsWhereTheGroundDoes() {
        box("a", 0, 0, -1);
        levels.set(0, new Body.Level("ground floor", -0.5, 0, Optional.empty()));
        change("a wall 2", Body.Use.WALL, Exposure.ground());
        refusedOnce(
                "\"a wall 2\": it faces the ground, but rises to 2.000 m and the ground lies at 0.000 m. Part it there");
        surfaces.clear();
        box("a", 0, 0, -3);
        levels.set(0, new Body.Level("ground floor", -2.5, 0, Optional.empty()));
        walls("a", Exposure.ground());
        assertTrue(build().closed());
    }

    /** It was as dry and as cold as one in the open, down to a cellar's floor. */
    @Test
    void aWallOutdoorsStandsNoDeeperInTheGroundThanAFootOfOne() {
        ground = 1;
        box("a", 0, 0, 0);
        assertTrue(build().closed());
        ground = 1.01;
        assertEquals(4, refused().size());
        assertTrue(refused()
                .contains(
                        "Surface \"a wall 2\": it faces outdoors from 0.500 m on, but the ground beside [4.000 m, 4.000 m] lies at"
                                + " 1.010 m. Part it there and let what is below face the ground, or correct ground-level; ground that lies"
                                + " lower beside some walls is given by points."));
    }

    /** The south wall stands in the open, beside it the ground rises to the north. */
    @Test
    void aWallOutdoorsIsPartedAlongASlope() {
        box("a", 0, 0, 0);
        for (int i = 0; i < 4; i++) {
            Point3 foot = points.get("a" + i);
            point("g" + i, foot.x(), foot.y(), foot.y() > 0 ? 1.01 : 0);
            terrain.add("g" + i);
        }
        assertEquals(
                Lists.immutable.of("a wall 1", "a wall 2", "a wall 3"),
                refused().collect(fault -> fault.split("\"")[1]).toSortedList());
        assertTrue(refused().getLast().endsWith("or correct the points of ground."));
    }

    @Test
    void anOutlineThatCrossesItselfIsRefused() {
        terraceBelowARoof();
        point("g", 2, 0, 8);
        surface("kite", Body.Use.WALL, "wall", "a0", "b3", "b0", "g", "a3");
        assertTrue(
                refused().anySatisfy(f -> f.contains("\"kite\": its outline crosses or touches itself")),
                refused().toString());
    }

    /** A box of 6 m whose south wall is of two parts, one over the other, in one plane. */
    private void stacked(double ground, String low, Exposure lowFaces, String high, Exposure highFaces) {
        surfaces.clear();
        points.clear();
        box("a", 0, 0, -ground);
        point("w", 0, 0, 1 - ground);
        point("e", 4, 0, 1 - ground);
        surfaces.removeIf(each -> each.name().matches("a wall [013]"));
        surface("a wall 1", Body.Use.WALL, "wall", "a1", "a2", "at2", "at1", "e");
        surface("a wall 3", Body.Use.WALL, "wall", "a3", "a0", "w", "at0", "at3");
        surface("low", Body.Use.WALL, low, "a0", "a1", "e", "w");
        surface("high", Body.Use.WALL, high, "w", "e", "at1", "at0");
        change("low", Body.Use.WALL, lowFaces);
        change("high", Body.Use.WALL, highFaces);
        if (highFaces.equals(Exposure.ground())) {
            walls("a", highFaces);
        }
        levels.set(0, new Body.Level("ground floor", 0.5 - ground, 0, Optional.empty()));
    }

    private String between() {
        return build().edges()
                .select(edge -> edge.name().contains("low") && edge.name().contains("high"))
                .collect(edge -> edge.kind().label() + ", " + edge.first().name() + " first")
                .makeString();
    }

    /** Where a wall leaves the ground and is built otherwise above is a foundation's top; within the ground, or above it, a change. */
    @Test
    void aFoundationEndsWhereItsWallLeavesTheGround() {
        Exposure in = Exposure.ground();
        Exposure out = Exposure.outdoors();
        stacked(1, "thin", in, "wall", out);
        assertEquals(JunctionKind.FOUNDATION_WALL_TOP.label() + ", low first", between());
        stacked(1, "wall", in, "wall", out);
        assertEquals("", between(), "one wall goes on");
        stacked(3, "thin", in, "wall", in);
        assertTrue(between().startsWith(JunctionKind.WALL_THICKNESS_CHANGE.label()), between());
        stacked(0, "thin", out, "wall", out);
        assertTrue(between().startsWith(JunctionKind.WALL_THICKNESS_CHANGE.label()), between());
    }

    /** A floor more than half a metre under the ground is a cellar's, which shows where a cold room is beside it. */
    @Test
    void aCellarLiesMoreThanHalfAMetreDown() {
        assertEquals(JunctionKind.SLAB_EDGE, besideAColdRoom(0.49));
        assertEquals(JunctionKind.CELLAR_SLAB_EDGE, besideAColdRoom(0.51));
    }

    private JunctionKind besideAColdRoom(double depth) {
        surfaces.clear();
        points.clear();
        // The floor's upper face lies 0.5 m over its outer one.
        box("a", 0, 0, -0.5 - depth);
        walls("a", new Exposure(Exposure.Kind.UNHEATED, "store", 0.6));
        levels.set(0, new Body.Level("ground floor", -depth, 0, Optional.empty()));
        return build().edges()
                .detect(edge -> edge.first().name().equals("a floor")
                        && edge.second().orElseThrow().name().startsWith("a wall 2"))
                .kind();
    }

    /** Two rooms that touch along one upright line: each corner of either is between two walls of its own. */
    @Test
    void twoBoxesMayTouchAlongALine() {
        for (double[] at : new double[][] {{4, 4}, {-4, 4}, {4, -4}, {-4, -4}}) {
            surfaces.clear();
            points.clear();
            box("a", 0, 0, 0);
            box("b", at[0], at[1], 0);
            Shell shell = build();
            assertTrue(shell.closed());
            assertEquals(96, shell.externalVolume(), ROUND_OFF);
            ImmutableList<Edge> corners = shell.edges().select(each -> each.kind() == JunctionKind.OUTSIDE_CORNER);
            assertEquals(8, corners.size());
            for (Edge corner : corners) {
                assertEquals(90, corner.angle(), ROUND_OFF);
                assertEquals(
                        corner.first().name().charAt(0),
                        corner.second().orElseThrow().name().charAt(0));
            }
            assertEquals(0, ShellBuilderTest.count(shell, JunctionKind.INSIDE_CORNER));
        }
    }

    /** A room of 4 m in one of 12 m is told wherever it stands there, and beside it nowhere. */
    @Test
    void aRoomAnywhereInARoomIsRefused() {
        double[][] places = {
            {1, 2, 0.5}, {7, 1, 2}, {6.5, 7.5, 5}, {0.3, 7.7, 8}, {13, 2, 1}, {-5, -4.5, 3}, {2, 3, 13}, {-4.2, 14, -8}
        };
        for (int i = 0; i < places.length; i++) {
            double[] place = places[i];
            surfaces.clear();
            points.clear();
            box("a", 0, 0, 0);
            points.replaceAll((name, p) -> new Point3(3 * p.x(), 3 * p.y(), 4 * p.z()));
            box("b", place[0], place[1], place[2]);
            if (place[2] > 0) {
                change("b floor", Body.Use.OVERHANG, Exposure.outdoors());
            }
            if (place[2] < 0) {
                walls("b", Exposure.ground());
            }
            levels.set(0, new Body.Level("ground floor", Math.min(0, place[2]) + 0.5, 0, Optional.empty()));
            if (i < 4) {
                refusedOnce("\"b floor\": it and what it meets stand inside the room that \"a floor\" bounds");
            } else {
                assertEquals(12 * 12 * 12 + 48, build().externalVolume(), ROUND_OFF);
            }
        }
    }

    /** One lies half a metre higher than the level of the storey: it is walked on as well. */
    @Test
    void aFloorOverItsLevelCounts() {
        double[][] section = {{0, 0}, {6, 0}, {6, 0.5}, {10, 0.5}, {10, 4}, {0, 4}};
        for (int i = 0; i < section.length; i++) {
            point("s" + i, section[i][0], 0, section[i][1]);
            point("n" + i, section[i][0], 8, section[i][1]);
        }
        surface("south", Body.Use.WALL, "wall", "s0", "s1", "s2", "s3", "s4", "s5");
        surface("north", Body.Use.WALL, "wall", "n5", "n4", "n3", "n2", "n1", "n0");
        Body.Use[] uses = {Body.Use.FLOOR, Body.Use.WALL, Body.Use.FLOOR, Body.Use.WALL, Body.Use.ROOF, Body.Use.WALL};
        for (int i = 0; i < 6; i++) {
            int j = (i + 1) % 6;
            String assembly = uses[i] == Body.Use.WALL ? "wall" : uses[i] == Body.Use.FLOOR ? "slab" : "roof";
            surface("side " + i, uses[i], assembly, "s" + j, "s" + i, "n" + i, "n" + j);
        }
        Shell shell = build();
        assertTrue(shell.closed());
        // The lower floor from inner face to inner face of its walls, the upper one from there on.
        assertEquals(9.2 * 7.2, shell.floorArea(), 1e-6);
    }

    /** The same where all ground lies elsewhere. */
    @Test
    void aCellarLiesSoFarUnderItsOwnGround() {
        for (double up : new double[] {-3, 2}) {
            ground = up;
            assertEquals(JunctionKind.SLAB_EDGE, besideAColdRoom(0.49 - up));
            assertEquals(JunctionKind.CELLAR_SLAB_EDGE, besideAColdRoom(0.51 - up));
        }
    }

    /** A wall that begins or ends a hair off a level is of one storey; further off a strip of it is of the other. */
    @Test
    void aWallAHairOffALevelIsNotCut() {
        for (double off : new double[] {-0.025, -0.008, 0, 0.008, 0.025}) {
            stacked(0, "wall", Exposure.outdoors(), "thin", Exposure.outdoors());
            levels.set(0, new Body.Level("ground floor", 0.5, 0, Optional.empty()));
            levels.removeIf(level -> level.name().equals("upper floor"));
            levels.add(new Body.Level("upper floor", 1 + off, 0.3, Optional.empty()));
            ImmutableList<String> names = build().surfaces().collect(Surface::name);
            assertEquals(off > 0.01, names.contains("high, ground floor"), names + " at " + off);
            assertEquals(off < -0.01, names.contains("low, upper floor"), names + " at " + off);
            assertEquals(off <= 0.01, names.contains("high"), names + " at " + off);
            assertEquals(off >= -0.01, names.contains("low"), names + " at " + off);
            assertTrue(names.contains("a wall 2, upper floor"), names.toString());
        }
    }

    /** A level at which every wall begins anew is reached, as one that they all pass; a hair over or under it, too. */
    @Test
    void allWallsMayBeginAtALevel() {
        box("a", 0, 0, 0);
        surfaces.removeIf(each -> each.name().matches("a wall [0-3]"));
        for (int i = 0; i < 4; i++) {
            Point3 foot = points.get("a" + i);
            point("m" + i, foot.x(), foot.y(), 1);
        }
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            surface("low " + i, Body.Use.WALL, "wall", "a" + i, "a" + j, "m" + j, "m" + i);
            surface("high " + i, Body.Use.WALL, "wall", "m" + i, "m" + j, "at" + j, "at" + i);
        }
        levels.add(new Body.Level("upper floor", 1, 0.3, Optional.empty()));
        for (double off : new double[] {-0.008, 0, 0.008}) {
            levels.set(1, new Body.Level("upper floor", 1 + off, 0.3, Optional.empty()));
            Shell shell = build();
            assertTrue(shell.closed());
            assertEquals(16, ShellBuilderTest.length(shell, JunctionKind.INTERMEDIATE_FLOOR), ROUND_OFF);
        }
    }

    /**
     * Two rooms on ground 2 m apart, floors 0.4 m and 0.6 m under their own: only the higher one's is a cellar's. Its walls stand
     * beside its floor and are not cut at that level, which the lower room's pass.
     */
    @Test
    void eachFloorLiesUnderItsOwnGround() {
        box("a", 0, 0, -0.9);
        box("b", 20, 0, 0.9);
        for (String box : new String[] {"a", "b"}) {
            for (int i = 0; i < 4; i++) {
                Point3 foot = points.get(box + i);
                point("g" + box + i, foot.x(), foot.y(), box.equals("a") ? 0 : 2);
                terrain.add("g" + box + i);
            }
            walls(box, new Exposure(Exposure.Kind.UNHEATED, "store", 0.6));
        }
        levels.set(0, new Body.Level("lower room", -0.4, 0, Optional.empty()));
        levels.add(new Body.Level("higher room", 1.4, 0.5, Optional.empty()));
        Shell shell = build();
        assertEquals(JunctionKind.SLAB_EDGE, underTheColdRoom(shell, "a"));
        assertEquals(JunctionKind.CELLAR_SLAB_EDGE, underTheColdRoom(shell, "b"));
        ImmutableList<String> names = shell.surfaces().collect(Surface::name);
        assertTrue(names.contains("b wall 2"), names.toString());
        assertTrue(names.contains("a wall 2, lower room") && names.contains("a wall 2, higher room"), names.toString());
        assertEquals("higher room", ShellBuilderTest.surface(shell, "b floor").storey());
    }

    private static JunctionKind underTheColdRoom(Shell shell, String box) {
        return shell.edges()
                .detect(edge -> edge.first().name().equals(box + " floor")
                        && edge.second().orElseThrow().name().startsWith(box + " wall 2"))
                .kind();
    }

    /** A level at 4.5 m cuts the side walls where the roof over them has risen to it: 2 m before the north wall, which is 6 m high. */
    @Test
    void aWallIsCutWhereItsSlopePassesTheLevel() {
        terraceBelowARoof();
        levels.add(new Body.Level("gallery", 4.5, 0.2, Optional.empty()));
        Shell shell = build();
        ShellBuilderTest.assertClosed(shell);
        for (String side : new String[] {"east wall", "west wall"}) {
            Surface upper = ShellBuilderTest.surface(shell, side + ", gallery");
            assertEquals(2 * 1.5 / 2, upper.externalArea(), ROUND_OFF);
            assertEquals("gallery", upper.storey());
            assertEquals(
                    4 * 3 + 4 * 4.5 - 1.5,
                    ShellBuilderTest.surface(shell, side + ", ground floor").externalArea(),
                    ROUND_OFF);
        }
        // Along the level the walls of both storeys meet in its floor.
        assertEquals(2 + 10 + 2, ShellBuilderTest.length(shell, JunctionKind.INTERMEDIATE_FLOOR), ROUND_OFF);
    }

    /** Two triangles over one another, both seen from above: neither is known to be the wrong one. */
    @Test
    void ofTwoThatDisagreeNeitherIsSaidToRunClockwise() {
        point("a", 0, 0, 0);
        point("b", 8, 0, 0);
        point("c", 0, 8, 0);
        surface("one", Body.Use.FLOOR, "slab", "a", "b", "c");
        surface("other", Body.Use.FLOOR, "slab", "a", "b", "c");
        ShellException refused = assertThrows(ShellException.class, this::build);
        assertTrue(
                refused.faults().noneSatisfy(each -> each.contains("run clockwise, its neighbours'")),
                refused::getMessage);
    }

    /** Corners measured to 0.1 mm lie so far off an aslant side: the floor is parted at one that lies 0.02 mm beside its wall's foot. */
    @Test
    void aMeasuredCornerLiesOnAnAslantSide() {
        double[][] plan = {{0, 0}, {10, 4}, {10, 10}, {0, 10}, {3.3333, 1.3333}, {3.3333, 10}};
        String[] names = {"a", "b", "c", "d", "m", "n"};
        for (int i = 0; i < 6; i++) {
            point(names[i] + "0", plan[i][0], plan[i][1], 0);
            point(names[i] + "3", plan[i][0], plan[i][1], 3);
        }
        surface("slab west", Body.Use.FLOOR, "slab", "a0", "d0", "n0", "m0");
        surface("slab east", Body.Use.FLOOR, "slab", "m0", "n0", "c0", "b0");
        for (int i = 0; i < 4; i++) {
            String from = names[i];
            String to = names[(i + 1) % 4];
            surface("wall " + from, Body.Use.WALL, "wall", from + "0", to + "0", to + "3", from + "3");
        }
        surface("roof", Body.Use.ROOF, "roof", "a3", "b3", "c3", "d3");
        Shell shell = build();
        assertEquals(Lists.immutable.empty(), shell.openEdges());
        assertEquals(3 * 80, shell.externalVolume(), 1e-3);
        assertEquals(10 + 6 + 10 + Math.hypot(10, 4), ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), 1e-3);
    }
}
