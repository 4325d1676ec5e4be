package coldseam.envelope;

/**
 * A point in space.
 *
 * @param x m, east
 * @param y m, north
 * @param z m, up
 */
public record Point3(double x, double y, double z) {}
