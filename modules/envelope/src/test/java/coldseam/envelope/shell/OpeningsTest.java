package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Seam;
import coldseam.envelope.Vectors;
import coldseam.envelope.file.house.HouseFiles;
import coldseam.envelope.shell.fault.ShellException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Windows, doors and seams in a house of two storeys, the upper 3 m set back from the south. */
class OpeningsTest {

    private static final double ROUND_OFF = 1e-9;

    private static final Body.Storeys BODY = Houses.body(
            Houses.roof(Body.Roof.Form.GABLE, 45, 0, false),
            Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"),
            Houses.storey("upper floor", Houses.rectangle(0, 3, 10, 5), 2.8, "wall"));

    private static Shell build(Opening... openings) {
        return ShellBuilder.build(Houses.house(BODY, Lists.immutable.of(openings), Lists.immutable.empty()));
    }

    private static ImmutableList<String> faults(Opening... openings) {
        return assertThrows(ShellException.class, () -> build(openings)).faults();
    }

    private static Opening window(String surface, double width, double left, double sill) {
        return Houses.opening("W1", Opening.Kind.WINDOW, surface, width, 1.5, left, sill);
    }

    private static Opening door(String surface, double left, double sill) {
        return Houses.opening("D1", Opening.Kind.DOOR, surface, 1, 2.1, left, sill);
    }

    /** An ell has two walls to the east: neither is nearer to the name without a number. */
    @Test
    void bothPartsOfAWallAreMeant() throws IOException {
        String text = Files.readString(
                Path.of(System.getProperty("coldseam.root"), "fixtures/houses/shapes/cellar-in-a-slope.yaml"));
        House house = HouseFiles.read(
                        "house.yaml",
                        (text
                                        + "openings: {W1: {kind: window, surface: ground floor east wall, width: 1 m, height: 1 m, sill: 1 m, transmittance: 0.9 W/(m²·K)}}\n")
                                .getBytes(StandardCharsets.UTF_8))
                .house();
        String fault = assertThrows(ShellException.class, () -> ShellBuilder.build(house))
                .getMessage();
        assertTrue(fault.endsWith("did you mean \"ground floor east wall 1\" or \"ground floor east wall 2\"?"), fault);
    }

    /** Its threshold takes its width out of the change of walls; where the walls' faces are apart it is drawn in the door's own. */
    @Test
    void doorsStandWhereTheWallChangesToo() {
        Opening door = Houses.opening("D1", Opening.Kind.DOOR, "upper floor wall 0", 1, 2.1, 4, 0);
        for (Body.FootprintLine line :
                new Body.FootprintLine[] {Body.FootprintLine.OUTER_FACE, Body.FootprintLine.INNER_FACE}) {
            Body body = Houses.storeys(
                    line,
                    Lists.immutable.of(
                            Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall"),
                            Houses.storey("upper floor", Houses.rectangle(0, 0, 10, 8), 2.8, "thin")),
                    Houses.slab(),
                    Houses.flat());
            Shell plain = ShellBuilder.build(Houses.house(body));
            Shell shell = ShellBuilder.build(Houses.house(body, Lists.immutable.of(door), Lists.immutable.empty()));
            Edge threshold = shell.edges().detect(e -> e.name().equals("threshold: D1"));
            assertEquals(JunctionKind.HEATED_THRESHOLD, threshold.kind());
            assertEquals(
                    line == Body.FootprintLine.OUTER_FACE ? "ground floor wall 0" : "upper floor wall 0",
                    threshold.first().name());
            assertEquals(0, ShellBuilderTest.count(shell, JunctionKind.SILL));
            assertEquals(
                    ShellBuilderTest.length(plain, JunctionKind.WALL_CHANGE_AT_FLOOR) - 1,
                    ShellBuilderTest.length(shell, JunctionKind.WALL_CHANGE_AT_FLOOR),
                    ROUND_OFF);
        }
    }

