package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.engine.Sample;
import coldseam.audit.rules.InsulationUnfitRule.Unfit;
import coldseam.envelope.Control;
import coldseam.envelope.Duty;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** The least that breaks a rule and the most that keeps it, each in the box; numbers worked out apart. */
class RuleLimitsTest {

    private static final String WALL_BOARD = "mineral wool board, thickness: 200 mm";

    private static final String SLAB_BOARD =
            "    - {material: extruded polystyrene board, thickness: 160 mm, role: insulation, controls: [heat, water]}\n";

    private static final String CONCRETE =
            "    - {material: reinforced concrete, thickness: 150 mm, role: structure, controls: [air, vapour]}\n";

    /** m, of the box outside. */
    private static final double HEIGHT = RuleHouses.keepingAll().shell().externalVolume() / 48;

    private static final double BARE = 0.13 + 0.015 / 0.8 + 0.24 / 0.81 + 0.01 / 0.7;

    private static Audit audit(String yaml) {
        return Sample.audit(yaml, Sample.good());
    }

    private static Audit changed(String from, String to) {
        return audit(Sample.yaml().replace(from, to));
    }

    private static Optional<Finding> finding(Audit audit, String rule) {
        return audit.findings()
                .detectOptional(each -> each.breaches().collect(Breach::rule).contains(rule));
    }

    private static <E extends Evidence> E found(Class<E> evidence, Audit audit) {
        return evidence.cast(audit.findings()
                .flatCollect(Finding::breaches)
                .collect(Breach::evidence)
                .detect(evidence::isInstance));
    }

    private static Audit slab(String layers) {
        return changed(CONCRETE + SLAB_BOARD, layers);
    }

    private static ImmutableList<Unfit> unfit(Audit audit) {
        return finding(audit, "insulation-unfit").isEmpty()
                ? Lists.immutable.empty()
                : found(InsulationUnfitRule.Found.class, audit).unfit();
    }

    @Test
    void whatLiesUnderASlabBearsGroundAndLoad() {
        String wool = SLAB_BOARD.replace("extruded polystyrene", "mineral wool");
        Audit bad = slab(CONCRETE + wool);
        assertEquals(
                Lists.immutable.of(
                        new Unfit(Duty.GROUND, "mineral wool board"), new Unfit(Duty.LOAD, "mineral wool board")),
                unfit(bad));
        assertEquals(
                Severity.GAP, finding(bad, "insulation-unfit").orElseThrow().severity());
        // A sheet that keeps water out beyond it leaves the load.
        String sheet = "    - {material: bitumen sheet, thickness: 4 mm, role: membrane, controls: [water]}\n";
        assertEquals(
                Lists.immutable.of(new Unfit(Duty.LOAD, "mineral wool board")), unfit(slab(CONCRETE + wool + sheet)));
        // Inside the sheet that is named for water and can do it, and then outside it.
        assertEquals(
                Lists.immutable.of(
                        new Unfit(Duty.GROUND, "mineral wool board"), new Unfit(Duty.LOAD, "mineral wool board")),
                unfit(slab(CONCRETE + sheet + wool)));
    }

    @Test
    void whatLiesUnderAFloatingFloorBearsTheLoadUnlessItsMembersDo() {
        String finish = "    - {material: lime plaster, thickness: 20 mm, role: finish}\n";
        String wool = "    - {material: mineral wool board, thickness: 60 mm, role: insulation%s}\n";
        Audit floating = slab(finish + wool.formatted("") + CONCRETE + SLAB_BOARD);
        assertEquals(Lists.immutable.of(new Unfit(Duty.LOAD, "mineral wool board")), unfit(floating));
        assertEquals(
                Severity.WEAK,
                finding(floating, "insulation-unfit").orElseThrow().severity());
        String members = ", framing: {material: softwood, share: 10 %}";
        assertEquals(Lists.immutable.empty(), unfit(slab(finish + wool.formatted(members) + CONCRETE + SLAB_BOARD)));
        // With nothing on it that carries nobody walks on it: the concrete is the floor.
        assertEquals(Lists.immutable.empty(), unfit(slab(wool.formatted("") + CONCRETE + SLAB_BOARD)));
    }

