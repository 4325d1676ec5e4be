package coldseam.junctions.kind;

import coldseam.conduction.Point;
import coldseam.envelope.KindForm;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * From the two lines of a detail file to the section's plane.
 *
 * <p>Band k has a direction {@code run(k)}, pointing away from the junction along it, and an outward normal. The inner
 * faces meet at the origin. In a crossing, (s, t) is the place at distance s outside the first band's inner face and t
 * outside the second's. End to end, s is the distance outside the first band's inner face, in whose plane the second's lies
 * but where both go straight on and step, and t that along the seam's middle line: negative in the first band, positive in the
 * second; lines of equal t are parallel to the mitre.
 *
 * @param crossing whether the bands cross
 * @param firstRun unit vector along the first band
 * @param firstNormal unit vector out of it
 * @param secondRun unit vector along the second band
 * @param secondNormal unit vector out of it
 */
public record Chart(boolean crossing, Vector firstRun, Vector firstNormal, Vector secondRun, Vector secondNormal) {

    /**
     * The chart of a kind.
     *
     * @param angle degrees between the surfaces, measured indoors; 90 where the kind has one surface
     */
    public static Chart of(KindForm form, double angle) {
        double first = switch (form.page()) {
            // A floor on the ground lies level, whatever comes down on it.
            case SECOND_UP -> form.ground() ? 180 : 90 + angle;
            case SECOND_DOWN -> 270 - angle;
            case FIRST_DOWN -> 270;
            case FIRST_UP -> 90;
            case FIRST_LEFT -> 180;
            case FIRST_RIGHT -> 0;
            case SECOND_RIGHT -> 360 - angle;
            case ASTRIDE -> 270 - angle / 2;
        };
        int turn = switch (form.page()) {
            case SECOND_UP, FIRST_DOWN -> -1;
            case SECOND_DOWN, FIRST_UP, FIRST_LEFT, FIRST_RIGHT, SECOND_RIGHT, ASTRIDE -> 1;
        };
        double second = first + turn * angle;
        return new Chart(
                form.meeting() == KindForm.Meeting.CROSSING,
                Vector.towards(first),
                Vector.towards(first - turn * 90),
                Vector.towards(second),
                Vector.towards(second + turn * 90));
    }

    /** Along a band, away from the junction. */
    public Vector run(boolean first) {
        return first ? firstRun : secondRun;
    }

    /** Out of a band. */
    public Vector normal(boolean first) {
        return first ? firstNormal : secondNormal;
    }

    /** Whether the rooms fill less than half the section: an outer corner. */
    public boolean convex() {
        return !crossing || firstRun.dot(secondNormal) < 0;
    }

    /** The place (s, t); end to end, on the mitre or in the band that t says. */
    public Point at(double s, double t) {
        if (crossing) {
            double sine = firstNormal.cross(secondNormal);
            return new Vector(
                            (s * secondNormal.y() - t * firstNormal.y()) / sine,
                            (t * firstNormal.x() - s * secondNormal.x()) / sine)
                    .point();
        }
        Vector middle = mitre().times(s);
        return middle.plus(t <= 0 ? firstRun.times(-t) : secondRun.times(t)).point();
    }

    /** The place at distance s outside a band's inner face and {@code along} away from the junction; either sign. */
    public Point beside(boolean first, double s, double along) {
        return normal(first).times(s).plus(run(first).times(along)).point();
    }

    /** How far a place lies along a band, away from the junction. */
    public double along(boolean first, Point place) {
        return run(first).dot(place);
    }

    /** How far a place lies outside a band's inner face. */
    public double across(boolean first, Point place) {
        return normal(first).dot(place);
    }

    /** Where the planes at these distances outside the inner faces meet. */
    public Point corner(double first, double second) {
        double sine = firstNormal.cross(secondNormal);
        if (Math.abs(sine) < 1e-9) {
            return firstNormal.times(first).point();
        }
        return new Vector(
                        (first * secondNormal.y() - second * firstNormal.y()) / sine,
                        (second * firstNormal.x() - first * secondNormal.x()) / sine)
                .point();
    }

    /** The distance along the band that the mitre gains for each metre across, end to end; zero where straight. */
    public double bend() {
        return crossing ? 0 : mitre().dot(firstRun);
    }

    /**
     * What a way square out of the second band gains across the first for each metre: by it a drawing keeps level what stands
     * off an upright wall. From -1 to 1; zero at a right angle.
     */
    public double lean() {
        return firstNormal.dot(secondNormal);
    }

    private Vector mitre() {
        Vector sum = firstNormal.plus(secondNormal);
        return sum.times(1 / (1 + firstNormal.dot(secondNormal)));
    }

    /** The outline's corners in the plane, with more corners where an edge bends at the seam. */
    public ImmutableList<Point> outline(ImmutableList<Place> places) {
        ImmutableList<Point> closed = path(places.newWith(places.getFirst()));
        return closed.take(closed.size() - 1);
    }

    /** A way's corners in the plane, with more corners where it bends at the seam. */
    public ImmutableList<Point> path(ImmutableList<Place> places) {
        MutableList<Point> points = Lists.mutable.of(places.getFirst().in(this));
        for (int i = 1; i < places.size(); i++) {
            Place from = places.get(i - 1);
            Place to = places.get(i);
            if (!crossing && from.t() * to.t() < 0) {
                double share = from.t() / (from.t() - to.t());
                points.add(at(from.s() + share * (to.s() - from.s()), 0));
            }
            points.add(to.in(this));
        }
        return points.toImmutable();
    }

    /**
     * A corner of a piece: a place of the chart, or, where a cut is given, a place on a cut.
     *
     * @param s across the first band, m
     * @param t across the second band or along, m
     * @param cut the cut it lies on; null inside
     * @param distance of the cut from the junction, m
     */
    public record Place(double s, double t, Cut cut, double distance) {

        public static Place inside(double s, double t) {
            return new Place(s, t, null, 0);
        }

        public Point in(Chart chart) {
            if (cut == null) {
                return chart.at(s, t);
            }
            double across = chart.crossing && !cut.ofFirst() ? t : s;
            return chart.beside(cut.ofFirst(), across, cut.sign() * distance);
        }
    }

    /** The ends of a section. */
    public enum Cut {
        /** Across the first band, away from the junction. */
        FIRST_AWAY(true, 1),
        /** Across what goes on in the first band's plane on the other side. */
        FIRST_BEYOND(true, -1),
        /** Across the second band, away from the junction. */
        SECOND_AWAY(false, 1),
        /** Across what goes on in the second band's plane on the other side. */
        SECOND_BEYOND(false, -1);

        private final boolean ofFirst;
        private final int sign;

        Cut(boolean ofFirst, int sign) {
            this.ofFirst = ofFirst;
            this.sign = sign;
        }

        public boolean ofFirst() {
            return ofFirst;
        }

        public int sign() {
            return sign;
        }
    }
}
