package coldseam.benchmarks;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The least that an audit could take: the same JVM and libraries read the house file's tokens and write one page in one of
 * the report's own fonts. Nothing is computed.
 */
public final class Floor {

    private static final String FONT = "/coldseam/report/fonts/SourceSans3-Regular.ttf";

    private Floor() {}

    /** Arguments: the house file, and the PDF to write. */
    public static void main(String[] arguments) throws IOException {
        int tokens = 0;
        try (JsonParser parser = new YAMLFactory().createParser(new File(arguments[0]))) {
            while (parser.nextToken() != null) {
                tokens++;
            }
        }
        try (PDDocument document = new PDDocument();
                InputStream font = Floor.class.getResourceAsStream(FONT)) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            PDType0Font face = PDType0Font.load(
                    document, new TTFParser().parse(new RandomAccessReadBuffer(font.readAllBytes())), true);
            try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                stream.beginText();
                stream.setFont(face, 10);
                stream.newLineAtOffset(50, 780);
                stream.showText(tokens + " tokens");
                stream.endText();
            }
            document.save(arguments[1]);
        }
    }
}
