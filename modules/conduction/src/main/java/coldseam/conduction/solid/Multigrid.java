package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * One cycle of aggregation multigrid for a symmetric matrix of positive diagonal and no positive entry beside it: the
 * preconditioner of both systems.
 *
 * <p>Unknowns are matched in pairs along their strongest coupling, twice a level; the coarse matrix is the sum over the
 * groups. A sweep of Gauss–Seidel forward goes before, one backward after, and each coarse problem is solved by two steps
 * of flexible conjugate gradients (K-cycle); the coarsest by Cholesky. What is one whatever the aspect ratio of the cells
 * and the jump of the conductivity is the quality of the matching: it follows the strong couplings (Y. Notay, An
 * aggregation-based algebraic multigrid method, ETNA 37, 2010; pairwise matching in its section 3).
 */
final class Multigrid implements FlexibleCg.Operator {

    private static final int COARSEST = 300;
    private static final int MOST_LEVELS = 30;
    /** A pair is accepted from this share of a row's largest coupling. */
    private static final double STRONG = 0.25;
    /** A level that leaves more than this share of the unknowns is not worth another. */
    private static final double STALLED = 0.9;
    /** A coarse residual this much smaller needs no second step. */
    private static final double GOOD = 0.25;

    /** Symmetric matrix by rows: diagonal, and the size of what is beside it, in each row first what is before the diagonal. */
    private static final class Level {
        final int n;
        final int[] start;
        /** Where in each row the columns after the diagonal begin. */
        final int[] after;

        final int[] column;
        final double[] weight;
        final double[] diagonal;
        /** The coarse unknown of each, -1 where it is coupled to none. */
        int[] group;

        final double[] r;
        final double[] x;
        final double[] c;
        final double[] v;
        final double[] c2;
        final double[] v2;

        Level(int n, int[] start, int[] column, double[] weight, double[] diagonal, boolean coarse) {
            this.n = n;
            this.start = start;
            this.column = column;
            this.weight = weight;
            this.diagonal = diagonal;
            after = new int[n];
            divided();
            int size = coarse ? n : 0;
            r = new double[size];
            x = new double[size];
            c = new double[size];
            v = new double[size];
            c2 = new double[size];
            v2 = new double[size];
        }

        private void divided() {
            for (int i = 0; i < n; i++) {
                int low = start[i];
                for (int j = low; j < start[i + 1]; j++) {
                    int other = column[j];
                    if (other < i) {
                        double size = weight[j];
                        column[j] = column[low];
                        weight[j] = weight[low];
                        column[low] = other;
                        weight[low++] = size;
                    }
                }
                after[i] = low;
            }
        }

        void multiply(double[] from, double[] to) {
            for (int i = 0; i < n; i++) {
                double sum = diagonal[i] * from[i];
                for (int j = start[i]; j < start[i + 1]; j++) {
                    sum -= weight[j] * from[column[j]];
                }
                to[i] = sum;
            }
        }
    }

    private final Level[] levels;
    private final double[][] cholesky;

    /**
     * @param n unknowns
     * @param start where each row begins in {@code column} and {@code weight}; n + 1 numbers
     * @param column of each entry beside the diagonal
     * @param weight its size, greater than 0
     * @param extra what the diagonal has more than the sum of its row's weights, 0 or greater
     */
    Multigrid(int n, int[] start, int[] column, double[] weight, double[] extra) {
        double[] diagonal = extra.clone();
        for (int i = 0; i < n; i++) {
            for (int j = start[i]; j < start[i + 1]; j++) {
                diagonal[i] += weight[j];
            }
        }
        Level[] all = new Level[MOST_LEVELS];
        all[0] = new Level(n, start, column, weight, diagonal, false);
        int depth = 0;
        while (all[depth].n > COARSEST && depth + 2 < MOST_LEVELS) {
            Level fine = all[depth];
            int[] first = new int[fine.n];
            Level half = merge(fine, first, match(fine, first));
            int[] second = new int[half.n];
            Level coarse = merge(half, second, match(half, second));
            for (int i = 0; i < fine.n; i++) {
                first[i] = first[i] < 0 ? -1 : second[first[i]];
            }
            if (coarse.n > STALLED * fine.n) {
                break;
            }
            fine.group = first;
            all[++depth] = coarse;
        }
        levels = Arrays.copyOf(all, depth + 1);
        cholesky = levels[depth].n <= COARSEST ? factor(levels[depth]) : new double[0][];
    }

