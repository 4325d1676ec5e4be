package coldseam.envelope.shell.roof;

import coldseam.envelope.Point2;

/** Vectors in plan, m. */
final class PlanVectors {

    private PlanVectors() {}

    /** Of length 1, from one point towards another. */
    static Point2 unit(Point2 a, Point2 b) {
        double length = distance(a, b);
        return new Point2((b.x() - a.x()) / length, (b.y() - a.y()) / length);
    }

    static Point2 minus(Point2 a, Point2 b) {
        return new Point2(a.x() - b.x(), a.y() - b.y());
    }

    static double dot(Point2 a, Point2 b) {
        return a.x() * b.x() + a.y() * b.y();
    }

    static double distance(Point2 a, Point2 b) {
        return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    static double cross(Point2 a, Point2 b) {
        return a.x() * b.y() - a.y() * b.x();
    }
}
