package coldseam.conduction.arrange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;

/** What an arrangement promises once it is cut; lattice step 1. */
class LineArrangementTest {

    static final Lattice STEPS_OF_ONE_METRE = new Lattice(1, 1, 0, 0, 2);

    private static LineArrangement of(List<Integer> numbers, int rings) {
        LineArrangement lines = new LineArrangement(STEPS_OF_ONE_METRE, rings);
        int corners = numbers.size() / 2 / rings;
        for (int r = 0; r < rings; r++) {
            int[] v = new int[corners];
            for (int i = 0; i < corners; i++) {
                int at = 2 * (r * corners + i);
                v[i] = lines.vertex(numbers.get(at), numbers.get(at + 1));
            }
            for (int i = 0; i < corners; i++) {
                lines.addRingSide(v[i], v[(i + 1) % corners], r);
            }
        }
        return lines;
    }

    /** Distance of vertex c from the line through edge e, if its foot lies inside the edge; else infinite. */
    private static double away(LineArrangement lines, int e, int c) {
        double ux = lines.x[lines.to[e]] - lines.x[lines.from[e]];
        double uy = lines.y[lines.to[e]] - lines.y[lines.from[e]];
        double vx = lines.x[c] - lines.x[lines.from[e]];
        double vy = lines.y[c] - lines.y[lines.from[e]];
        double along = ux * vx + uy * vy;
        double length2 = ux * ux + uy * uy;
        return along > 0 && along < length2
                ? Math.abs(ux * vy - uy * vx) / Math.sqrt(length2)
                : Double.POSITIVE_INFINITY;
    }

    private static long turn(LineArrangement lines, int a, int b, int c) {
        return LineArrangement.orientation(lines.x[a], lines.y[a], lines.x[b], lines.y[b], lines.x[c], lines.y[c]);
    }

    /** Vertices keep apart from each other and from edges, and edges meet in common vertices or not at all. */
    static void isArrangement(LineArrangement lines) {
        for (int a = 0; a < lines.vertices; a++) {
            for (int b = 0; b < a; b++) {
                double apart = Math.hypot(lines.x[a] - lines.x[b], lines.y[a] - lines.y[b]);
                assertTrue(apart > STEPS_OF_ONE_METRE.close(), () -> "two vertices are " + apart + " apart");
            }
        }
        for (int e = 0; e < lines.edges; e++) {
            for (int c = 0; c < lines.vertices; c++) {
                if (c != lines.from[e] && c != lines.to[e]) {
                    double away = away(lines, e, c);
                    assertTrue(away > STEPS_OF_ONE_METRE.close(), () -> "a vertex is " + away + " from an edge");
                }
            }
            for (int f = 0; f < e; f++) {
                int a = lines.from[e];
                int b = lines.to[e];
                int c = lines.from[f];
                int d = lines.to[f];
                assertFalse(a == c && b == d || a == d && b == c, "an edge is there twice");
                boolean crosses = Long.signum(turn(lines, a, b, c)) * Long.signum(turn(lines, a, b, d)) < 0
                        && Long.signum(turn(lines, c, d, a)) * Long.signum(turn(lines, c, d, b)) < 0;
                assertFalse(crosses, "two edges cross");
            }
        }
    }

    /** Every ring is still closed: an even number of its edges meet at each vertex. */
    private static void ringsAreClosed(LineArrangement lines, int rings) {
        for (int r = 0; r < rings; r++) {
            int[] degree = new int[lines.vertices];
            for (int e = 0; e < lines.edges; e++) {
                if ((lines.rings[e * lines.ringWords() + (r >>> 6)] >>> r & 1) != 0) {
                    degree[lines.from[e]]++;
                    degree[lines.to[e]]++;
                }
            }
            for (int d : degree) {
                assertEquals(0, d % 2, "a ring is open");
            }
        }
    }

    /** Rings drawn at random cross, overlap and touch. */
    @Property(tries = 150, seed = "2026")
    void randomRingsComeToRest(
            @ForAll @Size(40) List<@IntRange(min = -1000, max = 1000) Integer> numbers,
            @ForAll @IntRange(min = 1, max = 5) int rings) {
        LineArrangement lines = of(numbers, rings);
        assertTrue(lines.cut(), "did not come to rest");
        isArrangement(lines);
        ringsAreClosed(lines, rings);
    }

    /** Where there is hardly room between the lines it may give up, and says so; it never calls a tangle arranged. */
    @Property(tries = 200, seed = "2026")
    void denseRingsAreArrangedOrRefused(
            @ForAll @Size(40) List<@IntRange(min = -60, max = 60) Integer> numbers,
            @ForAll @IntRange(min = 1, max = 5) int rings) {
        LineArrangement lines = of(numbers, rings);
        if (lines.cut()) {
            isArrangement(lines);
            ringsAreClosed(lines, rings);
        }
        Statistics.label("came to rest").collect(lines.cut());
        Statistics.label("came to rest").coverage(c -> c.check(true).percentage(p -> p > 80));
    }