    @Test
    void windowHasHeadSillAndTwoJambsAtItsPlace() {
        Shell shell = build(window("ground floor wall 1", 2, 1, 0.9));
        ShellBuilderTest.assertClosed(shell);
        assertEquals(3, ShellBuilderTest.surface(shell, "ground floor wall 1").openingArea(), ROUND_OFF);
        Edge sill = shell.edges().detect(e -> e.kind() == JunctionKind.SILL);
        // The east wall's left end, seen from outdoors, is its south end; the floor is at z = 0.
        assertEquals(0, Vectors.length(Vectors.minus(new Point3(10, 1, 0.9), sill.from())), ROUND_OFF);
        assertEquals(0, Vectors.length(Vectors.minus(new Point3(10, 3, 0.9), sill.to())), ROUND_OFF);
        assertEquals(2, ShellBuilderTest.length(shell, JunctionKind.HEAD), ROUND_OFF);
        assertEquals(3, ShellBuilderTest.length(shell, JunctionKind.JAMB), ROUND_OFF);
        assertEquals("W1", sill.opening().orElseThrow().name());
        assertEquals("east side, ground floor, at the sill of window \"W1\"", sill.place());
        Edge centred =
                build(window("ground floor wall 1", 2, -1, 0.9)).edges().detect(e -> e.kind() == JunctionKind.SILL);
        assertEquals(3, centred.from().y(), ROUND_OFF);
    }

    /** A wall's pieces are told apart by numbers; a wall whose name looks like such a piece's is another wall all the same. */
    @Test
    void aWallOfASimilarNameIsAnother() {
        Body.Storey storey = Houses.storey("hall", Houses.rectangle(0, 0, 10, 8), 3, "wall");
        ImmutableList<Body.Wall> walls = storey.walls()
                .collectWithIndex((wall, i) ->
                        i == 0 ? new Body.Wall("hall wall 1 (2)", wall.assembly(), wall.exposure()) : wall);
        Body body = Houses.body(Houses.flat(), Houses.outlined(storey, storey.footprint(), storey.courts(), walls));
        Opening wide = window("hall wall 1", 9, 0.5, 0.9);
        ImmutableList<String> faults = assertThrows(
                        ShellException.class,
                        () -> ShellBuilder.build(Houses.house(body, Lists.immutable.of(wide), Lists.immutable.empty())))
                .faults();
        assertEquals(1, faults.size(), faults::makeString);
        assertTrue(faults.getFirst().contains("\"hall wall 1\""), faults::getFirst);
    }

    @Test
    void doorsStandOnThresholds() {
        Shell plain = build();
        Shell slab = build(door("ground floor wall 1", 4, 0));
        assertEquals(1, ShellBuilderTest.length(slab, JunctionKind.SLAB_THRESHOLD), ROUND_OFF);
        assertEquals(0, ShellBuilderTest.count(slab, JunctionKind.SILL));
        assertEquals(
                ShellBuilderTest.length(plain, JunctionKind.SLAB_EDGE) - 1,
                ShellBuilderTest.length(slab, JunctionKind.SLAB_EDGE),
                ROUND_OFF);
        // The deck lies at 3.05 m, the upper floor at 3 m.
        Shell terrace = build(door("upper floor wall 0", 4, 0.15));
        Edge threshold = terrace.edges().detect(e -> e.kind() == JunctionKind.TERRACE_THRESHOLD);
        assertEquals("terrace over ground floor", threshold.first().name());
        assertEquals("upper floor wall 0", threshold.second().orElseThrow().name());
        assertEquals(9, ShellBuilderTest.length(terrace, JunctionKind.WALL_TO_TERRACE), ROUND_OFF);
        Shell high = build(window("ground floor wall 1", 2, 1, 0.25));
        assertEquals(1, ShellBuilderTest.count(high, JunctionKind.SILL), "a window's sill is no threshold");
        ShellPropertiesTest.assertSetBacks(terrace);
        ShellPropertiesTest.assertSetBacks(slab);
    }

    @ParameterizedTest
    @CsvSource({
        "UNHEATED, cellar, 0.6, door threshold over a cold space",
        "OUTDOORS, '', 1, door threshold over open air"
    })
    void aDoorStandsOnAThresholdOverWhateverIsBelow(Exposure.Kind below, String neighbour, double factor, String kind) {
        Body.Storeys raised = Houses.storeys(
                BODY.line(),
                BODY.main().storeys(),
                Houses.base(Body.Base.Kind.SUSPENDED, 0, new Exposure(below, neighbour, factor)),
                BODY.main().roof());
        Shell shell = ShellBuilder.build(
                Houses.house(raised, Lists.immutable.of(door("ground floor wall 1", 4, 0)), Lists.immutable.empty()));
        Edge threshold = shell.edges().detect(e -> e.name().equals("threshold: D1"));
        assertEquals(kind, threshold.kind().label());
        assertEquals(0, ShellBuilderTest.count(shell, JunctionKind.SILL));
        ShellPropertiesTest.assertSetBacks(shell);
    }

