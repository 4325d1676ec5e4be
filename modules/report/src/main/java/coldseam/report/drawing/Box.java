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
        return Math.min(x1, other.x1) > Math.max(x0, other.x0) && Math.min(y1, other.y1) > Math.max(y0, other.y0);
    }

    /** The ends of what of a straight line lies in it; empty where nothing does. */
    public ImmutableList<Spot> clipped(Spot from, Spot to) {
        if (!reaches(from, to, 0)) {
            return Lists.immutable.empty();
        }
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double first = share(from, to, 0, false);
        double last = share(from, to, 0, true);
        return Lists.immutable.of(from.plus(first * dx, first * dy), from.plus(last * dx, last * dy));
    }

    /** Whether something of a straight line lies in it, or no farther from it than some way off in each direction. */
    public boolean reaches(Spot from, Spot to, double off) {
        return share(from, to, off, false) <= share(from, to, off, true);
    }

    /**
     * Where, as a share of it, a straight line enters or leaves this grown on all sides (Liang and Barsky 1984, from memory); no number
     * where it runs beside. It makes no objects: labels ask it millions of times.
     */
    private double share(Spot from, Spot to, double off, boolean leaves) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double share = leaves ? 1 : 0;
        for (int i = 0; i < 4; i++) {
            double step = i == 0 ? -dx : i == 1 ? dx : i == 2 ? -dy : dy;
            double room = i == 0
                    ? from.x() - (x0 - off)
                    : i == 1 ? x1 + off - from.x() : i == 2 ? from.y() - (y0 - off) : y1 + off - from.y();
            if (step == 0 && room < 0) {
                return Double.NaN;
            }
            if (step < 0 && !leaves) {
                share = Math.max(share, room / step);
            } else if (step > 0 && leaves) {
                share = Math.min(share, room / step);
            }
        }
        return share;
    }

    /** Its corners, anticlockwise from the lower left. */
    public ImmutableList<Spot> corners() {
        return Lists.immutable.of(new Spot(x0, y0), new Spot(x1, y0), new Spot(x1, y1), new Spot(x0, y1));
    }

    /** The box about a place, so far to each side. */
    public static Box about(Spot middle, double aside, double up) {
        return new Box(middle.x() - aside, middle.y() - up, middle.x() + aside, middle.y() + up);
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
