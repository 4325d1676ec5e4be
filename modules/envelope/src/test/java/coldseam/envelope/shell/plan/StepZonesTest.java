package coldseam.envelope.shell.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Point2;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.BitSet;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Steps along the south side of a storey, 10 m long, whose walls are as thick as those of the storey that reaches further out. */
class StepZonesTest {

    /** m; corners lie on a lattice of a micrometre. */
    private static final double LATTICE = 2e-6;

    /** The step beside a side that runs from some place south of 0 m to some place south of 10 m, in mm. */
    private static StepZones beside(double from, double to) {
        return new StepZones(
                Lists.immutable.of(side(0, -from / 1000, 10, -to / 1000)), Lists.immutable.of(side(0, 0, 10, 0)));
    }

    private static StepZones.Side side(double x, double y, double otherX, double otherY) {
        return new StepZones.Side(
                Vertex.inPlan(new Point2(x, y)),
                Vertex.inPlan(new Point2(otherX, otherY)),
                Optional.empty(),
                OptionalInt.empty());
    }

    /** m along the side, of the step's two ends. */
    private static void assertRuns(double from, double to, StepZones zones) {
        ImmutableList<ImmutableList<Vertex>> ends = zones.ends();
        assertEquals(2, ends.size());
        for (int i = 0; i < 2; i++) {
            for (Vertex end : ends.get(i)) {
                assertEquals(i == 0 ? from : to, end.point().x(), LATTICE);
            }
        }
    }

    @Test
    void aStepIsAsWideAsItsWidestEnd() {
        assertRuns(0, 10, beside(4, 8));
        assertEquals(0.008, beside(4, 8).widest(), LATTICE);
        assertEquals(0.009, beside(9, 1).widest(), LATTICE);
        assertEquals(0, beside(4, 11).ends().size(), "more than a hair has a room under or over it");
        assertEquals(0, beside(-4, -8).ends().size());
    }

    /** Where the sides cross there is a step only as far as the outer one lies outside. */
    @Test
    void aStepEndsWhereTheSidesCross() {
        assertRuns(2, 10, beside(-2, 8));
        assertEquals(0.008, beside(-2, 8).widest(), LATTICE);
        assertRuns(0, 7.5, beside(6, -2));
        assertEquals(0.006, beside(6, -2).widest(), LATTICE);
    }

    /** Beside a part of the side, from 3 m to 7 m, it crosses 1 m from its western end. */
    @Test
    void aShorterSideCrossesWhereItIs() {
        StepZones zones =
                new StepZones(Lists.immutable.of(side(3, 0.002, 7, -0.006)), Lists.immutable.of(side(0, 0, 10, 0)));
        assertRuns(4, 7, zones);
        assertEquals(0.006, zones.widest(), LATTICE);
    }

    /** A tenth of a millimetre is none, either way; a hair still is one. */
    @Test
    void whatIsTooSmallIsNoStep() {
        assertEquals(0, beside(0.1, 0.1).ends().size());
        assertEquals(2, beside(0.101, 0.101).ends().size());
        assertEquals(2, beside(10, 10).ends().size());
        StepZones.Side inner = side(0, 0, 10, 0);
        assertEquals(0, steps(side(9.9999, -0.005, 15, -0.005), inner));
        assertEquals(2, steps(side(9.9998, -0.005, 15, -0.005), inner));
        assertEquals(0, steps(side(12, -0.005, 15, -0.005), inner), "beside it");
        assertEquals(0, steps(side(15, -0.005, 0, -0.005), inner), "it runs the other way");
    }

    private static int steps(StepZones.Side outer, StepZones.Side inner) {
        return new StepZones(Lists.immutable.of(outer), Lists.immutable.of(inner))
                .ends()
                .size();
    }

    /** Beyond a corner with a step on both sides, where the outer storey has its own no more than a hair from there. */
    @Test
    void betweenTwoStepsLiesOne() {
        assertTrue(atTheCorner(10.009, 0, OptionalInt.of(1)));
        assertTrue(atTheCorner(9.99, 0, OptionalInt.of(1)));
        assertFalse(atTheCorner(9.989, 0, OptionalInt.of(1)));
        assertTrue(atTheCorner(10.009, 0.01, OptionalInt.of(1)));
        assertFalse(atTheCorner(10.009, 0.011, OptionalInt.of(1)));
        assertFalse(atTheCorner(10.009, 0, OptionalInt.empty()), "a jog lies between");
    }

    /** Whether the step covers the place beyond the south-eastern corner. */
    private static boolean atTheCorner(double southEnds, double eastBegins, OptionalInt next) {
        StepZones.Side south = side(0, 0, 10, 0);
        StepZones zones = new StepZones(
                Lists.immutable.of(side(0, -0.008, southEnds, -0.008), side(10.009, eastBegins, 10.009, 8)),
                Lists.immutable.of(
                        new StepZones.Side(south.from(), south.to(), south.wall(), next), side(10, 0, 10, 8)));
        return zones.covers(new Plan.Cell(
                Plan.polygon(Lists.immutable
                        .of(
                                new Point2(10.003, -0.004),
                                new Point2(10.005, -0.004),
                                new Point2(10.005, -0.002),
                                new Point2(10.003, -0.002))
                        .collect(Vertex::inPlan)),
                new BitSet()));
    }
}
