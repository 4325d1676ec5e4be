package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point2;
import coldseam.envelope.Vectors;
import coldseam.envelope.file.house.HouseFiles;
import coldseam.envelope.shell.fault.ShellException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.list.primitive.IntInterval;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Houses that stand at any angle to the axes are the houses they are along the axes. */
class AnyAngleTest {

    /** m and m²; corners lie on a lattice of a micrometre, and heights on one of 0.1 mm. */
    private static final double LATTICE = 1e-4;

    private static final Body.Storey BOX = Houses.storey("ground floor", Houses.rectangle(0, 0, 10, 8), 3, "wall");

    static Point2 turned(Point2 p, double degrees) {
        double sine = Math.sin(Math.toRadians(degrees));
        double cosine = Math.cos(Math.toRadians(degrees));
        return new Point2(p.x() * cosine - p.y() * sine, p.x() * sine + p.y() * cosine);
    }

    static Body.Storeys turned(Body.Storeys body, double degrees) {
        return moved(body, p -> turned(p, degrees));
    }

    /** Every corner carried elsewhere by the same way. */
    static Body.Storeys moved(Body.Storeys body, UnaryOperator<Point2> way) {
        return Houses.body(
                body.line(),
                new Body.Stack(
                        "",
                        body.main().storeys().collect(s -> moved(s, way)),
                        body.main().base(),
                        body.main().roof(),
                        movedBases(body.main().otherBases(), way),
                        body.main().ground()),
                body.wings()
                        .collect(wing -> new Body.Stack(
                                wing.name(),
                                wing.storeys().collect(s -> moved(s, way)),
                                wing.base(),
                                wing.roof(),
                                movedBases(wing.otherBases(), way),
                                wing.ground())));
    }

    private static ImmutableList<Body.AreaBase> movedBases(
            ImmutableList<Body.AreaBase> bases, UnaryOperator<Point2> way) {
        return bases.collect(other -> new Body.AreaBase(other.area().collect(way::apply), other.base()));
    }

    private static Body.Storey moved(Body.Storey s, UnaryOperator<Point2> way) {
        return new Body.Storey(
                s.name(),
                s.footprint().collect(way::apply),
                s.courts().collect(court -> court.collect(way::apply)),
                s.height(),
                s.walls(),
                s.terrace(),
                s.terraceIsWalkedOn(),
                s.overhang(),
                s.floorThickness(),
                s.floor(),
                s.lowerRoof().map(roof -> moved(roof, way)),
                s.base());
    }

    private static Body.LowerRoof moved(Body.LowerRoof roof, UnaryOperator<Point2> way) {
        return new Body.LowerRoof(
                roof.area().map(area -> area.collect(way::apply)),
                roof.assembly(),
                roof.pitch(),
                roof.lowSide(),
                roof.eaves(),
                roof.wall(),
                roof.exposure());
    }

    /** Every sum that heat depends on, by name. */
    static Map<String, Double> takeOff(Shell shell) {
        Map<String, Double> sums = new TreeMap<>();
        sums.put("volume", shell.externalVolume());
        sums.put("inner volume", shell.internalVolume());
        sums.put("perimeter", shell.exposedPerimeter());
        shell.surfaces().forEach(s -> {
            String what = s.use() + " of " + s.assembly().map(a -> a.name()).orElse("none") + " " + s.storey();
            sums.merge(what, s.externalArea(), Double::sum);
            sums.merge(what + ", inside", s.internalArea(), Double::sum);
        });
        shell.edges().forEach(e -> {
            sums.merge(e.kind() + ", m", e.externalLength(), Double::sum);
            sums.merge(e.kind() + ", m inside", e.internalLength(), Double::sum);
            sums.merge(e.kind() + ", number", 1.0, Double::sum);
        });
        return sums;
    }

    static void assertSame(Map<String, Double> expected, Map<String, Double> found, String where) {
        assertSame(expected, found, LATTICE, where);
    }

    static void assertSame(Map<String, Double> expected, Map<String, Double> found, double within, String where) {
        assertEquals(expected.keySet(), found.keySet(), where);
        expected.forEach((what, value) ->
                assertEquals(value, found.get(what), within * Math.max(1, value / 10), where + ": " + what));
    }

    private static void assertSameAtEveryAngle(Body.Storeys body) {
        assertSame(body, IntInterval.fromTo(1, 89));
    }

    private static void assertSame(Body.Storeys body, IntInterval angles) {
        Map<String, Double> straight = takeOff(ShellBuilder.build(Houses.house(body)));
        for (int degrees : angles.toArray()) {
            Shell shell = ShellBuilder.build(Houses.house(turned(body, degrees)));
            assertEquals(Lists.immutable.empty(), shell.openEdges(), "at " + degrees + "°");
            assertEquals(0, Vectors.length(shell.areaVectorSum()));
            assertSame(straight, takeOff(shell), "at " + degrees + "°");
        }
    }

