package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/**
 * A part of what ends a storey above or below, as the footprints say.
 *
 * @param part in plan, m
 * @param steps of the walls in it
 * @param at a point of the plan over which the height is known
 * @param z height there, lattice units
 * @param rise how much it rises for each unit east and north; zero for what is flat
 */
record StoreyEnd(Geometry part, Geometry steps, Coordinate at, double z, Coordinate rise) {

    /** m, by which snapping moves a line: twice the reach of the plan's nodes. */
    static final double MOVED = 2e-4;

    /** Hundredths of a millimetre: on a lattice an overlay of nearly flush sides cannot go wrong. */
    static final PrecisionModel COARSE = new PrecisionModel(1e5);

    static final GeometryFactory GEOMETRY = new GeometryFactory();

    double area() {
        return part.getArea() - steps.getArea();
    }

    /** m², of what of it lies over a height. */
    double over(double height) {
        return partOver(height).getArea();
    }

    Geometry surface() {
        return steps.isEmpty() ? part : overlay(part, steps, OverlayNG.DIFFERENCE);
    }

    /** What of it lies over a height. */
    Geometry partOver(double height) {
        double steep = Math.hypot(rise.x, rise.y);
        if (part.isEmpty() || steep == 0) {
            return part.isEmpty() || z < height ? GEOMETRY.createPolygon() : surface();
        }
        // Of each corner how far it lies beyond the line in which the slope has this height.
        double far = (height - z) / steep * Vertex.metres(1);
        Geometry surface = surface();
        MutableList<Geometry> parts = Lists.mutable.empty();
        for (int i = 0; i < surface.getNumGeometries(); i++) {
            parts.add(beyond(
                    (Polygon) surface.getGeometryN(i),
                    p -> ((p.x - at.x) * rise.x + (p.y - at.y) * rise.y) / steep - far));
        }
        return parts.isEmpty()
                ? GEOMETRY.createPolygon()
                : parts.size() == 1 ? parts.getOnly() : UnaryUnionNG.union(parts, COARSE);
    }

    private static Geometry beyond(Polygon polygon, ToDoubleFunction<Coordinate> over) {
        Geometry whole = beyond(polygon.getExteriorRing().getCoordinates(), over);
        for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
            Geometry hole = beyond(polygon.getInteriorRingN(h).getCoordinates(), over);
            whole = overlay(whole, hole, OverlayNG.DIFFERENCE);
        }
        return whole;
    }

    /** What of an outline lies where a height that is linear over it is positive. */
    private static Geometry beyond(Coordinate[] ring, ToDoubleFunction<Coordinate> over) {
        MutableList<Coordinate> kept = Lists.mutable.empty();
        for (int i = 0; i + 1 < ring.length; i++) {
            double here = over.applyAsDouble(ring[i]);
            double next = over.applyAsDouble(ring[i + 1]);
            if (here >= 0) {
                kept.add(ring[i].copy());
            }
            if (here * next < 0) {
                double share = here / (here - next);
                kept.add(new Coordinate(
                        ring[i].x + share * (ring[i + 1].x - ring[i].x),
                        ring[i].y + share * (ring[i + 1].y - ring[i].y)));
            }
        }
        MutableList<Coordinate> apart = Lists.mutable.empty();
        for (Coordinate corner : kept) {
            if (apart.noneSatisfy(other -> other.distance(corner) < MOVED / 20)) {
                apart.add(corner);
            }
        }
        if (apart.size() < 3) {
            return GEOMETRY.createPolygon();
        }
        Geometry polygon = Ring.polygon(GEOMETRY, apart.toImmutable());
        // On the coarse lattice one that is no wider than snapping moves a line may turn inside out.
        return polygon.getArea() > MOVED / 2 * polygon.getLength()
                ? UnaryUnionNG.union(polygon, COARSE)
                : GEOMETRY.createPolygon();
    }

    /** Without the slits, narrower than snapping moves a line, that an overlay leaves between sides which are one in a turned house. */
    static Geometry withoutSlits(Geometry shape) {
        BufferParameters square = new BufferParameters(
                1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, BufferParameters.DEFAULT_MITRE_LIMIT);
        return BufferOp.bufferOp(BufferOp.bufferOp(shape, MOVED, square), -MOVED, square);
    }

    /** Areas alone: where two outlines touch in a line there is nothing between them. */
    static Geometry overlay(Geometry one, Geometry other, int operation) {
        OverlayNG overlay = new OverlayNG(one, other, COARSE, operation);
        overlay.setStrictMode(true);
        return overlay.getResult();
    }
}
