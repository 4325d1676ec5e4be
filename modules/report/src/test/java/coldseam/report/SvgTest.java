package coldseam.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.envelope.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.report.pages.Limits;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

class SvgTest {

    private static final Audit AUDIT = SampleAudit.create("<Yard & \"Barn\">");
    private static final JunctionResult SLAB = AUDIT.sheets().get(0).result();

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static String words(Document document) {
        StringBuilder out = new StringBuilder();
        NodeList texts = document.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            out.append(texts.item(i).getTextContent()).append('\n');
        }
        return out.toString();
    }

    @Test
    void aJunctionIsWellFormedAndNamesWhatItShows() throws Exception {
        Document svg = parsed(JunctionSvg.text(SLAB, Limits.of(AUDIT.house().site()), UnitSystem.SI));
        assertEquals("svg", svg.getDocumentElement().getNodeName());
        String words = words(svg);
        for (JunctionResult.Piece piece : SLAB.pieces()) {
            assertTrue(words.contains(piece.material().name()), piece.material().name() + " in " + words);
        }
        assertTrue(words.contains("broken here"), words);
        assertTrue(words.contains("coldest 9.8 °C"), words);
        // 20 °C and 50 %: 9.3 °C and, at 80 % on the surface, 12.6 °C (ISO 13788 equations E.7 to E.10, from memory).
        assertTrue(words.contains("dew point 9.3 °C"), words);
        assertTrue(words.contains("mould limit 12.6 °C"), words);
    }

    @Test
    void aSectionByHandIsWellFormed() throws Exception {
        Document svg = parsed(SectionSvg.text(SLAB.solution(), UnitSystem.US));
        assertTrue(words(svg).contains("°F"), words(svg));
    }

    /** 20 m of ground must not shrink the drawing: the wall's 160 mm board is still measured at 1:10 or larger. */
    @Test
    void groundDoesNotShrinkTheDrawing() throws Exception {
        String words =
                words(parsed(JunctionSvg.text(SLAB, Limits.of(AUDIT.house().site()), UnitSystem.SI)));
        assertTrue(words.contains("Scale 1:10 ") || words.contains("Scale 1:5 "), words);
        assertTrue(words.contains("\n160\n"), words);
    }

    @Test
    void isTheSameTextTwice() {
        assertEquals(SectionSvg.text(SLAB.solution(), UnitSystem.SI), SectionSvg.text(SLAB.solution(), UnitSystem.SI));
    }
}
