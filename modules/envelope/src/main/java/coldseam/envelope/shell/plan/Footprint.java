package coldseam.envelope.shell.plan;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Layer;
import coldseam.envelope.Point2;
import coldseam.envelope.Role;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * A storey's footprint with each side moved by its own distance.
 *
 * @param corners counterclockwise, m
 * @param sides for each corner, the storey's side that starts there, or −1 − i where side i and the one before it lie in one
 *     line, were moved by different distances, and a jog joins them
 */
public record Footprint(ImmutableList<Point2> corners, ImmutableList<Integer> sides) {

    /** Sine of the angle below which two neighbouring sides count as one line. */
    private static final double IN_LINE = 0.01;

    /** m, distances that differ by less leave no jog. */
    private static final double SAME = 1e-4;

    /** From the inner face through the last structure layer, m; zero without one. */
    static double throughStructure(Optional<Assembly> assembly) {
        if (assembly.isEmpty()) {
            return 0;
        }
        double sum = 0;
        double reached = 0;
        for (Layer layer : assembly.get().layers()) {
            sum += layer.thickness();
            if (layer.role() == Role.STRUCTURE) {
                reached = sum;
            }
        }
        return reached;
    }

    /** From the outer face of the outermost structure to that of the whole, m. */
    public static double beyondStructure(Optional<Assembly> assembly) {
        return thickness(assembly) - throughStructure(assembly);
    }

    public static double thickness(Optional<Assembly> assembly) {
        return assembly.map(Assembly::thickness).orElse(0.0);
    }

    /** From the footprint's line outwards to the outer face of a wall, m. */
    public static double outward(Body.FootprintLine line, Optional<Assembly> assembly) {
        return switch (line) {
            case INNER_FACE -> thickness(assembly);
            case STRUCTURE -> beyondStructure(assembly);
            case OUTER_FACE -> 0;
        };
    }

    /**
     * Moves each side outwards (inwards where negative) and intersects neighbours.
     *
     * @param corners counterclockwise
     * @param distances m, one for each side
     */
    public static Footprint moved(ImmutableList<Point2> corners, ImmutableList<Double> distances) {
        int n = corners.size();
        MutableList<Point2> points = Lists.mutable.empty();
        MutableList<Integer> sides = Lists.mutable.empty();
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            Point2 corner = corners.get(i);
            Point2 in = unit(corners.get(before), corner);
            Point2 out = unit(corner, corners.get((i + 1) % n));
            double a = distances.get(before);
            double b = distances.get(i);
            double sine = in.x() * out.y() - in.y() * out.x();
            double cosine = in.x() * out.x() + in.y() * out.y();
            if (Math.abs(sine) < IN_LINE && cosine > 0) {
                points.add(beside(corner, in, a));
                if (Math.abs(a - b) < SAME) {
                    sides.add(i);
                } else {
                    sides.add(-1 - i);
                    points.add(beside(corner, out, b));
                    sides.add(i);
                }
            } else {
                // On both moved lines: offset o with o·nIn = a and o·nOut = b, the normals pointing out.
                double along = (b - a * cosine) / sine;
                points.add(
                        new Point2(corner.x() + a * in.y() + along * in.x(), corner.y() - a * in.x() + along * in.y()));
                sides.add(i);
            }
        }
        return new Footprint(points.toImmutable(), sides.toImmutable());
    }

    private static Point2 beside(Point2 corner, Point2 along, double distance) {
        return new Point2(corner.x() + distance * along.y(), corner.y() - distance * along.x());
    }

    private static Point2 unit(Point2 a, Point2 b) {
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        return new Point2((b.x() - a.x()) / length, (b.y() - a.y()) / length);
    }

    /** Whether some side runs backwards after moving: its neighbours met before it. */
    public boolean turnsBack(ImmutableList<Point2> original) {
        for (int i = 0; i < corners.size(); i++) {
            int side = sides.get(i);
            if (side >= 0) {
                Point2 along = unit(original.get(side), original.get((side + 1) % original.size()));
                Point2 a = corners.get(i);
                Point2 b = corners.get((i + 1) % corners.size());
                if ((b.x() - a.x()) * along.x() + (b.y() - a.y()) * along.y() <= 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** m², positive where counterclockwise. */
    public double area() {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point2 a = corners.get(i);
            Point2 b = corners.get((i + 1) % corners.size());
            sum += a.x() * b.y() - a.y() * b.x();
        }
        return sum / 2;
    }
}
