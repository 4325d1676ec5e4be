package coldseam.envelope.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point2;
import coldseam.envelope.file.house.HouseFiles;
import coldseam.envelope.shell.fault.ShellException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A wing of one storey on a slab along the wall of an old house over a crawl space, whose floor lies 0.5 m up, drawn to the
 * structure's outer face: "wall" has 0.3 m outside of that, "thin" 0.2 m, "thick" 0.8 m.
 */
class WingAlongTheHouseTest {

    private static final double UP = 0.5;
    private static final double HOUSE = 0.3;

    /** m³, by which snapping may move what some ten faces of 30 m² enclose. */
    private static final double NODES = 0.05;

    private static Shell shell(double x, double width, String wall, String floor, double level, double height) {
        return shell(overCrawlSpace(Houses.rectangle(0, 0, 8, 6)), kitchen(x, width, wall, floor, level, height));
    }

    private static Body.Stack overCrawlSpace(ImmutableList<Point2> plan) {
        return Houses.stack(
                "",
                Houses.base(Body.Base.Kind.SUSPENDED, 0, new Exposure(Exposure.Kind.CRAWL_SPACE, "", 1, "")),
                Houses.flat(),
                Houses.storey("ground floor", plan, 3, "wall"),
                Houses.storey("upper floor", plan, 2.8, "wall"));
    }

    private static Body.Stack kitchen(double x, double width, String wall, String floor, double level, double height) {
        return Houses.stack(
                "kitchen",
                slab(floor, level),
                Houses.roof(Body.Roof.Form.TERRACE, 0, 0, false),
                Houses.storey("kitchen", Houses.rectangle(x, 6, width, 3), height, wall));
    }

    /** A slab on the ground, its top at a level in m. */
    private static Body.Base slab(String floor, double level) {
        return new Body.Base(
                Body.Base.Kind.SLAB_ON_GROUND,
                Optional.of(floor),
                Optional.empty(),
                0,
                level,
                Optional.empty(),
                Exposure.ground());
    }

    private static double volume(double width, double out, double thickness, double height) {
        double house = (8 + 2 * HOUSE) * (6 + 2 * HOUSE) * (0.5 + 3 + 2.8 + 0.35);
        // From the house's outer face on.
        return house + (width + 2 * out) * (3 - HOUSE + out) * (thickness + height + 0.35);
    }

    private static ImmutableList<Edge> edges(Shell shell, JunctionKind kind) {
        return shell.edges().select(edge -> edge.kind().equals(kind));
    }

    /** One floor indoors on two of unequal thickness: the seam under it, and no wall between. */
    @ParameterizedTest
    @CsvSource({
        "2, wall, 0.3",
        "2, thin, 0.2",
        "2, thick, 0.8",
        "0, wall, 0.3",
        "0, wall again, 0.3",
        "0, thin, 0.2",
        "0, thick, 0.8"
    })
    void oneFloorOnTwoBuildUps(double x, String wall, double out) {
        Shell shell = shell(x, 4, wall, "deck", UP, 2.5);
        assertEquals(volume(4, out, 0.35, 2.5), shell.externalVolume(), NODES);
        assertEquals(
                Lists.immutable.of("kitchen wall 1", "kitchen wall 2", "kitchen wall 3"),
                shell.surfaces().collect(Surface::name).select(name -> name.startsWith("kitchen")));
        ImmutableList<Edge> floors = edges(shell, JunctionKind.FLOOR_CHANGE);
        assertEquals(1, floors.size());
        // Where the walls jog, the seam ends at the one or the other.
        double jog = x == 0 ? Math.abs(out - HOUSE) : 0;
        assertEquals(4 + 2 * out, floors.getOnly().externalLength(), jog + 0.01);
        // Flush with the house's side a wall of another thickness is a change of wall, not two corners side by side;
        // one of the same
        // layers under another name is none.
        assertEquals(
                x == 0 && out != HOUSE ? 1 : 0,
                edges(shell, JunctionKind.WALL_THICKNESS_CHANGE).size());
        assertEquals(x == 0 ? 1 : 2, edges(shell, JunctionKind.INSIDE_CORNER).size());
    }

