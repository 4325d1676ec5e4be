package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.audit.engine.Sample;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Rank;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule with a house that keeps it (the good box, throughout) and one that breaks it. */
class FindingsTest {

    private static final Made CORNER = Made.good("corner-good", JunctionKind.OUTSIDE_CORNER);
    private static final Made EDGE = Made.good("edge-good", JunctionKind.FLAT_ROOF_EDGE);
    private static final Made SLAB = Made.good("slab-good", JunctionKind.SLAB_EDGE);

    private static ImmutableList<Finding> findings(String yaml, ImmutableList<Made> details) {
        return Sample.audit(yaml, details).findings();
    }

    private static Finding only(ImmutableList<Finding> findings) {
        assertEquals(1, findings.size(), () -> findings.collect(Finding::rule).makeString("; "));
        return findings.getFirst();
    }

    private static Finding onlyWith(Made detail) {
        return only(findings(Sample.yaml(), Sample.goodBut(detail)));
    }

    @Test
    void theGoodBoxIsUnbroken() {
        Audit audit = Sample.audit(Sample.yaml(), Sample.good());
        assertEquals(Lists.immutable.empty(), audit.findings());
        assertTrue(audit.verdict().unbroken());
        assertEquals(0, audit.verdict().gaps() + audit.verdict().weakSpots());
    }

    /** The house asks more of its walls than 200 mm of mineral wool give. */
    @Test
    void aThinSurfaceIsToldHowMuchThickerItMustBe() {
        String boards = "mineral wool board, thickness: 200 mm";
        String limited = Sample.yaml() + "limits: {walls: 0.16 W/(m²·K)}\n";
        SurfacePoorlyInsulatedRule.Found found = (SurfacePoorlyInsulatedRule.Found)
                only(findings(limited, Sample.good())).breaches().getFirst().evidence();
        long more = Math.round(1000 * found.more().orElseThrow());
        assertEquals(0, more % 5, "boards come in steps of 5 mm");
        assertEquals(
                Lists.immutable.empty(),
                findings(limited.replace(boards, boards.replace("200", "" + (200 + more))), Sample.good()));
        assertEquals(
                "surface-poorly-insulated",
                only(findings(limited.replace(boards, boards.replace("200", "" + (195 + more))), Sample.good()))
                        .rule());
    }

    @Test
    void aMissingWallIsOneFindingWithAllItsOpenEdges() {
        String yaml = Sample.yaml().replace("{all: wall}", "{all: wall, south: none}");
        Finding finding = only(findings(yaml, Sample.good()));
        assertEquals("open-edge", finding.rule());
        assertEquals(Severity.GAP, finding.severity());
        // Two sides 8 m long, two as high as the shell.
        double height = Sample.audit(Sample.yaml(), Sample.good()).shell().externalVolume() / 48;
        assertEquals(16 + 2 * height, finding.subject().length(), 1e-3);
        assertEquals(4, ((Subject.Hole) finding.subject()).edges().size());
    }

    @Test
    void cornersUnderTheLimitAreFoundThoughEverySeamKeepsIt() {
        Audit audit = Sample.audit(Sample.yaml(), Sample.good(), 0.699);
        // Those on the ground, and those of the roof: one cause each.
        assertEquals(2, audit.findings().size());
        Finding finding = audit.findings().getFirst();
        assertEquals("corner-under-limit", finding.rule());
        assertEquals(Severity.WEAK, finding.severity());
        assertTrue(audit.verdict().unbroken());
        assertEquals(2, audit.verdict().weakSpots());
        assertEquals(4, ((Subject.Corners) finding.subject()).rows().size());
        assertEquals("V1", finding.sheet().orElseThrow().id());
        assertEquals(0.699, audit.mould().surfaces().getFirst().temperatureFactor(), 0);
        assertEquals(
                Lists.immutable.empty(),
                Sample.audit(Sample.yaml(), Sample.good(), 0.70).findings());
    }

    @Test
    void cornersAreHeldToWhatTheCriticalMonthAsksFor() {
        String yaml = RuleHouses.withMonths(Sample.yaml());
        double need = Sample.audit(yaml, Sample.good())
                .mould()
                .monthly()
                .orElseThrow()
                .critical()
                .temperatureFactor();
        assertTrue(need > 0.70, "more than the limit: " + need);
        assertTrue(rules(Sample.audit(yaml, Sample.good(), need - 0.001)).contains("corner-under-limit"));
        assertFalse(rules(Sample.audit(yaml, Sample.good(), need + 0.001)).contains("corner-under-limit"));
    }

