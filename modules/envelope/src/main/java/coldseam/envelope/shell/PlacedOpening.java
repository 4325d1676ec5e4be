package coldseam.envelope.shell;

import coldseam.envelope.Opening;
import coldseam.envelope.shell.lattice.SurfaceAxes;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** An opening at its place: left, bottom, right and top along its surface's axes. */
record PlacedOpening(Opening opening, int facet, SurfaceAxes axes, double a, double b, double c, double d) {

    /** m, by which an opening may overlap an edge without a fault: the lattice's rounding. */
    static final double ROUNDING = 2e-4;

    /** m, of an opening's foot that tells where one too high might begin. */
    private static final double A_SILL = 0.01;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Whether both overlap by more than the rounding, along the axes they share. */
    boolean overlaps(PlacedOpening other) {
        return a + ROUNDING <= other.c && other.a + ROUNDING <= c && b + ROUNDING <= other.d && other.b + ROUNDING <= d;
    }

    PlacedOpening raisedTo(double bottom) {
        return new PlacedOpening(opening, facet, axes, a, bottom, c, bottom + d - b);
    }

    /** The same from one height to another. */
    PlacedOpening between(double bottom, double top) {
        return new PlacedOpening(opening, facet, axes, a, bottom, c, top);
    }

    /** Its foot alone. */
    PlacedOpening aSill() {
        return new PlacedOpening(opening, facet, axes, a, b, c, Math.min(d, b + A_SILL));
    }

    /** The strip of an outline that is as wide as it. */
    Geometry over(Polygon outline) {
        Envelope all = outline.getEnvelopeInternal();
        return new PlacedOpening(opening, facet, axes, a, all.getMinY(), c, all.getMaxY()).rectangle();
    }

    boolean within(Polygon outside, Polygon inside) {
        Geometry rectangle = rectangle();
        return outside.covers(rectangle) && (!inside.isValid() || inside.covers(rectangle));
    }

    /** As far as it must lie within its surface. */
    Geometry rectangle() {
        return GEOMETRY.toGeometry(new Envelope(a + ROUNDING, c - ROUNDING, b + ROUNDING, d - ROUNDING));
    }
}
