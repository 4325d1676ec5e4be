package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * The system for the flux: maximise −qᵀM q − 2 gᵀq under E q = 0, where M is the mass of the fluxes over the conductivity,
 * E the ±1 incidence of sub-cells and sub-faces and g the temperature on the surfaces.
 *
 * <p>With a potential for each sub-cell: S u = E M⁻¹ g, S = E M⁻¹ Eᵀ, q = M⁻¹(Eᵀu − g). M falls apart into the three
 * directions and there into lines, M = (along the line) ⊗ Ê/h ⊗ Ê/h with Ê = ⅓ [7 −1; −1 7] across, so that M⁻¹ costs
 * a few products a node (Ê⁻¹ = 1/16 [7 1; 1 7]).
 *
 * <p>Sub-cell (a, b, c) of a cell is potential {@code 8 cell + a + 2 b + 4 c}. In direction d a cell's fluxes through its
 * sub-faces are {@code q[d][4 (nodeOfCell + t) + l]}: t = 0, 1, 2 along, line l = b + 2 c with b along direction d + 1 and
 * c along d + 2, W for a difference of 1 K.
 */
final class FluxSystem implements FlexibleCg.Operator {

    private static final int NO_PART = -1;
    /** Of sub-cell i and side s, at 8 s + i: where among a cell's fluxes the one through that side is. */
    private static final int[] THROUGH = new int[48];

    static {
        for (int i = 0; i < 48; i++) {
            int d = i / 16;
            THROUGH[i] = 4 * ((i >> d & 1) + i / 8 % 2) + (i >> (d + 1) % 3 & 1) + 2 * (i >> (d + 2) % 3 & 1);
        }
    }

    private final Grid grid;
    /** How many potentials there are. */
    final int n;

    private final LineFactor[] lines = new LineFactor[3];
    private final double[] work;
    /** W/K through a sub-face of each cell's six sides, and from half to half in its three directions. */
    private final double[] outer;

    private final double[] inner;

    FluxSystem(Grid grid) {
        this.grid = grid;
        n = 8 * grid.cells;
        int longest = 0;
        for (int d = 0; d < 3; d++) {
            lines[d] = new LineFactor(grid, d);
            longest = Math.max(longest, 2 * grid.n[d] + 1);
        }
        work = new double[4 * longest];
        outer = new double[6 * grid.cells];
        inner = new double[3 * grid.cells];
        for (int cell = 0; cell < grid.cells; cell++) {
            for (int d = 0; d < 3; d++) {
                double area = 0.25 * grid.size(cell, (d + 1) % 3) * grid.size(cell, (d + 2) % 3);
                double here = grid.size(cell, d) / grid.k[cell];
                inner[3 * cell + d] = area / (Basis.LUMPED[1] * here);
                for (int s = 2 * d; s < 2 * d + 2; s++) {
                    int beyond = grid.side[6 * cell + s];
                    outer[6 * cell + s] = beyond == PaintedGrid.ADIABATIC
                            ? 0
                            : area / (Basis.LUMPED[0] * here + resistance(beyond, d));
                }
            }
        }
    }

    /** m²·K/W from a sub-face to the middle of what lies beyond. */
    private double resistance(int beyond, int d) {
        return beyond < 0
                ? grid.painted.resistance(PaintedGrid.FIRST_SURFACE - beyond)
                : Basis.LUMPED[0] * grid.size(beyond, d) / grid.k[beyond];
    }

    /** Room for the fluxes of one solution. */
    double[][] fluxes() {
        return new double[][] {
            new double[4 * lines[0].nodes], new double[4 * lines[1].nodes], new double[4 * lines[2].nodes]
        };
    }

    /** Where a cell's fluxes in a direction begin. */
    int fluxOf(int cell, int d) {
        return 4 * lines[d].nodeOfCell[cell];
    }

    /** Where the flux through a sub-cell's sub-face is. */
    int fluxThrough(int potential, int s) {
        return fluxOf(potential >> 3, s >> 1) + THROUGH[8 * s + (potential & 7)];
    }

    /** The sub-cell beyond a sub-cell's side, or what {@link Grid#side} says of it. */
    int beyond(int potential, int s) {
        int bit = 1 << (s >> 1);
        if (inward(potential, s)) {
            return potential ^ bit;
        }
        int next = grid.side[6 * (potential >> 3) + s];
        return next < 0 ? next : 8 * next + (potential & 7 ^ bit);
    }

    /** Whether a sub-cell's side leads to another half of its cell. */
    private static boolean inward(int potential, int s) {
        return (potential >> (s >> 1) & 1) != (s & 1);
    }

    @Override
    public void apply(double[] x, double[] y) {
        Arrays.fill(y, 0, n, 0);
        for (int d = 0; d < 3; d++) {
            run(d, x, NO_PART, y, null);
        }
    }

    /** (Output) the fluxes q = M⁻¹(Eᵀu − g) where one part is at 1 and the others at 0, and the residual −E q. */
    void flux(double[] u, int part, double[][] q, double[] residual) {
        Arrays.fill(residual, 0);
        for (int d = 0; d < 3; d++) {
            run(d, u, part, residual, q[d]);
        }
        for (int i = 0; i < n; i++) {
            residual[i] = -residual[i];
        }
    }