    /** What nobody chose, or what has no insulation, is found as that. */
    @Test
    void cornersOfSeamsThatNobodyChoseAreNotJudged() {
        String unchosen = Sample.yaml().replace("- {kinds: [outside corner], detail: corner-good}\n", "");
        assertEquals(Lists.immutable.of("detail-not-chosen"), rules(Sample.audit(unchosen, Sample.good(), 0.5)));
        String bare = Sample.yaml().replace("{all: wall}", "{all: bare wall}");
        assertFalse(rules(Sample.audit(bare, Sample.good(), 0.5)).contains("corner-under-limit"));
    }

    /** A seam that is broken or pinched and yet warm says nothing of the mould at its corners. */
    @Test
    void aCornerThatFollowsFromItsColdSeamIsNoFindingOfItsOwn() {
        ImmutableList<String> cold = rules(Sample.audit(Sample.yaml(), Sample.goodBut(CORNER.fRsi(0.65)), 0.6));
        assertTrue(cold.notEmpty() && !cold.contains("corner-under-limit"), cold::toString);
        for (Made bad : new Made[] {CORNER.broken(), CORNER.share(0.4)}) {
            ImmutableList<String> found = rules(Sample.audit(Sample.yaml(), Sample.goodBut(bad), 0.6));
            assertTrue(found.contains("corner-under-limit"), found::toString);
        }
    }

    private static ImmutableList<String> rules(Audit audit) {
        return audit.findings().flatCollect(Finding::breaches).collect(Breach::rule);
    }

    @Test
    void junctionsOfAnUninsulatedWallAreNotJudged() {
        String yaml = Sample.yaml().replace("{all: wall}", "{all: bare wall}");
        Made bad = EDGE.broken().psi(0.8).fRsi(0.4);
        assertEquals(
                "surface-without-heat-layer",
                only(findings(yaml, Sample.goodBut(bad))).rule());
    }

    @Test
    void everyMissingControlLayerOfAnAssemblyIsNamed() {
        String yaml = Sample.yaml().replace("{all: wall}", "{all: bare wall}");
        Finding finding = only(findings(yaml, Sample.good()));
        assertEquals("surface-without-heat-layer", finding.rule());
        assertEquals(
                Lists.immutable.of(
                        "surface-without-heat-layer",
                        "surface-without-air-layer",
                        "control-layer-unable",
                        "surface-without-vapour-layer"),
                finding.breaches().collect(Breach::rule));
    }

    @Test
    void aMissingWaterLayerIsFound() {
        String yaml = Sample.yaml().replace("role: membrane, controls: [water]", "role: membrane");
        assertEquals(
                "surface-without-water-layer",
                only(findings(yaml, Sample.good())).rule());
    }

    @Test
    void aMissingVapourLayerIsFound() {
        String yaml = Sample.yaml().replace("role: finish, controls: [air, vapour]", "role: finish, controls: [air]");
        assertEquals(
                "surface-without-vapour-layer",
                only(findings(yaml, Sample.good())).rule());
    }

    @Test
    void aMissingAirLayerIsFoundAndCostsNoSecondFindingAtTheJunctions() {
        String yaml =
                Sample.yaml().replace("role: finish, controls: [air, vapour]", "role: finish, controls: [vapour]");
        Made unsaid = CORNER.connection(Control.AIR, Connection.NOT_SHOWN);
        assertEquals(
                "surface-without-air-layer",
                only(findings(yaml, Sample.goodBut(unsaid))).rule());
    }

    @Test
    void aLayerThatASurfaceLacksIsNotBrokenOnceMoreAtItsJunctions() {
        String yaml =
                Sample.yaml().replace("role: finish, controls: [air, vapour]", "role: finish, controls: [vapour]");
        Made broken = CORNER.connection(Control.AIR, Connection.BROKEN);
        assertEquals(
                "surface-without-air-layer",
                only(findings(yaml, Sample.goodBut(broken))).rule());
    }

