package coldseam.report.drawing;

/** The cuts of the report's typeface. */
public enum Face {
    REGULAR,
    SEMIBOLD,
    ITALIC
}