    /** Lower than the house's floor it has a wall under that, over its whole width. */
    @ParameterizedTest
    @CsvSource({"2, wall, 0.3, 0", "2, thin, 0.2, 0.1", "2, thick, 0.8, 0", "0, wall, 0.3, 0.3", "2, thin, 0.2, 0.4"})
    void lowerThanTheHouse(double x, String wall, double out, double level) {
        Shell shell = shell(x, 4, wall, "slab", level, 2.5);
        assertEquals(volume(4, out, 0.5, 2.5), shell.externalVolume(), NODES);
        Surface under =
                shell.surfaces().detect(surface -> surface.name().equals("kitchen wall 0, under the floor beside it"));
        assertEquals(Exposure.Kind.CRAWL_SPACE, under.exposure().kind());
        assertEquals((4 + 2 * out) * (UP - level), under.externalArea(), 0.01);
        assertTrue(edges(shell, JunctionKind.FLOOR_CHANGE).isEmpty());
        assertEquals(
                270, edges(shell, JunctionKind.WALL_UNDER_OVERHANG).getOnly().angle());
        assertTrue(edges(shell, JunctionKind.CRAWL_SPACE_EDGE).allSatisfy(edge -> edge.angle() == 90));
    }

    /** A corner that the house's footprint has in a straight side makes no other house of it. */
    @ParameterizedTest
    @CsvSource({"2, 0.1", "0, 0.1", "2, 0.5"})
    void whereverTheHousesWallHasACorner(double x, double level) {
        Body.Stack kitchen = kitchen(x, 4, "wall", "slab", level, 2.5);
        Shell plain = shell(overCrawlSpace(Houses.rectangle(0, 0, 8, 6)), kitchen);
        Shell cornered = shell(overCrawlSpace(Houses.points(0, 0, 8, 0, 8, 6, 3, 6, 0, 6)), kitchen);
        assertEquals(plain.externalVolume(), cornered.externalVolume(), NODES);
        assertEquals(lengths(plain), lengths(cornered));
        assertEquals(plain.floorArea(), cornered.floorArea(), 0.001);
    }

    /** Where its slab runs on under the house's floor, only that stretch of its walls is between two floors. */
    @Test
    void exposedAllRoundTheOutside() {
        Body.Stack flat = kitchen(2, 4, "wall", "slab", 0.1, 2.5);
        Body.Stack kitchen = new Body.Stack(
                flat.name(),
                flat.storeys(),
                flat.base(),
                Houses.roof(Body.Roof.Form.GABLE, 30, 1, false),
                Lists.immutable.empty(),
                Lists.immutable.empty());
        Shell shell = shell(overCrawlSpace(Houses.rectangle(0, 0, 8, 6)), kitchen);
        double house = 2 * (8 + 2 * HOUSE + 6 + 2 * HOUSE);
        // From the house's outer face to the wing's.
        assertEquals(house + 2 * 3, shell.exposedPerimeter(), 0.01);
    }

    /** A tall room of the wing that reaches into the house is on its ground floor, and takes none of the floor over that. */
    @Test
    void aTallRoomTakesNothingOfTheFloorOverIt() {
        Shell shell = shell(
                storeys("", Houses.rectangle(0, 0, 8, 6), Houses.flat(), 2.6, 2),
                storeys("wing", Houses.rectangle(2, 3, 4, 7), Houses.flat(), 3.7));
        double storey = (8 - 2 * Houses.INSIDE) * (6 - 2 * Houses.INSIDE);
        double beyond = (4 - 2 * Houses.INSIDE) * 4;
        assertEquals(2 * storey + beyond, shell.floorArea(), 0.001);
    }

