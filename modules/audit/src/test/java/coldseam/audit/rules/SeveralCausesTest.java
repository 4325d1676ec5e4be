package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.Finding;
import coldseam.audit.Subject;
import coldseam.audit.engine.Altered;
import coldseam.audit.engine.Sample;
import coldseam.audit.engine.Sample.Made;
import coldseam.envelope.Control;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.plan.SectionPlan.Zone;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Houses that break a rule in more than one place: which places are one finding, which leads, and of what it tells. */
class SeveralCausesTest {

    private static final double U_FACTOR = 5.678263341113487;

    private static final Made CORNER = Made.good("corner-good", JunctionKind.OUTSIDE_CORNER);

    private static Finding finding(Audit audit, String rule) {
        return audit.findings()
                .select(each -> each.breaches().collect(Breach::rule).contains(rule))
                .getOnly();
    }

    private static Breach breach(Audit audit, String rule) {
        return finding(audit, rule).breaches().detect(each -> each.rule().equals(rule));
    }

    /** What an audit found is found again from the audit alone, whatever it is. */
    @Test
    void theFactsOfEveryAuditGiveItsFindings() {
        Supplier<Audit> oneBareSide = () ->
                Sample.audit(Sample.yaml().replace("{all: wall}", "{all: wall, south: bare wall}"), Sample.good());
        for (Supplier<Audit> house :
                Lists.mutable.ofAll(RuleHouses.breaking().values()).with(oneBareSide)) {
            Audit audit = house.get();
            ImmutableList<Finding> again = Findings.of(Facts.of(audit));
            assertEquals(audit.findings().collect(Finding::rule), again.collect(Finding::rule));
            assertEquals(audit.findings().collect(Finding::loss), again.collect(Finding::loss));
            assertEquals(
                    audit.findings().collect(Finding::subject).collect(Subject::length),
                    again.collect(Finding::subject).collect(Subject::length));
        }
    }

    /** Of equal gravity, and where nobody can say what is lost, the longer seam comes first: 28 m of slab edge before four corners. */
    @Test
    void theLongerSeamComesFirst() {
        ImmutableList<Finding> findings = Sample.audit(
                        Sample.yaml()
                                .replace("- {kinds: [outside corner], detail: corner-good}\n", "")
                                .replace("- {kinds: [slab edge], detail: slab-good}\n", ""),
                        Lists.immutable.of(Made.good("edge-good", JunctionKind.FLAT_ROOF_EDGE)))
                .findings();
        assertEquals(Lists.immutable.of("detail-not-chosen", "detail-not-chosen"), findings.collect(Finding::rule));
        assertEquals(Lists.immutable.of(Optional.empty(), Optional.empty()), findings.collect(Finding::loss));
        assertEquals(28, findings.getFirst().subject().length(), 1e-6);
        assertTrue(findings.getLast().subject().length() < 20);
    }

    /** Wool under the slab and wool on a terrace's deck are two findings, each of its own surfaces. */
    @Test
    void eachBuildUpWithUnfitInsulationHasItsOwnSurfaces() {
        String deck =
                "    - {material: reinforced concrete, thickness: 160 mm, role: structure, controls: [air, vapour]}\n"
                        + "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [heat]}\n";
        Audit audit = Sample.audit(
                Sample.terrace(deck)
                        .replace("extruded polystyrene board, thickness: 160", "mineral wool board, thickness: 160"),
                Sample.good());
        ImmutableList<Finding> unfit = audit.findings()
                .select(each -> each.breaches().collect(Breach::rule).contains("insulation-unfit"));
        assertEquals(
                Lists.immutable.of("deck", "slab").toSet(),
                unfit.collect(each -> ((Subject.Surfaces) each.subject())
                                .all()
                                .collect(surface ->
                                        surface.assembly().orElseThrow().name())
                                .distinct()
                                .getOnly())
                        .toSet());
        assertEquals(2, unfit.size());
    }

