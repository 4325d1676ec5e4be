package coldseam.conduction.solid;

import java.util.Arrays;

/**
 * Conjugate gradients for a preconditioner that is not linear, with the coefficient of Polak and Ribière (Y. Notay,
 * Flexible conjugate gradients, SIAM J. Sci. Comput. 22, 2000, section 2).
 *
 * <p>Each step lowers xᵀAx − 2bᵀx by (pᵀr)²/pᵀAp, and that is what the iteration is stopped by: it is an energy of the
 * heat flow form, so it is measured in the unit of the answer. Bounds are true however early it stops.
 */
final class FlexibleCg {

    /** (Output) A x into y. */
    interface Operator {
        void apply(double[] x, double[] y);
    }

    private static final int MOST = 400;
    /** So many steps together must have lowered the energy by less than the tolerance. */
    private static final int STEPS = 3;
    /** So many steps one after another must have moved no unknown farther than is asked. */
    private static final int STILL = 2;

    private final int n;
    private final Operator matrix;
    private final Operator preconditioner;
    private final double[] z;
    private final double[] p;
    private final double[] q;
    private final double[] before;

    /** @param room whose first four arrays of values this has */
    FlexibleCg(int n, Operator matrix, Operator preconditioner, Room room) {
        this.n = n;
        this.matrix = matrix;
        this.preconditioner = preconditioner;
        z = room.values(0, n);
        p = room.values(1, n);
        q = room.values(2, n);
        before = room.values(3, n);
    }

    /**
     * Improves x until three steps together lower the energy by less than a tolerance.
     *
     * @param x (Input, Output)
     * @param r (Input, Output) the residual b − A x
     * @param most steps
     * @return how many steps were taken
     */
    int solve(double[] x, double[] r, double tolerance, int most) {
        return solve(x, r, tolerance, 0, most);
    }

    /**
     * Improves x until steps one after another have moved no unknown by as much as a given size.
     *
     * @param x (Input, Output)
     * @param r (Input, Output) the residual b − A x
     * @param most steps
     * @return how many steps were taken
     */
    int still(double[] x, double[] r, double size, int most) {
        return solve(x, r, 0, size, most);
    }

    private int solve(double[] x, double[] r, double tolerance, double size, int most) {
        // Zero times whatever another system left there need not be zero.
        Arrays.fill(p, 0, n, 0);
        int still = 0;
        double[] lowered = new double[STEPS];
        double zr = 0;
        int step = 0;
        for (; step < Math.min(most, MOST); step++) {
            preconditioner.apply(r, z);
            zr = direct(r, step == 0, zr);
            matrix.apply(p, q);
            double curvature = product(p, q);
            if (!(curvature > 0)) {
                break;
            }
            double along = product(p, r);
            double alpha = along / curvature;
            double farthest = move(x, r, alpha);
            still = Math.abs(alpha) * farthest < size ? still + 1 : 0;
            lowered[step % STEPS] = alpha * along;
            double sum = 0;
            for (double each : lowered) {
                sum += each;
            }
            if (step + 1 >= STEPS && sum < tolerance || still >= STILL) {
                return step + 1;
            }
        }
        return step;
    }

    /** The direction, from the preconditioned residual and the direction before; returns zᵀr. */
    private double direct(double[] r, boolean first, double zr) {
        double[] to = z;
        double[] last = before;
        double[] direction = p;
        double change = 0;
        double along = 0;
        int size = n;
        for (int i = 0; i < size; i++) {
            double each = to[i];
            along += each * r[i];
            change += each * (r[i] - last[i]);
        }
        // β = zᵀ(r − r before)/(zᵀr before)
        double beta = first || !(zr > 0) ? 0 : change / zr;
        for (int i = 0; i < size; i++) {
            direction[i] = to[i] + beta * direction[i];
        }
        return along;
    }

    private double product(double[] a, double[] b) {
        double sum = 0;
        int size = n;
        for (int i = 0; i < size; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Goes along the direction; returns its largest entry. */
    private double move(double[] x, double[] r, double alpha) {
        double[] direction = p;
        double[] product = q;
        double[] last = before;
        double farthest = 0;
        int many = n;
        for (int i = 0; i < many; i++) {
            double each = direction[i];
            double left = r[i];
            last[i] = left;
            x[i] += alpha * each;
            r[i] = left - alpha * product[i];
            double size = Math.abs(each);
            if (size > farthest) {
                farthest = size;
            }
        }
        return farthest;
    }
}
