package coldseam.junctions.path;

import java.util.Arrays;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;

/**
 * The least ways over points, each pair of which is joined where both lie on one cell (E. W. Dijkstra, A note on two problems
 * in connexion with graphs, Numerische Mathematik 1, 1959, pp. 269–271).
 *
 * <p>Of two points as near to the beginning as each other the one with the smaller number is gone on from first, so that the
 * answer hangs on nothing else.
 */
final class LeastWays {

    /** Of a resistance: far more than sums and differences of such are rounded by, far less than ways differ by. */
    private static final double ROUNDING = 1e-12;

    private final double[] x;
    private final double[] y;
    /** The points of each cell, and its conductivity, W/(m·K). */
    private final int[][] cells;

    private final double[] conductivities;
    /** The cells of point i are {@code on[first[i]..first[i + 1] - 1]}. */
    private final int[] first;

    private final int[] on;

    /** A heap of points by the resistance from the beginning, each once; {@code at} says where in it, or that it is not. */
    private final int[] heap;

    private final int[] at;
    private double[] least = {};
    private int held;

    /**
     * @param places m, of all points; those on no cell are not reached
     * @param cells the points on each, none of them twice
     * @param conductivities W/(m·K), of the cells
     */
    LeastWays(ImmutableList<Coordinate> places, ImmutableList<int[]> cells, ImmutableDoubleList conductivities) {
        this.x = places.collectDouble(each -> each.x).toArray();
        this.y = places.collectDouble(each -> each.y).toArray();
        this.cells = cells.toArray(new int[0][]);
        this.conductivities = conductivities.toArray();
        this.first = new int[x.length + 1];
        cells.each(points -> {
            for (int point : points) {
                first[point + 1]++;
            }
        });
        for (int i = 0; i < x.length; i++) {
            first[i + 1] += first[i];
        }
        this.on = new int[first[x.length]];
        this.heap = new int[x.length];
        this.at = new int[x.length];
        int[] next = first.clone();
        for (int cell = 0; cell < this.cells.length; cell++) {
            for (int point : this.cells[cell]) {
                on[next[point]++] = cell;
            }
        }
    }

    /**
     * The least ways to every point.
     *
     * @param least their resistances, m²·K/W; not the least yet, or infinite, where it costs too much or none leads
     * @param before the point before each; negative at a beginning
     * @param end where the least of all ways arrives; negative where none does
     */
    record Reach(double[] least, int[] before, int end) {

        /** From its beginning to a point. */
        ImmutableList<Integer> to(int point) {
            var chain = Lists.mutable.<Integer>empty();
            for (int at = point; at >= 0; at = before[at]) {
                chain.add(at);
            }
            return chain.reverseThis().toImmutable();
        }
    }

    /**
     * Seeks them.
     *
     * @param begins whether a way may begin at a point
     * @param ends whether it ends there, beyond which none goes
     * @param far ways that cost more than so many times the least are not followed to their ends
     */
    Reach reach(boolean[] begins, boolean[] ends, double far) {
        double[] costs = new double[x.length];
        int[] before = new int[x.length];
        Arrays.fill(costs, Double.POSITIVE_INFINITY);
        Arrays.fill(before, -1);
        Arrays.fill(at, -1);
        least = costs;
        held = 0;
        for (int point = 0; point < x.length; point++) {
            if (begins[point]) {
                costs[point] = 0;
                put(point);
            }
        }
        int end = -1;
        while (held > 0) {
            int here = takeFirst();
            double cost = costs[here];
            if (end >= 0 && cost > far * costs[end]) {
                break;
            }
            if (ends[here]) {
                end = end < 0 ? here : end;
                continue;
            }
            double fromX = x[here];
            double fromY = y[here];
            for (int i = first[here]; i < first[here + 1]; i++) {
                double conductivity = conductivities[on[i]];
                for (int next : cells[on[i]]) {
                    double known = costs[next];
                    if (known <= cost) {
                        continue;
                    }
                    double dx = fromX - x[next];
                    double dy = fromY - y[next];
                    double square = dx * dx + dy * dy;
                    // Most ways are no better, which shows without a root and a quotient.
                    double within = (known - cost + ROUNDING * known) * conductivity;
                    if (square > within * within) {
                        continue;
                    }
                    double total = cost + Math.sqrt(square) / conductivity;
                    if (total < known) {
                        costs[next] = total;
                        before[next] = here;
                        put(next);
                    }
                }
            }
        }
        return new Reach(costs, before, end);
    }

    private boolean goesBefore(int point, int other) {
        return least[point] < least[other] || least[point] == least[other] && point < other;
    }

    /** Puts a point in, or moves it up where it is in. */
    private void put(int point) {
        int place = at[point] < 0 ? held++ : at[point];
        while (place > 0) {
            int above = heap[(place - 1) >>> 1];
            if (!goesBefore(point, above)) {
                break;
            }
            set(place, above);
            place = (place - 1) >>> 1;
        }
        set(place, point);
    }

    private int takeFirst() {
        int taken = heap[0];
        int point = heap[--held];
        int place = 0;
        for (int below = 1; below < held; below = 2 * place + 1) {
            int other = below + 1;
            if (other < held && goesBefore(heap[other], heap[below])) {
                below = other;
            }
            if (!goesBefore(heap[below], point)) {
                break;
            }
            set(place, heap[below]);
            place = below;
        }
        set(place, point);
        at[taken] = -1;
        return taken;
    }

    private void set(int place, int point) {
        heap[place] = point;
        at[point] = place;
    }
}