    /**
     * One build-up all around, of 60 mm of wool: walls, roof and floor on the ground are one finding, held to three limits. The
     * roof misses its own by the greatest factor and leads; there are no others for a mean.
     */
    @Test
    void theSurfaceThatMissesItsLimitByMostLeads() {
        Audit audit = Sample.audit(
                Sample.yaml()
                        .replace("mineral wool board, thickness: 200 mm", "mineral wool board, thickness: 60 mm")
                        .replace("assembly: slab", "assembly: wall")
                        .replace("assembly: roof", "assembly: wall"),
                Sample.good());
        SurfacePoorlyInsulatedRule.Found found = (SurfacePoorlyInsulatedRule.Found)
                breach(audit, "surface-poorly-insulated").evidence();
        double layers = 0.015 / 0.8 + 0.24 / 0.81 + 0.06 / 0.035 + 0.01 / 0.7;
        double roof = 1 / (0.10 + layers + 0.04);
        double wall = 1 / (0.13 + layers + 0.04);
        assertTrue(roof / (U_FACTOR / 30) > wall / (0.06 * U_FACTOR), "the roof misses it by more");
        assertEquals(roof, found.transmittance(), 1e-9);
        assertEquals(U_FACTOR / 30, found.limit(), 1e-12);
        assertEquals(Optional.empty(), found.others());
        // The least steps of 5 mm with which U is within the limit.
        double needed = 0.035 * (30 / U_FACTOR - 0.14 - layers);
        assertEquals(Math.ceil(needed / 0.005) * 0.005, found.more().orElseThrow(), 1e-9);
    }

    /** In name only insulates what is above twice the limit; at it, or held to a mean alone, it does insulate. */
    @Test
    void twiceTheLimitIsStillInsulation() {
        assertFalse(poor(0.68, true).hardlyThere());
        assertTrue(poor(Math.nextUp(0.68), true).hardlyThere());
        assertFalse(poor(0.9, false).hardlyThere());
        assertEquals(2, poor(0.5, true).values().size());
    }

    private static SurfacePoorlyInsulatedRule.Found poor(double transmittance, boolean overLimit) {
        return new SurfacePoorlyInsulatedRule.Found(
                "wall", transmittance, 0.34, Optional.empty(), overLimit, Optional.of("test"), Optional.empty());
    }

    /** Humid rooms ask for more than the usual limit; a house whose limit is higher still is held to that, and it is told. */
    @Test
    void cornersAreHeldToTheLimitOrToWhatHumidRoomsAskFor() {
        String humid = Sample.yaml().replace("indoor-humidity: 50 %", "indoor-humidity: 60 %");
        CornerUnderLimitRule.Found found = corner(humid, 0.79);
        double dew =
                237.3 * Math.log(0.75 * saturation(20) / 610.5) / (17.269 - Math.log(0.75 * saturation(20) / 610.5));
        assertEquals((dew + 5) / 25, found.humid().orElseThrow().temperatureFactor(), 1e-6);
        assertEquals((dew + 5) / 25, found.need(), 1e-6);
        assertEquals(0.7, found.limit());
        CornerUnderLimitRule.Found held = corner(humid + "limits: {temperature-factor: 0.85}\n", 0.84);
        assertEquals(Optional.empty(), held.humid());
        assertEquals(0.85, held.need());
        String months = RuleHouses.withMonths(Sample.yaml()) + "limits: {temperature-factor: 0.89}\n";
        assertEquals(Optional.empty(), corner(months, 0.88).month());
        assertEquals(0.89, corner(months, 0.88).need());
    }

    private static CornerUnderLimitRule.Found corner(String yaml, double factor) {
        return (CornerUnderLimitRule.Found) Sample.audit(yaml, Sample.good(), factor)
                .findings()
                .flatCollect(Finding::breaches)
                .collect(Breach::evidence)
                .detect(CornerUnderLimitRule.Found.class::isInstance);
    }

    private static double saturation(double celsius) {
        return 610.5 * Math.exp(17.269 * celsius / (237.3 + celsius));
    }

