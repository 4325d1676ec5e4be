package coldseam.conduction;

/**
 * A point of a section's plane.
 *
 * @param x metres to the right; the radius in an axisymmetric section
 * @param y metres upwards; along the axis in an axisymmetric section
 */
public record Point(double x, double y) {

    /** For a message: in metres, to the micrometre. */
    public String text() {
        return "(" + Figures.number(x) + ", " + Figures.number(y) + ") m";
    }
}
