package coldseam.junctions.hand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.files.Fault;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sections drawn by hand, and their answers as JSON. */
class DrawnSectionTest {

    /** A brick wall of 180 mm: U = 1/(0.13 + 0.18/0.8 + 0.04), closed form. */
    private static final String WALL = """
            section: Plain wall
            lengths: mm
            regions:
            - {material: brick, conductivity: 0.8, rectangle: [200, 0, 380, 1000]}
            environments:
              indoor: {temperature: 20, surface-resistance: 0.13}
              outdoor: {temperature: -5, surface-resistance: 0.04}
            boundaries:
            - {environment: outdoor, path: [[200, 0], [200, 1000]]}
            - {environment: indoor, path: [[380, 0], [380, 1000]]}
            probes:
            - {name: face, at: [380, 500]}
            """;

    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static DrawnSection load(Path path) {
        return (DrawnSection) Drawn.load(path);
    }

    @Test
    void aDrawingInAnotherUnitOrACoefficientForAResistanceIsRefused() throws IOException {
        assertTrue(
                refusal(WALL.replace("lengths: mm", "lengths: m"))
                        .endsWith(
                                "yaml:1:1: a drawing is as large as parts of houses are; got 1000 m from one side to the other,"
                                        + " lengths: m; allowed: 0.005 m to 300 m; correct the key lengths, or the coordinates"));
        assertTrue(refusal(WALL.replace("[200, 0, 380, 1000]", "[0.2, 0, 0.38, 1]"))
                .contains("got 0.001 m from"));
        String said = refusal(WALL.replace("0.13", "7.7"));
        assertTrue(
                said.contains(
                        "yaml:6:49: surface-resistance is out of range; got 7.7; allowed: at least 0 and at most 1"),
                said);
    }

    private String refusal(String text) throws IOException {
        Path file = file("refused.yaml", text);
        return assertThrows(FileFaultException.class, () -> load(file)).getMessage();
    }

    @Test
    void facesThatNoAirTouchesAreListed() throws IOException {
        DrawnSection cut = load(file("wall.yaml", WALL));
        assertEquals(2, cut.withoutAir().size());
        cut.withoutAir().forEach(piece -> assertEquals(0.18, width(piece), 1e-5));
        String forgotten = "- {environment: outdoor, path: [[200, 0], [200, 1000]]}";
        DrawnSection half = load(file("half.yaml", WALL.replace(forgotten, forgotten.replace("1000]", "400]"))));
        assertEquals(
                Lists.immutable.of(200.0, 400.0),
                half.withoutAir()
                        .flatCollect(piece -> Lists.immutable.of(piece.getFirst(), piece.getLast()))
                        .select(point -> point.x() < 0.21 && point.y() < 0.41 && point.y() > 0.39)
                        .flatCollect(point -> Lists.immutable.of(
                                (double) Math.round(1000 * point.x()), (double) Math.round(1000 * point.y()))));
        DrawnSection rod = load(file(
                "rod.yaml",
                WALL.replace("lengths: mm", "lengths: mm\naxisymmetric: true")
                        .replace("[200, 0, 380, 1000]", "[0, 0, 380, 1000]")
                        .replace("[[200, 0], [200, 1000]]", "[[0, 0], [380, 0]]")));
        assertEquals(0.38, width(rod.withoutAir().getOnly()), 1e-5);
        rod.withoutAir().getOnly().forEach(point -> assertEquals(1, point.y(), 1e-5));
    }

    private static double width(ImmutableList<Point> piece) {
        return Math.abs(piece.getFirst().x() - piece.getLast().x());
    }

