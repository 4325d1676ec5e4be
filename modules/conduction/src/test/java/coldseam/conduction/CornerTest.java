package coldseam.conduction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Corners of homogeneous walls with prescribed face temperatures, against the closed form. */
class CornerTest {

    /** An L of two walls; arms are measured from the inner corner. */
    static Sketch corner(double t1, double t2, double arm) {
        return Sketch.of("corner")
                .polygon(1, 0, 0, t2 + arm, 0, t2 + arm, t1, t2, t1, t2, t1 + arm, 0, t1 + arm)
                .environment("indoor", 1, 0)
                .environment("outdoor", 0, 0)
                .boundary("indoor", t2 + arm, t1, t2, t1, t2, t1 + arm)
                .boundary("outdoor", 0, t1 + arm, 0, 0, t2 + arm, 0);
    }

    /**
     * R. Hall's corner formula for thicknesses t1, t2, r = t2/t1, lengths measured along the inner faces: excess =
     * 1/r − (2/π) ln(4r/(r²+1)) + (r²−1)/(πr) arccos((r²−1)/(r²+1)); for r = 1 it is 1 − (2/π) ln 2. The formula from
     * memory; the values agree to 12 digits with an independent Schwarz–Christoffel integral.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 0.558728799694697",
        "1.25, 0.567747646371590",
        "1.5, 0.588297306385173",
        "2, 0.643537249488943",
        "3, 0.763484531213819",
        "4, 0.873438310770919"
    })
    void excessLiesInTheInterval(double ratio, double excess) {
        double t1 = 100;
        double t2 = ratio * t1;
        // The arms are cut off where the disturbance has died away: exp(−π arm/t) is below 1e-12 for arm/t = 9.
        double arm = 9 * t2;
        double formula = 1 / ratio
                - 2 / Math.PI * Math.log(4 * ratio / (ratio * ratio + 1))
                + (ratio * ratio - 1) / (Math.PI * ratio) * Math.acos((ratio * ratio - 1) / (ratio * ratio + 1));
        assertEquals(excess, formula, 1e-12);
        Interval l = corner(t1, t2, arm).solve(1e-6).coupling("indoor", "outdoor");
        double exact = arm / t1 + arm / t2 + excess;
        assertTrue(l.contains(exact), l + " should hold " + exact);
        assertTrue(l.width() <= 1e-6 * exact, () -> l + " is too wide");
    }

    @Test
    void intervalIsNotWiderThanAsked() {
        for (double width : new double[] {1e-2, 1e-3, 1e-4, 1e-5}) {
            Solution solution = corner(100, 100, 900).solve(width);
            assertTrue(solution.met());
            Interval l = solution.coupling("outdoor", "indoor");
            assertTrue(l.width() <= width * l.middle(), () -> l + " at " + width);
        }
    }
}
