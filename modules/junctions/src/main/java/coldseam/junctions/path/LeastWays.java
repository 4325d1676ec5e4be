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

    private final double[] x;
    private final double[] y;
    /** The points of each cell, and its conductivity, W/(m·K). */
    private final int[][] cells;

    private final ImmutableDoubleList conductivities;
    /** The cells of point i are {@code on[first[i]..first[i + 1] - 1]}. */
    private final int[] first;

    private final int[] on;

    // A heap of points by the resistance from the beginning; one may come more than once.
    private double[] costs = new double[256];
    private int[] points = new int[256];
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
        this.conductivities = conductivities;
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
        double[] least = new double[x.length];
        int[] before = new int[x.length];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(before, -1);
        held = 0;
        for (int point = 0; point < x.length; point++) {
            if (begins[point]) {
                least[point] = 0;
                put(0, point);
            }
        }
        int end = -1;
        while (held > 0) {
            double cost = costs[0];
            int here = points[0];
            takeFirst();
            if (end >= 0 && cost > far * least[end]) {
                break;
            }
            if (cost > least[here]) {
                continue;
            }
            if (ends[here]) {
                end = end < 0 ? here : end;
                continue;
            }
            for (int i = first[here]; i < first[here + 1]; i++) {
                double conductivity = conductivities.get(on[i]);
                for (int next : cells[on[i]]) {
                    if (least[next] <= cost) {
                        continue;
                    }
                    double dx = x[here] - x[next];
                    double dy = y[here] - y[next];
                    double total = cost + Math.sqrt(dx * dx + dy * dy) / conductivity;
                    if (total < least[next]) {
                        least[next] = total;
                        before[next] = here;
                        put(total, next);
                    }
                }
            }
        }
        return new Reach(least, before, end);
    }

    private static boolean goesBefore(double cost, int point, double other, int otherPoint) {
        return cost < other || cost == other && point < otherPoint;
    }

    private void put(double cost, int point) {
        if (held == costs.length) {
            costs = Arrays.copyOf(costs, 2 * held);
            points = Arrays.copyOf(points, 2 * held);
        }
        int at = held++;
        while (at > 0) {
            int above = (at - 1) >>> 1;
            if (!goesBefore(cost, point, costs[above], points[above])) {
                break;
            }
            costs[at] = costs[above];
            points[at] = points[above];
            at = above;
        }
        costs[at] = cost;
        points[at] = point;
    }

    private void takeFirst() {
        held--;
        double cost = costs[held];
        int point = points[held];
        int at = 0;
        for (int below = 1; below < held; below = 2 * at + 1) {
            int other = below + 1;
            if (other < held && goesBefore(costs[other], points[other], costs[below], points[below])) {
                below = other;
            }
            if (!goesBefore(costs[below], points[below], cost, point)) {
                break;
            }
            costs[at] = costs[below];
            points[at] = points[below];
            at = below;
        }
        costs[at] = cost;
        points[at] = point;
    }
}
