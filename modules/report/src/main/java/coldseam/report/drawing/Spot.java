package coldseam.report.drawing;

/**
 * A place on a page or picture.
 *
 * @param x points to the right
 * @param y points upwards
 */
public record Spot(double x, double y) {

    /** This moved. */
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    /** Points between this and the other. */
    public double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
