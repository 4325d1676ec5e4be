package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.fault.ShellException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stacks beside one another and into one another, against volumes of columns worked out apart. */
class WingsTest {

    /** m, side of a column; corners lie on multiples of it. */
    private static final double COLUMN = 0.05;

    /** m³: in a column a fold of the roof of 3 m/m is off by a third of its side over its area, along some 60 m of folds. */
    private static final double FOLDS = 60 * COLUMN * COLUMN * 3.0 / 3;

    /** A wing of one storey; lengths in columns, height and level in m. */
    private record Wing(
            int x, int y, int width, int depth, double level, double height, Body.Roof.Form form, int pitch) {

        Body.Stack stack(int number) {
            Body.Storey storey = Houses.storey(
                    "storey " + number,
                    Houses.rectangle(COLUMN * x, COLUMN * y, COLUMN * width, COLUMN * depth),
                    height,
                    "wall");
            return Houses.stack("wing " + number, slab(level), Houses.roof(form, pitch, 0, false), storey);
        }

        /** m, z of its outer face over a place in its outline, as RoofForm says it in words: "wall" is 0.4 m, "roof" 0.35 m outside. */
        double top(double px, double py) {
            double tan = Math.tan(Math.toRadians(pitch));
            if (form.isLevel()) {
                return level + height + 0.35;
            }
            double south = py - COLUMN * y;
            double north = COLUMN * depth - south;
            double west = px - COLUMN * x;
            double east = COLUMN * width - west;
            double in = switch (form) {
                case MONO_PITCH -> south;
                case GABLE -> Math.min(south, north);
                case HIP -> Math.min(Math.min(south, north), Math.min(west, east));
                case FLAT, TERRACE -> throw new IllegalStateException();
            };
            return level + height + 0.35 / Math.cos(Math.toRadians(pitch)) - 0.4 * tan + in * tan;
        }

        boolean covers(double px, double py) {
            return px > COLUMN * x && px < COLUMN * (x + width) && py > COLUMN * y && py < COLUMN * (y + depth);
        }
    }

    private static Body.Base slab(double level) {
        return new Body.Base(
                Body.Base.Kind.SLAB_ON_GROUND,
                Optional.of("slab"),
                Optional.empty(),
                0,
                level,
                Optional.empty(),
                Exposure.ground());
    }

    private static Body.Storeys body(Body.Stack main, Body.Stack... wings) {
        return Houses.body(Body.FootprintLine.OUTER_FACE, main, Lists.immutable.of(wings));
    }

    /**
     * A box of 10 m by 8 m and one of 4 m by 5 m that ends at its side, walls of 0.4 m: between both lie 0.8 m by 4.2 m, where an
     * inner wall stands or none. A metre higher that is no floor of one storey, nor where two boxes meet in a corner alone.
     */
    @Test
    void theStripWhereAWingEndsAtTheHouseIsFloor() {
        double both = 9.2 * 7.2 + 3.2 * 4.2;
        assertEquals(both + 0.8 * 4.2, floorArea(new Wing(200, 40, 80, 100, 0, 3, Body.Roof.Form.FLAT, 0)), 1e-6);
        assertEquals(both + 0.8 * 4.2, floorArea(new Wing(200, 40, 80, 100, 0.15, 3, Body.Roof.Form.FLAT, 0)), 1e-6);
        assertEquals(both, floorArea(new Wing(200, 40, 80, 100, 1, 3, Body.Roof.Form.FLAT, 0)), 1e-6);
    }

    private static double floorArea(Wing wing) {
        Wing main = new Wing(0, 0, 200, 160, 0, 3, Body.Roof.Form.FLAT, 0);
        return ShellBuilder.build(Houses.house(body(main.stack(0), wing.stack(1))))
                .floorArea();
    }

