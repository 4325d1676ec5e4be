package coldseam.envelope.shell.storeys;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.shell.lattice.Vertex;
import java.util.Random;
import java.util.function.LongPredicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** Heights over a bound against the unit cells they cover at either end of it. */
class ReachTest {

    private static final int HIGHEST = 12;

    private static Reach reach(long bottomA, long bottomB, long topA, long topB) {
        return new Reach(bottomA, bottomB, topA, topB, 0, Lists.immutable.of(0));
    }

    private static Reach random(Random random) {
        long[] ends = new long[4];
        for (int i = 0; i < 4; i++) {
            ends[i] = random.nextInt(HIGHEST);
        }
        return reach(
                Math.min(ends[0], ends[1]),
                Math.min(ends[2], ends[3]),
                Math.max(ends[0], ends[1]),
                Math.max(ends[2], ends[3]));
    }

    private static LongPredicate covers(Reach reach, boolean atA) {
        return z -> atA ? z >= reach.bottomA() && z < reach.topA() : z >= reach.bottomB() && z < reach.topB();
    }

    private static long cells(Reach reach) {
        long sum = 0;
        for (long z = 0; z < HIGHEST; z++) {
            sum += (covers(reach, true).test(z) ? 1 : 0) + (covers(reach, false).test(z) ? 1 : 0);
        }
        return sum;
    }

    /** What is within another, between heights and without another covers what both say, at either end. */
    @Test
    void heightsAreTheirCells() {
        Random random = new Random(7);
        for (int i = 0; i < 400; i++) {
            Reach one = random(random);
            Reach other = random(random);
            assertEquals(cells(one), one.size());
            assertEquals(cells(one) == 0, one.isEmpty());
            Reach within = one.within(other);
            Reach between = one.between(3, 7);
            ImmutableList<Reach> without = one.without(other);
            for (boolean atA : new boolean[] {true, false}) {
                for (long z = 0; z < HIGHEST; z++) {
                    boolean own = covers(one, atA).test(z);
                    boolean cut = covers(other, atA).test(z);
                    long height = z;
                    assertEquals(own && cut, covers(within, atA).test(z), one + " within " + other);
                    assertEquals(own && z >= 3 && z < 7, covers(between, atA).test(z), one + " between");
                    assertEquals(
                            own && !cut ? 1 : 0,
                            without.count(part -> covers(part, atA).test(height)),
                            one + " without " + other);
                }
            }
            assertEquals(0, without.count(Reach::isEmpty));
        }
    }

    /** Two meet where they touch or overlap at both ends; together they reach from the lower foot to the higher head. */
    @Test
    void twoMeetOverTheWholeBound() {
        Random random = new Random(8);
        for (int i = 0; i < 400; i++) {
            Reach one = random(random);
            Reach other = random(random);
            boolean atA = Math.max(one.bottomA(), other.bottomA()) <= Math.min(one.topA(), other.topA());
            boolean atB = Math.max(one.bottomB(), other.bottomB()) <= Math.min(one.topB(), other.topB());
            assertEquals(atA && atB, one.meets(other));
            assertEquals(atA && atB, other.meets(one));
            assertEquals(one.bottomA() >= other.topA() && one.bottomB() >= other.topB(), one.isOver(other));
            Reach both = one.with(other);
            assertEquals(
                    reach(
                            Math.min(one.bottomA(), other.bottomA()),
                            Math.min(one.bottomB(), other.bottomB()),
                            Math.max(one.topA(), other.topA()),
                            Math.max(one.topB(), other.topB())),
                    new Reach(both.bottomA(), both.bottomB(), both.topA(), both.topB(), 0, Lists.immutable.of(0)));
        }
    }

    /** The lowest storey is that of the one that reaches lowest; of two that reach as low the first's. */
    @Test
    void theLowestStoreyIsThatOfTheLower() {
        Reach high = new Reach(4, 4, 9, 9, 1, Lists.immutable.of(1));
        Reach low = new Reach(0, 2, 5, 5, 2, Lists.immutable.of(2, 3));
        assertEquals(2, high.with(low).first());
        assertEquals(2, low.with(high).first());
        assertEquals(
                1, high.with(new Reach(4, 4, 6, 6, 5, Lists.immutable.of(5))).first());
        assertEquals(Lists.immutable.of(1, 2, 3), high.with(low).storeys());
    }

    /** Over a part of the bound heights run even; near a height at which two cross they are that height. */
    @Test
    void aPartRunsEvenAlongTheBound() {
        Reach whole = reach(0, 1000, 4000, 2000);
        Vertex a = new Vertex(0, 0, 0);
        Vertex b = new Vertex(30, 40, 0);
        Reach part = whole.part(a, b, new Vertex(6, 8, 77_777), new Vertex(24, 32, 77_777));
        assertEquals(reach(200, 800, 3600, 2400), part);
        assertEquals(whole, whole.part(a, b, a.at(5), b.at(7)));
        Vertex crossing = new Vertex(15, 20, 3008);
        assertEquals(3008, whole.part(a, b, a, crossing).topB());
        assertEquals(2992, whole.part(a, b, a, crossing.at(2992)).topB());
        assertEquals(3000, whole.part(a, b, a, crossing.at(3009)).topB());
        assertEquals(Lists.immutable.of(new Vertex(0, 1000, 0), new Vertex(4000, 2000, 0)), whole.ends());
    }
}
