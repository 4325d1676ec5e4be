package coldseam.envelope.shell.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.shell.lattice.Vertex;
import java.util.Random;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/** Lines cut at one another: on the lattice of a micrometre, with a reach of 0.1 mm. */
class PlanNoderTest {

    private static final long M = 1_000_000;

    private static Plan.Line line(long x, long y, long otherX, long otherY, int number) {
        return new Plan.Line(
                new Vertex(x, y, 0), new Vertex(otherX, otherY, 0), new Plan.Tag(Plan.Kind.SIDE, 0, number));
    }

    private static ImmutableList<Vertex> way(ImmutableList<Plan.Line> pieces, int number) {
        ImmutableList<Plan.Line> own = pieces.select(each -> each.tag().number() == number);
        return own.collect(Plan.Line::from).newWith(own.getLast().to());
    }

    @Test
    void twoThatCrossAreCutThere() {
        ImmutableList<Plan.Line> pieces =
                PlanNoder.pieces(Lists.immutable.of(line(0, 0, 4 * M, 2 * M, 0), line(4 * M, 0, 0, 2 * M, 1)));
        Vertex middle = new Vertex(2 * M, M, 0);
        assertEquals(4, pieces.size());
        assertEquals(Lists.immutable.of(new Vertex(0, 0, 0), middle, new Vertex(4 * M, 2 * M, 0)), way(pieces, 0));
        assertEquals(Lists.immutable.of(new Vertex(4 * M, 0, 0), middle, new Vertex(0, 2 * M, 0)), way(pieces, 1));
    }

    /** One whose end lies within the reach of another's middle cuts it there, further away it does not. */
    @Test
    void anEndBesideALineIsOnIt() {
        for (long off : new long[] {0, 99, -99, 100, -100}) {
            Vertex end = new Vertex(M, off, 0);
            ImmutableList<Plan.Line> pieces =
                    PlanNoder.pieces(Lists.immutable.of(line(0, 0, 3 * M, 0, 0), line(M, off, M, 2 * M, 1)));
            assertEquals(3, pieces.size(), "" + off);
            assertEquals(Lists.immutable.of(new Vertex(0, 0, 0), end, new Vertex(3 * M, 0, 0)), way(pieces, 0));
        }
        assertEquals(
                2,
                PlanNoder.pieces(Lists.immutable.of(line(0, 0, 3 * M, 0, 0), line(M, 101, M, 2 * M, 1)))
                        .size());
    }

    /** Ends within the reach of one another are one node, and lines that were meant to be one the same pieces. */
    @Test
    void linesThatWereMeantToBeOneAre() {
        ImmutableList<Plan.Line> pieces =
                PlanNoder.pieces(Lists.immutable.of(line(0, 0, 5 * M, 0, 0), line(5 * M + 60, 70, 40, -50, 1)));
        assertEquals(way(pieces, 0), way(pieces, 1).toReversed());
        // One shorter than the reach is nothing.
        assertEquals(
                1,
                PlanNoder.pieces(Lists.immutable.of(line(0, 0, 5 * M, 0, 0), line(0, 0, 70, 70, 1)))
                        .size());
    }

    /**
     * Any lines at all: each still runs from its start to its end, no further off than the reach; no two of the pieces cross, and
     * cut once more they stay as they are.
     */
    @Test
    void noTwoPiecesCross() {
        Random random = new Random(11);
        for (int round = 0; round < 25; round++) {
            MutableList<Plan.Line> lines = Lists.mutable.empty();
            for (int i = 0; i < 9; i++) {
                // Coarse places, so that ends meet lines and one another, some of them a hair off.
                long[] at = new long[4];
                for (int j = 0; j < 4; j++) {
                    at[j] = random.nextInt(6) * M + (random.nextInt(3) == 0 ? random.nextInt(160) - 80 : 0);
                }
                if (Math.hypot(at[0] - at[2], at[1] - at[3]) > M / 2.0) {
                    lines.add(line(at[0], at[1], at[2], at[3], i));
                }
            }
            ImmutableList<Plan.Line> pieces = PlanNoder.pieces(lines.toImmutable());
            assertEquals(pieces, PlanNoder.pieces(pieces));
            for (Plan.Line line : lines) {
                ImmutableList<Vertex> way = way(pieces, line.tag().number());
                assertTrue(way.getFirst().minus(line.from()).length() <= 300, "begins where it began");
                assertTrue(way.getLast().minus(line.to()).length() <= 300, "ends where it ended");
                Vertex along = line.to().minus(line.from());
                for (Vertex node : way) {
                    Vertex off = node.minus(line.from());
                    assertTrue(Math.abs(along.cross(off).z()) <= 300 * along.length(), "runs where it ran");
                }
            }
            for (int i = 0; i < pieces.size(); i++) {
                for (int j = i + 1; j < pieces.size(); j++) {
                    assertTrue(!cross(pieces.get(i), pieces.get(j)), pieces.get(i) + " crosses " + pieces.get(j));
                }
            }
        }
    }

    private static boolean cross(Plan.Line one, Plan.Line other) {
        return apart(one, other.from(), other.to()) && apart(other, one.from(), one.to());
    }

    private static boolean apart(Plan.Line line, Vertex a, Vertex b) {
        Vertex along = line.to().minus(line.from());
        long left = Long.signum(along.cross(a.minus(line.from())).z());
        return left * Long.signum(along.cross(b.minus(line.from())).z()) < 0;
    }
}