    @Test
    void aKindNobodyChoseIsOneFindingAndItsStandInIsNotJudged() {
        String yaml = Sample.yaml().replace("- {kinds: [outside corner], detail: corner-good}\n", "");
        Made worst = new Made(
                "corner-worst", JunctionKind.OUTSIDE_CORNER, Rank.WORST, 0.3, 0.4, false, 0, 0.1, Sample.ALL_CARRIED);
        Audit audit = Sample.audit(
                yaml, Lists.mutable.of(worst).withAll(Sample.good()).toImmutable());
        Finding finding = only(audit.findings());
        assertEquals("detail-not-chosen", finding.rule());
        assertEquals(Severity.UNKNOWN, finding.severity());
        assertFalse(audit.verdict().unbroken());
        double length = audit.junctions()
                .select(row -> row.edge().kind() == JunctionKind.OUTSIDE_CORNER)
                .sumOfDouble(row -> row.length());
        assertEquals(length, finding.subject().length(), 1e-9);
        // The box has four corners, and all of them are meant.
        Subject.Bridges about = (Subject.Bridges) finding.subject();
        assertEquals(4, about.rows().size());
        assertEquals(
                audit.junctions()
                        .select(row -> row.edge().kind() == JunctionKind.OUTSIDE_CORNER)
                        .collect(row -> row.edge().name())
                        .toSet(),
                about.edges().toSet());
        // Against the good corner: 0.3 − (−0.05) W/(m·K) along all corners.
        assertEquals(0.35 * length, finding.loss().orElseThrow().middle(), 1e-9);
        // 3000 K·d of 24 h at 0.10 a kWh.
        assertEquals(
                0.35 * length * 3000 * 24 / 1000 * 0.10, finding.moneyPerYear().orElseThrow(), 1e-9);
    }

    /** It loses less, but would be found at once: of how air control passes it says nothing. */
    @Test
    void whatADetailDoesNotShowMakesItNoBetterOption() {
        String yaml = Sample.yaml().replace("- {kinds: [outside corner], detail: corner-good}\n", "");
        Made worst = new Made(
                "corner-worst", JunctionKind.OUTSIDE_CORNER, Rank.WORST, 0.3, 0.4, false, 0, 0.1, Sample.ALL_CARRIED);
        Made unsaid = Made.good("corner-unsaid", JunctionKind.OUTSIDE_CORNER)
                .psi(-0.10)
                .connection(Control.AIR, Connection.NOT_SHOWN);
        Finding finding = only(findings(
                yaml, Lists.mutable.of(worst, unsaid).withAll(Sample.good()).toImmutable()));
        assertEquals(
                0.35 * finding.subject().length(), finding.loss().orElseThrow().middle(), 1e-9);
    }

    @Test
    void aDetailThatDoesNotFitSaysWhy() {
        String yaml = Sample.yaml().replace("corner-good", "corner-misfit");
        ImmutableList<Made> details =
                Lists.immutable.of(Made.good("corner-misfit", JunctionKind.OUTSIDE_CORNER), EDGE, SLAB);
        Finding finding = only(findings(yaml, details));
        assertEquals("detail-out-of-range", finding.rule());
        DetailOutOfRangeRule.Found found =
                (DetailOutOfRangeRule.Found) finding.breaches().getFirst().evidence();
        assertTrue(found.reasons().collect(Phrase::toString).getOnly().contains("at most 300 mm fit"), found::toString);
    }

    @Test
    void anOwnPsiAloneLeavesTheLayersUnknown() {
        String yaml = Sample.yaml().replace("- {kinds: [outside corner], detail: corner-good}\n", "")
                + "own-psi:\n- {kinds: [outside corner], psi: -0.03 W/(m·K), source: our own computation}\n";
        Audit audit = Sample.audit(yaml, Sample.good());
        assertEquals("detail-not-chosen", only(audit.findings()).rule());
        assertEquals(
                -0.03,
                audit.junctions()
                        .detect(row -> row.edge().kind() == JunctionKind.OUTSIDE_CORNER)
                        .psi()
                        .middle());
    }

    @Test
    void aBrokenPenLineLeadsAndWhatFollowsFromItIsToldWithIt() {
        Finding finding = onlyWith(CORNER.broken().ratio(0.1).psi(0.4).fRsi(0.5));
        assertEquals("layer-broken", finding.rule());
        assertEquals(Severity.GAP, finding.severity());
        assertEquals(
                Lists.immutable.of("layer-broken", "temperature-factor-under-limit", "transmittance-over-limit"),
                finding.breaches().collect(Breach::rule));
        ImmutableList<Value> values =
                finding.breaches().flatCollect(breach -> breach.evidence().values());
        assertTrue(values.contains(Value.of("temperature factor", 0.5, Dimension.RATIO)), values::toString);
    }

