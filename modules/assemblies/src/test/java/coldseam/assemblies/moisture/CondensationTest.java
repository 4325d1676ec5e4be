package coldseam.assemblies.moisture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.Build;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.envelope.Climate;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import java.time.Month;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class CondensationTest {

    /** A made-up temperate climate; the same as in the published checks. */
    static final Climate CLIMATE = climate(
            new double[] {-1, 0, 4, 9, 14, 18, 19, 18.5, 14.3, 9.1, 4.7, 1.3},
            new double[] {85, 84, 78, 72, 69, 73, 73, 74, 75, 82, 88, 88});

    static Climate climate(double[] temperatures, double[] humidities) {
        return new Climate(
                "made up",
                Climate.Indoors.DWELLING,
                Lists.immutable
                        .with(Month.values())
                        .collectWithIndex((month, i) -> new Climate.Mean(month, temperatures[i], humidities[i] / 100)));
    }

    static final IndoorAir DWELLING = IndoorAir.of(Climate.Indoors.DWELLING, Double.NaN);

    private static final VapourStack.Slice PLASTERBOARD = new VapourStack.Slice("plasterboard", 0.05, 0.1);
    private static final VapourStack.Slice WOOL = new VapourStack.Slice("wool", 4, 0.16);
    private static final VapourStack.Slice BOARD = new VapourStack.Slice("board", 0.015 / 0.13, 0.75);

    private static VapourStack stack(VapourStack.Slice... slices) {
        return new VapourStack(0.13, 0.04, Lists.immutable.with(slices));
    }

    private static Condensation year(VapourStack stack) {
        return Condensation.of(stack, CLIMATE, DWELLING, 20);
    }

    @Test
    void theYearBeginsWithTheFirstMonthThatCondenses() {
        Condensation wall = year(stack(PLASTERBOARD, WOOL, BOARD));
        assertEquals(Month.OCTOBER, wall.months().getFirst().month());
        assertEquals(Condensation.Verdict.DRIES_OUT, wall.verdict());
        // March holds most; the amount is in the published checks.
        assertEquals(
                wall.most(), wall.months().maxBy(Condensation.Balance::amount).amount(), 0);
        assertEquals(
                Month.MARCH, wall.months().maxBy(Condensation.Balance::amount).month());
        assertEquals(Month.MARCH, wall.wettest().month());
        assertEquals("wool | board", wall.wettestPlane());
        assertEquals(0, wall.left(), 0);
        assertEquals("wool | board", wall.planes().get(2));
    }

    @Test
    void aVapourControlLayerKeepsTheWallDry() {
        VapourStack.Slice control = new VapourStack.Slice("foil", 0, 20);
        Condensation wall = year(stack(PLASTERBOARD, control, WOOL, BOARD));
        assertEquals(Condensation.Verdict.STAYS_DRY, wall.verdict());
        assertEquals(0, wall.most(), 0);
        double worst = wall.months()
                .flatCollect(Condensation.Balance::planes)
                .collectDouble(plane -> plane.pressure() / plane.saturation())
                .max();
        // Computed apart: December, at the plane between wool and board.
        assertEquals(0.877, worst, 5e-4);
    }

    @Test
    void subdividedLayersFindTheSamePlane() {
        VapourStack whole = stack(PLASTERBOARD, WOOL, BOARD);
        VapourStack cut = whole.subdivided();
        assertEquals(1 + 16 + 1, cut.slices().size());
        assertEquals(whole.resistance(), cut.resistance(), 1e-12);
        assertEquals(0.1 + 0.16 + 0.75, cut.positions()[cut.slices().size()], 1e-12);
        assertTrue(cut.slices().allSatisfy(slice -> slice.resistance() <= 0.25 + 1e-12));
        assertEquals(year(whole).most(), year(cut).most(), 1e-9);
    }

    @Test
    void aTightFaceOutsideAccumulates() {
        Condensation roof = year(stack(PLASTERBOARD, WOOL, new VapourStack.Slice("felt", 0.02, 300)));
        assertEquals(Condensation.Verdict.ACCUMULATES, roof.verdict());
        assertTrue(roof.left() > 0);
        // It dries only inwards, so winter's water is there again next year.
        assertEquals(roof.months().getLast().amount(), roof.left(), 0);
    }

    @Test
    void waterThatComesGoesOrStays() {
        // Over each month the planes gain what flows in less what flows out, and the year adds up.
        Condensation roof = year(stack(PLASTERBOARD, WOOL, new VapourStack.Slice("felt", 0.02, 300)));
        double gained = roof.months().sumOfDouble(Condensation.Balance::gain);
        assertEquals(roof.left(), gained, 1e-12);
        assertTrue(roof.months()
                .flatCollect(Condensation.Balance::planes)
                .allSatisfy(plane -> plane.amount() >= 0 && plane.pressure() <= plane.saturation() * (1 + 1e-12)));
    }

    @Test
    void twoPlanesCanBeWet() {
        // A tight sheet amid the wool and a tight face: water on both.
        VapourStack.Slice half = new VapourStack.Slice("wool", 2, 0.08);
        VapourStack.Slice sheet = new VapourStack.Slice("sheet", 0, 0.5);
        Condensation wall = Condensation.of(
                stack(half, sheet, half, new VapourStack.Slice("board", 0.1, 20)),
                climate(
                        new double[] {-10, -10, 0, 9, 14, 18, 19, 18, 14, 9, 0, -8},
                        new double[] {80, 80, 80, 70, 70, 70, 70, 70, 70, 80, 80, 80}),
                IndoorAir.of(Climate.Indoors.POOL, Double.NaN),
                20);
        Condensation.Balance january = wall.months().detect(month -> month.month() == Month.JANUARY);
        ImmutableList<Integer> wet = Lists.immutable
                .with(1, 2, 3)
                .select(i -> january.planes().get(i).gain() > 0);
        assertTrue(wet.size() >= 2, () -> "wet planes " + wet);
        // At each of them the vapour is saturated.
        assertTrue(wet.allSatisfy(i -> Math.abs(january.planes().get(i).pressure()
                        - january.planes().get(i).saturation())
                < 1e-9));
    }

    @Test
    void planesDryOneAfterAnotherWithinAMonth() {
        // Against small steps of time: nothing is wet for longer than it has water.
        VapourStack.Slice half = new VapourStack.Slice("wool", 2, 0.08);
        VapourStack wall = stack(
                new VapourStack.Slice("plasterboard", 0.05, 1),
                half,
                new VapourStack.Slice("sheet", 0, 3),
                half,
                new VapourStack.Slice("board", 0.1, 2));
        Climate climate = climate(
                new double[] {-10, -10, 4, 14, 16, 18, 19, 18, 14, 9, 0, -8},
                new double[] {80, 80, 80, 70, 70, 70, 70, 70, 70, 80, 80, 80});
        Condensation year = Condensation.of(wall, climate, IndoorAir.of(Climate.Indoors.KITCHEN, Double.NaN), 20);
        double[] amount = new double[wall.planes()];
        int driedWithinAMonth = 0;
        for (Condensation.Balance month : year.months()) {
            boolean[] before = wet(amount);
            step(wall, climate.months().get(month.month().ordinal()), month, amount);
            for (int i = 0; i < amount.length; i++) {
                // A step of time moves at most 1e-7 kg/(m²·s) times 134 s too far, a few times a month.
                assertEquals(
                        amount[i],
                        month.planes().get(i).amount(),
                        5e-5,
                        () -> month.month().toString());
                driedWithinAMonth += before[i] && amount[i] == 0 ? 1 : 0;
            }
        }
        assertTrue(driedWithinAMonth >= 2, "planes that dried: " + driedWithinAMonth);
    }

    private static void step(VapourStack wall, Climate.Mean air, Condensation.Balance month, double[] amount) {
        double[] saturation =
                month.planes().collectDouble(Condensation.Plane::saturation).toArray();
        int steps = 20_000;
        double time = air.month().length(false) * 86400.0 / steps;
        for (int k = 0; k < steps; k++) {
            VapourProfile profile = VapourProfile.of(
                    wall.positions(), saturation, wet(amount), month.indoorPressure(), month.outdoorPressure());
            for (int i = 0; i < amount.length; i++) {
                amount[i] = Math.max(0, amount[i] + profile.gain(i) * time);
            }
        }
    }

    private static boolean[] wet(double[] amount) {
        boolean[] wet = new boolean[amount.length];
        for (int i = 0; i < wet.length; i++) {
            wet[i] = amount[i] > 0;
        }
        return wet;
    }

    @Test
    void aClimateThatCondensesAllYearGrowsFromJanuary() {
        double[] cold = new double[12];
        double[] humid = new double[12];
        java.util.Arrays.fill(cold, -5);
        java.util.Arrays.fill(humid, 85);
        Condensation wall = Condensation.of(stack(PLASTERBOARD, WOOL, BOARD), climate(cold, humid), DWELLING, 20);
        assertEquals(Month.JANUARY, wall.months().getFirst().month());
        assertEquals(Condensation.Verdict.ACCUMULATES, wall.verdict());
        assertEquals(wall.most(), wall.left(), 0);
    }

    /**
     * Winter's water dries until May, whose few cold and humid days wet the wall again, and all of it is gone in October. A count from
     * May on would end in winter's water.
     */
    @Test
    void ofTwoSpellsTheYearBeginsWithTheOneAfterWhichItDries() {
        Condensation wall = Condensation.of(
                stack(PLASTERBOARD, WOOL, BOARD),
                climate(
                        new double[] {-2, -2, 11, 12, 3, 18, 19, 18, 14, 12, 2, -2},
                        new double[] {85, 85, 70, 70, 95, 65, 65, 65, 70, 70, 85, 85}),
                DWELLING,
                20);
        ImmutableList<Month> wetter =
                wall.months().select(month -> month.gain() > 0).collect(Condensation.Balance::month);
        assertEquals("[NOVEMBER, DECEMBER, JANUARY, FEBRUARY, MAY]", wetter.toString());
        assertTrue(wall.months().detect(month -> month.month() == Month.APRIL).amount() > 0);
        assertEquals(Condensation.Verdict.DRIES_OUT, wall.verdict());
    }

    @Test
    void whatLiesBehindStillAirIsInTheVapoursWay() {
        assertEquals(
                "[layer 2 from inside (brick) has no vapour resistance factor; give its material one of 1 or more]",
                VapourStack.missing(Build.assembly(
                                Build.air(40, Layer.Ventilation.UNVENTILATED, 0),
                                Build.layer(Role.CLADDING, "brick", 100, 0.8)))
                        .toString());
    }

    /** Whether vapour condenses on the inner surface. */
    private static boolean surfaceIsWet(Condensation.Balance month) {
        return month.indoorPressure() > month.planes().getFirst().saturation();
    }

    @Test
    void steamyRoomsWetTheirSurface() {
        Condensation sheet = Condensation.of(
                stack(new VapourStack.Slice("steel", 0.0001, 1500)),
                CLIMATE,
                IndoorAir.of(Climate.Indoors.POOL, Double.NaN),
                20);
        assertTrue(surfaceIsWet(sheet.months().detect(month -> month.month() == Month.JANUARY)));
        assertEquals(Condensation.Verdict.STAYS_DRY, sheet.verdict());
    }

    @Test
    void theBlockMethodOfADryStackSaysSo() {
        VapourStack.Slice control = new VapourStack.Slice("foil", 0, 20);
        BlockMethod dry = BlockMethod.of(stack(PLASTERBOARD, control, WOOL, BOARD), BlockMethod.DRYING_WALL);
        assertEquals(0, dry.wetted(), 0);
        assertTrue(dry.passes(BlockMethod.MOST_NOT_ABSORBING));
        BlockMethod wet = BlockMethod.of(stack(PLASTERBOARD, WOOL, BOARD), BlockMethod.DRYING_WALL);
        assertTrue(wet.wetted() > Condensation.MOST);
        assertTrue(!wet.passes(Condensation.MOST));
        // Within the limit, yet it does not dry.
        assertTrue(!new BlockMethod(0.4, 0.3, 0, "p").passes(0.5));
        assertTrue(new BlockMethod(0.4, 0.5, 0, "p").passes(0.5));
    }

    @Test
    void aStackComesFromTheAssemblyUpToItsVentilatedCavity() {
        VapourStack stack = VapourStack.of(
                Build.assembly(
                        Build.vapour(Role.FINISH, "plasterboard", 12.5, 0.25, 8),
                        Build.air(20, Layer.Ventilation.UNVENTILATED, 0),
                        Build.vapour(Role.MEMBRANE, "foil", 0.05, 160, Double.POSITIVE_INFINITY),
                        Build.vapour(Role.INSULATION, "wool", 100, 0.04, 1),
                        Build.air(40, Layer.Ventilation.WELL_VENTILATED, 0),
                        Build.layer(Role.CLADDING, "brick", 100, 0.8)),
                HeatFlow.HORIZONTAL,
                OuterSurface.OUTDOORS,
                0.13);
        assertEquals(
                "[0.1, 0.01, 1500.0, 0.1]",
                stack.slices().collect(VapourStack.Slice::diffusion).toString());
        assertEquals(0.13, stack.exteriorSurfaceResistance(), 0);
        assertEquals(2.5, stack.slices().getLast().resistance(), 1e-12);
    }

    @Test
    void layersWithoutAVapourResistanceAreAllNamed() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> VapourStack.of(
                        Build.assembly(
                                Build.layer(Role.FINISH, "plaster", 10, 0.5),
                                Build.vapour(Role.INSULATION, "wool", 100, 0.04, 1),
                                Build.layer(Role.CLADDING, "brick", 100, 0.8)),
                        HeatFlow.HORIZONTAL,
                        OuterSurface.OUTDOORS,
                        0.13));
        assertEquals(
                "assembly \"test\": layer 1 from inside (plaster) has no vapour resistance factor; give its material one"
                        + " of 1 or more; layer 3 from inside (brick) has no vapour resistance factor; give its material"
                        + " one of 1 or more",
                refused.getMessage());
    }

    @Test
    void aStackWithoutACavityEndsOutdoors() {
        VapourStack stack = VapourStack.of(
                Build.assembly(
                        Build.vapour(Role.FINISH, "plasterboard", 12.5, 0.25, 8),
                        Build.vapour(Role.INSULATION, "wool", 100, 0.04, 1)),
                HeatFlow.HORIZONTAL,
                OuterSurface.OUTDOORS,
                0.25);
        assertEquals(0.04, stack.exteriorSurfaceResistance(), 0);
        assertEquals(0.25 + 0.05 + 2.5 + 0.04, stack.resistance(), 1e-12);
        Condensation year = year(stack);
        assertEquals(
                "[room | plasterboard, plasterboard | wool, wool | outdoors]",
                year.planes().toString());
        assertTrue(year.months().noneSatisfy(CondensationTest::surfaceIsWet));
    }

    @Test
    void faultsOfBothKindsAreToldAtOnce() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> VapourStack.of(
                        Build.assembly(Build.layer(Role.FINISH, "plaster", 0, 0.5)),
                        HeatFlow.HORIZONTAL,
                        OuterSurface.OUTDOORS,
                        0.13));
        assertEquals(
                "assembly \"test\": layer 1 from inside (plaster): thickness is 0.0 m; allowed is more than 0; layer 1"
                        + " from inside (plaster) has no vapour resistance factor; give its material one of 1 or more",
                refused.getMessage());
        assertEquals(
                "[nothing lies inside its well-ventilated air layer; vapour passes freely]",
                VapourStack.missing(Build.assembly(Build.air(40, Layer.Ventilation.WELL_VENTILATED, 0)))
                        .toString());
    }
}
