package coldseam.files.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityParserTest {

    /** The factors are exact; a conversion rounds up to nine times, by 1.1e-16 each. */
    private static final double ROUND_OFF = 1e-15;

    private static void assertReads(double expected, String written, Dimension dimension) {
        assertEquals(expected, QuantityParser.parse(written, dimension), Math.abs(expected) * ROUND_OFF, written);
    }

    // The inch is 25.4 mm and the foot 12 in by definition.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "22.225 mm   | 22.225",
                "3.175 mm    | 3.175",
                "8 in        | 203.2",
                "8in         | 203.2",
                "8\"         | 203.2",
                "5/8 in      | 15.875",
                "3 1/2 in    | 88.9",
                "3-1/2 in    | 88.9",
                "3½ in       | 88.9",
                "½ inch      | 12.7",
                "9 ft 2 in   | 2794",
                "9 ft        | 2743.2",
                "9.5 ft      | 2895.6",
                "5'6\"       | 1676.4",
                "5' 6 1/2\"  | 1689.1",
                "5′6″        | 1676.4",
                "-1 ft 6 in  | -457.2",
                "−200 mm     | -200",
                "200 mm      | 200",
                "200mm       | 200",
                "2.4e2 mm    | 240",
                "20 cm       | 200",
                ".2 m        | 200",
                "2. m        | 2000",
                "150 µm      | 0.15",
                "2\u00a0m    | 2000",
                "200\u2009mm | 200",
                "２００ mm   | 200",
                "20 ｃｍ     | 200",
                "200 ㎜     | 200",
                "–200 mm     | -200",
                "– 200 mm    | -200",
                "8''         | 203.2",
                "5’6”        | 1676.4",
                "6 mil       | 0.1524",
                "200 millimetres | 200",
            })
    void readsLengths(String written, double millimetres) {
        assertReads(millimetres / 1000, written, Dimension.LENGTH);
        assertReads(millimetres / 1000, written, Dimension.THICKNESS);
    }

    @ParameterizedTest
    @CsvSource({
        "W/(m²·K)",
        "W/(m2.K)",
        "W/(m²K)",
        "W/m²K",
        "W/m2K",
        "W/m²·K",
        "W/m²/K",
        "W·m⁻²·K⁻¹",
        "W m^-2 K^-1",
        "W/(m^2*K)",
        "W·m-2·K-1",
        "W/(m² K)",
        "W / (m² · K)",
        "W per m²K"
    })
    void readsEverySpellingOfTransmittance(String unit) {
        assertReads(0.9, "0.9 " + unit, Dimension.TRANSMITTANCE);
    }

    @ParameterizedTest
    @CsvSource({"W/(m·K)", "W/mK", "W/(m.K)", "W/m·K", "W/(mK)", "W/m/K", "W·m⁻¹·K⁻¹", "W/(m°C)", "W/(m·°C)"})
    void readsEverySpellingOfConductivity(String unit) {
        assertReads(0.035, "0.035 " + unit, Dimension.CONDUCTIVITY);
        assertReads(0.035, "0.035 " + unit, Dimension.LINEAR_TRANSMITTANCE);
    }

    // Btu (International Table) 1055.05585262 J, lb 0.45359237 kg, lbf 4.4482216152605 N: the definitions in NIST SP
    // 811
    // (2008) appendix B, from memory; the factors worked out from them by hand calculation in 16 digits.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 Btu/(h·ft²·°F)    | TRANSMITTANCE        | 5.678263341113487",
                "1 Btu/h-ft2-F       | TRANSMITTANCE        | 5.678263341113487",
                "1 Btu/(hr ft² °F)   | TRANSMITTANCE        | 5.678263341113487",
                "U-1                 | TRANSMITTANCE        | 5.678263341113487",
                "1 h·ft²·°F/Btu      | RESISTANCE           | 0.1761101836823058",
                "R-1                 | RESISTANCE           | 0.1761101836823058",
                "R1                  | RESISTANCE           | 0.1761101836823058",
                "1 Btu/(h·ft·°F)     | LINEAR_TRANSMITTANCE | 1.730734666371391",
                "1 Btu/(h·°F)        | POINT_TRANSMITTANCE  | 0.52752792631",
                "1 Btu·in/(h·ft²·°F) | CONDUCTIVITY         | 0.1442278888642826",
                "R-1 per in          | CONDUCTIVITY         | 0.1442278888642826",
                "R-1/in              | CONDUCTIVITY         | 0.1442278888642826",
                "1 Btu/h             | POWER                | 0.2930710701722222",
                "1 psf               | PRESSURE             | 47.88025898033584",
                "1 lbf/in²           | PRESSURE             | 6894.757293168361",
                "1 lbf/in2           | PRESSURE             | 6894.757293168361",
                "1 lb/ft³            | DENSITY              | 16.018463373960138",
                "1 pcf               | DENSITY              | 16.018463373960138",
                "1 kWh               | ENERGY               | 1",
                "1 therm             | ENERGY               | 29.30710701722222",
            })
    void convertsCustomaryUnitsExactly(String written, Dimension dimension, double expected) {
        assertReads(expected, written, dimension);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5.3 m²·K/W  | 5.3",
                "R 5.3 m²K/W | 5.3",
                "RSI 5.3     | 5.3",
                "R-30        | 5.283305510469174",
            })
    void readsResistances(String written, double expected) {
        assertReads(expected, written, Dimension.RESISTANCE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "72 °F     | TEMPERATURE            | 22.22222222222222",
                "-40 °F    | TEMPERATURE            | -40",
                "20 °C     | TEMPERATURE            | 20",
                "293.15 K  | TEMPERATURE            | 20",
                "18 °F     | TEMPERATURE_DIFFERENCE | 10",
                "10 K      | TEMPERATURE_DIFFERENCE | 10",
                "6480 °F·d | DEGREE_DAYS            | 3600",
                "3600 K·d  | DEGREE_DAYS            | 3600",
                "3600 Kd   | DEGREE_DAYS            | 3600",
                "3600 °C days | DEGREE_DAYS         | 3600",
                "40 %      | SHARE                  | 0.4",
                "0.4       | SHARE                  | 0.4",
                "12 °      | ANGLE                  | 12",
                "12:12     | ANGLE                  | 45",
                "12/12     | ANGLE                  | 45",
                "100 %     | ANGLE                  | 45",
                "12 in/ft  | ANGLE                  | 45",
                "3 1/2:3.5 | ANGLE                  | 45",
                "１５ ％   | SHARE                  | 0.15",
                "20 ℃     | TEMPERATURE            | 20",
                "6 per m²  | PER_AREA               | 6",
                "6 1/m²    | PER_AREA               | 6",
                "6 /m²     | PER_AREA               | 6",
                "3 mm/d    | PRECIPITATION          | 3",
                "0.04 W·d/(m²·K·mm) | RAIN_FACTOR   | 0.04",
                "800 mm²/m | AIR_LAYER_OPENING      | 800",
                "0.0015 m²/m | OPENING_PER_LENGTH   | 0.0015",
                "300 kPa   | PRESSURE               | 300000",
                "0.2 MPa   | PRESSURE               | 200000",
                "35 mW/(m·K) | CONDUCTIVITY         | 0.035",
                "10 mph    | SPEED                  | 4.4704",
                "0         | LENGTH                 | 0",
            })
    void readsOthers(String written, Dimension dimension, double expected) {
        double value = QuantityParser.parse(written, dimension);
        // A Fahrenheit reading subtracts 32 first, and 293.15 − 273.15 loses two digits.
        assertEquals(expected, value, 1e-13 * Math.abs(expected), written);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "200          | THICKNESS     | a thickness is needed; got 200 without a unit; allowed: a number with its unit, such as 200 mm or 8 in or 5/8 in; write the unit after the number",
                "8 W          | THICKNESS     | a thickness is needed; got 8 W; allowed: a number with its unit, such as 200 mm or 8 in or 5/8 in; this is a power",
                "R-30         | CONDUCTIVITY  | a thermal conductivity is needed; got R-30; allowed: a number with its unit, such as 0.035 W/(m·K) or 0.24 Btu·in/(h·ft²·°F) or R-4 per in; this is a thermal resistance",
                "R-4 per inch | RESISTANCE    | a thermal resistance is needed; got R-4 per inch; allowed: a number with its unit, such as 5.3 m²·K/W or R-30; this is a thermal conductivity",
                "25 psi       | PRESSURE      | a pressure or strength is needed; got 25 psi; allowed: a number with its unit, such as 300 kPa or 25 lbf/in²; psi means the linear thermal transmittance here: write lbf/in² for a pressure",
                "0,035 W/mK   | CONDUCTIVITY  | a thermal conductivity is needed; got 0,035 W/mK; allowed: a number with its unit, such as 0.035 W/(m·K) or 0.24 Btu·in/(h·ft²·°F) or R-4 per in; write the decimals after a point, not after a comma",
                "200 MM       | LENGTH        | a length is needed; got 200 MM; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; \"MM\" is no unit known here: write mm",
                "1,200 mm     | LENGTH        | a length is needed; got 1,200 mm; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; write thousands without a mark or space, and decimals after a point",
                "1.200 mm     | THICKNESS     | a thickness is needed; got 1.200 mm; allowed: a number with its unit, such as 200 mm or 8 in or 5/8 in; three digits after a point are thousands to some: write 1200 or 1.2",
                "12.705 mm    | LENGTH        | a length is needed; got 12.705 mm; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; three digits after a point are thousands to some: write 12705 or 12.7050",
                "3.175 K·d    | DEGREE_DAYS   | a number of degree days is needed; got 3.175 K·d; allowed: a number with its unit, such as 3600 K·d or 6500 °F·d; three digits after a point are thousands to some: write 3175 or 3.1750",
                "3.000 K·d    | DEGREE_DAYS   | a number of degree days is needed; got 3.000 K·d; allowed: a number with its unit, such as 3600 K·d or 6500 °F·d; three digits after a point are thousands to some: write 3000 or 3",
                "1 200 mm     | LENGTH        | a length is needed; got 1 200 mm; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; write thousands without a mark or space, and decimals after a point",
                "26'3         | LENGTH        | a length is needed; got 26'3; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; write the inches with their mark, 26 ft 3 in",
                "7 9/8 in     | LENGTH        | a length is needed; got 7 9/8 in; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; a fraction beside a whole number is less than 1: check its digits",
                "1 ft 3 8/8 in | LENGTH        | a length is needed; got 1 ft 3 8/8 in; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; a fraction beside a whole number is less than 1: check its digits",
                "9 ft 14 in   | LENGTH        | a length is needed; got 9 ft 14 in; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; beside inches feet are whole, and inches less than 12",
                "0.5 ft 2 in  | LENGTH        | a length is needed; got 0.5 ft 2 in; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; beside inches feet are whole, and inches less than 12",
                "8 inchs      | LENGTH        | a length is needed; got 8 inchs; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; \"inchs\" is no unit known here",
                "12 mm ft     | LENGTH        | a length is needed; got 12 mm ft; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; this is an area",
                "thick        | LENGTH        | a length is needed; got thick; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; write a number first",
                "1/0 in       | LENGTH        | a length is needed; got 1/0 in; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; the number is too large or divides by zero: write a finite number",
                "1e999 m      | LENGTH        | a length is needed; got 1e999 m; allowed: a number with its unit, such as 2.9 m or 9 ft 2 in; the number is too large or divides by zero: write a finite number",
                "0            | THICKNESS     | a thickness is needed; got 0 without a unit; allowed: a number with its unit, such as 200 mm or 8 in or 5/8 in; write the unit after the number",
                "20           | TEMPERATURE   | a temperature is needed; got 20 without a unit; allowed: a number with its unit, such as 20 °C or 72 °F; write the unit after the number",
                "3600 K       | DEGREE_DAYS   | a number of degree days is needed; got 3600 K; allowed: a number with its unit, such as 3600 K·d or 6500 °F·d; this is a temperature",
                "5 m          | SHARE         | a share is needed; got 5 m; allowed: a number, such as 15 % or 0.15; this is a length",
            })
    void refuses(String written, Dimension dimension, String message) {
        var refused = assertThrows(UnreadableException.class, () -> QuantityParser.parse(written, dimension));
        assertEquals(message, refused.getMessage());
    }

    /** The examples in messages and schemas are themselves read. */
    @ParameterizedTest
    @EnumSource
    void readsItsOwnExamples(Dimension dimension) {
        dimension.examples().forEach(each -> QuantityParser.parse(each, dimension));
    }

    @Test
    void readsPrices() {
        assertEquals(new Price(0.12, "EUR"), Price.Per.HEAT.parse("0.12 EUR/kWh"));
        assertEquals(new Price(0.12, "EUR"), Price.Per.HEAT.parse("120 EUR/MWh"));
        // 1 therm is 100 000 Btu, 29.307 107 kWh.
        assertEquals(
                1.4 / 29.30710701722222, Price.Per.HEAT.parse("1.40 USD/therm").each(), 1e-15);
        var refused = assertThrows(UnreadableException.class, () -> Price.Per.HEAT.parse("0.12 EUR"));
        assertEquals(
                "a price of heat is needed; got 0.12 EUR; allowed: an amount, a currency and an energy, such as 0.12 EUR/kWh"
                        + " or 1.40 USD/therm; write it so",
                refused.getMessage());
    }

    @Test
    void readsPricesOfLength() {
        assertEquals(new Price(35, "EUR"), Price.Per.METRE.parse("35 EUR/m"));
        // 1 ft = 0.3048 m, exact by definition.
        assertEquals(11 / 0.3048, Price.Per.METRE.parse("11 USD/ft").each(), 1e-12);
        var refused = assertThrows(UnreadableException.class, () -> Price.Per.METRE.parse("35 EUR/kWh"));
        assertEquals(
                "a price of length is needed; got 35 EUR/kWh; allowed: an amount, a currency and a length, such as 35 EUR/m"
                        + " or 11 USD/ft; write it so",
                refused.getMessage());
    }

    /** Nobody pays thousandths: 1.150 is more than a thousand, or 1.15. Of a kWh and a therm they are written. */
    @Test
    void refusesPricesWithThreeDigitsAfterAPoint() {
        assertEquals(new Price(1.129 / 29.30710701722222, "USD"), Price.Per.HEAT.parse("1.129 USD/therm"));
        String next = "; three digits after a point are thousands to some: write 1150 or 1.15";
        for (Executable read : List.<Executable>of(
                () -> Price.Per.METRE.parse("1.150 EUR/m"),
                () -> Price.Per.SQUARE_METRE.parse("1.150 EUR/m²"),
                () -> Price.Per.PIECE.parse("1.150 EUR each"))) {
            var refused = assertThrows(UnreadableException.class, read);
            assertTrue(refused.getMessage().endsWith(next), refused.getMessage());
        }
        // Of a length it would be an eighth of an inch.
        assertThrows(UnreadableException.class, () -> Price.Per.METRE.parse("3.175 EUR/m"));
    }

    /** In units whose thousandths are written, and where the whole part is none, the point is a point. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.005 m | LENGTH | 3.005",
                "0.125 mm | THICKNESS | 0.000125",
                "1.125 in | THICKNESS | 0.028575",
                "1.200 W/(m²·K) | TRANSMITTANCE | 1.2",
                "12.7000 mm | THICKNESS | 0.0127"
            })
    void readsThousandthsThatAreMeant(String written, Dimension dimension, double expected) {
        assertEquals(expected, QuantityParser.parse(written, dimension), 1e-13);
    }

    /** What reports print below 100 ft is read back, to the sixteenth of an inch they are rounded to. */
    @Property(seed = "2026")
    void readsFeetAndInchesAsPrinted(@ForAll @IntRange(min = 0, max = 100 * 12 * 16 - 1) int sixteenths) {
        double metres = sixteenths * 0.0254 / 16;
        String printed = UnitSystem.US.format(metres, Dimension.LENGTH);
        assertEquals(metres, QuantityParser.parse(printed, Dimension.LENGTH), 1e-12, printed);
    }

    /** The unit a report prints is one a file may use. */
    @ParameterizedTest
    @EnumSource
    void readsTheUnitsReportsPrint(Dimension dimension) {
        for (UnitSystem system : UnitSystem.values()) {
            String written = ("7 " + system.label(dimension)).strip();
            double inside = QuantityParser.parse(written, dimension);
            assertEquals(7, system.value(inside, dimension), 1e-13, written);
        }
    }

    /** Nothing a person types makes it fail in another way than by saying so. */
    @Property(seed = "2026")
    void refusesInWords(@ForAll String written, @ForAll Dimension dimension) {
        try {
            QuantityParser.parse(written, dimension);
        } catch (UnreadableException refused) {
            assertEquals(dimension.allowed(), refused.allowed());
        }
    }

    @Property(seed = "2026")
    void convertsThereAndBack(@ForAll Dimension dimension, @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        for (UnitSystem system : UnitSystem.values()) {
            double shown = system.value(value, dimension);
            String written = new java.math.BigDecimal(shown).toPlainString() + " " + system.label(dimension);
            double back = QuantityParser.parse(written, dimension);
            assertEquals(value, back, 1e-12 * Math.max(40, Math.abs(value)), written);
        }
    }

    @Test
    void priceIsAFiniteNumber() {
        assertThrows(UnreadableException.class, () -> Price.Per.HEAT.parse("1e999 EUR/kWh"));
        assertThrows(UnreadableException.class, () -> Price.Per.METRE.parse("1e999 EUR/m"));
        assertEquals(35, Price.Per.METRE.parse("35 EUR/m").each());
    }

    /** As a text of any length would be, but the last reader of patterns is not linear. */
    @Test
    void longTextIsRefusedUnread() {
        String hundred = "1" + " ".repeat(97) + "mm";
        assertReads(1e-3, hundred, Dimension.LENGTH);
        UnreadableException refused =
                assertThrows(UnreadableException.class, () -> QuantityParser.parse(" " + hundred, Dimension.LENGTH));
        assertEquals("a text of 101 characters", refused.got());
        assertThrows(UnreadableException.class, () -> Price.Per.HEAT.parse("1".repeat(101)));
    }
}
