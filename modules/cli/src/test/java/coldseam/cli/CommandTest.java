package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.Workshop;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Exit codes, messages and files; on a box whose junctions need no computing. */
@Tag("slow")
class CommandTest {

    /** s; an audit takes some five, and many times that where all cores are busy. */
    private static final int ENDS = 300;

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
        assertTrue(run.out().contains("[detail-not-chosen]"), run::out);
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
        assertTrue(Files.readString(made.resolve("box.json")).contains("detail-not-chosen"));
        assertTrue(Files.size(made.resolve("box.csv")) > 100);
        assertTrue(Files.size(made.resolve("box-heat-loss.csv")) > 100);
        // The box gives no monthly climate, and the file says so.
        String moisture = Files.readString(made.resolve("box-moisture.csv"));
        assertTrue(moisture.startsWith("assembly,heat flow,verdict,most lb/ft²"), moisture);
        assertTrue(moisture.contains("gives no monthly climate"), moisture);
        assertTrue(Files.readString(made.resolve("box-points.csv"))
                .startsWith("points,kind,surface,sheet,detail,number,"));
        assertTrue(Files.readString(made.resolve("box-vertices.csv")).startsWith("corner,"));
        assertTrue(Files.readString(made.resolve("box-pairs.csv")).startsWith("one,other,surface,distance ft"));
        assertTrue(run.out().contains("Btu/(h·°F)"), run::out);
        try (Stream<Path> files = Files.list(made)) {
            assertEquals(10, files.count(), "no temporary file is left");
        }
    }

    /**
     * Areas worked out apart: 310 mm of slab below the floor, 168 mm of roof over the concrete whose top lies 3 m over it, outside; walls
     * of 465 mm and 160 mm of concrete taken off, inside. The heat-loss table takes the net ones.
     */
    @Test
    void theTakeOffIsWhatTheHeatLossIsOf() throws IOException {
        Path house = box(
                "own-psi:",
                "openings:\n  pane: {kind: window, surface: ground floor south wall, width: 2 m, height: 1.5 m, sill: 0.9 m,"
                        + " transmittance: 0.8 W/(m²·K), source: a label}\n"
                        + "own-psi:\n- {kinds: [head, jamb, sill], psi: 0.02 W/(m·K), source: for the test}");
        Run run = Run.of("audit", house.toString(), "-o", file("areas", "pdf"), "--csv", file("areas", "csv"));
        assertTrue(run.code() == Exit.FOUND.code() || run.code() == Exit.UNBROKEN.code(), run::err);
        String csv = file("areas", "csv").replace(".csv", "-");
        String south = "ground floor south wall,south,wall,wall,outdoors,1,27.824,20.0788,3,24.824";
        assertTrue(Files.readAllLines(Path.of(csv + "surfaces.csv")).contains(south), () -> read(csv + "surfaces.csv"));
        String pane = "pane,window,ground floor south wall,south,2,1.5,3,0.8,a label";
        assertTrue(Files.readAllLines(Path.of(csv + "openings.csv")).contains(pane), () -> read(csv + "openings.csv"));
        assertTrue(
                read(csv + "heat-loss.csv").contains("surfaces,ground floor south wall,24.824,m²,"),
                () -> read(csv + "heat-loss.csv"));
    }

    /** Where the total is of the falls and the layers are not, and what is heated floor, stands beside. */
    @Test
    void whatNumbersAreOfStandsBesideThem() throws IOException {
        Path house = box(
                "thickness: 160 mm, role: insulation, controls: [heat]}\n    - {material: bitumen",
                "thickness: 160 mm, taper: {shape: rectangle, thickest: 300 mm}, role: insulation, controls: [heat]}\n"
                        + "    - {material: bitumen");
        Run run = Run.of("audit", house.toString(), "-o", file("falls", "pdf"));
        assertTrue(run.code() == Exit.FOUND.code() || run.code() == Exit.UNBROKEN.code(), run::err);
        String told = pages(file("falls", "pdf"));
        assertEquals(1, told.split("U is the mean over the falls, and the R beside it 1/U;", -1).length - 1, told);
        assertTrue(told.contains("A floor area that leaves those out"), told);
        assertFalse(told.contains("Where a wing"), told);
    }

    /** A computed psi holds the factors of its spaces: the table does not print 1 for one of a seam beside a shed. */
    @Test
    void theHeatLossTableSaysWhereAFactorIsInPsi() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"));
        Path house = Files.writeString(
                folder.resolve("shed.yaml"),
                text.replace("walls: wall", "walls: {all: wall, west: {assembly: wall, faces: shed}}")
                        .replace("\nbody:\n", "\nneighbours: {shed: {temperature-factor: 0.8}}\nbody:\n"));
        String pdf = folder.resolve("shed.pdf").toString();
        Run run = Run.with(Bench.SHARED, "audit", house.toString(), "-o", pdf);
        assertTrue(run.code() < 2, run::err);
        String told = pages(pdf);
        assertTrue(told.contains("A computed ψ holds the b of each surface that meets there"), told);
        assertTrue(told.contains(" W/(m·K) in ψ "), told);
    }

    private static String pages(String pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(Path.of(pdf).toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Of a house with a hole no sum of heat is told as if it were the whole. */
    @Test
    void theTableOfHeatSaysWhatItsTotalLacks() throws IOException {
        Path house = box("{all: wall}", "{all: wall, south: none}");
        Run run = Run.of("audit", house.toString(), "-o", file("hole", "pdf"), "--csv", file("hole", "csv"));
        String told = run.out().replaceAll("\\s+", " ");
        assertTrue(told.contains("H_T = at least "), run::out);
        assertTrue(told.contains("as inputs are known of what has a value, "), run::out);
        assertTrue(
                told.matches(
                        ".* design load [0-9.…]+ W at -10.0 °C outdoors, transmission [^:]*, of what has a value .*"),
                run::out);
        String total = Files.readString(Path.of(file("hole", "csv").replace(".csv", "-heat-loss.csv")))
                .lines()
                .filter(line -> line.startsWith("total,"))
                .findFirst()
                .orElseThrow();
        assertTrue(
                total.startsWith("total,\"of what has a value; H_T is at least ")
                        && total.contains(" W/K: 1 surface is missing, "),
                total);
    }

    /** Data is SI, whatever is printed. */
    @Test
    void theUnitsAskedForChangeNothingInTheData() throws IOException {
        Path box = box();
        for (String units : new String[] {"si", "us"}) {
            String[] command = {
                "audit", box.toString(), "--units", units, "-o", file(units, "pdf"), "--json", file(units, "json")
            };
            Run.of(command);
        }
        assertEquals(-1, Files.mismatch(folder.resolve("si.json"), folder.resolve("us.json")));
    }

    private String file(String name, String ending) {
        return folder.resolve(name + "." + ending).toString();
    }

    /** On threads of a pool all of which wait for pages, as tests run that are two at a time: what pages wait for is done elsewhere. */
    @Test
    void anAuditEndsThoughItsPoolHasNoOtherThread() throws Exception {
        Path box = box();
        ForkJoinPool alone = new ForkJoinPool(1);
        try {
            Run run = alone.submit(() -> Run.of("audit", box.toString(), "-o", file("alone", "pdf")))
                    .get(ENDS, TimeUnit.SECONDS);
            assertTrue(run.out().contains("Written: "), run::err);
        } finally {
            alone.shutdownNow();
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
    void refusalsMeasureInFeetWhereAskedTo() {
        String house = CommittedReport.ROOT
                .resolve("fixtures/faulty/130-openings-that-do-not-fit.yaml")
                .toString();
        String us = Run.of("check", house, "--units", "us").err();
        assertTrue(us.contains("from -33 1/16 in (-0.840 m) to 36 ft 7 3/8 in (11.160 m)"), us);
        assertTrue(Run.of("check", house).err().contains("from -0.840 m to 11.160 m"), us);
    }

    /** What is checked beside the shell, too: a loss, a volume, and what is usual; what a file is to say is quoted as it is. */
    @Test
    void refusalsOfSizesMeasureInTheReadersUnits() throws IOException {
        Path airy = box("indoor-temperature: 20 °C", "indoor-temperature: 20 °C\n  ventilation-heat-loss: 1500 W/K");
        String si = Run.of("check", airy.toString()).err();
        String us = Run.of("check", airy.toString(), "--units", "us").err();
        assertTrue(si.contains("got 1500.00 W/K, "), si);
        assertTrue(us.contains("got 2843.5 Btu/(h·°F), "), us);
        assertTrue(us.contains(" air changes an hour of ") && us.contains(" ft³"), us);
        assertFalse(us.contains("W/K") || us.contains("m³"), us);
        Path bare = box("indoor-temperature: 20 °C", "indoor-temperature: 20");
        String quoted = Run.of("check", bare.toString(), "--units", "us").err();
        assertTrue(quoted.contains("such as 20 °C or 72 °F"), quoted);
    }

    @Test
    void wrongArgumentsAreRefused() {
        assertEquals(Exit.REFUSED.code(), Run.of().code());
        assertEquals(Exit.REFUSED.code(), Run.of("audit", "house.yaml").code(), "no output");
        Run units = Run.of("check", "house.yaml", "--units", "furlongs");
        assertEquals(Exit.REFUSED.code(), units.code());
        assertTrue(units.err().contains("--units"), units::err);
        Run spaced = Run.of("check", "my", "old", "house.yaml");
        assertEquals(Exit.REFUSED.code(), spaced.code());
        assertTrue(
                spaced.err()
                        .startsWith("\"old house.yaml\" is nothing that coldseam check takes; a file's name with"
                                + " spaces in it stands in quotation marks\n"),
                spaced::err);
        Run option = Run.of("check", "house.yaml", "--colour");
        assertTrue(option.err().startsWith("\"--colour\" is nothing that coldseam check takes\n"), option::err);
        Run command = Run.of("chek", "house.yaml");
        assertTrue(command.err().contains("Did you mean: coldseam check"), command::err);
        Run name = Run.of("check", "no\0name.yaml");
        assertEquals(Exit.REFUSED.code(), name.code());
        assertTrue(name.err().contains("LC_ALL=C.UTF-8"), name::err);
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
        Run top =
                Run.of("audit", box.toString(), "-o", folder.resolve("box.pdf").toString(), "--csv", "/");
        assertEquals(Exit.REFUSED.code(), top.code(), top::err);
        assertTrue(top.err().contains("/: is a folder"), top::err);
    }

    @Test
    void theHouseIsNotWrittenOverByAnotherOfItsNames() throws IOException {
        Path box = box();
        String was = Files.readString(box);
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), box);
        Path beside = Files.createSymbolicLink(folder.resolve("beside"), folder);
        for (Path[] both : new Path[][] {{link, box}, {box, link}, {box, beside.resolve(box.getFileName())}}) {
            Run over = Run.of("audit", both[0].toString(), "-o", both[1].toString());
            assertEquals(Exit.REFUSED.code(), over.code(), over::err);
            assertTrue(over.err().contains("named twice"), over::err);
        }
        assertEquals(was, Files.readString(box));
        Run capitals = Run.of(
                "audit",
                box.toString(),
                "-o",
                folder.resolve("Audit.out").toString(),
                "--json",
                folder.resolve("audit.OUT").toString());
        assertEquals(Exit.REFUSED.code(), capitals.code(), capitals::err);
        assertTrue(capitals.err().contains("by capitals alone"), capitals::err);
    }

    @Test
    void aFileOfAnotherSortIsTakenForWhatItIs() throws IOException {
        Run house = Run.of("section", box().toString());
        assertEquals(Exit.REFUSED.code(), house.code());
        assertTrue(
                house.err()
                        .matches(".*box\\.yaml:\\d+:1: a section file is needed; got a house file; give it to coldseam"
                                + " check or audit, or name another file\n"),
                house::err);
        Run detail = Run.of(
                "check",
                box("own-psi:", "junctions:\n- {kinds: [slab edge], detail: box.yaml}\nown-psi:")
                        .toString());
        assertEquals(Exit.REFUSED.code(), detail.code());
        assertTrue(detail.err().contains("a detail's file is needed; got a house file"), detail::err);
        Path drawn = CommittedReport.ROOT.resolve("fixtures/sections/strip-on-slab.yaml");
        Run section = Run.of("check", drawn.toString());
        assertEquals(Exit.REFUSED.code(), section.code());
        assertTrue(
                section.err().contains("a house file is needed; got a section file; give it to coldseam section"),
                section::err);
        assertEquals(1, section.err().lines().count(), section::err);
    }

    @Test
    void oneDocumentThatCannotBeWrittenLosesNoOther() throws IOException {
        Path json = folder.resolve("audit.json");
        Path none = folder.resolve("a".repeat(300) + ".pdf");
        Run run = Run.of("audit", box().toString(), "-o", none.toString(), "--json", json.toString());
        assertEquals(Exit.REFUSED.code(), run.code(), run::err);
        assertTrue(run.err().contains(none + ": "), run::err);
        assertTrue(run.out().contains("Written: " + json), run::out);
        assertFalse(run.out().contains("Written: " + none), run::out);
        assertTrue(Files.size(json) > 0);
    }

    /** So Windows says that a document is open: by the name that it was to be moved from. */
    @Test
    void whatIsOpenElsewhereIsNamedAsItWasAskedFor() {
        assertTrue(Failures.io(new AccessDeniedException(".1.tmp", "audit.pdf", null))
                .startsWith("audit.pdf: no right to read or write it; close it where another program has it open"));
        assertTrue(Failures.io(new FileSystemException(".1.tmp", "audit.pdf", "in use"))
                .startsWith("audit.pdf: in use; "));
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
        assertTrue(Run.of("schema", "comparison").out().contains("compared with its alternatives"));
        assertTrue(Run.of("schema", "renovation").out().contains("Two houses compared"));
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
        // 1/(0.13 + 0.24/0.8 + 0.04) = 2.127659574... W/(m·K) along 1 m, and the interval is printed outwards
        assertTrue(run.out().contains("2.12765957…2.12765958 W/(m·K)"), run::out);
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
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(
                Pattern.compile(
                                "L indoor - outdoor: [0-9.]+…[0-9.]+ W/\\(m·K\\) L indoor - shaft: [^;]*; [0-9.]+"
                                        + " of its middle wide, 0\\.010 was asked and holds for the total: give a smaller --width L ")
                        .matcher(said)
                        .find(),
                run::out);
        for (String line : run.lines()) {
            assertTrue(line.codePointCount(0, line.length()) <= 80, line);
        }
        assertTrue(run.out().contains("Most of the intervals' width comes from around ("), run::out);
    }

    private static final String WALL = "ground floor south wall";

    private Path boxWith(String... points) throws IOException {
        Path house = box();
        return Files.writeString(house, Files.readString(house) + "points:\n  " + String.join("\n  ", points) + "\n");
    }

    @Test
    void pointsAreCheckedBesideShellAndCatalogueAllAtOnce() throws IOException {
        Path house = boxWith(
                "a: {surface: ground floor suoth wall, detail: bracket-steel, number: 2}",
                "b: {surface: " + WALL + ", detail: bracket-steel, spacing: 1 m, along: ground floor north wall}",
                "c: {surface: " + WALL + ", detail: bracket-steel, number: 2, parameters: {arn: 40 mm, plate: 1 m}}",
                "d: {surface: " + WALL + ", kind: bracket, number: 2, parameters: {arm: 40 mm}}",
                "e: {surface: " + WALL + ", detail: fastener-stainless-steel, per-area: 6 per m²}");
        Files.writeString(
                house,
                Files.readString(house)
                        .replace(
                                "role: cladding, controls: [water]}\n",
                                "role: cladding, controls: [water]}\n    fasteners: {material: steel, diameter: 5 mm, number: 6"
                                        + " per m²}\n"));
        Run run = Run.of("check", house.toString());
        assertEquals(Exit.REFUSED.code(), run.code());
        String err = run.err();
        assertEquals(6, err.lines().count(), err);
        assertTrue(
                err.contains("got \"ground floor suoth wall\"; allowed: one of lowest floor, ground floor south wall"),
                err);
        assertTrue(err.contains("a surface or opening beside \"" + WALL + "\"; got \"ground floor north wall\""), err);
        assertTrue(
                err.contains(
                        "bracket-steel has no such parameter; got \"arn\"; allowed: arm, gauge, plate, bolt, embedded, stands out; did you mean \"arm\"?"),
                err);
        assertTrue(
                err.contains(
                        "the parameter plate of bracket-steel is out of the detail's range; got 1.00 m; allowed: 60 mm to 300 mm"),
                err);
        assertTrue(err.contains("parameters belong to a detail; got \"arm\""), err);
        assertTrue(err.contains("fasteners are counted once, in U or as points; got \"e\" on \"" + WALL + "\""), err);
        assertTrue(err.contains("6.0 1/m² in its U by ISO 6946 already"), err);
    }

    @Test
    void anUnknownPointDetailIsRefusedWithTheNearestName() throws IOException {
        Run run = Run.of(
                "check",
                boxWith("a: {surface: " + WALL + ", detail: bracket-steal, number: 2}")
                        .toString());
        assertEquals(Exit.REFUSED.code(), run.code());
        assertTrue(run.err().contains("no point detail has this name; got \"bracket-steal\""), run::err);
        assertTrue(run.err().contains("did you mean \"bracket-steel\"?"), run::err);
    }

    @Test
    @Tag("slow")
    void anOwnPointFileBesideTheHouseIsComputedAndListed() throws IOException {
        String own;
        try (InputStream in = CommandTest.class.getResourceAsStream("/points/bracket-steel.yaml")) {
            own = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        Files.writeString(
                folder.resolve("my-bracket.yaml"),
                own.replace("name: Steel bracket bolted tight to the wall", "name: My own bracket")
                        .replace("vapour: sealed", "vapour: broken"));
        Path house = boxWith("a: {surface: " + WALL + ", detail: my-bracket.yaml, number: 2}");
        Run run = Run.of("check", house.toString());
        assertEquals(Exit.FOUND.code(), run.code(), run::err);
        assertTrue(run.out().contains("\"My own bracket\" leaves vapour control open"), run::out);
        assertTrue(run.out().contains("of it in points"), run::out);
        for (String line : run.lines()) {
            assertTrue(line.codePointCount(0, line.length()) <= 80, line);
        }
        Files.writeString(folder.resolve("my-bracket.yaml"), own.replace("height: arm,", "height: arn,"));
        Run broken = Run.of("check", house.toString());
        assertEquals(Exit.REFUSED.code(), broken.code());
        assertTrue(broken.err().contains("my-bracket.yaml:19:"), broken::err);
        assertTrue(broken.err().contains("got \"arn\""), broken::err);
    }

    /** As people write: in small letters, without the words of a program. */
    @Test
    void aValueOfAnOptionIsRefusedInPlainWords() {
        for (String[] each : new String[][] {
            {"check x --units metric", "--units: got \"metric\"; one of si, us"},
            {"schema house-file", "house|audit|comparison|renovation: got \"house-file\"; one of house, audit,"},
            {
                "check x --unknowns many",
                "--unknowns: got \"many\"; a whole number alone, without a unit, a currency or a mark for thousands"
            },
            {
                "compare x --budget much",
                "--budget: got \"much\"; a number alone, without a unit, a currency or a mark for thousands"
            }
        }) {
            Run run = Run.of(each[0].split(" "));
            assertEquals(2, run.code(), each[0]);
            assertTrue(run.err().startsWith(each[1]), run.err());
        }
    }
}
