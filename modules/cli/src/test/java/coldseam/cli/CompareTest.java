package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.UpkeepItem;
import coldseam.audit.engine.Progress;
import coldseam.audit.house.HouseAudit;
import coldseam.conduction.Interval;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.options.Alternative;
import coldseam.options.Comparer;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Asked;
import coldseam.options.Standing;
import coldseam.options.Wish;
import coldseam.options.Worst;
import coldseam.report.compare.CompareJson;
import coldseam.report.compare.ComparePdf;
import coldseam.report.pdf.Paper;
import coldseam.report.words.CompareWords;
import coldseam.report.words.FrontWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The demo house with its alternatives, from file to answers, with the real catalogue and core. */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class CompareTest {

    private static final Path HOUSE = CommittedReport.ROOT.resolve("fixtures/houses/heron-row.yaml");

    /** W/K, to which each line of the heat-loss table is rounded outwards. */
    private static final double LINE = 1e-3;

    private static Comparison comparison;

    @BeforeAll
    static void compare() {
        comparison = Comparer.compare(
                HouseAudit.of(HOUSE, Run.REAL),
                new Wish(OptionalDouble.of(3000), OptionalDouble.of(90), OptionalDouble.empty()),
                Progress.SILENT);
    }

    /** What is added up of parts is what the audit of the whole house says. */
    @Test
    void theSumsAreThoseOfWholeAudits() {
        int audited = 0;
        for (Comparison.Answer answer : comparison.answers()) {
            if (answer.best().isPresent()) {
                Comparison.Best best = answer.best().get();
                Interval total = best.audit().heatLoss().total();
                double lines = LINE * best.audit().heatLoss().lines().size();
                assertEquals(
                        total.lower(),
                        best.choice().lower() / 1e6,
                        lines,
                        answer.asked().name());
                assertEquals(
                        total.upper(),
                        best.choice().upper() / 1e6,
                        lines,
                        answer.asked().name());
                assertTrue(best.choice().lower() / 1e6 >= total.lower() - 1e-4, "within the audit's interval");
                assertTrue(best.choice().upper() / 1e6 <= total.upper() + 1e-4, "within the audit's interval");
                audited++;
            }
        }
        assertTrue(audited >= 6, "only " + audited + " answers");
    }

    @Test
    void answersKeepWhatWasAsked() {
        assertTrue(best(Asked.BUDGET).choice().cost() <= 3000);
        assertTrue(best(Asked.HEAT_LOSS).audit().heatLoss().total().upper() <= 90);
        assertEquals(0, best(Asked.NO_FINDING).audit().findings().size());
        assertFalse(best(Asked.SURFACE)
                .audit()
                .findings()
                .flatCollect(Finding::breaches)
                .collect(Breach::rule)
                .contains("temperature-factor-under-limit"));
        assertFalse(best(Asked.TRANSMITTANCE)
                .audit()
                .findings()
                .flatCollect(Finding::breaches)
                .collect(Breach::rule)
                .contains("transmittance-over-limit"));
        assertTrue(best(Asked.LEAST_LOSS).choice().upper()
                <= best(Asked.BUDGET).choice().upper());
    }

    private static Comparison.Best best(Asked asked) {
        return comparison
                .answers()
                .detect(answer -> answer.asked() == asked)
                .best()
                .orElseThrow();
    }

    /** A timber kerb costs more and loses surely more than the boards that are described, so no set may have it. */
    @Test
    void whatIsDearerAndWorseIsOnNoFront() {
        Alternative kerb = alternative("wall-to-terrace-board-kerb");
        assertEquals(Standing.WORSE, kerb.built().orElseThrow().standing());
        assertTrue(kerb.built().orElseThrow().cost().orElseThrow() > 0);
        assertFalse(kerb.onFront());
        assertTrue(alternative("240 mm").onFront());
    }

    /** Its walls are rendered: what its roof's air gap has a mesh for, no wall's foot has. */
    @Test
    void upkeepFollowsFromTheHousesOwnLayers() {
        UpkeepItem mesh = upkeep("See that the mesh in the air gap");
        assertFalse(mesh.sheets().isEmpty());
        assertTrue(mesh.sheets()
                .allSatisfy(sheet -> sheet.junction()
                        .orElseThrow()
                        .setup()
                        .assemblies()
                        .anySatisfy(each ->
                                each.layers().anySatisfy(layer -> layer.air().isPresent()))));
        assertEquals(
                Lists.immutable.of("brick wall"),
                upkeep("Look for cracks, hollow places").assemblies());
        assertEquals(
                Lists.immutable.of("flat roof"),
                upkeep("Look over the bare membrane").assemblies());
    }

    private static UpkeepItem upkeep(String look) {
        return comparison
                .described()
                .upkeep()
                .detect(item -> item.upkeep().look().startsWith(look));
    }

    @Test
    void anOptionAloneSaysWhatItDoes() {
        Alternative.Built thicker = alternative("240 mm").built().orElseThrow();
        assertEquals(0.04, thicker.thicker(), 1e-12);
        assertEquals(Standing.BETTER, thicker.standing());
        // 3600 K·d, 24 h a day: 86.4 kWh a year for each W/K; 0.12 EUR for each kWh.
        assertEquals(
                -86.4 * 0.12 * thicker.more().middle(),
                thicker.savesMoney().orElseThrow().middle(),
                1e-9);
        Alternative.Built bare = alternative("parapet-bare").built().orElseThrow();
        assertTrue(bare.changes().appear().anySatisfy(finding -> finding.rule().equals("layer-broken")));
        assertTrue(bare.changes().vanish().isEmpty());
    }

    /** Who reads feet reads inches first, and a price of the energy that stands beside it: 0.12 EUR/kWh over 3.412 kBtu/kWh. */
    @Test
    void inUsUnitsThePriceIsOfTheEnergyBesideIt() {
        CompareWords us = new CompareWords(UnitSystem.US);
        ImmutableList<String> lines = new FrontWords(comparison, UnitSystem.US).lines(alternative("240 mm"));
        assertTrue(
                lines.anySatisfy(line -> line.startsWith("the build-up is 1 9/16 in (40 mm) thicker;")),
                lines::toString);
        String year = us.year(comparison.corners().described()).orElseThrow();
        assertTrue(year.endsWith(" kBtu a year at 0.0352 EUR/kBtu"), year);
    }

    /** What is described stands beside its options with the same values, and each is called by what is built. */
    @Test
    void optionsStandBesideWhatIsDescribed() {
        FrontWords words = new FrontWords(comparison, UnitSystem.SI);
        Alternative wrapped = alternative("parapet-wrapped");
        assertEquals("parapet, as described: Parapet on insulating blocks", words.described(wrapped.decision()));
        String worst = words.worst(wrapped.decision()).orElseThrow();
        assertTrue(worst.matches("psi \\S+ W/\\(m·K\\), fRsi 0\\.\\d\\d, mould from .*, weakest path \\d+ %"), worst);
        assertEquals("parapet: Parapet wrapped on three sides", words.name(wrapped));
        assertEquals(
                "terrace guard posts: Steel tube on a reinforced plastic pad under its foot, side 50 mm, wall 3 mm",
                words.name(alternative("steel-post-on-pad, side 50 mm, wall 3 mm")));
        assertEquals("window jambs: jambs lapped by 10 mm", words.name(alternative("jambs lapped by 10 mm")));
        ImmutableList<String> course = words.lines(alternative("wall-to-terrace-insulating-course"));
        assertTrue(course.contains("comes down for it: foot of the wall"), course::toString);
        ImmutableList<String> strip = words.lines(alternative("terrace-edge-thin-board-over-rim"));
        assertTrue(strip.contains("nothing of the old house comes down for it"), strip::toString);
        assertTrue(
                strip.anySatisfy(line -> line.startsWith(
                        "order: 1. Seal the rim to the air barrier; 2. Fix the strip over the rim; 3. ")),
                strip::toString);
    }

    /** Whoever multiplies sizes by prices comes to what is printed: the wall's, and what it makes of longer seams. */
    @Test
    void costsAddUpFromSizesAndPrices() {
        Alternative thicker = alternative("240 mm");
        Alternative.Built built = thicker.built().orElseThrow();
        double walls = Math.rint(114 * area(built.audit()) - 105 * area(comparison.described()));
        double parapet = Math.rint(95 * (length(built.audit(), "parapet") - length(comparison.described(), "parapet")));
        double edge = Math.rint(60
                * (length(built.audit(), "terrace edge over a room")
                        - length(comparison.described(), "terrace edge over a room")));
        double foot = Math.rint(
                110 * (length(built.audit(), "wall to terrace") - length(comparison.described(), "wall to terrace")));
        assertEquals(walls + parapet + foot + edge, built.cost().orElseThrow());
        String lines = new FrontWords(comparison, UnitSystem.SI).lines(thicker).makeString("\n");
        assertTrue(
                lines.contains(
                        "costs %.0f EUR more (invented), of it %.0f EUR more for \"parapet\", %.0f EUR more for \"wall above the terrace\" and %.0f EUR more for \"terrace edge\", whose size changes with it;"
                                .formatted(walls + parapet + foot + edge, parapet, foot, edge)),
                lines);
    }

    private static double area(Audit audit) {
        return audit.heatLoss()
                .lines()
                .select(line -> line.part() instanceof HeatLoss.Part.OfSurface of
                        && of.surface().isBuiltAs("brick wall"))
                .sumOfDouble(HeatLoss.Line::size);
    }

    private static double length(Audit audit, String kind) {
        return audit.junctions().select(row -> row.kindLabel().equals(kind)).sumOfDouble(JunctionRow::length);
    }

    /**
     * A parapet that is broken as it is, two caps over it that cannot be told apart at two prices, and more board on the walls for
     * less money.
     */
    @Test
    void whatStandsAgainstAWishAndWhatIsBetterForNoMoreIsSaid(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("bare.yaml"),
                Files.readString(HOUSE)
                                .replace("detail: parapet-on-break-blocks", "detail: parapet-bare")
                                .replaceFirst("(?s)\nalternatives:.*", "\n")
                        + """
                        alternatives:
                          junctions:
                            parapet:
                              kinds: [parapet]
                              cost: 5 EUR/m
                              source: a quotation
                              options:
                              - {detail: parapet-wrapped, name: dear, parameters: {wrap: 80.01 mm}, cost: 20 EUR/m, source: a quotation}
                              - {detail: parapet-wrapped, name: cheap, parameters: {wrap: 80 mm}, cost: 10 EUR/m, source: a quotation}
                          assemblies:
                            brick wall:
                              cost: 105 EUR/m²
                              source: a quotation
                              options: [{thickness: 240 mm, cost: 90 EUR/m², source: a quotation}]
                        """);
        Run run = Run.of("compare", file.toString());
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(
                said.contains(
                        "nothing found: no set is proven to do it; against it stands as described: Insulation broken"
                                + " at the parapet"),
                run::out);
        assertTrue(said.contains("Loses less for no more money: brick wall: 240 mm, 6.9 W/K less, costs"), run::out);
        assertTrue(said.contains("; thicker for less money: see whether both prices are of the same work"), run::out);
        assertTrue(said.contains("1 other set may be as good and costs 149 EUR less: parapet: cheap;"), run::out);
    }

    /** Cheaper by far, and a gap: it is no set that anybody is advised to build. */
    @Test
    void theLeastCostOpensNoGap(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("gap.yaml"), Files.readString(HOUSE).replaceFirst("(?s)\nalternatives:.*", "\n") + """
                        alternatives:
                          junctions:
                            parapet:
                              kinds: [parapet]
                              cost: 500 EUR/m
                              source: a quotation
                              options:
                              - {detail: parapet-bare, cost: 5 EUR/m, source: a quotation}
                        """);
        String said = Run.of("compare", file.toString()).out().replaceAll("\\s+", " ");
        assertTrue(said.contains("out, it opens a gap"), said);
        assertTrue(
                said.contains(
                        "chosen: least cost of building and of heat over 30 years, at today's price, that opens no"
                                + " gap: all as described"),
                said);
    }

    private static Alternative alternative(String option) {
        return comparison.alternatives().detect(each -> each.option().name().equals(option));
    }

    @Test
    void theSameHouseGivesTheSameDocuments() {
        Comparison again = Comparer.compare(
                HouseAudit.of(HOUSE, Run.REAL),
                new Wish(OptionalDouble.of(3000), OptionalDouble.of(90), OptionalDouble.empty()),
                Progress.SILENT);
        assertEquals(CompareJson.text(comparison), CompareJson.text(again));
        assertArrayEquals(
                ComparePdf.bytes(comparison, UnitSystem.SI, Paper.A4),
                ComparePdf.bytes(again, UnitSystem.SI, Paper.A4));
    }

    @Test
    void theCommandWritesWhatIsCommitted(@TempDir Path folder) throws IOException {
        Path svg = folder.resolve("front.svg");
        Run run = Run.of("compare", HOUSE.toString(), "--svg", svg.toString(), "--budget", "3000");
        assertEquals(Exit.UNBROKEN.code(), run.code(), run::err);
        assertTrue(run.lines().stream()
                .allMatch(line ->
                        line.codePointCount(0, line.length()) <= Terminal.WIDTH || line.startsWith("Written:")));
        CommittedReport.check("heron-row-options.txt", run.out().replaceFirst("\nWritten: .*\n", ""));
        CommittedReport.check("heron-row-options.svg", Files.readString(svg));
    }

    /** The limit is of the house with its corners, which the sums leave out: the house as described keeps it only so. */
    @Test
    void theLimitOfHeatLossIsKeptWithTheCorners() {
        double limit = comparison.corners().described().heatLoss().total().upper() + 1e-6;
        assertTrue(limit < comparison.described().heatLoss().total().upper(), "corners take away");
        Comparison.Answer answer = Comparer.compare(
                        HouseAudit.of(HOUSE, Run.REAL),
                        new Wish(OptionalDouble.empty(), OptionalDouble.of(limit), OptionalDouble.empty()),
                        Progress.SILENT)
                .answers()
                .getFirst();
        assertEquals(Asked.HEAT_LOSS, answer.asked());
        assertTrue(answer.best().orElseThrow().choice().cost() <= 0, answer::toString);
    }

    /** 150 mm more or a hair less of board over a parapet: the intervals cannot tell, and neither is better. */
    @Test
    void optionsThatTheIntervalsCannotTellAreAsGoodAsOneAnother(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(
                folder.resolve("parapets.yaml"),
                Files.readString(HOUSE).replaceFirst("(?s)\nalternatives:.*", "\n") + """
                        alternatives:
                          junctions:
                            parapet:
                              kinds: [parapet]
                              options:
                              - {detail: parapet-wrapped, name: one, parameters: {wrap: 80 mm}}
                              - {detail: parapet-wrapped, name: other, parameters: {wrap: 80.01 mm}}
                              - {detail: parapet-wrapped, name: again, parameters: {wrap: 80 mm}}
                              - {detail: parapet-bare, name: bare}
                              - {detail: parapet-on-break-blocks}
                        """);
        Comparison parapets = Comparer.compare(
                HouseAudit.of(file, Run.REAL),
                new Wish(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
                Progress.SILENT);
        assertEquals(
                Lists.immutable.of(
                        Lists.immutable.of("other", "again"),
                        Lists.immutable.of("one", "again"),
                        Lists.immutable.of("one", "other"),
                        Lists.immutable.<String>empty(),
                        Lists.immutable.<String>empty()),
                parapets.alternatives().collect(Alternative::asGood));
        assertFalse(parapets.priced());
        Run run = Run.of("compare", file.toString(), "--budget", "5");
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("more: worse, and as good as other, again built the same as again psi"), run::out);
        assertTrue(
                said.contains(
                        "not answered, since parapet: one, parapet: other, parapet: again, parapet: bare have no cost"),
                run::out);
        assertFalse(said.contains("least cost"), run::out);
        assertTrue(said.contains("parapet: Parapet on insulating blocks: what is described All that"), run::out);
        assertTrue(said.contains("least loss of all: the same set as for: least loss with nothing found"), run::out);
        assertTrue(said.contains("coldseam catalogue --house HOUSE --kind \"parapet\" Each option"), run::out);
        assertTrue(said.contains("No set surely loses less than the chosen one and opens no gap."), run::out);
    }

    /** What is coldest need not be what loses most: each value is the worst of all that are decided, or met. */
    @Test
    void theWorstIsSaidValueByValue() {
        Worst met = alternative("240 mm").built().orElseThrow().worst().orElseThrow();
        ImmutableList<BridgeSheet<JunctionResult>> sheets = alternative("240 mm")
                .built()
                .orElseThrow()
                .audit()
                .junctions()
                .select(row -> row.surfaces()
                        .anySatisfy(surface ->
                                surface.assembly().orElseThrow().name().equals("brick wall")))
                .flatCollect(row -> row.sheet().stream().toList())
                .distinctBy(BridgeSheet::id);
        assertEquals(sheets.size(), met.sheets());
        assertEquals(
                sheets.collectDouble(sheet -> sheet.external().upper()).max(),
                met.leakiest().external().upper());
        assertEquals(
                sheets.collectDouble(BridgeSheet::temperatureFactor).min(),
                met.coldest().temperatureFactor());
        assertEquals(
                sheets.collectDouble(sheet -> sheet.result().weakestPath().ratio())
                        .min(),
                met.path().orElseThrow());
        assertEquals(
                0,
                alternative("parapet-bare")
                        .built()
                        .orElseThrow()
                        .worst()
                        .orElseThrow()
                        .neck()
                        .orElseThrow(),
                "a broken pen line has no neck");
    }

    /** Options by their printed names, of the worst which seam it is, of a cost what other decisions have of it. */
    @Test
    void theDataNameWhatIsPrinted() throws IOException {
        JsonNode json = new ObjectMapper().readTree(CompareJson.text(comparison));
        Set<String> names = new HashSet<>();
        json.get("alternatives")
                .forEach(each -> names.add(
                        each.get("decision").asText() + ": " + each.get("name").asText()));
        json.get("front")
                .forEach(set -> set.get("options").forEach(option -> assertTrue(names.contains(option.asText()))));
        JsonNode thicker = null;
        for (JsonNode each : json.get("alternatives")) {
            thicker = each.get("option").asText().equals("240 mm") ? each.get("built") : thicker;
        }
        String printed = new FrontWords(comparison, UnitSystem.SI)
                .lines(alternative("240 mm"))
                .makeString("; ");
        JsonNode worst = thicker.get("worst");
        for (String key : Lists.immutable.of("leakiest", "coldest", "narrowest", "shortest")) {
            assertTrue(printed.contains(" (" + worst.get(key).asText() + ")"), printed + " has no " + worst.get(key));
        }
        assertEquals(
                Lists.immutable.of("door threshold on a terrace", "jamb", "head", "parapet"),
                Lists.immutable
                        .of("leakiest", "coldest", "narrowest", "shortest")
                        .collect(key -> worst.get(key).asText()));
        assertEquals(3, thicker.get("ofItElsewhere").size());
        for (JsonNode other : thicker.get("ofItElsewhere")) {
            String said = other.get("costMore").asInt() + " EUR more for \""
                    + other.get("decision").asText() + "\"";
            assertTrue(printed.contains(said), printed + " has no " + said);
        }
    }

    @Test
    void theDataKeepToTheirSchema() throws IOException {
        DataSchemas.check("comparison", CompareJson.schema(), CompareJson.text(comparison));
    }

    @Test
    void aHouseWithoutAlternativesIsRefused() {
        Run run = Run.of("compare", HOUSE.resolveSibling("marsh-bungalow.yaml").toString());
        assertEquals(Exit.REFUSED.code(), run.code());
        assertTrue(run.err().contains("lists no alternatives"), run::err);
    }
}
