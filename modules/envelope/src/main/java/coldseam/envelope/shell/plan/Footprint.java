package coldseam.envelope.shell.plan;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Layer;
import coldseam.envelope.Point2;
import coldseam.envelope.Role;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.collections.api.block.function.Function;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * A storey's outline and those of its courts, each side moved by its own distance.
 *
 * @param corners m, of all outlines, one outline after the other: counterclockwise around the storey, clockwise around a court
 * @param lines for each corner, what starts there
 * @param next for each corner, the one at the end of the side or jog that starts there
 */
public record Footprint(ImmutableList<Point2> corners, ImmutableList<Line> lines, ImmutableList<Integer> next) {

    /**
     * A side of the storey, or a jog to it: where it and the one before it lie in one line and were moved by different distances.
     *
     * @param side its number
     */
    public record Line(int side, boolean jog) {}

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
     * Outlines where they are, side i from corner i on.
     *
     * @param outlines the storey's counterclockwise, then its courts' clockwise
     */
    public static Footprint of(ImmutableList<ImmutableList<Point2>> outlines) {
        MutableList<Integer> next = Lists.mutable.empty();
        outlines.forEach(outline -> {
            int first = next.size();
            outline.forEachWithIndex((corner, i) -> next.add(first + (i + 1) % outline.size()));
        });
        ImmutableList<Point2> corners = outlines.flatCollect(outline -> outline);
        return new Footprint(corners, corners.collectWithIndex((corner, i) -> new Line(i, false)), next.toImmutable());
    }

    /** The corner at the end of the side or jog that starts at a corner. */
    public Point2 end(int corner) {
        return corners.get(next.get(corner));
    }

    /** The corner at which a side starts; −1 where it is none of these outlines'. */
    public int start(int side) {
        return lines.indexOf(new Line(side, false));
    }

    /** The corners at which sides start; at the others jogs do. */
    public ImmutableList<Integer> starts() {
        return Lists.immutable.fromStream(IntStream.range(0, lines.size())
                .filter(corner -> !lines.get(corner).jog())
                .boxed());
    }

    /** The number of the side that starts at a corner, or to which a jog leads from there. */
    public int side(int corner) {
        return lines.get(corner).side();
    }

    /** Corners of each outline by their indices, the storey's first. */
    public ImmutableList<ImmutableList<Integer>> rings() {
        MutableList<ImmutableList<Integer>> rings = Lists.mutable.empty();
        int first = 0;
        for (int i = 0; i < corners.size(); i++) {
            if (next.get(i) <= i) {
                rings.add(Lists.immutable.fromStream(
                        IntStream.rangeClosed(first, i).boxed()));
                first = i + 1;
            }
        }
        return rings.toImmutable();
    }

    /**
     * Moves each side outwards (inwards where negative) and intersects neighbours.
     *
     * @param distances m, one for each side
     */
    public Footprint moved(ImmutableList<Double> distances) {
        MutableList<Point2> points = Lists.mutable.empty();
        MutableList<Line> moved = Lists.mutable.empty();
        MutableList<Integer> ends = Lists.mutable.empty();
        for (ImmutableList<Integer> ring : rings()) {
            int first = points.size();
            for (int i : ring.castToList()) {
                move(i == ring.getFirst() ? ring.getLast() : i - 1, i, distances, points, moved);
            }
            for (int i = first; i < points.size(); i++) {
                ends.add(i + 1 < points.size() ? i + 1 : first);
            }
        }
        return new Footprint(points.toImmutable(), moved.toImmutable(), ends.toImmutable());
    }

    private void move(
            int before, int i, ImmutableList<Double> distances, MutableList<Point2> points, MutableList<Line> moved) {
        Point2 corner = corners.get(i);
        Point2 in = unit(corners.get(before), corner);
        Point2 out = unit(corner, end(i));
        double a = distances.get(before);
        double b = distances.get(i);
        double sine = in.x() * out.y() - in.y() * out.x();
        double cosine = in.x() * out.x() + in.y() * out.y();
        if (Math.abs(sine) < IN_LINE && cosine > 0) {
            points.add(beside(corner, in, a));
            if (Math.abs(a - b) >= SAME) {
                moved.add(new Line(i, true));
                points.add(beside(corner, out, b));
            }
        } else {
            // On both moved lines: offset o with o·nIn = a and o·nOut = b, the normals pointing out.
            double along = (b - a * cosine) / sine;
            points.add(new Point2(corner.x() + a * in.y() + along * in.x(), corner.y() - a * in.x() + along * in.y()));
        }
        moved.add(new Line(i, false));
    }

    private static Point2 beside(Point2 corner, Point2 along, double distance) {
        return new Point2(corner.x() + distance * along.y(), corner.y() - distance * along.x());
    }

    private static Point2 unit(Point2 a, Point2 b) {
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        return new Point2((b.x() - a.x()) / length, (b.y() - a.y()) / length);
    }

    /** Whether some side runs backwards after moving: its neighbours met before it. */
    public boolean turnsBack(Footprint original) {
        return starts().anySatisfy(i -> {
            Point2 along = unit(original.corners.get(side(i)), original.end(side(i)));
            Point2 a = corners.get(i);
            Point2 b = end(i);
            return (b.x() - a.x()) * along.x() + (b.y() - a.y()) * along.y() <= 0;
        });
    }

    /** Whether a side of this one and a side of another lie in one line for some way, the room on one hand. */
    public boolean runsAlong(int side, Footprint other, int otherSide) {
        LineSegment own = line(side);
        LineSegment theirs = other.line(otherSide);
        double from = Math.max(0, own.projectionFactor(theirs.p0));
        double to = Math.min(1, own.projectionFactor(theirs.p1));
        return Math.max(own.distancePerpendicular(theirs.p0), own.distancePerpendicular(theirs.p1)) < SAME
                && (to - from) * own.getLength() > SAME;
    }

    /** In plan, m, from the corner at which a side starts to its end. */
    public LineSegment line(int corner) {
        return new LineSegment(coordinate(corners.get(corner)), coordinate(end(corner)));
    }

    private static Coordinate coordinate(Point2 point) {
        return new Coordinate(point.x(), point.y());
    }

    /** m², without the courts. */
    public double area() {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point2 a = corners.get(i);
            Point2 b = end(i);
            sum += a.x() * b.y() - a.y() * b.x();
        }
        return sum / 2;
    }

    /** In plan, m, without the courts. */
    public Polygon polygon() {
        return polygon(Plan.IN_METRES, Footprint::coordinate);
    }

    /** The same on the lattice. */
    public Polygon onLattice() {
        return polygon(Plan.GEOMETRY, corner -> {
            Vertex vertex = Vertex.inPlan(corner);
            return new Coordinate(vertex.x(), vertex.y());
        });
    }

    private Polygon polygon(GeometryFactory factory, Function<Point2, Coordinate> place) {
        ImmutableList<LinearRing> closed = rings().collect(
                        ring -> factory.createLinearRing(ring.newWith(ring.getFirst())
                                .collect(corners::get)
                                .collect(place)
                                .toArray(new Coordinate[0])));
        return factory.createPolygon(closed.getFirst(), closed.drop(1).toArray(new LinearRing[0]));
    }
}
