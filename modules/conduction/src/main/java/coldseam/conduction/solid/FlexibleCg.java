package coldseam.conduction.solid;

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

    FlexibleCg(int n, Operator matrix, Operator preconditioner) {
        this.n = n;
        this.matrix = matrix;
        this.preconditioner = preconditioner;
        z = new double[n];
        p = new double[n];
        q = new double[n];
        before = new double[n];
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
        int still = 0;
        double[] lowered = new double[STEPS];
        double zr = 0;
        int step = 0;
        for (; step < Math.min(most, MOST); step++) {
            preconditioner.apply(r, z);
            double change = 0;
            double along = 0;
            for (int i = 0; i < n; i++) {
                along += z[i] * r[i];
                change += z[i] * (r[i] - before[i]);
            }
            // β = zᵀ(r − r before)/(zᵀr before)
            double beta = step == 0 || !(zr > 0) ? 0 : change / zr;
            zr = along;
            for (int i = 0; i < n; i++) {
                p[i] = z[i] + beta * p[i];
            }
            matrix.apply(p, q);
            double curvature = 0;
            along = 0;
            for (int i = 0; i < n; i++) {
                curvature += p[i] * q[i];
                along += p[i] * r[i];
            }
            if (!(curvature > 0)) {
                break;
            }
            double alpha = along / curvature;
            double farthest = 0;
            for (int i = 0; i < n; i++) {
                before[i] = r[i];
                x[i] += alpha * p[i];
                r[i] -= alpha * q[i];
                farthest = Math.max(farthest, Math.abs(p[i]));
            }
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
}
