package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.Selector;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.junit.jupiter.api.Test;

/** Bodies whose shells can be worked out by hand. Houses' assemblies: 0.1 m structure inside, insulation outside. */
class ShellBuilderTest {

    /** m, m² or m³: round-off of sums of some tens of products of lattice coordinates. */
    private static final double ROUND_OFF = 1e-9;

    private static final Body.Storey BOX = Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall");

    static void assertClosed(Shell shell) {
        assertEquals(Lists.immutable.empty(), shell.openEdges());
        assertEquals(new Point3(0, 0, 0), shell.areaVectorSum());
        for (Side side : Side.values()) {
            assertTrue(shell.surfaces().anySatisfy(s -> s.side() == side), "no surface on side " + side);
        }
        assertEquals(
                shell.edges().size(),
                shell.edges().collect(Edge::name).distinct().size(),
                "edges' names are unique");
        assertEquals(
                shell.surfaces().size(),
                shell.surfaces().collect(Surface::name).distinct().size());
    }

    static double length(Shell shell, JunctionKind kind) {
        return shell.edges().select(edge -> edge.kind() == kind).sumOfDouble(Edge::externalLength);
    }

    static int count(Shell shell, JunctionKind kind) {
        return shell.edges().count(edge -> edge.kind() == kind);
    }

    static Surface surface(Shell shell, String name) {
        return shell.surfaces().detectOptional(s -> s.name().equals(name)).orElseThrow();
    }

    private static Shell build(Body body) {
        return ShellBuilder.build(Houses.house(body));
    }

    @Test
    void boxIsMeasuredOnItsOuterAndInnerPlanes() {
        Shell shell = build(Houses.body(Houses.flat(), BOX));
        assertClosed(shell);
        // Outside from the slab's underside, −0.5, to the roof's top, 3 + 0.35; inside from 0 to 3 − 0.1.
        assertEquals(80 * 3.85, shell.externalVolume(), ROUND_OFF);
        assertEquals(9.2 * 7.2 * 2.9, shell.internalVolume(), ROUND_OFF);
        assertEquals(9.2 * 7.2, shell.floorArea(), ROUND_OFF);
        assertEquals(80, shell.groundFloorArea(), ROUND_OFF);
        assertEquals(36, shell.exposedPerimeter(), ROUND_OFF);
        assertEquals(38.5, surface(shell, "ground floor wall 0").externalArea(), ROUND_OFF);
        assertEquals(9.2 * 2.9, surface(shell, "ground floor wall 0").internalArea(), ROUND_OFF);
        assertEquals(6, shell.surfaces().size());
        assertEquals(12, shell.edges().size());
        assertEquals(36, length(shell, JunctionKind.SLAB_EDGE), ROUND_OFF);
        assertEquals(36, length(shell, JunctionKind.FLAT_ROOF_EDGE), ROUND_OFF);
        assertEquals(4 * 3.85, length(shell, JunctionKind.OUTSIDE_CORNER), ROUND_OFF);
        Edge slab = shell.edges().detect(edge -> edge.kind() == JunctionKind.SLAB_EDGE);
        assertEquals(Body.Use.FLOOR, slab.first().use());
        assertEquals(90, slab.angle(), ROUND_OFF);
        assertEquals(0.4, slab.firstSetBack(), ROUND_OFF);
        assertEquals(0.5, slab.secondSetBack(), ROUND_OFF);
        assertEquals(slab.externalLength() - 0.8, slab.internalLength(), ROUND_OFF);
    }

    @Test
    void everyFootprintLineLeadsToTheOutsideOfTheWall() {
        double[] grown = {0.4, 0.3, 0};
        for (Body.FootprintLine line : Body.FootprintLine.values()) {
            Body body = Houses.storeys(line, Lists.immutable.of(BOX), Houses.slab(), Houses.flat());
            double more = 2 * grown[line.ordinal()];
            Shell shell = build(body);
            assertClosed(shell);
            assertEquals((10 + more) * (8 + more), shell.groundFloorArea(), ROUND_OFF, line.name());
            assertEquals((9.2 + more) * (7.2 + more), shell.floorArea(), ROUND_OFF, line.name());
        }
    }

    @Test
    void insideCornerIsLongerIndoors() {
        var outline = Houses.points(0, 0, 10, 0, 10, 4, 6, 4, 6, 9, 0, 9);
        Shell shell = build(Houses.body(Houses.flat(), Houses.storey("ground floor", outline, 3, "wall")));
        assertClosed(shell);
        assertEquals(5, count(shell, JunctionKind.OUTSIDE_CORNER));
        Edge corner = shell.edges().detect(edge -> edge.kind() == JunctionKind.INSIDE_CORNER);
        assertEquals(270, corner.angle(), ROUND_OFF);
        assertEquals(-0.4, corner.firstSetBack(), ROUND_OFF);
        assertEquals(-0.4, corner.secondSetBack(), ROUND_OFF);
        assertEquals(70 * 3.85, shell.externalVolume(), ROUND_OFF);
        // Side 2 runs from an outside to an inside corner: as long inside as outside.
        assertEquals(4 * 2.9, surface(shell, "ground floor wall 2").internalArea(), ROUND_OFF);
    }

