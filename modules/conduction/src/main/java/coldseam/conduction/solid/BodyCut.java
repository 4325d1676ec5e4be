package coldseam.conduction.solid;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What lies on a plane through a body. Its coordinates are the body's two other directions in order, m.
 */
public final class BodyCut {

    private final Grid grid;
    private final TemperatureSystem3 system;
    private final double[] temperature;
    private final int d;
    private final int e;
    private final int f;
    private final int slab;
    private final double[] along;

    BodyCut(Grid grid, TemperatureSystem3 system, double[] temperature, int d, int slab, double at) {
        this.grid = grid;
        this.system = system;
        this.temperature = temperature;
        this.d = d;
        this.e = d == 0 ? 1 : 0;
        this.f = d == 2 ? 1 : 2;
        this.slab = slab;
        double low = grid.plane[d][slab];
        this.along = Basis.nodal(Math.max(0, Math.min(1, (at - low) / (grid.plane[d][slab + 1] - low))));
    }

    /**
     * A rectangle of one material.
     *
     * @param piece index of the painted box
     */
    public record Filled(int piece, double x0, double y0, double x1, double y1) {}

    /** A straight line. */
    public record Line(double x0, double y0, double x1, double y1) {}

    /** All that is solid. */
    public ImmutableList<Filled> filled() {
        MutableList<Filled> all = Lists.mutable.empty();
        PaintedGrid painted = grid.painted;
        int[] at = new int[3];
        at[d] = grid.parent[d][slab];
        for (at[f] = 0; at[f] < painted.n[f]; at[f]++) {
            int first = 0;
            for (int i = 0; i < painted.n[e]; i++) {
                at[e] = i;
                int piece = painted.piece[painted.cell(at[0], at[1], at[2])];
                at[e] = i + 1;
                boolean last = i + 1 == painted.n[e]
                        || !painted.alike(painted.piece[painted.cell(at[0], at[1], at[2])], piece);
                if (last && piece >= 0) {
                    all.add(new Filled(
                            piece,
                            painted.plane[e][first],
                            painted.plane[f][at[f]],
                            painted.plane[e][i + 1],
                            painted.plane[f][at[f] + 1]));
                }
                first = last ? i + 1 : first;
            }
        }
        return all.toImmutable();
    }

    /** Lines between two materials. */
    public ImmutableList<Line> seams() {
        return lines(false);
    }

    /** Lines where the body faces an environment. */
    public ImmutableList<Line> surfaces() {
        return lines(true);
    }

    private ImmutableList<Line> lines(boolean surfaces) {
        MutableList<Line> all = Lists.mutable.empty();
        PaintedGrid painted = grid.painted;
        int[] at = new int[3];
        at[d] = grid.parent[d][slab];
        for (at[f] = 0; at[f] < painted.n[f]; at[f]++) {
            for (at[e] = 0; at[e] < painted.n[e]; at[e]++) {
                int cell = painted.cell(at[0], at[1], at[2]);
                for (int i = 0; i < 4 && painted.piece[cell] >= 0; i++) {
                    int s = 2 * (i < 2 ? e : f) + i % 2;
                    int beyond = painted.side[6 * cell + s];
                    boolean wanted = surfaces
                            ? beyond <= PaintedGrid.FIRST_SURFACE
                            : beyond >= 0 && s % 2 == 1 && !painted.alike(painted.piece[beyond], painted.piece[cell]);
                    if (wanted) {
                        double x0 = painted.plane[e][at[e] + (s == 2 * e + 1 ? 1 : 0)];
                        double y0 = painted.plane[f][at[f] + (s == 2 * f + 1 ? 1 : 0)];
                        all.add(new Line(
                                x0,
                                y0,
                                i < 2 ? x0 : painted.plane[e][at[e] + 1],
                                i < 2 ? painted.plane[f][at[f] + 1] : y0));
                    }
                }
            }
        }
        return all.toImmutable();
    }

    /**
     * Pieces of the line of one temperature.
     *
     * @param value °C
     */
    public ImmutableList<Line> isotherm(double value) {
        MutableList<Line> all = Lists.mutable.empty();
        double[] nodes = new double[9];
        for (int cell = 0; cell < grid.cells; cell++) {
            if (grid.slab[d][cell] != slab) {
                continue;
            }
            nodes(cell, nodes);
            double low = grid.plane[e][grid.slab[e][cell]];
            double below = grid.plane[f][grid.slab[f][cell]];
            double half = grid.size(cell, e) / 2;
            double tall = grid.size(cell, f) / 2;
            for (int i = 0; i < 4; i++) {
                int at = i % 2 + 3 * (i / 2);
                double x = low + half * (i % 2);
                double y = below + tall * (i / 2);
                // Two triangles, so that no square is crossed twice.
                triangle(all, value, x, y, nodes[at], x + half, y, nodes[at + 1], x + half, y + tall, nodes[at + 4]);
                triangle(all, value, x, y, nodes[at], x + half, y + tall, nodes[at + 4], x, y + tall, nodes[at + 3]);
            }
        }
        return all.toImmutable();
    }

    /** The temperatures of a cell's nine places on the plane. */
    private void nodes(int cell, double[] to) {
        for (int i = 0; i < 9; i++) {
            double sum = 0;
            for (int a = 0; a < 3; a++) {
                int[] at = new int[3];
                at[d] = a;
                at[e] = i % 3;
                at[f] = i / 3;
                sum += along[a] * temperature[system.row[9 * cell + at[1] + 3 * at[2]] + at[0]];
            }
            to[i] = sum;
        }
    }

    private static void triangle(
            MutableList<Line> to,
            double value,
            double x0,
            double y0,
            double t0,
            double x1,
            double y1,
            double t1,
            double x2,
            double y2,
            double t2) {
        double[] x = {x0, x1, x2};
        double[] y = {y0, y1, y2};
        double[] t = {t0, t1, t2};
        double[] ends = new double[4];
        int count = 0;
        for (int i = 0; i < 3 && count < 4; i++) {
            int j = (i + 1) % 3;
            if (t[i] < value != t[j] < value) {
                double share = (value - t[i]) / (t[j] - t[i]);
                ends[count++] = x[i] + share * (x[j] - x[i]);
                ends[count++] = y[i] + share * (y[j] - y[i]);
            }
        }
        if (count == 4) {
            to.add(new Line(ends[0], ends[1], ends[2], ends[3]));
        }
    }
}
