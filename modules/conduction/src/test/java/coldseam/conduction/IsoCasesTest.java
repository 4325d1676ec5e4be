package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ISO 10211:2017 Annex C (2007 edition: Annex A), cases 1 and 2. Geometry and printed results from memory of the
 * standard, agreeing with the case files of an open finite-element library; tolerances 0.1 K and 0.1 W/m (from memory).
 */
class IsoCasesTest {

    /** Half a square column: 20 °C on top, 0 °C left and below, the right side the axis of symmetry. */
    static Sketch case1() {
        return Sketch.of("ISO 10211 case 1")
                .rectangle(1, 0, 0, 1000, 2000)
                .environment("hot", 20, 0)
                .environment("cold", 0, 0)
                .boundary("hot", 0, 2000, 1000, 2000)
                .boundary("cold", 0, 2000, 0, 0, 1000, 0);
    }

    static Sketch case2() {
        return Sketch.of("ISO 10211 case 2")
                .rectangle(0.029, 0, 1.5, 500, 41.5)
                .rectangle(1.15, 0, 41.5, 500, 47.5)
                .rectangle(0.12, 0, 36.5, 15, 41.5)
                .rectangle(230, 0, 0, 500, 1.5)
                .rectangle(230, 0, 1.5, 1.5, 35)
                .rectangle(230, 0, 35, 15, 36.5)
                .environment("indoor", 20, 0.11)
                .environment("outdoor", 0, 0.06)
                .boundary("indoor", 0, 0, 500, 0)
                .boundary("outdoor", 500, 47.5, 0, 47.5)
                .probe("A", 0, 47.5)
                .probe("B", 500, 47.5)
                .probe("C", 0, 41.5)
                .probe("D", 15, 41.5)
                .probe("E", 500, 41.5)
                .probe("F", 0, 36.5)
                .probe("G", 15, 36.5)
                .probe("H", 0, 0)
                .probe("I", 500, 0);
    }

    /** The 28 temperatures, rows from the top; printed to 0.1 K. */
    @ParameterizedTest
    @CsvSource({
        "1, 9.7, 13.4, 14.7, 15.1",
        "2, 5.3, 8.6, 10.3, 10.8",
        "3, 3.2, 5.6, 7.0, 7.5",
        "4, 2.0, 3.6, 4.7, 5.0",
        "5, 1.3, 2.3, 3.0, 3.2",
        "6, 0.7, 1.4, 1.8, 1.9",
        "7, 0.3, 0.6, 0.8, 0.9"
    })
    void case1Temperatures(int row, double a, double b, double c, double d) {
        TemperatureField field = case1().solve(1e-4).field();
        double[] printed = {a, b, c, d};
        for (int i = 0; i < 4; i++) {
            double x = 0.25 * (i + 1);
            double y = 2 - 0.25 * row;
            double computed = field.temperatureAt(x, y);
            assertEquals(printed[i], computed, 0.1, "at " + x + ", " + y);
            // The series itself; 0.005 K is far above the field's error at this width and far below the tolerance.
            assertEquals(series(x, y), computed, 5e-3, "at " + x + ", " + y);
        }
    }

    /** T = 20 Σ 4/(nπ) sin(nπx/2a) sinh(nπy/2a)/sinh(nπ), n odd, a = 1 m; separation of variables. */
    private static double series(double x, double y) {
        double sum = 0;
        for (int n = 1; n < 200; n += 2) {
            double k = n * Math.PI / 2;
            double ratio = Math.exp(k * (y - 2)) * (1 - Math.exp(-2 * k * y)) / (1 - Math.exp(-4 * k));
            sum += 4 / (n * Math.PI) * Math.sin(k * x) * ratio;
        }
        return 20 * sum;
    }

    @Test
    void case1FlowIsInfiniteAndSaidToBe() {
        Solution solution = case1().solve(1e-3);
        assertEquals(Double.POSITIVE_INFINITY, solution.coupling("hot", "cold").upper());
        assertFalse(solution.met());
        assertTrue(
                solution.notes().anySatisfy(n -> n.contains("(0, 2) m") && n.contains("infinite")),
                () -> solution.notes().toString());
    }

    @Test
    void case2TemperaturesAndFlow() {
        // The last refinement may narrow the interval by sixteen and so move temperatures by four times what is left.
        Solution solution = case2().solve(1e-5);
        double[] printed = {7.1, 0.8, 7.9, 6.3, 0.8, 16.4, 16.3, 16.8, 18.3};
        for (int i = 0; i < 9; i++) {
            ProbeTemperature probe = solution.probes().get(i);
            assertEquals(printed[i], probe.temperature(), 0.1, probe.name());
            assertTrue(probe.change() < 0.01, () -> probe.name() + " still changes by " + probe.change());
        }
        Interval flow = solution.heatFlows().get(0).value();
        assertEquals(9.5, flow.middle(), 0.1);
        // An independent solver's three meshes (9.4938, 9.4926, 9.4919 W/m) extrapolate to about 9.491.
        assertEquals(9.491, flow.middle(), 2e-3);
        assertTrue(solution.met());
    }
}
