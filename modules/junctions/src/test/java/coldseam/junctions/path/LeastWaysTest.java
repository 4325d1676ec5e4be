package coldseam.junctions.path;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/** Least ways over points, a second way: every point's least lowered by its neighbours' until none falls. */
class LeastWaysTest {

    private static final int POINTS = 60;
    private static final int CELLS = 25;
    private static final int IN_A_CELL = 5;

    /** A resistance is added up from its beginning both times. */
    private static final double EXACT = 0;

    @Test
    void sameAsLoweringUntilNothingFalls() {
        Random random = new Random(5);
        for (int round = 0; round < 40; round++) {
            ImmutableList<Coordinate> places = Lists.immutable.fromStream(
                    random.doubles(POINTS).mapToObj(each -> new Coordinate(each, random.nextDouble())));
            ImmutableList<int[]> cells = Lists.immutable.fromStream(random.ints(CELLS)
                    .mapToObj(each ->
                            random.ints(0, POINTS).distinct().limit(IN_A_CELL).toArray()));
            double[] conductivities = random.doubles(CELLS, 0.03, 2).toArray();
            boolean[] begins = new boolean[POINTS];
            boolean[] ends = new boolean[POINTS];
            begins[0] = true;
            begins[1] = true;
            ends[2] = true;
            LeastWays ways = new LeastWays(places, cells, DoubleLists.immutable.of(conductivities));
            LeastWays.Reach found = ways.reach(begins, ends, Double.POSITIVE_INFINITY);
            double[] lowered = lowered(places, cells, conductivities, begins, ends);
            // Where the search stops at the first end it comes to, that one must be the least already.
            assertEquals(lowered[2], ways.reach(begins, ends, 1).least()[2], EXACT);
            assertArrayEquals(lowered, found.least(), EXACT);
            assertEquals(lowered[2] < Double.POSITIVE_INFINITY ? 2 : -1, found.end());
            for (int point = 0; point < POINTS; point++) {
                ImmutableList<Integer> way = found.to(point);
                assertEquals(point, way.getLast());
                assertTrue(way.size() == 1 || begins[way.getFirst()], way::toString);
            }
        }
    }

    private static double[] lowered(
            ImmutableList<Coordinate> places,
            ImmutableList<int[]> cells,
            double[] conductivities,
            boolean[] begins,
            boolean[] ends) {
        double[] least = new double[POINTS];
        for (int point = 0; point < POINTS; point++) {
            least[point] = begins[point] ? 0 : Double.POSITIVE_INFINITY;
        }
        for (double[] last = null; !Arrays.equals(last, least); ) {
            last = least.clone();
            for (int cell = 0; cell < cells.size(); cell++) {
                for (int a : cells.get(cell)) {
                    for (int b : cells.get(cell)) {
                        double dx = places.get(a).x - places.get(b).x;
                        double dy = places.get(a).y - places.get(b).y;
                        double more = Math.sqrt(dx * dx + dy * dy) / conductivities[cell];
                        least[b] = ends[a] ? least[b] : Math.min(least[b], least[a] + more);
                    }
                }
            }
        }
        return least;
    }

    /** Four equal ways around a square: of points as far from the beginning the first is gone on from. */
    @Test
    void equalWaysGoOverTheFirstPoint() {
        ImmutableList<Coordinate> corners = Lists.immutable.of(
                new Coordinate(0, 0), new Coordinate(1, 0), new Coordinate(0, 1), new Coordinate(1, 1));
        LeastWays ways = new LeastWays(
                corners,
                Lists.immutable.of(new int[] {0, 2}, new int[] {2, 3}, new int[] {0, 1}, new int[] {1, 3}),
                DoubleLists.immutable.of(1, 1, 1, 1));
        LeastWays.Reach found =
                ways.reach(new boolean[] {true, false, false, false}, new boolean[] {false, false, false, true}, 1);
        assertEquals(Lists.immutable.of(0, 1, 3), found.to(found.end()));
        assertEquals(2, found.least()[3], EXACT);
    }
}
