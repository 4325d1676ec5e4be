package coldseam.envelope.shell.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/** A storey of 6 m by 6 m, cut into nine squares. */
class PlanRingsTest {

    private static final long M = 1_000_000;

    private static final Plan PLAN = plan();

    private static Plan plan() {
        MutableList<Plan.Line> lines = Lists.mutable.empty();
        long[][] corners = {{0, 0}, {6, 0}, {6, 6}, {0, 6}};
        for (int i = 0; i < 4; i++) {
            lines.add(line(corners[i], corners[(i + 1) % 4], new Plan.Tag(Plan.Kind.SIDE, 0, i)));
        }
        for (int i = 1; i < 3; i++) {
            lines.add(line(new long[] {2 * i, 0}, new long[] {2 * i, 6}, new Plan.Tag(Plan.Kind.AREA, 0, i)));
            lines.add(line(new long[] {0, 2 * i}, new long[] {6, 2 * i}, new Plan.Tag(Plan.Kind.AREA, 0, 3 + i)));
        }
        return Plan.of(1, lines.toImmutable());
    }

    private static Plan.Line line(long[] from, long[] to, Plan.Tag tag) {
        return new Plan.Line(new Vertex(from[0] * M, from[1] * M, 0), new Vertex(to[0] * M, to[1] * M, 0), tag);
    }

    /** Squares by their column and row. */
    private static PlanRings rings(int... columnsAndRows) {
        MutableList<Integer> cells = Lists.mutable.empty();
        for (int i = 0; i < columnsAndRows.length; i += 2) {
            Vertex middle = new Vertex((2 * columnsAndRows[i] + 1) * M, (2 * columnsAndRows[i + 1] + 1) * M, 0);
            for (int c = 0; c < PLAN.cells().size(); c++) {
                if (PLAN.cells().get(c).polygon().covers(Plan.point(middle))) {
                    cells.add(c);
                }
            }
        }
        return PlanRings.of(PLAN, cells.toImmutable());
    }

    private static ImmutableList<Double> areas(PlanRings rings) {
        return rings.rings()
                .collect(ring -> Ring.doubleArea(ring).z() / 2.0 / M / M)
                .toSortedList()
                .toImmutable();
    }

    @Test
    void nineSquaresAreTheStorey() {
        assertEquals(9, PLAN.cells().size());
        assertEquals(9, PLAN.cellsOf(0).size());
        PlanRings all = rings(0, 0, 0, 1, 0, 2, 1, 0, 1, 1, 1, 2, 2, 0, 2, 1, 2, 2);
        assertEquals(Lists.immutable.of(36.0), areas(all));
        assertEquals(4, all.only().size());
        assertEquals(new Vertex(0, 0, 0), all.only().getFirst());
        assertEquals(36, all.area(), 1e-9);
    }

    /** Two that touch in a corner are two rings, whichever corner it is, and so are four around one. */
    @Test
    void cellsThatTouchInAPointStayApart() {
        assertEquals(Lists.immutable.of(4.0, 4.0), areas(rings(0, 0, 1, 1)));
        assertEquals(Lists.immutable.of(4.0, 4.0), areas(rings(1, 0, 0, 1)));
        assertEquals(Lists.immutable.of(4.0, 8.0), areas(rings(0, 0, 1, 1, 2, 1)));
        assertEquals(Lists.immutable.of(4.0, 4.0, 4.0, 4.0, 4.0), areas(rings(0, 0, 2, 0, 1, 1, 0, 2, 2, 2)));
        assertEquals(Lists.immutable.of(4.0, 4.0, 4.0, 4.0), areas(rings(1, 0, 0, 1, 2, 1, 1, 2)));
    }

    /** Around a square in their midst, which they leave out, a second ring runs clockwise. */
    @Test
    void whatTheyLeaveOutIsAHole() {
        PlanRings ring = rings(0, 0, 0, 1, 0, 2, 1, 0, 1, 2, 2, 0, 2, 1, 2, 2);
        assertEquals(Lists.immutable.of(-4.0, 36.0), areas(ring));
        assertEquals(1, ring.holes().size());
        assertEquals(32, ring.area(), 1e-9);
        assertThrows(IllegalStateException.class, ring::only);
        // Open at one side it is no hole.
        assertEquals(Lists.immutable.of(28.0), areas(rings(0, 0, 0, 1, 0, 2, 1, 2, 2, 0, 2, 1, 2, 2)));
        // Open at a corner alone it is none, either: both touch there.
        PlanRings pinched = rings(0, 1, 0, 2, 1, 0, 1, 2, 2, 0, 2, 1, 2, 2);
        assertEquals(28, pinched.area(), 1e-9);
        assertEquals(0, pinched.holes().size() - (pinched.rings().size() - 1));
    }

    @Test
    void everyNodeKeepsThoseOfStraightSides() {
        MutableList<Integer> all = Lists.mutable.empty();
        for (int c = 0; c < 9; c++) {
            all.add(c);
        }
        assertEquals(12, PlanRings.everyNode(PLAN, all.toImmutable()).only().size());
    }
}
