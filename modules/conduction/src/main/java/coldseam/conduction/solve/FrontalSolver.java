package coldseam.conduction.solve;

import java.util.Arrays;

/**
 * Multifrontal sparse factorisation A = Uᵀ D U over a nested dissection of the triangles.
 *
 * <p>Each block of the dissection assembles a dense front from its two halves' remainders (or its triangles), eliminates
 * the unknowns no other block needs and hands the rest, the Schur complement, to the block above (I. S. Duff and J. K.
 * Reid, The multifrontal solution of indefinite sparse symmetric linear equations, ACM Transactions on Mathematical
 * Software 9, 1983, pp. 302–325). The order of operations depends on the mesh only, so results repeat to the bit.
 *
 * <p>The front is kept as rows in arrays of their own: with plain arrays and equal indices the compiler turns the inner
 * loops into vector instructions (measured: three times as fast as one array). A pivot that is not positive, of
 * an unknown this system does not have, sets its unknown to zero; the bounds computed from the fields stay valid.
 */
final class FrontalSolver {

    private final Fronts fronts;
    private Dissection cut;
    private int[] rowStart = new int[0];
    private double[] factor = new double[4096];

    // Remainders of finished blocks, a stack; and the front at work.
    private double[] remainder = new double[4096];
    private int[] remainderStart = new int[0];
    private double[][] front = new double[0][];
    private double[] p0 = new double[0];
    private double[] p1 = new double[0];
    private double[] p2 = new double[0];
    private double[] p3 = new double[0];

    /** A vector in the order of ranks. */
    private double[] ranked = new double[0];

    private final int[] local = new int[64];
    private final double[] element = new double[64 * 64];

    FrontalSolver(Fronts fronts) {
        this.fronts = fronts;
    }

    /** Factorises a system. */
    void factor(Dissection dissection, ElementSystem system) {
        cut = dissection;
        reserve();
        int factorEnd = 0;
        int top = 0;
        for (int b = 0; b < cut.blocks; b++) {
            int m = fronts.start[b + 1] - fronts.start[b];
            int size = fronts.gone[b];
            for (int i = 0; i < m; i++) {
                Arrays.fill(front[i], i, m, 0.0);
            }
            int left = cut.half[2 * b];
            if (left < 0) {
                assemble(b, system);
            } else {
                extendAdd(cut.half[2 * b + 1]);
                extendAdd(left);
                top = remainderStart[left];
            }
            int need = size * m - size * (size - 1) / 2;
            if (factorEnd + need > factor.length) {
                factor = Arrays.copyOf(factor, 2 * (factorEnd + need));
            }
            rowStart[b] = factorEnd;
            factorEnd = eliminate(m, size, factorEnd);
            remainderStart[b] = top;
            int kept = m - size;
            if (top + kept * (kept + 1) / 2 > remainder.length) {
                remainder = Arrays.copyOf(remainder, 2 * (top + kept * (kept + 1) / 2));
            }
            for (int i = size; i < m; i++) {
                System.arraycopy(front[i], i, remainder, top, m - i);
                top += m - i;
            }
        }
    }

    private void reserve() {
        if (rowStart.length < cut.blocks) {
            rowStart = new int[cut.blocks + cut.blocks / 2];
            remainderStart = new int[cut.blocks + cut.blocks / 2];
        }
        if (front.length < fronts.widest) {
            int room = fronts.widest + fronts.widest / 2 + 8;
            front = new double[room][room];
            p0 = new double[room];
            p1 = new double[room];
            p2 = new double[room];
            p3 = new double[room];
        }
    }

    private void assemble(int b, ElementSystem system) {
        int from = fronts.start[b];
        for (int i = cut.first[b]; i < cut.end[b]; i++) {
            int t = cut.order[i];
            int n = system.unknownsOf(t, local);
            system.matrix(t, element);
            if (n < 0) {
                // All six nodes are unknowns of their own: their places are known.
                for (int j = 0; j < 6; j++) {
                    int p = fronts.nodePlace[6 * i + j];
                    double[] row = front[p];
                    for (int k = 0; k < 6; k++) {
                        int q = fronts.nodePlace[6 * i + k];
                        if (q >= p) {
                            row[q] += element[6 * j + k];
                        }
                    }
                }
                continue;
            }
            for (int j = 0; j < n; j++) {
                local[j] = local[j] < 0 ? -1 : find(from, fronts.start[b + 1], local[j]);
            }
            for (int j = 0; j < n; j++) {
                int p = local[j];
                if (p < 0) {
                    continue;
                }
                for (int k = 0; k < n; k++) {
                    if (local[k] >= p) {
                        front[p][local[k]] += element[n * j + k];
                    }
                }
            }
        }
    }

    private int find(int from, int to, int unknown) {
        int rank = fronts.rank[unknown];
        for (int i = from; i < to; i++) {
            if (fronts.list[i] == rank) {
                return i - from;
            }
        }
        throw new IllegalStateException("internal error, please report: an unknown is missing from its front");
    }

