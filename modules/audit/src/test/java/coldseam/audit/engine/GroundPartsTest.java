package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Note;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellBuilder;
import coldseam.envelope.shell.Surface;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Floors on the ground of houses of fixtures/houses/shapes, worked out apart; floors and walls are 0.4 m thick. */
class GroundPartsTest {

    /** m and m²: sums of a few products of lattice coordinates. */
    private static final double ROUND_OFF = 1e-6;

    private static House house(String name) throws IOException {
        return Sample.house(text(name));
    }

    private static Surface surface(Shell shell, String name) {
        return shell.surfaces().detect(each -> each.name().equals(name));
    }

    private static void part(GroundParts.Part part, double area, double perimeter, double depth) {
        assertEquals(area, part.area(), ROUND_OFF);
        assertEquals(perimeter, part.perimeter(), ROUND_OFF);
        assertEquals(depth, part.depth(), ROUND_OFF);
        assertEquals(0.4, part.wallThickness(), ROUND_OFF);
    }

    @Test
    void cellarSlabAndCrawlSpaceAreEachTheirOwn() throws IOException {
        House house = house("part-cellar");
        Shell shell = ShellBuilder.build(house);
        GroundParts parts = new GroundParts(house, shell);
        part(parts.part(surface(shell, "lowest floor")), 5 * 8, 8 + 5 + 5, 2.4);
        part(parts.part(surface(shell, "floor under ground floor, east side")), 3 * 8, 3 + 3, 0);
        Surface crawl = surface(shell, "floor under ground floor, east side (2)");
        part(parts.part(crawl), 2 * 8, 8 + 2 + 2, 0);
        assertEquals(
                0.3,
                parts.part(crawl)
                        .base()
                        .orElseThrow()
                        .crawlSpace()
                        .orElseThrow()
                        .height());
        Surface between = surface(shell, "cellar east wall, under the floor beside it");
        assertEquals(2.4, parts.wallDepth(between), ROUND_OFF);
        part(parts.part(between), 5 * 8, 18, 2.4);
    }

    /** Its eastern wall faces a cold store under the ground floor: outside what is insulated, so it counts, in no ground. */
    @Test
    void aCellarsWallToAColdSpaceIsExposed() throws IOException {
        String text = text("part-cellar");
        String cold = text.substring(0, text.indexOf("  other-bases:"))
                        .replace("body:", "neighbours: {store: {temperature-factor: 0.6}}\n\nbody:")
                        .replace(
                                "    height: 2.7 m\n    walls: wall",
                                "    height: 2.7 m\n    walls: {all: wall, east: {assembly: wall, faces: store}}")
                        .replace(
                                "    base: {kind: slab on ground, assembly: slab}",
                                "    base: {kind: over unheated, assembly: timber floor, faces: store}")
                + text.substring(text.indexOf("  roof: {form"), text.indexOf("openings:"));
        House house = Sample.house(cold);
        Shell shell = ShellBuilder.build(house);
        part(new GroundParts(house, shell).part(surface(shell, "lowest floor")), 5 * 8, 8 + 5 + 5 + 8, 2.4 * 18 / 26);
        assertEquals(26, shell.exposedPerimeter(), ROUND_OFF);
    }

    @Test
    void aCellarInASlopeIsAsDeepAsItsGroundStandsOnTheMean() throws IOException {
        House house = house("walk-out");
        Shell shell = ShellBuilder.build(house);
        GroundParts.Part floor = new GroundParts(house, shell).part(surface(shell, "lowest floor"));
        // 2.4 m along the north but for a light well of 1.4 m by 1.3 m; from 2.4 m to nothing along east and west.
        part(floor, 63, 32, (9 * 2.4 - 1.4 * 1.3 + 2 * 7 * 1.2) / 32);
    }

    @Test
    void aBuriedWallOfASlabHouseTakesNoSlabsFormula() throws IOException {
        House house = house("hillside");
        Shell shell = ShellBuilder.build(house);
        SurfaceHeats heats = new SurfaceHeats(house, shell, true);
        SurfaceHeat wall = heats.compute()
                .detect(each -> each.surface().use() == Body.Use.WALL
                        && each.surface().exposure().kind() == Exposure.Kind.GROUND
                        && each.surface().normal().y() > 0.9);
        SurfaceHeat floor = heats.compute().detect(each -> each.surface().name().equals("lowest floor"));
        double plain = wall.build().orElseThrow().corrected();
        assertTrue(wall.transmittance() < plain, "the ground beside it insulates: " + wall.transmittance());
        assertTrue(
                Math.abs(wall.transmittance() - floor.transmittance()) > 0.005,
                "U of the wall " + wall.transmittance() + ", of the floor " + floor.transmittance());
    }

