package coldseam.conduction.solid;

import java.util.stream.IntStream;

/**
 * A box with faces at right angles to the axes, from one corner to the opposite one; m.
 *
 * @param from the corner of the smaller coordinates
 * @param to the corner of the larger ones
 */
public record Cuboid(Place from, Place to) {

    /** The box between two opposite corners, in whatever order their coordinates come. */
    public static Cuboid of(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Cuboid(
                new Place(Math.min(x0, x1), Math.min(y0, y1), Math.min(z0, z1)),
                new Place(Math.max(x0, x1), Math.max(y0, y1), Math.max(z0, z1)));
    }

    /** The smaller coordinate in a direction: 0, 1 or 2 for x, y or z. */
    public double low(int direction) {
        return from.along(direction);
    }

    /** The larger coordinate in a direction. */
    public double high(int direction) {
        return to.along(direction);
    }

    /** The length in a direction. */
    public double size(int direction) {
        return high(direction) - low(direction);
    }

    /** Whether another lies in it as a whole. */
    public boolean covers(Cuboid other) {
        return IntStream.range(0, 3).allMatch(d -> low(d) <= other.low(d) && high(d) >= other.high(d));
    }
}
