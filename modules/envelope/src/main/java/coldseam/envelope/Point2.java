package coldseam.envelope;

/**
 * A point in plan.
 *
 * @param x m, east
 * @param y m, north
 */
public record Point2(double x, double y) {}
