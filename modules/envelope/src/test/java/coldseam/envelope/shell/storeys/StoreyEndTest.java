package coldseam.envelope.shell.storeys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Point2;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Plan;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** What ends a storey, of 10 m by 4 m, by areas worked out by hand. */
class StoreyEndTest {

    private static final double HUNDREDTHS = 1e-3;

    private static final Geometry NONE = StoreyEnd.GEOMETRY.createPolygon();

    private static Geometry rectangle(double x, double y, double width, double depth) {
        return Plan.outline(Lists.immutable.of(
                new Point2(x, y),
                new Point2(x + width, y),
                new Point2(x + width, y + depth),
                new Point2(x, y + depth)));
    }

    private static final Geometry WHOLE = rectangle(0, 0, 10, 4);

    private static double z(double metres) {
        return metres * Vertex.PER_METRE;
    }

    @Test
    void whatIsLevelLiesOverAHeightOrNot() {
        Coordinate level = new Coordinate();
        StoreyEnd end = new StoreyEnd(WHOLE, rectangle(0, 0, 10, 1), level, z(3), level);
        assertEquals(30, end.area(), HUNDREDTHS);
        assertEquals(30, end.surface().getArea(), HUNDREDTHS);
        assertEquals(30, end.over(z(2.9)), HUNDREDTHS);
        assertEquals(30, end.over(z(3)), HUNDREDTHS);
        assertEquals(0, end.over(z(3.1)), HUNDREDTHS);
        assertEquals(30, end.partOver(z(2.9)).getArea(), HUNDREDTHS);
        assertEquals(30, end.partOver(z(3)).getArea(), HUNDREDTHS);
        assertTrue(end.partOver(z(3.1)).isEmpty());
        StoreyEnd none = new StoreyEnd(NONE, NONE, level, z(3), level);
        assertEquals(0, none.over(z(2)), HUNDREDTHS);
        assertTrue(none.partOver(z(2)).isEmpty());
        assertEquals(
                40, new StoreyEnd(WHOLE, NONE, level, z(3), level).surface().getArea(), HUNDREDTHS);
    }

    /** 3 m high over the middle of the south side; it rises by half a metre for each metre to the north, and to the east. */
    @Test
    void ofASlopeWhatLiesFurtherUpItIsOverAHeight() {
        StoreyEnd north = new StoreyEnd(WHOLE, NONE, new Coordinate(5, 0), z(3), new Coordinate(0, 0.5));
        assertEquals(40, north.over(z(2.9)), HUNDREDTHS);
        assertEquals(10 * (4 - 1), north.over(z(3.5)), HUNDREDTHS);
        assertEquals(10 * (4 - 3), north.over(z(4.5)), HUNDREDTHS);
        assertEquals(0, north.over(z(5.1)), HUNDREDTHS);
        Geometry part = north.partOver(z(4.5));
        assertEquals(3, part.getEnvelopeInternal().getMinY(), HUNDREDTHS);
        StoreyEnd east = new StoreyEnd(WHOLE, NONE, new Coordinate(5, 0), z(3), new Coordinate(0.5, 0));
        assertEquals(4 * (10 - 7), east.over(z(4)), HUNDREDTHS);
        assertEquals(7, east.partOver(z(4)).getEnvelopeInternal().getMinX(), HUNDREDTHS);
        assertEquals(4 * (10 - 3), east.over(z(2)), HUNDREDTHS);
        // Aslant by 3 in 10 both ways: over the corner at the north-east a triangle of two metres.
        StoreyEnd both = new StoreyEnd(WHOLE, NONE, new Coordinate(0, 0), z(0), new Coordinate(0.3, 0.3));
        assertEquals(2 * 2 / 2.0, both.over(z(0.3 * 12)), HUNDREDTHS);
    }

    /** A court of 2 m by 2 m in its midst counts for nothing, nor does a step along its south side. */
    @Test
    void holesAndStepsAreNoPartOfASlope() {
        Geometry court = WHOLE.difference(rectangle(4, 1, 2, 2));
        StoreyEnd north = new StoreyEnd(court, NONE, new Coordinate(0, 0), z(3), new Coordinate(0, 0.5));
        assertEquals(40 - 4, north.over(z(2)), HUNDREDTHS);
        assertEquals(10 * 2 - 2, north.over(z(4)), HUNDREDTHS);
        assertEquals(10 * 0.5, north.over(z(4.75)), HUNDREDTHS);
        StoreyEnd stepped =
                new StoreyEnd(WHOLE, rectangle(0, 0, 10, 1), new Coordinate(0, 0), z(3), new Coordinate(0, 0.5));
        assertEquals(30, stepped.over(z(3.2)), HUNDREDTHS);
        assertEquals(20, stepped.over(z(4)), HUNDREDTHS);
        // In two parts.
        StoreyEnd apart =
                new StoreyEnd(WHOLE, rectangle(4, 0, 2, 4), new Coordinate(0, 0), z(3), new Coordinate(0, 0.5));
        assertEquals(8 * 2, apart.over(z(4)), HUNDREDTHS);
        assertEquals(2, apart.partOver(z(4)).getNumGeometries());
    }

    @Test
    void overlaysAreAreasAlone() {
        Geometry touching = StoreyEnd.overlay(WHOLE, rectangle(10, 0, 3, 4), OverlayNG.INTERSECTION);
        assertEquals(0, touching.getArea());
        assertEquals(
                8,
                StoreyEnd.overlay(WHOLE, rectangle(8, 0, 3, 4), OverlayNG.INTERSECTION)
                        .getArea(),
                HUNDREDTHS);
    }
}