    @Test
    void readsInItsUnitAndWritesInIt() throws IOException {
        DrawnSection file = load(file("wall.yaml", WALL));
        assertEquals(
                0.38,
                file.section().regions().getFirst().outline().corners().get(1).x(),
                1e-12);
        assertEquals(Symmetry.PLANAR, file.section().symmetry());
        Solution solution = Conduction.solve(file.section(), Accuracy.standard());
        double u = 1 / (0.13 + 0.18 / 0.8 + 0.04);
        assertTrue(solution.coupling("indoor", "outdoor").width() < 1e-6);
        assertEquals(u, solution.coupling("indoor", "outdoor").middle(), 1e-8);
        String json = SectionJson.write(solution, file.unit());
        assertTrue(json.contains("\"section\": \"Plain wall\""), json);
        assertTrue(json.contains("\"unit\": \"W/(m·K)\""), json);
        assertTrue(json.contains("\"name\": \"face\""), json);
        // Surface temperature factor of a plane wall: 1 − U·Rsi.
        String factor = json.replaceAll(
                "(?s).*\"environment\": \"indoor\",\\s*\"lowestTemperature\": [^,]+,.*?\"temperatureFactor\": ([0-9.]+).*",
                "$1");
        assertEquals(1 - u * 0.13, Double.parseDouble(factor), 1e-6);
        // A plane wall is exact: no corner has a gap around it.
        assertTrue(json.contains("\"asNarrowAsAsked\": true"), json);
        assertTrue(json.replaceAll("\\s", "").contains("\"largestShares\":[]"), json);
        // 380 mm come back as they were written.
        assertTrue(json.replaceAll("\\s", "").contains("\"at\":[380,"), json);
    }

    /** Every list has a limit: a small file must not ask for hours. */
    @Test
    void tooManyRegionsAreRefusedAtTheirPlace() throws IOException {
        String region = "- {material: brick, conductivity: 0.8, rectangle: [200, 0, 380, 1000]}\n";
        Path file = file("many.yaml", WALL.replace(region, region.repeat(501)));
        FileFaultException refused = assertThrows(FileFaultException.class, () -> load(file));
        assertEquals(1, refused.faults().size());
        String said = refused.faults().getFirst().message();
        assertTrue(said.startsWith(file + ":4:1: ") && said.contains("501") && said.contains("500"), said);
    }

    /** A layer with an edge has a gap, and most of it lies around that edge, in the file's unit. */
    @Test
    void theGapIsGivenWithItsPlaces() throws IOException {
        DrawnSection file = load(file(
                "edge.yaml",
                WALL.replace(
                        "environments:",
                        "- {material: board, conductivity: 0.03, rectangle: [200, 0, 300, 500]}\nenvironments:")));
        Solution solution = Conduction.solve(file.section(), Accuracy.standard());
        String json = SectionJson.write(solution, file.unit()).replaceAll("\\s", "");
        String places = json.substring(json.indexOf("\"gap\""), json.indexOf("\"unknowns\""));
        double total = Double.parseDouble(places.replaceAll(".*\"total\":([-0-9.E]+),.*", "$1"));
        double width = solution.coupling("indoor", "outdoor").width();
        assertEquals(width, total, 1e-6 * width);
        assertTrue(places.contains("\"aroundCorner\":[300,500]"), places);
        assertTrue(places.contains("\"aroundCorner\":[200,500]"), places);
    }

    @Test
    void axisymmetricAndOtherUnits() throws IOException {
        Section section = load(file("rod.yaml", WALL.replace("lengths: mm", "lengths: cm\naxisymmetric: true")))
                .section();
        assertEquals(Symmetry.AXISYMMETRIC, section.symmetry());
        assertEquals(
                3.8, section.regions().getFirst().outline().corners().get(1).x(), 1e-12);
    }

    @Test
    void jsonIsReadToo() throws IOException {
        String json = """
                {"section": "s", "lengths": "in",
                 "regions": [{"material": "brick", "conductivity": 0.8, "polygon": [[0, 0], [10, 0], [10, 40], [0, 40]]}],
                 "environments": {"a": {"temperature": 1, "surface-resistance": 0.1}},
                 "boundaries": [{"environment": "a", "path": [[0, 0], [0, 40]], "surface-resistance": 0.2}]}
                """;
        Section section = load(file("s.json", json)).section();
        assertEquals(
                0.254, section.regions().getFirst().outline().corners().get(1).x(), 1e-12);
        assertEquals(0.2, section.boundaries().getFirst().surfaceResistance().orElseThrow());
    }

