package coldseam.conduction;

/**
 * A nested dissection of the triangles: halved again and again at the median of their centres.
 *
 * <p>Block b holds the triangles {@code order[first[b]..end[b]-1]}; its halves are {@code half[2b]} and
 * {@code half[2b+1]}, or -1. Halves come before the whole, so counting up walks the tree from the leaves to the root (A.
 * George, Nested dissection of a regular finite element mesh, SIAM Journal on Numerical Analysis 10, 1973, pp. 345–363).
 */
final class Dissection {

    /** Blocks of so few triangles are not halved. */
    private static final int LEAF = 8;

    int blocks;
    int[] order = new int[0];
    int[] first = new int[0];
    int[] end = new int[0];
    int[] half = new int[0];

    private double[] cx = new double[0];
    private double[] cy = new double[0];

    void run(Mesh mesh) {
        int n = mesh.triangles;
        if (order.length < n) {
            int room = n + n / 2;
            order = new int[room];
            cx = new double[room];
            cy = new double[room];
            first = new int[room + 2];
            end = new int[room + 2];
            half = new int[2 * room + 4];
        }
        for (int t = 0; t < n; t++) {
            int o = 6 * t;
            order[t] = t;
            cx[t] = mesh.x[mesh.node[o]] + mesh.x[mesh.node[o + 1]] + mesh.x[mesh.node[o + 2]];
            cy[t] = mesh.y[mesh.node[o]] + mesh.y[mesh.node[o + 1]] + mesh.y[mesh.node[o + 2]];
        }
        blocks = 0;
        split(0, n);
    }

    private int split(int from, int to) {
        int a = -1;
        int b = -1;
        if (to - from > LEAF) {
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
            int middle = (from + to) >>> 1;
            select(right - left >= high - low ? cx : cy, from, to - 1, middle);
            a = split(from, middle);
            b = split(middle, to);
        }
        int block = blocks++;
        first[block] = from;
        end[block] = to;
        half[2 * block] = a;
        half[2 * block + 1] = b;
        return block;
    }

    /** Puts the triangles with smaller keys before position k (C. A. R. Hoare, Algorithm 65: Find, CACM 4, 1961). */
    private void select(double[] key, int from, int to, int k) {
        int lo = from;
        int hi = to;
        while (lo < hi) {
            double pivot = key[order[(lo + hi) >>> 1]];
            int i = lo;
            int j = hi;
            while (i <= j) {
                while (key[order[i]] < pivot) {
                    i++;
                }
                while (key[order[j]] > pivot) {
                    j--;
                }
                if (i <= j) {
                    int swap = order[i];
                    order[i++] = order[j];
                    order[j--] = swap;
                }
            }
            if (k <= j) {
                hi = j;
            } else if (k >= i) {
                lo = i;
            } else {
                return;
            }
        }
    }
}
