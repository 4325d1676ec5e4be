package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.file.house.HouseFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The houses of fixtures/houses/shapes against take-offs worked out apart. Footprints are outer faces; floors, walls and roofs
 * are 0.4 m thick, 0.2 m of a roof outside its rafters.
 */
class ShapeHousesTest {

    /** m, m² and m³: nodes of a roof lie up to a tenth of a millimetre off, along some 30 m. */
    private static final double NODES = 0.005;

    private static final double ROOT2 = Math.sqrt(2);
    private static final double ROOT3 = Math.sqrt(3);

    private static Shell shell(String name) throws IOException {
        Path file = Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", name + ".yaml");
        Shell shell = HouseFiles.read(file).shell();
        assertEquals(Lists.immutable.empty(), shell.openEdges());
        assertEquals(new Point3(0, 0, 0), shell.areaVectorSum());
        return shell;
    }

    /** m of each kind of junction: kind, length, kind, length and so on, all there are. */
    private static void junctions(Shell shell, Object... expected) {
        TreeMap<JunctionKind, Double> found = new TreeMap<>();
        shell.edges().forEach(edge -> found.merge(edge.kind(), edge.externalLength(), Double::sum));
        TreeMap<JunctionKind, Double> due = new TreeMap<>();
        for (int i = 0; i < expected.length; i += 2) {
            due.put((JunctionKind) expected[i], ((Number) expected[i + 1]).doubleValue());
        }
        assertEquals(due.keySet(), found.keySet());
        due.forEach((kind, length) -> assertEquals(length, found.get(kind), NODES, kind.label()));
    }

    private static double area(Shell shell, Body.Use use) {
        return shell.surfaces().select(s -> s.use() == use).sumOfDouble(Surface::externalArea);
    }

    private static double area(Shell shell, String name) {
        return ShellBuilderTest.surface(shell, name).externalArea();
    }

    /** The deck ends 150 mm under the upper floor, which is 300 mm thick; outer faces lie 230 mm outside the structure's line. */
    @Test
    void deckUnderTheFloor() throws IOException {
        Shell shell = shell("deck-under-the-floor");
        double floor = 2.8;
        // The height runs to the top of the deck's concrete; 192 mm lie over that, 387 mm in all.
        double deck = 2.458 + 0.192;
        assertEquals(150e-3, floor - deck, NODES);
        double added = 5 + 0.46;
        double front = 10.46 - added;
        assertEquals(added * 4, area(shell, "terrace of added room"), NODES);
        assertEquals(
                area(shell, "upper floor north wall") + added * (floor - deck),
                area(shell, "upper floor south wall"),
                NODES);
        assertEquals(
                front * (floor + 0.4002),
                area(shell, "ground floor south wall (1)") + area(shell, "ground floor south wall (2)"),
                NODES);
        assertEquals(front + 10.46 + 2 * 7.46, length(shell, JunctionKind.INTERMEDIATE_FLOOR), NODES);
        assertEquals(added - 1.8, length(shell, JunctionKind.WALL_TO_TERRACE), NODES);
        assertEquals(1.8, length(shell, JunctionKind.TERRACE_THRESHOLD), NODES);
        // The floor's underside lies at 2.5 m, the deck's inner face 387 mm under its outer one.
        for (JunctionKind kind : Lists.immutable.of(JunctionKind.WALL_TO_TERRACE, JunctionKind.TERRACE_THRESHOLD)) {
            Edge edge = shell.edges().detect(each -> each.kind() == kind);
            assertEquals(0.3, edge.floorThickness(), NODES);
            assertEquals(2.5 - (deck - 0.387), edge.floorRise(), NODES);
        }
    }

    private static double length(Shell shell, JunctionKind kind) {
        return shell.edges().select(edge -> edge.kind() == kind).sumOfDouble(Edge::externalLength);
    }

    @Test
    void ellRoof() throws IOException {
        Shell shell = shell("ell-roof");
        double eaves = 2.8 + 0.2 * ROOT2 - 0.4;
        // Prisms of 9 m² over the wings' arms of 6 m and 5 m, less the half-hip's pyramid; in the square of 6 m where
        // they meet
        // the hip's quarter 27/3, the valley's 2·27/3 and two of one slope, 27/2 each.
        double roof = 9 * 6 - 1 / 3.0 + 9 * 5 + 27 / 3.0 + 2 * 27 / 3.0 + 27;
        assertEquals(102 * (eaves + 0.4) + roof, shell.externalVolume(), 102 * NODES);
        assertEquals(102 * ROOT2, area(shell, Body.Use.ROOF), 10 * NODES);
        assertEquals(9, area(shell, "gable over house north wall 2"), NODES);
        assertEquals((6 + 2) / 2.0 * 2, area(shell, "gable over house east wall 1"), NODES);
        assertEquals(102, shell.groundFloorArea(), NODES);
        assertEquals(46, shell.exposedPerimeter(), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                46,
                JunctionKind.OUTSIDE_CORNER,
                5 * (eaves + 0.4),
                JunctionKind.INSIDE_CORNER,
                eaves + 0.4,
                JunctionKind.EAVES,
                12 + 11 + 6 + 5 + 2,
                JunctionKind.VERGE,
                2 * 3 * ROOT2 + 2 * 2 * ROOT2,
                JunctionKind.RIDGE,
                8 + 8,
                JunctionKind.HIP,
                3 * ROOT3 + 2 * ROOT3,
                JunctionKind.VALLEY,
                3 * ROOT3);
    }

