package coldseam.junctions.section;

import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.junctions.plan.SnapNoder;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Areas of a section's plane: from and to polygons, and the set operations on them. */
public final class Shapes {

    /**
     * m; places are kept to multiples of this, so that sides that should touch do. Whole micrometres and 1/32 in are multiples
     * of it.
     */
    static final double STEP = 2.5e-7;

    public static final PrecisionModel GRID = new PrecisionModel(1 / STEP);

    public static final GeometryFactory FACTORY = new GeometryFactory(GRID);

    private Shapes() {}

    public static Geometry of(ImmutableList<Point> corners) {
        Coordinate[] ring = new Coordinate[corners.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = coordinate(corners.get(i % corners.size()));
        }
        Geometry area = FACTORY.createPolygon(ring);
        return corners.size() == 4 && isConvex(ring) || area.isValid() ? area : area.buffer(0);
    }

    /** Whether four corners turn all one way, as those of most pieces do: a ring that does so crosses itself nowhere. */
    private static boolean isConvex(Coordinate[] ring) {
        int turn = Orientation.index(ring[3], ring[0], ring[1]);
        return turn != 0
                && Orientation.index(ring[0], ring[1], ring[2]) == turn
                && Orientation.index(ring[1], ring[2], ring[3]) == turn
                && Orientation.index(ring[2], ring[3], ring[0]) == turn;
    }

    public static Coordinate coordinate(Point point) {
        return new Coordinate(GRID.makePrecise(point.x()), GRID.makePrecise(point.y()));
    }

    public static Point point(Coordinate at) {
        return new Point(at.x + 0.0, at.y + 0.0);
    }

    public static LineString line(Point from, Point to) {
        return line(Lists.immutable.of(from, to));
    }

    public static LineString line(ImmutableList<Point> way) {
        return FACTORY.createLineString(way.collect(Shapes::coordinate).toArray(new Coordinate[0]));
    }

    public static Geometry nothing() {
        return FACTORY.createPolygon();
    }

    public static Geometry union(Iterable<Geometry> areas) {
        MutableList<Geometry> list = Lists.mutable.withAll(areas).reject(Geometry::isEmpty);
        if (list.isEmpty()) {
            return nothing();
        }
        // Pairs of halves: a tree of unions stays small where one after another grows.
        while (list.size() > 1) {
            MutableList<Geometry> next = Lists.mutable.empty();
            for (int i = 0; i < list.size(); i += 2) {
                next.add(
                        i + 1 < list.size()
                                ? areal(overlay(list.get(i), list.get(i + 1), OverlayNG.UNION))
                                : list.get(i));
            }
            list = next;
        }
        return list.getFirst();
    }

    public static Geometry difference(Geometry from, Geometry what) {
        return what.isEmpty() || from.isEmpty() ? from : areal(overlay(from, what, OverlayNG.DIFFERENCE));
    }

    /** The outline of a way of some thickness, square at its ends; empty where the way has no length. */
    static ImmutableList<Point> ribbon(ImmutableList<Point> way, double thickness) {
        ImmutableList<Coordinate> distinct = way.collect(Shapes::coordinate).distinct();
        if (distinct.size() < 2) {
            return Lists.immutable.empty();
        }
        BufferParameters square = new BufferParameters(
                1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT);
        Geometry ribbon = new BufferOp(line(way), square).getResultGeometry(thickness / 2);
        return corners(
                ((org.locationtech.jts.geom.Polygon) ribbon.getGeometryN(0).norm()).getExteriorRing());
    }

    public static Geometry intersection(Geometry a, Geometry b) {
        return areal(overlay(a, b, OverlayNG.INTERSECTION));
    }

    /** m; a corner this near to a side lies on it: the grid moves a corner by half its step, and a side's ends by as much. */
    private static final double TOUCHING = 3e-7;

    private static Geometry overlay(Geometry a, Geometry b, int operation) {
        try {
            return OverlayNG.overlay(a, b, operation, new SnapNoder(TOUCHING));
        } catch (RuntimeException robust) {
            return OverlayNGRobust.overlay(a, b, operation);
        }
    }

    /** What a geometry consists of, in order; none of it is empty. */
    public static ImmutableList<Geometry> parts(Geometry of) {
        MutableList<Geometry> parts = Lists.mutable.empty();
        for (int i = 0; i < of.getNumGeometries(); i++) {
            if (!of.getGeometryN(i).isEmpty()) {
                parts.add(of.getGeometryN(i));
            }
        }
        return parts.toImmutable();
    }

    private static Geometry areal(Geometry result) {
        ImmutableList<Geometry> parts = parts(result).select(each -> each instanceof org.locationtech.jts.geom.Polygon);
        return parts.isEmpty()
                ? nothing()
                : parts.size() == 1 ? parts.getFirst() : FACTORY.buildGeometry(parts.castToList());
    }

    /** The outlines of an area; a part with holes is cut through its first hole. */
    static ImmutableList<Polygon> outlines(Geometry area) {
        MutableList<Polygon> outlines = Lists.mutable.empty();
        collect(area, outlines);
        return outlines.toImmutable();
    }

    /** What of an outline lies within an area; the outline itself where all of it does. */
    public static ImmutableList<Polygon> within(Polygon outline, Geometry area) {
        Geometry whole = of(outline.corners());
        Geometry kept = intersection(whole, area);
        return whole.getArea() - kept.getArea() < STEP * STEP ? Lists.immutable.of(outline) : outlines(kept);
    }

    private static void collect(Geometry area, MutableList<Polygon> into) {
        for (int i = 0; i < area.getNumGeometries(); i++) {
            var part = (org.locationtech.jts.geom.Polygon) area.getGeometryN(i);
            if (part.isEmpty()) {
                continue;
            }
            if (part.getNumInteriorRing() == 0) {
                into.add(new Polygon(corners(part.getExteriorRing())));
                continue;
            }
            Envelope all = part.getEnvelopeInternal();
            double x = part.getInteriorRingN(0).getEnvelopeInternal().centre().x;
            Geometry left =
                    FACTORY.toGeometry(new Envelope(all.getMinX() - 1, x, all.getMinY() - 1, all.getMaxY() + 1));
            collect(intersection(part, left), into);
            collect(difference(part, left), into);
        }
    }

    /** A ring's corners, the first not repeated, without those on a straight line. */
    static ImmutableList<Point> corners(Geometry ring) {
        Coordinate[] all = ring.getCoordinates();
        MutableList<Point> points = Lists.mutable.empty();
        for (int i = 0; i < all.length - 1; i++) {
            points.add(point(all[i]));
        }
        return points.toImmutable();
    }
}
