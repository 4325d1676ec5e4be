package coldseam.files.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitSystemTest {

    /** A rule in the units it is written in: 3 ft of a code were "914.4 mm", the trade's 150 mm "5 7/8 in". */
    @Test
    void whatARuleNamesComesEvenInItsOwnUnits() {
        assertEquals("36 in", UnitSystem.US.rule(0.9144, Dimension.THICKNESS, UnitSystem.US));
        assertEquals("914 mm (36 in)", UnitSystem.SI.rule(0.9144, Dimension.THICKNESS, UnitSystem.US));
        // 9 ft² are 0.83612736 m².
        assertEquals("0.8 m² (9 ft²)", UnitSystem.SI.rule(0.83612736, Dimension.AREA, UnitSystem.US));
        assertEquals("150 mm", UnitSystem.SI.rule(0.15, Dimension.THICKNESS, UnitSystem.SI));
        assertEquals("6 in (150 mm)", UnitSystem.US.rule(0.15, Dimension.THICKNESS, UnitSystem.SI));
    }

    // Inches by 25.4 mm, by hand: 300 mm are 11.81 in, 1.6 % from a foot; 40 mm are 1.575 in, 4.8 % from an inch and a
    // half.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boards from 300 mm above the ground | boards from 12 in (300 mm) above the ground",
                "at least 150 mm, and 40 mm over it. | at least 6 in (150 mm), and 1 9/16 in (40 mm) over it.",
                "a 0.2 mm foil                       | an 8 mil (0.2 mm) foil",
                "An 80 mm board and a 460 mm one     | A 3 1/8 in (80 mm) board and an 18 in (460 mm) one",
                "a wall of 200 mm, a 300 mm strip    | a wall of 8 in (200 mm), a 12 in (300 mm) strip",
                "in bays of a metre at most          | in bays of 39 in (a metre) at most",
                "by half a metre.                    | by 20 in (half a metre).",
                "R 0.18 m²·K/W, 12 % of 320 mm²      | R 1.0 h·ft²·°F/Btu (0.18 m²·K/W), 12 % of 320 mm²",
                "from -0.840 m to 8.534 m, 33.445 m² | from -33 1/16 in (-0.840 m) to 28 ft (8.534 m), 360 ft² (33.445 m²)",
                "0.0 m² short, 0.000 m over          | 0 ft² (0.0 m²) short, 0 in (0.000 m) over",
                "2 m/s, 20 m³, 3.5 m-wide           | 2 m/s, 20 m³, 11 ft 5 13/16 in (3.5 m)-wide",
                "a metred bay of 2 mobile parts      | a metred bay of 2 mobile parts",
                "1 m on, {width: 1.1 m, drain: none} | 39 in (1 m) on, {width: 1.1 m, drain: none}",
            })
    void tellsLengthsOfSentences(String written, String us) {
        assertEquals(us, UnitSystem.US.told(written));
        assertEquals(written, UnitSystem.SI.told(written));
    }

    // R-40 is U 0.025 and U 0.1420 W/(m²·K), psi 0.01 is 0.0058: hand calculation from the exact factors.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "0.2     | THICKNESS            | 200 mm            | 7 7/8 in",
                "0.0125  | THICKNESS            | 12.5 mm           | 1/2 in",
                "0.0002  | THICKNESS            | 0.2 mm            | 8 mil",
                "-0.0004 | LENGTH               | -0.4 mm           | -16 mil",
                "0       | LENGTH               | 0 mm              | 0 in",
                "2.794   | LENGTH               | 2.79 m            | 9 ft 2 in",
                "30.477  | LENGTH               | 30.48 m           | 99 ft 11 7/8 in",
                "186.405 | LENGTH               | 186.40 m          | 611 ft 7 in",
                "0.24    | LENGTH               | 240 mm            | 9 7/16 in",
                "0.9144  | LENGTH               | 914.4 mm          | 3 ft",
                "-0.5    | LENGTH               | -500 mm           | -1 ft 7 11/16 in",
                "10      | AREA                 | 10.0 m²           | 108 ft²",
                "0.142   | TRANSMITTANCE        | 0.142 W/(m²·K)    | 0.0250 Btu/(h·ft²·°F)",
                "5.2833  | RESISTANCE           | 5.28 m²·K/W       | 30.0 h·ft²·°F/Btu",
                "0.01    | LINEAR_TRANSMITTANCE | 0.010 W/(m·K)     | 0.0058 Btu/(h·ft·°F)",
                "-0.0301 | LINEAR_TRANSMITTANCE | -0.030 W/(m·K)    | -0.0174 Btu/(h·ft·°F)",
                "0.036   | CONDUCTIVITY         | 0.036 W/(m·K)     | 0.250 Btu·in/(h·ft²·°F)",
                "20      | TEMPERATURE          | 20.0 °C           | 68.0 °F",
                "10      | TEMPERATURE_DIFFERENCE | 10.0 K          | 18.0 °F",
                "120     | HEAT_LOSS_COEFFICIENT | 120.00 W/K       | 227.5 Btu/(h·°F)",
                "0.15    | SHARE                | 15 %              | 15 %",
                "0.7     | RATIO                | 0.70              | 0.70",
                "300000  | PRESSURE             | 300.0 kPa         | 43.51 lbf/in²",
                "3600    | DEGREE_DAYS          | 3600 K·d          | 6480 °F·d",
                "1000    | ENERGY               | 1000 kWh          | 3412 kBtu",
                "-0.00001 | LINEAR_TRANSMITTANCE | 0.000 W/(m·K)    | 0.0000 Btu/(h·ft·°F)",
            })
    void printsWithSensibleDigits(double inside, Dimension dimension, String si, String us) {
        assertEquals(si, UnitSystem.SI.format(inside, dimension));
        assertEquals(us, UnitSystem.US.format(inside, dimension));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.04123  | 0.04128  | 0.0412…0.0413 W/(m·K)",
                "0.041    | 0.043    | 0.041…0.043 W/(m·K)",
                "0.041234 | 0.041236 | 0.041234…0.041236 W/(m·K)",
                "0.0412341 | 0.0412342 | 0.041234…0.041235 W/(m·K)",
                "-0.0302  | -0.0301  | -0.0302…-0.0301 W/(m·K)",
                "-0.00004 | 0.00002  | -0.00004…0.00002 W/(m·K)",
                "0.0412   | 0.0412   | 0.041 W/(m·K)",
                "0.04     | 0.0400000001 | 0.040000…0.040001 W/(m·K)",
            })
    void printsAnIntervalOutwards(double lower, double upper, String expected) {
        assertEquals(expected, UnitSystem.SI.interval(lower, upper, Dimension.LINEAR_TRANSMITTANCE));
    }

    @Test
    void refusesAnIntervalTurnedRound() {
        var refused = assertThrows(
                IllegalArgumentException.class, () -> UnitSystem.SI.interval(2, 1, Dimension.LINEAR_TRANSMITTANCE));
        assertEquals("an interval needs lower <= upper; got 2.0 and 1.0", refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> UnitSystem.SI.interval(Double.NaN, 1, Dimension.RATIO));
    }

    /** What is printed holds what was proven, shows two bounds, and is at most three times as wide or has all digits. */
    @Property(seed = "2026")
    void neverPrintsLessThanWasProven(
            @ForAll @DoubleRange(min = -10, max = 10) @Scale(7) double lower,
            @ForAll @DoubleRange(min = 0.000001, max = 0.01) @Scale(9) double width) {
        double upper = lower + width;
        for (UnitSystem system : UnitSystem.values()) {
            String[] bounds = system.intervalNumber(lower, upper, Dimension.LINEAR_TRANSMITTANCE)
                    .split("…");
            assertEquals(2, bounds.length);
            double low = Double.parseDouble(bounds[0]);
            double high = Double.parseDouble(bounds[1]);
            double from = system.value(lower, Dimension.LINEAR_TRANSMITTANCE);
            double to = system.value(upper, Dimension.LINEAR_TRANSMITTANCE);
            assertTrue(low <= from && to <= high);
            int most = system == UnitSystem.SI ? 6 : 7;
            boolean tight = high - low <= 3 * (to - from) * (1 + 1e-9);
            assertTrue(tight || new BigDecimal(bounds[0]).scale() == most);
        }
    }

    @Test
    void significantDigitsAreRoundedOutwards() {
        // The exact value 5.7208236 lies inside what is printed.
        assertEquals("5.7208235…5.7208241", UnitSystem.significant(5.7208235, 5.7208241, 6));
        assertEquals("-5.721…-5.720", UnitSystem.significant(-5.7208241, -5.7202, 4));
        assertEquals("0.041234…0.041236", UnitSystem.significant(0.0412345, 0.0412355, 4));
        assertEquals("123457", UnitSystem.significant(123457, 123457, 3));
        assertEquals("0…∞", UnitSystem.significant(0, Double.POSITIVE_INFINITY, 6));
    }

    /** 10 W/K are 18.956 Btu/(h·°F): what is at least so much is not printed as more. */
    @Test
    void aLeastValueIsRoundedDown() {
        assertEquals("18.9 Btu/(h·°F)", UnitSystem.US.atLeast(10, Dimension.HEAT_LOSS_COEFFICIENT));
        assertEquals("87.1 W/K", UnitSystem.SI.atLeast(87.19, Dimension.HEAT_LOSS_COEFFICIENT));
        assertEquals("0.89 W/K", UnitSystem.SI.atLeast(0.899, Dimension.HEAT_LOSS_COEFFICIENT));
    }

    /** "No more than 9 %, where at least 9 % are usual" tells nobody anything. */
    @Test
    void twoValuesAreToldApart() {
        assertEquals("9 %", UnitSystem.SI.apart(0.09, 0.12, Dimension.SHARE));
        assertEquals("8.6 %", UnitSystem.SI.apart(0.086, 0.094, Dimension.SHARE));
        assertEquals("9.4 %", UnitSystem.US.apart(0.094, 0.086, Dimension.SHARE));
        assertEquals("9.01 %", UnitSystem.SI.apart(0.0901, 0.09, Dimension.SHARE));
        assertEquals("9.000 %", UnitSystem.SI.apart(0.09, 0.09 + 1e-9, Dimension.SHARE));
    }
}
