package coldseam.report.drawing;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * An upright rectangle, in points on a page or in metres in a section.
 *
 * @param x0 left
 * @param y0 bottom
 * @param x1 right
 * @param y1 top
 */
public record Box(double x0, double y0, double x1, double y1) {

    public double width() {
        return x1 - x0;
    }

    public double height() {
        return y1 - y0;
    }

    public double middleX() {
        return (x0 + x1) / 2;
    }

    public double middleY() {
        return (y0 + y1) / 2;
    }

    /** This grown on all four sides; shrunk where negative. */
    public Box grown(double by) {
        return new Box(x0 - by, y0 - by, x1 + by, y1 + by);
    }

    /** Whether a place lies in it or on its rim. */
    public boolean contains(double x, double y) {
        return x >= x0 && x <= x1 && y >= y0 && y <= y1;
    }

    /** What both share; may be empty, with crossed sides. */
    public Box cutWith(Box other) {
        return new Box(Math.max(x0, other.x0), Math.max(y0, other.y0), Math.min(x1, other.x1), Math.min(y1, other.y1));
    }

    /** The smallest box around both. */
    public Box joinedWith(Box other) {
        return new Box(Math.min(x0, other.x0), Math.min(y0, other.y0), Math.max(x1, other.x1), Math.max(y1, other.y1));
    }

    /** Whether it has neither width nor height. */
    public boolean empty() {
        return !(x1 > x0 && y1 > y0);
    }

    /** Whether both share an area. */
    public boolean overlaps(Box other) {
        return !cutWith(other).empty();
    }

    /** The ends of what of a straight line lies in it; empty where nothing does (Liang and Barsky 1984, from memory). */
    public ImmutableList<Spot> clipped(Spot from, Spot to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double[] steps = {-dx, dx, -dy, dy};
        double[] rooms = {from.x() - x0, x1 - from.x(), from.y() - y0, y1 - from.y()};
        double first = 0;
        double last = 1;
        for (int i = 0; i < 4; i++) {
            if (steps[i] < 0) {
                first = Math.max(first, rooms[i] / steps[i]);
            } else if (steps[i] > 0) {
                last = Math.min(last, rooms[i] / steps[i]);
            } else if (rooms[i] < 0) {
                return Lists.immutable.empty();
            }
        }
        return first > last
                ? Lists.immutable.empty()
                : Lists.immutable.of(from.plus(first * dx, first * dy), from.plus(last * dx, last * dy));
    }

    /** Its corners, anticlockwise from the lower left. */
    public ImmutableList<Spot> corners() {
        return Lists.immutable.of(new Spot(x0, y0), new Spot(x1, y0), new Spot(x1, y1), new Spot(x0, y1));
    }

    /** The box around places. */
    public static Box around(Iterable<Spot> spots) {
        double[] b = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        spots.forEach(s -> {
            b[0] = Math.min(b[0], s.x());
            b[1] = Math.min(b[1], s.y());
            b[2] = Math.max(b[2], s.x());
            b[3] = Math.max(b[3], s.y());
        });
        return new Box(b[0], b[1], b[2], b[3]);
    }
}