    /** A cellar under the western half, by surfaces: the step between the two floors is nobody's exposed perimeter. */
    @Test
    void explicitFloorsAtTwoDepthsAreEachTheirOwn() throws IOException {
        String text = text("hillside");
        House house = Sample.house(text.substring(0, text.indexOf("body:")) + """
                body:
                  points:
                    a: [0 m, 0 m, -2.8 m]
                    b: [5 m, 0 m, -2.8 m]
                    c: [5 m, 8 m, -2.8 m]
                    d: [0 m, 8 m, -2.8 m]
                    e: [5 m, 0 m, -0.4 m]
                    f: [11 m, 0 m, -0.4 m]
                    g: [11 m, 8 m, -0.4 m]
                    h: [5 m, 8 m, -0.4 m]
                    a0: [0 m, 0 m, 0 m]
                    e0: [5 m, 0 m, 0 m]
                    h0: [5 m, 8 m, 0 m]
                    d0: [0 m, 8 m, 0 m]
                    a3: [0 m, 0 m, 3 m]
                    f3: [11 m, 0 m, 3 m]
                    g3: [11 m, 8 m, 3 m]
                    d3: [0 m, 8 m, 3 m]
                  levels:
                    cellar: {height: -2.4 m}
                  surfaces:
                    cellar floor: {points: [a, d, c, b], assembly: slab, use: floor, faces: ground}
                    slab: {points: [e, h, g, f], assembly: slab, use: floor, faces: ground}
                    step: {points: [b, c, h, e], assembly: wall, use: wall, faces: ground}
                    south below: {points: [a, b, e, e0, a0], assembly: wall, use: wall, faces: ground}
                    north below: {points: [c, d, d0, h0, h], assembly: wall, use: wall, faces: ground}
                    west below: {points: [d, a, a0, d0], assembly: wall, use: wall, faces: ground}
                    south: {points: [a0, e0, e, f, f3, a3], assembly: wall, use: wall}
                    north: {points: [g, h, h0, d0, d3, g3], assembly: wall, use: wall}
                    west: {points: [d0, a0, a3, d3], assembly: wall, use: wall}
                    east: {points: [f, g, g3, f3], assembly: wall, use: wall}
                    roof: {points: [a3, f3, g3, d3], assembly: roof, use: roof}
                """);
        Shell shell = ShellBuilder.build(house);
        GroundParts parts = new GroundParts(house, shell);
        part(parts.part(surface(shell, "cellar floor")), 5 * 8, 5 + 8 + 5, 2.4);
        part(parts.part(surface(shell, "slab")), 6 * 8, 6 + 8 + 6, 0);
        assertEquals(2.4, parts.wallDepth(surface(shell, "step")), ROUND_OFF);
        assertEquals(2.4, parts.wallDepth(surface(shell, "west below")), ROUND_OFF);
    }

    /** It lost nothing. */
    @Test
    void aWallInTheGroundBesideACrawlSpaceLosesAsIfOutdoors() throws IOException {
        String crawl = text("hillside")
                .replace(
                        "base: {kind: slab on ground, assembly: slab}",
                        "base: {kind: suspended, assembly: slab, crawl-space: {height: 0.3 m, vents: 0.0015 m²/m,"
                                + " wall-transmittance: 1.5 W/(m²·K)}}");
        asIfOutdoors(crawl, 3);
    }

    private static String text(String name) throws IOException {
        return Files.readString(
                Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes", name + ".yaml"));
    }

    private static void asIfOutdoors(String text, int walls) {
        House house = Sample.house(text);
        SurfaceHeats heats = new SurfaceHeats(house, ShellBuilder.build(house), true);
        ImmutableList<SurfaceHeat> buried = heats.compute()
                .select(each -> each.surface().use() == Body.Use.WALL
                        && each.surface().exposure().kind() == Exposure.Kind.GROUND);
        assertEquals(walls, buried.size());
        buried.forEach(wall -> {
            double resistance = wall.surface()
                    .assembly()
                    .orElseThrow()
                    .layers()
                    .sumOfDouble(layer -> layer.thickness() / layer.material().conductivity());
            assertEquals(1 / (0.13 + resistance), wall.transmittance(), 0.005, "without the ground");
            assertTrue(heats.notes().contains(new Note.WallInGroundAlone(wall.surface())));
        });
    }
}
