package coldseam.conduction;

/**
 * The heat flow form Q(T) = Σ_{i&lt;j} L_ij (T_i − T_j)² of several environments between two quadratic forms, U ⪰ Q ⪰ l.
 *
 * <p>With M = (U + l)/2 and G = U − l, for any two sets of temperatures a and b
 *
 * <pre>
 *   |Q(a, b) − M(a, b)| ≤ ½ √(G(a, a) G(b, b))
 * </pre>
 *
 * since −½ G ⪯ Q − M ⪯ ½ G. A coupling is L_ij = −Q(e_i, e_j), the flow out of an environment Q(e_i, T). That is narrower
 * than differences of the bounds of Q(e_i), Q(e_j) and Q(e_i + e_j), the more so for a coupling that is small beside
 * others. The forms are zero where all temperatures are equal, so they are given for those of environments 1, 2, … over
 * environment 0. A small allowance for rounding is part of U and l.
 */
public final class HeatFlowForm {

    private final double[][] upper;
    private final double[][] lower;
    private final int n;

    /**
     * @param upper symmetric, of as many rows as there are environments but one; its diagonal may be infinite where two
     *     prescribed temperatures meet
     * @param lower of the same shape
     */
    public HeatFlowForm(double[][] upper, double[][] lower) {
        this.upper = upper;
        this.lower = lower;
        n = upper.length + 1;
    }

    /** How many environments there are. */
    public int environments() {
        return n;
    }

    /**
     * Q(a, b), or Q(a) where both are the same.
     *
     * @param a one temperature for each environment
     * @param b likewise
     */
    public Interval between(double[] a, double[] b) {
        double widthA = value(upper, a, a) - value(lower, a, a);
        double widthB = value(upper, b, b) - value(lower, b, b);
        if (!(widthA < Double.POSITIVE_INFINITY && widthB < Double.POSITIVE_INFINITY)) {
            return new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double middle = 0.5 * (value(upper, a, b) + value(lower, a, b));
        double half = 0.5 * Math.sqrt(Math.max(0, widthA) * Math.max(0, widthB));
        return new Interval(middle - half, middle + half);
    }

    private double value(double[][] form, double[] a, double[] b) {
        double sum = 0;
        for (int i = 1; i < n; i++) {
            for (int j = 1; j < n; j++) {
                double product = (a[i] - a[0]) * (b[j] - b[0]);
                sum += product == 0 ? 0 : form[i - 1][j - 1] * product;
            }
        }
        return sum;
    }

    /** L_ij of two environments, or of two sets of them; none is negative. */
    public Interval coupling(double[] first, double[] second) {
        Interval form = between(first, second);
        double lower = Math.max(0, -form.upper());
        return new Interval(lower, Math.max(lower, -form.lower()));
    }

    /** Half the sum of Q(e_i) over all environments: the sum of all couplings, with the width of its bounds. */
    public Interval total() {
        double low = 0;
        double up = 0;
        for (int e = 0; e < n; e++) {
            double[] unit = new double[n];
            unit[e] = 1;
            low += value(lower, unit, unit);
            up += value(upper, unit, unit);
        }
        return new Interval(0.5 * Math.min(low, up), 0.5 * up);
    }
}
