package coldseam.assemblies.moisture;

import static coldseam.assemblies.Build.air;
import static coldseam.assemblies.Build.assembly;
import static coldseam.assemblies.Build.framed;
import static coldseam.assemblies.Build.vapour;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Climate;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import java.time.Month;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class MoistureTest {

    @Property(tries = 300, seed = "2026")
    void theDewPointUndoesSaturation(@ForAll @DoubleRange(min = -60, max = 60) double temperature) {
        assertEquals(temperature, SaturationPressure.dewPoint(SaturationPressure.at(temperature)), 1e-9);
    }

    @Property(tries = 300, seed = "2026")
    void aSurfaceBearsTheHumidityItsFactorWasAskedFor(
            @ForAll @DoubleRange(min = -30, max = 15) double outdoor,
            @ForAll @DoubleRange(min = 0.2, max = 0.75) double humidity) {
        double mould = SurfaceHumidity.temperatureFactorNeeded(20, outdoor, humidity, SurfaceHumidity.MOULD_LIMIT);
        double dew = SurfaceHumidity.temperatureFactorNeeded(20, outdoor, humidity, 1);
        assertTrue(dew < mould);
        if (dew > -10) {
            assertEquals(humidity, SurfaceHumidity.of(mould, 20, outdoor).humidityAtMouldLimit(), 1e-9);
            assertEquals(humidity, SurfaceHumidity.of(dew, 20, outdoor).humidityAtDewPoint(), 1e-9);
        }
    }

    @Test
    void outdoorsWarmerThanIndoorsIsRefused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SurfaceHumidity.of(0.7, 20, 20));
        assertEquals(
                "the outdoor temperature is 20.0 °C; allowed is less than the indoor temperature, 20.0 °C. Correct the"
                        + " site's temperatures.",
                refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> SurfaceHumidity.temperatureFactorNeeded(20, 20, 0.5, 0.8));
        assertThrows(IllegalArgumentException.class, () -> SurfaceHumidity.of(1.1, 20, 0));
        assertThrows(IllegalArgumentException.class, () -> SurfaceHumidity.dewPoint(20, 0));
        assertThrows(IllegalArgumentException.class, () -> SurfaceHumidity.dewPoint(20, 1.01));
    }

    @Test
    void aWarmSurfaceBearsSaturatedAir() {
        SurfaceHumidity warm = SurfaceHumidity.of(1, 20, -5);
        assertEquals(20, warm.surfaceTemperature(), 1e-12);
        assertEquals(1, warm.humidityAtDewPoint(), 1e-12);
        assertEquals(0.8, warm.humidityAtMouldLimit(), 1e-12);
    }

    @Test
    void theExcessFallsToNothingAtTwentyDegrees() {
        assertEquals(810, excess(-10), 1e-9);
        assertEquals(810, excess(0), 1e-9);
        assertEquals(405, excess(10), 1e-9);
        assertEquals(0, excess(20), 0);
        assertEquals(0, excess(30), 0);
    }

    private static double excess(double outdoorTemperature) {
        Climate.Mean outdoors = new Climate.Mean(Month.MAY, outdoorTemperature, 0.5);
        return CondensationTest.DWELLING.vapourPressure(outdoors, 20) - SurfaceHumidity.vapourPressure(outdoors);
    }

    @Test
    void theCriticalMonthNeedsMost() {
        MonthlyTemperatureFactor factors =
                MonthlyTemperatureFactor.of(CondensationTest.CLIMATE, CondensationTest.DWELLING, 20);
        assertEquals(Month.FEBRUARY, factors.critical().month());
        assertEquals(12, factors.months().size());
        assertThrows(
                IllegalArgumentException.class,
                () -> MonthlyTemperatureFactor.of(CondensationTest.CLIMATE, CondensationTest.DWELLING, 19));
    }

    /**
     * A constant 50 % at 20 °C asks for 12.625 °C on the surface (worked out apart from ISO 13788's formulas, in
     * fixtures/published/moisture.csv): (12.625 + 1)/21 in January, less in every other month.
     */
    @Test
    void aConstantHumidityNeedsMostInTheColdestMonth() {
        MonthlyTemperatureFactor factors = MonthlyTemperatureFactor.ofHeated(
                        CondensationTest.CLIMATE, IndoorAir.constant(0.5), 20)
                .orElseThrow();
        assertEquals(Month.JANUARY, factors.critical().month());
        assertEquals((12.625 + 1) / 21, factors.critical().temperatureFactor(), 5e-5);
    }

    @Test
    void onlyHeatedMonthsCount() {
        MonthlyTemperatureFactor factors = MonthlyTemperatureFactor.ofHeated(
                        CondensationTest.CLIMATE, CondensationTest.DWELLING, 20)
                .orElseThrow();
        // 15 °C or less: January to May and September to December.
        assertEquals(9, factors.months().size());
        assertEquals(Month.FEBRUARY, factors.critical().month());
        // At 18 °C indoors the bound is 13 °C: without May and September, and June to August are no trouble.
        assertEquals(
                7,
                MonthlyTemperatureFactor.ofHeated(CondensationTest.CLIMATE, CondensationTest.DWELLING, 18)
                        .orElseThrow()
                        .months()
                        .size());
        assertEquals(
                Optional.empty(),
                MonthlyTemperatureFactor.ofHeated(CondensationTest.CLIMATE, CondensationTest.DWELLING, 3));
    }

    @Test
    void theWetterOfTwoRoomsCountsMonthByMonth() {
        IndoorAir wetter = CondensationTest.DWELLING.or(IndoorAir.constant(0.6));
        // January: class 3 gives 1287.7 Pa (published checks), 60 % of 2336.95 Pa are 1402.2 Pa; in August the class
        // leads.
        assertEquals(
                1402.17, wetter.vapourPressure(CondensationTest.CLIMATE.months().get(0), 20), 0.01);
        assertEquals(
                1635.9, wetter.vapourPressure(CondensationTest.CLIMATE.months().get(7), 20), 0.1);
    }

    @Test
    void aHouseFilesRoomsAreClassesOrItsOwnHumidity() {
        for (Climate.Indoors indoors : Climate.Indoors.values()) {
            Climate.Mean january = CondensationTest.CLIMATE.months().getFirst();
            double expected = indoors == Climate.Indoors.SITE_HUMIDITY
                    ? 0.45 * SaturationPressure.at(20)
                    : SurfaceHumidity.vapourPressure(january)
                            + 270 * (indoors.ordinal() + 1)
                            + (indoors == Climate.Indoors.POOL ? 10 : 0);
            assertEquals(expected, IndoorAir.of(indoors, 0.45).vapourPressure(january, 20), 1e-9, indoors::name);
        }
    }

    @Test
    void aYearHasTwelveMonthsInOrder() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> new Climate(
                        "short", Climate.Indoors.DWELLING, Lists.immutable.of(new Climate.Mean(Month.MAY, 10, 0.7))));
        assertEquals(
                "the climate \"short\" has the months [MAY]; allowed are the twelve of a year from JANUARY on",
                refused.getMessage());
    }

    private static final Layer JOISTS = framed(vapour(Role.STRUCTURE, "wool", 200, 0.04, 1), 0.13, 0.1);
    private static final Layer DECK = vapour(Role.STRUCTURE, "plywood", 20, 0.13, 100);
    private static final Layer FELT = vapour(Role.MEMBRANE, "felt", 4, 0.2, 50000);
    private static final Layer BOARD = vapour(Role.INSULATION, "board", 120, 0.03, 60);

    @Test
    void theDeckIsColdUnderFilledJoists() {
        // Between the joists: 0.10 + 5.0 + 0.02/0.13 + 4.0 + 0.04; the deck's underside lies behind 5.1 of it.
        Assembly terrace = assembly(JOISTS, DECK, FELT, BOARD);
        double total = 0.10 + 5 + 0.02 / 0.13 + 4 + 0.04;
        DeckTemperature deck = deck(terrace);
        assertEquals("plywood", deck.deck());
        assertEquals(20 - 30 * 5.1 / total, deck.temperature(), 1e-12);
        assertEquals(SurfaceHumidity.dewPoint(20, 0.5), deck.dewPoint(), 1e-12);
    }

    private static DeckTemperature deck(Assembly assembly) {
        return DeckTemperature.of(Transmittance.of(assembly, HeatFlow.UPWARDS, OuterSurface.OUTDOORS), 20, -10, 0.5);
    }

    @Test
    void whereJoistsAreTheOutermostStructureWhatLiesOnThemIsTheDeck() {
        DeckTemperature deck = deck(assembly(JOISTS, FELT, BOARD));
        assertEquals("felt", deck.deck());
        assertEquals(20 - 30 * 5.1 / 9.14, deck.temperature(), 1e-12);
    }

    @Test
    void structureUponUnbrokenInsulationIsNoDeckWhereStructureIsCovered() {
        DeckTemperature deck = deck(assembly(DECK, BOARD, vapour(Role.STRUCTURE, "screed", 60, 1.2, 50)));
        assertEquals("plywood", deck.deck());
        assertEquals(20 - 30 * 0.10 / (0.10 + 0.02 / 0.13 + 4 + 0.06 / 1.2 + 0.04), deck.temperature(), 1e-12);
    }

    @Test
    void aLinedDeckIsColdAllTheSame() {
        DeckTemperature deck = deck(assembly(BOARD, DECK, vapour(Role.STRUCTURE, "topping", 60, 1.2, 50)));
        assertEquals("topping", deck.deck());
        double warm = 0.10 + 4 + 0.02 / 0.13;
        assertEquals(20 - 30 * warm / (warm + 0.06 / 1.2 + 0.04), deck.temperature(), 1e-12);
    }

    @Test
    void withoutStructureWhatLiesOnTheInsulationIsTheDeck() {
        DeckTemperature deck = deck(assembly(BOARD, FELT));
        assertEquals("felt", deck.deck());
        assertEquals(20 - 30 * 4.1 / 4.14, deck.temperature(), 1e-12);
    }

    @Test
    void monthsOutOfOrderAreNoYear() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> new Climate(
                        "turned",
                        Climate.Indoors.DWELLING,
                        CondensationTest.CLIMATE.months().toReversed()));
        assertTrue(refused.getMessage().startsWith("the climate \"turned\" has the months [DECEMBER, NOVEMBER,"));
    }

    @Test
    void aMonthThatIsJustSoMuchColderIsHeated() {
        // May has 14 °C; September 14.3.
        assertEquals(
                8,
                MonthlyTemperatureFactor.ofHeated(CondensationTest.CLIMATE, CondensationTest.DWELLING, 19)
                        .orElseThrow()
                        .months()
                        .size());
    }

    @Test
    void structureBeyondAVentilatedCavityIsNoDeck() {
        DeckTemperature deck = deck(assembly(
                DECK,
                FELT,
                air(40, Layer.Ventilation.WELL_VENTILATED, 0),
                vapour(Role.STRUCTURE, "boards", 28, 0.13, 50)));
        assertEquals("plywood", deck.deck());
        assertEquals(20 - 30 * 0.10 / (0.10 + 0.02 / 0.13 + 0.10), deck.temperature(), 1e-12);
    }

    @Test
    void aDeckWithoutInsulationIsItself() {
        DeckTemperature bare = deck(assembly(DECK, FELT));
        assertEquals("plywood", bare.deck());
        assertEquals(20 - 30 * 0.10 / (0.14 + 0.02 / 0.13), bare.temperature(), 1e-12);
    }
}
