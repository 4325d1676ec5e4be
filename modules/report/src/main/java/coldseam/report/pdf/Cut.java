package coldseam.report.pdf;

import coldseam.report.drawing.Type;

/** Text cut to a width, with an ellipsis. */
public final class Cut {

    private Cut() {}

    /** The text, or its beginning with an ellipsis where it is wider. */
    public static String to(double width, String text, Type type) {
        if (FontMetrics.shared().width(text, type) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && FontMetrics.shared().width(text.substring(0, end).strip() + "…", type) > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).strip() + "…";
    }
}