    /** Half a digit of what psi is given in may be missing: the bound is −0.05005. */
    @Test
    void anOwnPsiMayBeRounded() {
        String own = "own-psi:\n- {kinds: [outside corner], psi: %s W/(m·K), source: made up}\njunctions:\n";
        assertEquals(
                Optional.empty(), finding(changed("junctions:\n", own.formatted("-0.0505")), "own-psi-below-computed"));
        Finding low = finding(changed("junctions:\n", own.formatted("-0.0506")), "own-psi-below-computed")
                .orElseThrow();
        assertEquals("own-psi-below-computed", low.rule());
    }

    /** One side of four is bare: it loses what the best wall would keep. */
    @Test
    void aBareSideLosesAgainstTheInsulatedOnes() {
        Finding bare = finding(changed("{all: wall}", "{all: wall, south: bare wall}"), "surface-without-heat-layer")
                .orElseThrow();
        double more = 1 / (0.13 + 0.24 / 0.81 + 0.04) - 1 / (BARE + 0.2 / 0.035 + 0.04);
        assertEquals(more * 8 * HEIGHT, bare.loss().orElseThrow().middle(), 1e-3);
        assertEquals(
                Optional.empty(),
                finding(changed("{all: wall}", "{all: bare wall}"), "surface-without-heat-layer")
                        .orElseThrow()
                        .loss());
    }

    private static String garage(double factor, String board) {
        return Sample.yaml()
                .replace("{all: wall}", "{all: wall, south: {assembly: bare wall, faces: garage}}")
                .replace(
                        "    - {material: old solid brick, thickness: 240 mm, role: structure, controls: [water]}\n",
                        "    - {material: lime plaster, thickness: 15 mm, role: finish, controls: [air, vapour]}\n"
                                + "    - {material: old solid brick, thickness: 240 mm, role: structure}\n"
                                + "    - {material: mineral wool board, thickness: " + board
                                + ", role: insulation, controls: [heat]}\n"
                                + "    - {material: thin-coat render, thickness: 10 mm, role: cladding, controls:"
                                + " [water]}\n")
                .replace("body:\n", "neighbours: {garage: {temperature-factor: " + factor + "}}\nbody:\n");
    }

    /** Beside an unheated space U counts with its factor, with a half at least; what is lost is what is lost. */
    @Test
    void wallsBesideUnheatedSpacesAreHeldWithTheirFactor() {
        // Rse is Rsi there.
        double u = 1 / (BARE + 0.02 / 0.035 + 0.13);
        for (double factor : new double[] {0.4, 0.8}) {
            Audit audit = audit(garage(factor, "20 mm"));
            SurfacePoorlyInsulatedRule.Found found = found(SurfacePoorlyInsulatedRule.Found.class, audit);
            assertEquals("bare wall", found.assembly());
            assertEquals(Math.max(0.5, factor) * u, found.transmittance(), 1e-9);
            assertTrue(found.overLimit());
            double limit = 0.06 * 5.678263341113487;
            assertEquals(limit, found.limit(), 1e-12);
            assertEquals(found.transmittance() > 2 * limit, found.hardlyThere());
            assertEquals(
                    (u - limit) * 8 * HEIGHT * factor,
                    finding(audit, "surface-poorly-insulated")
                            .orElseThrow()
                            .loss()
                            .orElseThrow()
                            .middle(),
                    1e-3);
        }
        assertEquals(Optional.empty(), finding(audit(garage(0.4, "60 mm")), "surface-poorly-insulated"));
    }