    /** (Output) the group of each; returns how many groups there are. */
    private static int match(Level fine, int[] group) {
        Arrays.fill(group, -2);
        int groups = 0;
        for (int i = 0; i < fine.n; i++) {
            if (group[i] != -2) {
                continue;
            }
            double most = 0;
            int strongest = -1;
            double best = 0;
            int partner = -1;
            for (int j = fine.start[i]; j < fine.start[i + 1]; j++) {
                if (fine.weight[j] > most) {
                    most = fine.weight[j];
                    strongest = fine.column[j];
                }
                if (group[fine.column[j]] == -2 && fine.weight[j] > best) {
                    best = fine.weight[j];
                    partner = fine.column[j];
                }
            }
            if (strongest < 0) {
                group[i] = -1;
            } else if (partner >= 0 && best >= STRONG * most) {
                group[i] = groups;
                group[partner] = groups++;
            } else {
                // A node left over joins its strongest neighbour: without that, coarsening stalls.
                group[i] = group[strongest] >= 0 ? group[strongest] : groups++;
            }
        }
        return groups;
    }

    /** The matrix of the groups. */
    private static Level merge(Level fine, int[] group, int groups) {
        int[] first = new int[groups + 1];
        for (int i = 0; i < fine.n; i++) {
            if (group[i] >= 0) {
                first[group[i] + 1]++;
            }
        }
        for (int g = 0; g < groups; g++) {
            first[g + 1] += first[g];
        }
        int[] member = new int[first[groups]];
        int[] next = first.clone();
        for (int i = 0; i < fine.n; i++) {
            if (group[i] >= 0) {
                member[next[group[i]]++] = i;
            }
        }
        int[] start = new int[groups + 1];
        int[] column = new int[fine.start[fine.n]];
        double[] weight = new double[column.length];
        double[] diagonal = new double[groups];
        int[] place = new int[groups];
        Arrays.fill(place, -1);
        int at = 0;
        for (int g = 0; g < groups; g++) {
            start[g] = at;
            for (int m = first[g]; m < first[g + 1]; m++) {
                int i = member[m];
                diagonal[g] += fine.diagonal[i];
                for (int j = fine.start[i]; j < fine.start[i + 1]; j++) {
                    int other = group[fine.column[j]];
                    if (other == g) {
                        diagonal[g] -= fine.weight[j];
                    } else if (other >= 0) {
                        if (place[other] < start[g]) {
                            place[other] = at;
                            column[at++] = other;
                        }
                        weight[place[other]] += fine.weight[j];
                    }
                }
            }
        }
        start[groups] = at;
        return new Level(groups, start, Arrays.copyOf(column, at), Arrays.copyOf(weight, at), diagonal, true);
    }

    private static double[][] factor(Level level) {
        double[][] l = new double[level.n][];
        for (int i = 0; i < level.n; i++) {
            l[i] = new double[i + 1];
            l[i][i] = level.diagonal[i];
            for (int j = level.start[i]; j < level.start[i + 1]; j++) {
                if (level.column[j] < i) {
                    l[i][level.column[j]] = -level.weight[j];
                }
            }
            for (int j = 0; j <= i; j++) {
                double sum = l[i][j];
                for (int m = 0; m < j; m++) {
                    sum -= l[i][m] * l[j][m];
                }
                // Rounding may leave nothing of a pivot; any positive one keeps the preconditioner positive.
                l[i][j] = j < i ? sum / l[j][j] : Math.sqrt(Math.max(sum, 1e-14 * level.diagonal[i]));
            }
        }
        return l;
    }

