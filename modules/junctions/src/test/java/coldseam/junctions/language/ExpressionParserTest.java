package coldseam.junctions.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.files.quantity.UnreadableException;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines, lengths and numbers of detail files. */
class ExpressionParserTest {

    private static final ImmutableMap<String, Measured> NAMES = Maps.mutable
            .<String, Measured>of(
                    "wall.inside", Measured.FIRST, "wall.outside", Measured.FIRST, "floor.inside", Measured.SECOND)
            .withKeyValue("set-back", Measured.LENGTH)
            .withKeyValue("set", Measured.LENGTH)
            .withKeyValue("back", Measured.LENGTH)
            .withKeyValue("bend", Measured.NUMBER)
            .toImmutable();
    private static final ImmutableMap<String, Double> SCOPE = Maps.mutable
            .<String, Double>of("wall.inside", 0.0, "wall.outside", 0.4, "floor.inside", 0.1)
            .withKeyValue("set-back", 0.03)
            .withKeyValue("set", 0.5)
            .withKeyValue("back", 0.2)
            .withKeyValue("bend", 2.0)
            .toImmutable();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wall.outside - 50 mm | FIRST | 0.35",
                "50 mm + floor.inside | SECOND | 0.15",
                "wall.outside - wall.inside | LENGTH | 0.4",
                "0.5 * (wall.outside - wall.inside) | LENGTH | 0.2",
                "halfway(wall.inside, wall.outside) + 2 in | FIRST | 0.2508",
                "min(50 mm, 3 1/2 in, 1 ft 2 in) | LENGTH | 0.05",
                "max(wall.inside, wall.outside - set-back) | FIRST | 0.37",
                "set - back | LENGTH | 0.3",
                "bend * bend + 1 | NUMBER | 5",
                "10 cm / 2.5 cm | NUMBER | 4",
                "wall.outside - (10 mm + 20 mm) - 5 mm | FIRST | 0.365",
            })
    void reads(String text, Measured measures, double value) {
        Expression expression = ExpressionParser.parse(text.strip(), NAMES);
        assertEquals(measures, expression.measures());
        assertEquals(value, expression.value(SCOPE), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "wall.outside + wall.inside",
                "wall.outside - floor.inside",
                "2 * wall.outside",
                "-wall.outside",
                "min(wall.outside, 50 mm)",
                "50 mm - wall.outside",
                "50 + 50 mm",
                "wall.outside -",
                "(wall.outside",
                "wall.outside 50 mm",
                "halfway(50 mm, 60 mm, 70 mm)",
                "wall.outsid",
                "",
            })
    void refuses(String text) {
        UnreadableException refused =
                assertThrows(UnreadableException.class, () -> ExpressionParser.parse(text, NAMES));
        assertTrue(refused.got().contains(text.strip().substring(0, Math.min(4, text.length()))), refused.getMessage());
    }

    @Test
    void saysWhatStandsAroundTheSign() {
        UnreadableException refused = assertThrows(
                UnreadableException.class, () -> ExpressionParser.parse("wall.outside - floor.inside", NAMES));
        assertEquals(
                "a line, a length or a number is needed; got \"wall.outside - floor.inside\", in which a line of the first"
                        + " band and a line of the second band stand around \"-\"; allowed: line ± length, line - line of the"
                        + " same band, number * length, length / number; lines of two bands cannot be mixed: name a length"
                        + " instead",
                refused.getMessage());
    }
}