    @Test
    void aBrokenAirLayerIsFound() {
        Finding finding = onlyWith(CORNER.connection(Control.AIR, Connection.BROKEN));
        assertEquals("layer-broken", finding.rule());
        assertEquals(
                Lists.immutable.of(Control.AIR),
                ((LayerBrokenRule.Found) finding.breaches().getFirst().evidence()).layers());
    }

    @Test
    void aLayerThatIsNotShownIsUnknown() {
        Finding finding = onlyWith(CORNER.connection(Control.VAPOUR, Connection.NOT_SHOWN));
        assertEquals("layer-not-shown", finding.rule());
        assertEquals(Severity.UNKNOWN, finding.severity());
    }

    @Test
    void aNeckBelowTheLimitIsFoundAndAtTheLimitNot() {
        assertEquals("neck-pinched", onlyWith(CORNER.share(0.49).ratio(0.3)).rule());
        assertEquals(
                0, findings(Sample.yaml(), Sample.goodBut(CORNER.share(0.5))).size());
    }

    /** Half a board of 60 mm came to 0.49999999999999956 of it, in feet to a half: one house, two verdicts. */
    @Test
    void whatIsUnderTheLimitByRoundOffAloneIsNotFound() {
        assertEquals(
                0,
                findings(Sample.yaml(), Sample.goodBut(CORNER.share(0.49999999999999956)))
                        .size());
        assertEquals("neck-pinched", onlyWith(CORNER.share(0.4999999)).rule());
    }

    @Test
    void aWeakPathIsFound() {
        assertEquals("weakest-path", onlyWith(CORNER.ratio(0.49)).rule());
        assertEquals(
                0, findings(Sample.yaml(), Sample.goodBut(CORNER.ratio(0.5))).size());
    }

    @Test
    void aColdPointIsFound() {
        Finding finding = onlyWith(CORNER.fRsi(0.69));
        assertEquals("temperature-factor-under-limit", finding.rule());
        assertEquals(Severity.WEAK, finding.severity());
    }

    @Test
    void aPsiOverTheLimitIsFound() {
        assertEquals("transmittance-over-limit", onlyWith(CORNER.psi(0.0102)).rule());
        assertEquals(
                0, findings(Sample.yaml(), Sample.goodBut(CORNER.psi(0.0098))).size());
    }

    @Test
    void weakSpotsAloneDoNotBreakTheVerdict() {
        Audit audit = Sample.audit(Sample.yaml(), Sample.goodBut(CORNER.psi(0.02)));
        assertTrue(audit.verdict().unbroken());
        assertEquals(1, audit.verdict().weakSpots());
    }

    /** The box beside a garage: two corners have it on one side, and all four have one detail. */
    private static Audit corners(Made outdoors, Made besideGarage) {
        return Sample.besideAGarage(Sample.yaml(), (detail, setup) -> {
            Made corner = Sample.isBesideGarage(setup) ? besideGarage : outdoors;
            return Sample.computer()
                    .compute(setup.kind() == JunctionKind.OUTSIDE_CORNER ? corner.detail() : detail, setup);
        });
    }

    /** Whichever of two sheets of one detail is the worse one leads, and its numbers are told. */
    @ParameterizedTest
    @CsvSource({
        "neck-pinched, 0.4, 0.3",
        "weakest-path, 0.4, 0.3",
        "temperature-factor-under-limit, 0.6, 0.5",
        "transmittance-over-limit, 0.2, 0.3",
        "layer-broken, 0, 0.1"
    })
    void theWorseOfTwoSheetsLeads(String rule, double bad, double worse) {
        for (boolean garage : new boolean[] {false, true}) {
            Audit audit = corners(made(rule, garage ? bad : worse), made(rule, garage ? worse : bad));
            Finding finding = only(audit.findings().select(each -> each.rule().equals(rule)));
            assertEquals(4, ((Subject.Bridges) finding.subject()).rows().size());
            BridgeSheet<?> worst = (BridgeSheet<?>) finding.sheet().orElseThrow();
            assertEquals(
                    garage, Sample.isBesideGarage(worst.junction().orElseThrow().setup()), rule);
        }
    }

    private static Made made(String rule, double value) {
        return switch (rule) {
            case "neck-pinched" -> CORNER.share(value);
            case "weakest-path" -> CORNER.ratio(value);
            case "temperature-factor-under-limit" -> CORNER.fRsi(value);
            case "transmittance-over-limit" -> CORNER.psi(value);
            default -> CORNER.broken().psi(value);
        };
    }