    /** The box beside a garage, with lines of control in its corners that change sides. */
    private static Audit lines(String yaml, Function<JunctionSetup, ImmutableList<Control>> changing) {
        return Sample.besideAGarage(yaml, (detail, setup) -> {
            JunctionResult made = Sample.computer().compute(detail, setup);
            return setup.kind() != JunctionKind.OUTSIDE_CORNER
                    ? made
                    : new Altered(made)
                            .withControls(changing.apply(setup)
                                    .collect(control -> new ControlLine.ChangesSide(
                                            control, Lists.immutable.empty(), Zone.INSIDE, Zone.OUTSIDE)));
        });
    }

    /** The sheet on which most lines stop leads, whichever it is, and every layer that stops on any of them is named. */
    @Test
    void theSheetWithMostBrokenLinesLeads() {
        for (boolean garage : new boolean[] {false, true}) {
            Audit audit = lines(
                    Sample.yaml(),
                    setup -> Sample.isBesideGarage(setup) == garage
                            ? Lists.immutable.of(Control.AIR, Control.VAPOUR)
                            : Lists.immutable.of(Control.AIR));
            ControlLineBrokenRule.Found found = (ControlLineBrokenRule.Found)
                    breach(audit, "control-line-broken").evidence();
            assertEquals(
                    garage,
                    Sample.isBesideGarage(found.worst().junction().orElseThrow().setup()));
            assertEquals(
                    Lists.immutable.of(Control.AIR, Control.VAPOUR),
                    found.lines().collect(ControlLine::control));
            assertEquals(Lists.immutable.of(Control.AIR, Control.VAPOUR), found.layers());
            assertEquals(
                    4,
                    ((Subject.Bridges) finding(audit, "control-line-broken").subject())
                            .rows()
                            .size());
        }
    }

    /** A line that merely stops lies on one side, and is not told as one that changes it. */
    @Test
    void aLineThatStopsDoesNotChangeSides() {
        ControlLine stops =
                new ControlLine.Broken(Control.AIR, Lists.immutable.empty(), ControlLine.Broken.Reason.OUT_OF_REACH);
        assertFalse(new ControlLineBrokenRule.Found(null, Lists.immutable.of(stops), Lists.immutable.of(Control.AIR))
                .changesSide());
    }

    /** A layer need not be joined where one of the surfaces does not need it, nor where one lacks it, which is found as that. */
    @Test
    void onlyLayersThatBothSurfacesNeedAndHaveMustJoin() {
        Audit rain = lines(Sample.yaml(), setup -> Lists.immutable.of(Control.WATER));
        assertEquals(
                Lists.immutable.of(2),
                rain.findings()
                        .collect(each ->
                                ((Subject.Bridges) each.subject()).rows().size()),
                "in the garage it does not rain");
        Audit without = lines(
                Sample.yaml().replace("finish, controls: [air, vapour]", "finish, controls: [vapour]"),
                setup -> Lists.immutable.of(Control.AIR));
        assertEquals(
                Lists.immutable.of("surface-without-air-layer"),
                without.findings().flatCollect(Finding::breaches).collect(Breach::rule));
    }

    /** Both beside outdoors and beside the garage the wall is one build-up: its surfaces are one finding. */
    @Test
    void surfacesOfOneBuildUpAreOneFinding() {
        String rotten = Sample.yaml()
                .replace("material: lime plaster", "material: softwood")
                .replace("160 mm, role: structure, controls: [air, vapour]", "160 mm, role: structure, controls: [air]")
                .replace("membrane, controls: [water]", "membrane, controls: [water, vapour]");
        Audit audit = Sample.audit(rotten, Sample.goodBut(CORNER));
        assertEquals(
                Lists.immutable.of("wall", "wall", "wall", "wall"),
                ((Subject.Surfaces) finding(audit, "control-layer-unable").subject())
                        .all()
                        .collect(SeveralCausesTest::assembly));
        assertEquals(
                Lists.immutable.of("roof"),
                ((Subject.Surfaces) finding(audit, "control-layer-misplaced").subject())
                        .all()
                        .collect(SeveralCausesTest::assembly));
    }

    private static String assembly(Surface surface) {
        return surface.assembly().orElseThrow().name();
    }
}