    @Test
    void setBackStoreyLeavesATerraceAndAProjectingOneAnOverhang() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 3, 10, 7), 2.8, "wall");
        Shell shell = build(Houses.body(Houses.flat(), BOX, upper));
        assertClosed(shell);
        Surface terrace = surface(shell, "terrace over ground floor");
        Surface overhang = surface(shell, "overhang under upper floor");
        assertEquals(30, terrace.externalArea(), ROUND_OFF);
        assertEquals(9.2 * 3, terrace.internalArea(), ROUND_OFF);
        assertEquals(20, overhang.externalArea(), ROUND_OFF);
        // Ceiling 3 − 0.3, deck 0.35: outer face at 3.05. Overhang 0.55 below the upper floor.
        assertEquals(3.05, terrace.outline().getFirst().z(), ROUND_OFF);
        assertEquals(2.7, terrace.innerOutline().getFirst().z(), ROUND_OFF);
        assertEquals(2.45, overhang.outline().getFirst().z(), ROUND_OFF);
        assertEquals(3, overhang.innerOutline().getFirst().z(), ROUND_OFF);
        assertEquals(10, length(shell, JunctionKind.WALL_TO_TERRACE), ROUND_OFF);
        assertEquals(16, length(shell, JunctionKind.TERRACE_EDGE), ROUND_OFF);
        assertEquals(14, length(shell, JunctionKind.OVERHANG_EDGE), ROUND_OFF);
        assertEquals(10, length(shell, JunctionKind.WALL_UNDER_OVERHANG), ROUND_OFF);
        assertEquals(10, length(shell, JunctionKind.INTERMEDIATE_FLOOR), ROUND_OFF);
        Edge floor = shell.edges().detect(edge -> edge.kind() == JunctionKind.INTERMEDIATE_FLOOR);
        assertEquals("ground floor", floor.first().storey());
        assertEquals("upper floor", floor.upperStorey());
        assertEquals(0.3, floor.floorThickness(), ROUND_OFF);
        assertEquals(180, floor.angle(), ROUND_OFF);
        // 3 m open to 3.05, 5 m to the roof, 2 m from 2.45 to the roof; the roof's top at 3 + 2.8 + 0.35.
        assertEquals(10 * (3 * 3.55 + 5 * 6.65 + 2 * (6.15 - 2.45)), shell.externalVolume(), 1e-8);
        Edge deck = shell.edges().detect(edge -> edge.kind() == JunctionKind.WALL_TO_TERRACE);
        assertEquals(270, deck.angle(), ROUND_OFF);
        assertEquals(-0.4, deck.firstSetBack(), ROUND_OFF);
        assertEquals(-0.35, deck.secondSetBack(), ROUND_OFF);
        assertEquals("south side, ground floor, where the terrace meets the wall of the upper floor", deck.place());
    }

    /** Where an upper floor projects and nothing lies open, the walls of both storeys meet as high as its overhang's underside. */
    @Test
    void wallsMeetAtTheUndersideOfAnOverhang() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 0, 11, 8), 2.8, "wall");
        Shell shell = build(Houses.body(Houses.flat(), BOX, upper));
        assertEquals(
                10 * (0.5 + 3 - 0.55), surface(shell, "ground floor wall 0").externalArea(), 1e-9);
        assertEquals(8 * (0.5 + 3 - 0.55), surface(shell, "ground floor wall 3").externalArea(), 1e-9);
        assertEquals(
                11 * (0.55 + 2.8 + 0.35), surface(shell, "upper floor wall 0").externalArea(), 1e-9);
    }

    @Test
    void lowerRoofsAreNoTerraces() {
        Body.Storey low = Houses.storey(
                BOX.name(), BOX.footprint(), 3, BOX.walls(), java.util.Optional.of("roof"), false, BOX.overhang(), 0);
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 3, 10, 5), 2.8, "wall");
        Body.Roof roof = new Body.Roof(
                Body.Roof.Form.FLAT,
                false,
                java.util.Optional.of("roof"),
                java.util.Optional.empty(),
                0,
                0,
                0.4,
                OptionalDouble.empty(),
                Maps.immutable.empty(),
                java.util.Optional.empty(),
                Lists.immutable.empty());
        Shell shell = build(Houses.body(roof, low, upper));
        assertClosed(shell);
        assertEquals(
                "roof",
                surface(shell, "lower roof over ground floor")
                        .assembly()
                        .orElseThrow()
                        .name());
        assertEquals(10, length(shell, JunctionKind.ROOF_STEP), ROUND_OFF);
        assertEquals(30 + 16, length(shell, JunctionKind.PARAPET), ROUND_OFF);
    }

    @Test
    void gableRoofMeetsItsWallsAtTheEaves() {
        Shell shell = build(Houses.body(Houses.roof(Body.Roof.Form.GABLE, 45, 0, false), BOX));
        assertClosed(shell);
        // Pitch 45°: 0.35 m of insulation stand √2 as high; the outer wall plane lies 0.4 m outside the inner face.
        double eaves = Math.rint((3 + 0.35 * Math.sqrt(2) - 0.4) * 1e4) / 1e4;
        double ridge = eaves + 4;
        assertEquals(20, length(shell, JunctionKind.EAVES), ROUND_OFF);
        assertEquals(10, length(shell, JunctionKind.RIDGE), ROUND_OFF);
        assertEquals(4 * 4 * Math.sqrt(2), length(shell, JunctionKind.VERGE), ROUND_OFF);
        assertEquals(80 * (0.5 + eaves) + 10 * 8 * 4 / 2.0, shell.externalVolume(), 1e-8);
        Surface gable = surface(shell, "gable over ground floor wall 1");
        assertEquals(16, gable.externalArea(), ROUND_OFF);
        assertEquals(ridge, gable.outline().collectDouble(Point3::z).max(), ROUND_OFF);
        // The inner roof plane meets the inner wall plane at 3 − 0.1 √2; snapping moves eaves by up to 0.05 mm.
        Surface roof = surface(shell, "roof, south slope");
        assertEquals(
                3 - 0.1 * Math.sqrt(2),
                roof.innerOutline().collectDouble(Point3::z).min(),
                1e-4);
        assertEquals(
                135, shell.edges().detect(e -> e.kind() == JunctionKind.EAVES).angle(), 1e-9);
        assertEquals(
                90, shell.edges().detect(e -> e.kind() == JunctionKind.RIDGE).angle(), 1e-9);
        assertEquals(Side.ABOVE, roof.side());
        assertEquals(4, count(shell, JunctionKind.OUTSIDE_CORNER), "no corner between a wall and its gable");
        assertEquals(0, count(shell, JunctionKind.WALL_THICKNESS_CHANGE));
    }

    @Test
    void setBacksTellOuterFromInnerAreasUnderPitchedRoofs() {
        for (Body.Roof.Form form : Body.Roof.Form.values()) {
            ShellPropertiesTest.assertSetBacks(build(Houses.body(Houses.roof(form, 37, 1, false), BOX)));
        }
    }

    @Test
    void hipRoofHasFourSlopes() {
        Shell shell = build(Houses.body(Houses.roof(Body.Roof.Form.HIP, 45, 0, false), BOX));
        assertClosed(shell);
        assertEquals(36, length(shell, JunctionKind.EAVES), ROUND_OFF);
        assertEquals(2, length(shell, JunctionKind.RIDGE), ROUND_OFF);
        assertEquals(4 * 4 * Math.sqrt(3), length(shell, JunctionKind.HIP), ROUND_OFF);
        double eaves = Math.rint((3 + 0.35 * Math.sqrt(2) - 0.4) * 1e4) / 1e4;
        // Prism over the ridge's 2 m and two half pyramids of base 8 × 4.
        assertEquals(80 * (0.5 + eaves) + 2 * 8 * 4 / 2.0 + 8 * 8 * 4 / 3.0, shell.externalVolume(), 1e-8);
        Shell square = build(Houses.body(
                Houses.roof(Body.Roof.Form.HIP, 30, 0, false),
                Houses.storey("ground floor", Houses.rectangle(0, 0, 8, 8), 3, "wall")));
        assertClosed(square);
        assertEquals(0, count(square, JunctionKind.RIDGE));
        Shell turned = build(Houses.body(
                Houses.roof(Body.Roof.Form.HIP, 45, 0, false),
                Houses.storey("ground floor", Houses.rectangle(0, 0, 8, 10), 3, "wall")));
        assertEquals(shell.externalVolume(), turned.externalVolume(), 1e-8);
        assertEquals(shell.internalVolume(), turned.internalVolume(), 1e-8);
    }

    @Test
    void monoPitchTurnsSideWallsIntoTrapezoids() {
        Shell shell = build(Houses.body(Houses.roof(Body.Roof.Form.MONO_PITCH, 45, 0, false), BOX));
        assertClosed(shell);
        double eaves = Math.rint((3 + 0.35 * Math.sqrt(2) - 0.4) * 1e4) / 1e4;
        assertEquals(
                8 * (0.5 + eaves + 4), surface(shell, "ground floor wall 1").externalArea(), ROUND_OFF);
        assertEquals(
                10 * (0.5 + eaves + 8), surface(shell, "ground floor wall 2").externalArea(), ROUND_OFF);
        assertEquals(10, length(shell, JunctionKind.EAVES), ROUND_OFF);
        assertEquals(10, length(shell, JunctionKind.HIGH_EAVES), ROUND_OFF);
        assertEquals(16 * Math.sqrt(2), length(shell, JunctionKind.VERGE), ROUND_OFF);
        assertEquals(
                Lists.immutable.of(45.0, 135.0),
                shell.edges()
                        .select(e -> e.kind() == JunctionKind.EAVES || e.kind() == JunctionKind.HIGH_EAVES)
                        .collect(e -> Math.rint(e.angle()))
                        .toSortedList());
        Shell east = build(Houses.body(Houses.roof(Body.Roof.Form.MONO_PITCH, 45, 1, false), BOX));
        assertClosed(east);
        assertEquals(8, length(east, JunctionKind.EAVES), ROUND_OFF);
        assertEquals(8, length(east, JunctionKind.HIGH_EAVES), ROUND_OFF);
    }

    @Test
    void coldLoftEndsTheShellAtTheCeiling() {
        Shell shell = build(Houses.body(Houses.roof(Body.Roof.Form.GABLE, 40, 1, true), BOX));
        assertClosed(shell);
        Surface ceiling = surface(shell, "top ceiling");
        assertEquals(Exposure.Kind.UNHEATED, ceiling.exposure().kind());
        assertEquals(0.9, ceiling.exposure().factor());
        assertEquals(80, ceiling.externalArea(), ROUND_OFF);
        assertEquals(16, length(shell, JunctionKind.EAVES_COLD_LOFT), ROUND_OFF);
        assertEquals(20, length(shell, JunctionKind.GABLE_COLD_LOFT), ROUND_OFF);
    }

    @Test
    void partyWallsCloseTheShellAndShortenThePerimeter() {
        Exposure party = new Exposure(Exposure.Kind.PARTY, "next door", 0);
        Shell shell = build(Houses.body(Houses.flat(), Houses.facing(BOX, 1, party)));
        assertClosed(shell);
        assertEquals(28, shell.exposedPerimeter(), ROUND_OFF);
        assertEquals(4, count(shell, JunctionKind.PARTY_WALL));
        assertTrue(shell.edges()
                .select(e -> e.kind() == JunctionKind.PARTY_WALL)
                .allSatisfy(e -> e.second().orElseThrow().exposure().equals(party)));
    }

    @Test
    void theSameHouseGivesTheSameShellInOneRunToo() {
        Shell first = build(Houses.body(Houses.flat(), BOX));
        for (int run = 0; run < 20; run++) {
            assertEquals(first, build(Houses.body(Houses.flat(), BOX)));
        }
    }

    @Test
    void wallsBesideUnheatedSpacesMeetOthersAtTheNeighbour() {
        Exposure garage = new Exposure(Exposure.Kind.UNHEATED, "garage", 0.8);
        Shell shell = build(Houses.body(Houses.flat(), Houses.facing(BOX, 0, garage)));
        assertEquals(4, count(shell, JunctionKind.OUTSIDE_CORNER), "a corner stays a corner beside a garage");
        assertEquals(
                2,
                shell.edges()
                        .select(e -> e.kind() == JunctionKind.OUTSIDE_CORNER)
                        .count(e -> e.first().exposure().equals(garage)
                                || e.second().orElseThrow().exposure().equals(garage)));
        assertEquals(36, shell.exposedPerimeter(), ROUND_OFF, "a wall to an unheated space outside the fabric counts");
    }

    @Test
    void wallLeftOutLeavesExactlyItsEdgesOpen() {
        Shell shell = build(Houses.body(
                Houses.flat(),
                Houses.storey(
                        "ground floor",
                        Houses.rectangle(0, 0, 10, 8),
                        3,
                        Lists.immutable.of("wall", "wall", "", "wall"))));
        assertFalse(shell.closed());
        assertEquals(5, shell.surfaces().size());
        assertEquals(4, shell.openEdges().size());
        assertEquals(
                Lists.immutable.of(
                        Lists.immutable.of("ground floor wall 1"),
                        Lists.immutable.of("ground floor wall 3"),
                        Lists.immutable.of("lowest floor"),
                        Lists.immutable.of("roof")),
                shell.openEdges().collect(OpenEdge::surfaces).toSortedListBy(Object::toString));
        assertEquals(2 * 10 + 2 * 3.85, shell.openEdges().sumOfDouble(OpenEdge::length), ROUND_OFF);
        assertEquals(-38.5, shell.areaVectorSum().y(), ROUND_OFF);
        assertTrue(shell.openEdges()
                .anySatisfy(e -> e.place()
                        .equals("north side, ground floor, where lowest floor should meet ground floor wall 2, which is"
                                + " left out")));
        assertEquals(8, shell.edges().size(), "the other junctions stay");
    }

    @Test
    void cellarWallsStandInTheGroundBelowGroundLevel() {
        Body.Storey cellar = Houses.storey("cellar", Houses.rectangle(0, 0, 10, 8), 2.5, "wall");
        Body body = Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(cellar, BOX),
                Houses.base(Body.Base.Kind.HEATED_CELLAR, 2.0, Exposure.ground()),
                Houses.flat());
        Shell shell = build(body);
        assertClosed(shell);
        Surface below = surface(shell, "cellar wall 0, below ground");
        assertEquals(Exposure.Kind.GROUND, below.exposure().kind());
        assertEquals(10 * 2.5, below.externalArea(), ROUND_OFF);
        assertEquals(10 * 0.5, surface(shell, "cellar wall 0").externalArea(), ROUND_OFF);
        assertEquals(36, length(shell, JunctionKind.CELLAR_SLAB_EDGE), ROUND_OFF);
        assertEquals(36, length(shell, JunctionKind.FOUNDATION_WALL_TOP), ROUND_OFF);
        assertEquals(0, count(shell, JunctionKind.INTERMEDIATE_FLOOR));
        assertEquals(36, shell.exposedPerimeter(), ROUND_OFF);
    }

    @Test
    void basesGiveTheirEdgesTheirKinds() {
        Exposure crawl = new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1);
        Exposure cellar = new Exposure(Exposure.Kind.UNHEATED, "cellar", 0.6);
        Body suspended = Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(BOX),
                Houses.base(Body.Base.Kind.SUSPENDED, 0, crawl),
                Houses.flat());
        Body over = Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                Lists.immutable.of(BOX),
                Houses.base(Body.Base.Kind.OVER_UNHEATED, 0, cellar),
                Houses.flat());
        assertEquals(36, length(build(suspended), JunctionKind.CRAWL_SPACE_EDGE), ROUND_OFF);
        assertEquals(36, build(suspended).exposedPerimeter(), ROUND_OFF);
        assertEquals(36, length(build(over), JunctionKind.UNHEATED_BELOW_EDGE), ROUND_OFF);
        assertEquals(0, build(over).groundFloorArea(), ROUND_OFF);
    }

    @Test
    void thinnerUpperWallsLeaveAStepAndNoTerrace() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 0, 10, 8), 2.8, "thin");
        Body body = Houses.storeys(
                Body.FootprintLine.INNER_FACE, Lists.immutable.of(BOX, upper), Houses.slab(), Houses.flat());
        Shell shell = build(body);
        assertClosed(shell);
        assertEquals(0, shell.surfaces().count(s -> s.use() == Body.Use.TERRACE));
        assertEquals(4, count(shell, JunctionKind.WALL_CHANGE_AT_FLOOR));
        assertEquals(2 * (10.8 + 8.8), length(shell, JunctionKind.WALL_CHANGE_AT_FLOOR), ROUND_OFF);
        assertEquals(0, count(shell, JunctionKind.INTERMEDIATE_FLOOR));
        Edge change = shell.edges().detect(e -> e.kind() == JunctionKind.WALL_CHANGE_AT_FLOOR);
        assertEquals("wall", change.first().assembly().orElseThrow().name());
        assertEquals(
                "thin", change.second().orElseThrow().assembly().orElseThrow().name());
        assertEquals("upper floor", change.upperStorey());
        assertEquals(0, change.innerStep(), ROUND_OFF);
        // The step itself: outer area only.
        assertEquals(10.8 * 8.8 - 10.6 * 8.6, shell.steps().sumOfDouble(Surface::externalArea), ROUND_OFF);
        assertEquals(0, shell.steps().sumOfDouble(Surface::internalArea), ROUND_OFF);
        assertEquals(10 * 8 * (3 + 2.8 - 0.1), shell.internalVolume(), 1e-8);
    }

    @Test
    void thickerUpperWallHangsOverAsAStep() {
        Body.Storey lower = Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "thin");
        Body.Storey upper = Houses.storey(
                "upper floor", Houses.rectangle(0, 0, 10, 8), 2.8, Lists.immutable.of("wall", "thin", "thin", "thin"));
        Body body = Houses.storeys(
                Body.FootprintLine.STRUCTURE, Lists.immutable.of(lower, upper), Houses.slab(), Houses.flat());
        Shell shell = build(body);
        assertClosed(shell);
        assertEquals(1, count(shell, JunctionKind.WALL_CHANGE_AT_FLOOR));
        assertEquals(3, count(shell, JunctionKind.INTERMEDIATE_FLOOR));
        assertEquals(0, count(shell, JunctionKind.OVERHANG_EDGE));
    }

    /** Walls whose outer faces are one but not their build-ups meet in no plain intermediate floor: it would be drawn with one of them. */
    @Test
    void anotherWallAboveIsAChangeHoweverFlush() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 0, 10, 8), 2.8, "thin");
        Shell shell = build(Houses.body(Houses.flat(), BOX, upper));
        assertClosed(shell);
        assertTrue(shell.steps().isEmpty());
        assertEquals(36, length(shell, JunctionKind.WALL_CHANGE_AT_FLOOR), ROUND_OFF);
        assertEquals(0, count(shell, JunctionKind.INTERMEDIATE_FLOOR));
        Edge change = shell.edges().detect(e -> e.kind() == JunctionKind.WALL_CHANGE_AT_FLOOR);
        assertEquals("ground floor", change.first().storey());
        // Walls of 0.4 m and 0.3 m whose outer faces are one.
        assertEquals(0.1, change.innerStep(), ROUND_OFF);
        assertEquals("upper floor", change.upperStorey());
        assertEquals(0.3, change.floorThickness(), ROUND_OFF);
    }

    @Test
    void neighboursInOneLineOfDifferentThicknessAreJoinedByAStep() {
        var outline = Houses.points(0, 0, 5, 0, 10, 0, 10, 8, 0, 8);
        Body.Storey storey =
                Houses.storey("ground floor", outline, 3, Lists.immutable.of("wall", "thin", "wall", "wall", "wall"));
        Body body =
                Houses.storeys(Body.FootprintLine.INNER_FACE, Lists.immutable.of(storey), Houses.slab(), Houses.flat());
        Shell shell = build(body);
        assertClosed(shell);
        Edge change = shell.edges().detect(e -> e.kind() == JunctionKind.WALL_THICKNESS_CHANGE);
        assertEquals(3.85, change.externalLength(), ROUND_OFF);
        assertEquals(1, count(shell, JunctionKind.WALL_THICKNESS_CHANGE));
        assertEquals(4, count(shell, JunctionKind.OUTSIDE_CORNER));
        assertEquals(0, count(shell, JunctionKind.INSIDE_CORNER));
        assertEquals(5 * 2.9, surface(shell, "ground floor wall 0").internalArea(), ROUND_OFF);
        assertEquals(5 * 2.9, surface(shell, "ground floor wall 1").internalArea(), ROUND_OFF);
    }

    @Test
    void shellMayTouchItselfAlongALine() {
        // Below, the west half of the north side is thicker; above, the east half: the steps meet in a line of 0.1 m.
        var outline = Houses.points(0, 0, 4, 0, 4, 4, 2, 4, 0, 4);
        Body.Storey lower =
                Houses.storey("ground floor", outline, 3, Lists.immutable.of("wall", "wall", "thin", "wall", "wall"));
        Body.Storey upper =
                Houses.storey("upper floor", outline, 3, Lists.immutable.of("wall", "wall", "wall", "thin", "wall"));
        Body body = Houses.storeys(
                Body.FootprintLine.STRUCTURE, Lists.immutable.of(lower, upper), Houses.slab(), Houses.flat());
        Shell shell = build(body);
        assertClosed(shell);
        // Upright where neighbours differ, level where one wall stands on another.
        assertEquals(2, count(shell, JunctionKind.WALL_THICKNESS_CHANGE));
        assertEquals(2, count(shell, JunctionKind.WALL_CHANGE_AT_FLOOR));
    }

    @Test
    void hairsBreadthsOutOfLineChangeNothing() {
        // 0.04 mm vanish in the lattice; 3 mm leave a step, but no change of the wall.
        for (double off : new double[] {0.00004, 0.003, -0.003}) {
            Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(off, 0, 10, 8 + off), 2.8, "wall");
            Shell shell = build(Houses.body(Houses.flat(), BOX, upper));
            assertClosed(shell);
            assertEquals(4, count(shell, JunctionKind.INTERMEDIATE_FLOOR), "off by " + off);
            assertEquals(0, count(shell, JunctionKind.WALL_THICKNESS_CHANGE));
            assertEquals(Math.abs(off) < 0.0001, shell.steps().isEmpty());
            assertTrue(shell.edges()
                    .select(e -> e.kind() == JunctionKind.INTERMEDIATE_FLOOR)
                    .allSatisfy(e -> e.upperStorey().equals("upper floor")));
        }
        // 20 mm are no hair, and walls of one build-up do not explain them.
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0.02, 0, 10, 8), 2.8, "wall");
        Shell shell = build(Houses.body(Houses.flat(), BOX, upper));
        assertClosed(shell);
        assertEquals(0.02 * 8, surface(shell, "terrace over ground floor").externalArea(), ROUND_OFF);
        assertEquals(0.02 * 8, surface(shell, "overhang under upper floor").externalArea(), ROUND_OFF);
        assertEquals(2, count(shell, JunctionKind.INTERMEDIATE_FLOOR));
    }

    @Test
    void cellarsMeetThinnerWallsInTheFoundationsTop() {
        Body.Storey cellar = Houses.storey("cellar", Houses.rectangle(0, 0, 10, 8), 2.5, "thin");
        Body body = Houses.storeys(
                Body.FootprintLine.STRUCTURE,
                Lists.immutable.of(cellar, BOX),
                Houses.base(Body.Base.Kind.HEATED_CELLAR, 2.0, Exposure.ground()),
                Houses.flat());
        Shell shell = build(body);
        assertClosed(shell);
        assertEquals(4, count(shell, JunctionKind.FOUNDATION_WALL_TOP));
        assertEquals(0, count(shell, JunctionKind.WALL_THICKNESS_CHANGE));
        Edge top = shell.edges().detect(e -> e.kind() == JunctionKind.FOUNDATION_WALL_TOP);
        assertEquals("cellar", top.first().storey());
        assertEquals("ground floor", top.upperStorey());
    }

    @Test
    void collinearSidesOfOneAssemblyMeetInAMereCut() {
        var outline = Houses.points(0, 0, 5, 0, 10, 0, 10, 8, 0, 8);
        Shell shell = build(Houses.body(Houses.flat(), Houses.storey("ground floor", outline, 3, "wall")));
        assertClosed(shell);
        assertEquals(7, shell.surfaces().size());
        assertEquals(0, count(shell, JunctionKind.WALL_THICKNESS_CHANGE));
        assertEquals(5, count(shell, JunctionKind.SLAB_EDGE));
        // The cut splits the inner faces where it splits the outer ones.
        assertEquals((5 - 0.4) * 2.9, surface(shell, "ground floor wall 0").internalArea(), ROUND_OFF);
    }

    @Test
    void towerStandsInARingOfTerrace() {
        Body.Storey tower = Houses.storey("tower", Houses.rectangle(3, 3, 3, 2), 2.8, "wall");
        Shell shell = build(Houses.body(Houses.flat(), BOX, tower));
        assertClosed(shell);
        assertEquals(
                80 - 6,
                shell.surfaces().select(s -> s.use() == Body.Use.TERRACE).sumOfDouble(Surface::externalArea),
                ROUND_OFF);
        assertEquals(10, length(shell, JunctionKind.WALL_TO_TERRACE), ROUND_OFF);
        assertEquals(36, length(shell, JunctionKind.TERRACE_EDGE), ROUND_OFF);
        assertEquals(0, count(shell, JunctionKind.WALL_THICKNESS_CHANGE));
    }

    @Test
    void terraceEndsWhereAStepRunsOn() {
        // The upper walls are thinner: a 0.1 m step on three sides, a terrace on the fourth.
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 2, 10, 6), 2.8, "thin");
        Body body = Houses.storeys(
                Body.FootprintLine.INNER_FACE, Lists.immutable.of(BOX, upper), Houses.slab(), Houses.flat());
        Shell shell = build(body);
        assertClosed(shell);
        assertEquals(10.8 * 2.1, surface(shell, "terrace over ground floor").externalArea(), ROUND_OFF);
        assertEquals(3, count(shell, JunctionKind.WALL_CHANGE_AT_FLOOR));
        assertEquals(10.6, length(shell, JunctionKind.WALL_TO_TERRACE), ROUND_OFF);
    }

    @Test
    void wallsInNoCompassDirectionClose() {
        var outline = Houses.points(0, 0, 9.13, -1.7, 11.9, 6.31, 4.2, 9.77, -1.1, 5.5);
        Body.Storey lower = Houses.storey("ground floor", outline, 3, "wall");
        Body.Storey upper = Houses.storey("upper floor", Houses.points(1, 1, 8, 0, 10, 7.5, 2, 6), 2.8, "thin");
        Body body = Houses.storeys(
                Body.FootprintLine.STRUCTURE, Lists.immutable.of(lower, upper), Houses.slab(), Houses.flat());
        assertClosed(build(body));
    }

    /** Surfaces stand as a house is built: floor, what hangs over, walls storey by storey, decks, roof. */
    @Test
    void surfacesStandAsAHouseIsBuilt() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 3, 10, 7), 2.8, "wall");
        Body.Storey top = Houses.storey("top floor", Houses.rectangle(0, 3, 10, 7), 2.8, "wall");
        ImmutableList<Surface> surfaces =
                build(Houses.body(Houses.flat(), BOX, upper, top)).surfaces();
        assertEquals(
                Lists.immutable.of(Body.Use.FLOOR, Body.Use.OVERHANG, Body.Use.WALL, Body.Use.TERRACE, Body.Use.ROOF),
                surfaces.collect(Surface::use).distinct());
        ImmutableList<Surface> walls = surfaces.select(each -> each.use() == Body.Use.WALL);
        assertEquals(12, walls.size());
        walls.forEachWithIndex((wall, i) -> assertEquals(
                Lists.immutable.of("ground floor", "upper floor", "top floor").get(i / 4), wall.storey()));
    }

    /** Of two walls alike the one that stands first in the shell is the edge's first, all round. */
    @Test
    void ofTwoWallsAlikeTheFirstComesFirst() {
        Shell shell = build(Houses.body(Houses.flat(), BOX));
        ImmutableList<String> names = shell.surfaces().collect(Surface::name);
        ImmutableList<Edge> corners = shell.edges().select(edge -> edge.kind() == JunctionKind.OUTSIDE_CORNER);
        assertEquals(4, corners.size());
        corners.forEach(edge -> assertTrue(
                names.indexOf(edge.first().name())
                        < names.indexOf(edge.second().orElseThrow().name()),
                edge.name()));
    }

    /** A tower with one corner on the outer wall's line: the terrace touches itself there, whichever side it is on. */
    @Test
    void aTerraceMayTouchItselfInAPoint() {
        double[][] towers = {
            {5, 0, 8, 4, 5, 7, 2, 4}, {8, 5, 4, 8, 1, 5, 4, 2}, {5, 8, 2, 4, 5, 1, 8, 4}, {0, 5, 4, 2, 7, 5, 4, 8}
        };
        for (int i = 0; i < towers.length; i++) {
            Body.Storey below =
                    i % 2 == 0 ? BOX : Houses.storey("ground floor", Houses.rectangle(0, 0, 8, 10), 3, "wall");
            Body.Storey tower = Houses.storey("tower", Houses.points(towers[i]), 2.8, "wall");
            Shell shell = build(Houses.body(Houses.flat(), below, tower));
            assertEquals(Lists.immutable.empty(), shell.openEdges());
            // The tower's diagonals are 7 m and 6 m.
            assertEquals(
                    80 - 21,
                    shell.surfaces()
                            .select(each -> each.use() == Body.Use.TERRACE)
                            .sumOfDouble(Surface::externalArea),
                    1e-5);
            assertEquals(80 * 3.55 + 21 * (6.15 - 3.05), shell.externalVolume(), 1e-4);
        }
    }

    /** Where a garage's wall ends in the plane of a house's wall, a neighbour begins. */
    @Test
    void anUnheatedNeighbourEndsInAWallsPlane() {
        Exposure garage = new Exposure(Exposure.Kind.UNHEATED, "garage", 0.8);
        Body.Storey storey = Houses.storey("ground floor", Houses.points(0, 0, 5, 0, 10, 0, 10, 8, 0, 8), 3, "wall");
        for (int side : new int[] {0, 1}) {
            Shell shell = build(Houses.body(Houses.flat(), Houses.facing(storey, side, garage)));
            Edge edge = shell.edges()
                    .select(e -> e.kind() == JunctionKind.UNHEATED_NEIGHBOUR)
                    .getOnly();
            assertEquals(3.85, edge.externalLength(), ROUND_OFF);
            assertEquals(garage, edge.second().orElseThrow().exposure());
            assertEquals(180, edge.angle(), ROUND_OFF);
        }
    }

    /** At a floor the floor's seam goes on where a garage lies beside one storey only; each storey faces what it does. */
    @Test
    void besideAGarageAFloorIsStillAFloor() {
        Exposure garage = new Exposure(Exposure.Kind.UNHEATED, "garage", 0.8);
        ImmutableList<Point2> box = Houses.rectangle(0, 0, 10, 8);
        Body.Storey below = Houses.facing(Houses.storey("ground floor", box, 3, "wall"), 1, garage);
        Body.Storey above = Houses.storey("upper floor", box, 3, "wall");
        Edge edge = build(Houses.body(Houses.flat(), below, above))
                .edges()
                .select(e -> e.kind() == JunctionKind.WALL_CHANGE_AT_FLOOR)
                .getOnly();
        assertEquals(garage, edge.first().exposure());
        assertEquals(Exposure.outdoors(), edge.second().orElseThrow().exposure());
    }

    /** A lower roof has the parapet of the roof, or none where that has none. */
    @Test
    void withoutAParapetALowerRoofHasNone() {
        Body.Storey low = Houses.storey(
                BOX.name(), BOX.footprint(), 3, BOX.walls(), java.util.Optional.of("roof"), false, BOX.overhang(), 0);
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 3, 10, 5), 2.8, "wall");
        Shell shell = build(Houses.body(Houses.flat(), low, upper));
        assertEquals(30 + 16, length(shell, JunctionKind.FLAT_ROOF_EDGE), ROUND_OFF);
        assertEquals(0, count(shell, JunctionKind.PARAPET));
    }

    /** A wall under the floor beside it faces what that floor does. */
    @Test
    void underAFloorBesideItAWallFacesWhatThatDoes() {
        Exposure crawl = new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1);
        for (Body.Base beside : new Body.Base[] {Houses.slab(), Houses.base(Body.Base.Kind.SUSPENDED, 0, crawl)}) {
            Body.Storey ground = new Body.Storey(
                    BOX.name(),
                    BOX.footprint(),
                    BOX.courts(),
                    3,
                    BOX.walls(),
                    BOX.terrace(),
                    true,
                    BOX.overhang(),
                    0.3,
                    BOX.floor(),
                    java.util.Optional.empty(),
                    java.util.Optional.of(beside));
            Body body = Houses.storeys(
                    Body.FootprintLine.OUTER_FACE,
                    Lists.immutable.of(Houses.storey("cellar", Houses.rectangle(0, 0, 4, 8), 2.5, "wall"), ground),
                    Houses.base(Body.Base.Kind.HEATED_CELLAR, 2.4, Exposure.ground()),
                    Houses.flat());
            Shell shell = build(body);
            assertClosed(shell);
            Surface under = surface(shell, "cellar wall 1, under the floor beside it");
            assertEquals(beside.exposure().kind(), under.exposure().kind());
            assertEquals(8 * (2.5 - 0.5 + 0.5), under.externalArea(), ROUND_OFF);
        }
    }

    /** Where its house stands 25° off the compass, a side's walls face 25° past its own way: nearer to the one between two. */
    @Test
    void sidesAreCalledByTheWayTheirWallsFace() {
        Shell along = build(Houses.body(Houses.flat(), BOX));
        assertEquals(Lists.immutable.of("south", "east", "north", "west"), names(along, 0));
        for (int degrees : new int[] {25, 65}) {
            Shell turned = build(AnyAngleTest.turned(Houses.body(Houses.flat(), BOX), degrees));
            assertEquals(
                    Lists.immutable.of("south-east", "north-east", "north-west", "south-west"), names(turned, degrees));
        }
        assertEquals(
                Lists.immutable.of("south", "east", "north", "west"),
                names(build(AnyAngleTest.turned(Houses.body(Houses.flat(), BOX), 20)), 20));
    }

    /** What the sides are called on which the box's walls stand, as they are numbered. */
    private static ImmutableList<String> names(Shell shell, int degrees) {
        return Lists.immutable
                .of(0, 1, 2, 3)
                .collect(i ->
                        shell.nameOf(surface(shell, "ground floor wall " + i).side()));
    }

    /** A selector of kinds and names means what is of one of those kinds and beside all of those surfaces. */
    @Test
    void selectorsMeanKindsAndSurfacesAtOnce() {
        Shell shell = build(Houses.body(Houses.flat(), BOX));
        assertEquals(4, meant(shell, Sets.immutable.of(JunctionKind.OUTSIDE_CORNER)));
        assertEquals(8, meant(shell, Sets.immutable.of(JunctionKind.OUTSIDE_CORNER, JunctionKind.SLAB_EDGE)));
        assertEquals(0, meant(shell, Sets.immutable.of(JunctionKind.INSIDE_CORNER)));
        assertEquals(12, meant(shell, Sets.immutable.empty()));
        assertEquals(4, meant(shell, Sets.immutable.empty(), "ground floor wall 0"));
        assertEquals(2, meant(shell, Sets.immutable.of(JunctionKind.OUTSIDE_CORNER), "ground floor wall 0"));
        assertEquals(1, meant(shell, Sets.immutable.empty(), "ground floor wall 0", "ground floor wall 1"));
        assertEquals(0, meant(shell, Sets.immutable.empty(), "ground floor wall 0", "ground floor wall 2"));
        assertEquals(
                0,
                meant(shell, Sets.immutable.of(JunctionKind.SLAB_EDGE), "ground floor wall 0", "ground floor wall 1"));
    }

    /** An opening's name means the four edges round it. */
    @Test
    void selectorsMeanOpenings() {
        Shell shell = ShellBuilder.build(Houses.house(
                Houses.body(Houses.flat(), BOX),
                Lists.immutable.of(Houses.opening("window", Opening.Kind.WINDOW, "ground floor wall 0", 1, 1, -1, 1)),
                Lists.immutable.empty()));
        assertEquals(4, meant(shell, Sets.immutable.empty(), "window"));
        assertEquals(4, meant(shell, Sets.immutable.empty(), "window", "ground floor wall 0"));
        assertEquals(0, meant(shell, Sets.immutable.empty(), "window", "ground floor wall 1"));
    }

    private static int meant(Shell shell, ImmutableSet<JunctionKind> kinds, String... surfaces) {
        return shell.edges().count(edge -> edge.isMeantBy(new Selector(kinds, Lists.immutable.of(surfaces))));
    }
}
