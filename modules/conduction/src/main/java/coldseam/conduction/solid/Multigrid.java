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
 *
 * <p>Loops here and beside read what does not change into locals first: the first compiler, which short runs keep to, takes
 * each field anew from memory at each step otherwise.
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

    /** What of the room is whose. */
    private static final int FIRST = 0;

    private static final int NEXT = 1;
    private static final int MEMBER = 2;
    private static final int PLACE = 3;
    private static final int SECOND = 4;
    private static final int HALF_START = 5;
    private static final int HALF_AFTER = 6;
    private static final int HALF_DIAGONAL = 4;

    /** Symmetric matrix by rows: diagonal, and the size of what is beside it, in each row first what is before the diagonal. */
    private static class Matrix {
        final int n;
        final int[] start;
        final int[] column;
        final double[] weight;
        final double[] diagonal;

        /** @param after (Output) where in each row the columns after the diagonal begin */
        Matrix(int n, int[] start, int[] column, double[] weight, double[] diagonal, int[] after) {
            this.n = n;
            this.start = start;
            this.column = column;
            this.weight = weight;
            this.diagonal = diagonal;
            for (int i = 0; i < n; i++) {
                int low = start[i];
                int end = start[i + 1];
                for (int j = low; j < end; j++) {
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
    }

    /** A matrix that is solved with. */
    private static final class Level extends Matrix {
        /** Where in each row the columns after the diagonal begin. */
        final int[] after;

        /** One over each, for the sweeps: a division would keep each unknown waiting for the one before it. */
        final double[] inverse;
        /** The coarse unknown of each; one more than the last where it is coupled to none. */
        int[] group;

        final double[] r;
        final double[] x;
        final double[] c;
        final double[] v;
        final double[] c2;

        Level(int n, int[] start, int[] column, double[] weight, double[] diagonal, int[] after, boolean coarse) {
            super(n, start, column, weight, diagonal, after);
            this.after = after;
            inverse = new double[n];
            for (int i = 0; i < n; i++) {
                inverse[i] = 1 / diagonal[i];
            }
            int size = coarse ? n : 0;
            // One more for what is in no group: no change comes of it.
            r = new double[size + 1];
            x = new double[size + 1];
            c = new double[size];
            v = new double[size];
            c2 = new double[size];
        }

        static Level finest(int n, int[] start, int[] column, double[] weight, double[] diagonal) {
            return new Level(n, start, column, weight, diagonal, new int[n], false);
        }
    }

    private final Level[] levels;
    private final double[][] cholesky;

    /**
     * @param n unknowns
     * @param start where each row begins in {@code column} and {@code weight}; n + 1 numbers
     * @param column of each entry beside the diagonal
     * @param weight its size, greater than 0
     * @param extra (Input, Output) what the diagonal has more than the sum of its row's weights, 0 or greater; the diagonal
     * @param room whose rows and numbers it is made in; {@code column} and {@code weight} may be its finest rows
     */
    Multigrid(int n, int[] start, int[] column, double[] weight, double[] extra, Room room) {
        double[] diagonal = extra;
        for (int i = 0; i < n; i++) {
            double sum = diagonal[i];
            int end = start[i + 1];
            for (int j = start[i]; j < end; j++) {
                sum += weight[j];
            }
            diagonal[i] = sum;
        }
        Level[] all = new Level[MOST_LEVELS];
        all[0] = Level.finest(n, start, column, weight, diagonal);
        int depth = 0;
        room.halves.reserve(start[n]);
        while (all[depth].n > COARSEST && depth + 2 < MOST_LEVELS) {
            Level fine = all[depth];
            int[] first = new int[fine.n];
            Matrix half = half(fine, first, room);
            int[] second = room.numbers(SECOND, half.n);
            Level coarse = coarse(half, second, room);
            for (int i = 0; i < first.length; i++) {
                int group = first[i] < 0 ? -1 : second[first[i]];
                first[i] = group < 0 ? coarse.n : group;
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

    /** (Output) the pair of each; returns the pairs' matrix, which is merged again at once. */
    private static Matrix half(Level fine, int[] pair, Room room) {
        int n = match(fine, pair);
        int[] start = room.numbers(HALF_START, n + 1);
        double[] diagonal = room.values(HALF_DIAGONAL, n);
        merge(fine, pair, n, room.halves, start, diagonal, room);
        return new Matrix(n, start, room.halves.column, room.halves.weight, diagonal, room.numbers(HALF_AFTER, n));
    }

    /** (Output) the group of each; returns the groups' matrix. */
    private static Level coarse(Matrix half, int[] group, Room room) {
        // What is merged has no more entries than what it is of.
        room.groups.reserve(half.start[half.n]);
        int n = match(half, group);
        int[] start = new int[n + 1];
        double[] diagonal = new double[n];
        merge(half, group, n, room.groups, start, diagonal, room);
        return new Level(
                n,
                start,
                Arrays.copyOf(room.groups.column, start[n]),
                Arrays.copyOf(room.groups.weight, start[n]),
                diagonal,
                new int[n],
                true);
    }

    /** (Output) the group of each; returns how many groups there are. */
    private static int match(Matrix fine, int[] group) {
        int n = fine.n;
        int[] start = fine.start;
        int[] column = fine.column;
        double[] weight = fine.weight;
        Arrays.fill(group, 0, n, -2);
        int groups = 0;
        for (int i = 0; i < n; i++) {
            if (group[i] != -2) {
                continue;
            }
            double most = 0;
            int strongest = -1;
            double best = 0;
            int partner = -1;
            int end = start[i + 1];
            for (int j = start[i]; j < end; j++) {
                double size = weight[j];
                int other = column[j];
                if (size > most) {
                    most = size;
                    strongest = other;
                }
                if (size > best && group[other] == -2) {
                    best = size;
                    partner = other;
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

    /** (Output) the matrix of the groups: its rows, where each begins, and its diagonal. */
    private static void merge(
            Matrix fine, int[] group, int groups, Room.Rows to, int[] start, double[] diagonal, Room room) {
        int n = fine.n;
        int[] first = room.numbers(FIRST, groups + 1);
        Arrays.fill(first, 0, groups + 1, 0);
        for (int i = 0; i < n; i++) {
            int each = group[i];
            if (each >= 0) {
                first[each + 1]++;
            }
        }
        for (int g = 0; g < groups; g++) {
            first[g + 1] += first[g];
        }
        int[] member = room.numbers(MEMBER, first[groups]);
        int[] next = room.numbers(NEXT, groups + 1);
        System.arraycopy(first, 0, next, 0, groups + 1);
        for (int i = 0; i < n; i++) {
            int each = group[i];
            if (each >= 0) {
                member[next[each]++] = i;
            }
        }
        int[] fineStart = fine.start;
        int[] fineColumn = fine.column;
        double[] fineWeight = fine.weight;
        double[] fineDiagonal = fine.diagonal;
        int[] column = to.column;
        double[] weight = to.weight;
        int[] place = room.numbers(PLACE, groups);
        Arrays.fill(place, 0, groups, -1);
        int at = 0;
        for (int g = 0; g < groups; g++) {
            int begin = at;
            double own = 0;
            int past = first[g + 1];
            for (int m = first[g]; m < past; m++) {
                int i = member[m];
                own += fineDiagonal[i];
                int end = fineStart[i + 1];
                for (int j = fineStart[i]; j < end; j++) {
                    int other = group[fineColumn[j]];
                    if (other == g) {
                        own -= fineWeight[j];
                    } else if (other >= 0) {
                        int there = place[other];
                        if (there < begin) {
                            place[other] = at;
                            column[at] = other;
                            weight[at++] = fineWeight[j];
                        } else {
                            weight[there] += fineWeight[j];
                        }
                    }
                }
            }
            start[g] = begin;
            diagonal[g] = own;
        }
        start[groups] = at;
    }

    /**
     * The rows of L, each from its first entry that is not zero, which is that of the matrix: unknowns are numbered plane by plane, so
     * what is before is most of it. Each column is taken off all rows after it at once: no step waits for the one before it.
     */
    private static double[][] factor(Level level) {
        int n = level.n;
        double[][] l = new double[n][];
        int[] first = new int[n];
        for (int i = 0; i < n; i++) {
            first[i] = i;
            for (int j = level.start[i]; j < level.start[i + 1]; j++) {
                first[i] = Math.min(first[i], level.column[j]);
            }
            double[] row = new double[i + 1 - first[i]];
            l[i] = row;
            row[i - first[i]] = level.diagonal[i];
            for (int j = level.start[i]; j < level.start[i + 1]; j++) {
                if (level.column[j] < i) {
                    row[level.column[j] - first[i]] = -level.weight[j];
                }
            }
        }
        double[] column = new double[n];
        for (int m = 0; m < n; m++) {
            // Rounding may leave nothing of a pivot; any positive one keeps the preconditioner positive.
            double pivot = Math.sqrt(Math.max(l[m][m - first[m]], 1e-14 * level.diagonal[m]));
            l[m][m - first[m]] = pivot;
            for (int i = m + 1; i < n; i++) {
                int skipped = first[i];
                if (skipped > m) {
                    column[i] = 0;
                    continue;
                }
                double[] row = l[i];
                double size = row[m - skipped] / pivot;
                row[m - skipped] = size;
                column[i] = size;
                for (int j = m + 1; j <= i; j++) {
                    row[j - skipped] -= size * column[j];
                }
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
        Level coarse = levels[depth + 1];
        sweepForward(level, r, x, coarse.r);
        twoSteps(depth + 1, coarse);
        int[] group = level.group;
        double[] change = coarse.x;
        for (int i = 0; i < group.length; i++) {
            x[i] += change[group[i]];
        }
        sweepBackward(level, r, x);
    }

    /** (Output) x from zero, and what it leaves of r, summed over the groups: what the later neighbours add to each. */
    private static void sweepForward(Level level, double[] r, double[] x, double[] left) {
        int[] start = level.start;
        int[] after = level.after;
        int[] column = level.column;
        double[] weight = level.weight;
        double[] inverse = level.inverse;
        int[] group = level.group;
        Arrays.fill(left, 0);
        for (int i = 0; i < inverse.length; i++) {
            double sum = r[i];
            int begin = start[i];
            int end = after[i];
            for (int j = begin; j < end; j++) {
                sum += weight[j] * x[column[j]];
            }
            double own = sum * inverse[i];
            x[i] = own;
            for (int j = begin; j < end; j++) {
                left[group[column[j]]] += weight[j] * own;
            }
        }
    }

    private static void sweepBackward(Level level, double[] r, double[] x) {
        int[] start = level.start;
        int[] column = level.column;
        double[] weight = level.weight;
        double[] inverse = level.inverse;
        int end = start[inverse.length];
        for (int i = inverse.length - 1; i >= 0; i--) {
            double sum = r[i];
            int begin = start[i];
            for (int j = begin; j < end; j++) {
                sum += weight[j] * x[column[j]];
            }
            x[i] = sum * inverse[i];
            end = begin;
        }
    }

    /** Solves A x = r on a coarse level by two steps of flexible conjugate gradients; r is used up. */
    private void twoSteps(int depth, Level level) {
        if (depth + 1 == levels.length) {
            coarsest(level, level.r, level.x);
            return;
        }
        int[] start = level.start;
        int[] column = level.column;
        double[] weight = level.weight;
        double[] diagonal = level.diagonal;
        double[] r = level.r;
        double[] x = level.x;
        double[] c = level.c;
        double[] v = level.v;
        int n = diagonal.length;
        cycle(depth, r, c);
        double size = 0;
        double rho = 0;
        double alpha = 0;
        for (int i = 0; i < n; i++) {
            double sum = diagonal[i] * c[i];
            int end = start[i + 1];
            for (int j = start[i]; j < end; j++) {
                sum -= weight[j] * c[column[j]];
            }
            v[i] = sum;
            size += r[i] * r[i];
            rho += c[i] * sum;
            alpha += c[i] * r[i];
        }
        double step = rho > 0 ? alpha / rho : 0;
        double left = 0;
        for (int i = 0; i < n; i++) {
            double rest = r[i] - step * v[i];
            r[i] = rest;
            left += rest * rest;
            x[i] = step * c[i];
        }
        if (left <= GOOD * GOOD * size || !(rho > 0)) {
            return;
        }
        double[] c2 = level.c2;
        cycle(depth, r, c2);
        double gamma = 0;
        double beta = 0;
        double along = 0;
        for (int i = 0; i < n; i++) {
            double sum = diagonal[i] * c2[i];
            int end = start[i + 1];
            for (int j = start[i]; j < end; j++) {
                sum -= weight[j] * c2[column[j]];
            }
            gamma += c2[i] * v[i];
            beta += c2[i] * sum;
            along += c2[i] * r[i];
        }
        double rest = beta - gamma * gamma / rho;
        if (!(rest > 0)) {
            return;
        }
        double second = along / rest;
        double first = gamma / rho;
        for (int i = 0; i < n; i++) {
            x[i] += second * (c2[i] - first * c[i]);
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
            double[] row = cholesky[i];
            int own = row.length - 1;
            double sum = r[i];
            for (int j = 0, at = i - own; j < own; j++, at++) {
                sum -= row[j] * x[at];
            }
            x[i] = sum / row[own];
        }
        for (int i = level.n - 1; i >= 0; i--) {
            double[] row = cholesky[i];
            int own = row.length - 1;
            double value = x[i] / row[own];
            x[i] = value;
            for (int j = 0, at = i - own; j < own; j++, at++) {
                x[at] -= row[j] * value;
            }
        }
    }
}
