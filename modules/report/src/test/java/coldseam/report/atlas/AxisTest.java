package coldseam.report.atlas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Scales have round numbers and hold what they are made for. */
class AxisTest {

    @Test
    void numbersAreRoundAndEnclose() {
        Axis axis = Axis.around(-0.0475, 0.343, 5);
        assertEquals(
                Lists.mutable.of("-0.1", "0.0", "0.1", "0.2", "0.3", "0.4"),
                axis.numbers().collect(axis::text));
        assertTrue(axis.share(-0.0475) > 0 && axis.share(0.343) < 1);
        assertEquals(0, axis.share(-0.1), 1e-9);
        assertEquals(1, axis.share(0.4), 1e-9);
    }

    @Test
    void digitsFollowTheStep() {
        Axis axis = Axis.around(0, 0.11, 5);
        assertEquals(
                Lists.mutable.of("0.000", "0.025", "0.050", "0.075", "0.100", "0.125"),
                axis.numbers().collect(axis::text));
        assertEquals("200", Axis.around(0, 400, 4).text(200));
    }
}
