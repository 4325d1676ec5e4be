package coldseam.junctions.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Point;
import coldseam.junctions.PenLine;
import coldseam.junctions.section.Shapes;
import java.util.List;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Necks of areas whose neck is known. */
class PenLinesTest {

    /** m: the outline's own corners give the neck, so only the grid of a tenth of a micrometre is left. */
    private static final double EXACT = 1e-6;

    private static Geometry rectangle(double x0, double y0, double x1, double y1) {
        return Shapes.of(
                Lists.immutable.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
    }

    private static Geometry line(double x0, double y0, double x1, double y1) {
        return Shapes.line(new Point(x0, y0), new Point(x1, y1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 17, 45, 203})
    void aSquareCornerKeepsItsThickness(double degrees) {
        AffineTransformation turn = AffineTransformation.rotationInstance(Math.toRadians(degrees));
        Geometry corner = Shapes.union(Lists.immutable.of(rectangle(-3, 0, 0.16, 0.16), rectangle(0, -3, 0.16, 0.16)));
        PenLine line = PenLines.of(
                turn.transform(corner),
                turn.transform(line(-1, 0, -1, 0.16)),
                turn.transform(line(0, -1, 0.16, -1)),
                0.16);
        assertTrue(line.unbroken());
        assertEquals(0.16, line.neck(), EXACT);
        assertEquals(1, line.share(), 1e-5);
        assertTrue(line.path().size() >= 3);
    }

    /** A thinner part of 60 mm between two of 160 mm. */
    @Test
    void aPinchIsTheNeck() {
        Geometry pinched = Shapes.union(Lists.immutable.of(
                rectangle(-3, 0, -0.1, 0.16), rectangle(-0.1, 0, 0.1, 0.06), rectangle(0.1, 0, 3, 0.16)));
        PenLine line = PenLines.of(pinched, line(-1, 0, -1, 0.16), line(1, 0, 1, 0.16), 0.16);
        assertEquals(0.06, line.neck(), EXACT);
        assertEquals(0.375, line.share(), 1e-5);
        assertEquals(
                0.06,
                Math.abs(line.neckAt().getFirst().y() - line.neckAt().getLast().y()),
                EXACT);
        assertTrue(Math.abs(line.neckAt().getFirst().x()) <= 0.1);
    }

    /** Two layers offset by half their thickness that overlap along 30 mm: the neck runs from corner to corner. */
    @Test
    void offsetLayersNarrowBetweenTheirCorners() {
        Geometry offset = Shapes.union(Lists.immutable.of(rectangle(-3, 0, 0.03, 0.16), rectangle(0, 0.08, 3, 0.24)));
        PenLine line = PenLines.of(offset, line(-1, 0, -1, 0.16), line(1, 0.08, 1, 0.24), 0.16);
        assertEquals(Math.hypot(0.03, 0.08), line.neck(), EXACT);
    }

    /** Two layers one upon the other that only overlap by 50 mm sideways: the disc passes through that window. */
    @Test
    void stackedLayersNarrowToTheirOverlap() {
        Geometry stacked = Shapes.union(Lists.immutable.of(rectangle(-3, 0, 0.05, 0.1), rectangle(0, 0.1, 3, 0.2)));
        PenLine line = PenLines.of(stacked, line(-1, 0, -1, 0.1), line(1, 0.1, 1, 0.2), 0.1);
        assertEquals(0.05, line.neck(), EXACT);
        assertEquals(0.5, line.share(), 1e-5);
    }

    @Test
    void aSlabThroughTheLayerBreaksIt() {
        Geometry broken = Shapes.union(Lists.immutable.of(rectangle(-3, 0, -0.1, 0.16), rectangle(0.1, 0, 3, 0.16)));
        PenLine line = PenLines.of(broken, line(-1, 0, -1, 0.16), line(1, 0, 1, 0.16), 0.16);
        assertFalse(line.unbroken());
        assertEquals(0, line.neck());
        assertEquals(0, line.share());
        assertEquals(-0.1, line.path().getLast().x(), 1e-6);
        assertTrue(line.neckAt().isEmpty());
    }

    /** Parts that touch in a point are not joined: nothing passes there. */
    @Test
    void aTouchingCornerIsNoWay() {
        Geometry touching = Shapes.union(Lists.immutable.of(rectangle(-3, 0, 0, 0.16), rectangle(0, 0.16, 3, 0.32)));
        PenLine line = PenLines.of(touching, line(-1, 0, -1, 0.16), line(1, 0.16, 1, 0.32), 0.16);
        assertEquals(0, line.neck(), 1e-4);
    }

    /** Two ways past a hole: the wider one counts. */
    @Test
    void theWiderWayPastAHoleCounts() {
        Geometry around = rectangle(-3, 0, 3, 0.3).difference(rectangle(-0.1, 0.1, 0.1, 0.16));
        PenLine line = PenLines.of(around, line(-1, 0, -1, 0.3), line(1, 0, 1, 0.3), 0.3);
        assertEquals(0.14, line.neck(), EXACT);
    }

    /** Two layers apart, each from end to end: the thicker one carries the line, whichever comes first. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theThickerOfTwoLayersApartCounts(boolean thickerFirst) {
        Geometry thin = rectangle(-3, 0, 3, 0.05);
        Geometry thick = rectangle(-3, 0.1, 3, 0.24);
        Geometry both = Shapes.FACTORY.buildGeometry(thickerFirst ? List.of(thick, thin) : List.of(thin, thick));
        PenLine line = PenLines.of(both, line(-1, 0, -1, 0.24), line(1, 0, 1, 0.24), 0.14);
        assertEquals(0.14, line.neck(), EXACT);
    }

    @Test
    void withoutInsulationThereIsNoLine() {
        PenLine line = PenLines.of(Shapes.nothing(), line(-1, 0, -1, 0.16), line(1, 0, 1, 0.16), 0);
        assertFalse(line.unbroken());
        assertTrue(line.path().isEmpty());
    }
}
