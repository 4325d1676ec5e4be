package coldseam.conduction.solid;

import java.util.Arrays;

/** Which slabs of a grid are cut, and where. */
final class Cuts {

    private final Grid grid;
    private final double[][] plane = new double[3][];
    private final int[][] before = new int[3][];
    private final double[][][][] nodes = new double[3][][][];

    /**
     * @param grid which is cut
     * @param at of each direction and slab the place of the cut as a share of the slab, 0 where it stays whole
     */
    Cuts(Grid grid, double[][] at) {
        this.grid = grid;
        for (int d = 0; d < 3; d++) {
            cut(d, at[d]);
        }
    }

    private void cut(int d, double[] at) {
        int n = grid.n[d];
        double[] planes = new double[2 * n + 1];
        int[] old = new int[2 * n];
        double[][][] weights = new double[2 * n][][];
        planes[0] = grid.plane[d][0];
        int count = 0;
        for (int i = 0; i < n; i++) {
            double low = grid.plane[d][i];
            double high = grid.plane[d][i + 1];
            if (at[i] > 0) {
                weights[count] = weights(0, at[i]);
                old[count] = i;
                planes[++count] = low + at[i] * (high - low);
            }
            weights[count] = weights(at[i], 1);
            old[count] = i;
            planes[++count] = high;
        }
        plane[d] = Arrays.copyOf(planes, count + 1);
        before[d] = Arrays.copyOf(old, count);
        nodes[d] = Arrays.copyOf(weights, count);
    }

    private static double[][] weights(double from, double to) {
        return new double[][] {Basis.nodal(from), Basis.nodal(0.5 * (from + to)), Basis.nodal(to)};
    }

    /** The slab that a slab of the cut grid is a piece of. */
    int before(int d, int slab) {
        return before[d][slab];
    }

    /** The values of the old slab's three functions at the new slab's three nodes. */
    double[][] nodes(int d, int slab) {
        return nodes[d][slab];
    }

    /** How many cells the cut grid has. */
    int cells() {
        return grid.cellsWith(parents());
    }

    Grid grid() {
        return new Grid(grid.painted, plane, parents());
    }

    private int[][] parents() {
        int[][] parents = new int[3][];
        for (int d = 0; d < 3; d++) {
            parents[d] = new int[before[d].length];
            for (int i = 0; i < parents[d].length; i++) {
                parents[d][i] = grid.parent[d][before[d][i]];
            }
        }
        return parents;
    }
}
