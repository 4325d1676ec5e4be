package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.Mould;
import coldseam.audit.Note;
import coldseam.audit.VertexRow;
import coldseam.audit.house.BuiltInWorkshop;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.solid.BodySolver;
import coldseam.files.FileFaultException;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BodySolving;
import coldseam.junctions.Keeping;
import coldseam.junctions.store.KeptFolder;
import coldseam.junctions.vertex.VertexResult;
import coldseam.report.AuditCsv;
import coldseam.report.AuditJson;
import coldseam.report.PdfReport;
import coldseam.report.pdf.Paper;
import coldseam.report.words.InputWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A house whose corners are all computed loses the same in both dimension systems. */
@Tag("slow")
class VerticesTest {

    /** A box on posts: all six sides outdoors, so that no rule of the ground is in it. */
    private static final String BOX = """
            house: Box
            site: {indoor-temperature: 20 °C, outdoor-temperature: -5 °C}
            assemblies:
              shell:
                layers:
                - {material: cross-laminated timber, thickness: 100 mm, role: structure, controls: [air, vapour]}
                - {material: wood fibre insulation board, thickness: 200 mm, role: insulation, controls: [heat, water]}
            body:
              points:
                a: [0 m, 0 m, 2 m]
                b: [6 m, 0 m, 2 m]
                c: [6 m, 5 m, 2 m]
                d: [0 m, 5 m, 2 m]
                e: [0 m, 0 m, 5 m]
                f: [6 m, 0 m, 5 m]
                g: [6 m, 5 m, 5 m]
                h: [0 m, 5 m, 5 m]
              surfaces:
                floor: {points: [a, d, c, b], assembly: shell, use: overhang}
                roof: {points: [e, f, g, h], assembly: shell, use: roof}
                south wall: {points: [a, b, f, e], assembly: shell, use: wall}
                east wall: {points: [b, c, g, f], assembly: shell, use: wall}
                north wall: {points: [c, d, h, g], assembly: shell, use: wall}
                west wall: {points: [d, a, e, h], assembly: shell, use: wall}
              levels: {upper floor: {height: 2.3 m}}
              ground-level: 0 mm
            junctions:
            - {kinds: [outside corner], detail: outside-corner-unbroken}
            - {kinds: [overhang edge], detail: overhang-edge-boards-wrap}
            - {kinds: [flat roof edge], detail: flat-roof-edge-wall-boards-past}
            """;

    @TempDir
    Path folder;

    private Audit audit(String dimensions) throws IOException {
        return audit(BOX, dimensions);
    }

    private Audit audit(String box, String dimensions) throws IOException {
        Path file = folder.resolve(dimensions + ".yaml");
        Files.writeString(file, box.replace("-5 °C}", "-5 °C, dimensions: " + dimensions + "}"));
        return Bench.ofChosen(file, Run.REAL);
    }

    /** What is computed for its temperature alone loses heat that another line has: nought would be a number nobody computed. */
    @Test
    void cornersWithoutChiHaveNoLine() {
        Audit audit = Bench.ofChosen(CommittedReport.ROOT.resolve("fixtures/houses/first-house.yaml"), Run.REAL);
        assertTrue(
                audit.vertexSheets().anySatisfy(sheet -> sheet.result().heat().isEmpty()));
        assertTrue(audit.heatLoss()
                .lines()
                .collect(HeatLoss.Line::part)
                .selectInstancesOf(HeatLoss.Part.OfVertices.class)
                .allSatisfy(part -> part.sheet().result().heat().isPresent()));
    }

