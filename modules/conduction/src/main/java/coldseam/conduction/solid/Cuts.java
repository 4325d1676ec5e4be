package coldseam.conduction.solid;

import java.util.Arrays;

/** Which slabs of a grid are cut, and where. */
final class Cuts {

    private final Grid grid;
    private final double[][][] at;
    private final double[][] plane = new double[3][];
    private final int[][] before = new int[3][];
    private final double[][][][] nodes = new double[3][][][];

    /** None. */
    Cuts(Grid grid) {
        this(grid, new double[][][] {new double[grid.n[0]][0], new double[grid.n[1]][0], new double[grid.n[2]][0]});
    }

    /** @param at of each direction and slab the places of the cuts as shares of the slab, ascending */
    private Cuts(Grid grid, double[][][] at) {
        this.grid = grid;
        this.at = at;
        for (int d = 0; d < 3; d++) {
            cut(d, at[d]);
        }
    }

    /** These and another: of a slab, at a share of it. */
    Cuts with(int d, int slab, double share) {
        double[][][] all = at.clone();
        all[d] = at[d].clone();
        double[] cuts = Arrays.copyOf(at[d][slab], at[d][slab].length + 1);
        cuts[cuts.length - 1] = share;
        Arrays.sort(cuts);
        all[d][slab] = cuts;
        return new Cuts(grid, all);
    }

    private void cut(int d, double[][] at) {
        int n = grid.n[d];
        int count = n;
        for (double[] cuts : at) {
            count += cuts.length;
        }
        plane[d] = new double[count + 1];
        before[d] = new int[count];
        nodes[d] = new double[count][][];
        plane[d][0] = grid.plane[d][0];
        int slab = 0;
        for (int i = 0; i < n; i++) {
            double low = grid.plane[d][i];
            double high = grid.plane[d][i + 1];
            double from = 0;
            for (int j = 0; j <= at[i].length; j++) {
                double to = j < at[i].length ? at[i][j] : 1;
                nodes[d][slab] = weights(from, to);
                before[d][slab] = i;
                plane[d][++slab] = to < 1 ? low + to * (high - low) : high;
                from = to;
            }
        }
    }

    private static double[][] weights(double from, double to) {
        return new double[][] {Basis.nodal(from), Basis.nodal(0.5 * (from + to)), Basis.nodal(to)};
    }

    /** m, where the slabs of the cut grid begin in a direction, and its end. */
    double[] planes(int d) {
        return plane[d].clone();
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
