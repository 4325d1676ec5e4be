package coldseam.envelope;

import org.eclipse.collections.api.list.ImmutableList;

/** Vector arithmetic on points in space. */
public final class Vectors {

    /** Degrees between surfaces that go on from one another in one plane. */
    public static final double STRAIGHT = 180;

    public static final Point3 UP = new Point3(0, 0, 1);
    public static final Point3 ZERO = new Point3(0, 0, 0);

    private Vectors() {}

    public static Point3 plus(Point3 a, Point3 b) {
        return new Point3(a.x() + b.x(), a.y() + b.y(), a.z() + b.z());
    }

    public static Point3 minus(Point3 a, Point3 b) {
        return new Point3(a.x() - b.x(), a.y() - b.y(), a.z() - b.z());
    }

    public static Point3 times(Point3 a, double factor) {
        return new Point3(a.x() * factor, a.y() * factor, a.z() * factor);
    }

    public static double dot(Point3 a, Point3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    public static Point3 cross(Point3 a, Point3 b) {
        return new Point3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }

    public static double length(Point3 a) {
        return Math.sqrt(dot(a, a));
    }

    /** The unit vector along a; zero for zero. */
    public static Point3 unit(Point3 a) {
        double length = length(a);
        return length == 0 ? ZERO : times(a, 1 / length);
    }

    /** Half the sum of cross products: the area vector of a closed outline, m². */
    public static Point3 areaVector(ImmutableList<Point3> outline) {
        Point3 origin = outline.get(0);
        Point3 sum = ZERO;
        for (int i = 1; i + 1 < outline.size(); i++) {
            sum = plus(sum, cross(minus(outline.get(i), origin), minus(outline.get(i + 1), origin)));
        }
        return times(sum, 0.5);
    }

    public static Point3 mean(ImmutableList<Point3> points) {
        Point3 sum = points.injectInto(ZERO, Vectors::plus);
        return times(sum, 1.0 / points.size());
    }
}