    @Test
    void bothDimensionSystemsAgreeOnABox() throws IOException {
        Audit external = audit("external");
        assertEquals(8, external.vertices().size());
        assertTrue(
                external.vertices().allSatisfy(row -> row.sheet().isPresent()),
                external.vertices().collect(VertexRow::obstacle).makeString()
                        + external.vertices().collect(VertexRow::reasons));
        HeatLoss loss = external.heatLoss();
        // Without vertices the two systems differ by more than a hundred times what is left.
        double chi = loss.vertices().middle();
        assertTrue(Math.abs(chi) > 0.1, "corners worth counting: " + chi);
        assertEquals(0, loss.vertexRemainder().middle(), 0.001);
        assertEquals(0, loss.correctionRemainder(), 0.001);
        Interval internal = audit("internal").heatLoss().total();
        // Lines are rounded outwards to 0.001 W/K each.
        double rounding = 0.001 * loss.lines().size();
        assertEquals(
                internal.middle(),
                loss.total().middle(),
                rounding + (internal.width() + loss.total().width()) / 2);
    }

    /** A steel bracket in each upper corner, drawn on the lines of the box' own layers. */
    private static final String BRACKET = """
            corner: bracket-in-the-corner
            kind: flat roof corner
            name: Steel bracket in the corner
            rank: worst
            looks-like: l
            needs: [wall.structure, roof.insulation]
            parameters:
              side: {value: 60 mm, from: 20 mm, to: 200 mm, says: side of it}
            drawing:
              - box: bracket
                material: steel
                between:
                  wall: [wall.structure.outside - 50 mm, wall.structure.outside + side]
                  other wall: [other wall.structure.outside - 50 mm, other wall.structure.outside + side]
                  roof: [roof.structure.outside - 50 mm, roof.outside]
            order: [Fix it.]
            connections: {}
            failures: []
            photographs: [{shows: The bracket before the boards., stop: Wall insulation}]
            """;

    private Audit withCorners(String corners) throws IOException {
        Files.writeString(folder.resolve("bracket.yaml"), BRACKET);
        Path file = folder.resolve("own.yaml");
        Files.writeString(file, BOX + "corners: " + corners + "\n");
        return Bench.ofChosen(file, Run.REAL);
    }

    /** A corner's own detail is built into every corner that it is for, and into no other. */
    @Test
    void aCornersOwnDetailGoesBeforeItsSections() throws IOException {
        Audit bare = withCorners("[]");
        Audit own = withCorners("[bracket.yaml]");
        assertEquals(2, own.vertexSheets().size());
        own.vertexSheets().zip(bare.vertexSheets()).forEach(pair -> {
            boolean upper = pair.getOne().kind().contains("flat roof edge");
            assertEquals(upper, pair.getOne().result().corner().isPresent());
            double more = pair.getOne().result().heat().orElseThrow().coupling().lower()
                    - pair.getTwo().result().heat().orElseThrow().coupling().upper();
            assertEquals(upper, more > 0.001, pair.getOne().kind() + " loses more by " + more);
            assertEquals(
                    upper,
                    pair.getOne().temperatureFactor() < pair.getTwo().temperatureFactor() - 0.01,
                    pair.getOne().kind());
        });
        assertTrue(own.holdPoints()
                .detect(each -> each.name().equals("Wall insulation"))
                .lookAt()
                .contains("The bracket before the boards"));
        assertEquals(bare.notes(), own.notes());
        ImmutableList<String> more = inputs(own).reject(inputs(bare)::contains);
        assertEquals(
                Lists.immutable.of(
                        "Corner built as bracket.yaml: Steel bracket in the corner; house file",
                        "Conductivity of steel: 50.000 W/(m·K); EN 12524 values in the table of prEN ISO"
                                + " 10077-2, read in a public copy"),
                more);
    }

    private static ImmutableList<String> inputs(Audit audit) {
        return InputWords.of(audit, UnitSystem.SI)
                .collect(row -> row.what() + ": " + row.value() + "; " + row.source());
    }

    @Test
    void aCornersDetailThatIsForNoCornerIsTold() throws IOException {
        Audit audit = withCorners("[terrace-corner-structure-out]");
        assertEquals(
                Lists.immutable.of(new Note.CornerNowhere("terrace-corner-structure-out")),
                audit.notes().selectInstancesOf(Note.CornerNowhere.class));
    }