    /** A floor that lies higher indoors and reaches lower outdoors has no wall between, either. */
    @Test
    void higherIndoorsAndLowerOutdoors() {
        Shell shell = shell(2, 4, "wall", "thick", UP + 0.15, 2.2);
        assertEquals(volume(4, 0.3, 0.9, 2.2), shell.externalVolume(), NODES);
        assertEquals(1, edges(shell, JunctionKind.FLOOR_CHANGE).size());
    }

    /** Beside a cellar of thinner walls a slab begins at the cellar's wall, which its edge stands against, and has none of its own. */
    @Test
    void besideACellarOfThinnerWalls() {
        Body.Stack house = Houses.stack(
                "",
                Houses.base(Body.Base.Kind.HEATED_CELLAR, 2, Exposure.ground()),
                Houses.flat(),
                Houses.storey("cellar", Houses.rectangle(0, 0, 8, 6), 2.5, "thin"),
                Houses.storey("ground floor", Houses.rectangle(0, 0, 8, 6), 3, "wall"),
                Houses.storey("upper floor", Houses.rectangle(0, 0, 8, 6), 2.8, "wall"));
        Shell shell = ShellBuilder.build(Houses.house(Houses.body(
                Body.FootprintLine.STRUCTURE,
                house,
                Lists.immutable.of(kitchen(2, 4, "wall", "slab", UP + 0.05, 2.5)))));
        assertEquals(
                Lists.immutable.of("kitchen wall 1", "kitchen wall 2", "kitchen wall 3"),
                shell.surfaces().collect(Surface::name).select(name -> name.startsWith("kitchen")));
        double cellar = (8 + 2 * 0.2) * (6 + 2 * 0.2) * 2.5;
        double above = (8 + 2 * HOUSE) * (6 + 2 * HOUSE) * (3 + 2.8 + 0.35);
        // The slab reaches 0.1 m under the ground floor's wall.
        double wing = (4 + 2 * 0.3) * 3 * (0.5 + 2.5 + 0.35) + (4 + 2 * 0.3) * 0.1 * 0.5;
        double base = (8 + 2 * 0.2) * (6 + 2 * 0.2) * 0.5;
        assertEquals(base + cellar + above + wing, shell.externalVolume(), NODES);
    }

    /** Wider than the house, its side is a wall where it stands free, and so is what of that runs into the house's wall. */
    @Test
    void widerThanTheHouse() {
        for (double level : new double[] {0, UP}) {
            Shell shell = shell(-1, 6, "wall", "deck", level, 2.5);
            double back = 0.3 + HOUSE;
            double free = 1 * back * (0.35 + 2.5 + 0.35);
            // The house's floor ends at 0 m.
            double under = (6 + 2 * 0.3 - 1) * back * Math.max(0, 0.35 - level);
            assertEquals(volume(6, 0.3, 0.35, 2.5) + free + under, shell.externalVolume(), NODES);
            assertEquals(
                    1 * (0.35 + 2.5 + 0.35),
                    shell.surfaces()
                            .detect(surface -> surface.name().equals("kitchen wall 0"))
                            .externalArea(),
                    0.01);
        }
    }

    /** Its slab is refused, by its own name, where nothing could bear it. */
    @Test
    void aSlabInTheAirIsRefusedAsTheWings() {
        String fault = assertThrows(ShellException.class, () -> shell(2, 4, "wall", "slab", 2, 2.5))
                .faults()
                .getOnly();
        assertTrue(
                fault.startsWith(
                        "Floor \"lowest floor of kitchen\": it lies on the ground, but its underside is at 1.500 m"),
                fault);
    }

