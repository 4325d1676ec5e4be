package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.envelope.Body;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/** Holes of a box of 10 m by 8 m by 3.85 m, whose middle lies at (5, 4, 1.4). */
class HoleTest {

    private static final double ROUND_OFF = 1e-9;

    private static final Shell BOX = ShellBuilder.build(Houses.house(
            Houses.body(Houses.flat(), Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"))));

    private static OpenEdge edge(double... ends) {
        Point3 from = new Point3(ends[0], ends[1], ends[2]);
        Point3 to = new Point3(ends[3], ends[4], ends[5]);
        return new OpenEdge(from, to, Vectors.length(Vectors.minus(to, from)), Lists.immutable.empty(), "");
    }

    /** The edges of a closed ring, x, y, z of each corner. */
    private static ImmutableList<OpenEdge> ring(double... corners) {
        MutableList<OpenEdge> edges = Lists.mutable.empty();
        int n = corners.length;
        for (int i = 0; i < n; i += 3) {
            edges.add(edge(
                    corners[i],
                    corners[i + 1],
                    corners[i + 2],
                    corners[(i + 3) % n],
                    corners[(i + 4) % n],
                    corners[(i + 5) % n]));
        }
        return edges.toImmutable();
    }

    private static ImmutableList<Hole> holes(ImmutableList<OpenEdge> edges) {
        return Hole.of(new Shell(BOX.surfaces(), BOX.edges(), edges, Vectors.ZERO, 1, 1, 1, Lists.immutable.empty()));
    }

    private static void assertHole(double area, Side side, ImmutableList<OpenEdge> edges) {
        Hole hole = holes(edges).getOnly();
        assertEquals(area, hole.area(), ROUND_OFF);
        assertEquals(side, hole.side());
        assertEquals(edges.toSet(), hole.edges().toSet());
    }

    @Test
    void aClosedShellHasNone() {
        assertEquals(Lists.immutable.empty(), Hole.of(BOX));
    }

    /** Whichever way its ring runs, and in whatever order and direction its edges come. */
    @Test
    void theHoleOfAWallLiesOnItsSide() {
        ImmutableList<OpenEdge> west = ring(0, 1, 0, 0, 3, 0, 0, 3, 2, 0, 1, 2);
        assertHole(4, Side.WEST, west);
        assertHole(4, Side.WEST, west.collect(e -> new OpenEdge(e.to(), e.from(), e.length(), e.surfaces(), "")));
        assertHole(
                4,
                Side.WEST,
                Lists.immutable.of(
                        west.get(0),
                        west.get(2),
                        new OpenEdge(west.get(3).to(), west.get(3).from(), 2, Lists.immutable.empty(), ""),
                        west.get(1)));
        assertHole(6, Side.EAST, ring(10, 1, 0, 10, 4, 0, 10, 4, 2, 10, 1, 2));
        assertHole(0.5, Side.SOUTH, ring(1, 0, 0, 2, 0, 0, 1, 0, 1));
        assertHole(0.5, Side.NORTH, ring(1, 8, 0, 2, 8, 0, 1, 8, 1));
    }

    @Test
    void levelHolesLieAboveAndBelow() {
        assertHole(80, Side.ABOVE, ring(0, 0, 3.35, 10, 0, 3.35, 10, 8, 3.35, 0, 8, 3.35));
        assertHole(80, Side.BELOW, ring(0, 0, -0.5, 10, 0, -0.5, 10, 8, -0.5, 0, 8, -0.5));
    }

    /** A roof's slope is above down to 45°, and what is steeper is a wall. */
    @Test
    void aSlopingHoleIsAboveOrOnASide() {
        // South slopes over 4 m, one 3.9 m high and one 4.1 m.
        assertHole(10 * Math.hypot(4, 3.9), Side.ABOVE, ring(0, 0, 3, 10, 0, 3, 10, 4, 6.9, 0, 4, 6.9));
        assertHole(10 * Math.hypot(4, 4.1), Side.SOUTH, ring(0, 0, 3, 10, 0, 3, 10, 4, 7.1, 0, 4, 7.1));
    }

    @Test
    void edgesThatDoNotCloseHaveNoAreaAndLieWhereTheyAre() {
        ImmutableList<OpenEdge> east = ring(10, 1, 0, 10, 4, 0, 10, 4, 2, 10, 1, 2);
        assertHole(0, Side.EAST, east.take(3));
        assertHole(0, Side.EAST, east.take(1));
        assertHole(0, Side.EAST, east.take(2));
        assertHole(0, Side.EAST, Lists.immutable.of(east.get(1), east.get(0), east.get(2)));
        assertHole(0, Side.ABOVE, Lists.immutable.of(edge(5, 3, 3.35, 5, 5, 3.35)));
    }

    @Test
    void holesApartAreSeveral() {
        ImmutableList<OpenEdge> west = ring(0, 1, 0, 0, 3, 0, 0, 3, 2, 0, 1, 2);
        ImmutableList<OpenEdge> east = ring(10, 1, 0, 10, 4, 0, 10, 4, 2, 10, 1, 2);
        ImmutableList<OpenEdge> mixed = Lists.immutable.of(
                east.get(0), west.get(0), west.get(2), east.get(2), east.get(1), west.get(1), east.get(3), west.get(3));
        ImmutableList<Hole> two = holes(mixed);
        assertEquals(Lists.immutable.of(Side.EAST, Side.WEST), two.collect(Hole::side));
        assertEquals(Lists.immutable.of(6.0, 4.0), two.collect(Hole::area));
        assertEquals(Lists.immutable.of(4, 4), two.collect(hole -> hole.edges().size()));
    }

    /** Of a box by storeys: the place of a wall that is not there, and of the two corners beside it. */
    @Test
    void aWallLeftOutIsAHoleAsLargeAsItself() {
        Body.Storey open = Houses.storey(
                "ground floor", Houses.rectangle(0, 0, 10, 8), 3, Lists.immutable.of("wall", "", "wall", "wall"));
        Shell shell = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), open)));
        Hole hole = Hole.of(shell).getOnly();
        assertEquals(8 * 3.85, hole.area(), ROUND_OFF);
        assertEquals(-8 * 3.85, shell.areaVectorSum().x(), ROUND_OFF);
        assertEquals(Side.EAST, hole.side());
        assertEquals(4, hole.edges().size());
        assertEquals(2 * 8 + 2 * 3.85, hole.edges().sumOfDouble(OpenEdge::length), ROUND_OFF);
        assertEquals(
                Lists.immutable
                        .of(
                                "east side, ground floor, where ground floor wall 0 should meet ground floor wall 1, which is left out",
                                "east side, ground floor, where ground floor wall 2 should meet ground floor wall 1, which is left out",
                                "east side, ground floor, where lowest floor should meet ground floor wall 1, which is left out",
                                "east side, ground floor, where roof should meet ground floor wall 1, which is left out")
                        .toSet(),
                hole.edges().collect(OpenEdge::place).toSet());
        for (OpenEdge edge : hole.edges()) {
            assertEquals(edge.length(), Vectors.length(Vectors.minus(edge.to(), edge.from())), ROUND_OFF);
            assertEquals(1, edge.surfaces().size());
        }
    }
}
