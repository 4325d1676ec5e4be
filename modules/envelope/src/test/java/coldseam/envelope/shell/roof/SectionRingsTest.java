package coldseam.envelope.shell.roof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Point2;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Test;

/** Level sections of a roof taken apart; places in m, sides numbered in order. */
class SectionRingsTest {

    private static MutableList<SectionRings.Start> ring(int first, double... xy) {
        MutableList<SectionRings.Start> ring = Lists.mutable.empty();
        for (int i = 0; i < xy.length; i += 2) {
            ring.add(new SectionRings.Start(first + i / 2, new Point2(xy[i], xy[i + 1])));
        }
        return ring;
    }

    private static MutableList<MutableList<SectionRings.Start>> section(MutableList<SectionRings.Start> ring) {
        MutableList<MutableList<SectionRings.Start>> section = Lists.mutable.empty();
        return section.with(ring);
    }

    private static double area(MutableList<SectionRings.Start> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += PlanVectors.cross(
                    ring.get(i).at(), ring.get((i + 1) % ring.size()).at());
        }
        return sum / 2;
    }

    private static SectionRings of(MutableList<MutableList<SectionRings.Start>> section, boolean courts, int upright) {
        return SectionRings.of(section, side -> side == upright, courts);
    }

    /** Two squares that hang together in a corner, which each of two of its sides comes to within a tenth of a millimetre. */
    @Test
    void aRingThatComesTwiceToAPlaceIsTwo() {
        for (boolean courts : new boolean[] {false, true}) {
            SectionRings apart = of(section(ring(0, 0, 0, 2, 0, 2, 2, 4, 2, 4, 4, 2, 4, 2.00009, 2, 0, 2)), courts, -1);
            assertEquals(2, apart.rings().size());
            assertEquals(Lists.immutable.of(4L, 4L), apart.rings().collect(ring -> Math.round(area(ring))));
            assertEquals(
                    Lists.immutable
                            .of(Lists.immutable.of(0, 1, 6, 7), Lists.immutable.of(2, 3, 4, 5))
                            .toSet(),
                    sides(apart));
            assertEquals(0, apart.ridges().size());
        }
    }

    /** Of each ring the sides that begin it, in order. */
    private static ImmutableSet<ImmutableList<Integer>> sides(SectionRings apart) {
        return apart.rings()
                .collect(ring ->
                        ring.collect(SectionRings.Start::side).toSortedList().toImmutable())
                .toImmutableSet();
    }

    /** A corner that has come to lie on a side parts it: the side goes on on both hands. */
    @Test
    void aCornerOnASidePartsIt() {
        SectionRings apart = of(section(ring(0, 0, 0, 6, 0, 6, 4, 3, 0, 0, 4)), false, -1);
        assertEquals(2, apart.rings().size());
        assertEquals(
                Lists.immutable
                        .of(Lists.immutable.of(0, 1, 2), Lists.immutable.of(0, 3, 4))
                        .toSet(),
                sides(apart));
        assertEquals(12, apart.rings().sumOfDouble(SectionRingsTest::area), 1e-9);
        // Two millimetres off it lies beside.
        assertEquals(
                1,
                of(section(ring(0, 0, 0, 6, 0, 6, 4, 3, 0.002, 0, 4)), false, -1)
                        .rings()
                        .size());
    }

    /** What has no area is a ridge, under the side that stands upright over it if one does. */
    @Test
    void aPartWithoutAreaIsARidge() {
        for (boolean courts : new boolean[] {false, true}) {
            for (int upright : new int[] {-1, 3, 4}) {
                SectionRings apart = of(section(ring(0, 0, 0, 4, 0, 4, 3, 2, 3, 2, 5, 2, 3, 0, 3)), courts, upright);
                SectionRings.Ridge ridge = apart.ridges().getOnly();
                assertEquals(upright, ridge.upright());
                assertEquals(
                        Lists.immutable.of(new Point2(2, 3), new Point2(2, 5)).toSet(),
                        Lists.immutable.of(ridge.from(), ridge.to()).toSet());
                assertEquals(12, area(apart.rings().getOnly()), 1e-9);
                assertEquals(
                        Lists.immutable.of(0, 1, 2, 5, 6),
                        apart.rings()
                                .getOnly()
                                .collect(SectionRings.Start::side)
                                .toSortedList());
            }
        }
    }

    /** A court's side that has come to the outer one's is a ridge; what is left goes round the court. */
    @Test
    void aCourtComesTogetherWithASide() {
        SectionRings apart =
                of(section(ring(0, 0, 0, 6, 0, 6, 6, 0, 6)).with(ring(4, 0, 2, 0, 4, 2, 4, 2, 2)), true, -1);
        assertEquals(36 - 4, area(apart.rings().getOnly()), 1e-9);
        SectionRings.Ridge ridge = apart.ridges().getOnly();
        assertEquals(2, PlanVectors.distance(ridge.from(), ridge.to()), 1e-9);
        assertEquals(0, ridge.from().x() + ridge.to().x(), 1e-9);
    }

    /** One that touches a side in a point: the section goes round it. */
    @Test
    void aCourtMayTouchInAPoint() {
        SectionRings west =
                of(section(ring(0, 0, 0, 6, 0, 6, 6, 0, 6)).with(ring(4, 0, 3, 1, 4, 2, 3, 1, 2)), true, -1);
        assertEquals(36 - 2, area(west.rings().getOnly()), 1e-9);
        // Apart from it they stay two.
        SectionRings apart =
                of(section(ring(0, 0, 0, 6, 0, 6, 6, 0, 6)).with(ring(4, 1, 3, 2, 4, 3, 3, 2, 2)), true, -1);
        assertEquals(2, apart.rings().size());
        assertEquals(0, apart.ridges().size());
    }
}
