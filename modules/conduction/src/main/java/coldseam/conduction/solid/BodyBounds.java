package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * Both functionals of a set of unit solutions, evaluated from the fields alone, and the gap between them, cell by cell.
 *
 * <p>Unit solution r has part r + 1 at 1 and the others at 0; what the first part adds follows, since all parts at 1 lose
 * nothing. As forms of the temperatures of parts 1, 2, …:
 *
 * <pre>
 *   U_ij = ∫ k ∇u_i·∇u_j + Σ ∫ (u_i − T_i)(u_j − T_j)/R
 *   l_ij = − ∫ q_i·q_j/k − Σ ∫ R (q_i·n)(q_j·n) − F_i(q_j) − F_j(q_i)       F_p(q): flow out through part p
 * </pre>
 *
 * <p>All integrands are polynomials that the Gauss points integrate exactly. What rounding can do to a value, and what is
 * left of the divergence, is added to U and taken from l on the diagonal, so that U − Q and Q − l stay positive forms: an
 * entry off by ε moves a form of n temperatures by at most n ε Σ T². With div q_i = r_i the true temperature, which lies
 * between those of the parts, proves l less 2 max|T| Σ |T_i| ∫|r_i|, at most 2 n max ∫|r_i| Σ T².
 */
final class BodyBounds {

    private static final double ROUNDING = 0x1p-53;
    /** Of a 3 × 3 × 3 array the nine places where lines of a step 1, 3 or 9 begin. */
    private static final int[][] PLACES = {
        {},
        {0, 3, 6, 9, 12, 15, 18, 21, 24},
        {},
        {0, 1, 2, 9, 10, 11, 18, 19, 20},
        {},
        {},
        {},
        {},
        {},
        {0, 1, 2, 3, 4, 5, 6, 7, 8}
    };
    /** The weights of the 27 Gauss points, and of the nine of a face. */
    private static final double[] WEIGHTS = new double[27];

    private static final double[] FACE_WEIGHTS = new double[9];
    /** How far in each direction those points lie from the middle, of a size of 1. */
    private static final double[][] OFF_MIDDLE = new double[3][27];
    /** What a line's three values are multiplied by for their part of degree 2. */
    private static final double[] BENT = new double[3];

    static {
        for (int g = 0; g < 27; g++) {
            WEIGHTS[g] = Basis.WEIGHT[g % 3] * Basis.WEIGHT[g / 3 % 3] * Basis.WEIGHT[g / 9];
            OFF_MIDDLE[0][g] = Basis.POINT[g % 3] - 0.5;
            OFF_MIDDLE[1][g] = Basis.POINT[g / 3 % 3] - 0.5;
            OFF_MIDDLE[2][g] = Basis.POINT[g / 9] - 0.5;
        }
        for (int g = 0; g < 9; g++) {
            FACE_WEIGHTS[g] = Basis.WEIGHT[g % 3] * Basis.WEIGHT[g / 3];
        }
        for (int g = 0; g < 3; g++) {
            BENT[g] = Basis.WEIGHT[g] * Basis.LEGENDRE[g];
        }
    }
    /** Roundings of a field's value at a Gauss point, from its coefficients in the cell. */
    private static final double OF_VALUE = 24;

    final double[][] upper;
    final double[][] lower;
    /** The gap of the total coupling: half the sum over all parts of theirs. */
    double gap;

    /** The gap's share of each slab, as far as cutting it lowers it, in each direction. */
    final double[][] share = new double[3][];
    /** The same times (place within the slab − ½). */
    final double[][] moment = new double[3][];

    private final Grid grid;
    private final TemperatureSystem3 temperature;
    private final FluxSystem flux;
    private final double[][] u;
    private final double[][][] q;
    private final int units;
    /** At the Gauss points of a cell: for each unit and direction k-free gradient and flux. */
    private final double[][][] gradient;

    private final double[][][] density;
    private final double[] a = new double[27];
    private final double[] b = new double[27];
    private final double[] c = new double[27];
    private final double[] residual = new double[81];
    private final double[] gapAt = new double[27];
    private double allowance;

    BodyBounds(Grid grid, TemperatureSystem3 temperature, double[][] u, FluxSystem flux, double[][][] q) {
        this.grid = grid;
        this.temperature = temperature;
        this.flux = flux;
        this.u = u;
        this.q = q;
        units = u.length;
        upper = new double[units][units];
        lower = new double[units][units];
        gradient = new double[units][3][27];
        density = new double[units][3][27];
        for (int d = 0; d < 3; d++) {
            share[d] = new double[grid.n[d]];
            moment[d] = new double[grid.n[d]];
        }
        double[][] rowUpper = new double[units][units];
        double[][] rowLower = new double[units][units];
        for (int cell = 0; cell < grid.cells; cell++) {
            fields(cell);
            volume(cell, rowUpper, rowLower);
            for (int s = 0; s < 6; s++) {
                if (grid.surface(cell, s) >= 0) {
                    surface(cell, s, rowUpper, rowLower);
                }
            }
            if (cell + 1 == grid.cells || grid.slab[1][cell + 1] != grid.slab[1][cell]) {
                add(rowUpper, upper, 1);
                add(rowLower, lower, -1);
            }
        }
        widen();
    }

