package coldseam.conduction;

import java.util.Arrays;

/**
 * Multifrontal sparse Cholesky factorisation A = Uᵀ D U over a nested dissection of the triangles.
 *
 * <p>Each block of the dissection assembles a dense front from its two halves' remainders (or its triangles), eliminates
 * the unknowns no other block needs and hands the rest, the Schur complement, to the block above (I. S. Duff and J. K.
 * Reid, The multifrontal solution of indefinite sparse symmetric linear equations, ACM Transactions on Mathematical
 * Software 9, 1983, pp. 302–325). The order of operations depends on the mesh only, so results repeat to the bit.
 *
 * <p>Storage: row-major upper triangles. A pivot that is not positive (an unknown nothing holds) sets its unknown to
 * zero; the bounds computed from the fields stay valid.
 */
final class FrontalSolver {

    // Where each unknown first and last occurs in the dissection's order of triangles.
    private int[] firstPlace = new int[0];
    private int[] lastPlace = new int[0];
    private int[] mark = new int[0];
    private int[] place = new int[0];

    // Per block: its front's unknowns (eliminated ones first) and its rows of the factor.
    private int[] listStart = new int[0];
    private int[] gone = new int[0];
    private int[] rowStart = new int[0];
    private int[] list = new int[1024];
    private double[] factor = new double[4096];
    private int blocks;

    // Remainders of finished blocks, a stack; and the front at work.
    private double[] remainder = new double[4096];
    private int[] remainderStart = new int[0];
    private double[] front = new double[1024];

    private final int[] local = new int[64];
    private final int[] at = new int[64];
    private final double[] element = new double[64 * 64];

    /** Factorises a system. */
    void factor(Dissection cut, ElementSystem system) {
        prepare(cut, system);
        blocks = cut.blocks;
        int listEnd = 0;
        int factorEnd = 0;
        int top = 0;
        for (int b = 0; b < blocks; b++) {
            int from = cut.first[b];
            int to = cut.end[b];
            int left = cut.half[2 * b];
            int right = cut.half[2 * b + 1];
            // 1. Which unknowns meet here: those that end here first.
            int most = left < 0 ? 40 * (to - from) : listSize(left) + listSize(right);
            if (listEnd + 2 * most > list.length) {
                list = Arrays.copyOf(list, 2 * (listEnd + 2 * most));
            }
            listStart[b] = listEnd;
            int size = 0;
            int kept = 0;
            int tail = listEnd + most;
            if (left < 0) {
                for (int i = from; i < to; i++) {
                    int n = system.unknownsOf(cut.order[i], local);
                    for (int j = 0; j < n; j++) {
                        int d = local[j];
                        if (d >= 0 && mark[d] != b) {
                            mark[d] = b;
                            if (firstPlace[d] >= from && lastPlace[d] < to) {
                                list[listEnd + size++] = d;
                            } else {
                                list[tail + kept++] = d;
                            }
                        }
                    }
                }
            } else {
                for (int side = 0; side < 2; side++) {
                    int c = side == 0 ? left : right;
                    for (int i = listStart[c] + gone[c]; i < listStart[c + 1]; i++) {
                        int d = list[i];
                        if (mark[d] != b) {
                            mark[d] = b;
                            if (firstPlace[d] >= from && lastPlace[d] < to) {
                                list[listEnd + size++] = d;
                            } else {
                                list[tail + kept++] = d;
                            }
                        }
                    }
                }
            }
            gone[b] = size;
            System.arraycopy(list, tail, list, listEnd + size, kept);
            int m = size + kept;
            listEnd += m;
            listStart[b + 1] = listEnd;
            for (int i = 0; i < m; i++) {
                place[list[listStart[b] + i]] = i;
            }
            // 2. Assemble the front.
            if (front.length < m * m) {
                front = new double[2 * m * m];
            }
            Arrays.fill(front, 0, m * m, 0.0);
            if (left < 0) {
                for (int i = from; i < to; i++) {
                    int t = cut.order[i];
                    int n = system.unknownsOf(t, local);
                    system.matrix(t, element);
                    for (int j = 0; j < n; j++) {
                        at[j] = local[j] < 0 ? -1 : place[local[j]];
                    }
                    for (int j = 0; j < n; j++) {
                        int p = at[j];
                        if (p < 0) {
                            continue;
                        }
                        for (int k = 0; k < n; k++) {
                            if (at[k] >= p) {
                                front[p * m + at[k]] += element[j * n + k];
                            }
                        }
                    }
                }
            } else {
                extendAdd(right, m);
                extendAdd(left, m);
                top = remainderStart[left];
            }
            // 3. Eliminate, keep the rows, push the remainder.
            int need = size * m - size * (size - 1) / 2;
            if (factorEnd + need > factor.length) {
                factor = Arrays.copyOf(factor, 2 * (factorEnd + need));
            }
            rowStart[b] = factorEnd;
            factorEnd = eliminate(m, size, factorEnd);
            remainderStart[b] = top;
            if (top + kept * (kept + 1) / 2 > remainder.length) {
                remainder = Arrays.copyOf(remainder, 2 * (top + kept * (kept + 1) / 2));
            }
            for (int i = size; i < m; i++) {
                System.arraycopy(front, i * m + i, remainder, top, m - i);
                top += m - i;
            }
        }
    }

