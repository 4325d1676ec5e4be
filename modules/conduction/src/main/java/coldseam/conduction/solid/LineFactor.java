package coldseam.conduction.solid;

/**
 * The mass matrices of the fluxes along lines of cells, factored: LDLᵀ of half-bandwidth 2 for each run of solid cells in
 * one direction.
 *
 * <p>Along a run of m cells there are 2 m + 1 nodes; cell i adds (h_i/k_i) M to nodes 2 i to 2 i + 2, a surface its
 * resistance R to the node at its end. A node at an end that is adiabatic carries no flux: its pivot is 0 and its row and
 * column are empty. All four lines of sub-faces of a run share the factor.
 */
final class LineFactor {

    private static final double[][] MASS = {
        {4 / 30.0, 2 / 30.0, -1 / 30.0}, {2 / 30.0, 16 / 30.0, 2 / 30.0}, {-1 / 30.0, 2 / 30.0, 4 / 30.0}
    };

    /** The cells of all runs, run after run. */
    final int[] cell;
    /** Where each run begins in {@code cell}; one more than there are runs. */
    final int[] start;
    /** How many runs there are. */
    final int runs;
    /** Of each cell the node at its low face; the nodes of a run follow each other. */
    final int[] nodeOfCell;
    /** How many nodes there are. */
    final int nodes;

    private final double[] inverse;
    private final double[] one;
    private final double[] two;

    LineFactor(Grid grid, int d) {
        cell = new int[grid.cells];
        nodeOfCell = new int[grid.cells];
        int[] begin = new int[grid.cells + 1];
        int count = 0;
        int run = 0;
        for (int first = 0; first < grid.cells; first++) {
            if (grid.side[6 * first + 2 * d] >= 0) {
                continue;
            }
            begin[run] = count;
            for (int c = first; c >= 0; c = grid.side[6 * c + 2 * d + 1]) {
                nodeOfCell[c] = 2 * count + run;
                cell[count++] = c;
            }
            run++;
        }
        begin[run] = count;
        runs = run;
        start = java.util.Arrays.copyOf(begin, run + 1);
        nodes = 2 * count + run;
        inverse = new double[nodes];
        one = new double[nodes];
        two = new double[nodes];
        for (int r = 0; r < runs; r++) {
            factor(grid, d, r);
        }
    }

    private void factor(Grid grid, int d, int r) {
        int first = nodeOfCell[cell[start[r]]];
        int last = first + 2 * (start[r + 1] - start[r]);
        for (int i = start[r]; i < start[r + 1]; i++) {
            int at = nodeOfCell[cell[i]];
            double f = grid.size(cell[i], d) / grid.k[cell[i]];
            for (int a = 0; a < 3; a++) {
                inverse[at + a] += f * MASS[a][a];
            }
            one[at + 1] += f * MASS[1][0];
            one[at + 2] += f * MASS[2][1];
            two[at + 2] += f * MASS[2][0];
        }
        end(grid.painted, grid.surface(cell[start[r]], 2 * d), first, first);
        end(grid.painted, grid.surface(cell[start[r + 1] - 1], 2 * d + 1), last, first);
        for (int t = first; t <= last; t++) {
            // L(t, t−2) D = A(t, t−2); L(t, t−1) D = A(t, t−1) − L(t, t−2) D L(t−1, t−2)
            double d2 = t - 2 >= first ? two[t] * inverse[t - 2] : 0;
            double d1 = t - 1 >= first ? (one[t] - (t - 2 >= first ? two[t] * one[t - 1] : 0)) * inverse[t - 1] : 0;
            double pivot = inverse[t]
                    - (t - 2 >= first ? d2 * two[t] : 0)
                    - (t - 1 >= first ? d1 * (one[t] - (t - 2 >= first ? two[t] * one[t - 1] : 0)) : 0);
            two[t] = d2;
            one[t] = d1;
            inverse[t] = inverse[t] == 0 ? 0 : 1 / pivot;
        }
    }

    /** The node at an end: its surface's resistance, or nothing at all. */
    private void end(PaintedGrid painted, int surface, int at, int first) {
        if (surface >= 0) {
            inverse[at] += painted.resistance(surface);
            return;
        }
        inverse[at] = 0;
        if (at == first) {
            one[at + 1] = 0;
            two[at + 2] = 0;
        } else {
            one[at] = 0;
            two[at] = 0;
        }
    }

    /** Solves for four lines at once, in place; w holds four values a node from the run's first node on. */
    void solve(int first, int count, double[] w) {
        double[] near = one;
        double[] far = two;
        double[] whole = inverse;
        for (int t = 1; t < count; t++) {
            double l1 = near[first + t];
            double l2 = far[first + t];
            int end = 4 * t + 4;
            if (t == 1) {
                for (int i = 4; i < end; i++) {
                    w[i] -= l1 * w[i - 4];
                }
            } else {
                for (int i = end - 4; i < end; i++) {
                    w[i] -= l1 * w[i - 4] + l2 * w[i - 8];
                }
            }
        }
        for (int t = count - 1; t >= 0; t--) {
            double l0 = whole[first + t];
            double l1 = t + 1 < count ? near[first + t + 1] : 0;
            double l2 = t + 2 < count ? far[first + t + 2] : 0;
            int end = 4 * t + 4;
            if (t + 2 < count) {
                for (int i = end - 4; i < end; i++) {
                    w[i] = l0 * w[i] - l1 * w[i + 4] - l2 * w[i + 8];
                }
            } else {
                for (int i = end - 4; i < end; i++) {
                    w[i] = l0 * w[i] - (t + 1 < count ? l1 * w[i + 4] : 0);
                }
            }
        }
    }
}