    /** A door or a window down to the floor, on the upper floor's north wall: the floor's edge is behind it, the wall below. */
    @Test
    void aDoorOverARoomStandsOnTheFloorsEdge() {
        Shell shell = build(door("upper floor wall 2", 4, 0));
        Edge threshold = shell.edges().detect(e -> e.name().equals("threshold: D1"));
        assertEquals("door threshold over a heated room", threshold.kind().label());
        assertEquals("ground floor wall 2", threshold.first().name());
        assertTrue(threshold.second().isEmpty());
        assertEquals(0, ShellBuilderTest.count(shell, JunctionKind.SILL));
        assertEquals(
                ShellBuilderTest.length(build(), JunctionKind.INTERMEDIATE_FLOOR) - 1,
                ShellBuilderTest.length(shell, JunctionKind.INTERMEDIATE_FLOOR),
                ROUND_OFF);
        ShellPropertiesTest.assertSetBacks(shell);
        Shell step = build(door("upper floor wall 2", 4, 0.4));
        assertEquals(1, ShellBuilderTest.count(step, JunctionKind.SILL), "a step over 300 mm is a sill");
    }

    @Test
    void aShuttersBoxSitsInThePlaceOfTheHead() {
        Opening plain = window("ground floor wall 1", 2, 1, 0.9);
        Shell shell = build(new Opening(
                plain.name(),
                plain.kind(),
                plain.surface(),
                plain.width(),
                plain.height(),
                plain.left(),
                plain.sill(),
                plain.rating(),
                plain.frameDepth(),
                plain.setBack(),
                true,
                Optional.empty(),
                Optional.empty()));
        assertEquals(0, ShellBuilderTest.count(shell, JunctionKind.HEAD));
        assertEquals(2, ShellBuilderTest.length(shell, JunctionKind.of("shutter box")), ROUND_OFF);
    }

    private static Shell withPorch(String wall, double length) {
        return ShellBuilder.build(Houses.house(
                BODY,
                Lists.immutable.of(door("ground floor wall 1", 4, 0)),
                Lists.immutable.of(new Seam("porch", JunctionKind.of("porch slab against the house"), wall, length))));
    }

    @Test
    void aPorchTakesItsLengthOutOfTheSlabsEdge() {
        Shell shell = withPorch("ground floor wall 1", 3);
        Edge porch = shell.edges().detect(e -> e.name().equals("porch"));
        assertEquals("ground floor wall 1", porch.second().orElseThrow().name());
        assertEquals(3, porch.externalLength(), ROUND_OFF);
        assertEquals(2 * (10 + 8) - 1 - 3, ShellBuilderTest.length(shell, JunctionKind.SLAB_EDGE), ROUND_OFF);
        ShellPropertiesTest.assertSetBacks(shell);
        // 8 m of wall, of which the door takes one.
        assertEquals(
                Lists.immutable.of(
                        "Seam \"porch\": it is 7.500 m long; the edge of a floor on the ground at the foot of"
                                + " \"ground floor wall 1\" leaves 7.000 m beside its doors. Name a wall that stands on such a floor,"
                                + " or make it shorter."),
                assertThrows(ShellException.class, () -> withPorch("ground floor wall 1", 7.5))
                        .faults());
        assertThrows(ShellException.class, () -> withPorch("upper floor wall 1", 1));
    }

