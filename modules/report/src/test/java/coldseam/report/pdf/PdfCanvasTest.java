package coldseam.report.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PdfCanvasTest {

    @ParameterizedTest
    @CsvSource({"44198,441.98", "44190,441.9", "44100,441", "44108,441.08", "5,0.05", "0,0", "-5,-0.05", "-250,-2.5"})
    void placesAreWrittenWithNoDigitTooMany(long hundredths, String written) {
        StringBuilder out = new StringBuilder();
        PdfCanvas.hundredths(hundredths, out);
        assertEquals(written + " ", out.toString());
    }
}