    private static void add(double[][] from, double[][] to, double sign) {
        for (int i = 0; i < from.length; i++) {
            for (int j = 0; j < from.length; j++) {
                to[i][j] += sign * from[i][j];
                from[i][j] = 0;
            }
        }
    }

    /** Gradients and flux densities of all units at a cell's Gauss points; point g + 3 h + 9 i for x, y, z. */
    private void fields(int cell) {
        for (int r = 0; r < units; r++) {
            for (int row = 0; row < 9; row++) {
                System.arraycopy(u[r], temperature.row[9 * cell + row], a, 3 * row, 3);
            }
            product(a, b, Basis.VALUE, 9, 3);
            product(b, c, Basis.VALUE, 3, 3);
            product(c, gradient[r][0], Basis.SLOPE, 1, 3);
            product(b, c, Basis.SLOPE, 3, 3);
            product(c, gradient[r][1], Basis.VALUE, 1, 3);
            product(a, b, Basis.SLOPE, 9, 3);
            product(b, c, Basis.VALUE, 3, 3);
            product(c, gradient[r][2], Basis.VALUE, 1, 3);
            for (int d = 0; d < 3; d++) {
                scale(gradient[r][d], 1 / grid.size(cell, d));
                densities(cell, d, q[r][d], density[r][d]);
            }
        }
    }

    /** Sums over one index of a 3 × 3 × 3 array: its step, and how many there are. */
    private static void product(double[] from, double[] to, double[][] table, int step, int many) {
        for (int g = 0; g < 3; g++) {
            double[] row = table[g];
            double first = row[0];
            double second = row[1];
            int[] places = PLACES[step];
            int shift = g * step;
            if (many == 3) {
                double third = row[2];
                for (int at : places) {
                    to[at + shift] = 0 + first * from[at] + second * from[at + step] + third * from[at + 2 * step];
                }
            } else {
                for (int at : places) {
                    to[at + shift] = 0 + first * from[at] + second * from[at + step];
                }
            }
        }
    }

    private static void scale(double[] values, double by) {
        for (int i = 0; i < values.length; i++) {
            values[i] *= by;
        }
    }

    /** W/m² of the flux in one direction at the Gauss points. */
    private void densities(int cell, int d, double[] fluxes, double[] to) {
        int e = (d + 1) % 3;
        int f = (d + 2) % 3;
        int[] step = {1, 3, 9};
        int first = flux.fluxOf(cell, d);
        double scale = 1 / (grid.size(cell, e) * grid.size(cell, f));
        for (int t = 0; t < 3; t++) {
            for (int l = 0; l < 4; l++) {
                a[t * step[d] + l % 2 * step[e] + l / 2 * step[f]] = scale * fluxes[first + 4 * t + l];
            }
        }
        product(a, b, Basis.EDGE, step[e], 2);
        product(b, c, Basis.EDGE, step[f], 2);
        product(c, to, Basis.VALUE, step[d], 3);
    }

    private void volume(int cell, double[][] rowUpper, double[][] rowLower) {
        double k = grid.k[cell];
        double volume = grid.size(cell, 0) * grid.size(cell, 1) * grid.size(cell, 2);
        Arrays.fill(gapAt, 0);
        for (int part = 0; part <= units; part++) {
            if (part == 0 && units == 1) {
                continue;
            }
            double factor = (units == 1 ? 1 : 0.5) * volume / k;
            Arrays.fill(residual, 0);
            for (int r = Math.max(0, part - 1); r < (part == 0 ? units : part); r++) {
                for (int d = 0; d < 3; d++) {
                    addResidual(k, gradient[r][d], density[r][d], residual, 27 * d);
                }
            }
            cellGap(cell, factor);
        }
        for (int i = 0; i < units; i++) {
            for (int j = 0; j <= i; j++) {
                rowUpper[i][j] += product(volume, k, false, gradient[i], gradient[j]);
                rowLower[i][j] += product(volume, k, true, density[i], density[j]);
            }
        }
        allow(cell, k, volume);
    }