    @Provide
    Arbitrary<Wing> wings() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 120),
                        Arbitraries.integers().between(0, 120),
                        Arbitraries.integers().between(60, 200),
                        Arbitraries.integers().between(60, 200),
                        Arbitraries.integers().between(-15, 15).map(each -> each / 10.0),
                        Arbitraries.integers().between(24, 60).map(each -> each / 10.0),
                        Arbitraries.of(Body.Roof.Form.class),
                        Arbitraries.integers().between(5, 55))
                .as(Wing::new);
    }

    @Property(tries = 200, seed = "2026")
    @Tag("slow")
    void allWingsTogetherAreTheirColumns(
            @ForAll("wings") Wing one,
            @ForAll("wings") Wing other,
            @ForAll("wings") Wing third,
            @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
        assertColumns(one, other, third, degrees);
    }

    /** A few of the same. */
    @Property(tries = 12, seed = "2027", edgeCases = EdgeCasesMode.NONE)
    void someWingsTogetherAreTheirColumns(
            @ForAll("wings") Wing one,
            @ForAll("wings") Wing other,
            @ForAll("wings") Wing third,
            @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
        assertColumns(one, other, third, degrees);
    }

    private static void assertColumns(Wing one, Wing other, Wing third, double degrees) {
        Body.Storeys body = body(one.stack(0), other.stack(1), third.stack(2));
        Shell shell;
        try {
            shell = ShellBuilder.build(Houses.house(AnyAngleTest.turned(body, degrees)));
        } catch (ShellException refused) {
            // What is left of a surface between the thicknesses beside it may be nothing; that is told.
            assertTrue(refused.found().allSatisfy(fault -> fault.message().contains("nothing")), refused.getMessage());
            return;
        }
        assertEquals(Lists.immutable.empty(), shell.openEdges());
        assertEquals(0, Vectors.length(shell.areaVectorSum()));
        assertEquals(volume(Lists.immutable.of(one, other, third)), shell.externalVolume(), FOLDS);
        assertTrue(shell.edges().allSatisfy(e -> e.externalLength() > 0));
    }

    private static double volume(ImmutableList<Wing> wings) {
        ImmutableList<Wing> sorted = wings.toSortedListBy(Wing::level).toImmutable();
        double sum = 0;
        for (int i = 0; i < 320; i++) {
            for (int j = 0; j < 320; j++) {
                double x = COLUMN * (i + 0.5);
                double y = COLUMN * (j + 0.5);
                double reached = Double.NEGATIVE_INFINITY;
                for (Wing wing : sorted) {
                    if (wing.covers(x, y)) {
                        double bottom = Math.max(reached, wing.level() - 0.5);
                        double top = wing.top(x, y);
                        sum += Math.max(0, top - bottom) * COLUMN * COLUMN;
                        reached = Math.max(reached, top);
                    }
                }
            }
        }
        return sum;
    }

    @Test
    void aWingThatTouchesNothingIsRefused() {
        Wing main = new Wing(0, 0, 100, 100, 0, 3, Body.Roof.Form.FLAT, 0);
        for (Wing apart : Lists.immutable.of(
                new Wing(101, 0, 100, 100, 0, 3, Body.Roof.Form.FLAT, 0),
                new Wing(100, 0, 100, 100, 5, 3, Body.Roof.Form.FLAT, 0),
                new Wing(100, 100, 100, 100, 0, 3, Body.Roof.Form.FLAT, 0))) {
            ShellException refused = assertThrows(
                    ShellException.class, () -> ShellBuilder.build(Houses.house(body(main.stack(0), apart.stack(1)))));
            assertTrue(refused.getMessage().contains("Wing \"wing 1\": it touches nothing"), refused.getMessage());
        }
    }

    /** A wing whose slab lies on the roof, 3.35 m high, is a storey of the house; a millimetre over it, it touches nothing. */
    @Test
    void aWingMayStandOnARoof() {
        Wing main = new Wing(0, 0, 200, 160, 0, 3, Body.Roof.Form.FLAT, 0);
        Wing on = new Wing(0, 40, 80, 60, 3.85, 2.5, Body.Roof.Form.FLAT, 0);
        Shell shell = ShellBuilder.build(Houses.house(body(main.stack(0), on.stack(1))));
        assertEquals(Lists.immutable.empty(), shell.openEdges());
        assertEquals(80 * 3.85 + 12 * (0.5 + 2.5 + 0.35), shell.externalVolume(), 1e-6);
        assertEquals(80, shell.surfaces().select(s -> s.normal().z() < -0.9).sumOfDouble(Surface::externalArea), 1e-6);
        assertEquals(80, shell.surfaces().select(s -> s.normal().z() > 0.9).sumOfDouble(Surface::externalArea), 1e-6);
        Wing over = new Wing(0, 40, 80, 60, 3.851, 2.5, Body.Roof.Form.FLAT, 0);
        ShellException refused = assertThrows(
                ShellException.class, () -> ShellBuilder.build(Houses.house(body(main.stack(0), over.stack(1)))));
        assertTrue(refused.getMessage().contains("Wing \"wing 1\": it touches nothing"), refused.getMessage());
    }

    /** A wing on a slab whose far end is a thicker floor over a crawl space, beside a house on a slab. */
    @Test
    void aWingStandsOnPartsToo() {
        Wing main = new Wing(0, 0, 200, 160, 0, 3, Body.Roof.Form.FLAT, 0);
        Body.Stack plain = new Wing(200, 0, 120, 80, 0, 3, Body.Roof.Form.FLAT, 0).stack(1);
        Body.Base crawl = new Body.Base(
                Body.Base.Kind.SUSPENDED,
                Optional.of("thick"),
                Optional.empty(),
                0,
                0,
                Houses.base(Body.Base.Kind.SUSPENDED, 0, Exposure.ground()).crawlSpace(),
                new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1));
        for (double degrees : new double[] {0, 17}) {
            Shell shell = ShellBuilder.build(
                    Houses.house(AnyAngleTest.turned(body(main.stack(0), on(plain, 13, crawl)), degrees)));
            assertEquals(Lists.immutable.empty(), shell.openEdges());
            assertEquals((80 + 24) * 3.85 + 3 * 4 * 0.4, shell.externalVolume(), 0.01);
            Surface over = shell.surfaces().detect(s -> s.exposure().kind() == Exposure.Kind.CRAWL_SPACE);
            assertEquals("thick", over.assembly().orElseThrow().name());
            assertEquals(12, over.externalArea(), 0.01);
            assertEquals(
                    3 + 4 + 3, ShellBuilderTest.length(shell, coldseam.envelope.JunctionKind.CRAWL_SPACE_EDGE), 0.01);
        }
        // So does a house of one storey.
        Body.Stack alone = on(plain, 13, crawl);
        Shell shell = ShellBuilder.build(Houses.house(Houses.storeys(
                Body.FootprintLine.OUTER_FACE,
                alone.storeys(),
                alone.base(),
                alone.roof(),
                alone.otherBases(),
                Lists.immutable.empty())));
        assertEquals(24 * 3.85 + 3 * 4 * 0.4, shell.externalVolume(), 0.01);
        ShellException refused = assertThrows(
                ShellException.class,
                () -> ShellBuilder.build(Houses.house(body(main.stack(0), on(plain, 30, crawl)))));
        assertTrue(
                refused.getMessage().contains("Other base 1 of \"wing 1\": nothing of the house stands on it"),
                refused.getMessage());
    }

    private static Body.Stack on(Body.Stack stack, double from, Body.Base base) {
        return new Body.Stack(
                stack.name(),
                stack.storeys(),
                stack.base(),
                stack.roof(),
                Lists.immutable.of(new Body.AreaBase(Houses.rectangle(from, 0, 10, 4), base)),
                stack.ground());
    }

    /** A court that wings close: no storey has it in its outline. */
    @Test
    void wingsCloseACourt() {
        Wing south = new Wing(0, 0, 200, 60, 0, 3, Body.Roof.Form.FLAT, 0);
        Wing north = new Wing(0, 140, 200, 60, 0, 3, Body.Roof.Form.FLAT, 0);
        Wing west = new Wing(0, 60, 60, 80, 0, 3, Body.Roof.Form.FLAT, 0);
        Wing east = new Wing(140, 60, 60, 80, 0, 3, Body.Roof.Form.FLAT, 0);
        for (double degrees : new double[] {0, 17, 33.3}) {
            Shell shell = ShellBuilder.build(Houses.house(
                    AnyAngleTest.turned(body(south.stack(0), north.stack(1), west.stack(2), east.stack(3)), degrees)));
            assertEquals(Lists.immutable.empty(), shell.openEdges());
            assertEquals((100 - 16) * 3.85, shell.externalVolume(), 0.01);
            assertEquals(84, shell.groundFloorArea(), 0.01);
            assertEquals(40 + 16, shell.exposedPerimeter(), 0.01);
            assertEquals(
                    4 * 3.85,
                    shell.edges()
                            .select(e -> e.kind() == coldseam.envelope.JunctionKind.INSIDE_CORNER)
                            .sumOfDouble(Edge::externalLength),
                    0.01);
        }
    }

    /** A wing under a gable roof whose slopes rise through the terrace that a storey leaves, and the wall behind it. */
    @Test
    void aWingsRoofRisesThroughATerrace() {
        Wing wing = new Wing(60, -60, 80, 110, 0, 2.4, Body.Roof.Form.MONO_PITCH, 30);
        Body.Storeys main = Houses.body(
                Houses.flat(),
                Houses.storey("ground", Houses.rectangle(0, 0, 10, 8), 3, "wall"),
                Houses.storey("upper", Houses.rectangle(0, 3, 10, 5), 2.8, "wall"));
        Body.Storeys body = Houses.body(
                main.line(),
                new Body.Stack(
                        "",
                        main.main().storeys(),
                        main.main().base(),
                        main.main().roof(),
                        Lists.immutable.empty(),
                        Lists.immutable.empty()),
                Lists.immutable.of(wing.stack(1)));
        double sum = 0;
        for (int i = 0; i < 200; i++) {
            for (int j = -60; j < 160; j++) {
                double x = COLUMN * (i + 0.5);
                double y = COLUMN * (j + 0.5);
                double own = y < 0 ? -0.5 : y < 3 ? 3.05 : 3 + 2.8 + 0.35;
                double top = wing.covers(x, y) ? Math.max(own, wing.top(x, y)) : own;
                sum += (top + 0.5) * COLUMN * COLUMN;
            }
        }
        for (double degrees : new double[] {0, 23}) {
            Shell shell = ShellBuilder.build(Houses.house(AnyAngleTest.turned(body, degrees)));
            assertEquals(Lists.immutable.empty(), shell.openEdges());
            assertEquals(0, Vectors.length(shell.areaVectorSum()));
            assertEquals(sum, shell.externalVolume(), FOLDS);
        }
    }

    /** Walls of 0.4 m and of 0.3 m stand in one plane: the rooms are as wide as each leaves them, wherever the house stands. */
    @Test
    void theRoomsOfWallsOfTwoThicknessesInOnePlane() {
        Body.Stack thick = new Wing(0, 0, 120, 100, 0, 3, Body.Roof.Form.FLAT, 0).stack(0);
        Body.Stack thin = thin(new Wing(120, 0, 80, 100, 0, 3, Body.Roof.Form.FLAT, 0).stack(1));
        for (double east : new double[] {0, 300}) {
            Shell shell = ShellBuilder.build(Houses.house(AnyAngleTest.moved(
                    body(thick, thin), p -> new coldseam.envelope.Point2(p.x() + east, p.y() - 2 * east))));
            assertEquals(50 * 3.85, shell.externalVolume(), 1e-6);
            assertEquals((5.6 * 4.2 + 3.7 * 4.4) * 2.9, shell.internalVolume(), 1e-6, east + " m east");
        }
    }

    private static Body.Stack thin(Body.Stack plain) {
        Body.Storey storey = plain.storeys().getOnly();
        return new Body.Stack(
                plain.name(),
                Lists.immutable.of(Houses.storey("thin", storey.footprint(), storey.height(), "thin")),
                plain.base(),
                plain.roof(),
                plain.otherBases(),
                plain.ground());
    }

    /** A tower of other walls begins 2 m up a house's wall: below its floor's underside their common plane is the house's, over it its own. */
    @Test
    void unlikeWallsInOnePlaneAreNotOne() {
        Body.Stack low = new Wing(0, 0, 160, 120, 0, 3, Body.Roof.Form.FLAT, 0).stack(0);
        Body.Stack tower = thin(new Wing(40, 0, 80, 80, 2, 4, Body.Roof.Form.FLAT, 0).stack(1));
        Shell shell = ShellBuilder.build(Houses.house(body(low, tower)));
        assertEquals(4 * 3.85 + 4 * 2, south(shell, "wall"), 1e-6);
        assertEquals(4 * (6.35 - 1.5), south(shell, "thin"), 1e-6);
    }

    private static double south(Shell shell, String assembly) {
        return shell.surfaces()
                .select(each -> each.isBuiltAs(assembly) && each.normal().y() < -0.9 && each.use() == Body.Use.WALL)
                .collectDouble(Surface::externalArea)
                .sum();
    }

    /** Whichever stack comes first, they are the same house. */
    @ParameterizedTest
    @ValueSource(strings = {"towers", "pitches", "lean-to", "split-level", "two-wings"})
    void theOrderOfStacksDoesNotMatter(String name) {
        House house = Shapes.house(name);
        Body.Storeys body = (Body.Storeys) house.body();
        MutableList<Body.Stack> stacks = body.stacks().toList();
        Map<String, Double> expected = withoutSplits(Shapes.SHELLS.get(name));
        for (int i = 1; i < stacks.size(); i++) {
            stacks.add(stacks.remove(0));
            Body.Stack main = stacks.getFirst();
            MutableList<Body.Stack> wings = stacks.drop(1)
                    .collectWithIndex((wing, w) -> new Body.Stack(
                            "stack " + w, wing.storeys(), wing.base(), wing.roof(), wing.otherBases(), wing.ground()));
            Shell other =
                    ShellBuilder.build(AnyAngleTest.with(house, Houses.body(body.line(), main, wings.toImmutable())));
            AnyAngleTest.assertSame(expected, withoutSplits(other), 1e-3, name + ", " + i);
        }
    }

    /** Where stacks coincide either may have a surface or a junction's end: sums by what is built, and no numbers. */
    private static Map<String, Double> withoutSplits(Shell shell) {
        Map<String, Double> sums = new TreeMap<>();
        AnyAngleTest.takeOff(shell).forEach((what, value) -> {
            if (!what.endsWith("number") && !what.contains(" of ")) {
                sums.put(what, value);
            }
        });
        shell.surfaces()
                .forEach(s ->
                        sums.merge(s.use() + ", " + s.assembly().orElseThrow().name(), s.externalArea(), Double::sum));
        return sums;
    }
}
