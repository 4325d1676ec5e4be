package coldseam.envelope.shell.lattice;

import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import org.eclipse.collections.api.list.ImmutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * A surface's own axes: what lies in its plane as what lies flat, in metres.
 *
 * @param origin m, where both are zero
 * @param u unit vector
 * @param v unit vector at a right angle to it, anticlockwise seen from outdoors
 */
public record SurfaceAxes(Point3 origin, Point3 u, Point3 v) {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Horizontal part of a unit normal, up to which a surface is level. */
    private static final double LEVEL = 0.01;

    /** To the right and upwards, seen from outdoors; of a level surface east first. */
    public static SurfaceAxes of(Point3 normal, Point3 origin) {
        boolean level = Math.hypot(normal.x(), normal.y()) < LEVEL;
        return along(normal, origin, level ? new Point3(1, 0, 0) : Vectors.unit(Vectors.cross(Vectors.UP, normal)));
    }

    /** With a unit vector in the surface's plane as the first. */
    public static SurfaceAxes along(Point3 normal, Point3 origin, Point3 u) {
        return new SurfaceAxes(origin, u, Vectors.cross(normal, u));
    }

    /** A point of space, or of the surface, along the two. */
    public Coordinate flat(Point3 point) {
        Point3 off = Vectors.minus(point, origin);
        return new Coordinate(Vectors.dot(off, u), Vectors.dot(off, v));
    }

    /** Where a point of the surface lies in space. */
    public Point3 space(double a, double b) {
        return Vectors.plus(origin, Vectors.plus(Vectors.times(u, a), Vectors.times(v, b)));
    }

    /** An outline along the two. */
    public Polygon polygon(ImmutableList<Point3> outline) {
        return Ring.polygon(GEOMETRY, outline.collect(this::flat));
    }
}