    private void run(int d, double[] u, int part, double[] outflow, double[] q) {
        LineFactor factor = lines[d];
        int[] cells = factor.cell;
        double[] w = work;
        int along = 1 << d;
        int b = 1 << (d + 1) % 3;
        int c = 1 << (d + 2) % 3;
        for (int r = 0; r < factor.runs; r++) {
            int from = factor.start[r];
            int to = factor.start[r + 1];
            int first = cells[from];
            int last = cells[to - 1];
            int count = 2 * (to - from) + 1;
            double across = grid.size(first, (d + 1) % 3) * grid.size(first, (d + 2) % 3) / 256;
            double low = at(first, 2 * d, part);
            double p0 = low;
            double p1 = low;
            double p2 = low;
            double p3 = low;
            int node = 0;
            for (int i = from; i < to; i++) {
                int base = 8 * cells[i];
                for (int half = 0; half < 2; half++, node += 4, base += along) {
                    double u0 = u[base];
                    double u1 = u[base + b];
                    double u2 = u[base + c];
                    double u3 = u[base + b + c];
                    across(w, across, p0 - u0, p1 - u1, p2 - u2, p3 - u3, node);
                    p0 = u0;
                    p1 = u1;
                    p2 = u2;
                    p3 = u3;
                }
            }
            double high = at(last, 2 * d + 1, part);
            across(w, across, p0 - high, p1 - high, p2 - high, p3 - high, node);
            factor.solve(factor.nodeOfCell[first], count, w);
            node = 0;
            for (int i = from; i < to; i++) {
                int base = 8 * cells[i];
                for (int half = 0; half < 2; half++, node += 4, base += along) {
                    outflow[base] += w[node + 4] - w[node];
                    outflow[base + b] += w[node + 5] - w[node + 1];
                    outflow[base + c] += w[node + 6] - w[node + 2];
                    outflow[base + b + c] += w[node + 7] - w[node + 3];
                }
            }
            if (q != null) {
                System.arraycopy(w, 0, q, fluxOf(first, d), 4 * count);
            }
        }
    }

    private double at(int cell, int s, int part) {
        int surface = grid.surface(cell, s);
        return surface >= 0 && grid.painted.partOfSurface(surface) == part ? 1 : 0;
    }

    /** (Ê/h ⊗ Ê/h)⁻¹ on the four lines of a node. */
    private static void across(double[] w, double scale, double g0, double g1, double g2, double g3, int at) {
        double a0 = scale * (7 * g0 + g1);
        double a1 = scale * (7 * g1 + g0);
        double a2 = scale * (7 * g2 + g3);
        double a3 = scale * (7 * g3 + g2);
        w[at] = 7 * a0 + a2;
        w[at + 1] = 7 * a1 + a3;
        w[at + 2] = 7 * a2 + a0;
        w[at + 3] = 7 * a3 + a1;
    }

    /** The potentials of a temperature: ∫ u ê ê ê over each cell. */
    double[] potentials(TemperatureSystem3 system, double[] temperature) {
        double[] to = new double[n];
        double[] x = new double[18];
        double[] y = new double[12];
        double[][] w = Basis.PROJECTION;
        for (int cell = 0; cell < grid.cells; cell++) {
            for (int r = 0; r < 9; r++) {
                int i = system.row[9 * cell + r];
                for (int a = 0; a < 2; a++) {
                    x[2 * r + a] =
                            w[a][0] * temperature[i] + w[a][1] * temperature[i + 1] + w[a][2] * temperature[i + 2];
                }
            }
            for (int i = 0; i < 12; i++) {
                int at = i % 2 + 6 * (i / 4);
                double[] v = w[i / 2 % 2];
                y[i] = v[0] * x[at] + v[1] * x[at + 2] + v[2] * x[at + 4];
            }
            for (int i = 0; i < 8; i++) {
                double[] v = w[i / 4];
                int at = i % 4;
                to[8 * cell + i] = v[0] * y[at] + v[1] * y[at + 4] + v[2] * y[at + 8];
            }
        }
        return to;
    }

    /** W/K through a sub-face between the middles of what lies on both sides, as the preconditioner sees it; 0 if adiabatic. */
    double conductance(int potential, int s) {
        return inward(potential, s) ? inner[3 * (potential >> 3) + (s >> 1)] : outer[6 * (potential >> 3) + s];
    }

    Multigrid preconditioner(Room room) {
        int[] start = new int[n + 1];
        room.finest.reserve(6 * n);
        int[] column = room.finest.column;
        double[] weight = room.finest.weight;
        double[] extra = new double[n];
        int at = 0;
        for (int i = 0; i < n; i++) {
            start[i] = at;
            for (int s = 0; s < 6; s++) {
                int other = beyond(i, s);
                double size = conductance(i, s);
                if (other >= 0) {
                    column[at] = other;
                    weight[at++] = size;
                } else {
                    extra[i] += size;
                }
            }
        }
        start[n] = at;
        return new Multigrid(n, start, column, weight, extra, room);
    }
}
