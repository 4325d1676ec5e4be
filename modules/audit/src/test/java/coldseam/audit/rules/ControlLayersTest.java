package coldseam.audit.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.Condensation.Verdict;
import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.Finding;
import coldseam.audit.engine.Sample;
import coldseam.audit.rules.ControlLayerMisplacedRule.Misplaced;
import coldseam.audit.rules.ControlLayerUnableRule.Unable;
import coldseam.audit.rules.ControlLayerUnableRule.Why;
import coldseam.audit.rules.InsulationUnfitRule.Unfit;
import coldseam.envelope.Control;
import coldseam.envelope.Duty;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Which layers can do what they are named for, by what is beside them, and on which side of the insulation they may lie. */
class ControlLayersTest {

    private static final String RENDER =
            "    - {material: thin-coat render, thickness: 10 mm, role: cladding, controls: [water]}\n";

    private static final String ROOF =
            "    - {material: polyisocyanurate board, thickness: 160 mm, role: insulation, controls: [heat]}\n"
                    + "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n";

    private static final String SLAB =
            "    - {material: extruded polystyrene board, thickness: 160 mm, role: insulation, controls: [heat, water]}\n";

    private static Audit changed(String from, String to) {
        return audit(Sample.yaml().replace(from, to));
    }

    private static Audit audit(String yaml) {
        return Sample.audit(yaml, Sample.good());
    }

    private static ImmutableList<Breach> breaches(Audit audit) {
        return audit.findings().flatCollect(Finding::breaches);
    }

    private static ImmutableList<Unable> unable(Audit audit) {
        return breaches(audit)
                .collect(Breach::evidence)
                .selectInstancesOf(ControlLayerUnableRule.Found.class)
                .flatCollect(ControlLayerUnableRule.Found::layers);
    }

    private static ImmutableList<Misplaced> misplaced(Audit audit) {
        return breaches(audit)
                .collect(Breach::evidence)
                .selectInstancesOf(ControlLayerMisplacedRule.Found.class)
                .flatCollect(ControlLayerMisplacedRule.Found::layers);
    }

    private static ImmutableList<String> named(ImmutableList<Misplaced> layers) {
        return layers.collect(each -> each.control() + " " + each.material());
    }

    private static String air(String ventilation, String more) {
        return "    - {material: air, thickness: 40 mm, role: air layer" + more + ", air: {ventilation: " + ventilation
                + "}}\n";
    }

    /** Only what lies outside a well-ventilated air layer is out of the weather's way; what lies inside it is not. */
    @Test
    void aRenderOverAStillOrSlightlyVentilatedCavityKeepsRainOut() {
        for (String still : Lists.immutable.of("unventilated", "slightly ventilated, openings: 1000 mm²/m")) {
            assertEquals(Lists.immutable.empty(), unable(changed(RENDER, air(still, "") + RENDER)), still);
        }
        assertEquals(
                Lists.immutable.of(new Unable(Control.WATER, "thin-coat render", 0.01, Why.AIRED, true)),
                unable(changed(RENDER, air("well ventilated", "") + RENDER)));
        assertEquals(Lists.immutable.empty(), unable(changed(RENDER, RENDER + air("well ventilated", ""))));
    }

    /** Air controls nothing, and of a ventilated layer that is told. */
    @Test
    void anAirLayerIsNoLayerOfControl() {
        String named = ", controls: [water]";
        String plain = RENDER.replace(named, "");
        assertEquals(
                Lists.immutable.of(Why.MATERIAL, Why.AIRED, Why.AIRED),
                Lists.immutable
                        .of("unventilated", "slightly ventilated, openings: 1000 mm²/m", "well ventilated")
                        .flatCollect(each -> unable(changed(RENDER, air(each, named) + plain)))
                        .collect(Unable::why));
    }

