package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Several environments, arcs between them, holes, separate parts. */
@Tag("slow")
class EnvironmentsTest {

    private static Sketch star(double a, double b, double c, double d) {
        return Sketch.of("four faces")
                .rectangle(1, 0, 0, 1000, 600)
                .rectangle(0.1, 300, 200, 700, 400)
                .environment("a", a, 0.1)
                .environment("b", b, 0.13)
                .environment("c", c, 0.04)
                .environment("d", d, 0.17)
                .boundary("a", 0, 100, 0, 500)
                .boundary("b", 200, 600, 800, 600)
                .boundary("c", 1000, 500, 1000, 100)
                .boundary("d", 800, 0, 200, 0);
    }

    /** Each coupling is also the heat flow into one environment when another alone is warmer; reciprocity follows. */
    @Test
    void couplingsAgreeWithSingleFlows() {
        Solution all = star(0, 0, 0, 0).solve(1e-6);
        assertEquals(6, all.couplings().size());
        String names = "abcd";
        for (int i = 0; i < 4; i++) {
            Solution one = star(i == 0 ? 1 : 0, i == 1 ? 1 : 0, i == 2 ? 1 : 0, i == 3 ? 1 : 0)
                    .solve(1e-6);
            for (int j = 0; j < 4; j++) {
                Interval flow = one.heatFlows().get(j).value();
                if (i != j) {
                    Interval l = all.coupling("" + names.charAt(i), "" + names.charAt(j));
                    assertTrue(l.lower() > 0.01, l::toString);
                    assertEquals(-l.middle(), flow.middle(), l.width() + flow.width());
                }
            }
        }
    }

    /**
     * Couplings from the bounds' two quadratic forms hold what a finer solution says, and are narrower than differences of the
     * bounds of Q(a), Q(b) and Q(a + b): those are more than half as wide as the first two together.
     */
    @Test
    void couplingsAreNarrowerThanDifferencesOfBounds() {
        Solution coarse = star(0, 0, 0, 0).solve(1e-3);
        Solution fine = star(0, 0, 0, 0).solve(1e-6);
        double[] width = new double[4];
        for (int i = 0; i < 4; i++) {
            width[i] = star(i == 0 ? 1 : 0, i == 1 ? 1 : 0, i == 2 ? 1 : 0, i == 3 ? 1 : 0)
                    .solve(1e-3)
                    .heatFlows()
                    .get(i)
                    .value()
                    .width();
        }
        String names = "abcd";
        for (int i = 0; i < 4; i++) {
            for (int j = i + 1; j < 4; j++) {
                Interval l = coarse.coupling("" + names.charAt(i), "" + names.charAt(j));
                Interval exact = fine.coupling("" + names.charAt(i), "" + names.charAt(j));
                assertTrue(l.lower() <= exact.upper() && exact.lower() <= l.upper(), l + " and " + exact);
                assertTrue(l.width() < 0.5 * (width[i] + width[j]), l + " " + width[i] + " " + width[j]);
            }
        }
    }

    /** Two solves with two environments each: joining b, c, d into one gives the sum of a's couplings. */
    @Test
    void couplingsOfOneAddUpToItsCouplingWithTheRest() {
        Solution all = star(0, 0, 0, 0).solve(1e-6);
        Interval sum = all.coupling("a", "b").plus(all.coupling("a", "c")).plus(all.coupling("a", "d"));
        Interval joined = Sketch.of("two faces")
                .rectangle(1, 0, 0, 1000, 600)
                .rectangle(0.1, 300, 200, 700, 400)
                .environment("a", 0, 0.1)
                .environment("rest", 0, 0.13)
                .boundary("a", 0, 100, 0, 500)
                .film("rest", 0.13, 200, 600, 800, 600)
                .film("rest", 0.04, 1000, 500, 1000, 100)
                .film("rest", 0.17, 800, 0, 200, 0)
                .solve(1e-6)
                .coupling("a", "rest");
        assertTrue(sum.lower() <= joined.upper() && joined.lower() <= sum.upper(), sum + " and " + joined);
    }

