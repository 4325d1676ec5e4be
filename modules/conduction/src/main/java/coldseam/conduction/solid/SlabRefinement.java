package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * Chooses the slabs of a grid that are cut, and where.
 *
 * <p>A slab's score is its share of the gap times the number of slabs in its direction: what is gained over what the cut
 * costs, since a plane runs through the whole grid. The best are cut, down to a fifth of the best score, until the grid
 * has grown as much as is asked. A slab is cut nearer to the side where its gap lies, which grades the grid towards
 * edges; always in the middle took about five times as many cells on a bracket.
 */
final class SlabRefinement {

    private static final double LEAST_SCORE = 0.2;
    /** A mean place of the gap farther from the middle than this is cut at the first of {@link #AT}, and so on. */
    private static final double[] LEAN = {0.25, 0.12};

    private static final double[] AT = {0.15, 0.28};

    private SlabRefinement() {}

    /**
     * @param growth of the number of cells, greater than 1
     * @param mostCells how many cells there may be
     * @return cuts of no slab where none may be cut
     */
    static Cuts choose(Grid grid, BodyBounds bounds, double growth, int mostCells) {
        int slabs = grid.n[0] + grid.n[1] + grid.n[2];
        double[] score = new double[slabs];
        int[] direction = new int[slabs];
        int[] index = new int[slabs];
        Integer[] order = new Integer[slabs];
        int count = 0;
        double best = 0;
        for (int d = 0; d < 3; d++) {
            for (int i = 0; i < grid.n[d]; i++, count++) {
                score[count] = bounds.share[d][i] * grid.n[d];
                direction[count] = d;
                index[count] = i;
                order[count] = count;
                best = Math.max(best, score[count]);
            }
        }
        Arrays.sort(order, (a, b) -> score[a] != score[b] ? Double.compare(score[b], score[a]) : a - b);
        double[][] at = {new double[grid.n[0]], new double[grid.n[1]], new double[grid.n[2]]};
        Cuts cuts = new Cuts(grid, at);
        for (int o : order) {
            if (score[o] < LEAST_SCORE * best || cuts.cells() >= growth * grid.cells) {
                break;
            }
            int d = direction[o];
            int i = index[o];
            double place = place(grid, bounds, d, i);
            if (place > 0) {
                at[d][i] = place;
                Cuts more = new Cuts(grid, at);
                if (more.cells() > mostCells) {
                    at[d][i] = 0;
                } else {
                    cuts = more;
                }
            }
        }
        return cuts;
    }

    /**
     * Cuts the slabs beside a place, nearer to it than to their other faces, so that the temperature there becomes known.
     *
     * @param thinnest m, to which a slab may be cut
     * @param mostCells how many cells there may be
     * @return cuts of no slab where none may be cut
     */
    static Cuts beside(Grid grid, Place place, double thinnest, int mostCells) {
        double[][] at = {new double[grid.n[0]], new double[grid.n[1]], new double[grid.n[2]]};
        Cuts cuts = new Cuts(grid, at);
        for (int d = 0; d < 3; d++) {
            for (int i = 0; i < grid.n[d]; i++) {
                double share = beside(grid.plane[d][i], grid.plane[d][i + 1], place.along(d), thinnest);
                if (share > 0) {
                    at[d][i] = share;
                    Cuts more = new Cuts(grid, at);
                    if (more.cells() > mostCells) {
                        return cuts;
                    }
                    cuts = more;
                }
            }
        }
        return cuts;
    }

    private static double beside(double low, double high, double at, double thinnest) {
        boolean touches = at > low - SolidBody.SNAP && at < high + SolidBody.SNAP;
        double share = at - low < high - at ? AT[1] : 1 - AT[1];
        return touches && AT[1] * (high - low) >= thinnest ? share : 0;
    }

    /** Where a slab is cut, as a share of it; 0 where it is too thin. */
    private static double place(Grid grid, BodyBounds bounds, int d, int i) {
        double thickness = grid.plane[d][i + 1] - grid.plane[d][i];
        double lean = bounds.share[d][i] > 0 ? bounds.moment[d][i] / bounds.share[d][i] : 0;
        double place = 0.5;
        for (int l = LEAN.length - 1; l >= 0; l--) {
            place = Math.abs(lean) > LEAN[l] ? AT[l] : place;
        }
        if (place * thickness < SolidBody.SNAP) {
            place = 0.5;
        }
        if (place * thickness < SolidBody.SNAP) {
            return 0;
        }
        return lean > 0 ? 1 - place : place;
    }
}
