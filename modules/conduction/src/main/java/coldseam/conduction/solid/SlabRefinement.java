package coldseam.conduction.solid;

import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Chooses the slabs of a grid that are cut, and where.
 *
 * <p>A slab's score is its share of the gap times the number of slabs in its direction: what is gained over what the cut
 * costs, since a plane runs through the whole grid. The best is cut, nearer to the side where its gap lies, which grades the
 * grid towards edges; always in the middle took about five times as many cells on a bracket. Its pieces then stand for it with
 * what they are expected to have of its gap, and may be cut in turn, so that one step narrows the gap as much as several levels
 * of single cuts.
 */
final class SlabRefinement {

    /**
     * How a slab is cut, and what is left in its pieces, in the mean of 900 cuts of the demo house's bodies.
     *
     * @param lean of the gap's mean place off the middle, from which on a slab is cut so
     * @param at where, as a share of the slab from the side that it leans to
     * @param near share of its gap in the piece on that side
     * @param far in the other
     * @param nearLean how that piece's gap leans, outwards
     * @param farLean how the other's does, to the same side
     */
    private record Way(double lean, double at, double near, double far, double nearLean, double farLean) {

        static final Way LEANING = new Way(0.12, 0.28, 0.09, 0.043, 0.2, 0.08);
        static final Way MIDDLE = new Way(0, 0.5, 0.14, 0.06, 0.2, -0.2);
        private static final Way AT_A_SIDE = new Way(0.25, 0.15, 0.084, 0.06, 0.3, 0.18);

        /** Of a piece; in the middle, too, where it is too thin for the other. */
        static Way of(Piece piece, double thickness) {
            double lean = Math.abs(piece.lean);
            Way way = lean > AT_A_SIDE.lean ? AT_A_SIDE : lean > LEANING.lean ? LEANING : MIDDLE;
            return way.at * thickness < SolidBody.SNAP ? MIDDLE : way;
        }
    }

    /** A slab or a piece of it: between which shares of it, what it has of the gap, and how far that lies off its middle. */
    private record Piece(int direction, int slab, double from, double to, double gap, double lean) {

        double cut(Way way) {
            return from + (lean > 0 ? 1 - way.at : way.at) * (to - from);
        }

        Piece low(Way way) {
            return lean > 0
                    ? piece(from, cut(way), way.far, way.farLean)
                    : piece(from, cut(way), way.near, -way.nearLean);
        }

        Piece high(Way way) {
            return lean > 0 ? piece(cut(way), to, way.near, way.nearLean) : piece(cut(way), to, way.far, -way.farLean);
        }

        private Piece piece(double low, double high, double share, double leaning) {
            return new Piece(direction, slab, low, high, share * gap, leaning);
        }
    }

    private SlabRefinement() {}

    /**
     * Cuts until the gap may be taken for as much narrower as is asked.
     *
     * @param narrowing how many times, greater than 1
     * @param mostCells how many cells there may be
     * @return cuts of no slab where none may be cut
     */
    static Cuts choose(Grid grid, BodyBounds bounds, double narrowing, int mostCells) {
        MutableList<Piece> pieces = Lists.mutable.empty();
        int[] slabs = grid.n.clone();
        for (int d = 0; d < 3; d++) {
            for (int i = 0; i < grid.n[d]; i++) {
                double gap = bounds.share[d][i];
                pieces.add(new Piece(d, i, 0, 1, gap, gap > 0 ? bounds.moment[d][i] / gap : 0));
            }
        }
        double left = pieces.sumOfDouble(Piece::gap);
        double goal = left / narrowing;
        Cuts cuts = new Cuts(grid);
        while (left > goal && pieces.notEmpty()) {
            Piece piece = pieces.maxBy(each -> each.gap * slabs[each.direction]);
            if (piece.gap == 0) {
                break; // Only slabs in which nothing solid lies are left: they cost no cell, and gain nothing.
            }
            pieces.remove(piece);
            int d = piece.direction;
            double thickness = (piece.to - piece.from) * (grid.plane[d][piece.slab + 1] - grid.plane[d][piece.slab]);
            Way way = Way.of(piece, thickness);
            if (way.at * thickness < SolidBody.SNAP) {
                continue;
            }
            Cuts more = cuts.with(d, piece.slab, piece.cut(way));
            if (more.cells() > mostCells) {
                continue;
            }
            cuts = more;
            slabs[d]++;
            Piece low = piece.low(way);
            Piece high = piece.high(way);
            left += low.gap + high.gap - piece.gap;
            pieces.add(low);
            pieces.add(high);
        }
        return cuts;
    }

    /**
     * Cuts the slabs beside a place as well, nearer to it than to their other faces, so that the temperature there becomes known.
     *
     * @param cuts that are made otherwise
     * @param thinnest m, to which a slab may be cut
     * @param mostCells how many cells there may be
     * @return the same cuts where no more may be made
     */
    static Cuts beside(Grid grid, Cuts cuts, Place place, double thinnest, int mostCells) {
        Cuts all = cuts;
        for (int d = 0; d < 3; d++) {
            double[] planes = cuts.planes(d);
            for (int i = 0; i + 1 < planes.length; i++) {
                double share = beside(planes[i], planes[i + 1], place.along(d), thinnest);
                if (share > 0) {
                    int slab = cuts.before(d, i);
                    double low = grid.plane[d][slab];
                    double at = planes[i] + share * (planes[i + 1] - planes[i]);
                    Cuts more = all.with(d, slab, (at - low) / (grid.plane[d][slab + 1] - low));
                    if (more.cells() > mostCells) {
                        return all;
                    }
                    all = more;
                }
            }
        }
        return all;
    }

    private static double beside(double low, double high, double at, double thinnest) {
        boolean touches = at > low - SolidBody.SNAP && at < high + SolidBody.SNAP;
        double share = at - low < high - at ? Way.LEANING.at : 1 - Way.LEANING.at;
        return touches && Way.LEANING.at * (high - low) >= thinnest ? share : 0;
    }
}
