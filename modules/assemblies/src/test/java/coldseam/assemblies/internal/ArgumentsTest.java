package coldseam.assemblies.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What lies on a limit is allowed or not as the guard's name says; what is not a number never is. */
class ArgumentsTest {

    private static final double LEAST = Double.MIN_VALUE;
    private static final double MOST = Double.MAX_VALUE;

    @Test
    void allowedValuesComeBackAsTheyAre() {
        assertEquals(LEAST, Arguments.positive("it", LEAST, "m"));
        assertEquals(MOST, Arguments.positive("it", MOST, "m"));
        assertEquals(0, Arguments.notNegative("it", 0, "m"));
        assertEquals(MOST, Arguments.notNegative("it", MOST, "m"));
        assertEquals(2, Arguments.within("it", 2, 2, 3, "m"));
        assertEquals(3, Arguments.within("it", 3, 2, 3, "m"));
        assertEquals(Math.nextUp(2.0), Arguments.between("it", Math.nextUp(2.0), 2, 3, "m"));
        assertEquals(Math.nextDown(3.0), Arguments.between("it", Math.nextDown(3.0), 2, 3, "m"));
    }

    @Test
    void whatLiesBeyondIsRefused() {
        for (double bad : new double[] {0, -LEAST, Double.POSITIVE_INFINITY, Double.NaN}) {
            refused(
                    () -> Arguments.positive("it", bad, "m"),
                    "it is " + bad + " m; allowed is a finite value greater than 0");
        }
        for (double bad : new double[] {-LEAST, Double.POSITIVE_INFINITY, Double.NaN}) {
            refused(
                    () -> Arguments.notNegative("it", bad, "m"),
                    "it is " + bad + " m; allowed is a finite value of 0 or more");
        }
        for (double bad : new double[] {Math.nextDown(2.0), Math.nextUp(3.0), Double.NaN}) {
            refused(() -> Arguments.within("it", bad, 2, 3, "m"), "it is " + bad + " m; allowed is 2.0 to 3.0 m");
        }
        for (double bad : new double[] {2, 3, Double.NaN}) {
            refused(
                    () -> Arguments.between("it", bad, 2, 3, ""),
                    "it is " + bad + "; allowed is more than 2.0 and less than 3.0");
        }
    }

    private static void refused(Executable asked, String message) {
        assertEquals(
                message + ". Correct the input.",
                assertThrows(IllegalArgumentException.class, asked).getMessage());
    }
}