    @Test
    void onlyCornersDetailsAreTakenForCorners() {
        String told = assertThrows(FileFaultException.class, () -> withCorners("[terrace-corner-structure-ou]"))
                .getMessage();
        assertTrue(told.contains("did you mean \"terrace-corner-structure-out\"?"), told);
        told = assertThrows(FileFaultException.class, () -> withCorners("[outside-corner-unbroken]"))
                .getMessage();
        assertTrue(told.contains("own.yaml:31:11: no corner detail has this name"), told);
    }

    /** Corners beside an unheated space lose to it by its factor, as their surfaces and edges do. */
    @ParameterizedTest
    @ValueSource(strings = {"floor", "floor and east wall"})
    void bothDimensionSystemsAgreeBesideAnUnheatedSpace(String sides) throws IOException {
        String box = besideGarage(sides);
        Audit external = audit(box, "external");
        assertTrue(
                external.vertices().allSatisfy(row -> row.sheet().isPresent()),
                external.vertices().collect(VertexRow::reasons).makeString());
        Interval total = external.heatLoss().total();
        HeatLoss internal = audit(box, "internal").heatLoss();
        double rounding = 0.001 * external.heatLoss().lines().size();
        double slack = rounding + (internal.total().width() + total.width()) / 2;
        double corners = Math.abs(
                external.heatLoss().vertices().middle() - internal.vertices().middle());
        assertTrue(corners > 2 * slack, () -> "corners worth counting: " + corners + " beside " + slack);
        assertEquals(internal.total().middle(), total.middle(), slack);
    }

    private static String besideGarage(String sides) {
        String box = BOX.replace("use: overhang", "use: overhang, faces: garage")
                + "neighbours: {garage: {temperature-factor: 0.4}}\n";
        return sides.equals("floor")
                ? box
                : box.replace(
                        "points: [b, c, g, f], assembly: shell",
                        "points: [b, c, g, f], assembly: shell, faces: garage");
    }

    @Test
    void everyCornerHasItsLine() throws IOException {
        String csv = AuditCsv.VERTICES.text(audit("external"), UnitSystem.SI);
        assertEquals(9, csv.lines().count());
        assertTrue(csv.contains("floor / south wall / west wall"), csv);
        assertEquals(8, csv.lines().filter(line -> line.endsWith(",computed")).count());
    }

    /** The box with a bracket in its upper corners, in a colder place than the usual one. */
    private Audit inFrost() throws IOException {
        Files.writeString(folder.resolve("bracket.yaml"), BRACKET);
        Path file = folder.resolve("frost.yaml");
        Files.writeString(
                file,
                BOX.replace("20 °C, outdoor-temperature: -5 °C", "22 °C, outdoor-temperature: -12 °C")
                        + "corners: [bracket.yaml]\n");
        return Bench.ofChosen(file, wide(BodySolver::solve));
    }

    /** For what does not hang on the width of intervals. */
    private static Bench wide(BodySolving bodies) {
        Accuracy accuracy = new Accuracy(1e-2, 100_000);
        return new Bench(Bench.computer(accuracy, 10), Bench.corners(accuracy, 1, bodies), Bench.pairs(accuracy, 10));
    }

    /** Saturation pressure by Magnus' formula with the constants of the WMO's guide to instruments (from memory), Pa; from 0 °C on. */
    private static double magnus(double temperature) {
        return 611.2 * Math.exp(17.62 * temperature / (243.12 + temperature));
    }

