package coldseam.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;

/** Straight lines and boxes, worked out by hand. */
class BoxTest {

    private static final Box BOX = new Box(0, 0, 4, 2);

    @Test
    void aLineIsClippedWhereItEntersAndLeaves() {
        assertEquals(Lists.immutable.of(new Spot(0, 1), new Spot(4, 1)), BOX.clipped(new Spot(-4, 1), new Spot(12, 1)));
        assertEquals(Lists.immutable.of(new Spot(1, 0), new Spot(3, 2)), BOX.clipped(new Spot(0, -1), new Spot(4, 3)));
        assertEquals(Lists.immutable.of(new Spot(1, 1), new Spot(2, 1)), BOX.clipped(new Spot(1, 1), new Spot(2, 1)));
        assertTrue(BOX.clipped(new Spot(-1, 3), new Spot(5, 3)).isEmpty());
        assertTrue(BOX.clipped(new Spot(5, -1), new Spot(7, 3)).isEmpty());
    }

    @Test
    void aLineBesideReachesItFromNoFartherOffThanItLies() {
        Spot from = new Spot(-1, 2.5);
        Spot to = new Spot(5, 2.5);
        assertFalse(BOX.reaches(from, to, 0.4));
        assertTrue(BOX.reaches(from, to, 0.5));
        assertFalse(BOX.reaches(new Spot(4.6, 1), new Spot(9, 1), 0.5));
        assertTrue(BOX.reaches(new Spot(4.5, 1), new Spot(9, 1), 0.5));
    }
}