    /** A house may relax its limit, and is then held to its own others: R of a surface is at least half of what it would be in proportion. */
    @Test
    void aSurfaceFarBelowTheOthersIsFoundThoughItKeepsItsLimit() {
        String relaxed =
                Sample.yaml().replace(WALL_BOARD, WALL_BOARD.replace("200", "40")) + "limits: {walls: 1.5 W/(m²·K)}\n";
        Audit audit = audit(relaxed);
        SurfacePoorlyInsulatedRule.Found found = found(SurfacePoorlyInsulatedRule.Found.class, audit);
        assertFalse(found.overLimit());
        assertFalse(found.hardlyThere());
        double mean =
                (30 / (0.10 + 0.16 / 2.3 + 0.16 / 0.025 + 0.04) + 1 / 0.059 / (0.17 + 0.15 / 2.3 + 0.16 / 0.035 + 0.04))
                        / 2
                        * 0.060;
        assertEquals(mean, found.others().orElseThrow(), 1e-9);
        // U may be twice the mean: the least step of 5 mm with which it is.
        double needed = 0.035 * (1 / (2 * mean) - BARE - 0.04) - 0.04;
        assertEquals(Math.ceil(needed / 0.005) * 0.005, found.more().orElseThrow(), 1e-9);
        Finding finding = finding(audit, "surface-poorly-insulated").orElseThrow();
        assertEquals(Severity.WEAK, finding.severity());
        assertEquals(0, finding.loss().orElseThrow().middle());
    }

    /** Among the others one beside an unheated space counts with its own U, by its area. */
    @Test
    void whatTheOthersHaveBesideAnUnheatedSpaceIsTheirOwnU() {
        String relaxed = garage(0.8, "100 mm").replace(WALL_BOARD, WALL_BOARD.replace("200", "40"))
                + "limits: {walls: 1.5 W/(m²·K)}\n";
        SurfacePoorlyInsulatedRule.Found found = found(SurfacePoorlyInsulatedRule.Found.class, audit(relaxed));
        double roof = 48 * 30 / (0.10 + 0.16 / 2.3 + 0.16 / 0.025 + 0.04);
        double slab = 48 / 0.059 / (0.17 + 0.15 / 2.3 + 0.16 / 0.035 + 0.04);
        double garage = 8 * HEIGHT / 0.060 / (BARE + 0.1 / 0.035 + 0.13);
        assertEquals(
                (roof + slab + garage) / (2 * 48 + 8 * HEIGHT) * 0.060,
                found.others().orElseThrow(),
                1e-9);
    }

    /** A minimum code asks a roof for twice a wall's R: walls with a third of the roof's R are in proportion, a roof with half the walls' is not. */
    @Test
    void aRoofIsInsulatedTwiceAsWellAsAWall() {
        String deck = "polyisocyanurate board, thickness: 160 mm";
        String slab = "extruded polystyrene board, thickness: 160 mm";
        String good = Sample.yaml()
                .replace(WALL_BOARD, WALL_BOARD.replace("200", "110"))
                .replace(deck, deck.replace("160", "300"));
        assertEquals(Optional.empty(), finding(audit(good), "surface-poorly-insulated"));
        String poor = Sample.yaml()
                .replace(WALL_BOARD, WALL_BOARD.replace("200", "400"))
                .replace(slab, slab.replace("160", "300"))
                .replace(deck, deck.replace("160", "130"));
        SurfacePoorlyInsulatedRule.Found found = found(SurfacePoorlyInsulatedRule.Found.class, audit(poor));
        assertEquals("roof", found.assembly());
        assertFalse(found.overLimit());
    }

    /** 6 brackets on each square metre keep the limit of chi one by one, and more than double U. */
    @Test
    void whatGoesThroughAgainAndAgainCountsInU() {
        String limited = Sample.yaml() + RuleHouses.brackets("6 per m²") + "limits: {walls: MOST W/(m²·K)}\n";
        Audit audit = audit(limited.replace("MOST", "0.3"));
        SurfacePiercedRule.Found found = found(SurfacePiercedRule.Found.class, audit);
        double u = 1 / (BARE + 0.04 + 0.2 / 0.035);
        double chi = audit.points().getOnly().chi().lower();
        int number = (int) Math.ceil(6 * 8 * HEIGHT);
        double all = u + number * chi / (8 * HEIGHT);
        assertEquals(number, found.number());
        assertEquals(u, found.layers(), 1e-9);
        assertEquals(all, found.transmittance(), 1e-6);
        assertEquals(
                (all - 0.3) * 8 * HEIGHT,
                finding(audit, "surface-pierced")
                        .orElseThrow()
                        .loss()
                        .orElseThrow()
                        .middle(),
                1e-3);
        assertEquals(Optional.empty(), finding(audit(limited.replace("MOST", "" + (all + 0.001))), "surface-pierced"));
        assertEquals(
                Severity.GAP,
                finding(audit(limited.replace("MOST", "" + (all / 2 - 0.001))), "surface-pierced")
                        .orElseThrow()
                        .severity());
        // Layers that miss the limit themselves are the other rule's.
        assertEquals(Optional.empty(), finding(audit(limited.replace("MOST", "" + (u - 0.001))), "surface-pierced"));
    }