    /** An adiabatic hole is an arc of its own; by symmetry it may be cut open along its middle. */
    @Test
    void adiabaticHole() {
        Interval whole = Sketch.of("hole")
                .polygon(
                        1, 0, 0, 1000, 0, 1000, 500, 700, 500, 700, 300, 300, 300, 300, 700, 700, 700, 700, 500, 1000,
                        500, 1000, 1000, 0, 1000)
                .environment("left", 1, 0.1)
                .environment("right", 0, 0.1)
                .boundary("left", 0, 0, 0, 1000)
                .boundary("right", 1000, 0, 1000, 1000)
                .solve(1e-5)
                .coupling("left", "right");
        Interval half = Sketch.of("half")
                .polygon(1, 0, 0, 1000, 0, 1000, 500, 700, 500, 700, 300, 300, 300, 300, 500, 0, 500)
                .environment("left", 1, 0.1)
                .environment("right", 0, 0.1)
                .boundary("left", 0, 0, 0, 500)
                .boundary("right", 1000, 0, 1000, 500)
                .solve(1e-5)
                .coupling("left", "right")
                .times(2);
        assertTrue(whole.lower() <= half.upper() && half.lower() <= whole.upper(), whole + " and " + half);
    }

    /** Two parts that touch in one point exchange nothing through it. */
    @Test
    void partsThatTouchInAPoint() {
        Solution solution = Sketch.of("two blocks")
                .rectangle(1, 0, 0, 100, 100)
                .rectangle(1, 100, 100, 200, 200)
                .environment("indoor", 1, 0.1)
                .environment("outdoor", 0, 0.1)
                .boundary("indoor", 0, 0, 0, 100)
                .boundary("outdoor", 100, 0, 100, 100)
                .boundary("indoor", 100, 100, 100, 200)
                .boundary("outdoor", 200, 100, 200, 200)
                .solve(1e-6);
        Interval l = solution.coupling("indoor", "outdoor");
        assertTrue(l.contains(2 * 0.1 / 0.3), l::toString);
    }

    @Test
    void oneEnvironmentAloneIsAtItsTemperature() {
        Solution solution = Sketch.of("alone")
                .rectangle(1, 0, 0, 100, 100)
                .environment("indoor", 20, 0.1)
                .boundary("indoor", 0, 0, 0, 100)
                .solve(1e-4);
        assertTrue(solution.couplings().isEmpty());
        assertEquals(20, solution.field().temperatureAt(0.05, 0.05), 1e-12);
        assertEquals(Interval.of(0), solution.heatFlows().get(0).value());
    }

    /**
     * Two prescribed temperatures meet and a third environment stands across: only the coupling of the two is infinite.
     * What the third gives is known from the section where the two are one; it is the sum of its two couplings.
     */
    @Test
    void aThirdEnvironmentsCouplingsStayFinite() {
        Sketch apart = Sketch.of("meeting").rectangle(1, 0, 0, 400, 200).environment("third", 5, 0.1);
        Solution solution = apart.environment("warm", 20, 0)
                .environment("cold", 0, 0)
                .boundary("third", 0, 0, 400, 0)
                .boundary("warm", 0, 200, 100, 200)
                .boundary("cold", 100, 200, 400, 200)
                .solve(1e-3);
        Interval one = Sketch.of("one")
                .rectangle(1, 0, 0, 400, 200)
                .environment("third", 5, 0.1)
                .environment("both", 0, 0)
                .boundary("third", 0, 0, 400, 0)
                .boundary("both", 0, 200, 400, 200)
                .solve(1e-6)
                .coupling("third", "both");
        assertEquals(Double.POSITIVE_INFINITY, solution.coupling("warm", "cold").upper());
        Interval warm = solution.coupling("third", "warm");
        Interval cold = solution.coupling("third", "cold");
        assertTrue(warm.upper() < 1.01 * one.upper() && cold.upper() < 1.01 * one.upper(), warm + " " + cold);
        assertTrue(warm.lower() + cold.lower() <= one.upper() && one.lower() <= warm.upper() + cold.upper());
        NetHeatFlow flow = solution.heatFlows().getFirst();
        assertTrue(
                Double.isFinite(flow.value().lower())
                        && Double.isFinite(flow.value().upper()),
                flow::toString);
    }
}
