package coldseam.report.pdf;

import coldseam.report.drawing.Face;
import coldseam.report.drawing.TextMetrics;
import coldseam.report.drawing.Type;
import java.io.IOException;
import java.text.Normalizer;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** Widths of the report's typeface, read from its files once. */
public final class FontMetrics implements TextMetrics {

    private static final FontMetrics SHARED = new FontMetrics();
    private static final int STAND_IN = '?';

    /** A hyphen that is a minus: before a digit, and not within a word or a range. */
    private static final Pattern MINUS = Pattern.compile("(?<![\\p{L}\\p{N}.,)\\]])-(?=\\d)");

    private final Map<Face, Widths> widths = new EnumMap<>(Face.class);

    /**
     * One face's advance widths.
     *
     * @param font parsed
     * @param cmap code points to glyphs
     * @param known widths asked for before
     */
    private record Widths(TrueTypeFont font, CmapLookup cmap, Map<Integer, Double> known) {

        boolean has(int codePoint) {
            return cmap.getGlyphId(codePoint) != 0;
        }

        /** Thousandths of the size. */
        double of(int codePoint) {
            return known.computeIfAbsent(codePoint, this::read);
        }

        private double read(int codePoint) {
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
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Shipped.font(face)));
                widths.put(face, new Widths(font, font.getUnicodeCmapLookup(), new ConcurrentHashMap<>()));
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
        String set = settable(text);
        double sum = 0;
        synchronized (face) {
            for (int i = 0; i < set.length(); ) {
                int codePoint = set.codePointAt(i);
                sum += face.of(codePoint);
                i += Character.charCount(codePoint);
            }
        }
        return sum * type.size() / 1000;
    }

    @Override
    public String settable(String text) {
        if (plain(text)) {
            return text;
        }
        Widths face = widths.get(Face.REGULAR);
        StringBuilder out = new StringBuilder();
        String minus = text.indexOf('-') < 0 ? text : MINUS.matcher(text).replaceAll("−");
        String composed = isComposed(minus) ? minus : Normalizer.normalize(minus, Normalizer.Form.NFC);
        composed.codePoints().forEach(c -> {
            if (Character.isISOControl(c)) {
                out.append(' ');
            } else {
                out.appendCodePoint(face.has(c) ? c : STAND_IN);
            }
        });
        return out.toString();
    }

    /**
     * Whether a text is plainly in Unicode's form C: letters and signs before the first combining mark, dashes, spaces and signs
     * of currencies that stand for themselves, and the signs of minus and of comparison that we write.
     */
    static boolean isComposed(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '\u0300' && (c < '\u2002' || c > '\u20cf') && "−≤≥".indexOf(c) < 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing in a text could be set otherwise; every word comes by here, so no stream. */
    private static boolean plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~' || c == '-') {
                return false;
            }
        }
        return true;
    }
}