    /** One front over a house on a cellar and a taller wing that reaches into it: the wing's wall over the cellar is the cellar's. */
    @Test
    void tallerInOneFrontWithTheCellar() {
        Body.Stack house = Houses.stack(
                "",
                Houses.base(Body.Base.Kind.HEATED_CELLAR, 1.3, Exposure.ground()),
                Houses.flat(),
                Houses.storey("house", Houses.rectangle(0, 0, 8, 6), 3, "wall"));
        Body.Stack wing = Houses.stack(
                "wing",
                Houses.slab(),
                Houses.flat(),
                Houses.storey("wing", Houses.rectangle(5, 0, 6, 6), 3, "wall"),
                Houses.storey("wing above", Houses.rectangle(5, 0, 6, 6), 3, "wall"));
        Shell shell = ShellBuilder.build(
                Houses.house(Houses.body(Body.FootprintLine.OUTER_FACE, house, Lists.immutable.of(wing))));
        // From the cellar's underside at -1.8 m to the ground, as wide as the house.
        assertEquals(
                8 * 1.8,
                shell.surfaces()
                        .select(surface -> surface.side() == Side.SOUTH && surface.faces(Exposure.Kind.GROUND))
                        .sumOfDouble(Surface::externalArea),
                0.01);
    }

    /** Over the house's roof a taller wing has a wall of its own, as thick as it is. */
    @Test
    void tallerThanTheHouse() {
        Shell shell = shell(2, 4, "wall", "slab", UP, 6.5);
        double over = 6.5 - 5.8;
        double back = 0.3 + HOUSE;
        assertEquals(volume(4, 0.3, 0.5, 6.5) + (4 + 2 * 0.3) * back * over, shell.externalVolume(), NODES);
    }