    /** Of equal gravity what loses most leads, then what is longest. */
    @Test
    void whatLosesMostLeadsThenWhatIsLongest() {
        String window = "openings:\n  glass: {kind: window, surface: ground floor south wall, width: 1 m, height: 1 m,"
                + " sill: 1 m, transmittance: 5 W/(m²·K)}\njunctions:\n";
        ImmutableList<Finding> weak = findings(
                        Sample.yaml().replace("junctions:\n", window),
                        Lists.immutable.of(CORNER.fRsi(0.6), EDGE, SLAB.fRsi(0.6)))
                .select(finding -> finding.severity() == Severity.WEAK);
        assertEquals(
                Lists.immutable.of(
                        "opening-over-limit", "temperature-factor-under-limit", "temperature-factor-under-limit"),
                weak.collect(Finding::rule));
        assertTrue(weak.get(1).subject().length() > weak.get(2).subject().length() + 1);
    }

    @Test
    void withoutAPriceNoMoneyIsTold() {
        String unpriced =
                Sample.yaml().replace("prices: {heat: 0.10 EUR/kWh}\n", "").replace("200 mm", "1 mm");
        Finding finding = only(findings(unpriced, Sample.good()));
        assertEquals(OptionalDouble.empty(), finding.moneyPerYear());
        assertTrue(finding.loss().isPresent());
    }

    /** The facts of an audit give its findings again, and of some bridges alone those about these and about the rest of the house. */
    @Test
    void factsOfSomeBridgesGiveTheirFindings() {
        Audit audit = Sample.audit(
                Sample.yaml().replace("200 mm", "1 mm"), Lists.immutable.of(CORNER.psi(0.2), EDGE.psi(0.2), SLAB));
        Facts all = Facts.of(audit);
        assertEquals(audit.findings().collect(Finding::rule), Findings.of(all).collect(Finding::rule));
        assertEquals(audit.findings().collect(Finding::loss), Findings.of(all).collect(Finding::loss));
        ImmutableList<Finding> corners =
                Findings.of(all.only(row -> row.kindLabel().equals("outside corner")));
        assertEquals(
                Lists.immutable.of("surface-poorly-insulated", "transmittance-over-limit"),
                corners.collect(Finding::rule));
        assertEquals(4, ((Subject.Bridges) corners.getLast().subject()).rows().size());
    }

    /** Towards heated neighbours nothing is needed, and water is kept out only where rain or the ground is. */
    @Test
    void surfacesNeedWhatTheirOtherSideAsksFor() {
        Audit audit = Sample.audit(
                Sample.yaml()
                        .replace(
                                "{all: wall}",
                                "{all: wall, south: {assembly: wall, faces: garage}, east: {assembly: wall, faces: next}}")
                        .replace(
                                "body:\n",
                                "neighbours: {garage: {temperature-factor: 0.7}, next: {heated: true}}\nbody:\n"),
                Sample.good());
        for (Surface surface : audit.shell().surfaces()) {
            String needed = switch (surface.exposure().kind()) {
                case PARTY -> "[]";
                case UNHEATED -> "[HEAT, AIR, VAPOUR]";
                default -> "[HEAT, AIR, WATER, VAPOUR]";
            };
            assertEquals(
                    needed,
                    Lists.immutable
                            .of(Control.HEAT, Control.AIR, Control.WATER, Control.VAPOUR)
                            .select(control -> Facts.needs(surface, control))
                            .toString(),
                    surface.name());
        }
        assertEquals(
                4,
                audit.shell()
                        .surfaces()
                        .collect(surface -> surface.exposure().kind())
                        .distinct()
                        .size());
    }

    @Test
    void aLineThatChangesSidesIsToldAsThat() {
        ControlLineBrokenRule.Found found = (ControlLineBrokenRule.Found)
                only(RuleHouses.breaking().get("control-line-broken").get().findings())
                        .breaches()
                        .getFirst()
                        .evidence();
        assertTrue(found.changesSide());
        assertEquals(Lists.immutable.of(Control.AIR), found.layers());
    }

    @Test
    void findingsAreNumberedByWeight() {
        Made corner = CORNER.broken();
        Made edge = EDGE.fRsi(0.6);
        ImmutableList<Finding> findings = findings(Sample.yaml(), Lists.immutable.of(corner, edge, SLAB.psi(0.5)));
        assertEquals(Lists.immutable.of(1, 2, 3), findings.collect(Finding::number));
        assertEquals("layer-broken", findings.getFirst().rule());
    }
}