    @Test
    void leanTo() throws IOException {
        Shell shell = shell("lean-to");
        double tan = Math.tan(Math.toRadians(20));
        double cos = Math.cos(Math.toRadians(20));
        double low = 3.2 + 0.2 / cos - 0.4 * tan;
        double high = low + 3 * tan;
        // At 30° what lies outside the rafters raises the eaves as much as the wall lowers them: 0.2/cos 30° is 0.4·tan
        // 30°.
        double eaves = 5.6;
        double deck = 3 - 0.3 + 0.4;
        double hipped = ROOT3 * (6 * 10 / 2.0 - 6 * 6 / 6.0);
        assertEquals(
                60 * (eaves + 0.4) + hipped + 12 * (deck + 0.4) + 18 * ((low + high) / 2 + 0.4),
                shell.externalVolume(),
                90 * NODES);
        assertEquals(18 / cos, area(shell, "lower roof over ground floor"), NODES);
        assertEquals(12, area(shell, "terrace over ground floor"), NODES);
        assertEquals(3 * ((low + high) / 2 - deck), area(shell, "wall beside the lower roof over ground floor"), NODES);
        assertEquals(4 * (eaves - deck) + 6 * (eaves - high), area(shell, "upper floor south wall"), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                38,
                JunctionKind.OUTSIDE_CORNER,
                (low + 0.4) + (deck + 0.4) + (low - deck) + 2 * (eaves + 0.4) + (eaves - high) + (eaves - deck),
                JunctionKind.INSIDE_CORNER,
                high - deck,
                JunctionKind.INTERMEDIATE_FLOOR,
                22,
                JunctionKind.EAVES,
                6 + 32,
                JunctionKind.VERGE,
                2 * 3 / cos,
                JunctionKind.RIDGE,
                4,
                JunctionKind.HIP,
                4 * Math.sqrt(21),
                JunctionKind.WALL_TO_TERRACE,
                4 + 3,
                JunctionKind.TERRACE_EDGE,
                4 + 3,
                JunctionKind.ABUTMENT,
                6);
    }

    @Test
    void splitLevel() throws IOException {
        Shell shell = shell("split-level");
        // At 30° eaves lie where the storey's height ends (see the lean-to). A gable of 8 m is 4·tan 30° high.
        double gable = 4 * 4 / ROOT3;
        double west = 2.8 + 0.4;
        double cellar = -1.3 - 0.4;
        double upper = -1.3 + 2.7;
        double east = upper + 2.6;
        assertEquals(6 * (8 * west + gable) + 5 * (8 * (east - cellar) + gable), shell.externalVolume(), 88 * NODES);
        assertEquals(88, shell.groundFloorArea(), NODES);
        // Where the halves meet no floor's rim is exposed, neither the slab's nor the lower floor's under it.
        assertEquals(6 + 6 + 8 + 5 + 5 + 8, shell.exposedPerimeter(), NODES);
        assertEquals(8 * (-0.4 - cellar), area(shell, "lower floor west wall, under the floor beside it"), NODES);
        double low = 1.2 * 1.2 * ROOT3 / 2;
        assertEquals(low, area(shell, "upper floor west wall (1)"), NODES);
        assertEquals(8 * 1.2 - 2 * low, area(shell, "gable over upper floor west wall"), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                6 + 6 + 8,
                JunctionKind.CELLAR_SLAB_EDGE,
                2 * (5 + 8),
                JunctionKind.FOUNDATION_WALL_TOP,
                5 + 8 + 5,
                JunctionKind.STEPPED_FOOTING,
                8,
                JunctionKind.OUTSIDE_CORNER,
                2 * west + 2 * (-0.4 - cellar) + 2 * (east - cellar) + 2 * (east - 2.8),
                JunctionKind.EAVES,
                2 * (6 + 5),
                JunctionKind.VERGE,
                3 * 8 * 2 / ROOT3,
                JunctionKind.RIDGE,
                6 + 5,
                JunctionKind.ABUTMENT,
                8 * 2 / ROOT3);
    }

    @Test
    void twoWings() throws IOException {
        Shell shell = shell("two-wings");
        // Structure and finish are 0.23 m thick, 0.17 m stand outside. At 45° what lies outside the rafters raises the
        // eaves
        // by 0.2·√2, the wall lowers them by 0.4.
        double wide = 12 + 0.34;
        double deep = 6 + 0.34;
        double half = deep / 2;
        double eaves = 4.6 + 0.2 * ROOT2 - 0.4;
        double wing = 3.6 + 0.2 * ROOT2 - 0.4;
        // By so much the wing's ridge lies over the house's eaves: so far its roof runs into the southern slope.
        double run = wing + half - eaves;
        assertEquals(
                wide * (deep * (eaves + 0.4) + half * half)
                        + 5 * (deep * (wing + 0.4) + half * half)
                        + run * run * run / 3,
                shell.externalVolume(),
                120 * NODES);
        assertEquals((wide * half - run * run) * ROOT2, area(shell, "roof, south slope"), NODES);
        assertEquals((5 * half + run * run / 2) * ROOT2, area(shell, "roof of wing, east slope"), NODES);
        double hidden = deep * (wing - 2.6) + (deep + 2 * run) / 2 * (eaves - wing);
        assertEquals((wide * (eaves - 2.6) - hidden) / 2, area(shell, "upper floor south wall (1)"), NODES);
        assertEquals(wide * deep + 5 * deep, shell.groundFloorArea(), NODES);
        assertEquals(2 * (11.54 * 5.54) + 5.54 * 5, shell.floorArea(), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                2 * (wide + deep) + 10,
                JunctionKind.OUTSIDE_CORNER,
                4 * (eaves + 0.4) + 2 * (wing + 0.4),
                JunctionKind.INSIDE_CORNER,
                2 * (wing + 0.4),
                JunctionKind.INTERMEDIATE_FLOOR,
                2 * (wide + deep) - deep,
                JunctionKind.EAVES,
                10 + 2 * wide - 2 * run,
                JunctionKind.VERGE,
                6 * half * ROOT2,
                JunctionKind.RIDGE,
                wide + 5 + run,
                JunctionKind.VALLEY,
                2 * run * ROOT3,
                JunctionKind.ABUTMENT,
                2 * (eaves - wing) * ROOT2);
    }

