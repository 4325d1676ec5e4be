package coldseam.envelope.shell.lattice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class VertexTest {

    private static final Vertex HERE = new Vertex(5_000, -3_000, 7_000);

    private static Vertex at(long x, long y, long z) {
        return HERE.plus(new Vertex(x, y, z));
    }

    /** A metre on, then half as far: the end may lie 0.2 mm beside the line, to any side. */
    @Test
    void aWayGoesStraightOn() {
        Vertex over = at(1_000_000, 0, 0);
        for (long off : new long[] {0, 200, -200}) {
            assertTrue(HERE.goesStraight(over, at(1_500_000, off, 0)));
            assertTrue(HERE.goesStraight(over, at(1_500_000, 0, off)));
        }
        assertFalse(HERE.goesStraight(over, at(1_500_000, 201, 0)));
        assertFalse(HERE.goesStraight(over, at(1_500_000, 0, -201)));
        // The longer part is the line: of 3 m on, 0.2 mm of the first.
        assertTrue(at(0, 200, 0).goesStraight(over, at(4_000_000, 0, 0)));
        assertFalse(at(0, 201, 0).goesStraight(over, at(4_000_000, 0, 0)));
    }

    @Test
    void aWayBackIsNotStraight() {
        assertFalse(HERE.goesStraight(at(0, 1_000_000, 0), at(0, 400_000, 0)));
        assertFalse(HERE.goesStraight(at(0, 1_000_000, 0), at(1_000_000, 1_000_000, 0)));
    }

    @Test
    void heightsLieOnATenthOfAMillimetre() {
        assertEquals(2_345_700, Vertex.height(2.34567));
        assertEquals(-2_345_700, Vertex.height(-2.34567));
        assertEquals(2_345_670, Vertex.units(2.34567));
        assertEquals(2.34567, Vertex.metres(2_345_670), 1e-12);
    }
}
