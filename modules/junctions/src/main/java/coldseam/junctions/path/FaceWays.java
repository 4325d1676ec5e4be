package coldseam.junctions.path;

import coldseam.conduction.Point;
import coldseam.junctions.plan.SectionEnd;
import coldseam.junctions.section.Shapes;
import java.util.Collections;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Ways along the faces of something thick, for drawing: what is sealed, coated or lapped is a face; a line that crosses a slab
 * or a board aslant would lie where nobody can build it.
 */
final class FaceWays {

    /** m; a line that stays so near the outline needs no other. */
    private static final double NEAR = 0.008;

    /** What a way along the outline may be longer than the taut one: two sides of a rectangle are at most 1.42 of it. */
    private static final double LONGER = 1.5;

    /** m; what is this near lies on the outline. */
    private static final double ON = 1e-5;

    private FaceWays() {}

    /**
     * The way along an area's outline between the ends of a taut line through it, or where that is far round, straight across and
     * then along it; none where the taut line is as good.
     *
     * @param ends of the section, along which no way is drawn: it begins beside them
     * @param wrong whether a place lies on the side on which this line should rather not run
     */
    static Optional<ImmutableList<Point>> along(
            Geometry area, ImmutableList<Point> taut, ImmutableList<SectionEnd> ends, Predicate<Point> wrong) {
        if (!(area instanceof Polygon polygon) || polygon.isEmpty() || taut.size() < 2) {
            return Optional.empty();
        }
        LineString ring = polygon.getExteriorRing();
        LineString line = Shapes.line(taut);
        if (line.getLength() < NEAR
                || ring.distance(line.getStartPoint()) > ON
                || ring.distance(line.getEndPoint()) > ON
                || staysNear(ring, taut) && ring.buffer(NEAR).covers(line)) {
            return Optional.empty();
        }
        LengthIndexedLine places = new LengthIndexedLine(ring);
        double from = places.project(line.getStartPoint().getCoordinate());
        double to = places.project(line.getEndPoint().getCoordinate());
        ImmutableList<ImmutableList<Point>> both = Lists.immutable
                .of(forward(places, from, to), forward(places, to, from).toReversed())
                .collect(way -> beside(way, ends));
        return both.select(way -> way.size() > 1 && Shapes.line(way).getLength() <= LONGER * line.getLength())
                .toSortedListBy(way -> Shapes.line(way).getLength() + (wrong.test(middle(way)) ? ring.getLength() : 0))
                .getFirstOptional()
                .or(() -> straightAcross(polygon, taut.getFirst(), taut.getLast()))
                .or(() ->
                        straightAcross(polygon, taut.getLast(), taut.getFirst()).map(ImmutableList::toReversed));
    }

    /** Whether the middle of each piece is near: quick to say, and most lines that are not good show by it. */
    private static boolean staysNear(LineString ring, ImmutableList<Point> line) {
        for (int i = 1; i < line.size(); i++) {
            if (ring.distance(Shapes.FACTORY.createPoint(
                            Shapes.coordinate(line.get(i - 1).middle(line.get(i)))))
                    > NEAR + ON) {
                return false;
            }
        }
        return true;
    }

    /** Straight through to the side on which the other place lies, and along it. */
    private static Optional<ImmutableList<Point>> straightAcross(Polygon area, Point from, Point to) {
        Coordinate[] ring = area.getExteriorRing().getCoordinates();
        for (int i = 1; i < ring.length; i++) {
            LineSegment side = new LineSegment(ring[i - 1], ring[i]);
            if (side.distance(Shapes.coordinate(to)) < ON) {
                // A side of the thing may be of several pieces, as what lies against it changes.
                ImmutableList<Point> way = Lists.immutable.of(
                        from, Shapes.point(side.pointAlong(side.projectionFactor(Shapes.coordinate(from)))), to);
                if (area.buffer(ON).covers(Shapes.line(way))) {
                    return Optional.of(way);
                }
            }
        }
        return Optional.empty();
    }

    /** Round the ring in its own sense, over its first corner where that lies between. */
    private static ImmutableList<Point> forward(LengthIndexedLine ring, double from, double to) {
        MutableList<Coordinate> way = Lists.mutable.empty();
        if (from > to) {
            Collections.addAll(way, ring.extractLine(from, ring.getEndIndex()).getCoordinates());
        }
        Collections.addAll(
                way,
                ring.extractLine(from > to ? ring.getStartIndex() : from, to).getCoordinates());
        return way.collect(Shapes::point).distinct().toImmutable();
    }

    /** Without what runs along the section's ends at its beginning and its end. */
    private static ImmutableList<Point> beside(ImmutableList<Point> way, ImmutableList<SectionEnd> ends) {
        MutableList<Point> left = Lists.mutable.withAll(way);
        while (left.size() > 1 && onEnd(ends, left.get(0), left.get(1))) {
            left.remove(0);
        }
        while (left.size() > 1 && onEnd(ends, left.get(left.size() - 2), left.getLast())) {
            left.remove(left.size() - 1);
        }
        return left.toImmutable();
    }

    private static boolean onEnd(ImmutableList<SectionEnd> ends, Point a, Point b) {
        return ends.anySatisfy(end -> end.aligned(a) && end.aligned(b));
    }

    private static Point middle(ImmutableList<Point> way) {
        LengthIndexedLine line = new LengthIndexedLine(Shapes.line(way));
        return Shapes.point(line.extractPoint(line.getEndIndex() / 2));
    }
}
