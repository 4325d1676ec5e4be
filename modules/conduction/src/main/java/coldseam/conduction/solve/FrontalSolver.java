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
    /** Rows of the front, each over its pivot. */
    private final double[][] scaled = new double[4][0];

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
            Arrays.setAll(scaled, i -> new double[room]);
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
                    front[p][p] += element[7 * j];
                    for (int k = j + 1; k < 6; k++) {
                        int q = fronts.nodePlace[6 * i + k];
                        front[Math.min(p, q)][Math.max(p, q)] += element[6 * j + k];
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
        for (int k = 0; k < count; k += 4) {
            int n = Math.min(4, count - k);
            if (n == 4) {
                end = scaleFour(k, m, end);
            }
            for (int i = 0; i < n && n < 4; i++) {
                end = scale(front[k + i], scaled[i], k + i, m, end);
                for (int j = i + 1; j < n; j++) {
                    subtract(front[k + j], scaled[i], front[k + i][k + j], k + j, m);
                }
            }
            subtract(k, n, m);
        }
        return end;
    }

    /** Eliminates four unknowns from one another's rows in a single pass, and scales these. */
    private int scaleFour(int k, int m, int from) {
        double[] a = front[k];
        double[] b = front[k + 1];
        double[] c = front[k + 2];
        double[] d = front[k + 3];
        double[] p = scaled[0];
        double[] q = scaled[1];
        double[] r = scaled[2];
        double[] s = scaled[3];
        double ab = a[k + 1];
        double ac = a[k + 2];
        double ad = a[k + 3];
        double ia = inverse(a[k]);
        p[k + 1] = ab * ia;
        p[k + 2] = ac * ia;
        p[k + 3] = ad * ia;
        double ib = inverse(b[k + 1] - ab * p[k + 1]);
        double bc = b[k + 2] - ab * p[k + 2];
        double bd = b[k + 3] - ab * p[k + 3];
        q[k + 2] = bc * ib;
        q[k + 3] = bd * ib;
        double ic = inverse(c[k + 2] - ac * p[k + 2] - bc * q[k + 2]);
        double cd = c[k + 3] - ac * p[k + 3] - bc * q[k + 3];
        r[k + 3] = cd * ic;
        double id = inverse(d[k + 3] - ad * p[k + 3] - bd * q[k + 3] - cd * r[k + 3]);
        for (int j = k + 4; j < m; j++) {
            double pj = a[j] * ia;
            double bj = b[j] - ab * pj;
            double qj = bj * ib;
            double cj = c[j] - ac * pj - bc * qj;
            double rj = cj * ic;
            double dj = d[j] - ad * pj - bd * qj - cd * rj;
            p[j] = pj;
            b[j] = bj;
            q[j] = qj;
            c[j] = cj;
            r[j] = rj;
            d[j] = dj;
            s[j] = dj * id;
        }
        int end = write(ia, p, k, m, from);
        end = write(ib, q, k + 1, m, end);
        end = write(ic, r, k + 2, m, end);
        return write(id, s, k + 3, m, end);
    }

    private int write(double inverse, double[] row, int k, int m, int end) {
        factor[end] = inverse;
        System.arraycopy(row, k + 1, factor, end + 1, m - k - 1);
        return end + m - k;
    }

    private static double inverse(double pivot) {
        return pivot > 0 ? 1 / pivot : 0;
    }

    /** Subtracts the n rows from k on, of four at most, from all below them: at once, since rows are short and each pass costs. */
    private void subtract(int k, int n, int m) {
        double[] a = front[k];
        double[] p = scaled[0];
        if (n == 1) {
            for (int i = k + 1; i < m; i++) {
                subtract(front[i], p, a[i], i, m);
            }
            return;
        }
        double[] b = front[k + 1];
        double[] q = scaled[1];
        // Of two or three rows the last stands for what is missing, times nothing.
        double[] c = front[k + Math.min(2, n - 1)];
        double[] d = front[k + n - 1];
        double[] r = scaled[Math.min(2, n - 1)];
        double[] s = scaled[n - 1];
        double third = n > 2 ? 1 : 0;
        double fourth = n > 3 ? 1 : 0;
        for (int i = k + n; i < m; i++) {
            subtractFour(front[i], p, q, r, s, a[i], b[i], third * c[i], fourth * d[i], i, m);
        }
    }

    private int scale(double[] row, double[] scaled, int k, int m, int end) {
        double inverse = inverse(row[k]);
        for (int j = k + 1; j < m; j++) {
            scaled[j] = row[j] * inverse;
        }
        return write(inverse, scaled, k, m, end);
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
        double[] y = scaled[0];
        int[] list = fronts.list;
        for (int block = 0; block < cut.blocks; block++) {
            int start = fronts.start[block];
            int m = fronts.start[block + 1] - start;
            int n = fronts.gone[block];
            for (int j = 0; j < m; j++) {
                y[j] = x[list[start + j]];
            }
            int row = rowStart[block];
            int k = 0;
            for (; k + 4 <= n; k += 4) {
                row = eliminateFour(row, k, m, y);
            }
            for (; k < n; k++) {
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
            int k = n;
            for (; k >= 4; k -= 4) {
                row = substituteFour(row, k, m, y);
            }
            for (k--; k >= 0; k--) {
                row -= m - k;
                y[k] -= product(row - k, y, k + 1, m);
            }
            for (k = 0; k < n; k++) {
                x[list[start + k]] = y[k];
            }
        }
        for (int d = 0; d < count; d++) {
            b[d] = x[fronts.rank[d]];
        }
    }

    /** Takes four rows of the factor, from unknown k on, to a right-hand side; returns where the next row begins. */
    private int eliminateFour(int row, int k, int m, double[] y) {
        int a = row - k;
        int b = a + m - k - 1;
        int c = b + m - k - 2;
        int d = c + m - k - 3;
        double va = y[k];
        double vb = y[k + 1] - factor[a + k + 1] * va;
        double vc = y[k + 2] - factor[a + k + 2] * va - factor[b + k + 2] * vb;
        double vd = y[k + 3] - factor[a + k + 3] * va - factor[b + k + 3] * vb - factor[c + k + 3] * vc;
        for (int j = k + 4; j < m; j++) {
            y[j] -= factor[a + j] * va + factor[b + j] * vb + factor[c + j] * vc + factor[d + j] * vd;
        }
        y[k] = va * factor[a + k];
        y[k + 1] = vb * factor[b + k + 1];
        y[k + 2] = vc * factor[c + k + 2];
        y[k + 3] = vd * factor[d + k + 3];
        return d + m;
    }

    /** Finds the four unknowns before k from all behind them; returns where their first row begins. */
    private int substituteFour(int end, int k, int m, double[] y) {
        int d = end - m;
        int c = d - (m - k + 1);
        int b = c - (m - k + 2);
        int a = b - (m - k + 3);
        double ya = 0;
        double yb = 0;
        double yc = 0;
        double yd = 0;
        for (int j = k; j < m; j++) {
            double v = y[j];
            ya += factor[a + j] * v;
            yb += factor[b + j] * v;
            yc += factor[c + j] * v;
            yd += factor[d + j] * v;
        }
        y[k - 1] -= yd;
        y[k - 2] -= yc + factor[c + k - 1] * y[k - 1];
        y[k - 3] -= yb + factor[b + k - 2] * y[k - 2] + factor[b + k - 1] * y[k - 1];
        y[k - 4] -= ya + factor[a + k - 3] * y[k - 3] + factor[a + k - 2] * y[k - 2] + factor[a + k - 1] * y[k - 1];
        return a + k - 4;
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