    /** Beside an unheated space what goes through counts with the factor that U counts with there. */
    @Test
    void whatGoesThroughBesideAnUnheatedSpaceCountsWithItsFactor() {
        String many = garage(0.8, "60 mm") + RuleHouses.brackets("6 per m²").replace("north", "south")
                + "limits: {walls: 0.36 W/(m²·K)}\n";
        Audit audit = audit(many);
        double u = 1 / (BARE + 0.06 / 0.035 + 0.13);
        int number = (int) Math.ceil(6 * 8 * HEIGHT);
        double all = u + number * audit.points().getOnly().chi().lower() / (8 * HEIGHT);
        SurfacePiercedRule.Found found = found(SurfacePiercedRule.Found.class, audit);
        assertEquals(0.8 * u, found.layers(), 1e-9);
        assertEquals(0.8 * all, found.transmittance(), 1e-6);
    }

    /** What is there once on more than two square metres is held to the limit of chi alone. */
    @Test
    void singleThingsDoNotCountInU() {
        double limit = 1 / (BARE + 0.04 + 0.2 / 0.035) + 0.001;
        String points =
                Sample.yaml() + RuleHouses.brackets("0.5 per m²").replace("per-area: 0.5 per m²", "number: MANY")
                        + "limits: {walls: " + limit + " W/(m²·K)}\n";
        int few = (int) Math.floor(0.5 * 8 * HEIGHT);
        assertEquals(Optional.empty(), finding(audit(points.replace("MANY", "" + few)), "surface-pierced"));
        assertTrue(finding(audit(points.replace("MANY", "" + (few + 1))), "surface-pierced")
                .isPresent());
    }

    @Test
    void aBareSideBesideAGarageLosesWithItsFactor() {
        Finding bare = finding(
                        audit(Sample.yaml()
                                .replace("{all: wall}", "{all: wall, south: {assembly: bare wall, faces: garage}}")
                                .replace("body:\n", "neighbours: {garage: {temperature-factor: 0.7}}\nbody:\n")),
                        "surface-without-heat-layer")
                .orElseThrow();
        double more = 1 / (0.13 + 0.24 / 0.81 + 0.13) - 1 / (BARE + 0.2 / 0.035 + 0.04);
        assertEquals(0.7 * more * 8 * HEIGHT, bare.loss().orElseThrow().middle(), 1e-3);
    }

    private static String window(String name, String wall, String size, double u) {
        return "  " + name + ": {kind: window, surface: ground floor " + wall + " wall, " + size
                + ", sill: 1 m, transmittance: " + u + " W/(m²·K)}\n";
    }

    @Test
    void theWorstOpeningLeadsAndAllLose() {
        String openings = window("fair", "north", "width: 1 m, height: 1 m", 0.9)
                + window("bad", "south", "width: 1 m, height: 1 m", 3)
                + window("worst", "east", "width: 1.5 m, height: 1.2 m", 5)
                + window("as bad", "south", "width: 0.5 m, height: 1 m, left: 6 m", 3);
        Audit audit = changed("junctions:\n", "openings:\n" + openings + "junctions:\n");
        OpeningOverLimitRule.Found found = found(OpeningOverLimitRule.Found.class, audit);
        assertEquals(
                Lists.immutable.of("worst", "bad", "as bad"), found.openings().collect(Opening::name));
        assertEquals(5, found.transmittance());
        double limit = 0.32 * 5.678263341113487;
        assertEquals(limit, found.limit(), 1e-12);
        assertTrue(found.source().orElseThrow().contains("climate zone 4"), found::toString);
        OpeningOverLimitRule.Found own = found(
                OpeningOverLimitRule.Found.class,
                changed("junctions:\n", "openings:\n" + openings + "limits: {windows: 1.4 W/(m²·K)}\njunctions:\n"));
        assertEquals(1.4, own.limit());
        assertEquals(Optional.empty(), own.source(), "the house file's own");
        Finding finding = finding(audit, "opening-over-limit").orElseThrow();
        assertEquals(
                (5 - limit) * 1.5 * 1.2 + (3 - limit) * 1.5,
                finding.loss().orElseThrow().middle(),
                1e-9);
        assertEquals(
                Lists.immutable.of("ground floor east wall", "ground floor south wall"),
                ((Subject.Surfaces) finding.subject()).all().collect(Surface::name));
    }

