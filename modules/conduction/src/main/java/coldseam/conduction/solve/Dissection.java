package coldseam.conduction.solve;

import coldseam.conduction.mesh.Mesh;
import java.util.Arrays;

/**
 * A nested dissection of the triangles: halved again and again at the median of their centres (A. George, Nested
 * dissection of a regular finite element mesh, SIAM Journal on Numerical Analysis 10, 1973, pp. 345–363).
 *
 * <p>Block b holds the triangles {@code order[first[b]..end[b]-1]}; its halves are {@code half[2b]} and
 * {@code half[2b+1]}, or -1. Halves come before the whole, so counting up walks the tree from the leaves to the root.
 *
 * <p>Of four directions (the sides of the block's box and its diagonals) the one is taken whose halves share fewest
 * sides: sides of bisected triangles run along the diagonals as often as along the axes. Once a mesh has enough triangles,
 * its dissection is kept when it is refined, and only leaves that have grown are halved.
 */
public final class Dissection {

    /** Blocks of so few triangles are not halved. */
    private static final int LEAF = 8;
    /** Blocks of so few triangles are halved across the longer side of their box. */
    private static final int SIMPLE = 16;
    /** A dissection of so few triangles is not kept. */
    private static final int KEPT = 250;
    /** Directions, each of which and its number's lowest bit turned are of one sort. */
    private static final int ALONG = 0;

    private static final int ACROSS = 1;
    private static final int FALLING = 3;
    private static final int DIRECTIONS = 4;
    /** Across a block's box. */
    private static final double PLACES = 1 << 29;

    int blocks;
    int[] order = new int[0];
    int[] first = new int[0];
    int[] end = new int[0];
    int[] half = new int[0];

    private Mesh mesh;
    private boolean keep;
    /** The triangles' centres. */
    private double[] cx = new double[0];

    private double[] cy = new double[0];
    /** The triangles of the block at work, each behind its place in a direction: sorted as far as halves ask, and the best so. */
    private long[] sorted = new long[0];

    private long[] best = new long[0];
    private int[] oldHalf = new int[0];
    private int[] oldStart = new int[0];
    /** When a triangle was last in a first half. */
    private int[] seen = new int[0];

    private int stamp;

    /** Forgets the last mesh; the next one is dissected afresh. */
    void restart() {
        keep = false;
    }

    /** Dissects a mesh: the last one refined, or any after {@link #restart}. */
    void run(Mesh of) {
        mesh = of;
        int n = mesh.triangles;
        int old = blocks;
        if (keep) {
            remember();
        }
        reserve(n);
        for (int t = 0; t < n; t++) {
            int o = 6 * t;
            cx[t] = mesh.x[mesh.node[o]] + mesh.x[mesh.node[o + 1]] + mesh.x[mesh.node[o + 2]];
            cy[t] = mesh.y[mesh.node[o]] + mesh.y[mesh.node[o + 1]] + mesh.y[mesh.node[o + 2]];
        }
        blocks = 0;
        if (keep) {
            sortByLeaf(old);
            grow(old - 1);
        } else {
            for (int t = 0; t < n; t++) {
                order[t] = t;
            }
            split(0, n);
        }
        keep = n > KEPT;
        for (int b = 0; b < blocks && keep; b++) {
            for (int i = first[b]; i < end[b] && half[2 * b] < 0; i++) {
                mesh.leaf[order[i]] = b;
            }
        }
    }

    private void reserve(int n) {
        if (order.length < n) {
            int room = n + n / 2;
            order = new int[room];
            cx = new double[room];
            cy = new double[room];
            sorted = new long[room];
            best = new long[room];
            first = new int[room + 2];
            end = new int[room + 2];
            half = new int[2 * room + 4];
            seen = new int[room];
        }
    }

    private void remember() {
        if (oldHalf.length < 2 * blocks) {
            oldHalf = new int[3 * blocks];
            oldStart = new int[2 * blocks];
        }
        System.arraycopy(half, 0, oldHalf, 0, 2 * blocks);
    }