    private static void addResidual(double k, double[] gradient, double[] density, double[] to, int first) {
        for (int g = 0; g < 27; g++) {
            to[first + g] += k * gradient[g] + density[g];
        }
    }

    /** The integral of two fields' product over a cell: of two gradients times k, of two densities by k. */
    private static double product(double volume, double k, boolean densities, double[][] one, double[][] other) {
        double[] x = one[0];
        double[] y = one[1];
        double[] z = one[2];
        double[] otherX = other[0];
        double[] otherY = other[1];
        double[] otherZ = other[2];
        double[] weights = WEIGHTS;
        double sum = 0;
        for (int g = 0; g < weights.length; g++) {
            sum += weights[g] * (x[g] * otherX[g] + y[g] * otherY[g] + z[g] * otherZ[g]);
        }
        return (densities ? volume / k : volume * k) * sum;
    }

    /** What rounding of the fields' values may do to the energies of a cell. */
    private void allow(int cell, double k, double volume) {
        double most = 0;
        for (int r = 0; r < units; r++) {
            for (int row = 9 * cell; row < 9 * cell + 9; row++) {
                most = largest(most, u[r], temperature.row[row], 3);
            }
        }
        for (int d = 0; d < 3; d++) {
            double steepest = 0;
            double strongest = 0;
            double largest = 0;
            int first = flux.fluxOf(cell, d);
            for (int r = 0; r < units; r++) {
                steepest = largest(steepest, gradient[r][d], 0, 27);
                strongest = largest(strongest, density[r][d], 0, 27);
                largest = largest(largest, q[r][d], first, 12);
            }
            double offSlope = OF_VALUE * ROUNDING * most / grid.size(cell, d);
            double offDensity = OF_VALUE * ROUNDING * 9 * largest * grid.size(cell, d) / volume;
            allowance +=
                    volume * (k * (2 * steepest + offSlope) * offSlope + (2 * strongest + offDensity) * offDensity / k);
        }
    }

    /** The largest size of some values, or what is larger; Math.max is a call for the first compiler. */
    private static double largest(double before, double[] values, int from, int count) {
        double most = before;
        int end = from + count;
        for (int i = from; i < end; i++) {
            double size = Math.abs(values[i]);
            if (size > most) {
                most = size;
            }
        }
        return most;
    }

    /** Adds ∫ |residual|²/k to the gap, and to the slabs as far as the modes of degree 2 in their direction carry it. */
    private void cellGap(int cell, double factor) {
        double[] mode = new double[3];
        double whole = 0;
        double[] left = residual;
        double[] at = gapAt;
        for (int g = 0; g < 27; g++) {
            double x = left[g];
            double y = left[27 + g];
            double z = left[54 + g];
            double part = WEIGHTS[g] * (x * x + y * y + z * z);
            at[g] = part;
            whole += part;
        }
        for (int d = 0; d < 3; d++) {
            for (int component = 0; component < 81; component += 27) {
                mode[d] += energyOfMode(component, d);
            }
        }
        double sum = mode[0] + mode[1] + mode[2];
        gap += factor * whole;
        for (int d = 0; d < 3; d++) {
            double part = sum > 0 ? mode[d] / sum : 1.0 / 3;
            double lean = 0;
            double[] off = OFF_MIDDLE[d];
            for (int g = 0; g < 27; g++) {
                lean += at[g] * off[g];
            }
            share[d][grid.slab[d][cell]] += factor * part * whole;
            moment[d][grid.slab[d][cell]] += factor * part * lean;
        }
    }

    private double energyOfMode(int component, int d) {
        int step = d == 0 ? 1 : d == 1 ? 3 : 9;
        int[] places = PLACES[step];
        double[] left = residual;
        double first = BENT[0];
        double second = BENT[1];
        double third = BENT[2];
        double sum = 0;
        for (int i = 0; i < 9; i++) {
            int at = component + places[i];
            double coefficient = 0 + first * left[at] + second * left[at + step] + third * left[at + 2 * step];
            sum += FACE_WEIGHTS[i] * coefficient * coefficient;
        }
        return sum;
    }

