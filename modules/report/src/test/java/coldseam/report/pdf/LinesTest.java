package coldseam.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class LinesTest {

    private static List<String> wrapped(String text, double width) {
        return Lines.wrap(Rich.of(text), Style.BODY, width)
                .collect(line -> line.fragments().collect(Lines.Fragment::text).makeString(""))
                .castToList();
    }

    @Test
    void noLineIsWiderThanTheColumn() {
        String text = "The board is set tight against the slab, its top edge under the wall board, "
                + "and averyveryveryverylongwordthatfitsnoline is cut.";
        for (double width = 12; width < 300; width += 7) {
            for (Lines.Line line : Lines.wrap(Rich.of(text), Style.BODY, width)) {
                assertTrue(line.width() <= width + 1e-6, line + " at " + width);
            }
        }
    }

    @Test
    void losesNoWord() {
        String text = "One two three-four  five 0.035 W/(m·K) six";
        for (double width = 8; width < 300; width += 5) {
            assertEquals(
                    text.replace(" ", ""), String.join("", wrapped(text, width)).replace(" ", ""));
        }
    }

    @Test
    void keepsAUnitOnTheLineOfItsNumber() {
        for (double width = 70; width < 200; width += 3) {
            for (String line : wrapped("it conducts no more than 0.035 W/(m·K), says the label", width)) {
                assertTrue(!line.strip().startsWith("W/"), line);
            }
        }
    }

    @Test
    void keepsAFractionOnTheLineOfItsWholeNumber() {
        for (double width = 70; width < 200; width += 3) {
            for (String line : wrapped("studs of softwood (1 1/2 in every 16 in, and 13 % besides)", width)) {
                assertTrue(!line.strip().startsWith("1/2"), line);
            }
        }
    }

    /** Where number and unit do not fit together the line ends between them, and not within the unit. */
    @Test
    void partsANumberFromItsUnitBeforeItPartsTheUnit() {
        String interval = "0.481729…0.481735 Btu/(h·ft·°F)";
        double whole = Lines.wrap(Rich.of(interval), Style.BODY, 500).getOnly().width();
        assertEquals(List.of("0.481729…0.481735", "Btu/(h·ft·°F)"), wrapped(interval, whole - 1));
        assertEquals(List.of("0.481729…0.481735", "Btu/(h·ft·°F)"), wrapped(interval, whole * 0.7));
    }

    @Test
    void setsSubscriptsLowerAndSmaller() {
        Lines.Line line =
                Lines.wrap(Rich.marked("f_{Rsi} of *all*"), Style.BODY, 300).getOnly();
        Lines.Fragment sub = line.fragments().get(1);
        assertEquals("Rsi", sub.text());
        assertTrue(sub.rise() < 0 && sub.type().size() < Style.BODY.type().size());
        assertEquals("f", line.fragments().get(0).text());
    }

    @Test
    void textOfTheHouseFileIsNeverMarkup() {
        assertEquals(List.of("a_{b} *c*"), wrapped("a_{b} *c*", 300));
    }
}
