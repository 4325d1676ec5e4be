package coldseam.envelope.shell;

import coldseam.envelope.Point3;
import java.util.Comparator;

/**
 * A corner of the outer shell on the lattice of 0.1 mm.
 *
 * <p>Whole numbers, so that two corners are the same or they are not, and area vectors add up without round-off. A house
 * of 100 m is 10⁶ units wide; products of two differences stay below 10¹³ and sums of thousands of them fit a long.
 */
record Vertex(long x, long y, long z) implements Comparable<Vertex> {

    /** Lattice units per metre. */
    static final double PER_METRE = 10_000;

    private static final Comparator<Vertex> ORDER =
            Comparator.comparingLong(Vertex::z).thenComparingLong(Vertex::y).thenComparingLong(Vertex::x);

    static long units(double metres) {
        return Math.round(metres * PER_METRE);
    }

    static double metres(long units) {
        return units / PER_METRE;
    }

    static Vertex of(Point3 point) {
        return new Vertex(units(point.x()), units(point.y()), units(point.z()));
    }

    Point3 point() {
        return new Point3(metres(x), metres(y), metres(z));
    }

    Vertex at(long height) {
        return new Vertex(x, y, height);
    }

    Vertex minus(Vertex other) {
        return new Vertex(x - other.x, y - other.y, z - other.z);
    }

    Vertex plus(Vertex other) {
        return new Vertex(x + other.x, y + other.y, z + other.z);
    }

    Vertex cross(Vertex other) {
        return new Vertex(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    double dot(Vertex other) {
        return (double) x * other.x + (double) y * other.y + (double) z * other.z;
    }

    /** Length in lattice units. */
    double length() {
        return Math.sqrt(dot(this));
    }

    @Override
    public int compareTo(Vertex other) {
        return ORDER.compare(this, other);
    }
}
