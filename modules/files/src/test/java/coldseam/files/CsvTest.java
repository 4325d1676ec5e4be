package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heads with their cells, and cells that a reader takes as they were meant. */
class CsvTest {

    private static String cell(String text) {
        String made = Csv.<String>in(UnitSystem.SI).with("h", row -> row).text(Lists.immutable.of(text));
        return made.substring("h\r\n".length(), made.length() - 2);
    }

    @Test
    void aColumnIsAHeadAndItsCells() {
        Csv<Double> csv = Csv.<Double>in(UnitSystem.US)
                .with("name", row -> "row " + Csv.plain(row))
                .with("length", Dimension.LENGTH, row -> row)
                .with("factor", Dimension.RATIO, row -> row);
        // 1 ft = 0.3048 m, exact by definition.
        assertEquals("name,length ft,factor\r\nrow 0.3048,1,0.3048\r\n", csv.text(Lists.immutable.of(0.3048)));
    }

    @Test
    void binaryDustDoesNotHideAPlainNumber() {
        // The square feet of a wall of 35 ft 1 in x 1 ft 6 in, and 3 ft, as they come out of metres.
        assertEquals("52.625", Csv.plain(52.62499999999999));
        assertEquals("3", Csv.plain(2.9999999999999987));
        assertEquals("-0.33333333333333", Csv.plain(-1.0 / 3));
        assertEquals("Infinity", Csv.plain(Double.POSITIVE_INFINITY));
    }

    @Test
    void noRowsLeaveTheHead() {
        assertEquals(
                "a,b\r\n",
                Csv.in(UnitSystem.SI).with("a", row -> "").with("b", row -> "").text(Lists.immutable.empty()));
    }

    @Test
    void whatWouldEndACellIsQuoted() {
        // RFC 4180, section 2, rules 6 and 7.
        assertEquals("\"a,b\"", cell("a,b"));
        assertEquals("\"say \"\"so\"\"\"", cell("say \"so\""));
        assertEquals("\"one\ntwo\"", cell("one\ntwo"));
        assertEquals("plain text", cell("plain text"));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "=1+1, '=1+1",
                "@sum, '@sum",
                "+cmd|x, '+cmd|x",
                "-2-cmd, '-2-cmd",
                "-0.044, -0.044",
                "-1E-9, -1E-9",
                "-, -"
            })
    void noCellIsAFormula(String text, String expected) {
        assertEquals(expected, cell(text));
    }
}
