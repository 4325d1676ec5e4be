package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point2;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;

/** Walls of another thickness flush indoors: the step outdoors is a junction of both, and no surface of its own. */
class WallStepsTest {

    private static final double ROUND_OFF = 1e-9;

    private static Shell build(Body.Storey... storeys) {
        return ShellBuilder.build(Houses.house(Houses.storeys(
                Body.FootprintLine.INNER_FACE, Lists.immutable.of(storeys), Houses.slab(), Houses.flat())));
    }

    private static Body.Storey ground(ImmutableList<Point2> plan, String... walls) {
        return Houses.storey("ground floor", plan, 3, Lists.immutable.of(walls));
    }

    private static ImmutableList<Edge> edges(Shell shell, JunctionKind kind) {
        return shell.edges().select(edge -> edge.kind() == kind);
    }

    /** The south wall is 0.3 m thick for 4 m and 0.4 m for 6 m; and mirrored. The step is upright. */
    @Test
    void inOneStoreyTheStepIsUpright() {
        Shell thinInTheWest =
                build(ground(Houses.points(0, 0, 4, 0, 10, 0, 10, 8, 0, 8), "thin", "wall", "wall", "wall", "wall"));
        Shell thinInTheEast =
                build(ground(Houses.points(0, 0, 6, 0, 10, 0, 10, 8, 0, 8), "wall", "thin", "wall", "wall", "wall"));
        for (Shell shell : Lists.immutable.of(thinInTheWest, thinInTheEast)) {
            ShellBuilderTest.assertClosed(shell);
            Edge step = edges(shell, JunctionKind.WALL_THICKNESS_CHANGE).getOnly();
            assertEquals("thin", step.first().assembly().orElseThrow().name(), "the same order in a mirrored house");
            assertEquals(
                    "wall", step.second().orElseThrow().assembly().orElseThrow().name());
            // From the slab's underside to the roof's top; indoors from floor to ceiling.
            assertEquals(0.5 + 3 + 0.35, step.externalLength(), ROUND_OFF);
            assertEquals(2.9, step.internalLength(), ROUND_OFF);
            assertEquals(180, step.angle(), ROUND_OFF);
            assertEquals(0, step.innerStep(), ROUND_OFF);
            assertEquals(0, step.firstSetBack() + step.secondSetBack(), ROUND_OFF);
            assertEquals("", step.upperStorey());
            assertEquals(0.1 * 3.85, shell.steps().getOnly().externalArea(), ROUND_OFF);
            assertEquals(10 * 8, shell.floorArea(), ROUND_OFF);
            // Outer faces: all round 0.4 m, but for 0.1 m of the thin wall, from its outer corner to the step.
            double thin = 0.4 + 4;
            assertEquals(10.8 * 8.8 - 0.1 * thin, shell.groundFloorArea(), ROUND_OFF);
        }
    }

    /** The upper storey's walls are thinner all round, and it is 6 m of 10 m long: a terrace beside it. */
    @Test
    void betweenStoreysTheStepRunsAsFarAsBothWallsDo() {
        Shell shell = build(
                ground(Houses.rectangle(0, 0, 10, 8), "wall", "wall", "wall", "wall"),
                Houses.storey("upper floor", Houses.rectangle(0, 0, 6, 8), 2.8, "thin"));
        ShellBuilderTest.assertClosed(shell);
        ImmutableList<Edge> steps = edges(shell, JunctionKind.WALL_CHANGE_AT_FLOOR);
        assertEquals(3, steps.size());
        for (Edge step : steps) {
            assertEquals("ground floor", step.first().storey(), "the lower wall first");
            assertEquals("upper floor", step.second().orElseThrow().storey());
            assertEquals(step.first().side(), step.second().orElseThrow().side());
            assertEquals("upper floor", step.upperStorey());
            assertEquals(0.3, step.floorThickness(), ROUND_OFF);
            assertEquals(180, step.angle(), ROUND_OFF);
            assertEquals(0, step.innerStep(), ROUND_OFF);
            assertEquals(3, step.from().z(), ROUND_OFF);
            assertEquals(3, step.to().z(), ROUND_OFF);
        }
        Edge west = steps.detect(step -> step.first().side() == Side.WEST);
        // From corner to corner of the lower wall.
        assertEquals(8.8, west.externalLength(), ROUND_OFF);
        assertEquals(8, west.internalLength(), ROUND_OFF);
        for (Side side : Lists.immutable.of(Side.SOUTH, Side.NORTH)) {
            Edge step = steps.detect(each -> each.first().side() == side);
            // From the lower wall's corner to the outer face of the upper storey's east wall.
            assertEquals(6.7, step.externalLength(), ROUND_OFF, side.name());
        }
        assertEquals(1, edges(shell, JunctionKind.WALL_TO_TERRACE).size());
    }