    /** At a few angles, of which one is a tie between sides of the compass. */
    @Test
    void somewhatTurnedTheyAreTheSame() {
        IntInterval angles = IntInterval.from(15).to(75).by(30);
        assertSame(body("wall", Houses.rectangle(0, 0, 11, 8), Body.FootprintLine.OUTER_FACE), angles);
        assertSame(body("wall", Houses.rectangle(1, 1.5, 8, 5), Body.FootprintLine.OUTER_FACE), angles);
        assertSame(body("thin", Houses.rectangle(0, 2, 10, 6), Body.FootprintLine.INNER_FACE), angles);
    }

    /** A wing that reaches over the flat roof of a storey into the one that stands back on it. */
    @Test
    void aWingInTheCornerOfATerraceIsTheSame() {
        Body.Stack house = Houses.stack(
                "",
                Houses.slab(),
                Houses.flat(),
                Houses.storey("low", Houses.rectangle(0, 0, 13, 6.5), 2.4, "wall"),
                Houses.storey("high", Houses.rectangle(0, 0, 10.5, 6.5), 2.6, "wall"));
        Body.Stack wing = Houses.stack(
                "wing",
                Houses.slab(),
                Houses.flat(),
                Houses.storey("wing", Houses.rectangle(10, 5.5, 4, 5), 3.8, "thin"));
        assertSame(
                Houses.body(Body.FootprintLine.STRUCTURE, house, Lists.immutable.of(wing)),
                IntInterval.from(7).to(87).by(10));
    }

    private static Body.Storeys body(String wall, ImmutableList<Point2> upper, Body.FootprintLine line) {
        return Houses.storeys(
                line,
                Lists.immutable.of(BOX, Houses.storey("upper floor", upper, 2.8, wall)),
                Houses.slab(),
                Houses.flat());
    }

