package coldseam.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.Normalizer;
import org.junit.jupiter.api.Test;

class FontMetricsTest {

    /** What goes unasked is in form C, alone, after any other such character, and after what a mark would join. */
    @Test
    void whatIsPlainlyComposedIsInFormC() {
        StringBuilder all = new StringBuilder();
        for (char c = ' '; c < Character.MIN_SURROGATE; c++) {
            if (FontMetrics.isComposed(String.valueOf(c))) {
                all.append(c).append('e').append(c).append('<').append(c).append(c);
                assertEquals(Character.toString(c), Normalizer.normalize(Character.toString(c), Normalizer.Form.NFC));
            }
        }
        assertEquals(all.toString(), Normalizer.normalize(all, Normalizer.Form.NFC));
        assertTrue(FontMetrics.isComposed("−12.0 °C … 0.5 m² – „Maß“ ≤ 3\u2009€"));
    }

    @Test
    void whatIsNotIsAsked() {
        for (String each : new String[] {"u\u0308", "\u212b", "\u2001", "<\u0338", "\ud83c\udfe0"}) {
            assertFalse(FontMetrics.isComposed(each), each);
        }
    }
}
