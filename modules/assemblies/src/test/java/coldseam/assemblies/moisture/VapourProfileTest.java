package coldseam.assemblies.moisture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class VapourProfileTest {

    /** Round-off of pressures of a few thousand Pa. */
    private static final double ROUND_OFF = 1e-9;

    private static final double[] X = {0, 1, 3, 4, 10};

    private static VapourProfile of(double[] saturation, boolean... wet) {
        return VapourProfile.of(X, saturation, wet, 1000, 300);
    }

    @Test
    void dryPlanesLieOnAStraightLine() {
        VapourProfile dry = of(new double[] {2000, 1500, 1400, 1300, 1200}, new boolean[5]);
        for (int i = 0; i < X.length; i++) {
            assertEquals(1000 - 70 * X[i], dry.pressure(i), ROUND_OFF);
            assertEquals(0, dry.gain(i), 1e-20);
        }
    }

    @Test
    void aPlaneThatSaturatesGainsTheDifferenceOfTheFlows() {
        // Under the line at x = 4, where 720 Pa would be: 500 Pa, so 125 Pa/m inwards and 200/6 Pa/m outwards.
        VapourProfile wet = of(new double[] {2000, 1500, 1400, 500, 1200}, new boolean[5]);
        assertEquals(2e-10 * (125 - 200.0 / 6), wet.gain(3), 1e-20);
        assertEquals(0, wet.gain(1), 1e-20);
        assertEquals(1000 - 125 * 3, wet.pressure(2), ROUND_OFF);
    }

    @Test
    void aWetPlaneAboveTheLineGivesOff() {
        VapourProfile drying = of(new double[] {2000, 1500, 1400, 900, 1200}, false, false, false, true, false);
        assertEquals(900, drying.pressure(3), ROUND_OFF);
        assertEquals(2e-10 * (25 - 100), drying.gain(3), 1e-20);
    }

    /** The three conditions that only the solution meets: under saturation, never drying from dry, gaining only at saturation. */
    @Property(tries = 500, seed = "2026")
    void dryStacksMeetTheConditionsOfTheObstacle(@ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int planes) {
        Random random = new Random(seed);
        double[] x = new double[planes];
        double[] saturation = new double[planes];
        for (int i = 0; i < planes; i++) {
            x[i] = i == 0 ? 0 : x[i - 1] + 0.01 + random.nextDouble();
            saturation[i] = 200 + 2000 * random.nextDouble();
        }
        double indoor = 2500 * random.nextDouble() + 100;
        double outdoor = 2500 * random.nextDouble() + 100;
        VapourProfile profile = VapourProfile.of(x, saturation, new boolean[planes], indoor, outdoor);
        assertEquals(Math.min(indoor, saturation[0]), profile.pressure(0), ROUND_OFF);
        assertEquals(Math.min(outdoor, saturation[planes - 1]), profile.pressure(planes - 1), ROUND_OFF);
        for (int i = 1; i < planes - 1; i++) {
            double inwards = (profile.pressure(i - 1) - profile.pressure(i)) / (x[i] - x[i - 1]);
            double outwards = (profile.pressure(i) - profile.pressure(i + 1)) / (x[i + 1] - x[i]);
            assertEquals(2e-10 * (inwards - outwards), profile.gain(i), 1e-16);
            assertTrue(profile.pressure(i) <= saturation[i] + ROUND_OFF);
            assertTrue(profile.gain(i) >= -1e-16);
            if (profile.gain(i) > 1e-16) {
                assertEquals(saturation[i], profile.pressure(i), ROUND_OFF);
            }
        }
    }
}
