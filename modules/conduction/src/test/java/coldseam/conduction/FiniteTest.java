package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What is no number is named and goes no further. */
class FiniteTest {

    private static String told(Runnable run) {
        return assertThrows(IllegalStateException.class, run::run).getMessage();
    }

    @Test
    void whatIsNoNumberIsNamedWithItsValue() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertEquals(
                    "internal error, please report: R of the wool came out as " + bad + " m²·K/W",
                    told(() -> Finite.number(bad, "m²·K/W", () -> "R of the wool")));
            Interval open = Double.isNaN(bad) ? Interval.of(0) : new Interval(Math.min(0, bad), Math.max(0, bad));
            assertEquals(!Double.isNaN(bad), refuses(open));
        }
        assertEquals(0.16, Finite.number(0.16, "W/(m²·K)", () -> "U"));
    }

    private static boolean refuses(Interval value) {
        try {
            Finite.bounds(value, "W/K", () -> "a loss");
            return false;
        } catch (IllegalStateException refused) {
            return true;
        }
    }

    @Test
    void anIntervalMayBeOpenAndHoldsNoNaN() {
        assertEquals(Double.POSITIVE_INFINITY, new Interval(1, Double.POSITIVE_INFINITY).upper());
        assertTrue(told(() -> new Interval(Double.NaN, 1)).contains("the lower bound beside 1.0 came out as NaN"));
        assertTrue(told(() -> Interval.of(1).times(Double.NaN)).contains("came out as NaN"));
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1));
    }
}