    /**
     * Brick with a strip of steel through it, 2 mm in the first and 0.2 mm in the second, the first with a slanted edge,
     * drawn in four units: the layers stay, and the intervals are the same but for rounding. Worked out apart: without the
     * steel the coupling is that of the brick alone, far outside.
     */
    @ParameterizedTest
    @CsvSource({"0.002, 0.39", "0.0002, 0.4"})
    void theSameInEveryUnit(double steel, double slanted) throws IOException {
        Interval millimetres = solved("mm", 1000, steel, slanted);
        double brick = 0.4 / (0.13 + 0.3 / 0.8 + 0.04);
        assertTrue(millimetres.lower() > 1.01 * brick, millimetres::toString);
        for (Interval other : Lists.immutable.of(
                solved("cm", 100, steel, slanted),
                solved("m", 1, steel, slanted),
                solved("in", 1 / 0.0254, steel, slanted))) {
            assertEquals(millimetres.lower(), other.lower(), 1e-10 * brick);
            assertEquals(millimetres.upper(), other.upper(), 1e-10 * brick);
        }
    }

    private Interval solved(String unit, double scale, double steel, double slanted) throws IOException {
        String text = String.format(
                Locale.ROOT, """
                section: Steel in brick
                lengths: %s
                regions:
                - {material: brick, conductivity: 0.8, polygon: [[0, 0], [%2$.17g, 0], [%3$.17g, %4$.17g], [0, %4$.17g]]}
                - {material: steel, conductivity: 50, rectangle: [%5$.17g, 0, %6$.17g, %4$.17g]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                  outdoor: {temperature: 0, surface-resistance: 0.04}
                boundaries:
                - {environment: indoor, path: [[0, 0], [%2$.17g, 0]]}
                - {environment: outdoor, path: [[0, %4$.17g], [%3$.17g, %4$.17g]]}
                """, unit, 0.4 * scale, slanted * scale, 0.3 * scale, 0.2 * scale, (0.2 + steel) * scale);
        return Conduction.solve(load(file(unit + steel + ".yaml", text)).section(), Accuracy.standard())
                .coupling("indoor", "outdoor");
    }

    /** Infinite flow between two prescribed sides that meet: null and why, and each side has what it is prescribed. */
    @Test
    void infinityIsNullWithItsReason() {
        DrawnSection file = load(Path.of("../../fixtures/sections/iso-10211-case-1.yaml"));
        Solution solution = Conduction.solve(file.section(), new Accuracy(1e-2, 20_000));
        String json = SectionJson.write(solution, file.unit());
        assertTrue(json.contains("\"lower\": null") && json.contains("\"upper\": null"), json);
        assertTrue(json.contains("\"got\": null") && json.contains("and meet at (0, 2) m"), json);
        assertEquals(20, solution.surface("warm").lowest());
        assertEquals(0, solution.surface("cold").lowest());
    }

    private static final String JUNCTION = """
            junction:
              kind: outside corner
              legs:
              - {name: wall, transmittance: 0.34, external: 1.8, internal: 1.5, insulation: 0.1, cut: [[1.5, 0], [1.5, -0.3]]}
              - {name: wall, transmittance: 0.34, external: 1.8, internal: 1.5, insulation: 0.1, cut: [[0, 1.5], [-0.3, 1.5]]}
            """;

    /** An environment that nothing faces has no coupling: no refinement looks for one, and no detail is made of it. */
    @Test
    void anEnvironmentThatNothingFaces() throws IOException {
        String corner = Files.readString(Path.of("../../fixtures/sections/corner-insulated-outside.yaml"));
        DrawnSection file = load(
                file("unseen.yaml", corner.replaceAll("- \\{environment: outdoor, path: [^\n]*\n", "") + JUNCTION));
        assertEquals(1, file.section().boundaries().size());
        Solution solution = Conduction.solve(file.section(), Accuracy.standard());
        assertTrue(solution.met() && solution.unknowns() < 10_000, solution.outcome() + " " + solution.unknowns());
        assertTrue(solution.coupling("indoor", "outdoor").upper() < 1e-14);
        Faults faults = new Faults();
        assertTrue(HandDrawing.detail("corner", file, faults).isEmpty());
        assertTrue(assertThrows(FileFaultException.class, faults::throwIfAny)
                .getMessage()
                .contains("none faces outdoor"));
    }

