package coldseam.envelope;

import java.util.Locale;

/** Eight ways, clockwise from north. */
public enum Compass {
    NORTH,
    NORTH_EAST,
    EAST,
    SOUTH_EAST,
    SOUTH,
    SOUTH_WEST,
    WEST,
    NORTH_WEST;

    /** The nearest to a direction in plan: x points east, y north. */
    public static Compass of(double x, double y) {
        // Clockwise from north, as a compass counts; what lies halfway goes on to the next, whatever round-off says.
        double bearing = Math.toDegrees(Math.atan2(x, y));
        return values()[(int) Math.floorMod(Math.round(bearing / 45 + 1e-9), 8L)];
    }

    /** The other way. */
    public Compass opposite() {
        return values()[(ordinal() + 4) % 8];
    }

    /** Such as north-east. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
