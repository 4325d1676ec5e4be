package coldseam.conduction.solid;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A cycle over two levels, the coarse one solved exactly: as a preconditioner B of a matrix A it must be symmetric and positive, and
 * go no farther along any direction than the matrix allows, (Bv)ᵀA(Bv) at most vᵀBv.
 */
class MultigridTest {

    private static final int[] N = {12, 10, 6};
    /** A box of unknowns; then three pairs that are coupled to each other alone, and two that are coupled to none. */
    private static final int BOX = N[0] * N[1] * N[2];

    private static final int ALL = BOX + 8;

    private final int[] start = new int[ALL + 1];
    private final int[] column = new int[6 * ALL];
    private final double[] weight = new double[6 * ALL];
    private final double[] extra = new double[ALL];

    MultigridTest() {
        int at = 0;
        int[] step = {1, N[0], N[0] * N[1]};
        for (int i = 0; i < BOX; i++) {
            start[i] = at;
            int[] place = {i % N[0], i / N[0] % N[1], i / (N[0] * N[1])};
            for (int s = 0; s < 6; s++) {
                int d = s / 2;
                int ahead = s % 2 == 1 ? 1 : -1;
                if (place[d] + ahead >= 0 && place[d] + ahead < N[d]) {
                    column[at] = i + ahead * step[d];
                    weight[at++] = coupling(Math.min(i, column[at - 1]), d);
                }
            }
            extra[i] = place[2] == 0 ? 0.5 : 0;
        }
        for (int i = BOX; i < ALL; i++) {
            start[i] = at;
            extra[i] = 1 + i - BOX;
            if (i < BOX + 6) {
                column[at] = (i - BOX) % 2 == 0 ? i + 1 : i - 1;
                weight[at++] = 3;
            }
        }
        start[ALL] = at;
    }

    /** Layers a hundred times as conductive as those between, and flat cells. */
    private static double coupling(int lower, int d) {
        double k = lower / (N[0] * N[1]) % 2 == 0 ? 100 : 1;
        return d == 2 ? 0.1 * k : k;
    }

    private double[] times(double[] x) {
        double[] y = new double[ALL];
        for (int i = 0; i < ALL; i++) {
            double diagonal = extra[i];
            for (int j = start[i]; j < start[i + 1]; j++) {
                diagonal += weight[j];
                y[i] -= weight[j] * x[column[j]];
            }
            y[i] += diagonal * x[i];
        }
        return y;
    }

    private double[] cycle(double[] r) {
        double[] z = new double[ALL];
        new Multigrid(ALL, start.clone(), column.clone(), weight.clone(), extra.clone(), new Room()).apply(r, z);
        return z;
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] any(long seed) {
        return new Random(seed).doubles(ALL, -1, 1).toArray();
    }

    @Test
    void aCycleIsSymmetricAndOvershootsNothing() {
        for (int seed = 0; seed < 20; seed++) {
            double[] a = any(seed);
            double[] b = any(1000 + seed);
            double[] za = cycle(a);
            double[] zb = cycle(b);
            double own = product(a, za);
            assertTrue(own > 0);
            // Rounding of sums of 728 terms.
            assertEquals(product(b, za), product(a, zb), 1e-11 * own);
            assertTrue(product(za, times(za)) <= own * (1 + 1e-11));
        }
    }

    @Test
    void whatIsCoupledToNothingElseIsSolved() {
        double[] r = any(7);
        double[] z = cycle(r);
        for (int i = BOX + 6; i < ALL; i++) {
            assertEquals(r[i] / extra[i], z[i], 1e-15);
        }
        for (int i = BOX; i < BOX + 6; i += 2) {
            // A sweep forward and one backward over two unknowns.
            double first = r[i] / (extra[i] + 3);
            double second = (r[i + 1] + 3 * first) / (extra[i + 1] + 3);
            assertEquals(second, z[i + 1], 1e-15);
            assertEquals((r[i] + 3 * second) / (extra[i] + 3), z[i], 1e-15);
        }
    }

    @Test
    void fewStepsSolveTheMatrixItWasMadeOf() {
        double[] right = any(3);
        double[] x = new double[ALL];
        double[] left = right.clone();
        Multigrid cycle = new Multigrid(ALL, start.clone(), column.clone(), weight.clone(), extra.clone(), new Room());
        FlexibleCg solver =
                new FlexibleCg(ALL, (from, to) -> System.arraycopy(times(from), 0, to, 0, ALL), cycle, new Room());
        int steps = solver.solve(x, left, 1e-16 * product(right, right), 400);
        double[] product = times(x);
        for (int i = 0; i < ALL; i++) {
            assertEquals(right[i], product[i], 1e-6);
        }
        assertTrue(steps < 40, steps + " steps");
    }

    @Test
    void whatAnotherSystemLeftInTheRoomChangesNothing() {
        Room room = new Room();
        solved(2, room);
        for (int i = 0; i < 5; i++) {
            // As a system would that came to nothing.
            Arrays.fill(room.values(i, 0), Double.NaN);
        }
        assertArrayEquals(solved(1, new Room()), solved(1, room));
    }

    /** x of A x = b, with as much more beside the diagonal as is asked. */
    private double[] solved(int times, Room room) {
        room.finest.reserve(column.length);
        System.arraycopy(column, 0, room.finest.column, 0, column.length);
        for (int i = 0; i < weight.length; i++) {
            room.finest.weight[i] = times * weight[i];
        }
        double[] x = new double[ALL];
        FlexibleCg.Operator matrix = (from, to) -> System.arraycopy(times(from), 0, to, 0, ALL);
        Multigrid cycle =
                new Multigrid(ALL, start.clone(), room.finest.column, room.finest.weight, extra.clone(), room);
        new FlexibleCg(ALL, matrix, cycle, room).solve(x, any(3), 1e-9, 400);
        return x;
    }
}