    /**
     * Walls of two build-ups, flush outdoors, take over from one another at the upper floor, as the section of their seam has them
     * do; not at the underside of what hangs over the air, or at the deck, on another side of the house.
     */
    @Test
    void wallsOfTwoBuildUpsMeetAtTheFloorWhateverHangsOrLiesBesideThem() {
        for (String upper : new String[] {"thin", "wall"}) {
            boolean alike = upper.equals("wall");
            ImmutableList<String> walls = Lists.immutable.of(upper, upper, upper, upper);
            Shell hanging = ShellBuilder.build(Houses.house(Houses.body(
                    Houses.flat(),
                    ground(Houses.rectangle(0, 0, 10, 8), "wall", "wall", "wall", "wall"),
                    Houses.storey("upper floor", Houses.rectangle(0, -1, 10, 9), 2.8, walls))));
            ShellBuilderTest.assertClosed(hanging);
            Surface west = ShellBuilderTest.surface(hanging, "ground floor wall 3");
            assertEquals(8 * (0.5 + (alike ? 3 - 0.55 : 3)), west.externalArea(), ROUND_OFF, upper);
            assertEquals((8 - 2 * 0.4) * 3, west.internalArea(), ROUND_OFF, upper);
            // A deck of 0.35 m on the underside of a floor of 0.5 m.
            Shell decked = ShellBuilder.build(Houses.house(Houses.body(
                    Houses.flat(),
                    ground(Houses.rectangle(0, 0, 10, 8), "wall", "wall", "wall", "wall"),
                    Houses.storey(
                            "upper floor",
                            Houses.rectangle(0, 3, 10, 5),
                            2.8,
                            Houses.storey("", Houses.rectangle(0, 3, 10, 5), 2.8, walls)
                                    .walls(),
                            Optional.of("deck"),
                            true,
                            Optional.of("soffit"),
                            0.5))));
            ShellBuilderTest.assertClosed(decked);
            Surface beside = ShellBuilderTest.surface(decked, "ground floor wall 3");
            assertEquals(3 * 3.35 + 5 * (alike ? 3.35 : 3.5), beside.externalArea(), ROUND_OFF, upper);
            // Indoors the deck's ceiling, 2.5 m high, reaches to the upper wall's inner face.
            double under = 3 + (alike ? 0.4 : 0.3) - 0.4;
            assertEquals(under * 2.5 + (8 - 0.8 - under) * (alike ? 2.5 : 3), beside.internalArea(), ROUND_OFF, upper);
        }
    }

    /** The same from the other end: what the longer wall has beyond the shorter begins before its step, not after it. */
    @Test
    void aStepIsAsLongIndoorsWhicheverEndItsWallsShare() {
        MutableList<Double> inside = Lists.mutable.empty();
        for (double west : new double[] {0, 4}) {
            Shell shell = build(
                    ground(Houses.rectangle(0, 0, 10, 8), "wall", "wall", "wall", "wall"),
                    Houses.storey("upper floor", Houses.rectangle(west, 0, 6, 8), 2.8, "thin"));
            for (Side side : Lists.immutable.of(Side.SOUTH, Side.NORTH)) {
                Edge step = edges(shell, JunctionKind.WALL_CHANGE_AT_FLOOR)
                        .detect(each -> each.first().side() == side);
                assertEquals(6.7, step.externalLength(), ROUND_OFF);
                inside.add(step.internalLength());
            }
        }
        for (double each : inside) {
            assertEquals(inside.getFirst(), each, ROUND_OFF);
            assertEquals(6, each, ROUND_OFF);
        }
    }

    /** Walls of one build-up a hair out of line meet in a floor; half a hair more than that, in a step of their own. */
    @Test
    void aHairIsNoChangeOfTheWall() {
        for (double off : new double[] {0, 0.0005, -0.0005}) {
            Shell shell = build(
                    ground(Houses.rectangle(0, 0, 10, 8), "wall", "wall", "wall", "wall"),
                    Houses.storey("upper floor", Houses.rectangle(off, off, 10 - 2 * off, 8 - 2 * off), 2.8, "wall"));
            assertEquals(0, edges(shell, JunctionKind.WALL_CHANGE_AT_FLOOR).size(), "" + off);
            assertEquals(
                    2 * (10.8 + 8.8),
                    ShellBuilderTest.length(shell, JunctionKind.INTERMEDIATE_FLOOR),
                    8 * 0.0005 + ROUND_OFF,
                    "" + off);
            assertTrue(shell.closed());
        }
    }

    /** A jog of walls in ground with heights of its own: the ground at either side of it is that of the corner it stands at. */
    @Test
    void aJogStandsInTheGroundOfItsCorner() {
        Body.Storey storey =
                ground(Houses.points(0, 0, 4, 0, 10, 0, 10, 8, 0, 8), "thin", "wall", "wall", "wall", "wall");
        Shell shell = ShellBuilder.build(Houses.house(Houses.storeys(
                Body.FootprintLine.INNER_FACE,
                Lists.immutable.of(storey),
                Houses.slab(),
                Houses.flat(),
                Lists.immutable.empty(),
                Lists.immutable.of(1.0, 0.8, 1.0, 0.0, 0.0))));
        assertTrue(shell.closed());
        // From the slab's underside up, 1.5 m, 1.3 m, 1.5 m, 0.5 m; the north wall stands on level ground.
        double[] below = {4.4 * 1.4, 6.4 * 1.4, 8.8 * 1.0, 0, 8.7 * 1.0};
        for (int i = 0; i < 5; i++) {
            String name = "ground floor wall " + i + ", below ground";
            assertEquals(
                    below[i],
                    shell.surfaces()
                            .select(surface -> surface.name().equals(name))
                            .sumOfDouble(Surface::externalArea),
                    ROUND_OFF,
                    name);
        }
    }
}