    @Test
    @Tag("slow")
    void wallsBesideACantileverStay() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 0, 11, 8), 2.8, "wall");
        assertSameAtEveryAngle(Houses.body(Houses.flat(), BOX, upper));
    }

    @Test
    @Tag("slow")
    void aStoreySetBackOnAllSidesKeepsItsTerrace() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(1, 1.5, 8, 5), 2.8, "wall");
        Body.Storeys body = Houses.body(Houses.flat(), BOX, upper);
        assertEquals(40, takeOff(ShellBuilder.build(Houses.house(body))).get("TERRACE of deck ground floor"), LATTICE);
        assertSameAtEveryAngle(body);
    }

    @Test
    @Tag("slow")
    void aStoreySetBackOnOneSideIsTheSame() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 2, 10, 6), 2.8, "wall");
        assertSameAtEveryAngle(Houses.body(Houses.flat(), BOX, upper));
    }

    @Test
    @Tag("slow")
    void stepsOfWallThicknessAreTheSame() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 2, 10, 6), 2.8, "thin");
        assertSameAtEveryAngle(Houses.storeys(
                Body.FootprintLine.INNER_FACE, Lists.immutable.of(BOX, upper), Houses.slab(), Houses.flat()));
    }

    /** Coordinates measured to the millimetre after turning, as a surveyor gives them: walls are flush to a millimetre. */
    @Test
    @Tag("slow")
    void millimetresOfASurveyLoseNothing() {
        Body.Storey upper = Houses.storey("upper floor", Houses.rectangle(0, 0, 11, 8), 2.8, "wall");
        Body.Storeys body = Houses.body(Houses.flat(), BOX, upper);
        Map<String, Double> straight = takeOff(ShellBuilder.build(Houses.house(body)));
        for (int degrees = 1; degrees < 90; degrees++) {
            Body.Storeys exact = turned(body, degrees);
            Body.Storeys measured = Houses.storeys(
                    exact.line(),
                    exact.main()
                            .storeys()
                            .collect(s -> Houses.storey(
                                    s.name(),
                                    s.footprint()
                                            .collect(p -> new Point2(
                                                    Math.rint(p.x() * 1000) / 1000, Math.rint(p.y() * 1000) / 1000)),
                                    s.height(),
                                    s.walls(),
                                    s.terrace(),
                                    s.terraceIsWalkedOn(),
                                    s.overhang(),
                                    s.floorThickness())),
                    exact.main().base(),
                    exact.main().roof());
            Map<String, Double> found = takeOff(ShellBuilder.build(Houses.house(measured)));
            for (String what : straight.keySet()) {
                boolean sum = !what.contains("inside") && !what.endsWith("number");
                // A millimetre along some tens of metres of edge and height.
                assertEquals(
                        straight.get(what),
                        sum ? found.getOrDefault(what, Double.NaN) : straight.get(what),
                        0.1,
                        degrees + "°: " + what);
            }
        }
    }

    @Test
    @Tag("slow")
    void heronRowIsTheSameAtEveryAngle() {
        var house =
                HouseFiles.read(Path.of("../../fixtures/houses/heron-row.yaml")).house();
        Body.Storeys body = (Body.Storeys) house.body();
        Map<String, Double> straight = takeOff(ShellBuilder.build(house));
        for (int degrees = 1; degrees < 90; degrees++) {
            House turned = with(house, turned(body, degrees));
            assertSame(straight, takeOff(ShellBuilder.build(turned)), "at " + degrees + "°");
        }
    }

    static House with(House house, Body body) {
        return new House(
                house.name(),
                house.submittal(),
                house.site(),
                house.retrofit(),
                house.materials(),
                house.assemblies(),
                body,
                house.openings(),
                house.choices(),
                house.ownPsi(),
                house.seams(),
                house.points(),
                house.corners(),
                house.limits(),
                house.prices());
    }

    private static Body.Storey without(Body.Storey s, boolean terrace) {
        return Houses.storey(
                s.name(),
                s.footprint(),
                s.height(),
                s.walls(),
                terrace ? Optional.empty() : s.terrace(),
                s.terraceIsWalkedOn(),
                terrace ? s.overhang() : Optional.empty(),
                s.floorThickness());
    }

    private static ImmutableList<String> refused(Body body) {
        return assertThrows(ShellException.class, () -> ShellBuilder.build(Houses.house(body)))
                .faults();
    }

    /** 250 mm are no difference of two walls of one build-up: the jetty has a floor, the ledge a roof. */
    @Test
    void narrowJettiesAndLedgesAreSurfaces() {
        Body.Storey jetty = Houses.storey("upper floor", Houses.rectangle(0, -0.25, 10, 8.25), 2.8, "wall");
        Shell shell = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX, jetty)));
        assertEquals(
                2.5,
                ShellBuilderTest.surface(shell, "overhang under upper floor").externalArea(),
                1e-9);
        assertEquals(10, ShellBuilderTest.length(shell, JunctionKind.WALL_UNDER_OVERHANG), 1e-9);
        assertTrue(shell.steps().isEmpty());
        Body.Storey back = Houses.storey("upper floor", Houses.rectangle(0, 0.25, 10, 7.75), 2.8, "wall");
        Shell ledge = ShellBuilder.build(Houses.house(Houses.body(Houses.flat(), BOX, back)));
        assertEquals(
                2.5,
                ShellBuilderTest.surface(ledge, "terrace over ground floor").externalArea(),
                1e-9);
        assertEquals(10, ShellBuilderTest.length(ledge, JunctionKind.WALL_TO_TERRACE), 1e-9);
    }

    @Test
    void whatLiesOpenNeedsABuildUpOfItsOwn() {
        for (double width : new double[] {0.05, 0.25, 0.45, 2}) {
            Body.Storey jetty = Houses.storey("upper floor", Houses.rectangle(0, -width, 10, 8 + width), 2.8, "wall");
            ImmutableList<String> over = refused(Houses.body(Houses.flat(), BOX, without(jetty, false)));
            assertEquals(1, over.size(), over.toString());
            assertTrue(over.get(0).contains("projects over \"ground floor\""), over.get(0));
            Body.Storey back = Houses.storey("upper floor", Houses.rectangle(0, width, 10, 8 - width), 2.8, "wall");
            ImmutableList<String> open = refused(Houses.body(Houses.flat(), without(BOX, true), back));
            assertEquals(1, open.size(), open.toString());
            assertTrue(open.get(0).contains("\"upper floor\" does not cover"), open.get(0));
        }
    }

    /** A square tower's ring of terrace is cut along the same side of it, however the house stands. */
    @Test
    void aRingIsCutAsItWas() {
        Body.Storeys body = body("wall", Houses.rectangle(2, 3, 3, 3), Body.FootprintLine.OUTER_FACE);
        ImmutableList<Double> parts = terraces(body, 0);
        assertEquals(2, parts.size());
        for (double degrees : new double[] {33, 90, 180, 217, 301}) {
            ImmutableList<Double> turned = terraces(body, degrees);
            for (int i = 0; i < 2; i++) {
                assertEquals(parts.get(i), turned.get(i), 1e-3, "at " + degrees + "°");
            }
        }
    }

    private static ImmutableList<Double> terraces(Body.Storeys body, double degrees) {
        return ShellBuilder.build(Houses.house(turned(body, degrees)))
                .surfaces()
                .select(each -> each.use() == Body.Use.TERRACE)
                .collect(Surface::externalArea)
                .toSortedList()
                .toImmutable();
    }
}
