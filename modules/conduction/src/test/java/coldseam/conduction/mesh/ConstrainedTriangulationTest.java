package coldseam.conduction.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.arrange.Lattice;
import coldseam.conduction.arrange.LineArrangement;
import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;

/** What a constrained triangulation promises, before and after free points are put in. */
class ConstrainedTriangulationTest {

    /** Random rings cut at each other. */
    private static LineArrangement lines(List<Integer> numbers, int scale) {
        LineArrangement lines = new LineArrangement(new Lattice(1, 1, 0, 0, 2), 1);
        int n = numbers.size() / 2;
        int first = -1;
        int previous = -1;
        for (int i = 0; i < n; i++) {
            int v = lines.vertex((double) scale * numbers.get(2 * i), (double) scale * numbers.get(2 * i + 1));
            if (previous >= 0) {
                lines.addRingSide(previous, v, 0);
            } else {
                first = v;
            }
            previous = v;
        }
        lines.addRingSide(previous, first, 0);
        assertTrue(lines.cut());
        return lines;
    }

    private static ConstrainedTriangulation of(LineArrangement lines) {
        return new ConstrainedTriangulation(lines.vertices, lines.x, lines.y, lines.edges, lines.from, lines.to);
    }

    private static long twice(ConstrainedTriangulation t, int a, int b, int c) {
        return LineArrangement.orientation(t.x(a), t.y(a), t.x(b), t.y(b), t.x(c), t.y(c));
    }

    /** Orientation, area, neighbours and edges. */
    private static void isPartition(ConstrainedTriangulation in, LineArrangement lines) {
        long area = 0;
        int[] sides = new int[lines.edges];
        for (int t = 0; t < in.triangles; t++) {
            int o = 3 * t;
            long own = twice(in, in.corner[o], in.corner[o + 1], in.corner[o + 2]);
            assertTrue(own > 0, "corners run anticlockwise");
            area += own;
            for (int i = 0; i < 3; i++) {
                int a = in.corner[o + (i + 1) % 3];
                int b = in.corner[o + (i + 2) % 3];
                int u = in.neighbour[o + i];
                int e = in.constraint[o + i];
                if (u >= 0) {
                    int j = in.neighbour[3 * u] == t ? 0 : in.neighbour[3 * u + 1] == t ? 1 : 2;
                    assertEquals(t, in.neighbour[3 * u + j], "neighbours know each other");
                    assertEquals(b, in.corner[3 * u + (j + 1) % 3], "neighbours share a side");
                    assertEquals(a, in.corner[3 * u + (j + 2) % 3], "neighbours share a side");
                    assertEquals(e, in.constraint[3 * u + j], "both sides of an edge are marked");
                }
                if (e >= 0) {
                    sides[e]++;
                    assertEquals(Math.min(a, b), Math.min(lines.from[e], lines.to[e]));
                    assertEquals(Math.max(a, b), Math.max(lines.from[e], lines.to[e]));
                }
            }
        }
        for (int count : sides) {
            assertEquals(2, count, "every edge is a side of two triangles");
        }
        int box = in.firstFree() - 4;
        assertEquals(
                2 * (in.x(box + 1) - in.x(box)) * (in.y(box + 3) - in.y(box)),
                area,
                "triangles cover the box and do not overlap");
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }

