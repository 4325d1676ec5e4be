package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Digests;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.house.HouseAudit;
import coldseam.audit.house.Workshop;
import coldseam.conduction.Solution;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.Edge;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.report.DetailSvg;
import coldseam.report.pages.MarkedTemperatures;
import coldseam.report.words.FindingWords;
import coldseam.report.words.HeatLossWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demo houses from file to findings, with the real catalogue and core.
 *
 * <p>What {@code coldseam check} prints of them stands in reports/; run with {@code -Dcoldseam.write=true} to write it
 * anew, and read the difference.
 */
@Tag("slow")
class HousesTest {

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);
    private static final Path ROOT = Path.of(System.getProperty("coldseam.root"));
    private static final MutableMap<String, Audit> AUDITS = Maps.mutable.empty();

    private static Audit audit(String house) throws IOException {
        if (!AUDITS.containsKey(house)) {
            // The bungalow's work is counted by another test, the row's audits are many tests'.
            Workshop workshop = house.equals("marsh-bungalow") ? Bench.NARROW : Run.REAL;
            AUDITS.put(house, HouseAudit.of(file(house), workshop).compute());
        }
        return AUDITS.get(house);
    }

    private static Path file(String house) {
        return ROOT.resolve("fixtures/houses/" + house + ".yaml");
    }

    @Test
    void heronRowIsUnbrokenWithoutWeakSpot() throws IOException {
        Audit audit = audit("heron-row");
        assertEquals(Lists.immutable.empty(), audit.findings().collect(WORDS::title));
        assertTrue(audit.verdict().unbroken());
        assertEquals(Exit.UNBROKEN, Exit.of(audit));
    }

    /** Thin boards before deep studs: what the slab's edge and the floor's edge draw of a frame is what keeps it so. */
    @Test
    void aFrameWithATerraceOverARoomIsUnbroken() {
        Audit audit = Bench.shared("larch-house");
        assertEquals(Lists.immutable.empty(), audit.findings().collect(WORDS::title));
        assertEquals(Exit.UNBROKEN, Exit.of(audit));
    }

    @Test
    void heronRowWithGapsHasExactlyTheSixThatWerePlanted() throws IOException {
        Audit audit = audit("heron-row-gaps");
        assertEquals(
                Lists.immutable.of(
                        "A surface is missing",
                        "Insulation broken at the terrace edge over a room",
                        "Insulation broken at the intermediate floor",
                        "No air layer in \"brick wall without air layer\"",
                        "No detail chosen: door threshold on a slab",
                        "Insulation pinched at the eaves of an insulated roof"),
                audit.findings().collect(WORDS::title));
        assertEquals(Exit.FOUND, Exit.of(audit));
        // The knee wall that is missing is 8.42 m long and, above the flat roof, 0.92 m high.
        assertEquals(2 * (8.42 + 0.92), audit.findings().getFirst().subject().length(), 0.01);
        Finding slab = audit.findings().get(2);
        assertTrue(WORDS.place(slab).startsWith("west side"), WORDS.place(slab));
        assertTrue(slab.loss().orElseThrow().lower() > 5, slab::toString);
        assertTrue(slab.moneyPerYear().isPresent());
    }

    @Test
    void marshBungalowStandsUnbrokenOverItsCrawlSpace() throws IOException {
        Audit audit = audit("marsh-bungalow");
        assertEquals(Lists.immutable.empty(), audit.findings().collect(WORDS::title));
        assertTrue(
                audit.heatLoss().ground() > 1,
                () -> "through the crawl space " + audit.heatLoss().ground() + " W/K");
        assertTrue(audit.heatLoss().unheated() > 1);
    }

    @ParameterizedTest
    @CsvSource({"heron-row", "marsh-bungalow"})
    void theDimensionSystemsAgreeUpToTheVertices(String house) throws IOException {
        var loss = audit(house).heatLoss();
        double difference = loss.total().middle() - loss.otherSystemTotal().middle();
        // Lines are rounded to 0.001 W/K each.
        assertEquals(
                difference,
                loss.vertexRemainder().middle() + loss.correctionRemainder(),
                0.001 * loss.lines().size());
    }

    /**
     * Sections and shell are measured in different rooms: what one calls Δl the other calls a set-back. The sections' U is
     * taken, which leaves out fasteners.
     */
    @ParameterizedTest
    @CsvSource({"heron-row", "marsh-bungalow"})
    void psiOfTheSystemsDiffersByTransmittanceTimesSetBack(String house) throws IOException {
        Audit audit = audit(house);
        for (JunctionRow row : audit.junctions()) {
            JunctionResult result = row.sheet().orElseThrow().result();
            Edge edge = row.edge();
            double expected = part(result, edge.kind().first(), result.setup().firstExposure(), edge.firstSetBack())
                    + part(result, edge.kind().second(), result.setup().secondExposure(), edge.secondSetBack());
            double shift = result.psiInternal().middle() - result.psiExternal().middle();
            // The shell's lattice of 0.1 mm, times U of at most 0.3 W/(m²·K), on two surfaces.
            assertEquals(expected, shift, 6e-5, edge::name);
        }
    }

    private static double part(JunctionResult result, String band, Exposure exposure, double setBack) {
        // Beside a door's sill the wall it stands in is what is set back.
        String name = band.equals("door") ? "wall" : band;
        return setBack == 0
                ? 0
                : result.legs().detect(leg -> leg.name().equals(name)).transmittance() * exposure.factor() * setBack;
    }

    /**
     * Behind a floor's edge the wall is warmer than elsewhere, so the coldest point lies at the section's end: the drawing
     * shows the floor all the same, and the wall in full thickness.
     */
    @Test
    void aDrawingShowsTheJunctionWhereverItsColdestPointIs() throws IOException {
        Audit audit = audit("heron-row");
        JunctionResult floor = audit.sheets()
                .detect(sheet -> sheet.result().setup().kind() == JunctionKind.INTERMEDIATE_FLOOR)
                .result();
        String svg = DetailSvg.text(floor, MarkedTemperatures.of(audit.house().site()), UnitSystem.SI);
        assertTrue(svg.contains("reinforced concrete"), svg);
        assertTrue(svg.contains("thin-coat render"), svg);
        assertTrue(svg.contains("beyond this drawing"), svg);
    }

    /**
     * A floor on the ground or over a crawl space has one U, in its sections and in the house's sum: those of sections know B' and
     * the wall's thickness to a micrometre, 1e-6 of metres.
     */
    @Test
    void floorsLoseTheSameInSectionAndSum() throws IOException {
        assertEquals(floorLine("heron-row"), floorLeg("heron-row", JunctionKind.SLAB_EDGE), 1e-7);
        assertEquals(floorLine("marsh-bungalow"), floorLeg("marsh-bungalow", JunctionKind.CRAWL_SPACE_EDGE), 1e-7);
    }

    /** Windows and doors in one wall have heads of one detail on two sheets: each line says whose. */
    @Test
    void linesOfOneDetailAreToldApart() throws IOException {
        HeatLoss loss = audit("heron-row").heatLoss();
        ImmutableList<String> names = loss.lines().collect(line -> HeatLossWords.name(line.part(), loss));
        assertEquals(
                Lists.immutable.of(
                        "J11 head: Frame in the insulation, which laps it, front door and terrace door",
                        "J14 head: Frame in the insulation, which laps it, living room window, kitchen window and bedroom"
                                + " window"),
                names.select(name -> name.contains(" head: ")));
        assertTrue(names.contains("J2 outside corner: Boards run round the corner"), names::makeString);
    }

    private static double floorLine(String house) throws IOException {
        HeatLoss loss = audit(house).heatLoss();
        return loss.lines()
                .detect(line -> HeatLossWords.name(line.part(), loss).equals("lowest floor"))
                .transmittance()
                .middle();
    }

    private static double floorLeg(String house, JunctionKind kind) throws IOException {
        JunctionResult result = audit(house)
                .sheets()
                .detect(sheet -> sheet.result().setup().kind() == kind)
                .result();
        return result.legs().getFirst().transmittance()
                * result.setup().firstExposure().factor();
    }

    /** What is built and what would be best keep their width; what is only compared has the one that the method states. */
    @Test
    void onlyWhatIsComparedIsSolvedWider() throws IOException {
        int compared = 0;
        for (BridgeSheet<JunctionResult> sheet : audit("heron-row-gaps").sheets()) {
            for (JunctionResult option : sheet.options()) {
                boolean narrow = option.equals(sheet.result()) || sheet.best().equals(Optional.of(option));
                Solution solution = option.solution();
                assertEquals(narrow ? 1e-4 : 1e-3, solution.accuracy().relativeWidth(), option.detail()::id);
                double asked =
                        solution.accuracy().relativeWidth() * option.coupling().middle();
                // The coupling to one space is a part of the total that the width is of.
                assertTrue(option.coupling().width() <= 1.001 * asked, option.detail()::id);
                compared += narrow ? 0 : 1;
            }
            assertEquals(
                    1e-4,
                    sheet.best().orElse(sheet.result()).solution().accuracy().relativeWidth());
        }
        assertTrue(compared > 10, "hardly anything is compared: " + compared);
    }

    @ParameterizedTest
    @CsvSource({"heron-row", "heron-row-gaps", "marsh-bungalow"})
    void theReportOfTheHouseIsUpToDate(String house) throws IOException {
        String text = new VerdictText(audit(house), UnitSystem.SI).full().makeString("\n") + "\n";
        Path report = ROOT.resolve("reports/" + house + ".txt");
        if (Boolean.getBoolean("coldseam.write")) {
            AtomicFiles.write(report, text);
        }
        assertEquals(Files.readString(report), text);
    }

    /** Another detail behind the same name makes another audit, which the house file's digest alone does not tell. */
    @Test
    void ownDetailsHaveDigestsOfTheirOwn() throws Exception {
        String detail = "details/eaves-thin-strip.yaml";
        byte[] read = Files.readAllBytes(file("heron-row-gaps").resolveSibling(detail));
        assertEquals(
                Lists.immutable.of(new Digests.OfDetail(
                        detail,
                        HexFormat.of()
                                .formatHex(MessageDigest.getInstance("SHA-256").digest(read)))),
                audit("heron-row-gaps").digests().details());
    }
}
