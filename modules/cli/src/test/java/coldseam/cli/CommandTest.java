package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exit codes, messages and files; on a box whose junctions need no computing. */
class CommandTest {

    @TempDir
    Path folder;

    private Path box() throws IOException {
        return box("");
    }

    /** The box with some of its text replaced. */
    private Path box(String... replaced) throws IOException {
        String text;
        try (InputStream in = CommandTest.class.getResourceAsStream("box.yaml")) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (int i = 0; i + 1 < replaced.length; i += 2) {
            assertTrue(text.contains(replaced[i]), replaced[i]);
            text = text.replace(replaced[i], replaced[i + 1]);
        }
        return Files.writeString(folder.resolve("box.yaml"), text);
    }

    @Test
    void checkPrintsFindingsInEightyColumnsAndWritesNothing() throws IOException {
        Run run = Run.of("check", box().toString());
        assertEquals(Exit.FOUND.code(), run.code(), run::err);
        assertTrue(run.out().startsWith("Box: Not unbroken: 3 gaps found"), run::out);
        assertTrue(run.out().contains("[junction-without-detail]"), run::out);
        for (String line : run.lines()) {
            assertTrue(line.codePointCount(0, line.length()) <= 80, line);
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void auditWritesEveryDocumentAskedFor() throws IOException {
        Path made = folder.resolve("made");
        Run run = Run.of(
                "audit",
                box().toString(),
                "-o",
                made.resolve("box.pdf").toString(),
                "--json",
                made.resolve("box.json").toString(),
                "--csv",
                made.resolve("box.csv").toString(),
                "--units",
                "us",
                "--paper",
                "letter");
        assertEquals(Exit.FOUND.code(), run.code(), run::err);
        assertTrue(Files.readString(made.resolve("box.pdf"), StandardCharsets.ISO_8859_1)
                .startsWith("%PDF-"));
        assertTrue(Files.readString(made.resolve("box.json")).contains("junction-without-detail"));
        assertTrue(Files.size(made.resolve("box.csv")) > 100);
        assertTrue(Files.size(made.resolve("box-heat-loss.csv")) > 100);
        // The box gives no monthly climate, and the file says so.
        String moisture = Files.readString(made.resolve("box-moisture.csv"));
        assertTrue(moisture.startsWith("assembly,heat flow,verdict,most lb/ft²"), moisture);
        assertTrue(moisture.contains("gives no monthly climate"), moisture);
        assertTrue(run.out().contains("Btu/(h·°F)"), run::out);
        try (Stream<Path> files = Files.list(made)) {
            assertEquals(5, files.count(), "no temporary file is left");
        }
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        Path box = box();
        for (String name : new String[] {"one", "two"}) {
            Run.of("audit", box.toString(), "-o", folder.resolve(name + ".pdf").toString());
        }
        assertEquals(-1, Files.mismatch(folder.resolve("one.pdf"), folder.resolve("two.pdf")));
    }

    @Test
    void aFaultyFileIsRefusedWithEveryFault() throws IOException {
        Run run = Run.of("check", box("20 °C", "20", "-10 °C", "-10 furlongs").toString());
        assertEquals(Exit.REFUSED.code(), run.code());
        assertEquals("", run.out());
        assertEquals(2, run.err().lines().count(), run::err);
        assertTrue(run.err().contains("box.yaml:4:"), run::err);
        assertTrue(run.err().contains("box.yaml:5:"), run::err);
    }

    @Test
    void aChoiceOfAnUnknownSurfaceIsRefusedWithTheNearestName() throws IOException {
        Run run = Run.of(
                "check",
                box("kinds: [slab edge,", "surfaces: [ground floor suoth wall], kinds: [slab edge,")
                        .toString());
        assertEquals(Exit.REFUSED.code(), run.code());
        assertTrue(run.err().contains("did you mean \"ground floor south wall\"?"), run::err);
    }

    @Test
    void aMissingFileIsRefused() {
        Run run = Run.of("check", folder.resolve("none.yaml").toString());
        assertEquals(Exit.REFUSED.code(), run.code());
        assertTrue(run.err().contains("none.yaml"), run::err);
        assertFalse(run.err().contains("Exception"), run::err);
    }

    @Test
    void wrongArgumentsAreRefused() {
        assertEquals(Exit.REFUSED.code(), Run.of().code());
        assertEquals(Exit.REFUSED.code(), Run.of("audit", "house.yaml").code(), "no output");
        Run units = Run.of("check", "house.yaml", "--units", "furlongs");
        assertEquals(Exit.REFUSED.code(), units.code());
        assertTrue(units.err().contains("--units"), units::err);
    }

    @Test
    void placesThatCannotBeWrittenAreRefusedBeforeTheWork() throws IOException {
        Path box = box();
        Run inFile =
                Run.of("audit", box.toString(), "-o", box.resolve("box.pdf").toString());
        assertEquals(Exit.REFUSED.code(), inFile.code());
        assertTrue(inFile.err().contains("is not a folder"), inFile::err);
        Run over = Run.of("audit", box.toString(), "-o", box.toString());
        assertEquals(Exit.REFUSED.code(), over.code());
        assertTrue(over.err().contains("named twice"), over::err);
    }

    @Test
    void ourOwnFaultAsksForAReportAndShowsItsTraceOnlyWhenAsked() throws IOException {
        Workshop broken = Run.computing((detail, setup) -> {
            throw new IllegalStateException("on purpose");
        });
        String house =
                box("own-psi:", "junctions: []\nown-psi:", "slab edge, ", "").toString();
        Run run = Run.with(broken, "check", house);
        assertEquals(Exit.FAULT.code(), run.code());
        assertTrue(run.err().contains("Please report it"), run::err);
        assertFalse(run.err().contains("\tat "), run::err);
        Run verbose = Run.with(broken, "check", "--verbose", house);
        assertEquals(Exit.FAULT.code(), verbose.code());
        assertTrue(verbose.err().contains("\tat "), verbose::err);
    }

    @Test
    void helpNamesEveryExitCode() {
        Run run = Run.of("--help");
        assertEquals(0, run.code());
        for (Exit exit : Exit.values()) {
            assertTrue(run.out().contains(exit.code() + "   " + exit.meaning().substring(0, 12)), run::out);
        }
    }

    @Test
    void schemasAreJson() {
        assertTrue(Run.of("schema").out().contains("\"$schema\""));
        assertTrue(Run.of("schema", "audit").out().contains("\"$schema\""));
        assertFalse(
                Run.of("schema", "house").out().equals(Run.of("schema", "audit").out()));
    }

    @Test
    void sectionsAreSolvedFromTheirFile() throws IOException {
        Path file = Files.writeString(folder.resolve("wall.yaml"), """
                section: A plain wall
                lengths: mm
                regions:
                - {material: brick, conductivity: 0.8, rectangle: [0, 0, 240, 1000]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                  outdoor: {temperature: -5, surface-resistance: 0.04}
                boundaries:
                - {environment: indoor, path: [[0, 1000], [0, 0]]}
                - {environment: outdoor, path: [[240, 0], [240, 1000]]}
                """);
        Path json = folder.resolve("wall.json");
        Path svg = folder.resolve("wall.svg");
        Run run = Run.of("section", file.toString(), "--json", json.toString(), "--svg", svg.toString());
        assertEquals(0, run.code(), run::err);
        // 1/(0.13 + 0.24/0.8 + 0.04) = 2.12766 W/(m·K) along 1 m
        assertTrue(run.out().contains("2.12766"), run::out);
        assertTrue(Files.readString(json).contains("\"couplings\""));
        assertTrue(Files.readString(svg).contains("<svg"));
    }

    /** The total of three couplings is as narrow as asked, a small one is not, and its line says so. */
    @Test
    void aCouplingWiderThanAskedIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("three.yaml"), """
                section: A wall between two rooms, far from a third
                lengths: mm
                regions:
                - {material: brick, conductivity: 0.8, rectangle: [0, 0, 240, 1000]}
                - {material: foam, conductivity: 0.03, rectangle: [0, 400, 120, 1000]}
                environments:
                  indoor: {temperature: 20, surface-resistance: 0.13}
                  outdoor: {temperature: -5, surface-resistance: 0.04}
                  shaft: {temperature: 5, surface-resistance: 0.13}
                boundaries:
                - {environment: indoor, path: [[0, 600], [0, 0]]}
                - {environment: outdoor, path: [[240, 0], [240, 600]]}
                - {environment: shaft, path: [[0, 1000], [60, 1000]]}
                """);
        Run run = Run.of("section", file.toString(), "--width", "1e-2");
        assertEquals(0, run.code(), run::err);
        String[] lines = run.out().split("\n");
        assertTrue(lines[1].startsWith("  L indoor - outdoor: ") && lines[1].endsWith(" W/(m·K)"), run::out);
        assertTrue(
                lines[2].startsWith("  L indoor - shaft: ")
                        && lines[2].endsWith(
                                "of its middle wide, 0.010 was asked and holds for the total: give a smaller"
                                        + " --width"),
                run::out);
        assertTrue(run.out().contains("Most of the intervals' width comes from around ("), run::out);
    }
}
