package coldseam.envelope.shell.lattice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/** Outlines on the lattice, in its units. */
class RingTest {

    private static ImmutableList<Vertex> ring(long... xy) {
        MutableList<Vertex> ring = Lists.mutable.empty();
        for (int i = 0; i < xy.length; i += 2) {
            ring.add(new Vertex(xy[i], xy[i + 1], 7));
        }
        return ring.toImmutable();
    }

    @Test
    void cornersThatAreNoneAreLeftOut() {
        ImmutableList<Vertex> square = ring(0, 0, 10_000, 0, 10_000, 10_000, 0, 10_000);
        assertEquals(square, Ring.tidy(square));
        assertEquals(
                square,
                Ring.tidy(ring(
                        0, 0, 0, 0, 3000, 0, 5000, 0, 10_000, 0, 10_000, 10_000, 10_000, 10_000, 0, 10_000, 0, 4000, 0,
                        0)));
        // Where an outline begins in the middle of a side, that is no corner either.
        assertEquals(
                ring(10_000, 0, 10_000, 10_000, 0, 10_000, 0, 0),
                Ring.tidy(ring(5000, 0, 10_000, 0, 10_000, 10_000, 0, 10_000, 0, 0)));
        assertEquals(1, Ring.tidy(ring(3, 3, 3, 3, 3, 3)).size());
        // A side that goes out and comes back encloses nothing.
        assertEquals(square, Ring.tidy(ring(0, 0, 10_000, 0, 14_000, 0, 10_000, 0, 10_000, 10_000, 0, 10_000)));
        // A triangle is not taken apart, though it is flat.
        assertEquals(3, Ring.tidy(ring(0, 0, 10, 0, 20, 0)).size());
    }

    /** Rounding puts a corner up to 0.2 mm beside a line, not further; one that goes back is none of rounding's. */
    @Test
    void roundingMakesNoCorner() {
        ImmutableList<Vertex> square = ring(0, 0, 1_000_000, 0, 1_000_000, 1_000_000, 0, 1_000_000);
        assertEquals(square, Ring.straight(ring(0, 0, 500_000, 199, 1_000_000, 0, 1_000_000, 1_000_000, 0, 1_000_000)));
        assertEquals(
                5,
                Ring.straight(ring(0, 0, 500_000, 201, 1_000_000, 0, 1_000_000, 1_000_000, 0, 1_000_000))
                        .size());
        assertEquals(
                5,
                Ring.tidy(ring(0, 0, 500_000, 1, 1_000_000, 0, 1_000_000, 1_000_000, 0, 1_000_000))
                        .size());
        ImmutableList<Vertex> spike = ring(0, 0, 1_200_000, 0, 1_000_000, 100, 1_000_000, 1_000_000, 0, 1_000_000);
        assertEquals(spike, Ring.straight(spike));
    }

    /** Counterclockwise seen from above it points up; whatever corner it begins with. */
    @Test
    void theAreaIsTwiceTheOutlines() {
        ImmutableList<Vertex> ell = ring(0, 0, 60, 0, 60, 20, 20, 20, 20, 50, 0, 50);
        assertEquals(new Vertex(0, 0, 2 * (60 * 20 + 20 * 30)), Ring.doubleArea(ell));
        assertEquals(new Vertex(0, 0, -2 * (60 * 20 + 20 * 30)), Ring.doubleArea(ell.toReversed()));
        assertEquals(Ring.doubleArea(ell), Ring.doubleArea(ell.drop(2).newWithAll(ell.take(2))));
    }
}
