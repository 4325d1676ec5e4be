package coldseam.junctions.hand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Section;
import coldseam.conduction.Solution;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.files.FileFaultException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sections drawn by hand, and their answers as JSON. */
class SectionFileTest {

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

    @Test
    void readsInItsUnitAndWritesInIt() throws IOException {
        SectionFile file = SectionFile.load(file("wall.yaml", WALL));
        assertEquals(
                0.38,
                file.section().regions().getFirst().outline().corners().get(1).x(),
                1e-12);
        assertEquals(Symmetry.PLANAR, file.section().symmetry());
        assertEquals(1e-7, file.section().snap(), 1e-15);
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

    /** A layer with an edge has a gap, and most of it lies around that edge, in the file's unit. */
    @Test
    void theGapIsGivenWithItsPlaces() throws IOException {
        SectionFile file = SectionFile.load(file(
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
        Section section =
                SectionFile.read(file("rod.yaml", WALL.replace("lengths: mm", "lengths: cm\naxisymmetric: true")));
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
        Section section = SectionFile.read(file("s.json", json));
        assertEquals(
                0.254, section.regions().getFirst().outline().corners().get(1).x(), 1e-12);
        assertEquals(0.2, section.boundaries().getFirst().surfaceResistance().orElseThrow());
    }

    /** A turned drawing keeps the rounding of a thousandth of its unit; layers of half a millimetre in metres stay apart. */
    @Test
    void theLatticeFollowsTheDrawing() throws IOException {
        String turned = WALL.replace(
                "rectangle: [200, 0, 380, 1000]",
                "polygon: [[0, 0], [173.205, 100], [73.205, 273.205], [-100, 173.205]]");
        assertEquals(1e-6, SectionFile.read(file("turned.yaml", turned)).snap(), 1e-12);
        String metres = WALL.replace("lengths: mm", "lengths: m")
                .replace("380", "0.3805")
                .replace("1000", "1");
        assertEquals(1e-4, SectionFile.read(file("metres.yaml", metres)).snap(), 1e-12);
        String fine = metres.replace("0.3805", "0.38055");
        assertEquals(1e-5, SectionFile.read(file("fine.yaml", fine)).snap(), 1e-12);
    }

    @Test
    void tellsEveryFault() throws IOException {
        Path bad = file(
                "bad.yaml",
                WALL.replace("conductivity: 0.8", "conductivity: -1")
                        .replace("environment: indoor", "environment: indor")
                        .replace("lengths: mm", "lengths: feet")
                        .replace("rectangle: [200, 0, 380, 1000]", "rectangle: [200, 0, 380]"));
        String told = assertThrows(FileFaultException.class, () -> SectionFile.read(bad))
                .getMessage();
        assertTrue(told.contains("bad.yaml:2:10: lengths is needed; got \"feet\"; allowed: mm, cm, m, in"), told);
        assertTrue(told.contains("bad.yaml:4:35: conductivity is out of range; got -1"), told);
        assertTrue(told.contains("bad.yaml:4:50:"), told);
        assertTrue(told.contains("did you mean \"indoor\"?"), told);
    }
}
