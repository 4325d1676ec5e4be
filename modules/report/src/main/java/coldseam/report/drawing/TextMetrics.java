package coldseam.report.drawing;

/** Widths of text in the report's typeface. */
public interface TextMetrics {

    /** The width of a text, points. */
    double width(String text, Type type);

    /** The text as it can be set: composed, without control characters, what the typeface lacks replaced by "?". */
    String settable(String text);
}