    @Test
    void openingsInSlopesAreRooflights() {
        Shell shell = build(Houses.opening("R1", Opening.Kind.WINDOW, "roof, south slope", 1, 1.2, 4, 3.5));
        assertEquals(4, ShellBuilderTest.count(shell, JunctionKind.ROOFLIGHT));
        assertEquals(4.4, ShellBuilderTest.length(shell, JunctionKind.ROOFLIGHT), ROUND_OFF);
        Edge sill = shell.edges().detect(e -> e.name().equals("sill: R1"));
        assertEquals(3 + 3.5, sill.from().z(), ROUND_OFF);
        String low = faults(Houses.opening("R1", Opening.Kind.WINDOW, "roof, south slope", 1, 1.2, 4, 0.5))
                .getOnly();
        assertTrue(low.contains("Its sill is 0.500 m over the storey's floor, measured upright; here it may be"), low);
        double[] range = Arrays.stream(low.substring(low.indexOf("may be")).split("[^0-9.]+"))
                .filter(word -> word.matches("\\d+\\.\\d+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
        for (int end = 0; end < 2; end++) {
            double inside = range[end] + (end == 0 ? 0.001 : -0.001);
            double outside = range[end] - (end == 0 ? 0.002 : -0.002);
            assertTrue(build(Houses.opening("R1", Opening.Kind.WINDOW, "roof, south slope", 1, 1.2, 4, inside))
                    .closed());
            assertEquals(
                    1,
                    faults(Houses.opening("R1", Opening.Kind.WINDOW, "roof, south slope", 1, 1.2, 4, outside))
                            .size());
        }
    }

    @Test
    void openingsThatDoNotFitAreAllNamed() {
        ImmutableList<String> faults = faults(
                window("ground floor wall 1", 9, -1, 0.9),
                door("upper floor wall 0", 4, 0),
                window("nowhere", 1, 1, 1),
                window("ground floor wall 1", 2, 0.2, 0.9));
        assertEquals(4, faults.size(), faults.toString());
        assertTrue(faults.get(0).contains("\"W1\" does not fit in \"ground floor wall 1\""), faults.get(0));
        // The deck's outer face is 50 mm over the upper floor.
        assertTrue(faults.get(1).contains("from 0.050 m to"), faults.get(1));
        assertTrue(faults.get(2).contains("is not part of the shell"));
        assertTrue(faults.get(3).contains("room from 0.400 m to 7.600 m"), faults.get(3));
    }

    @Test
    void overlappingOpeningsAreRefused() {
        Opening one = window("ground floor wall 1", 2, 1, 0.9);
        Opening two = Houses.opening("W2", Opening.Kind.WINDOW, "ground floor wall 1", 1, 1, 2.5, 1);
        assertEquals(1, faults(one, two).size());
        assertTrue(faults(one, two).get(0).contains("\"W1\" and \"W2\" overlap"));
        Opening beside = Houses.opening("W3", Opening.Kind.WINDOW, "ground floor wall 1", 1, 1, 3, 1);
        assertTrue(build(one, beside).closed(), "openings may touch");
    }

    /** On each of four sides another touches, and 10 mm further in overlaps, whichever is named first. */
    @Test
    void openingsOverlapOnWhicheverSide() {
        Opening middle = at("W1", 3, 1);
        double[][] besides = {{2, 1, 0.01, 0}, {4, 1, -0.01, 0}, {3, 1.6, 0, -0.01}, {3, 0.4, 0, 0.01}};
        for (double[] b : besides) {
            Opening touching = at("W2", b[0], b[1]);
            Opening over = at("W2", b[0] + b[2], b[1] + b[3]);
            assertTrue(build(middle, touching).closed());
            assertTrue(build(touching, middle).closed());
            assertTrue(faults(middle, over).getOnly().contains("\"W1\" and \"W2\" overlap"));
            assertTrue(faults(over, middle).getOnly().contains("overlap"));
        }
    }

    private static Opening at(String name, double left, double sill) {
        return Houses.opening(name, Opening.Kind.WINDOW, "ground floor wall 1", 1, 0.6, left, sill);
    }

    @Test
    void seamsBecomeEdges() {
        Seam seam = new Seam("balcony slab", JunctionKind.of("balcony"), "upper floor wall 2", 3);
        Shell shell = ShellBuilder.build(Houses.house(BODY, Lists.immutable.empty(), Lists.immutable.of(seam)));
        Edge edge = shell.edges().detect(e -> e.kind() == JunctionKind.of("balcony"));
        assertEquals("balcony slab", edge.name());
        assertEquals(3, edge.externalLength(), ROUND_OFF);
        assertEquals("upper floor wall 2", edge.first().name());
        Seam lost = new Seam("lost", JunctionKind.of("balcony"), "nowhere", 3);
        assertTrue(assertThrows(
                        ShellException.class,
                        () -> ShellBuilder.build(Houses.house(BODY, Lists.immutable.empty(), Lists.immutable.of(lost))))
                .faults()
                .get(0)
                .startsWith("Seam \"lost\": the surface \"nowhere\" is not part of the shell."));
    }

    private static String refusedSeam(String surface, double length) {
        Seam seam = new Seam("slab", JunctionKind.of("balcony"), surface, length);
        return assertThrows(
                        ShellException.class,
                        () -> ShellBuilder.build(Houses.house(BODY, Lists.immutable.empty(), Lists.immutable.of(seam))))
                .faults()
                .getOnly();
    }

    /** A balcony hangs at a wall; several of them one over the other fit it as far apart as the message says. */
    @Test
    void seamsThatDoNotFitAreRefused() {
        String roof = build().surfaces().detect(each -> each.normal().z() > 0.9).name();
        assertEquals(
                "Seam \"slab\": a balcony is not part of \"" + roof
                        + "\", which looks another way. Name the surface it meets.",
                refusedSeam(roof, 3));
        String full = refusedSeam("upper floor wall 2", 1000);
        assertTrue(
                full.startsWith("Seam \"slab\": its length is 1000.00 m; \"upper floor wall 2\" has room for "), full);
    }

    /** What the message says of the sill is true: at that height the door fits, a millimetre lower it does not. */
    @Test
    void theSillThatIsNamedFits() {
        String low = faults(door("upper floor wall 0", 4, 0)).getOnly();
        assertTrue(
                low.contains("ends 0.050 m above the floor: raise the sill to that, or lower what lies there."), low);
        assertTrue(faults(door("upper floor wall 0", 4, 0.049)).getOnly().contains("ends 0.050 m above the floor"));
        assertTrue(build(door("upper floor wall 0", 4, 0.05)).closed());
        // One that is too high at any sill is told nothing of it that would not help.
        Opening tall = Houses.opening("D1", Opening.Kind.DOOR, "upper floor wall 0", 1, 9, 4, 0.2);
        String never = faults(tall).getOnly();
        assertTrue(!never.contains("raise the sill"), never);
    }

    private static Shell flatRoofed(Opening... openings) {
        Body body = Houses.body(Houses.flat(), Houses.storey("hall", Houses.rectangle(3, 2, 10, 8), 3, "wall"));
        return ShellBuilder.build(Houses.house(body, Lists.immutable.of(openings), Lists.immutable.empty()));
    }

    /** In a flat roof the left end is the west and the lower end the south. */
    @Test
    void aRooflightInAFlatRoofIsMeasuredFromTheSouthWest() {
        Shell shell = flatRoofed(Houses.opening("R", Opening.Kind.WINDOW, "roof", 2, 1.5, 1, 4));
        ImmutableList<Edge> sides = shell.edges().select(each -> each.kind() == JunctionKind.ROOFLIGHT);
        assertEquals(4, sides.size());
        ImmutableList<Point3> corners = sides.flatCollect(each -> Lists.immutable.of(each.from(), each.to()));
        assertEquals(4, corners.collectDouble(Point3::x).min(), ROUND_OFF);
        assertEquals(6, corners.collectDouble(Point3::x).max(), ROUND_OFF);
        assertEquals(6, corners.collectDouble(Point3::y).min(), ROUND_OFF);
        assertEquals(7.5, corners.collectDouble(Point3::y).max(), ROUND_OFF);
        assertTrue(corners.allSatisfy(corner -> Math.abs(corner.z() - 3.35) < ROUND_OFF));
        assertEquals(3, ShellBuilderTest.surface(shell, "roof").openingArea(), ROUND_OFF);
        assertEquals(
                "top side, hall, at the head of window \"R\"", sides.getFirst().place());
        ImmutableList<Point3> middle = flatRoofed(Houses.opening("R", Opening.Kind.WINDOW, "roof", 2, 1.5, -1, 0))
                .edges()
                .select(each -> each.kind() == JunctionKind.ROOFLIGHT)
                .flatCollect(each -> Lists.immutable.of(each.from(), each.to()));
        assertEquals(
                6 - 0.75, middle.collectDouble(Point3::y).min(), ROUND_OFF, "in the middle where no sill is given");
        Edge foot = flatRoofed(Houses.opening("R", Opening.Kind.WINDOW, "roof", 2, 1.5, -1, 4))
                .edges()
                .detect(each -> each.name().equals("sill: R"));
        assertEquals(7, foot.from().x(), ROUND_OFF);
        String wide = assertThrows(
                        ShellException.class,
                        () -> flatRoofed(Houses.opening("R", Opening.Kind.WINDOW, "roof", 2, 1.5, 7.7, 4)))
                .faults()
                .getOnly();
        assertEquals(
                "Opening \"R\" does not fit in \"roof\": it would reach from 7.700 m to 9.700 m from the left end and from 4.000 m"
                        + " to 5.500 m over the surface's lower end; the surface leaves room from 0.400 m to 9.600 m and from 0.400 m to"
                        + " 7.600 m at most. Make it smaller, or move it.",
                wide);
    }

    @Test
    void anOpeningBesideAHeatedNeighbourIsToldThatItLosesNothing() {
        Body.Storey storey = Houses.storey("hall", Houses.rectangle(0, 0, 10, 8), 3, "wall");
        ImmutableList<Body.Wall> walls = storey.walls()
                .collectWithIndex((wall, i) -> i == 1
                        ? new Body.Wall(wall.name(), wall.assembly(), new Exposure(Exposure.Kind.PARTY, "next door", 0))
                        : wall);
        Body body = Houses.body(Houses.flat(), Houses.outlined(storey, storey.footprint(), storey.courts(), walls));
        ImmutableList<Opening> through = Lists.immutable.of(door("hall wall 1", 4, 0));
        assertEquals(
                Lists.immutable.of(
                        "Opening \"D1\": \"hall wall 1\" faces \"next door\", as warm as the rooms: no heat leaves by an"
                                + " opening there, and none of its sides is a seam. Remove it from openings; the wall stands for it."),
                assertThrows(
                                ShellException.class,
                                () -> ShellBuilder.build(Houses.house(body, through, Lists.immutable.empty())))
                        .faults());
    }

    /** A gable that begins above its storey's floor: a window in it that nobody gives a sill does not stand on that floor. */
    @Test
    void aWindowInAGableIsAskedForItsSill() {
        String gable = "gable over upper floor wall 1";
        Opening noSill = Houses.opening("W1", Opening.Kind.WINDOW, gable, 1, 2.9, -1, 0);
        String alone = faults(noSill).getOnly();
        assertTrue(alone.startsWith("Opening \"W1\" does not fit in \"" + gable + "\""), alone);
        assertTrue(
                alone.contains(
                        "The wall begins 2.895 m above the floor; under it stands \"upper floor wall 1\": give it a sill of"
                                + " that or more, measured from the floor"),
                alone);
        Opening across = Houses.opening("W2", Opening.Kind.WINDOW, "upper floor wall 1", 1, 1.5, 0.5, 2);
        String joined = faults(noSill, across).getFirst();
        assertTrue(
                joined.contains("it has no sill, and under \"" + gable + "\" stands \"upper floor wall 1\""), joined);
    }

    /** A pointed gable's box is no room: what an opening as wide has where it stands is told besides. */
    @Test
    void theRoomUnderAPointIsToldAtTheOpeningsWidth() {
        String fault = faults(Houses.opening("W1", Opening.Kind.WINDOW, "gable over upper floor wall 1", 2, 2, -1, 2.9))
                .getOnly();
        assertTrue(fault.contains("at most, and where it stands, all its width, from 2.895 m to 3.759 m."), fault);
    }

    /** What a wall leaves is told from its left end outside and from the floor. */
    @Test
    void theRoomOfAWallIsTold() {
        assertEquals(
                Lists.immutable.of(
                        "Opening \"W1\" does not fit in \"ground floor wall 1\": it would reach from 7.000 m to 8.500 m from the"
                                + " left end and from 0.900 m to 2.400 m over the floor; the surface leaves room from 0.400 m to 7.600 m"
                                + " and from 0.000 m to 3.000 m at most. Make it smaller, or move it."),
                faults(window("ground floor wall 1", 1.5, 7, 0.9)));
    }

    /** An opening in a wall that is left out is left out with it; another beside it stays. */
    @Test
    void anOpeningInAMissingWallIsMissing() {
        Body body = Houses.body(
                Houses.flat(),
                Houses.storey(
                        "hall", Houses.rectangle(0, 0, 10, 8), 3, Lists.immutable.of("wall", "", "wall", "wall")));
        Shell shell = ShellBuilder.build(Houses.house(
                body,
                Lists.immutable.of(window("hall wall 1", 2, 1, 0.9), door("hall wall 0", 2, 0)),
                Lists.immutable.empty()));
        assertEquals(
                Lists.immutable.of("D1"),
                shell.edges()
                        .flatCollect(each -> each.opening().stream().toList())
                        .collect(Opening::name)
                        .distinct());
    }

    @Test
    void openingsInACeilingAreHatchesAndShafts() {
        Body body = Houses.body(
                Houses.roof(Body.Roof.Form.GABLE, 40, 0, true),
                Houses.storey("hall", Houses.rectangle(0, 0, 10, 8), 3, "wall"));
        Shell shell = ShellBuilder.build(Houses.house(
                body,
                Lists.immutable.of(
                        Houses.opening("S", Opening.Kind.WINDOW, "top ceiling", 1, 1, 1, 1),
                        Houses.opening("H", Opening.Kind.DOOR, "top ceiling", 0.8, 1.2, 5, 3)),
                Lists.immutable.empty()));
        assertEquals(4, ShellBuilderTest.length(shell, JunctionKind.of("skylight shaft")), ROUND_OFF);
        assertEquals(4, ShellBuilderTest.length(shell, JunctionKind.of("attic hatch")), ROUND_OFF);
    }

    /** A window that reaches down to 20 mm over the floor stands on a threshold; at the end of a wall it takes what is there. */
    @Test
    void aWindowDownToTheFloorStandsOnAThreshold() {
        for (double sill : new double[] {0, 0.02}) {
            assertEquals(
                    2,
                    ShellBuilderTest.length(
                            build(window("ground floor wall 1", 2, 1, sill)), JunctionKind.SLAB_THRESHOLD),
                    ROUND_OFF);
        }
        Shell sill = build(window("ground floor wall 1", 2, 1, 0.021));
        assertEquals(0, ShellBuilderTest.count(sill, JunctionKind.SLAB_THRESHOLD));
        assertEquals(
                1, ShellBuilderTest.count(build(door("ground floor wall 1", 4, 0.3)), JunctionKind.SLAB_THRESHOLD));
        assertEquals(1, ShellBuilderTest.count(build(door("ground floor wall 1", 4, 0.301)), JunctionKind.SILL));
        Edge threshold = build(door("ground floor wall 1", 4, 0))
                .edges()
                .detect(each -> each.name().equals("threshold: D1"));
        assertEquals(0, Vectors.length(Vectors.minus(new Point3(10, 4, 0), threshold.from())), ROUND_OFF);
        assertEquals(0, Vectors.length(Vectors.minus(new Point3(10, 5, 0), threshold.to())), ROUND_OFF);
        assertEquals("east side, ground floor, at the threshold of door \"D1\"", threshold.place());
        assertEquals(90, threshold.angle(), ROUND_OFF);
        assertEquals(0.4, threshold.firstSetBack(), ROUND_OFF);
        assertEquals(0.5, threshold.secondSetBack(), ROUND_OFF);
    }

    private static Edge seam(String kind, String surface, double length) {
        Seam seam = new Seam("s", JunctionKind.of(kind), surface, length);
        return ShellBuilder.build(Houses.house(BODY, Lists.immutable.empty(), Lists.immutable.of(seam)))
                .edges()
                .detect(each -> each.name().equals("s"));
    }

    /** Level ones are drawn along their wall, upright ones up it, both through its middle, no longer than it is. */
    @Test
    void seamsAreDrawnThroughTheMiddle() {
        Edge balcony = seam("balcony", "ground floor wall 0", 3);
        assertEquals(0, balcony.from().y(), ROUND_OFF);
        assertEquals(5 - 1.5, balcony.from().x(), ROUND_OFF);
        assertEquals(5 + 1.5, balcony.to().x(), ROUND_OFF);
        assertEquals(balcony.from().z(), balcony.to().z(), ROUND_OFF);
        assertEquals("south side, ground floor, balcony \"s\" on ground floor wall 0", balcony.place());
        Edge partition = seam("partition", "ground floor wall 0", 2);
        assertEquals(5, partition.from().x(), ROUND_OFF);
        assertEquals(2, partition.to().z() - partition.from().z(), ROUND_OFF);
        Edge several = seam("partition", "ground floor wall 0", 20);
        assertEquals(20, several.externalLength(), ROUND_OFF);
        // From the slab's underside to the deck's upper face.
        assertEquals(3.55, Vectors.length(Vectors.minus(several.to(), several.from())), ROUND_OFF);
        Edge porch = withPorch("ground floor wall 1", 3)
                .edges()
                .detect(each -> each.name().equals("porch"));
        assertEquals(0, porch.from().z() + 0.5, ROUND_OFF);
        assertEquals(3, Vectors.length(Vectors.minus(porch.to(), porch.from())), ROUND_OFF);
        assertEquals(4, (porch.from().y() + porch.to().y()) / 2, ROUND_OFF);
    }

    /** Of a door half on a deck, half beyond its end, the whole foot is a seam. */
    @Test
    void aDoorPartlyOffADeckHasTwoThresholds() {
        Body.Storeys body = Houses.body(
                Houses.flat(),
                Houses.storey("ground floor", Houses.points(0, 0, 6, 0, 6, 4, 10, 4, 10, 10, 0, 10), 3, "wall"),
                Houses.storey("upper floor", Houses.rectangle(0, 4, 10, 6), 2.6, "wall"));
        Shell plain = ShellBuilder.build(Houses.house(body));
        // The deck goes from 0 to 6 m along the upper floor's south wall, the door from 4.8 to 6.8 m.
        Shell shell = ShellBuilder.build(Houses.house(
                body,
                Lists.immutable.of(Houses.opening("door", Opening.Kind.DOOR, "upper floor wall 0", 2, 2, 4.8, 0.15)),
                Lists.immutable.empty()));
        Edge deck = shell.edges().detect(edge -> edge.kind() == JunctionKind.TERRACE_THRESHOLD);
        Edge rooms = shell.edges().detect(edge -> edge.kind() == JunctionKind.HEATED_THRESHOLD);
        assertEquals(1.2, deck.externalLength(), ROUND_OFF);
        assertEquals(0.8, rooms.externalLength(), ROUND_OFF);
        assertEquals("threshold: door (2)", rooms.name());
        assertEquals(6, rooms.from().x(), ROUND_OFF);
        assertEquals(6.8, rooms.to().x(), ROUND_OFF);
        for (JunctionKind kind : Lists.immutable.of(JunctionKind.WALL_TO_TERRACE, JunctionKind.INTERMEDIATE_FLOOR)) {
            assertEquals(
                    ShellBuilderTest.length(plain, kind) - (kind == JunctionKind.WALL_TO_TERRACE ? 1.2 : 0.8),
                    ShellBuilderTest.length(shell, kind),
                    ROUND_OFF);
        }
        // Where no floor is near its foot, the rest is a sill.
        Shell high = ShellBuilder.build(Houses.house(
                body,
                Lists.immutable.of(Houses.opening("door", Opening.Kind.DOOR, "upper floor wall 0", 2, 2, 4.8, 0.34)),
                Lists.immutable.empty()));
        assertEquals(1.2, ShellBuilderTest.length(high, JunctionKind.TERRACE_THRESHOLD), ROUND_OFF);
        assertEquals(0.8, ShellBuilderTest.length(high, JunctionKind.SILL), ROUND_OFF);
    }

    /** Over a deck its sill is measured from the deck, which lies 50 mm over the floor behind it. */
    @Test
    void aDoorMayStandSoHighOverADeck() {
        assertEquals(
                1, ShellBuilderTest.count(build(door("upper floor wall 0", 4, 0.34)), JunctionKind.TERRACE_THRESHOLD));
        assertEquals(1, ShellBuilderTest.count(build(door("upper floor wall 0", 4, 0.36)), JunctionKind.SILL));
        // A door whose middle is beside the wall's end stands on what is under its middle.
        Shell west = build(door("upper floor wall 0", 0.5, 0.1));
        assertEquals(9, ShellBuilderTest.length(west, JunctionKind.WALL_TO_TERRACE), ROUND_OFF);
    }

    /** A bearing wall stands on the floor, which looks down; a stair's hatch lies in a roof, which looks up: level seams run east. */
    @Test
    void seamsOfFloors() {
        JunctionKind wall = JunctionKind.of("bearing wall through the slab's insulation");
        Edge edge = seam(wall.label(), "lowest floor", 4);
        assertEquals(4, edge.to().x() - edge.from().x(), ROUND_OFF);
        assertEquals(5, (edge.from().x() + edge.to().x()) / 2, ROUND_OFF);
        assertEquals(edge.from().y(), edge.to().y(), ROUND_OFF);
        for (String other : new String[] {"ground floor wall 0", "roof, south slope"}) {
            String refused = assertThrows(ShellException.class, () -> seam(wall.label(), other, 4))
                    .getMessage();
            assertTrue(refused.contains("which looks another way"), refused);
        }
    }

    /** The foot of a wall of 10 m stands for 3 m on the slab, for 2 m over a crawl space, for 5 m on the slab again: a porch finds room. */
    @Test
    void aPorchLiesAtTheLongestFoot() {
        for (boolean mirrored : new boolean[] {false, true}) {
            Body.Base crawl = Houses.base(Body.Base.Kind.SUSPENDED, 0, new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1));
            Body.Storeys body = Houses.storeys(
                    Body.FootprintLine.OUTER_FACE,
                    Lists.immutable.of(Houses.storey("house", Houses.rectangle(0, 0, 10, 8), 3, "wall")),
                    Houses.slab(),
                    Houses.flat(),
                    Lists.immutable.of(new Body.AreaBase(Houses.rectangle(mirrored ? 5 : 3, -1, 2, 5), crawl)),
                    Lists.immutable.empty());
            Seam seam = new Seam("porch", JunctionKind.of("porch slab against the house"), "house wall 0", 4.5);
            Shell shell = ShellBuilder.build(Houses.house(body, Lists.immutable.empty(), Lists.immutable.of(seam)));
            Edge porch = shell.edges().detect(each -> each.name().equals("porch"));
            assertEquals(mirrored ? 2.5 : 7.5, (porch.from().x() + porch.to().x()) / 2, ROUND_OFF);
        }
    }
}