    private void extendAdd(int c) {
        int from = fronts.start[c] + fronts.gone[c];
        int to = fronts.start[c + 1];
        int[] into = fronts.into;
        double[] r = remainder;
        int source = remainderStart[c] - from;
        for (int i = from; i < to; i++) {
            double[] row = front[into[i]];
            for (int j = i; j < to; j++) {
                row[into[j]] += r[source + j];
            }
            source += to - i - 1;
        }
    }

    /** Eliminates the first unknowns of the front; writes 1/pivot and the scaled row of each into the factor. */
    private int eliminate(int m, int count, int factorEnd) {
        int end = factorEnd;
        int k = 0;
        for (; k + 4 <= count; k += 4) {
            double[] a = front[k];
            double[] b = front[k + 1];
            double[] c = front[k + 2];
            double[] d = front[k + 3];
            end = scale(a, p0, k, m, end);
            subtract(b, p0, a[k + 1], k + 1, m);
            subtract(c, p0, a[k + 2], k + 2, m);
            subtract(d, p0, a[k + 3], k + 3, m);
            end = scale(b, p1, k + 1, m, end);
            subtract(c, p1, b[k + 2], k + 2, m);
            subtract(d, p1, b[k + 3], k + 3, m);
            end = scale(c, p2, k + 2, m, end);
            subtract(d, p2, c[k + 3], k + 3, m);
            end = scale(d, p3, k + 3, m, end);
            for (int i = k + 4; i < m; i++) {
                subtractFour(front[i], p0, p1, p2, p3, a[i], b[i], c[i], d[i], i, m);
            }
        }
        for (; k < count; k++) {
            double[] a = front[k];
            end = scale(a, p0, k, m, end);
            for (int i = k + 1; i < m; i++) {
                subtract(front[i], p0, a[i], i, m);
            }
        }
        return end;
    }

    private int scale(double[] row, double[] scaled, int k, int m, int end) {
        double pivot = row[k];
        double inverse = pivot > 0 ? 1 / pivot : 0;
        for (int j = k + 1; j < m; j++) {
            scaled[j] = row[j] * inverse;
        }
        factor[end] = inverse;
        System.arraycopy(scaled, k + 1, factor, end + 1, m - k - 1);
        return end + m - k;
    }

    private static void subtract(double[] y, double[] x, double f, int from, int to) {
        for (int j = from; j < to; j++) {
            y[j] -= f * x[j];
        }
    }

    private static void subtractFour(
            double[] y,
            double[] a,
            double[] b,
            double[] c,
            double[] d,
            double fa,
            double fb,
            double fc,
            double fd,
            int from,
            int to) {
        for (int j = from; j < to; j++) {
            y[j] -= fa * a[j] + fb * b[j] + fc * c[j] + fd * d[j];
        }
    }

    /** Solves in place. */
    void solve(double[] b) {
        int count = fronts.count;
        if (ranked.length < count) {
            ranked = new double[count + count / 2];
        }
        double[] x = ranked;
        for (int d = 0; d < count; d++) {
            x[fronts.rank[d]] = b[d];
        }
        double[] y = p0;
        int[] list = fronts.list;
        for (int block = 0; block < cut.blocks; block++) {
            int start = fronts.start[block];
            int m = fronts.start[block + 1] - start;
            int n = fronts.gone[block];
            for (int j = 0; j < m; j++) {
                y[j] = x[list[start + j]];
            }
            int row = rowStart[block];
            for (int k = 0; k < n; k++) {
                double v = y[k];
                int o = row - k;
                for (int j = k + 1; j < m; j++) {
                    y[j] -= factor[o + j] * v;
                }
                y[k] = v * factor[row];
                row += m - k;
            }
            for (int j = 0; j < m; j++) {
                x[list[start + j]] = y[j];
            }
        }
        for (int block = cut.blocks - 1; block >= 0; block--) {
            int start = fronts.start[block];
            int m = fronts.start[block + 1] - start;
            int n = fronts.gone[block];
            for (int j = 0; j < m; j++) {
                y[j] = x[list[start + j]];
            }
            int row = rowStart[block] + n * m - n * (n - 1) / 2;
            for (int k = n - 1; k >= 0; k--) {
                row -= m - k;
                y[k] -= product(row - k, y, k + 1, m);
                x[list[start + k]] = y[k];
            }
        }
        for (int d = 0; d < count; d++) {
            b[d] = x[fronts.rank[d]];
        }
    }

    /** A factor's row times a vector, in four sums that do not wait for one another. */
    private double product(int row, double[] y, int from, int to) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int j = from;
        for (; j + 4 <= to; j += 4) {
            a += factor[row + j] * y[j];
            b += factor[row + j + 1] * y[j + 1];
            c += factor[row + j + 2] * y[j + 2];
            d += factor[row + j + 3] * y[j + 3];
        }
        for (; j < to; j++) {
            a += factor[row + j] * y[j];
        }
        return a + b + (c + d);
    }
}