    @Override
    public void apply(double[] r, double[] z) {
        cycle(0, r, z);
    }

    private void cycle(int depth, double[] r, double[] x) {
        Level level = levels[depth];
        if (depth + 1 == levels.length) {
            coarsest(level, r, x);
            return;
        }
        for (int i = 0; i < level.n; i++) {
            double sum = r[i];
            for (int j = level.start[i]; j < level.after[i]; j++) {
                sum += level.weight[j] * x[level.column[j]];
            }
            x[i] = sum / level.diagonal[i];
        }
        Level coarse = levels[depth + 1];
        Arrays.fill(coarse.r, 0);
        for (int i = 0; i < level.n; i++) {
            // After a forward sweep from zero the residual is what the later neighbours add.
            double sum = 0;
            for (int j = level.after[i]; j < level.start[i + 1]; j++) {
                sum += level.weight[j] * x[level.column[j]];
            }
            if (level.group[i] >= 0) {
                coarse.r[level.group[i]] += sum;
            }
        }
        twoSteps(depth + 1, coarse);
        for (int i = 0; i < level.n; i++) {
            x[i] += level.group[i] >= 0 ? coarse.x[level.group[i]] : 0;
        }
        sweepBackward(level, r, x);
    }

    private static void sweepBackward(Level level, double[] r, double[] x) {
        for (int i = level.n - 1; i >= 0; i--) {
            double sum = r[i];
            for (int j = level.start[i]; j < level.start[i + 1]; j++) {
                sum += level.weight[j] * x[level.column[j]];
            }
            x[i] = sum / level.diagonal[i];
        }
    }

    /** Solves A x = r on a coarse level by two steps of flexible conjugate gradients; r is used up. */
    private void twoSteps(int depth, Level level) {
        if (depth + 1 == levels.length) {
            coarsest(level, level.r, level.x);
            return;
        }
        cycle(depth, level.r, level.c);
        level.multiply(level.c, level.v);
        double size = 0;
        double rho = 0;
        double alpha = 0;
        for (int i = 0; i < level.n; i++) {
            size += level.r[i] * level.r[i];
            rho += level.c[i] * level.v[i];
            alpha += level.c[i] * level.r[i];
        }
        double step = rho > 0 ? alpha / rho : 0;
        double left = 0;
        for (int i = 0; i < level.n; i++) {
            level.r[i] -= step * level.v[i];
            left += level.r[i] * level.r[i];
            level.x[i] = step * level.c[i];
        }
        if (left <= GOOD * GOOD * size || !(rho > 0)) {
            return;
        }
        cycle(depth, level.r, level.c2);
        level.multiply(level.c2, level.v2);
        double gamma = 0;
        double beta = 0;
        double along = 0;
        for (int i = 0; i < level.n; i++) {
            gamma += level.c2[i] * level.v[i];
            beta += level.c2[i] * level.v2[i];
            along += level.c2[i] * level.r[i];
        }
        double rest = beta - gamma * gamma / rho;
        if (!(rest > 0)) {
            return;
        }
        for (int i = 0; i < level.n; i++) {
            level.x[i] += along / rest * (level.c2[i] - gamma / rho * level.c[i]);
        }
    }

    private void coarsest(Level level, double[] r, double[] x) {
        if (cholesky.length < level.n) {
            // Coarsening stalled above the size of a direct solve.
            Arrays.fill(x, 0, level.n, 0);
            for (int sweep = 0; sweep < 4; sweep++) {
                sweepBackward(level, r, x);
            }
            return;
        }
        for (int i = 0; i < level.n; i++) {
            double sum = r[i];
            for (int j = 0; j < i; j++) {
                sum -= cholesky[i][j] * x[j];
            }
            x[i] = sum / cholesky[i][i];
        }
        for (int i = level.n - 1; i >= 0; i--) {
            x[i] /= cholesky[i][i];
            for (int j = 0; j < i; j++) {
                x[j] -= cholesky[i][j] * x[i];
            }
        }
    }
}
