package coldseam.envelope.file.house;

import coldseam.envelope.Compass;
import coldseam.envelope.Point2;
import coldseam.files.BadValueException;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import org.eclipse.collections.api.list.ImmutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** An outline in plan: its checks, its turning sense and its sides. */
final class Outline {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Corners closer than this, m, are one corner; no wall is a centimetre long. */
    private static final double SAME = 0.01;

    private Outline() {}

    /** Refuses an outline that crosses or touches itself, or has two corners in one place. */
    static void check(ImmutableList<FileFootprint.FilePoint2> points) {
        for (int i = 0; i < points.size(); i++) {
            var here = points.get(i);
            var next = points.get((i + 1) % points.size());
            if (Math.hypot(here.x() - next.x(), here.y() - next.y()) < SAME) {
                throw new BadValueException(
                        next.place(),
                        "each corner of a footprint needs a place of its own",
                        shown(next.x(), next.y()),
                        Phrase.of("at least ").and(SAME, Dimension.LENGTH).and(" from the corner before it"),
                        "remove it; the outline closes by itself");
            }
        }
        Polygon polygon = polygon(points.collect(each -> new Point2(each.x(), each.y())));
        TopologyValidationError error = new IsValidOp(polygon).getValidationError();
        if (error != null) {
            Coordinate at = error.getCoordinate();
            throw new BadValueException(
                    "points",
                    "a footprint must not cross or touch itself",
                    Phrase.of("an outline that does at ").and(shown(at.x, at.y)),
                    "list the corners one after the other around the outline");
        }
    }

    private static Phrase shown(double x, double y) {
        return Phrase.of("[")
                .and(x, Dimension.LENGTH)
                .and(", ")
                .and(y, Dimension.LENGTH)
                .and("]");
    }

    static Polygon polygon(ImmutableList<Point2> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i <= corners.size(); i++) {
            Point2 corner = corners.get(i % corners.size());
            ring[i] = new Coordinate(corner.x(), corner.y());
        }
        return FACTORY.createPolygon(ring);
    }

    /** Twice the area; positive where the corners run counterclockwise. */
    static double signedArea(ImmutableList<Point2> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point2 a = corners.get(i);
            Point2 b = corners.get((i + 1) % corners.size());
            sum += a.x() * b.y() - b.x() * a.y();
        }
        return sum;
    }

    /** The compass word of the way side i (from corner i to the next) faces outwards: the nearest of eight. */
    static Compass facing(ImmutableList<Point2> corners, int side) {
        Point2 a = corners.get(side);
        Point2 b = corners.get((side + 1) % corners.size());
        double sense = Math.signum(signedArea(corners));
        double east = (b.y() - a.y()) * sense;
        double north = -(b.x() - a.x()) * sense;
        return Compass.of(east, north);
    }
}
