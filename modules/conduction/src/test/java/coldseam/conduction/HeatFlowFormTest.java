package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Couplings from two forms, against couplings that are known. */
class HeatFlowFormTest {

    private static final ImmutableList<String> NAMES = Lists.immutable.of("a", "b", "c", "d");

    /** L of the pairs ab, ac, ad, bc, bd, cd; one is small beside the others. */
    private static final double[] COUPLINGS = {2, 1e-3, 0.7, 3, 0.2, 1.1};

    private static double coupling(int i, int j) {
        int a = Math.min(i, j);
        int b = Math.max(i, j);
        return COUPLINGS[a == 0 ? b - 1 : a == 1 ? b + 1 : 5];
    }

    /** Q of the temperatures of b, c, d over that of a. */
    private static double[][] exact() {
        double[][] q = new double[3][3];
        for (int i = 1; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                if (i != j) {
                    q[i - 1][i - 1] += coupling(i, j);
                    if (j > 0) {
                        q[i - 1][j - 1] = -coupling(i, j);
                    }
                }
            }
        }
        return q;
    }

    /** Adds a form that is positive: sums of squares of random multiples of the temperatures. */
    private static double[][] moved(double[][] form, Random random, double by) {
        double[][] to = {form[0].clone(), form[1].clone(), form[2].clone()};
        for (int square = 0; square < 3; square++) {
            double[] w = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    to[i][j] += by * w[i] * w[j];
                }
            }
        }
        return to;
    }

    private static double value(double[][] form, double[] t) {
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                sum += form[i][j] * (t[i + 1] - t[0]) * (t[j + 1] - t[0]);
            }
        }
        return sum;
    }

    @Test
    void holdsEveryCouplingAndFlowAndIsNarrowerThanDifferences() {
        Random random = new Random(2026);
        double[] temperatures = {20, -5, 3, 11};
        double narrower = 0;
        for (int round = 0; round < 50; round++) {
            double[][] upper = moved(exact(), random, 1e-3);
            double[][] lower = moved(exact(), random, -1e-3);
            HeatFlowForm form = new HeatFlowForm(upper, lower);
            double[][] units = HeatFlowForm.units(4);
            ImmutableList<Coupling> couplings = form.couplings(NAMES, units);
            ImmutableList<NetHeatFlow> flows = form.heatFlows(NAMES, units, temperatures);
            int pair = 0;
            for (int i = 0; i < 4; i++) {
                double flow = 0;
                for (int j = 0; j < 4; j++) {
                    flow += i == j ? 0 : coupling(i, j) * (temperatures[i] - temperatures[j]);
                }
                assertTrue(flows.get(i).value().contains(flow), flows.get(i) + " misses " + flow);
                for (int j = i + 1; j < 4; j++, pair++) {
                    Interval l = couplings.get(pair).value();
                    assertTrue(l.contains(coupling(i, j)), couplings.get(pair) + " misses " + coupling(i, j));
                    double[] both = new double[4];
                    both[i] = 1;
                    both[j] = 1;
                    double apart = 0.5
                            * (value(upper, units[i])
                                    - value(lower, units[i])
                                    + value(upper, units[j])
                                    - value(lower, units[j])
                                    + value(upper, both)
                                    - value(lower, both));
                    narrower += apart / l.width() / 300;
                }
            }
        }
        // The geometric mean of two gaps is at most half their sum, and the gap of the pair is spared: more than half
        // goes.
        assertTrue(narrower > 2, "only " + narrower + " times narrower");
    }

    @Test
    void oneSetMayHoldSeveral() {
        HeatFlowForm form = new HeatFlowForm(exact(), exact());
        double[][] sets = {{1, 1, 0, 0}, {0, 0, 1, 1}};
        double sum = coupling(0, 2) + coupling(0, 3) + coupling(1, 2) + coupling(1, 3);
        Coupling joined = form.couplings(Lists.immutable.of("ab", "cd"), sets).getOnly();
        assertEquals(sum, joined.value().middle(), 1e-12);
        assertEquals(2 + 1e-3 + 0.7 + 3 + 0.2 + 1.1, form.total().middle(), 1e-12);
    }

    @Test
    void anInfiniteFormOfTwoKeepsItsLowerBound() {
        HeatFlowForm form = new HeatFlowForm(new double[][] {{Double.POSITIVE_INFINITY}}, new double[][] {{3}});
        Coupling only = form.couplings(Lists.immutable.of("a", "b"), HeatFlowForm.units(2))
                .getOnly();
        assertEquals(new Interval(3, Double.POSITIVE_INFINITY), only.value());
    }
}
