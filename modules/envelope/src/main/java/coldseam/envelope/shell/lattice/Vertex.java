package coldseam.envelope.shell.lattice;

import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import java.util.Comparator;

/**
 * A corner of the outer shell on the lattice of a micrometre.
 *
 * <p>Whole numbers, so that two corners are the same or they are not, and area vectors add up without round-off. A house
 * file reaches 1,000 m either way, 2·10⁹ units: the product of two differences stays below 4·10¹⁸ and the cross product of
 * two below 8·10¹⁸, which a long holds; sums that pass its end come back as long as the result fits.
 */
public record Vertex(long x, long y, long z) implements Comparable<Vertex> {

    /** Lattice units per metre. */
    public static final double PER_METRE = 1_000_000;

    /** Units within which things were meant to be one: 0.1 mm, less than anyone builds to. */
    public static final long ONE = 100;

    private static final Comparator<Vertex> ORDER =
            Comparator.comparingLong(Vertex::z).thenComparingLong(Vertex::y).thenComparingLong(Vertex::x);

    public static long units(double metres) {
        return Math.round(metres * PER_METRE);
    }

    /** A height: storeys stand on a lattice of 0.1 mm, so that levels that were meant to be one are. */
    public static long height(double metres) {
        return ONE * Math.round(metres * (PER_METRE / ONE));
    }

    public static double metres(long units) {
        return units / PER_METRE;
    }

    public static Vertex of(Point3 point) {
        return new Vertex(units(point.x()), units(point.y()), units(point.z()));
    }

    public static Vertex inPlan(Point2 point) {
        return new Vertex(units(point.x()), units(point.y()), 0);
    }

    /** A corner that was measured by itself: on the lattice of 0.1 mm, where those that were meant to be one are. */
    public static Vertex measured(Point3 point) {
        return new Vertex(height(point.x()), height(point.y()), height(point.z()));
    }

    public Point3 point() {
        return new Point3(metres(x), metres(y), metres(z));
    }

    public Vertex at(long height) {
        return new Vertex(x, y, height);
    }

    /** The point of the plan at a share of the way to another. */
    public Vertex toward(Vertex to, double share) {
        return new Vertex(Math.round(x + share * (to.x - x)), Math.round(y + share * (to.y - y)), 0);
    }

    public Vertex minus(Vertex other) {
        return new Vertex(x - other.x, y - other.y, z - other.z);
    }

    public Vertex plus(Vertex other) {
        return new Vertex(x + other.x, y + other.y, z + other.z);
    }

    public Vertex cross(Vertex other) {
        return new Vertex(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double dot(Vertex other) {
        return (double) x * other.x + (double) y * other.y + (double) z * other.z;
    }

    /** Whether the way from here over one point to another goes straight on there: rounding puts a corner up to twice the reach off. */
    public boolean goesStraight(Vertex over, Vertex to) {
        Vertex one = over.minus(this);
        Vertex two = to.minus(over);
        return one.dot(two) > 0 && one.cross(two).length() <= 2 * ONE * Math.max(one.length(), two.length());
    }

    /** Length in lattice units. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    @Override
    public int compareTo(Vertex other) {
        return ORDER.compare(this, other);
    }
}
