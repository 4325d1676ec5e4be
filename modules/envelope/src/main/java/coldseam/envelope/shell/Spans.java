package coldseam.envelope.shell;

import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** How far what carries a surface reaches at least, where nothing indoors bears it. */
public final class Spans {

    /** m, to which the circle's centre is found. */
    private static final double CLOSE = 0.01;

    private static final double FLAT = 0.01;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private Spans() {}

    /** m, the diameter of the largest circle between its walls, eaves or ridge, inner faces; 0 where none has room. */
    public static double across(Surface surface) {
        Point3 normal = surface.normal();
        Point3 across = Math.hypot(normal.x(), normal.y()) < FLAT
                ? new Point3(1, 0, 0)
                : Vectors.unit(Vectors.cross(Vectors.UP, normal));
        Point3 along = Vectors.cross(normal, across);
        MutableList<Coordinate> ring = surface.innerOutline()
                .collect(p -> new Coordinate(Vectors.dot(p, across), Vectors.dot(p, along)))
                .toList();
        ring.add(ring.getFirst());
        // An outline that touches itself is no polygon before it is mended.
        Geometry face = GEOMETRY.createPolygon(ring.toArray(new Coordinate[0])).buffer(0);
        return face.isEmpty()
                ? 0
                : 2 * MaximumInscribedCircle.getRadiusLine(face, CLOSE).getLength();
    }
}
