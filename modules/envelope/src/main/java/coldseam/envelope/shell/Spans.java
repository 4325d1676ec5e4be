package coldseam.envelope.shell;

import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;

/** How far what carries a surface reaches at least, where nothing indoors bears it. */
public final class Spans {

    /** m, to which the circle's centre is found. */
    private static final double CLOSE = 0.01;

    private Spans() {}

    /** m, the diameter of the largest circle between its walls, eaves or ridge, inner faces; 0 where none has room. */
    public static double across(Surface surface) {
        // An outline that touches itself is no polygon before it is mended.
        Geometry face = SurfaceAxes.of(surface.normal(), Vectors.ZERO)
                .polygon(surface.innerOutline())
                .buffer(0);
        return face.isEmpty()
                ? 0
                : 2 * MaximumInscribedCircle.getRadiusLine(face, CLOSE).getLength();
    }
}