    @Test
    void closedCourt() throws IOException {
        Shell shell = shell("closed-court");
        // Of the deck 205 mm lie outside its structure, up to which the heights run.
        double house = 3 + 0.205 + 0.4;
        double wing = 2.6 + 0.205 + 0.4;
        assertEquals(112 * house + 16 * wing, shell.externalVolume(), 128 * NODES);
        assertEquals(128, shell.groundFloorArea(), NODES);
        assertEquals(48 + 16, shell.exposedPerimeter(), NODES);
        assertEquals(112, area(shell, "roof"), NODES);
        assertEquals(16, area(shell, "roof of wing"), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                48 + 16,
                JunctionKind.OUTSIDE_CORNER,
                4 * house + 2 * (house - wing),
                JunctionKind.INSIDE_CORNER,
                2 * house + 2 * wing,
                JunctionKind.FLAT_ROOF_EDGE,
                64 + 8,
                JunctionKind.ROOF_STEP,
                8);
    }

    @Test
    void atrium() throws IOException {
        Shell shell = shell("atrium");
        // At 30° eaves lie where the storey's height ends (see the lean-to). A wing is 4 m deep, its ridge 2·tan 30°
        // high, in
        // a square of 8 m: a prism of that triangle along the ridge, mitred at the corners.
        double ridge = 2 / ROOT3;
        assertEquals(128 * (2.8 + 0.4) + 4 * ridge / 2 * 32, shell.externalVolume(), 128 * NODES);
        assertEquals(128 * 2 / ROOT3, area(shell, Body.Use.ROOF), 10 * NODES);
        assertEquals(8, shell.surfaces().count(s -> s.use() == Body.Use.ROOF));
        assertEquals(128, shell.groundFloorArea(), NODES);
        assertEquals(48 + 16, shell.exposedPerimeter(), NODES);
        // Between inner faces: 11.2 m square less 4.8 m square.
        assertEquals(11.2 * 11.2 - 4.8 * 4.8, shell.floorArea(), NODES);
        // It faces south from the court's north side.
        Surface south = ShellBuilderTest.surface(shell, "house court south wall");
        assertEquals(4 * 3.2, south.externalArea(), NODES);
        assertTrue(south.normal().y() < -0.999);
        assertTrue(south.outline().allSatisfy(p -> Math.abs(p.y() - 8) < NODES));
        double mitre = Math.sqrt(2 * 2 * 2 + ridge * ridge);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                48 + 16 - 1.2,
                JunctionKind.of("door threshold on a slab"),
                1.2,
                JunctionKind.OUTSIDE_CORNER,
                4 * 3.2,
                JunctionKind.INSIDE_CORNER,
                4 * 3.2,
                JunctionKind.EAVES,
                48 + 16,
                JunctionKind.RIDGE,
                32,
                JunctionKind.HIP,
                4 * mitre,
                JunctionKind.VALLEY,
                4 * mitre,
                JunctionKind.HEAD,
                1.2,
                JunctionKind.JAMB,
                2 * 2.1);
    }

    @Test
    void courtOverTerrace() throws IOException {
        Shell shell = shell("court-over-terrace");
        // Of the deck 205 mm lie outside its structure; the terrace's lie on the lower ceiling.
        double deck = 2.8 - 0.3 + 0.4;
        double top = 2.8 + 2.6 + 0.205;
        assertEquals(168 * (top + 0.4) - 20 * (top - deck), shell.externalVolume(), 168 * NODES);
        assertEquals(20, area(shell, "terrace over ground floor"), NODES);
        assertEquals(148, area(shell, Body.Use.ROOF), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                52,
                JunctionKind.OUTSIDE_CORNER,
                4 * (top + 0.4),
                JunctionKind.INSIDE_CORNER,
                4 * (top - deck),
                JunctionKind.INTERMEDIATE_FLOOR,
                52,
                JunctionKind.FLAT_ROOF_EDGE,
                52 + 18,
                JunctionKind.WALL_TO_TERRACE,
                18 - 1.2,
                JunctionKind.TERRACE_THRESHOLD,
                1.2,
                JunctionKind.HEAD,
                1.2,
                JunctionKind.JAMB,
                2 * 2.1);
    }

    @Test
    void roundBay() throws IOException {
        Shell shell = shell("round-bay");
        // Eight triangles of a circle of 2 m.
        double plan = 80 + 8 * 2 * Math.sin(Math.toRadians(22.5));
        double around = 36 - 4 + 8 * 4 * Math.sin(Math.toRadians(11.25));
        double height = 2.8 + 2.6 + 0.205 + 0.4;
        assertEquals(plan * height, shell.externalVolume(), plan * NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                around,
                JunctionKind.OUTSIDE_CORNER,
                (4 + 7) * height,
                JunctionKind.INSIDE_CORNER,
                2 * height,
                JunctionKind.INTERMEDIATE_FLOOR,
                around,
                JunctionKind.FLAT_ROOF_EDGE,
                around);
    }

    @Test
    void mansard() throws IOException {
        Shell shell = shell("mansard");
        double tan = Math.tan(Math.toRadians(70));
        double eaves = 2.8 + 1.2 + 0.2 / Math.cos(Math.toRadians(70)) - 0.4 * tan;
        double rise = 2.8 + 2.7 + 0.4 - eaves;
        double in = rise / tan;
        double middle = (11 - in) * (9 - in);
        double top = (11 - 2 * in) * (9 - 2 * in);
        assertEquals(99 * (eaves + 0.4) + rise / 6 * (99 + 4 * middle + top), shell.externalVolume(), 99 * NODES);
        assertEquals(top, area(shell, Body.Use.CEILING), 10 * NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                40,
                JunctionKind.OUTSIDE_CORNER,
                4 * (eaves + 0.4),
                JunctionKind.INTERMEDIATE_FLOOR,
                40,
                JunctionKind.EAVES,
                40,
                JunctionKind.HIP,
                4 * Math.sqrt(2 * in * in + rise * rise),
                JunctionKind.COLLAR,
                40 - 8 * in);
    }

    @Test
    void cellarInASlope() throws IOException {
        Shell shell = shell("cellar-in-a-slope");
        double floor = -2.4 + 2.7;
        double top = floor + 2.8 + 0.205;
        assertEquals(48 * (top + 2.8) + 40 * (top - floor + 0.4), shell.externalVolume(), 88 * NODES);
        // Down to the floor's underside at −2.8 m from the ground, which runs even from corner to corner.
        assertEquals(8 * ((0.1 - 1.8) / 2 + 2.8), area(shell, "cellar west wall, below ground"), NODES);
        assertEquals(6 * ((-1.8 - 0.2) / 2 + 2.8), area(shell, "cellar south wall, below ground"), NODES);
        assertEquals(6 * (0.1 / 2 + 2.8), area(shell, "cellar north wall, below ground"), NODES);
        assertEquals(8 * (floor - 0.4 + 2.8), area(shell, "cellar east wall, under the floor beside it"), NODES);
        // The ground reaches the slab's rim, 0.2 m over its underside at the most, and no wall on it.
        assertEquals(
                Lists.immutable.empty(),
                shell.surfaces().collect(Surface::name).select(name -> name.matches("ground floor .*below ground")));
        assertEquals(40, shell.exposedPerimeter(), NODES);
        assertEquals(8, ShellBuilderTest.length(shell, JunctionKind.STEPPED_FOOTING), NODES);
        assertEquals(6 + 6 + 4 + 2 + 2, ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), NODES);
        assertEquals(2 * (6 + 8), ShellBuilderTest.length(shell, JunctionKind.CELLAR_SLAB_EDGE), NODES);
    }

    /** A light well takes of the wall in the ground what stands over its floor, up to ground that falls by 1.9 m along 8 m. */
    @Test
    void lightWellInASlope(@TempDir Path folder) throws IOException {
        String house = Files.readString(
                Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", "cellar-in-a-slope.yaml"));
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, house.replace("junctions:\n", """
                        openings:
                          pane:
                            kind: window
                            surface: cellar west wall
                            left: 1 m
                            width: 1 m
                            height: 0.6 m
                            sill: 1 m
                            transmittance: 1 W/(m²·K)
                            light-well: {width: 1.4 m, below-sill: 250 mm, projection: 500 mm, drain: soakaway}
                        junctions:
                        """));
        double left = 0.1 - 1.9 * 0.8 / 8;
        double right = 0.1 - 1.9 * 2.2 / 8;
        double floor = -2.4 + 1 - 0.25;
        assertEquals(
                8 * ((0.1 - 1.8) / 2 + 2.8) - 1.4 * ((left + right) / 2 - floor),
                area(HouseFiles.read(file).shell(), "cellar west wall, below ground"),
                NODES);
    }

    @Test
    void partCellar() throws IOException {
        Shell shell = shell("part-cellar");
        // The ground floor lies at −2.4 + 2.7 = 0.3 m; its eaves at 0.3 + 2.8, where 30° leaves them (see above).
        double floor = 0.3;
        double eaves = floor + 2.8;
        double gable = 8 * 4 / ROOT3 / 2;
        assertEquals(40 * (eaves + 2.8) + 40 * (eaves - floor + 0.4) + 10 * gable, shell.externalVolume(), 80 * NODES);
        assertEquals(40, area(shell, "lowest floor"), NODES);
        assertEquals(24, area(shell, "floor under ground floor, east side"), NODES);
        assertEquals(16, area(shell, "floor under ground floor, east side (2)"), NODES);
        assertEquals(
                Exposure.Kind.CRAWL_SPACE,
                ShellBuilderTest.surface(shell, "floor under ground floor, east side (2)")
                        .exposure()
                        .kind());
        // From the cellar floor's underside to that of the slab.
        assertEquals(8 * (2.8 + floor - 0.4), area(shell, "cellar east wall, under the floor beside it"), NODES);
        assertEquals(8 * 2.8, area(shell, "cellar west wall, below ground"), NODES);
        assertEquals(8 * floor, area(shell, "cellar west wall"), NODES);
        assertEquals(80, shell.groundFloorArea(), NODES);
        assertEquals(36, shell.exposedPerimeter(), NODES);
        assertEquals(
                Lists.immutable.of(12.0, 8.0),
                Lists.immutable
                        .of(JunctionKind.CRAWL_SPACE_EDGE, JunctionKind.STEPPED_FOOTING)
                        .collect(kind -> ShellBuilderTest.length(shell, kind)));
        assertEquals(6, ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), NODES);
        assertEquals(26 - 1, ShellBuilderTest.length(shell, JunctionKind.CELLAR_SLAB_EDGE), NODES);
        assertEquals(1, ShellBuilderTest.length(shell, JunctionKind.of("cellar door threshold")), NODES);
        assertEquals(0, ShellBuilderTest.length(shell, JunctionKind.SILL), "a door's foot is no window's sill");
        assertEquals(18, ShellBuilderTest.length(shell, JunctionKind.FOUNDATION_WALL_TOP), NODES);
        // Between the slab and the floor over the crawl space, which lie level with one another.
        assertEquals(8, ShellBuilderTest.length(shell, JunctionKind.FLOOR_CHANGE), NODES);
        assertEquals(0, ShellBuilderTest.length(shell, JunctionKind.WALL_THICKNESS_CHANGE), NODES);
    }

    /** Its floor over open air is an overhang on all sides, 4.52 in wider than what its walls carry with. */
    @Test
    void onPiers() throws IOException {
        Shell shell = shell("on-piers");
        double inch = 0.0254;
        double wide = (24 * 12 + 2 * 4.52) * inch;
        double deep = (12 * 12 + 2 * 4.52) * inch;
        assertEquals(wide * deep, area(shell, "lowest floor"), NODES);
        JunctionKind threshold = JunctionKind.of("door threshold over open air");
        assertEquals(36 * inch, ShellBuilderTest.length(shell, threshold), NODES);
        assertEquals(2 * (wide + deep) - 36 * inch, ShellBuilderTest.length(shell, JunctionKind.OVERHANG_EDGE), NODES);
        assertEquals(0, ShellBuilderTest.length(shell, JunctionKind.WALL_UNDER_OVERHANG), NODES);
    }

    /** In feet and inches; outer faces are 6 1/2 in outside of the structure's, below a coat and above siding alike. */
    @Test
    void capeOverCellar() throws IOException {
        Shell shell = shell("cape-over-cellar");
        double inch = 0.0254;
        double long34 = (34 * 12 + 13) * inch;
        double short26 = (26 * 12 + 13) * inch;
        // The floor's underside lies 12 in and a foil below its upper face.
        assertEquals(long34 * 96 * inch, area(shell, "cellar south wall, below ground"), long34 * 0.0003);
        assertEquals(short26 * 18 * inch, area(shell, "cellar east wall"), NODES);
        JunctionKind top = JunctionKind.FOUNDATION_WALL_TOP;
        assertEquals(
                2 * (long34 + short26) - 36 * inch, ShellBuilderTest.length(shell, top), NODES, "without the door");
        for (Edge edge : shell.edges().select(each -> each.kind() == top)) {
            // 1/2 in of plaster and 7 5/8 in of block, less 1/2 in of board, 3 1/2 in of studs and 1/2 in of sheathing.
            assertEquals(3.625 * inch, edge.innerStep(), 1e-6, edge.name());
            assertEquals(10 * inch, edge.floorThickness(), 1e-9, edge.name());
        }
        // Outside, the thickness of a membrane.
        assertEquals(
                0.0005 * 2 * (long34 + short26),
                shell.steps().sumOfDouble(Surface::externalArea),
                1e-4 * (long34 + short26));
    }

    /** Each of a row of windows has a light well, two others share one; over a low sill the ground ends within the window's height. */
    @Test
    void lightWells() throws IOException {
        Shell shell = shell("light-wells");
        // 900 mm over the floor, 1.1 m under the ground.
        double deep = 2 - 0.9;
        double slab = 0.2962;
        double floor = 0.4;
        assertEquals(9 * (2 + slab) - 2 * 1.6 * deep, area(shell, "cellar south wall, below ground"), NODES);
        assertEquals(9 * (2 + slab) - 3.4 * deep, area(shell, "cellar north wall, below ground"), NODES);
        assertEquals(7 * (2 + slab) - 1.4 * 0.5, area(shell, "cellar east wall, below ground"), NODES);
        assertEquals(
                9 * (2 + slab + floor),
                area(shell, "cellar south wall") + area(shell, "cellar south wall, below ground"),
                NODES);
        // The whole of each window is in the free part of its wall.
        assertEquals(
                2 * 0.7 + 2 * 0.8 * 0.7 + 0.8 * 0.4,
                Lists.immutable
                        .of("cellar south wall", "cellar north wall", "cellar east wall")
                        .sumOfDouble(
                                name -> ShellBuilderTest.surface(shell, name).openingArea()),
                NODES);
        assertEquals(
                2 * (1.6 + 2 * deep) + 3.4 + 2 * deep + 1.4 + 2 * 0.5,
                ShellBuilderTest.length(shell, JunctionKind.LIGHT_WELL),
                NODES);
        assertEquals(32, ShellBuilderTest.length(shell, JunctionKind.CELLAR_SLAB_EDGE), NODES);
        assertEquals(32, shell.exposedPerimeter(), NODES);
    }

    @Test
    void walkOut() throws IOException {
        Shell shell = shell("walk-out");
        double top = 0.3 + 2.8 + 0.2;
        assertEquals(63 * (top + 2.8), shell.externalVolume(), 63 * NODES);
        // The south wall is free down to the floor's underside; of the east wall the triangle over 0.4 m stands free.
        assertEquals(9 * 3.1, area(shell, "cellar south wall"), NODES);
        assertEquals(7 * (0.4 + 2.8) / 2, area(shell, "cellar east wall, below ground"), NODES);
        assertEquals(7 * (2.7 + 0.3) / 2, area(shell, "cellar east wall"), NODES);
        // The light well goes down to 300 mm under the sill of 1.4 m; the ground stands 2.4 m over the floor.
        double well = 1.4 * (2.4 - 1.1);
        assertEquals(9 * 2.8 - well, area(shell, "cellar north wall, below ground"), NODES);
        assertEquals(9 * 0.3 + well, area(shell, "cellar north wall"), NODES);
        assertEquals(1.4 + 2 * 1.3, ShellBuilderTest.length(shell, JunctionKind.LIGHT_WELL), NODES);
        assertEquals(9 - 1.8, ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), NODES);
        assertEquals(1.8, ShellBuilderTest.length(shell, JunctionKind.SLAB_THRESHOLD), NODES);
        assertEquals(23, ShellBuilderTest.length(shell, JunctionKind.CELLAR_SLAB_EDGE), NODES);
        assertEquals(32 - 1, ShellBuilderTest.length(shell, JunctionKind.FOUNDATION_WALL_TOP), NODES);
        assertEquals(32, shell.exposedPerimeter(), NODES);
    }

    @Test
    void hillside() throws IOException {
        Shell shell = shell("hillside");
        double tan = Math.tan(Math.toRadians(10));
        double low = 2.8 + 0.2 / Math.cos(Math.toRadians(10)) - 0.4 * tan;
        double high = low + 6 * tan;
        assertEquals(54 * ((low + high) / 2 + 0.4), shell.externalVolume(), 54 * NODES);
        assertEquals(9 * (1.5 + 0.4), area(shell, "house north wall, below ground"), NODES);
        assertEquals(9 * (high - 1.5), area(shell, "house north wall"), NODES);
        assertEquals(6 * (0.4 + 1.9) / 2, area(shell, "house east wall, below ground"), NODES);
        assertEquals(6 * (low + high - 1.5) / 2, area(shell, "house east wall"), NODES);
        assertEquals(9 * (low + 0.4), area(shell, "house south wall"), NODES);
        assertEquals(30, shell.exposedPerimeter(), NODES);
        assertEquals(9, ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), NODES);
        assertEquals(21, ShellBuilderTest.length(shell, JunctionKind.CELLAR_SLAB_EDGE), NODES);
        assertEquals(9, ShellBuilderTest.length(shell, JunctionKind.EAVES), NODES);
        assertEquals(9, ShellBuilderTest.length(shell, JunctionKind.HIGH_EAVES), NODES);
    }

    /** Along a wall the ground runs even, wherever a storey above it ends. */
    @Test
    void groundRunsEvenAlongAWall() {
        Body.Storeys level = Houses.body(
                Houses.flat(),
                Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"),
                Houses.storey("upper floor", Houses.rectangle(0, 0, 2.5, 8), 2.8, "wall"));
        Body.Storeys sloping = Houses.storeys(
                level.line(),
                level.main().storeys(),
                level.main().base(),
                level.main().roof(),
                level.main().otherBases(),
                Lists.immutable.of(0.0, 2.0, 2.0, 0.0));
        Shell shell = ShellBuilder.build(Houses.house(sloping));
        double slab = ShellBuilderTest.surface(shell, "lowest floor")
                .assembly()
                .orElseThrow()
                .thickness();
        assertEquals(10 * (slab + (0 + 2) / 2.0), area(shell, "ground floor wall 0, below ground"), NODES);
        assertEquals(8 * (slab + 2), area(shell, "ground floor wall 1, below ground"), NODES);
    }

    /** A bay's floor is an overhang, its roof a lean-to that abuts on the wall above: no kinds of their own. */
    @Test
    void bay() throws IOException {
        Shell shell = shell("bay");
        double tan = Math.tan(Math.toRadians(20));
        double cos = Math.cos(Math.toRadians(20));
        double soffit = 2.8 - 0.4;
        double low = 2.8 + 2.5 + 0.2 / cos - 0.4 * tan;
        double high = low + 0.8 * tan;
        assertEquals(2.4 * 0.8, area(shell, "overhang under middle floor"), NODES);
        assertEquals(2.4 * 0.8 / cos, area(shell, "lower roof over middle floor"), NODES);
        assertEquals(
                Lists.immutable.of(4.0, 2.4, 2.4, 2.4),
                Lists.immutable
                        .of(
                                JunctionKind.OVERHANG_EDGE,
                                JunctionKind.WALL_UNDER_OVERHANG,
                                JunctionKind.ABUTMENT,
                                JunctionKind.EAVES)
                        .collect(kind -> Math.rint(ShellBuilderTest.length(shell, kind) * 100) / 100));
        assertEquals(2 * 0.8 / cos, ShellBuilderTest.length(shell, JunctionKind.VERGE), NODES);
        assertEquals(2 * (high - soffit), ShellBuilderTest.length(shell, JunctionKind.INSIDE_CORNER), NODES);
    }

    @Test
    void roomInRoof() throws IOException {
        Shell shell = shell("room-in-roof");
        double angle = Math.toRadians(40);
        double tan = Math.tan(angle);
        double ceiling = 2.8 - 0.3 + 0.4;
        // The knee wall is 0.3 m thick, the attic's floor lies at 2.8 m; the collar's outer face 2.4 + 0.4 m over it.
        double foot = 2.8 + 1.2 + 0.2 / Math.cos(angle) - 0.3 * tan;
        double collar = 2.8 + 2.4 + 0.4;
        double run = (collar - foot) / tan;
        double attic = 5.6 * (foot + 0.4) + (5.6 - run) * (collar - foot);
        assertEquals(10 * (2.4 * (ceiling + 0.4) + attic), shell.externalVolume(), 100 * NODES);
        assertEquals(2 * 10 * run / Math.cos(angle), area(shell, Body.Use.ROOF), NODES);
        assertEquals(10 * (5.6 - 2 * run), area(shell, "collar ceiling"), NODES);
        assertEquals(10 * (foot - ceiling), area(shell, "attic south wall"), NODES);
        assertEquals((5.6 - run) * (collar - foot), area(shell, "gable over attic east wall"), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                36,
                JunctionKind.OUTSIDE_CORNER,
                4 * (ceiling + 0.4) + 4 * (foot - ceiling),
                JunctionKind.INTERMEDIATE_FLOOR,
                2 * 5.6,
                JunctionKind.EAVES_COLD_LOFT,
                20 + 4 * 1.2,
                JunctionKind.VERGE,
                4 * run / Math.cos(angle),
                JunctionKind.GABLE_COLD_LOFT,
                2 * (5.6 - 2 * run),
                JunctionKind.COLLAR,
                20,
                JunctionKind.KNEE_WALL,
                20,
                JunctionKind.KNEE_WALL_FOOT,
                20);
    }

    @Test
    void dormers() throws IOException {
        Shell shell = shell("dormers");
        double eaves = 2.8 + 1.1 + 0.2 * ROOT2 - 0.4;
        double tan = Math.tan(Math.toRadians(15));
        double cos = Math.cos(Math.toRadians(15));
        // The gabled dormer's front begins 0.4 m behind the wall, 0.4 m over the eaves; its eaves lie 1.3 m higher, at
        // 1.7 m, and
        // meet the slope 1.7 m behind the wall; its ridge lies at 1.7 m + 1.2 m, 2.9 m behind the wall.
        double gabled = 2 * (2.5 * 2.5 * 2.5 - 1.3 * 1.3 * 1.3) / 6;
        // The shed rises from 1.4 m with 15° and meets the slope of 45° where 1.4 + v·tan 15° = v.
        double end = 1.4 / (1 - tan);
        double shed = 4 * 1.4 * end / 2;
        assertEquals(10 * (8 * (eaves + 0.4) + 16) + gabled + shed, shell.externalVolume(), 100 * NODES);
        assertEquals(2.4 * 1.3 + 1.2 * 1.2, area(shell, "bath front"), NODES);
        assertEquals(1.3 * 1.3 / 2, area(shell, "bath east cheek"), NODES);
        assertEquals(1.3 * 1.3 / 2, area(shell, "bath west cheek"), NODES);
        assertEquals((1.3 + 2.5) / 2 * 1.2 * ROOT2, area(shell, "bath roof, east slope"), NODES);
        assertEquals((1.3 + 2.5) / 2 * 1.2 * ROOT2, area(shell, "bath roof, west slope"), NODES);
        assertEquals(4 * 1.4, area(shell, "landing front"), NODES);
        assertEquals(1.4 * end / 2, area(shell, "landing east cheek"), NODES);
        assertEquals(4 * end / cos, area(shell, "landing roof"), NODES);
        double south = (10 * 4 - (1.3 + 2.5) * 1.2) * ROOT2;
        assertEquals(south, area(shell, "roof, south slope") + area(shell, "roof, south slope (2)"), NODES);
        assertEquals((10 * 4 - 4 * end) * ROOT2, area(shell, "roof, north slope"), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                36,
                JunctionKind.OUTSIDE_CORNER,
                4 * (eaves + 0.4) + 2 * 1.3 + 2 * 1.4,
                JunctionKind.INTERMEDIATE_FLOOR,
                36,
                JunctionKind.EAVES,
                10 + 6 + 2 * 1.3 + 4,
                JunctionKind.VERGE,
                4 * 4 * ROOT2 + 2 * 1.2 * ROOT2 + 2 * end / cos,
                JunctionKind.RIDGE,
                10 + 2.5,
                JunctionKind.DORMER_CHEEK,
                2 * 1.3 * ROOT2 + 2 * end * ROOT2,
                JunctionKind.VALLEY,
                2 * 1.2 * ROOT3 + 4,
                JunctionKind.ABUTMENT,
                2.4,
                JunctionKind.HEAD,
                1.2,
                JunctionKind.SILL,
                1.2,
                JunctionKind.JAMB,
                1.6);
    }

    /** A row is its dormers written one by one, in the middle or from a left end; a row of an odd number has one in the middle. */
    @Test
    void aRowOfDormersIsItsDormers(@TempDir Path folder) throws IOException {
        String one = "form: shed, side: north, width: 1.6 m, height: 1.4 m, pitch: 15 °, walls: wall";
        Shell row = withLanding(folder, "landing: {" + one + ", count: 3, spacing: 2.4 m}");
        assertEquals(
                AnyAngleTest.takeOff(withLanding(
                        folder,
                        "landing 1: {" + one + ", left: 1.8 m}\n      landing 2: {" + one + "}\n      landing 3: {"
                                + one + ", left: 6.6 m}")),
                AnyAngleTest.takeOff(row));
        assertEquals(
                AnyAngleTest.takeOff(row),
                AnyAngleTest.takeOff(
                        withLanding(folder, "landing: {" + one + ", count: 3, spacing: 2.4 m, left: 1.8 m}")));
        assertEquals(
                Lists.immutable.of("landing 1 front", "landing 2 front", "landing 3 front"),
                row.surfaces()
                        .collect(Surface::name)
                        .select(name -> name.matches("landing.*front"))
                        .toSortedList());
    }

    private static Shell withLanding(Path folder, String landing) throws IOException {
        Path file = Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", "dormers.yaml");
        String text = Files.readString(file);
        String line = text.lines()
                .filter(each -> each.strip().startsWith("landing:"))
                .findFirst()
                .orElseThrow();
        Path other = folder.resolve("house.yaml");
        return HouseFiles.read(Files.writeString(other, text.replace(line.strip(), landing)))
                .shell();
    }

    /** Six metres wide; the end is half of a twelve-sided polygon around a circle of 3 m. */
    @Test
    void roundEnd() throws IOException {
        Shell shell = shell("round-end");
        double eaves = 2.8 + 0.2 * ROOT2 - 0.4;
        double tan = Math.tan(Math.toRadians(15));
        double plan = 7 * 6 + 54 * tan;
        double around = 6 + 2 * 7 + 36 * tan;
        // Over the west end a hip, then a prism, then a pyramid over the round end, all 3 m high.
        double roof = 18 + 4 * 9 + 54 * tan;
        assertEquals(plan * (eaves + 0.4) + roof, shell.externalVolume(), 60 * NODES);
        assertEquals(plan * ROOT2, area(shell, Body.Use.ROOF), 10 * NODES);
        double corner = 3 / Math.cos(Math.toRadians(15));
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                around,
                JunctionKind.OUTSIDE_CORNER,
                8 * (eaves + 0.4),
                JunctionKind.EAVES,
                around,
                JunctionKind.RIDGE,
                4,
                JunctionKind.HIP,
                2 * 3 * ROOT3 + 6 * Math.hypot(corner, 3));
    }

    @Test
    void courtAndBay() throws IOException {
        Shell shell = shell("court-and-bay");
        // The bay adds a trapezium 1 m deep to two wings of 4 m by 9 m and the 4 m by 4 m between them.
        double plan = 2 * 4 * 9 + 4 * 4 + (4 + 2) / 2.0;
        double around = 50 + 2 * ROOT2;
        double top = 3 + 0.205;
        assertEquals(plan * (top + 0.4), shell.externalVolume(), plan * NODES);
        assertEquals(plan, area(shell, Body.Use.ROOF), NODES);
        assertEquals(around, shell.exposedPerimeter(), NODES);
        assertEquals(ROOT2 * (top + 0.4), area(shell, "house south-west wall"), NODES);
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                around,
                JunctionKind.OUTSIDE_CORNER,
                8 * (top + 0.4),
                JunctionKind.INSIDE_CORNER,
                4 * (top + 0.4),
                JunctionKind.FLAT_ROOF_EDGE,
                around);
    }

    /** What an upper storey stands on beside a heated cellar is a floor over an unheated space, not one that hangs over it. */
    @Test
    void floorOverAColdCellarBesideAHeatedOne(@TempDir Path folder) throws IOException {
        String house = Files.readString(
                Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", "over-the-garage.yaml"));
        Path file = folder.resolve("house.yaml");
        Files.writeString(
                file,
                house.replace(
                                "overhang: {assembly: floor over the garage, faces: garage}",
                                "base: {kind: over unheated, assembly: floor over the garage, faces: garage}")
                        .replaceFirst("(?s)openings:.*?\n\n", ""));
        Shell shell = HouseFiles.read(file).shell();
        Surface floor = ShellBuilderTest.surface(shell, "floor under upper floor");
        assertEquals(Body.Use.FLOOR, floor.use());
        assertEquals(Exposure.Kind.UNHEATED, floor.exposure().kind());
        assertEquals(3.5 * 8, floor.externalArea(), NODES);
        assertEquals(2 * 3.5 + 8, length(shell, JunctionKind.UNHEATED_BELOW_EDGE), NODES);
        assertEquals(8, length(shell, JunctionKind.WALL_UNDER_OVERHANG), NODES);
        assertEquals(0, length(shell, JunctionKind.OVERHANG_EDGE), NODES);
    }

    @Test
    void overTheGarage() throws IOException {
        Shell shell = shell("over-the-garage");
        double soffit = 2.8 - 0.4;
        // At 30° what lies outside the rafters raises the eaves as much as the wall lowers them.
        double eaves = 2.8 + 2.6;
        double slope = 8 / ROOT3;
        assertEquals(
                80 * (eaves - soffit) + 52 * (soffit + 0.4) + 10 * 8 * 4 / ROOT3 / 2,
                shell.externalVolume(),
                80 * NODES);
        assertEquals(3.5 * 8, area(shell, "overhang under upper floor"), NODES);
        assertEquals(8 * (soffit + 0.4), area(shell, "ground floor east wall"), NODES);
        assertEquals(
                Lists.immutable.of(Exposure.Kind.UNHEATED, Exposure.Kind.UNHEATED),
                Lists.immutable
                        .of("overhang under upper floor", "ground floor east wall")
                        .collect(name ->
                                ShellBuilderTest.surface(shell, name).exposure().kind()));
        junctions(
                shell,
                JunctionKind.SLAB_EDGE,
                29 - 0.9,
                JunctionKind.of("garage slab at the door"),
                0.9,
                JunctionKind.HEAD,
                0.9,
                JunctionKind.JAMB,
                2 * 2.1,
                JunctionKind.OUTSIDE_CORNER,
                4 * (soffit + 0.4) + 4 * (eaves - soffit),
                JunctionKind.INTERMEDIATE_FLOOR,
                21,
                JunctionKind.WALL_UNDER_OVERHANG,
                8,
                JunctionKind.OVERHANG_EDGE,
                15,
                JunctionKind.EAVES,
                20,
                JunctionKind.VERGE,
                4 * slope,
                JunctionKind.RIDGE,
                10);
    }

    /** Details of a kind are drawn for its typical angle: where a sunk part's wall ends under a higher floor, the shell's. */
    @Test
    void aSteppedFootingIsDrawnAsTheShellMakesIt() throws IOException {
        for (String house : Lists.immutable.of("split-level", "part-cellar")) {
            Edge edge = shell(house).edges().detect(each -> each.kind() == JunctionKind.STEPPED_FOOTING);
            Surface wall = edge.second().orElseThrow();
            assertEquals(JunctionKind.STEPPED_FOOTING.typical().angle(), edge.angle(), 1e-9, house);
            assertEquals(Body.Use.FLOOR, edge.first().use(), house);
            assertEquals(Body.Use.WALL, wall.use(), house);
            assertEquals(
                    Lists.immutable.of(Exposure.Kind.GROUND, Exposure.Kind.GROUND),
                    Lists.immutable.of(
                            edge.first().exposure().kind(), wall.exposure().kind()),
                    house);
        }
    }

    /** Each side of a house that stands at 45° is one of its six. */
    @Test
    void aHouseAtHalfARightAngleHasFourSides() {
        Body.Storeys box =
                Houses.body(Houses.flat(), Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"));
        Shell shell = ShellBuilder.build(Houses.house(AnyAngleTest.turned(box, 45)));
        assertEquals(
                Lists.immutable.of(Side.NORTH, Side.EAST, Side.SOUTH, Side.WEST).toSet(),
                shell.surfaces()
                        .select(s -> s.use() == Body.Use.WALL)
                        .collect(Surface::side)
                        .toSet());
    }

    /** Sides are called as their walls and seams are. */
    @Test
    void sidesAreNamedByWhatTheirWallsFace() {
        Body.Storeys box =
                Houses.body(Houses.flat(), Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"));
        assertEquals("north, east, south, west", sides(box, 20));
        assertEquals("north-west, north-east, south-east, south-west", sides(box, 30));
        assertEquals("north-east, south-east, south-west, north-west", sides(box, -30));
        // Walls at 30° and at 60° to the east both face north-east.
        Body.Storeys three = Houses.body(
                Houses.flat(),
                Houses.storey("ground floor", Houses.points(0, 0, 12, 0, 10, 3.464, 0, 9.238), 3, "wall"));
        assertEquals("north, east, south, west", sides(three, 0));
    }

    private static String sides(Body.Storeys body, double degrees) {
        Shell shell = ShellBuilder.build(Houses.house(AnyAngleTest.turned(body, degrees)));
        return Lists.immutable
                .of(Side.NORTH, Side.EAST, Side.SOUTH, Side.WEST)
                .collect(shell::nameOf)
                .makeString();
    }
}