    /** Two build-ups without the layer are two findings, each of its own surfaces. */
    @Test
    void eachBuildUpWithoutALayerHasItsOwnSurfaces() {
        Audit audit = audit(Sample.yaml()
                .replace("membrane, controls: [water]", "membrane")
                .replace("cladding, controls: [water]", "cladding"));
        ImmutableList<ImmutableList<String>> surfaces = audit.findings()
                .select(each -> each.rule().equals("surface-without-water-layer"))
                .collect(each -> ((Subject.Surfaces) each.subject())
                        .all()
                        .collect(surface -> surface.assembly().orElseThrow().name()));
        assertEquals(
                Lists.immutable
                        .of(Lists.immutable.of("roof"), Lists.immutable.of("wall", "wall", "wall", "wall"))
                        .toSet(),
                surfaces.toSet());
        assertEquals(2, surfaces.size());
    }

    @Test
    void rainThatIsCountedIsNoFinding() {
        String inverted = Sample.yaml()
                .replace(
                        "    - {material: polyisocyanurate board, thickness: 160 mm, role: insulation, controls: [heat]}\n"
                                + "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n",
                        "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n"
                                + "    - {material: extruded polystyrene board, thickness: 260 mm, role: insulation,"
                                + " controls: [heat]}\n");
        Finding rain = audit(inverted).findings().getOnly();
        assertEquals(Lists.immutable.of("rain-not-counted"), rain.breaches().collect(Breach::rule));
        assertEquals(Severity.WEAK, rain.severity());
        assertEquals(
                "roof", ((RainNotCountedRule.Found) rain.breaches().getOnly().evidence()).assembly());
        assertEquals(48, ((Subject.Surfaces) rain.subject()).all().sumOfDouble(Surface::externalArea), 1e-6);
        assertEquals(
                Lists.immutable.empty(), rain.breaches().getOnly().evidence().values());
        assertEquals(
                Lists.immutable.empty(),
                audit(inverted.replace(
                                "  roof:\n    layers:\n", "  roof:\n    rain: {precipitation: 1 mm/d}\n    layers:\n"))
                        .findings());
        // Of mineral wool the sheet would lie on the wrong side: wool does not keep out water itself.
        Finding wet = finding(
                        audit(inverted.replace(
                                "extruded polystyrene board, thickness: 260", "mineral wool board, thickness: 260")),
                        "control-layer-misplaced")
                .orElseThrow();
        assertEquals(Severity.GAP, wet.severity());
    }

    @Test
    void whatLiesOutsideAVentilatedCavityControlsNothing() {
        String render = "    - {material: thin-coat render,";
        Audit audit = changed(
                render,
                "    - {material: air, thickness: 40 mm, role: air layer, air: {ventilation: well ventilated}}\n"
                        + render);
        assertEquals(
                Lists.immutable.of(new ControlLayerUnableRule.Unable(
                        Control.WATER, "thin-coat render", 0.01, ControlLayerUnableRule.Why.AIRED, true)),
                found(ControlLayerUnableRule.Found.class, audit).layers());
        assertEquals(
                Severity.GAP,
                finding(audit, "control-layer-unable").orElseThrow().severity());
    }

    /** A bare side loses heat that can be told; what an opening of the shell loses nobody can, and it leads. */
    @Test
    void amongGapsHolesLead() {
        ImmutableList<Finding> findings = changed("{all: wall}", "{all: wall, south: none, east: bare wall}")
                .findings();
        assertEquals("open-edge", findings.get(0).rule());
        assertEquals(Severity.GAP, findings.get(1).severity());
        assertTrue(findings.get(1).loss().orElseThrow().middle() > 0);
    }
}
