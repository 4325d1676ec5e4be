package coldseam.report;

import coldseam.envelope.quantity.UnitSystem;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PdfLookTest {
    @Test
    void look() throws Exception {
        PdfReport.write(SampleAudit.create(), Path.of("/tmp/look/a4.pdf"), UnitSystem.SI, Paper.A4);
        PdfReport.write(SampleAudit.create(), Path.of("/tmp/look/us.pdf"), UnitSystem.US, Paper.LETTER);
    }
}