    /** Orders the triangles by the leaf they, or the triangle they come from, were in. */
    private void sortByLeaf(int leaves) {
        Arrays.fill(oldStart, 0, leaves + 1, 0);
        for (int t = 0; t < mesh.triangles; t++) {
            oldStart[mesh.leaf[t] + 1]++;
        }
        for (int b = 0; b < leaves; b++) {
            oldStart[b + 1] += oldStart[b];
        }
        for (int t = 0; t < mesh.triangles; t++) {
            order[oldStart[mesh.leaf[t]]++] = t;
        }
    }

    /** Builds an old block's tree again, its leaves halved where they have grown. */
    private int grow(int old) {
        if (oldHalf[2 * old] < 0) {
            return split(old == 0 ? 0 : oldStart[old - 1], oldStart[old]);
        }
        int a = grow(oldHalf[2 * old]);
        int b = grow(oldHalf[2 * old + 1]);
        return block(first[a], end[b], a, b);
    }

    private int split(int from, int to) {
        int a = -1;
        int b = -1;
        if (to - from > LEAF) {
            int middle = (from + to) >>> 1;
            halve(from, middle, to);
            a = split(from, middle);
            b = split(middle, to);
        }
        return block(from, to, a, b);
    }

    private int block(int from, int to, int a, int b) {
        int block = blocks++;
        first[block] = from;
        end[block] = to;
        half[2 * block] = a;
        half[2 * block + 1] = b;
        return block;
    }

    private void halve(int from, int middle, int to) {
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = from; i < to; i++) {
            double px = cx[order[i]];
            double py = cy[order[i]];
            left = Math.min(left, px);
            right = Math.max(right, px);
            low = Math.min(low, py);
            high = Math.max(high, py);
        }
        double perWidth = PLACES / Math.max(right - left, Double.MIN_NORMAL);
        double perHeight = PLACES / Math.max(high - low, Double.MIN_NORMAL);
        int first = right - left >= high - low ? ALONG : ACROSS;
        int fewest = Integer.MAX_VALUE;
        for (int i = 0; i < (to - from <= SIMPLE ? 1 : DIRECTIONS); i++) {
            int direction = first ^ i;
            double across = direction == ACROSS ? 0 : perWidth;
            double up = direction == ALONG ? 0 : direction == FALLING ? -perHeight : perHeight;
            // As much as a falling diagonal would be below zero.
            double zero = direction == FALLING ? PLACES : 0;
            for (int j = from; j < to; j++) {
                int t = order[j];
                sorted[j] = (long) (zero + across * (cx[t] - left) + up * (cy[t] - low)) << Integer.SIZE | t;
            }
            select(from, to - 1, middle);
            int n = to - from <= SIMPLE ? 0 : shared(from, middle, to);
            if (n < fewest) {
                fewest = n;
                long[] swap = best;
                best = sorted;
                sorted = swap;
            }
        }
        for (int i = from; i < to; i++) {
            order[i] = (int) best[i];
        }
    }

    /** How many sides the halves share. */
    private int shared(int from, int middle, int to) {
        int count = 0;
        stamp++;
        for (int i = from; i < middle; i++) {
            seen[(int) sorted[i]] = stamp;
        }
        for (int i = middle; i < to; i++) {
            int o = 3 * (int) sorted[i];
            for (int j = o; j < o + 3; j++) {
                int u = mesh.neighbour[j];
                count += u >= 0 && seen[u] == stamp ? 1 : 0;
            }
        }
        return count;
    }

    /**
     * Puts the smaller ones before position k (C. A. R. Hoare, Algorithm 65: Find, CACM 4, 1961). Which side of a pivot one belongs to
     * moves a place instead of deciding a branch, since no processor foresees it.
     */
    private void select(int from, int to, int k) {
        long[] a = sorted;
        int lo = from;
        int hi = to;
        while (lo < hi) {
            int at = (lo + hi) >>> 1;
            long pivot = Math.max(Math.min(a[lo], a[at]), Math.min(Math.max(a[lo], a[at]), a[hi]));
            at = pivot == a[lo] ? lo : pivot == a[hi] ? hi : at;
            a[at] = a[hi];
            int i = lo;
            for (int j = lo; j < hi; j++) {
                long each = a[j];
                a[j] = a[i];
                a[i] = each;
                i += (int) (each - pivot >>> Long.SIZE - 1);
            }
            a[hi] = a[i];
            a[i] = pivot;
            if (k < i) {
                hi = i - 1;
            } else if (k > i) {
                lo = i + 1;
            } else {
                return;
            }
        }
    }
}