    /** What only sheds rain does not keep out water that stands in the ground; boards made for the ground do, and sheets. */
    @Test
    void inTheGroundWaterIsKeptOutByWhatIsTightOrMadeForIt() {
        String board = SLAB.replace("[heat, water]", "[heat]");
        String layer = "    - {material: %s, thickness: 10 mm, role: cladding, controls: [water]}\n";
        String own =
                "materials:\n  own board: {conductivity: 0.035 W/(m·K), vapour-resistance-factor: 20, source: test,"
                        + " controls: {water: test}%s}\n";
        assertEquals(
                Lists.immutable.of(new Unable(Control.WATER, "cement render", 0.01, Why.SHEDS, true)),
                unable(changed(SLAB, board + layer.formatted("cement render"))));
        assertEquals(Lists.immutable.empty(), unable(changed(SLAB, board + layer.formatted("bitumen sheet"))));
        assertEquals(Lists.immutable.empty(), unable(changed(RENDER, layer.formatted("cement render"))));
        String boards = Sample.yaml().replace("extruded polystyrene board", "own board");
        assertEquals(
                Lists.immutable.of(new Unable(Control.WATER, "own board", 0.16, Why.SHEDS, false)),
                unable(audit(own.formatted("") + boards)));
        assertEquals(
                Lists.immutable.empty(), unable(audit(own.formatted(", bears: {ground: test, load: test}") + boards)));
    }

    /** On a level roof water stands as well: tiles, boards and foils keep it out of none; metal is thin and does. */
    @Test
    void onALevelRoofWaterIsKeptOutByACovering() {
        String sheet = "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n";
        String layer = "    - {material: %s, thickness: %s mm, role: membrane, controls: [water]}\n";
        String board = ROOF.substring(0, ROOF.length() - sheet.length());
        assertEquals(
                Lists.immutable.of(
                        new Unable(Control.WATER, "clay roof tile", 0.02, Why.SHEDS, true),
                        new Unable(Control.WATER, "extruded polystyrene board", 0.02, Why.SHEDS, true),
                        new Unable(Control.WATER, "EPDM", 0.0005, Why.THIN, true)),
                Lists.immutable
                        .of(
                                layer.formatted("clay roof tile", "20"),
                                layer.formatted("extruded polystyrene board", "20"),
                                layer.formatted("EPDM", "0.5"),
                                layer.formatted("EPDM", "1.2"),
                                layer.formatted("copper", "0.6"))
                        .flatCollect(each -> unable(changed(ROOF, board + each))));
    }

    /** Insulation is not kept dry by itself: water must be kept out beyond it. */
    @Test
    void insulationThatKeepsWaterOutStillHasToBearTheGround() {
        String own =
                "materials:\n  own board: {conductivity: 0.035 W/(m·K), vapour-resistance-factor: 200, source: test,"
                        + " controls: {water: test, vapour: test}, bears: {load: test}}\n";
        assertEquals(
                Lists.immutable.of(new Unfit(Duty.GROUND, "own board")),
                breaches(audit(own + Sample.yaml().replace("extruded polystyrene board", "own board")))
                        .collect(Breach::evidence)
                        .selectInstancesOf(InsulationUnfitRule.Found.class)
                        .flatCollect(InsulationUnfitRule.Found::unfit));
    }

    /** Rain is cooled by only where it runs under the insulation, on a sheet that is there. */
    @Test
    void whereNoInsulationLiesOverTheWaterLayerNoRainNeedBeCounted() {
        assertEquals(
                Lists.immutable.of("surface-without-water-layer"),
                breaches(changed("role: membrane, controls: [water]", "role: membrane"))
                        .collect(Breach::rule));
        String board =
                "    - {material: extruded polystyrene board, thickness: 260 mm, role: insulation, controls: [heat, water]}\n";
        assertEquals(
                Lists.immutable.of("control-layer-unable"),
                breaches(changed(ROOF, board)).collect(Breach::rule));
        String under = "    - {material: bitumen sheet, thickness: 8 mm, role: membrane, controls: [water]}\n";
        assertEquals(
                Lists.immutable.of("rain-not-counted"),
                breaches(changed(ROOF, under + board.replace("[heat, water]", "[heat]")))
                        .collect(Breach::rule));
    }

    /** Vapour control may lie outside the insulation where a year's balance carries it, and only there. */
    @Test
    void vapourControlMayLieOutsideWhereTheYearDries() {
        String months = RuleHouses.withMonths(Sample.yaml());
        TreeSet<String> met = new TreeSet<>();
        for (int inside : new int[] {1, 50, 5000}) {
            for (int outside : new int[] {3, 5, 50, 50_000}) {
                Audit audit = audit(boarded(months, inside, outside));
                Condensation year = audit.assemblies()
                        .detect(row -> row.assembly().name().equals("wall"))
                        .moisture()
                        .year()
                        .orElseThrow();
                boolean dries = year.verdict() != Verdict.ACCUMULATES && year.most() <= 1;
                assertEquals(
                        dries ? Lists.immutable.empty() : Lists.immutable.of("VAPOUR outer board"),
                        named(misplaced(audit)),
                        () -> inside + ", " + outside + ": " + year.verdict() + " " + year.most());
                met.add((year.verdict() == Verdict.ACCUMULATES ? "gathers " : "dries ")
                        + (year.most() <= 1 ? "little" : "much"));
            }
        }
        assertTrue(met.containsAll(java.util.Set.of("dries little", "dries much", "gathers much")), met::toString);
        assertEquals(
                Lists.immutable.of("VAPOUR outer board"),
                named(misplaced(audit(boarded(Sample.yaml(), 50, 3)))),
                "no year was balanced");
    }

