package coldseam.envelope.shell;

import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import org.eclipse.collections.api.list.ImmutableList;
import org.locationtech.jts.algorithm.CGAlgorithms3D;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** How far what carries a surface reaches at least, where nothing indoors bears it, and what lies before it or over it. */
public final class Spans {

    /** m, to which the circle's centre is found. */
    private static final double CLOSE = 0.01;

    /** Share of an area by which rounding moves it. */
    private static final double SAME = 1e-9;

    private Spans() {}

    /** m, the diameter of the largest circle between its walls, eaves or ridge, inner faces; 0 where none has room. */
    public static double across(Surface surface) {
        Geometry face = face(SurfaceAxes.of(surface.normal(), Vectors.ZERO), surface.innerOutline());
        if (face.isEmpty()) {
            return 0;
        }
        // Of most surfaces, rectangles along their axes, it is the shorter side, which nobody need search for.
        Envelope round = face.getEnvelopeInternal();
        return round.getArea() - face.getArea() <= SAME * round.getArea()
                ? Math.min(round.getWidth(), round.getHeight())
                : 2 * MaximumInscribedCircle.getRadiusLine(face, CLOSE).getLength();
    }

    /** m, by which the corner of a surface that lies farthest from all of some edges lies from the nearest; infinite without any. */
    public static double beyond(Surface surface, ImmutableList<Edge> edges) {
        return surface.outline()
                .collectDouble(corner -> edges.collectDouble(edge -> CGAlgorithms3D.distancePointSegment(
                                coordinate(corner), coordinate(edge.from()), coordinate(edge.to())))
                        .minIfEmpty(Double.POSITIVE_INFINITY))
                .max();
    }

    /** m², of the outer faces of two surfaces that lie before one another, seen along the first's normal. */
    public static double before(Surface one, Surface other) {
        SurfaceAxes axes = SurfaceAxes.of(one.normal(), Vectors.ZERO);
        return face(axes, one.outline())
                .intersection(face(axes, other.outline()))
                .getArea();
    }

    /** m, in plan, of a straight line that lies over a surface. */
    public static double over(Surface below, Point3 from, Point3 to) {
        SurfaceAxes plan = SurfaceAxes.of(Vectors.UP, Vectors.ZERO);
        Geometry face = face(plan, below.outline());
        return face.getFactory()
                .createLineString(new Coordinate[] {plan.flat(from), plan.flat(to)})
                .intersection(face)
                .getLength();
    }

    private static Geometry face(SurfaceAxes axes, ImmutableList<Point3> outline) {
        // An outline that touches itself is no polygon before it is mended.
        return axes.polygon(outline).buffer(0);
    }

    private static Coordinate coordinate(Point3 point) {
        return new Coordinate(point.x(), point.y(), point.z());
    }
}
