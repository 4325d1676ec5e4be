package coldseam.conduction;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

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
 *
 * @param upper symmetric, of as many rows as there are environments but one; may be infinite where there are two
 *     environments
 * @param lower of the same shape
 */
public record HeatFlowForm(double[][] upper, double[][] lower) {

    /**
     * Q(a, b), or Q(a) where both are the same.
     *
     * @param a one temperature for each environment
     * @param b likewise
     */
    public Interval between(double[] a, double[] b) {
        if (upper.length == 1) {
            double product = (a[1] - a[0]) * (b[1] - b[0]);
            return product == 0 ? Interval.of(0) : new Interval(lower[0][0], upper[0][0]).times(product);
        }
        double widthA = value(upper, a, a) - value(lower, a, a);
        double widthB = value(upper, b, b) - value(lower, b, b);
        double middle = 0.5 * (value(upper, a, b) + value(lower, a, b));
        double half = 0.5 * Math.sqrt(Math.max(0, widthA) * Math.max(0, widthB));
        return new Interval(middle - half, middle + half);
    }

    private double value(double[][] form, double[] a, double[] b) {
        double sum = 0;
        for (int i = 1; i <= upper.length; i++) {
            for (int j = 1; j <= upper.length; j++) {
                double product = (a[i] - a[0]) * (b[j] - b[0]);
                sum += product == 0 ? 0 : form[i - 1][j - 1] * product;
            }
        }
        return sum;
    }

    /** Half the sum of Q(e_i) over all environments: the sum of all couplings, with the width of its bounds. */
    public Interval total() {
        double low = 0;
        double up = 0;
        for (double[] unit : units(upper.length + 1)) {
            low += value(lower, unit, unit);
            up += value(upper, unit, unit);
        }
        return new Interval(0.5 * Math.min(low, up), 0.5 * up);
    }

    /**
     * L_ij of each pair; none is negative.
     *
     * @param names of environments
     * @param sets for each name 1 for the environments of this form that belong to it, 0 for the others
     */
    public ImmutableList<Coupling> couplings(ImmutableList<String> names, double[][] sets) {
        MutableList<Coupling> all = Lists.mutable.empty();
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                Interval form = between(sets[i], sets[j]);
                double least = Math.max(0, -form.upper());
                all.add(new Coupling(names.get(i), names.get(j), new Interval(least, Math.max(least, -form.lower()))));
            }
        }
        return all.toImmutable();
    }

    /**
     * Q(e_i, T) of each.
     *
     * @param names of environments
     * @param sets as of {@link #couplings}
     * @param temperatures of each environment of this form, °C
     */
    public ImmutableList<NetHeatFlow> heatFlows(ImmutableList<String> names, double[][] sets, double[] temperatures) {
        return names.collectWithIndex((name, i) -> new NetHeatFlow(name, between(sets[i], temperatures)));
    }

    /** The sets of n environments that stand for themselves. */
    public static double[][] units(int n) {
        double[][] units = new double[n][n];
        for (int e = 0; e < n; e++) {
            units[e][e] = 1;
        }
        return units;
    }
}