    /**
     * The humidity at which a corner fails: where air that is at 80 % on its coldest surface comes from the room. Between 0 and 22 °C the
     * two formulas' ratios differ by less than 0.2 %, so these humidities by less than 0.15 %.
     */
    @Test
    void saysFromWhichHumidityACornerFails() throws IOException {
        Audit audit = inFrost();
        JsonNode json = new ObjectMapper().readTree(AuditJson.text(audit));
        ImmutableList<String> csv = Lists.immutable.fromStream(
                AuditCsv.VERTICES.text(audit, UnitSystem.SI).lines());
        assertTrue(csv.getFirst().endsWith(",mould from indoor humidity %,status"), csv.getFirst());
        String pdf = packed(PdfReport.bytes(audit, UnitSystem.SI, Paper.A4, Keeping.NOTHING));
        assertEquals(2, audit.vertexSheets().size());
        audit.vertexSheets().forEachWithIndex((sheet, i) -> {
            double coldest = sheet.result().surface().surface("indoor").lowest();
            double expected = 80 * magnus(coldest) / magnus(22);
            assertEquals(expected, 100 * sheet.mouldHumidity(), 0.15, sheet.id());
            Mould.Surface surface =
                    audit.mould().surfaces().detect(each -> each.sheet().id().equals(sheet.id()));
            assertEquals(expected, 100 * surface.humidityAtDesign(), 0.15, sheet.id());
            JsonNode data = json.get("vertexSheets").get(i);
            assertEquals(sheet.id(), data.get("id").asText());
            assertEquals(expected, 100 * data.get("mouldHumidity").asDouble(), 0.15, sheet.id());
            ImmutableList<String> rows = csv.select(line -> line.contains("," + sheet.id() + ","));
            assertEquals(4, rows.size());
            rows.forEach(row -> {
                String[] cells = row.split(",");
                assertEquals(expected, Double.parseDouble(cells[cells.length - 2]), 0.15, row);
            });
            assertTrue(
                    pdf.contains("designtemperatures" + Math.round(100 * sheet.mouldHumidity()) + "%"),
                    () -> expected + " in " + pdf);
        });
        double apart = audit.vertexSheets().getFirst().mouldHumidity()
                - audit.vertexSheets().getLast().mouldHumidity();
        assertTrue(Math.abs(apart) > 0.02, () -> "corners worth telling apart: " + apart);
    }

    private static String packed(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replaceAll("[\\s\u00a0]+", "");
        }
    }

    /** Eight corners, of which four and four are alike up to turning, are two: each solved for its heat and for its surface. */
    @Test
    void equalCornersAreSolvedOnce() throws IOException {
        AtomicInteger solved = new AtomicInteger();
        BodySolving counting = (body, accuracy) -> {
            solved.incrementAndGet();
            return BodySolver.solve(body, accuracy);
        };
        Path file = folder.resolve("once.yaml");
        Files.writeString(file, BOX);
        Audit audit = Bench.ofChosen(file, wide(counting));
        assertEquals(8, audit.vertices().count(row -> row.sheet().isPresent()));
        assertEquals(2 * 2, solved.get());
    }

    /** Each is taken as it was kept: its seconds are those of the first time, which no second solve has again. */
    @Test
    void aKeptAuditTakesEveryCornerFromTheStore() throws IOException {
        Path file = folder.resolve("kept.yaml");
        Files.writeString(file, BOX);
        KeptFolder kept = KeptFolder.in(Files.createDirectory(folder.resolve("kept")));
        Audit first = Bench.ofChosen(file, new BuiltInWorkshop().keepingIn(kept));
        Audit second = Bench.ofChosen(file, new BuiltInWorkshop().keepingIn(kept));
        assertEquals(2, first.vertexSheets().size());
        first.vertexSheets().zip(second.vertexSheets()).forEach(pair -> {
            VertexResult solved = pair.getOne().result();
            VertexResult taken = pair.getTwo().result();
            assertNotSame(solved, taken);
            assertEquals(solved.surface().seconds(), taken.surface().seconds());
            assertEquals(
                    solved.heat().orElseThrow().solution().seconds(),
                    taken.heat().orElseThrow().solution().seconds());
            assertEquals(
                    solved.heat().orElseThrow().chiExternal(),
                    taken.heat().orElseThrow().chiExternal());
            assertEquals(solved.temperatureFactor(), taken.temperatureFactor());
        });
    }
}