    private int listSize(int b) {
        return listStart[b + 1] - listStart[b] - gone[b];
    }

    private void prepare(Dissection cut, ElementSystem system) {
        int n = system.unknowns();
        if (firstPlace.length < n) {
            firstPlace = new int[n + n / 2];
            lastPlace = new int[n + n / 2];
            mark = new int[n + n / 2];
            place = new int[n + n / 2];
        }
        if (gone.length < cut.blocks) {
            int room = cut.blocks + cut.blocks / 2;
            listStart = new int[room + 1];
            gone = new int[room];
            rowStart = new int[room];
            remainderStart = new int[room];
        }
        Arrays.fill(mark, 0, n, -1);
        Arrays.fill(firstPlace, 0, n, Integer.MAX_VALUE);
        Arrays.fill(lastPlace, 0, n, -1);
        int total = cut.blocks == 0 ? 0 : cut.end[cut.blocks - 1];
        for (int i = 0; i < total; i++) {
            int m = system.unknownsOf(cut.order[i], local);
            for (int j = 0; j < m; j++) {
                int d = local[j];
                if (d >= 0) {
                    firstPlace[d] = Math.min(firstPlace[d], i);
                    lastPlace[d] = i;
                }
            }
        }
    }

    private void extendAdd(int c, int m) {
        int from = listStart[c] + gone[c];
        int to = listStart[c + 1];
        int source = remainderStart[c];
        for (int i = from; i < to; i++) {
            int p = place[list[i]];
            for (int j = i; j < to; j++) {
                int q = place[list[j]];
                front[p <= q ? p * m + q : q * m + p] += remainder[source++];
            }
        }
    }

    /** Eliminates the first unknowns of the front; writes 1/pivot and the scaled row of each into the factor. */
    private int eliminate(int m, int count, int factorEnd) {
        int end = factorEnd;
        for (int k = 0; k < count; k++) {
            double pivot = front[k * m + k];
            double inverse = pivot > 0 ? 1 / pivot : 0;
            int row = end - k;
            factor[end] = inverse;
            for (int j = k + 1; j < m; j++) {
                factor[row + j] = front[k * m + j] * inverse;
            }
            for (int i = k + 1; i < m; i++) {
                double f = front[k * m + i];
                if (f == 0) {
                    continue;
                }
                int target = i * m;
                for (int j = i; j < m; j++) {
                    front[target + j] -= f * factor[row + j];
                }
            }
            end += m - k;
        }
        return end;
    }

    /** Solves in place. */
    void solve(double[] b) {
        for (int block = 0; block < blocks; block++) {
            int start = listStart[block];
            int m = listStart[block + 1] - start;
            int row = rowStart[block];
            for (int k = 0; k < gone[block]; k++) {
                double v = b[list[start + k]];
                for (int j = k + 1; j < m; j++) {
                    b[list[start + j]] -= factor[row + j - k] * v;
                }
                b[list[start + k]] = v * factor[row];
                row += m - k;
            }
        }
        for (int block = blocks - 1; block >= 0; block--) {
            int start = listStart[block];
            int m = listStart[block + 1] - start;
            int n = gone[block];
            int row = rowStart[block] + n * m - n * (n - 1) / 2;
            for (int k = n - 1; k >= 0; k--) {
                row -= m - k;
                double v = b[list[start + k]];
                for (int j = k + 1; j < m; j++) {
                    v -= factor[row + j - k] * b[list[start + j]];
                }
                b[list[start + k]] = v;
            }
        }
    }

    int size() { return rowStart[blocks - 1]; }
    double flops() { double f = 0; for (int b = 0; b < blocks; b++) { int m = listStart[b + 1] - listStart[b]; for (int k = 0; k < gone[b]; k++) f += (double) (m - k) * (m - k); } return f; }
}
