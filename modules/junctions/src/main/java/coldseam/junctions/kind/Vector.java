package coldseam.junctions.kind;

import coldseam.conduction.Point;

/**
 * A direction or displacement in a section's plane.
 *
 * @param x m to the right
 * @param y m upwards
 */
public record Vector(double x, double y) {

    /** The unit vector at an angle, degrees anticlockwise from the right; exact for right angles. */
    static Vector towards(double degrees) {
        double turned = degrees - 360 * Math.floor(degrees / 360);
        if (turned == 0) {
            return new Vector(1, 0);
        } else if (turned == 90) {
            return new Vector(0, 1);
        } else if (turned == 180) {
            return new Vector(-1, 0);
        } else if (turned == 270) {
            return new Vector(0, -1);
        }
        return new Vector(Math.cos(Math.toRadians(turned)), Math.sin(Math.toRadians(turned)));
    }

    /** The way from one place to another. */
    public static Vector between(Point from, Point to) {
        return new Vector(to.x() - from.x(), to.y() - from.y());
    }

    /** m. */
    public double length() {
        return Math.hypot(x, y);
    }

    /** A quarter turn to the left. */
    public Vector left() {
        return new Vector(-y, x);
    }

    /** Where one arrives from a place. */
    public Point from(Point place) {
        return new Point(place.x() + x, place.y() + y);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y;
    }

    public double dot(Point point) {
        return x * point.x() + y * point.y();
    }

    public double cross(Vector other) {
        return x * other.y - y * other.x;
    }

    public Vector times(double factor) {
        return new Vector(factor * x, factor * y);
    }

    Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y);
    }

    Point point() {
        // Adding zero turns -0.0 into 0.0, so that equal places have equal records.
        return new Point(x + 0.0, y + 0.0);
    }
}
