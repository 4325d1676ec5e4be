package coldseam.report.drawing;

/** Which part of a text stands at its place. */
public enum Align {
    LEFT,
    CENTRE,
    RIGHT
}