    /**
     * A fifth of what insulates may lie on its warm side, as in a layer for pipes, or more where it stays above the dew point; the
     * board outside all studs does not make it warm.
     */
    @Test
    void vapourControlMayLieWhereItIsWarm() {
        String plaster = "finish, controls: [air, vapour]}\n";
        String layers = Sample.yaml()
                .replaceFirst(
                        Pattern.quote(plaster),
                        "finish}\n    - {material: mineral wool board, thickness: INSIDE mm, role: insulation}\n"
                                + "    - {material: oriented strand board, thickness: 15 mm, role: structure, controls: [air, vapour]}\n");
        double outside = 0.015 / 0.13 + 0.24 / 0.81 + 0.2 / 0.035 + 0.01 / 0.7;
        // Rooms of 20 °C and 50 %: 9.3 °C is where 10.7 of 30 K are lost.
        int most = (int)
                ((10.73 / 30 * (0.13 + 0.015 / 0.8 + outside + 0.04) - 0.13 - 0.015 / 0.8) / (1 - 10.73 / 30) * 35);
        assertEquals(Lists.immutable.empty(), misplaced(audit(layers.replace("INSIDE", "" + most))));
        Misplaced misplaced =
                misplaced(audit(layers.replace("INSIDE", "" + (most + 1)))).getOnly();
        assertEquals("oriented strand board", misplaced.material());
        double inside = 0.015 / 0.8 + (most + 1) / 1000.0 / 0.035;
        assertEquals(inside / (inside + outside), misplaced.warm(), 1e-9);
        assertEquals(
                20 - 30 * (0.13 + inside) / (0.13 + inside + outside + 0.04),
                misplaced.temperature().orElseThrow(),
                1e-9);
        // Rooms of 75 % are wet from 15.4 °C on; a fifth needs no proof.
        String humid = layers.replace("indoor-humidity: 50 %", "indoor-humidity: 75 %");
        assertEquals(Lists.immutable.empty(), misplaced(audit(humid.replace("INSIDE", "50"))));
        assertEquals(1, misplaced(audit(humid.replace("INSIDE", "60"))).size());
    }

    /** A floor's foil under all that insulates lies on the ground's side, whose temperature is not outdoors' own. */
    @Test
    void overTheGroundNoTemperatureOfTheDesignStateIsSaid() {
        String structure =
                "    - {material: reinforced concrete, thickness: 150 mm, role: structure, controls: [air, vapour]}\n";
        String foil = "    - {material: bitumen sheet, thickness: 4 mm, role: membrane, controls: [air, vapour]}\n";
        Misplaced misplaced = misplaced(
                        changed(structure + SLAB, SLAB + foil + structure.replace(", controls: [air, vapour]", "")))
                .detect(each -> each.control() == Control.VAPOUR);
        assertEquals("bitumen sheet", misplaced.material());
        assertEquals(OptionalDouble.empty(), misplaced.temperature());
    }

    private static String boarded(String yaml, int inside, int outside) {
        String board = "  %s board: {conductivity: 0.2 W/(m·K), vapour-resistance-factor: %d, source: test,"
                + " controls: {air: test, water: test, vapour: test}}\n";
        int from = yaml.indexOf("  wall:\n");
        int to = yaml.indexOf("  bare wall:\n");
        return yaml.substring(0, from)
                        .replace(
                                "assemblies:\n",
                                "materials:\n" + board.formatted("inner", inside) + board.formatted("outer", outside)
                                        + "assemblies:\n")
                + "  wall:\n    layers:\n"
                + "    - {material: inner board, thickness: 20 mm, role: finish, controls: [air]}\n"
                + "    - {material: mineral wool board, thickness: 200 mm, role: insulation, controls: [heat]}\n"
                + "    - {material: outer board, thickness: 20 mm, role: cladding, controls: [water, vapour]}\n"
                + yaml.substring(to);
    }
}