    /** The circle test in whole numbers: above zero where d lies inside the circle through a, b, c. */
    private static double inCircle(ConstrainedTriangulation in, int a, int b, int c, int d) {
        long[] x = {in.x(a) - in.x(d), in.x(b) - in.x(d), in.x(c) - in.x(d)};
        long[] y = {in.y(a) - in.y(d), in.y(b) - in.y(d), in.y(c) - in.y(d)};
        BigInteger sum = BigInteger.ZERO;
        double size = 0;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            BigInteger square = big(x[i]).multiply(big(x[i])).add(big(y[i]).multiply(big(y[i])));
            BigInteger cross = big(x[j]).multiply(big(y[k])).subtract(big(x[k]).multiply(big(y[j])));
            sum = sum.add(square.multiply(cross));
            size += square.doubleValue() * (Math.abs((double) x[j] * y[k]) + Math.abs((double) x[k] * y[j]));
        }
        return sum.doubleValue() / size;
    }

    /** No free side could be flipped for the better; the margin is the circle test's own, with room for its rounding. */
    private static void isDelaunayWhereFree(ConstrainedTriangulation in) {
        for (int t = 0; t < in.triangles; t++) {
            for (int i = 0; i < 3; i++) {
                int u = in.neighbour[3 * t + i];
                if (u < 0 || in.constraint[3 * t + i] >= 0) {
                    continue;
                }
                int j = in.neighbour[3 * u] == t ? 0 : in.neighbour[3 * u + 1] == t ? 1 : 2;
                double inside = inCircle(
                        in, in.corner[3 * t], in.corner[3 * t + 1], in.corner[3 * t + 2], in.corner[3 * u + j]);
                assertTrue(inside <= 2e-12, () -> "a corner lies inside its neighbour's circle by " + inside);
            }
        }
    }

    @Property(tries = 150, seed = "2026")
    void randomDrawings(
            @ForAll @Size(30) List<@IntRange(min = -80, max = 80) Integer> numbers,
            @ForAll @IntRange(min = 1, max = 5) int power) {
        LineArrangement lines = lines(numbers, (int) Math.pow(10, power));
        ConstrainedTriangulation in = of(lines);
        isPartition(in, lines);
        isDelaunayWhereFree(in);
        assertEquals(0, in.free());
    }

    /** A grid has many points on one circle: the test must neither flip for ever nor miss a side. */
    @Property(tries = 20, seed = "2026")
    void gridsOfRectangles(
            @ForAll @IntRange(min = 2, max = 9) int n, @ForAll @IntRange(min = 5, max = 1_000_000) int cell) {
        LineArrangement lines = new LineArrangement(new Lattice(1, 1, 0, 0, 2), 1);
        for (int i = 0; i <= n; i++) {
            lines.addPathSide(
                    lines.vertex(0, (double) i * cell), lines.vertex((double) n * cell, (double) i * cell), 0);
            lines.addPathSide(
                    lines.vertex((double) i * cell, 0), lines.vertex((double) i * cell, (double) n * cell), 1);
        }
        assertTrue(lines.cut());
        assertEquals(2 * n * (n + 1), lines.edges);
        ConstrainedTriangulation in = of(lines);
        isPartition(in, lines);
        isDelaunayWhereFree(in);
        // Euler: with V points and h on the outline (the box's four), 2V − h − 2 triangles.
        assertEquals(2 * (lines.vertices + 4) - 4 - 2, in.triangles);
    }

    /** Four points a little off a square, so a little off one circle: the better diagonal is found all the same. */
    @Property(tries = 60, seed = "2026")
    void pointsAlmostOnOneCircle(@ForAll @Size(8) List<@IntRange(min = -3, max = 3) Integer> off) {
        long[] x = {off.get(0), 1_000_000 + off.get(1), 1_000_000 + off.get(2), off.get(3)};
        long[] y = {off.get(4), off.get(5), 1_000_000 + off.get(6), 1_000_000 + off.get(7)};
        isDelaunayWhereFree(new ConstrainedTriangulation(4, x, y, 0, new int[0], new int[0]));
    }

    /** Free points go where a walk finds them, no edge is lost, and the circles stay empty. */
    @Property(tries = 100, seed = "2026")
    void freePoints(
            @ForAll @Size(20) List<@IntRange(min = -80, max = 80) Integer> numbers,
            @ForAll @Size(20) List<@IntRange(min = -8000, max = 8000) Integer> places) {
        LineArrangement lines = lines(numbers, 100);
        ConstrainedTriangulation in = of(lines);
        int put = 0;
        for (int i = 0; i < places.size(); i += 2) {
            long px = places.get(i);
            long py = places.get(i + 1);
            int t = in.walk((7 * i) % in.triangles, px, py);
            if (t < 0 || onEdgeOrCorner(in, t, px, py)) {
                continue;
            }
            int before = in.triangles;
            int p = in.insertFree(t, px, py);
            assertEquals(in.firstFree() + put++, p);
            assertEquals(before + 2, in.triangles);
            int at = in.triangleAt(p);
            assertTrue(in.corner[3 * at] == p || in.corner[3 * at + 1] == p || in.corner[3 * at + 2] == p);
            assertEquals(px, in.x(p));
            assertEquals(py, in.y(p));
        }
        assertEquals(put, in.free());
        isPartition(in, lines);
        isDelaunayWhereFree(in);
    }

    /** A free point in the middle of a free side: its two triangles become four, and every edge around them is kept. */
    @Property(tries = 100, seed = "2026")
    void freePointsOnSides(
            @ForAll @Size(20) List<@IntRange(min = -80, max = 80) Integer> numbers,
            @ForAll @Size(12) List<@IntRange(min = 0, max = 1000) Integer> sides) {
        LineArrangement lines = lines(numbers, 128);
        ConstrainedTriangulation in = of(lines);
        int put = 0;
        for (int number : sides) {
            int t = number % in.triangles;
            int i = number % 3;
            long x = in.x(in.corner[3 * t + (i + 1) % 3]) + in.x(in.corner[3 * t + (i + 2) % 3]);
            long y = in.y(in.corner[3 * t + (i + 1) % 3]) + in.y(in.corner[3 * t + (i + 2) % 3]);
            if (in.neighbour[3 * t + i] < 0 || in.constraint[3 * t + i] >= 0 || x % 2 != 0 || y % 2 != 0) {
                continue;
            }
            in.insertFree(t, x / 2, y / 2);
            put++;
            isPartition(in, lines);
        }
        isDelaunayWhereFree(in);
        Statistics.label("points").collect(put > 2);
        Statistics.label("points").coverage(c -> c.check(true).percentage(p -> p > 50));
    }

    private static boolean onEdgeOrCorner(ConstrainedTriangulation in, int t, long px, long py) {
        for (int i = 0; i < 3; i++) {
            int a = in.corner[3 * t + (i + 1) % 3];
            int b = in.corner[3 * t + (i + 2) % 3];
            boolean on = LineArrangement.orientation(in.x(a), in.y(a), in.x(b), in.y(b), px, py) == 0;
            if (on && in.constraint[3 * t + i] >= 0 || in.x(a) == px && in.y(a) == py) {
                return true;
            }
        }
        return false;
    }

    /** A walk does not step over an edge. */
    @Test
    void aWalkStopsAtAnEdge() {
        LineArrangement lines = lines(List.of(0, 0, 10, 0, 10, 10, 0, 10), 100);
        ConstrainedTriangulation in = of(lines);
        for (int t = 0; t < in.triangles; t++) {
            long cx = (in.x(in.corner[3 * t]) + in.x(in.corner[3 * t + 1]) + in.x(in.corner[3 * t + 2])) / 3;
            long cy = (in.y(in.corner[3 * t]) + in.y(in.corner[3 * t + 1]) + in.y(in.corner[3 * t + 2])) / 3;
            boolean inside = cx > 0 && cx < 1000 && cy > 0 && cy < 1000;
            assertEquals(inside, in.walk(t, 300, 400) >= 0);
        }
    }
}