    @Test
    void tellsEveryFault() throws IOException {
        Path bad = file(
                "bad.yaml",
                WALL.replace("conductivity: 0.8", "conductivity: -1")
                        .replace("environment: indoor", "environment: indor")
                        .replace("lengths: mm", "lengths: feet")
                        .replace("rectangle: [200, 0, 380, 1000]", "rectangle: [200, 0, 380]"));
        String told = assertThrows(FileFaultException.class, () -> load(bad)).getMessage();
        assertTrue(told.contains("bad.yaml:2:10: lengths is needed; got \"feet\"; allowed: mm, cm, m, in"), told);
        assertTrue(told.contains("bad.yaml:4:35: conductivity is out of range; got -1"), told);
        assertTrue(told.contains("bad.yaml:4:50:"), told);
        assertTrue(told.contains("did you mean \"indoor\"?"), told);
    }

    /** Of what is drawn too, each fault at its line, and none that only follows from another. */
    @Test
    void tellsEveryFaultOfTheDrawing() throws IOException {
        Path bad = file("drawn.yaml", """
                section: drawn badly
                lengths: mm
                regions:
                - {material: brick, conductivity: 0.8, rectangle: [0, 0, 200, 1000]}
                - {material: foil, conductivity: 50, rectangle: [50, 0, 50.0001, 1000]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                  outdoor: {temperature: 0, surface-resistance: 0.04}
                boundaries:
                - {environment: indoor, path: [[0, 0], [0, 1000]]}
                - {environment: outdoor, path: [[100, 0], [100, 1000]]}
                - {environment: outdoor, path: [[200, 0], [200, 400]]}
                - {environment: outdoor, path: [[200, 400], [200, 900], [200, 600]]}
                probes:
                - {name: far, at: [300, 0]}
                """);
        ImmutableList<String> told =
                assertThrows(FileFaultException.class, () -> load(bad)).faults().collect(Fault::message);
        ImmutableList<String> starts = Lists.immutable.of(
                ":5:3: region 2 (foil) at (0.05, 0) m is so thin that nothing of it is left",
                ":11:3: boundary 2 (outdoor) is not on the outline at (0.1, 0.5) m (both sides are painted)",
                ":13:3: boundary 4 (outdoor) runs over another boundary, or over itself",
                ":15:3: probe far at (0.3, 0) m is outside the section");
        assertEquals(starts.size(), told.size(), told::toString);
        starts.forEachWithIndex(
                (start, i) -> assertTrue(told.get(i).startsWith(bad + start), () -> told.get(i) + "\n" + start));
    }

    /** A boundary across a gap has nothing painted beside it there, which is no fault of its own. */
    @Test
    void aGapIsToldAtWhatItLiesBeside() throws IOException {
        Path bad = file("gap.yaml", """
                section: a gap
                lengths: mm
                regions:
                - {material: brick, conductivity: 0.8, rectangle: [0, 0, 500, 200]}
                - {material: brick, conductivity: 0.8, rectangle: [500.01, 0, 1000, 200]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                boundaries:
                - {environment: indoor, path: [[0, 0], [1000, 0]]}
                """);
        String told = assertThrows(FileFaultException.class, () -> load(bad))
                .faults()
                .getOnly()
                .message();
        assertTrue(
                told.startsWith(bad + ":4:3: a gap 0.01 mm wide") || told.startsWith(bad + ":5:3: a gap 0.01"), told);
    }

    @Test
    void aPartThatNothingFacesIsToldAtItsRegion() throws IOException {
        Path bad = file(
                "alone.yaml",
                WALL.replace(
                        "environments:",
                        "- {material: board, conductivity: 0.03, rectangle: [900, 0, 950, 500]}\nenvironments:"));
        String told = assertThrows(FileFaultException.class, () -> load(bad))
                .faults()
                .getOnly()
                .message();
        assertTrue(told.contains("alone.yaml:5:3: the part of the section around"), told);
    }
}
