package coldseam.report.pdf;

import coldseam.report.drawing.Face;
import coldseam.report.drawing.TextMetrics;
import coldseam.report.drawing.Type;
import java.io.IOException;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** Widths of the report's typeface, read from its files once. */
public final class FontMetrics implements TextMetrics {

    private static final FontMetrics SHARED = new FontMetrics();
    private static final int STAND_IN = '?';

    private final Map<Face, Widths> widths = new EnumMap<>(Face.class);

    /**
     * One face's advance widths.
     *
     * @param font parsed
     * @param cmap code points to glyphs
     */
    private record Widths(TrueTypeFont font, CmapLookup cmap) {

        boolean has(int codePoint) {
            return cmap.getGlyphId(codePoint) != 0;
        }

        /** Thousandths of the size. */
        double of(int codePoint) {
            try {
                return font.getAdvanceWidth(cmap.getGlyphId(codePoint)) * 1000.0 / font.getUnitsPerEm();
            } catch (IOException e) {
                throw new IllegalStateException("a shipped font cannot be read", e);
            }
        }
    }

    private FontMetrics() {
        for (Face face : Face.values()) {
            try {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(FontFiles.read(face)));
                widths.put(face, new Widths(font, font.getUnicodeCmapLookup()));
            } catch (IOException e) {
                throw new IllegalStateException("a shipped font cannot be read", e);
            }
        }
    }

    /** The metrics of the shipped typeface. */
    public static FontMetrics shared() {
        return SHARED;
    }

    @Override
    public double width(String text, Type type) {
        Widths face = widths.get(type.face());
        synchronized (face) {
            return settable(text).codePoints().mapToDouble(face::of).sum() * type.size() / 1000;
        }
    }

    @Override
    public String settable(String text) {
        Widths face = widths.get(Face.REGULAR);
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> {
            if (Character.isISOControl(c)) {
                out.append(' ');
            } else {
                out.appendCodePoint(face.has(c) ? c : STAND_IN);
            }
        });
        return out.toString();
    }
}