    /** Far from the origin, where a coordinate has 29 bits, nothing changes but the place. */
    @Property(tries = 50, seed = "2026")
    void movingChangesNothing(
            @ForAll @Size(24) List<@IntRange(min = -1000, max = 1000) Integer> numbers,
            @ForAll @IntRange(min = 1, max = 3) int rings) {
        LineArrangement here = of(numbers, rings);
        int far = (1 << 29) - 1000;
        LineArrangement there = of(numbers.stream().map(n -> n + far).toList(), rings);
        assertTrue(here.cut() && there.cut());
        assertEquals(here.vertices, there.vertices);
        assertEquals(here.edges, there.edges);
        for (int v = 0; v < here.vertices; v++) {
            assertEquals(here.x[v] + far, there.x[v]);
            assertEquals(here.y[v] + far, there.y[v]);
        }
        isArrangement(there);
    }

    /** A point up to the closeness from an old one is the old one; one farther is new. */
    @Property(tries = 100, seed = "2026")
    void closePointsAreOne(
            @ForAll @IntRange(min = -4, max = 4) int dx,
            @ForAll @IntRange(min = -4, max = 4) int dy,
            @ForAll @IntRange(min = 0, max = 100_000) int at) {
        LineArrangement lines = new LineArrangement(STEPS_OF_ONE_METRE, 1);
        int first = lines.vertex(at, -at);
        int second = lines.vertex(at + dx, dy - at);
        boolean close = dx * dx + dy * dy <= STEPS_OF_ONE_METRE.close() * STEPS_OF_ONE_METRE.close();
        assertEquals(close, first == second);
        assertEquals(close && (dx != 0 || dy != 0) ? 1 : 0, lines.moves.size());
    }

    /** Rings along shared lines: their common part is one edge that knows both, and the rest knows one. */
    @Property(tries = 100, seed = "2026")
    void overlapsAreSharedEdges(
            @ForAll @IntRange(min = 5, max = 400) int a,
            @ForAll @IntRange(min = 5, max = 400) int b,
            @ForAll @IntRange(min = 5, max = 400) int c) {
        // One block from 0 to a + b, the other on top of it from a to a + b + c.
        LineArrangement lines = of(
                List.of(
                        0, 0, a + b, 0, a + b, 100, 0, 100, //
                        a, 100, a + b + c, 100, a + b + c, 200, a, 200),
                2);
        assertTrue(lines.cut());
        isArrangement(lines);
        ringsAreClosed(lines, 2);
        int shared = 0;
        for (int e = 0; e < lines.edges; e++) {
            long along = Math.abs(lines.x[lines.from[e]] - lines.x[lines.to[e]]);
            if (lines.rings[e] == 3) {
                shared++;
                assertEquals(b, along);
            }
        }
        assertEquals(1, shared);
        assertEquals(9, lines.edges, "two sides in two parts each, one part shared, and six whole sides");
    }

    @Test
    void aCrossingGetsAVertexAtItsRoundedPlace() {
        LineArrangement lines = new LineArrangement(STEPS_OF_ONE_METRE, 1);
        lines.addPathSide(lines.vertex(0, 0), lines.vertex(100, 33), 0);
        lines.addPathSide(lines.vertex(0, 50), lines.vertex(100, -20), 1);
        assertTrue(lines.cut());
        assertEquals(5, lines.vertices);
        assertEquals(4, lines.edges);
        // 33 x/100 = 50 − 70 x/100: x = 48.54, y = 16.02
        assertEquals(49, lines.x[4]);
        assertEquals(16, lines.y[4]);
        assertEquals(0, lines.moves.size(), "a crossing is no closing");
        for (int e = 0; e < 4; e++) {
            assertEquals(
                    lines.from[e] == 2 || lines.to[e] == 3 || lines.from[e] == 3 || lines.to[e] == 2 ? 1 : 0,
                    lines.path[e]);
            assertFalse(lines.twice[e]);
        }
    }

    /** Two boundaries along one line are told, whether drawn whole or in parts. */
    @Test
    void boundariesOverEachOtherAreTold() {
        LineArrangement lines = new LineArrangement(STEPS_OF_ONE_METRE, 1);
        lines.addPathSide(lines.vertex(0, 0), lines.vertex(100, 0), 0);
        lines.addPathSide(lines.vertex(150, 0), lines.vertex(60, 0), 1);
        assertTrue(lines.cut());
        assertEquals(3, lines.edges);
        for (int e = 0; e < 3; e++) {
            long left = Math.min(lines.x[lines.from[e]], lines.x[lines.to[e]]);
            assertEquals(left == 60, lines.twice[e], "edge from " + left);
        }
    }

    /** A vertex beside an edge bends the edge to it, and is counted as closed. */
    @Test
    void anEdgeBendsThroughACloseVertex() {
        LineArrangement lines = new LineArrangement(STEPS_OF_ONE_METRE, 1);
        lines.addPathSide(lines.vertex(0, 0), lines.vertex(100, 0), 0);
        lines.vertex(50, 2);
        lines.vertex(70, 5);
        assertTrue(lines.cut());
        assertEquals(2, lines.edges);
        assertTrue(lines.moves.size() >= 1);
    }
}