    private void surface(int cell, int s, double[][] rowUpper, double[][] rowLower) {
        int face = 6 * cell + s;
        int surface = grid.surface(cell, s);
        int part = grid.painted.partOfSurface(surface);
        double resistance = grid.painted.resistance(surface);
        double area = temperature.area(face);
        double outward = s % 2 == 1 ? 1 : -1;
        int first = flux.fluxOf(cell, s / 2) + (s % 2 == 1 ? 8 : 0);
        double[][] jump = new double[units][9];
        double[][] normal = new double[units][9];
        for (int r = 0; r < units; r++) {
            double flow = 0;
            double size = 0;
            for (int l = 0; l < 4; l++) {
                flow += outward * q[r][s / 2][first + l];
                size += Math.abs(q[r][s / 2][first + l]);
            }
            if (part > 0) {
                rowLower[part - 1][r] += flow;
                rowLower[r][part - 1] += flow;
                allowance += 8 * ROUNDING * size;
            }
            for (int g = 0; g < 9; g++) {
                double value = 0;
                double density = 0;
                for (int f = 0; f < 9; f++) {
                    value += Basis.VALUE[g % 3][f % 3] * Basis.VALUE[g / 3][f / 3] * u[r][temperature.onFace(face, f)];
                }
                for (int l = 0; l < 4; l++) {
                    density += Basis.EDGE[g % 3][l % 2] * Basis.EDGE[g / 3][l / 2] * q[r][s / 2][first + l];
                }
                jump[r][g] = value - (part == r + 1 ? 1 : 0);
                normal[r][g] = outward * density / area;
            }
            if (resistance > 0) {
                // The temperature lies near 0 and 1 and the jump within a few roundings of that.
                allowance += 2 * area / resistance * OF_VALUE * ROUNDING * (1 + OF_VALUE * ROUNDING);
                allowance += resistance * 2 * OF_VALUE * ROUNDING * (9 * size) * (9 * size) / area;
            }
        }
        if (!(resistance > 0)) {
            return;
        }
        for (int i = 0; i < units; i++) {
            for (int j = 0; j <= i; j++) {
                for (int g = 0; g < 9; g++) {
                    double w = area * Basis.WEIGHT[g % 3] * Basis.WEIGHT[g / 3];
                    rowUpper[i][j] += w / resistance * jump[i][g] * jump[j][g];
                    rowLower[i][j] += w * resistance * normal[i][g] * normal[j][g];
                }
            }
        }
        surfaceGap(cell, s, area * resistance, jump, normal, resistance);
    }

    private void surfaceGap(int cell, int s, double whole, double[][] jump, double[][] normal, double resistance) {
        double[] values = new double[9];
        for (int part = 0; part <= units; part++) {
            if (part == 0 && units == 1) {
                continue;
            }
            double factor = (units == 1 ? 1 : 0.5) * whole;
            for (int g = 0; g < 9; g++) {
                values[g] = 0;
                for (int r = Math.max(0, part - 1); r < (part == 0 ? units : part); r++) {
                    values[g] += normal[r][g] - jump[r][g] / resistance;
                }
            }
            faceGap(cell, s, factor, values);
        }
    }

    private void faceGap(int cell, int s, double factor, double[] values) {
        double[] mode = new double[2];
        double[] lean = new double[2];
        double all = 0;
        for (int i = 0; i < 3; i++) {
            double first = 0;
            double second = 0;
            for (int g = 0; g < 3; g++) {
                first += Basis.WEIGHT[g] * Basis.LEGENDRE[g] * values[g + 3 * i];
                second += Basis.WEIGHT[g] * Basis.LEGENDRE[g] * values[i + 3 * g];
                double energy = Basis.WEIGHT[g] * Basis.WEIGHT[i] * values[g + 3 * i] * values[g + 3 * i];
                all += energy;
                lean[0] += energy * (Basis.POINT[g] - 0.5);
                lean[1] += energy * (Basis.POINT[i] - 0.5);
            }
            mode[0] += Basis.WEIGHT[i] * first * first;
            mode[1] += Basis.WEIGHT[i] * second * second;
        }
        gap += factor * all;
        double sum = mode[0] + mode[1];
        for (int m = 0; m < 2; m++) {
            int d = (s / 2 + 1 + m) % 3;
            double part = sum > 0 ? mode[m] / sum : 0.5;
            share[d][grid.slab[d][cell]] += factor * part * all;
            moment[d][grid.slab[d][cell]] += factor * part * lean[m];
        }
    }

    private void widen() {
        double divergence = 0;
        double most = 0;
        for (int r = 0; r < units; r++) {
            divergence = Math.max(divergence, ConservationTree.divergence(flux, q[r]));
            most = Math.max(most, Math.max(Math.abs(upper[r][r]), Math.abs(lower[r][r])));
            for (int j = 0; j < r; j++) {
                upper[j][r] = upper[r][j];
                lower[j][r] = lower[r][j];
            }
        }
        // Sums of a row's terms, then of the rows; each term may be three times the largest energy.
        double terms = 240.0 * grid.n[0] + grid.n[1] * grid.n[2] + 100;
        double each = allowance + 3 * terms * ROUNDING * most;
        for (int r = 0; r < units; r++) {
            upper[r][r] += units * each;
            lower[r][r] -= units * (each + 2 * divergence);
        }
    }
}
