package coldseam.envelope.shell.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Point2;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/** Outlines with each side moved by its own distance. */
class FootprintTest {

    private static final double ROUND_OFF = 1e-9;

    private static ImmutableList<Point2> points(double... xy) {
        MutableList<Point2> points = Lists.mutable.empty();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point2(xy[i], xy[i + 1]));
        }
        return points.toImmutable();
    }

    private static final ImmutableList<Point2> BOX = points(0, 0, 10, 0, 10, 8, 0, 8);

    private static Footprint of(ImmutableList<Point2> outline) {
        return Footprint.of(Lists.immutable.of(outline));
    }

    @Test
    void eachSideIsMovedByItsOwnDistance() {
        Footprint moved = of(BOX).moved(Lists.immutable.of(1.0, 2.0, 0.0, -0.5));
        assertEquals(points(0.5, -1, 12, -1, 12, 8, 0.5, 8), moved.corners());
        assertEquals(of(BOX).lines(), moved.lines());
        assertEquals(Lists.immutable.of(0, 1, 2, 3), moved.starts());
        assertEquals(11.5 * 9, moved.area(), ROUND_OFF);
    }

    /** Whatever its angles, each side lies as far outwards of its own line as it was moved. */
    @Test
    void sidesAtAnyAngleStayParallel() {
        Footprint plan = of(points(0, 0, 9.13, -1.7, 11.9, 6.31, 6, 5, 4.2, 9.77, -1.1, 5.5));
        ImmutableList<Double> distances = Lists.immutable.of(0.3, 0.45, 0.2, -0.1, 0.5, 0.0);
        Footprint moved = plan.moved(distances);
        for (int i = 0; i < 6; i++) {
            Point2 a = plan.corners().get(i);
            Point2 b = plan.end(i);
            double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
            for (Point2 p : new Point2[] {moved.corners().get(i), moved.end(i)}) {
                double outwards = ((p.x() - a.x()) * (b.y() - a.y()) - (p.y() - a.y()) * (b.x() - a.x())) / length;
                assertEquals(distances.get(i), outwards, ROUND_OFF, "side " + i);
            }
        }
        assertFalse(moved.turnsBack(plan));
    }

    /** Two sides in one line keep one corner where they are moved alike, else a jog joins them. */
    @Test
    void aJogJoinsSidesInOneLine() {
        Footprint plan = of(points(0, 0, 4, 0, 10, 0, 10, 8, 0, 8));
        Footprint alike = plan.moved(Lists.immutable.of(0.4, 0.4, 0.4, 0.4, 0.4));
        assertEquals(points(-0.4, -0.4, 4, -0.4, 10.4, -0.4, 10.4, 8.4, -0.4, 8.4), alike.corners());
        Footprint jog = plan.moved(Lists.immutable.of(0.4, 0.3, 0.4, 0.4, 0.4));
        assertEquals(points(-0.4, -0.4, 4, -0.4, 4, -0.3, 10.4, -0.3, 10.4, 8.4, -0.4, 8.4), jog.corners());
        assertEquals(Lists.immutable.of(0, 1, 1, 2, 3, 4), jog.lines().collect(Footprint.Line::side));
        assertEquals(Lists.immutable.of(0, 2, 3, 4, 5), jog.starts());
        assertEquals(10.8 * 8.8 - 6.4 * 0.1, jog.area(), ROUND_OFF);
        // A tenth of a millimetre is one.
        assertEquals(
                5,
                plan.moved(Lists.immutable.of(0.4, 0.40009, 0.4, 0.4, 0.4))
                        .corners()
                        .size());
        assertEquals(
                6,
                plan.moved(Lists.immutable.of(0.4, 0.40011, 0.4, 0.4, 0.4))
                        .corners()
                        .size());
    }

    /** A court's walls are moved into the court; its sides are counted on from the storey's, and close on themselves. */
    @Test
    void courtsShrinkWhereTheHouseGrows() {
        ImmutableList<Point2> court = points(4, 3, 4, 5, 7, 5, 7, 3);
        Footprint plan = Footprint.of(Lists.immutable.of(BOX, court));
        assertEquals(80 - 6, plan.area(), ROUND_OFF);
        assertEquals(Lists.immutable.of(1, 2, 3, 0, 5, 6, 7, 4), plan.next());
        assertEquals(Lists.immutable.of(Lists.immutable.of(0, 1, 2, 3), Lists.immutable.of(4, 5, 6, 7)), plan.rings());
        Footprint moved = plan.moved(Lists.immutable.of(0.5, 0.5, 0.5, 0.5, 0.25, 0.25, 0.25, 0.25));
        assertEquals(11 * 9 - 2.5 * 1.5, moved.area(), ROUND_OFF);
        assertEquals(plan.next(), moved.next());
        assertEquals(plan.lines(), moved.lines());
        assertEquals(99 - 3.75, moved.polygon().getArea(), ROUND_OFF);
        assertEquals((99 - 3.75) * 1e12, moved.onLattice().getArea(), 1e3);
        assertEquals(1, moved.polygon().getNumInteriorRing());
    }

    /** Moved so far that a side's neighbours meet before it, it runs backwards; where nothing is left of it, too. */
    @Test
    void aSideThatIsGoneRunsBack() {
        Footprint plan = of(points(0, 0, 10, 0, 10, 8, 6, 8, 6, 4, 4, 4, 4, 8, 0, 8));
        for (double less : new double[] {0.5, 0.999}) {
            assertFalse(plan.moved(alike(8, less)).turnsBack(plan));
        }
        for (double more : new double[] {1, 1.001, 2}) {
            assertTrue(plan.moved(alike(8, more)).turnsBack(plan));
        }
        assertFalse(plan.moved(alike(8, -1.9)).turnsBack(plan));
        assertTrue(plan.moved(alike(8, -2.1)).turnsBack(plan));
    }

    private static ImmutableList<Double> alike(int sides, double distance) {
        MutableList<Double> all = Lists.mutable.empty();
        for (int i = 0; i < sides; i++) {
            all.add(distance);
        }
        return all.toImmutable();
    }

    /** So it is with whichever side the outline begins, and at every angle. */
    @Test
    void whereverASideIsGoneItRunsBack() {
        ImmutableList<Point2> outline = points(0, 0, 10, 0, 10, 8, 6, 8, 6, 4, 4, 4, 4, 8, 0, 8);
        for (int first = 0; first < 8; first++) {
            ImmutableList<Point2> begun = outline.drop(first).newWithAll(outline.take(first));
            for (int degrees = 0; degrees < 360; degrees += 15) {
                double sine = Math.sin(Math.toRadians(degrees));
                double cosine = Math.cos(Math.toRadians(degrees));
                Footprint plan = of(
                        begun.collect(p -> new Point2(p.x() * cosine - p.y() * sine, p.x() * sine + p.y() * cosine)));
                assertFalse(plan.moved(alike(8, 0.999)).turnsBack(plan), first + ", " + degrees);
                assertTrue(plan.moved(alike(8, 1.001)).turnsBack(plan), first + ", " + degrees);
            }
        }
    }

    /** A jog is square to its sides at every angle. */
    @Test
    void aJogAtAnyAngleIsSquare() {
        ImmutableList<Point2> outline = points(0, 0, 4, 0, 10, 0, 10, 8, 0, 8);
        for (int degrees = 0; degrees < 360; degrees += 15) {
            double sine = Math.sin(Math.toRadians(degrees));
            double cosine = Math.cos(Math.toRadians(degrees));
            Footprint jog = of(outline.collect(
                            p -> new Point2(p.x() * cosine - p.y() * sine, p.x() * sine + p.y() * cosine)))
                    .moved(Lists.immutable.of(0.4, 0.3, 0.4, 0.4, 0.4));
            assertEquals(10.8 * 8.8 - 6.4 * 0.1, jog.area(), ROUND_OFF);
            int start = jog.lines().indexOf(new Footprint.Line(1, true));
            Point2 a = jog.corners().get(start);
            Point2 b = jog.end(start);
            assertEquals(0.1, Math.hypot(b.x() - a.x(), b.y() - a.y()), ROUND_OFF);
        }
    }
}
