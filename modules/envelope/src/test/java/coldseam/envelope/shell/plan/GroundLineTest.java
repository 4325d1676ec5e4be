package coldseam.envelope.shell.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.shell.lattice.Vertex;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;

/** Ground beside two stretches: 4 m to the east, rising from 1,000 to 3,000, and from its end 3 m to the north, level. */
class GroundLineTest {

    private static final long M = 1_000_000;

    private static final Vertex CORNER = new Vertex(5 * M, 2 * M, 0);

    private static final GroundLine LINE = new GroundLine(Lists.immutable.of(
            new GroundLine.Stretch(new Vertex(M, 2 * M, 0), CORNER, 1000, 3000),
            new GroundLine.Stretch(CORNER, new Vertex(5 * M, 5 * M, 0), 3000, 3000)));

    private static long at(double x, double y, long z) {
        return LINE.at(new Vertex(Math.round(x * M), Math.round(y * M), z));
    }

    @Test
    void itRunsEvenAlongAStretch() {
        assertEquals(1000, at(1, 2, 0));
        assertEquals(1500, at(2, 2, 0));
        assertEquals(2500, at(4, 2, 7 * M));
        assertEquals(3000, at(5, 2, -M));
    }

    @Test
    void elsewhereItLiesAsBesideTheNearest() {
        assertEquals(2000, at(3, 1, 0));
        assertEquals(1500, at(2, 2.5, 0));
        assertEquals(1000, at(-4, -3, 0));
        assertEquals(3000, at(6, 9, 0));
        // Nearer to the second: 0.5 m from it, 1.5 m from the first.
        assertEquals(3000, at(4.5, 3.5, 0));
        // Nearer to the first, whose end is 2 m away.
        assertEquals(2250, at(3.5, 3, 0));
    }

    /** Of two as near the lower counts, whichever comes first; one that is nearer by a fifth of a millimetre is no nearer. */
    @Test
    void aTieIsTheLowers() {
        GroundLine.Stretch low = new GroundLine.Stretch(new Vertex(0, 0, 0), new Vertex(4 * M, 0, 0), 10, 10);
        GroundLine.Stretch high = new GroundLine.Stretch(new Vertex(0, 2 * M, 0), new Vertex(4 * M, 2 * M, 0), 20, 20);
        for (GroundLine both : Lists.immutable.of(
                new GroundLine(Lists.immutable.of(low, high)), new GroundLine(Lists.immutable.of(high, low)))) {
            assertEquals(10, both.at(new Vertex(M, M, 0)));
            assertEquals(10, both.at(new Vertex(M, M + 90, 0)));
            assertEquals(20, both.at(new Vertex(M, M + 110, 0)));
        }
    }
}
