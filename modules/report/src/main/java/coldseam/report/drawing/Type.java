package coldseam.report.drawing;

/**
 * How text is set.
 *
 * @param face cut
 * @param size points
 * @param ink colour
 */
public record Type(Face face, double size, Ink ink) {

    /** Upright, in the text colour. */
    public static Type of(double size) {
        return new Type(Face.REGULAR, size, Palette.INK);
    }

    public Type with(Face other) {
        return new Type(other, size, ink);
    }

    public Type with(Ink other) {
        return new Type(face, size, other);
    }

    public Type sized(double other) {
        return new Type(face, other, ink);
    }
}
