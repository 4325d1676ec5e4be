package coldseam.conduction;

/**
 * A point of a section's plane.
 *
 * @param x metres to the right; the radius in an axisymmetric section
 * @param y metres upwards; along the axis in an axisymmetric section
 */
public record Point(double x, double y) {

    /** m. */
    public double distance(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** m, to the nearest point of a segment. */
    public double distance(Point from, Point to) {
        double dx = to.x - from.x;
        double dy = to.y - from.y;
        double square = dx * dx + dy * dy;
        double along = square > 0 ? ((x - from.x) * dx + (y - from.y) * dy) / square : 0;
        double share = Math.max(0, Math.min(1, along));
        return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
    }

    /** Halfway. */
    public Point middle(Point other) {
        return new Point((x + other.x) / 2, (y + other.y) / 2);
    }

    /** For a message: in metres, to the micrometre. */
    public String text() {
        return "(" + Figures.number(x) + ", " + Figures.number(y) + ") m";
    }
}
