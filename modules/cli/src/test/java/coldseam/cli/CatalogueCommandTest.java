package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Listing, drawing and sweeping options, as they are printed. */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class CatalogueCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Coldseam.run(Terminal.of(out, err), Run.REAL, Optional.empty(), arguments);
    }

    private void fitsTheTerminal() {
        out.toString().lines().forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 80, line));
    }

    @Test
    void namesEveryOptionWithoutComputing() {
        assertEquals(0, run("catalogue"), err::toString);
        assertTrue(out.toString().contains("slab-edge-bare"));
        assertTrue(out.toString().contains("terrace-threshold-on-block"));
        fitsTheTerminal();
    }

    @Test
    void listsMaterialsWithWhatTheyCanDo() {
        assertEquals(0, run("catalogue", "--materials", "--units", "us"), err::toString);
        assertTrue(out.toString().contains("controls air, vapour; timber that carries"), out::toString);
        List<String> lines = out.toString().lines().toList();
        int board = lines.indexOf(lines.stream()
                .filter(line -> line.strip().startsWith("extruded polystyrene board"))
                .findFirst()
                .orElseThrow());
        // 0.035 W/(m·K), in Btu·in/(h·ft²·°F), and mu 150 of the data file.
        assertTrue(
                lines.get(board)
                        .strip()
                        .matches("extruded polystyrene board +0\\.243 +150 +(read|from memory|common practice)"),
                lines.get(board));
        assertEquals(
                "controls air, vapour, water; bears ground, splash, load, rain",
                lines.get(board + 1).strip());
        assertTrue(lines.stream().noneMatch(line -> line.strip().startsWith("air ")), "air has no conductivity");
        fitsTheTerminal();
    }

    @Test
    void computesAKindWithTheTabulatedDefaultBeside() {
        assertEquals(0, run("catalogue", "--kind", "outside corner", "--width", "1e-2"), err::toString);
        String text = out.toString();
        assertTrue(text.contains("psi external"), text);
        assertTrue(text.contains("ISO 14683 C1"), text);
        assertTrue(text.contains("tabulated default, rounded to 0.05, from memory"), text);
        fitsTheTerminal();
    }

    @Test
    void refusesUnknownNamesWithTheNearest() {
        assertEquals(2, run("catalogue", "--kind", "slab edg"));
        assertTrue(err.toString().contains("did you mean \"slab edge\"?"), err.toString());
        assertEquals(2, run("catalogue", "--first", "slab on board", "--second", "nothing like it"));
        assertTrue(err.toString().contains("did you mean \"slab on boards\"?"), err.toString());
        assertTrue(err.toString().contains("--second: got \"nothing like it\""), err.toString());
        assertEquals(2, run("detail", "slab-edge-raff"));
        assertTrue(err.toString().contains("did you mean \"slab-edge-raft\"?"), err.toString());
        // What is like no name in whole is answered with the names that have the word in them.
        assertEquals(2, run("catalogue", "--kind", "terrace"));
        assertTrue(err.toString().contains("one of wall to terrace, "), err.toString());
        assertEquals(2, run("detail", "kerb"));
        assertTrue(err.toString().contains("wall-to-terrace-kerb, "), err.toString());
        assertEquals(2, run("catalogue", "--width", "0"));
        assertEquals(2, run("catalogue", "--kind", "ridg,hipp"));
        assertTrue(err.toString().contains("did you mean \"ridge\"?"), err.toString());
        assertTrue(err.toString().contains("did you mean \"hip\"?"), err.toString());
    }

    /** What would not be written is refused, not left out in silence. */
    @Test
    void refusesToWriteWhatItOnlyPrints(@TempDir Path folder) {
        String pdf = folder.resolve("points.pdf").toString();
        assertEquals(2, run("catalogue", "--points", "--atlas", folder.toString()));
        assertTrue(err.toString().contains("--atlas: got it with points"), err.toString());
        assertEquals(2, run("catalogue", "--corners", "--atlas", folder.toString()));
        assertTrue(err.toString().contains("--atlas: got it with corners"), err.toString());
        assertEquals(2, run("catalogue", "--kind", "ridge", "--atlas", folder.toString(), "--pdf", pdf));
        assertTrue(err.toString().contains("got both"), err.toString());
    }

    @Test
    void takesSeveralKindsAfterCommasOrAgain() {
        String[][] ways = {{"--kind", "ridge,hip, valley"}, {"--kind", "ridge", "--kind", "hip", "--kind", "valley"}};
        for (String[] way : ways) {
            out.getBuffer().setLength(0);
            assertEquals(
                    0,
                    run(Stream.concat(Stream.of("catalogue", "--width", "1e-1"), Stream.of(way))
                            .toArray(String[]::new)),
                    err::toString);
            String text = out.toString();
            for (String kind : new String[] {"ridge", "hip", "valley"}) {
                assertTrue(text.contains(kind + ": "), text);
            }
            assertTrue(!text.contains("verge"), text);
        }
    }

    /** A sheet for each option that fits, in one document; a house without such a seam has none. */
    @Test
    void writesASheetForEachOptionToLeafThrough(@TempDir Path folder) throws Exception {
        Path pdf = folder.resolve("catalogue.pdf");
        String[] corners = {"catalogue", "--kind", "outside corner", "--width", "3e-2", "--pdf", pdf.toString()};
        assertEquals(0, run(corners), err::toString);
        // Three for any build, three where insulation changes sides, two in walls of blocks, three beside one of them,
        // two in frames without boards, four where one wall alone has boards.
        assertTrue(out.toString().startsWith("17 sheets"), out::toString);
        byte[] first = Files.readAllBytes(pdf);
        assertTrue(new String(first, 0, 5, StandardCharsets.US_ASCII).equals("%PDF-"));
        assertEquals(0, run(corners), err::toString);
        assertArrayEquals(first, Files.readAllBytes(pdf), "the same bytes");
        Path house = CommittedReport.ROOT.resolve("fixtures/houses/heron-row-gaps.yaml");
        assertEquals(
                2, run("catalogue", "--house", house.toString(), "--kind", "shutter box", "--pdf", pdf.toString()));
        assertTrue(err.toString().contains("no option of the kinds asked for fits"), err::toString);
    }

    /** Points and corners are leafed through like junctions: a page for each option, with its order of building. */
    /** The gutter lies more than a metre from where the inner faces meet, and is what the drawing is about. */
    @Test
    void drawsWhatADetailAddsHoweverFarOut(@TempDir Path folder) throws Exception {
        Path svg = folder.resolve("gutter.svg");
        assertEquals(0, run("detail", "abutment-lined-gutter", "--svg", svg.toString()), err::toString);
        String drawn = Files.readString(svg);
        for (String shown : new String[] {"extruded polystyrene board", "bitumen sheet", "stainless steel"}) {
            assertTrue(drawn.contains(shown), shown);
        }
    }

    @Test
    void writesSheetsOfPointsAndOfCorners(@TempDir Path folder) throws Exception {
        Path pdf = folder.resolve("points.pdf");
        assertEquals(0, run("catalogue", "--points", "--kind", "hose tap", "--pdf", pdf.toString()), err::toString);
        assertTrue(out.toString().startsWith("3 sheets"), out::toString);
        long points = Files.size(pdf);
        out.getBuffer().setLength(0);
        assertEquals(
                0, run("catalogue", "--corners", "--kind", "terrace corner", "--pdf", pdf.toString()), err::toString);
        assertTrue(out.toString().startsWith("1 sheet\n"), out::toString);
        assertTrue(Files.size(pdf) != points);
    }

    @Test
    void sweepsEveryPairOfBuildUpsOfAHouseInInches(@TempDir Path folder) throws Exception {
        Path house = CommittedReport.ROOT.resolve("fixtures/houses/heron-row-gaps.yaml");
        assertEquals(
                0,
                run(
                        "catalogue",
                        "--house",
                        house.toString(),
                        "--kind",
                        "intermediate floor",
                        "--units",
                        "us",
                        "--width",
                        "3e-2",
                        "--atlas",
                        folder.toString()),
                err::toString);
        List<String> rows = Files.readAllLines(folder.resolve("atlas.csv"));
        assertTrue(rows.get(0).contains("insulation in"), rows.get(0));
        assertTrue(rows.stream().anyMatch(row -> row.contains(",16,")), rows.toString());
        long pairs =
                rows.stream().skip(1).map(row -> row.split(",")[4]).distinct().count();
        // The floor meets the brick wall and, in the north, the one whose air layer is missing.
        assertEquals(2, pairs, rows.toString());
        assertTrue(Files.size(folder.resolve("atlas.pdf")) > 0);
    }

    @Test
    void drawsADetailAndSaysHowItIsBuilt(@TempDir Path folder) throws Exception {
        Path svg = folder.resolve("corner.svg");
        Path pdf = folder.resolve("corner.pdf");
        assertEquals(
                0,
                run("detail", "outside-corner-unbroken", "--svg", svg.toString(), "--pdf", pdf.toString()),
                err::toString);
        String text = out.toString();
        for (String word : new String[] {
            "Order of building", "How the control layers connect", "How it fails", "Photograph before it is covered"
        }) {
            assertTrue(text.contains(word), text);
        }
        fitsTheTerminal();
        assertTrue(Files.readString(svg).contains("<svg"));
        assertTrue(
                new String(Files.readAllBytes(pdf), 0, 5, java.nio.charset.StandardCharsets.US_ASCII).equals("%PDF-"));
    }

    @Test
    void drawsADetailWithTheLengthsThatTheHouseGivesIt(@TempDir Path folder) throws Exception {
        String house =
                CommittedReport.ROOT.resolve("fixtures/houses/larch-house.yaml").toString();
        Path pdf = folder.resolve("raft.pdf");
        assertEquals(0, run("detail", "slab-edge-raft", "--house", house, "--pdf", pdf.toString()), err::toString);
        try (PDDocument sheet = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(sheet).replaceAll("\\s+", " ");
            assertTrue(text.contains("plinth 150 mm: how far"), text);
            assertTrue(text.contains("set back 80 mm: how far") && text.contains("(set by the house file)"), text);
        }
        assertTrue(out.toString().contains("set back       80 mm"), out::toString);
        out.getBuffer().setLength(0);
        assertEquals(0, run("catalogue", "--kind", "wall to terrace", "--house", house), err::toString);
        String kerb = out.toString().substring(out.toString().indexOf("wall-to-terrace-kerb"));
        assertTrue(kerb.contains("chosen by the house file"), kerb);
        assertTrue(kerb.contains("for new build; retrofit, once taken down: foot of the wall"), kerb);
        assertEquals(1, out.toString().split("chosen by", -1).length - 1, out::toString);
    }

    @Test
    void computesThePointsOfAKindAndDrawsOne(@TempDir Path folder) throws Exception {
        assertEquals(0, run("catalogue", "--kind", "steel post"), err::toString);
        assertTrue(out.toString().contains("steel-post-on-block"), out.toString());
        assertTrue(out.toString().contains("concrete terrace"), out.toString());
        fitsTheTerminal();
        Path svg = folder.resolve("post.svg");
        Path pdf = folder.resolve("post.pdf");
        assertEquals(
                0,
                run(
                        "detail",
                        "steel-post-on-block",
                        "--build",
                        "frame",
                        "--svg",
                        svg.toString(),
                        "--pdf",
                        pdf.toString()),
                err::toString);
        String text = out.toString();
        for (String word : new String[] {"chi, each", "Lengths a house may change", "Cautions", "Simplified"}) {
            assertTrue(text.contains(word), text);
        }
        fitsTheTerminal();
        assertTrue(java.nio.file.Files.readString(svg).contains("structural foam block"));
        assertTrue(java.nio.file.Files.size(pdf) > 10_000);
        assertEquals(2, run("detail", "steel-post-on-blok"));
        assertTrue(err.toString().contains("did you mean \"steel-post-on-block\"?"), err.toString());
    }

    /** Whoever looks at a chimney reads that it kills. */
    @Test
    void aChimneysCautionIsPrinted() {
        assertEquals(0, run("detail", "chimney-in-insulated-shaft"), err::toString);
        String text = out.toString().replaceAll("\\s+", " ");
        assertTrue(text.contains("Cautions - Chimneys kill by fire and by carbon monoxide."), text);
        fitsTheTerminal();
    }

    @Test
    void aCornersDetailIsComputedAndDrawn(@TempDir Path folder) throws Exception {
        assertEquals(0, run("catalogue", "--corners", "--kind", "terrace corner,parapet corner"), err::toString);
        String text = out.toString();
        assertTrue(text.contains("terrace-corner-structure-out: "), text);
        assertTrue(text.contains("chi external "), text);
        assertTrue(text.contains("the details of its edges say all of it"), text);
        fitsTheTerminal();
        out.getBuffer().setLength(0);
        Path svg = folder.resolve("corner.svg");
        assertEquals(0, run("detail", "terrace-corner-structure-out", "--svg", svg.toString()), err::toString);
        for (String word : new String[] {"terrace corner: ", "chi internal", "Order of building", "Cautions"}) {
            assertTrue(out.toString().contains(word), out::toString);
        }
        fitsTheTerminal();
        assertTrue(Files.readString(svg).contains("<svg"));
        assertEquals(2, run("detail", "terrace-corner-structure-out", "--first", "slab on boards"));
        assertTrue(err.toString().contains("between typical build-ups"), err.toString());
        assertEquals(0, run("catalogue", "--corners", "--guide"), err::toString);
        assertTrue(out.toString().contains("# Corners are data"));
    }

    /**
     * Its coldest point lies far off: in the plain wall below, nearest to the foot of the boards, 600 mm under the floor, or at the end of
     * boards that run under the ceiling.
     */
    @ParameterizedTest
    @CsvSource({
        "foundation-top-boards-overlap-at-the-floor, frame, airtight membrane",
        "flat-roof-edge-inner-boards-return-under-the-roof, masonry, zinc"
    })
    void aDrawingShowsWhereItsSurfacesMeet(String detail, String build, String there, @TempDir Path folder)
            throws Exception {
        Path svg = folder.resolve("overlap.svg");
        assertEquals(0, run("detail", detail, "--build", build, "--svg", svg.toString()), err::toString);
        String drawn = Files.readString(svg);
        assertTrue(drawn.contains("broken here"), drawn);
        assertTrue(drawn.contains(there), drawn);
    }

    /** Of a thick wall insulated inside nothing else is told outdoors: neither the roof that meets it there nor its own face. */
    @ParameterizedTest
    @CsvSource({"step-inner-boards-down-between-the-joists, slate", "partition-inside-cut-free, cement render"})
    void aDrawingShowsAThickWallFromFaceToFace(String detail, String outdoors, @TempDir Path folder) throws Exception {
        Path svg = folder.resolve("wall.svg");
        assertEquals(0, run("detail", detail, "--svg", svg.toString()), err::toString);
        String drawn = Files.readString(svg);
        assertTrue(drawn.contains(outdoors), drawn);
    }

    @Test
    void thePointGuideIsAtHand() {
        assertEquals(0, run("catalogue", "--points", "--guide"), err::toString);
        assertTrue(out.toString().startsWith("# Points are data"));
    }
}
