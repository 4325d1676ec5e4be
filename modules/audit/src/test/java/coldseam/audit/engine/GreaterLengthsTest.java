package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.junctions.language.DetailParameter;
import org.junit.jupiter.api.Test;

/** What is tried is more of a length than there is, in its range, and ends at the range's end. */
class GreaterLengthsTest {

    @Test
    void whatIsTriedIsMore() {
        for (int value = 1; value < 100; value++) {
            for (int left = 1; left < 200; left++) {
                isMore(value, left);
            }
        }
    }

    private static void isMore(int value, int left) {
        double most = (value + left) * 1e-3;
        DetailParameter length =
                new DetailParameter("lap", value * 1e-3, value * 1e-3, most, "how far boards lap", true, false);
        double before = length.value();
        for (int steps = 1; steps <= 3; steps++) {
            double tried = GreaterLengths.greaterLength(length, steps);
            assertTrue(
                    tried > length.value() && tried >= before && tried <= most, steps + " of " + length + ": " + tried);
            before = tried;
        }
        assertEquals(most, before, 1e-9, length::toString);
    }
}