    /** A cellar's wall under the floor beside it is one, though a roof's area cuts the plan where the side's given end lies. */
    @Test
    void aCellarsWallUnderTheFloorBesideItIsOne(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, """
                house: Part cellar
                site: {indoor-temperature: 20 °C, outdoor-temperature: -10 °C}
                assemblies:
                  wall:
                    layers:
                    - {material: old solid brick, thickness: 300 mm, role: structure}
                    - {material: extruded polystyrene board, thickness: 180 mm, role: insulation}
                  slab:
                    layers:
                    - {material: concrete, thickness: 120 mm, role: structure}
                    - {material: extruded polystyrene board, thickness: 100 mm, role: insulation}
                body:
                  footprint-line: structure
                  storeys:
                  - {name: cellar, footprint: {rectangle: [10 m, 6 m], at: [0 m, 3 m]}, height: 2.4 m, walls: wall}
                  - name: ground
                    footprint: {rectangle: [10 m, 9 m]}
                    height: 2.8 m
                    floor-thickness: 250 mm
                    walls: wall
                    terrace: slab
                    lower-roof: {assembly: slab, area: {rectangle: [5 m, 3 m], at: [5 m, 0 m]}}
                    base: {kind: slab on ground, assembly: slab}
                  - {name: upper, footprint: {rectangle: [10 m, 6 m], at: [0 m, 3 m]}, height: 2.6 m, floor-thickness: 250 mm, walls: wall}
                  base: {kind: heated cellar, assembly: slab, depth: 2 m}
                  roof: {form: flat, assembly: slab}
                """);
        Shell shell = HouseFiles.read(file).shell();
        Surface under = shell.surfaces()
                .detect(surface -> surface.name().equals("cellar south wall, under the floor beside it"));
        // From the cellar floor's underside at -2.22 m to the slab's at 0.18 m.
        assertEquals(10.36 * 2.4, under.externalArea(), 0.01);
        assertTrue(shell.surfaces().noneSatisfy(surface -> surface.name().equals("cellar south wall")));
    }

    private static Body.Stack storeys(String name, ImmutableList<Point2> plan, Body.Roof roof, double... heights) {
        MutableList<Body.Storey> storeys = Lists.mutable.empty();
        for (double height : heights) {
            storeys.add(bare(Houses.storey(name + (storeys.size() + 1), plan, height, "wall")));
        }
        return new Body.Stack(
                name, storeys.toImmutable(), Houses.slab(), roof, Lists.immutable.empty(), Lists.immutable.empty());
    }

    /** The same storey with nothing for what lies open over it or hangs over below it. */
    private static Body.Storey bare(Body.Storey s) {
        return Houses.storey(
                s.name(),
                s.footprint(),
                s.height(),
                s.walls(),
                Optional.empty(),
                false,
                Optional.empty(),
                s.floorThickness());
    }

    private static Shell shell(Body.Stack house, Body.Stack... wings) {
        return ShellBuilder.build(
                Houses.house(Houses.body(Body.FootprintLine.STRUCTURE, house, Lists.immutable.of(wings))));
    }

    private static Body.Stack named(String name, Body.Stack stack) {
        return new Body.Stack(name, stack.storeys(), stack.base(), stack.roof(), stack.otherBases(), stack.ground());
    }

    private static double area(Shell shell) {
        return shell.surfaces().sumOfDouble(Surface::externalArea);
    }

    /** m of each kind of junction, to a millimetre. */
    private static ImmutableMap<String, Long> lengths(Shell shell) {
        return shell.edges()
                .aggregateBy(edge -> edge.kind().toString(), () -> 0.0, (sum, edge) -> sum + edge.externalLength())
                .collectValues((kind, sum) -> Math.round(sum * 1000))
                .toImmutable();
    }

    /** As tall as the house under one flat roof it is what both footprints in one are. */
    @Test
    void ofAsManyStoreysAsTheHouse() {
        Shell inOne = shell(storeys("", Houses.points(0, 0, 8, 0, 8, 6, 4, 6, 4, 10, 0, 10), Houses.flat(), 2.8, 2.6));
        Shell apart = shell(
                storeys("", Houses.rectangle(0, 0, 8, 6), Houses.flat(), 2.8, 2.6),
                storeys("wing", Houses.rectangle(0, 6, 4, 4), Houses.flat(), 2.8, 2.6));
        assertEquals(inOne.externalVolume(), apart.externalVolume(), NODES);
        assertEquals(area(inOne), area(apart), NODES);
        assertEquals(lengths(inOne), lengths(apart));
    }

    /** It stands in one plane from storey to storey, and it does not matter which of the two is called the wing. */
    @ParameterizedTest
    @CsvSource({"FLAT, FLAT, 0", "FLAT, FLAT, 2", "GABLE, GABLE, 2", "GABLE, FLAT, 0", "FLAT, GABLE, 2"})
    void ofMoreStoreysThanTheHouse(Body.Roof.Form over, Body.Roof.Form beside, double x) {
        Body.Stack low = storeys("", Houses.rectangle(0, 0, 8, 6), Houses.roof(over, 40, 0, false), 2.8);
        Body.Stack high = storeys("wing", Houses.rectangle(x, 6, 4, 4), Houses.roof(beside, 40, 1, false), 2.8, 2.6);
        Shell one = shell(low, high);
        Shell other = shell(named("", high), named("wing", low));
        assertEquals(other.externalVolume(), one.externalVolume(), NODES);
        assertEquals(area(other), area(one), NODES);
        assertEquals(lengths(other), lengths(one));
    }

    /** What hangs over in the rooms of the house needs no floor of its own. */
    @Test
    void anUpperStoreyThatReachesIntoTheHouse() {
        Body.Stack house = storeys("", Houses.rectangle(0, 0, 8, 6), Houses.flat(), 2.8, 2.6);
        Body.Stack wing = Houses.stack(
                "wing",
                Houses.slab(),
                Houses.flat(),
                bare(Houses.storey("low", Houses.rectangle(2, 6, 4, 4), 2.8, "wall")),
                bare(Houses.storey("high", Houses.rectangle(2, 3, 4, 7), 2.6, "wall")));
        Shell plain = shell(house, storeys("wing", Houses.rectangle(2, 6, 4, 4), Houses.flat(), 2.8, 2.6));
        assertEquals(plain.externalVolume(), shell(house, wing).externalVolume(), NODES);
    }

    /** Its side is one wall up to where it ends in the house's, whatever parts the plan there. */
    @ParameterizedTest
    @CsvSource({"30", "40", "45"})
    void lowerThanTheHouseUnderAGable(double pitch) {
        Body.Stack house = storeys("", Houses.rectangle(0, 0, 8, 6), Houses.flat(), 2.8, 2.6);
        Body.Stack raised = new Body.Stack(
                "", house.storeys(), slab("slab", 0.3), house.roof(), Lists.immutable.empty(), Lists.immutable.empty());
        Shell shell = shell(
                raised,
                storeys("wing", Houses.rectangle(2, 6, 4, 5), Houses.roof(Body.Roof.Form.GABLE, pitch, 0, false), 2.6));
        assertEquals(
                Lists.immutable.of("wing1 wall 0, under the floor beside it"),
                shell.surfaces().collect(Surface::name).select(name -> name.contains("under the floor")));
    }

    /** Both on cellars of thinner walls: what of the wing's cellar lies under the house's upper wall is indoors. */
    @Test
    void bothOnCellarsOfThinnerWalls() {
        Body.Stack house = onCellar("", Houses.rectangle(0, 0, 8, 6), "wall", Houses.flat());
        Body.Stack wing = onCellar("wing", Houses.rectangle(2, 6, 3, 3), "wall", Houses.flat());
        Shell one = shell(house, wing);
        Shell other = shell(named("", wing), named("wing", house));
        assertEquals(other.externalVolume(), one.externalVolume(), NODES);
        assertEquals(lengths(other), lengths(one));
    }

    /** Flush with a house under a gable, all on cellars of thinner walls: walls change where they do, and at no other corner. */
    @ParameterizedTest
    @CsvSource({"wall, 0", "thin, 1", "thick, 1"})
    void flushOnCellarsUnderAGable(String wall, int changes) {
        Shell shell = shell(
                onCellar("", Houses.rectangle(0, 0, 8, 6), "wall", Houses.roof(Body.Roof.Form.GABLE, 40, 1, false)),
                onCellar("wing", Houses.rectangle(4, 6, 4, 5), wall, Houses.flat()));
        ImmutableList<Edge> found = edges(shell, JunctionKind.WALL_THICKNESS_CHANGE);
        assertEquals(changes, found.size(), () -> found.collect(Edge::name).makeString("\n"));
        assertTrue(found.allSatisfy(edge -> edge.second().isPresent()));
    }

    private static Body.Stack onCellar(String name, ImmutableList<Point2> plan, String wall, Body.Roof roof) {
        return Houses.stack(
                name,
                Houses.base(Body.Base.Kind.HEATED_CELLAR, 2.5, Exposure.ground()),
                roof,
                bare(Houses.storey(name + " cellar", plan, 2.5, "thin")),
                bare(Houses.storey(name + " floor", plan, 2.5, wall)));
    }

    private static Body.Stack inGround(Body.Stack stack, Double... heights) {
        return new Body.Stack(
                stack.name(),
                stack.storeys(),
                stack.base(),
                stack.roof(),
                stack.otherBases(),
                Lists.immutable.of(heights));
    }

    /** Where the house's walls and the wing's meet, the ground has one height, whichever says it. */
    @Test
    void twoHeightsOfTheGroundInOnePlaceAreRefused() {
        Body.Stack house = onCellar("", Houses.rectangle(0, 0, 8, 6), "wall", Houses.flat());
        Body.Stack wing = onCellar("wing", Houses.rectangle(2, 6, 3, 3), "wall", Houses.flat());
        Body.Stack slope = inGround(house, -0.5, -0.5, -1.3, -0.5);
        ImmutableList<String> faults =
                assertThrows(ShellException.class, () -> shell(slope, wing)).faults();
        assertEquals(2, faults.size(), faults::toString);
        assertTrue(
                faults.anySatisfy(
                        fault -> fault.startsWith(
                                "Ground: where the main house and wing \"wing\" meet, at [1.800 m,"
                                        + " 6.200 m], it lies at -0.690 m by the one and at 0.000 m by the other; allowed: at most 0.")),
                faults::toString);
        assertEquals(
                2,
                assertThrows(ShellException.class, () -> shell(named("", wing), named("wing", slope)))
                        .faults()
                        .size());
    }

    /** Each moved out with its walls the two differ by what the ground falls in those. */
    @Test
    void groundThatFallsPastTheCornersOfTheWing() {
        Body.Stack house =
                inGround(onCellar("", Houses.rectangle(0, 0, 8, 6), "wall", Houses.flat()), -0.5, -0.5, -1.3, -0.5);
        Body.Stack wing =
                inGround(onCellar("wing", Houses.rectangle(2, 6, 3, 3), "wall", Houses.flat()), -0.7, -1.0, -1.0, -0.7);
        assertEquals(lengths(shell(named("", wing), named("wing", house))), lengths(shell(house, wing)));
    }

    /** Of two heights that differ by no more than they are given to, the ground has the lower, in whatever order. */
    @ParameterizedTest
    @CsvSource({"-0.705, -0.995", "-0.695, -1.005"})
    void groundToACentimetre(double west, double east) {
        Body.Stack house =
                inGround(onCellar("", Houses.rectangle(0, 0, 8, 6), "wall", Houses.flat()), -0.5, -0.5, -1.3, -0.5);
        Body.Stack wing =
                inGround(onCellar("wing", Houses.rectangle(2, 6, 3, 3), "wall", Houses.flat()), west, east, -1.0, -0.7);
        double one = below(atOuterFaces(house, wing));
        assertEquals(one, below(atOuterFaces(named("", wing), named("wing", house))), 1e-4);
        double exact =
                below(atOuterFaces(house, inGround(wing, Math.min(west, -0.7), Math.min(east, -1.0), -1.0, -0.7)));
        assertTrue(one <= exact, one + " of " + exact);
    }

    private static Shell atOuterFaces(Body.Stack house, Body.Stack wing) {
        return ShellBuilder.build(
                Houses.house(Houses.body(Body.FootprintLine.OUTER_FACE, house, Lists.immutable.of(wing))));
    }

    /** m² outside of what faces the ground upright. */
    private static double below(Shell shell) {
        return shell.surfaces()
                .select(surface ->
                        surface.use() == Body.Use.WALL && surface.exposure().kind() == Exposure.Kind.GROUND)
                .sumOfDouble(Surface::externalArea);
    }

    /** What stands on the house stands in no ground, and needs no heights of it. */
    @Test
    void aRoomOnTheHouseSaysNothingOfTheGround() {
        Body.Stack house =
                inGround(onCellar("", Houses.rectangle(0, 0, 8, 6), "thin", Houses.flat()), -0.5, -0.5, -1.3, -0.5);
        Shell plain = shell(house);
        Shell shell = shell(
                house,
                Houses.stack(
                        "room",
                        new Body.Base(
                                Body.Base.Kind.OVER_UNHEATED,
                                Optional.of("slab"),
                                Optional.empty(),
                                0,
                                2.5,
                                Optional.empty(),
                                Exposure.outdoors()),
                        Houses.flat(),
                        bare(Houses.storey("room", Houses.rectangle(0, 0, 8, 6), 2.5, "thin"))));
        assertEquals(below(plain), below(shell), 1e-3);
    }

    /** A slab that lies higher, on fill, steps down to the house's wall over all its width, beside its own walls, too. */
    @Test
    void higherThanTheHouseOnFill() {
        Body.Stack wing = storeys("wing", Houses.rectangle(5, 6, 6, 4), Houses.flat(), 2.5);
        Shell shell = shell(
                storeys("", Houses.rectangle(0, 0, 8, 6), Houses.roof(Body.Roof.Form.HIP, 40, 0, false), 2.4, 2.4),
                new Body.Stack(
                        "wing",
                        wing.storeys(),
                        slab("slab", 1.4),
                        wing.roof(),
                        Lists.immutable.empty(),
                        Lists.immutable.empty()));
        assertTrue(edges(shell, JunctionKind.SLAB_EDGE).allSatisfy(edge -> edge.angle() < 180));
    }
}
