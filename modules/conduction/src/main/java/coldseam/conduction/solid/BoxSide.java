package coldseam.conduction.solid;

import java.util.Locale;

/** A face of a box by its outward direction; the order is that of the sides of a grid's cell. */
public enum BoxSide {
    X0,
    X1,
    Y0,
    Y1,
    Z0,
    Z1;

    /** 0, 1 or 2 for x, y or z. */
    public int direction() {
        return ordinal() / 2;
    }

    /** Whether the face lies at the larger coordinate. */
    public boolean high() {
        return ordinal() % 2 == 1;
    }

    /** Where the face of a box lies on its axis. */
    public double of(Cuboid box) {
        return high() ? box.high(direction()) : box.low(direction());
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
