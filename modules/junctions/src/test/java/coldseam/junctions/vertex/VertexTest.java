package coldseam.junctions.vertex;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.SectionException;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solid.CutPlanes;
import coldseam.conduction.solid.PaintedBox;
import coldseam.conduction.solid.Place;
import coldseam.conduction.solid.SolidBody;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Assembly;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Keeping;
import coldseam.junctions.Samples;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import coldseam.junctions.hand.DrawnChi;
import coldseam.junctions.plan.HeatInput;
import coldseam.junctions.section.SectionLayout;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Corners composed from their edges' own details. */
@Tag("slow")
@Execution(ExecutionMode.CONCURRENT)
class VertexTest {

    private static final Accuracy ACCURACY = new Accuracy(3e-4, 800_000);

    /** Both remember what one test has solved for the next. */
    private static final VertexComputer CORNERS =
            new VertexComputer(ACCURACY, BodySolver::solve, Conduction::solve, Keeping.NOTHING);

    private static final BridgeComputer EDGES = BridgeComputers.computer(Accuracy.standard());

    /** 180 mm of brick and 200 mm of board, as in the reference corner. */
    private static final Assembly WALL = Samples.assembly(
            "wall",
            Samples.layer("brick", 0.8, 180, Role.STRUCTURE),
            Samples.layer("board", 0.035, 200, Role.INSULATION));

    /** 150 mm of concrete and 250 mm of board. */
    private static final Assembly DECK = Samples.assembly(
            "deck",
            Samples.layer("concrete", 2.3, 150, Role.STRUCTURE),
            Samples.layer("board", 0.035, 250, Role.INSULATION));

    private static Detail detail(String kind, String drawing) {
        return DetailFile.read(
                "own.yaml",
                "detail: own\nkind: " + kind + "\nname: n\nrank: best\nlooks-like: l\norder: []\nconnections: {}\n"
                        + "failures: []\nphotographs: []\ndrawing:\n" + drawing);
    }

    private static Detail corner() {
        return detail("outside corner", "- band: wall\n- band: other wall\n");
    }

    /** @param to where the deck's concrete ends */
    private static Detail deckEdge(String to) {
        return detail(
                "terrace edge over a room",
                "- band: wall\n  to: deck.structure.inside\n  ends: {insulation: deck.outside}\n"
                        + "- band: deck\n  to: wall.structure.outside\n  ends: {structure: " + to + "}\n");
    }

    private static JunctionSetup setup(JunctionKind kind, Assembly first, Optional<Assembly> second, double angle) {
        return setup(kind, first, second, angle, Exposure.outdoors());
    }

    private static JunctionSetup setup(
            JunctionKind kind, Assembly first, Optional<Assembly> second, double angle, Exposure exposure) {
        return new JunctionSetup(
                kind,
                first,
                second,
                angle,
                exposure,
                exposure,
                Optional.empty(),
                kind == JunctionKind.INTERMEDIATE_FLOOR || kind == JunctionKind.WALL_TO_TERRACE ? 0.26 : 0,
                kind == JunctionKind.PARAPET ? 0.5 : 0,
                Optional.empty(),
                20,
                -5);
    }

    /** Two walls under a deck. */
    private static VertexSetup three(Detail corner, Detail one, Detail other) {
        JunctionSetup edge = setup(one.junction(), DECK, Optional.of(WALL), 90);
        return new VertexSetup(
                1,
                Lists.immutable.of(
                        new EdgeEnd(0, false, 2, 1, other, edge),
                        new EdgeEnd(1, false, 2, 0, one, edge),
                        new EdgeEnd(
                                2,
                                false,
                                0,
                                1,
                                corner,
                                setup(JunctionKind.OUTSIDE_CORNER, WALL, Optional.of(WALL), 90))),
                true);
    }

    private static VertexResult computed(VertexSetup setup) {
        return CORNERS.compute(setup);
    }

    private static VertexResult.Heat heat(VertexResult result) {
        return result.heat().orElseThrow();
    }

    /** The body with 0.13 m²·K/W on all indoor surfaces, as the reference has it. */
    private static SolidBody sameIndoors(SolidBody body) {
        return new SolidBody(
                body.name(),
                body.extent(),
                1,
                body.cutPlanes(),
                body.painted()
                        .collect(each -> each instanceof PaintedBox.Air air
                                ? new PaintedBox.Air(air.environment(), air.box())
                                : each),
                body.environments(),
                body.patches(),
                body.probes());
    }

    /**
     * The corner of two walls and a roof that two independent programs bounded (fixtures/published, worked out apart):
     * chi 0.0186 W/K internal and 0.0119 external, 17.85 °C in the corner at 20/−5 °C; with the slab run out to the face 0.0752
     * and −0.3437 W/K, 9.79 °C. All to the last digit given, chi and its interval together; the temperatures, which are
     * estimates, to the 0.025 K that they are aimed at.
     */
    @ParameterizedTest
    @CsvSource({"wall.structure.outside, 0.0186, 0.0119, 17.85", "wall.outside, 0.0752, -0.3437, 9.79"})
    void meetsTheReferenceCorner(String slabTo, double internal, double external, double temperature) {
        SolidBody body = sameIndoors(VertexBody.of("corner", three(corner(), deckEdge(slabTo), deckEdge(slabTo)))
                .heatFlow());
        BodySolution solution = BodySolver.solve(body, ACCURACY.aimedAt("indoor", 0.025));
        Interval inside =
                new DrawnChi.OfCorner(new Place(0, 0, 0), true).of(solution).chi();
        Interval outside = new DrawnChi.OfCorner(new Place(0.38, 0.38, 0.4), false)
                .of(solution)
                .chi();
        assertEquals(internal, inside.middle(), 5e-5 + inside.width() / 2);
        assertEquals(external, outside.middle(), 5e-5 + outside.width() / 2);
        assertEquals(temperature, solution.surface("indoor").lowest(), 0.025);
        assertEquals(new Place(0, 0, 0), solution.surface("indoor").at());
    }

    /** chi as the computer adds it up is chi as it is read off the drawing. */
    @Test
    void chiIsThatOfTheDrawing() {
        VertexSetup setup = three(corner(), deckEdge("wall.outside"), deckEdge("wall.structure.outside"));
        VertexResult result = computed(setup);
        Interval inside = new DrawnChi.OfCorner(new Place(0, 0, 0), true)
                .of(heat(result).solution())
                .chi();
        Interval outside = new DrawnChi.OfCorner(new Place(0.38, 0.38, 0.4), false)
                .of(heat(result).solution())
                .chi();
        // The same sections are solved to the same width, added in another order.
        assertEquals(inside.lower(), result.chi(DimensionSystem.INTERNAL).lower(), 1e-9);
        assertEquals(inside.upper(), result.chi(DimensionSystem.INTERNAL).upper(), 1e-9);
        assertEquals(outside.lower(), result.chi(DimensionSystem.EXTERNAL).lower(), 1e-9);
        assertEquals(outside.upper(), result.chi(DimensionSystem.EXTERNAL).upper(), 1e-9);
    }

    /** What the solver says of boxes that nobody drew is no reason that a rater can read. */
    @Test
    void whatCannotBeSolvedIsNotToldInBoxes() {
        VertexComputer refusing = new VertexComputer(
                ACCURACY,
                (body, accuracy) -> {
                    throw new SectionException(
                            Lists.immutable.of("box 61 (board) and box 51 (render) touch along a line"));
                },
                Conduction::solve,
                Keeping.NOTHING);
        DetailDoesNotFit refused = assertThrows(
                DetailDoesNotFit.class,
                () -> refusing.compute(three(corner(), deckEdge("wall.outside"), deckEdge("wall.outside"))));
        assertEquals(1, refused.reasons().size());
        assertFalse(refused.getMessage().contains("box"), refused.getMessage());
    }

    /** The deck's two edges show the same on their planes, whose names are all that differs: one question for both. */
    @Test
    void likePlanesAreSolvedOnce() {
        AtomicInteger solved = new AtomicInteger();
        VertexComputer counting = new VertexComputer(
                ACCURACY,
                BodySolver::solve,
                (section, accuracy) -> {
                    solved.incrementAndGet();
                    return Conduction.solve(section, accuracy);
                },
                Keeping.NOTHING);
        VertexResult result = counting.compute(three(corner(), deckEdge("wall.outside"), deckEdge("wall.outside")));
        assertTrue(result.heat().isPresent());
        assertEquals(2, solved.get());
    }

    private static Detail named(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    private static Assembly masonry() {
        return Samples.setup(JunctionKind.OUTSIDE_CORNER).first();
    }

    private static Assembly terrace() {
        return Samples.setup(JunctionKind.TERRACE_EDGE).first();
    }

    /** Where a terrace runs into the walls of the storey above. */
    private static VertexSetup terraceMeetsWall(String toTerrace, String edge, String floor) {
        Assembly wall = masonry();
        return new VertexSetup(
                // Rooms lie behind wall 1: below the deck, and behind wall 0 above it.
                0b0001_0011,
                Lists.immutable.of(
                        new EdgeEnd(
                                0,
                                false,
                                1,
                                2,
                                named(floor),
                                setup(JunctionKind.INTERMEDIATE_FLOOR, wall, Optional.empty(), 90)),
                        new EdgeEnd(
                                0,
                                true,
                                2,
                                1,
                                named(edge),
                                setup(JunctionKind.TERRACE_EDGE, terrace(), Optional.of(wall), 90)),
                        new EdgeEnd(
                                1,
                                false,
                                2,
                                0,
                                named(toTerrace),
                                setup(JunctionKind.WALL_TO_TERRACE, terrace(), Optional.of(wall), 270)),
                        new EdgeEnd(
                                2,
                                true,
                                0,
                                1,
                                named("outside-corner-unbroken"),
                                setup(JunctionKind.OUTSIDE_CORNER, wall, Optional.of(wall), 90))),
                true);
    }

    private static JunctionSetup atPartyWall(Assembly first, Assembly party) {
        return new JunctionSetup(
                JunctionKind.PARTY_WALL,
                first,
                Optional.of(party),
                90,
                Exposure.outdoors(),
                new Exposure(Exposure.Kind.PARTY, "next door", 0),
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                20,
                -5);
    }

    /** Insulation runs on along the row: nothing of a terrace's edge ends at a party wall but its curb, which no other section shows. */
    @Test
    void anEdgeGoesOnBehindAPartyWall() {
        Assembly wall = masonry();
        Assembly party = Samples.assembly("party", Samples.layer("brick", 0.8, 240, Role.STRUCTURE));
        Detail passes = named("party-wall-insulation-passes");
        VertexSetup row = new VertexSetup(
                1,
                Lists.immutable.of(
                        new EdgeEnd(
                                0,
                                false,
                                2,
                                1,
                                named("terrace-edge-boards-meet"),
                                setup(JunctionKind.TERRACE_EDGE, terrace(), Optional.of(wall), 90)),
                        new EdgeEnd(1, false, 2, 0, passes, atPartyWall(terrace(), party)),
                        new EdgeEnd(2, false, 1, 0, passes, atPartyWall(wall, party))),
                true);
        Interval chi = heat(computed(row)).chi(DimensionSystem.EXTERNAL);
        assertEquals(0, chi.middle(), 1e-2, chi::toString);
    }

    private static VertexSetup underParapet(String parapet) {
        Assembly wall = masonry();
        JunctionSetup edge = setup(JunctionKind.PARAPET, Samples.roof(), Optional.of(wall), 90);
        return new VertexSetup(
                1,
                Lists.immutable.of(
                        new EdgeEnd(0, false, 2, 1, named(parapet), edge),
                        new EdgeEnd(1, false, 2, 0, named(parapet), edge),
                        new EdgeEnd(
                                2,
                                false,
                                0,
                                1,
                                named("outside-corner-unbroken"),
                                setup(JunctionKind.OUTSIDE_CORNER, wall, Optional.of(wall), 90))),
                true);
    }

    /** Where the body is cut it is the edge's own section: the cut plane has the psi of the detail. */
    @Test
    void eachCutPlaneIsItsEdgesSection() {
        for (VertexSetup setup : Lists.immutable.of(
                three(corner(), deckEdge("wall.outside"), deckEdge("wall.structure.outside")),
                underParapet("parapet-on-break-blocks"),
                underParapet("parapet-wrapped"),
                underParapet("parapet-bare"))) {
            VertexBody composed = VertexBody.of("v", setup);
            SolidBody body = composed.heatFlow();
            for (EdgeEnd end : setup.edges()) {
                int side = end.growing() ? 1 : 0;
                Interval plane = Conduction.solve(
                                CutPlanes.section(body, composed.side(end.along(), side)), new Accuracy(2e-5, 400_000))
                        .coupling("indoor", "outdoor");
                Interval psi =
                        plane.plus(-composed.band(end.first()).orElseThrow().transmittance()
                                        * composed.length(end.second(), 0, true)
                                - composed.band(end.second()).orElseThrow().transmittance()
                                        * composed.length(end.first(), 0, true));
                JunctionResult own = EDGES.compute(end.detail(), end.setup());
                // Both are intervals of one value, but for cuts at other distances: 1e-5 W/(m·K) past a metre.
                assertEquals(
                        own.psiInternal().middle(),
                        psi.middle(),
                        1e-5 + (psi.width() + own.psiInternal().width()) / 2,
                        end.detail().id());
            }
        }
    }

    /** Walls over thicker ones, and the steps of their inner faces in the two planes; outer faces are one where these are 0.12 m. */
    private static VertexSetup overThickerWalls(double one, double other) {
        Assembly lower = Samples.assembly(
                "lower wall",
                Samples.layer("stone", 1.1, 300, Role.STRUCTURE),
                Samples.layer("board", 0.035, 150, Role.INSULATION));
        Assembly upper = Samples.assembly(
                "upper wall",
                Samples.layer("stone", 1.1, 180, Role.STRUCTURE),
                Samples.layer("board", 0.035, 150, Role.INSULATION));
        Detail change = detail("change of wall at a floor", "- band: wall\n- band: wall above\n");
        JunctionSetup straight = setup(JunctionKind.WALL_CHANGE_AT_FLOOR, lower, Optional.of(upper), 180);
        return over(change, straight.stepped(other), straight.stepped(one), lower, upper);
    }

    /** Where the walls step indoors from storey to storey, the corner above stands as much farther out, and each cut is its section. */
    @ParameterizedTest
    @CsvSource({"0.12, 0.12", "0.12, 0.05", "-0.06, 0.12"})
    void aCornerStepsWithItsWalls(double one, double other) {
        VertexSetup setup = overThickerWalls(one, other);
        VertexBody composed = VertexBody.of("v", setup);
        for (EdgeEnd end : setup.edges()) {
            Interval plane = Conduction.solve(
                            CutPlanes.section(composed.heatFlow(), composed.side(end.along(), end.growing() ? 1 : 0)),
                            new Accuracy(2e-5, 400_000))
                    .coupling("indoor", "outdoor");
            JunctionResult own = EDGES.compute(end.detail(), end.setup());
            boolean above = end.growing();
            double straight = end.along() < 2
                    ? own.legs().getFirst().transmittance() * composed.length(2, 0, true)
                            + own.legs().getLast().transmittance() * composed.length(2, 1, true)
                    : own.legs().getFirst().transmittance()
                            * (composed.length(0, 0, true) + composed.length(1, 0, true) + (above ? one + other : 0));
            // As above: both are intervals of one value, but for where they are cut.
            assertEquals(
                    own.psiInternal().middle(),
                    plane.middle() - straight,
                    1e-5 + (plane.width() + own.psiInternal().width()) / 2,
                    end.along() + " " + end.growing());
        }
        VertexResult result = computed(setup);
        assertTrue(result.heat().isEmpty(), "no one corner is where lengths end");
        double worst = setup.edges()
                .collectDouble(end -> EDGES.compute(end.detail(), end.setup()).temperatureFactor())
                .min();
        assertTrue(result.temperatureFactor() < worst + 0.002);
        assertTrue(result.temperatureFactor() > worst - 0.15, "no hole in it");
    }

    /** Two walls on a slab; the third axis points down. */
    private static VertexSetup onGround(String slabEdge, boolean framed) {
        JunctionSetup edge =
                framed ? Samples.framedSetup(JunctionKind.SLAB_EDGE) : Samples.setup(JunctionKind.SLAB_EDGE);
        Assembly wall = edge.second().orElseThrow();
        return new VertexSetup(
                1,
                Lists.immutable.of(
                        new EdgeEnd(0, false, 2, 1, named(slabEdge), edge),
                        new EdgeEnd(1, false, 2, 0, named(slabEdge), edge),
                        new EdgeEnd(
                                2,
                                false,
                                0,
                                1,
                                named("outside-corner-unbroken"),
                                setup(JunctionKind.OUTSIDE_CORNER, wall, Optional.of(wall), 90))),
                false);
    }

    /**
     * On the ground each cut plane is its slab edge's whole section, soil and all; the corner is colder than both, and its heat
     * is left to the floor's U. In old walls the strip beside the slab and the course in the wall meet in the corner; under a
     * ventilated cladding the edge board and its coat do.
     */
    @ParameterizedTest
    @CsvSource({"slab-edge-raft, false", "slab-edge-in-old-walls-course, false", "slab-edge-raft, true"})
    void standsOnTheGroundAsItsSlabEdgesDo(String slabEdge, boolean framed) {
        VertexSetup setup = onGround(slabEdge, framed);
        VertexBody composed = VertexBody.of("v", setup);
        SolidBody body = composed.heatFlow();
        EdgeEnd end = setup.edges().getFirst();
        JunctionResult own = EDGES.compute(end.detail(), end.setup());
        for (int axis = 0; axis < 2; axis++) {
            Interval plane = Conduction.solve(
                            CutPlanes.section(body, composed.side(axis, 0)), new Accuracy(2e-5, 400_000))
                    .coupling("indoor", "outdoor");
            // Both are intervals of one value: the section and its cuts are the same.
            assertEquals(
                    own.coupling().middle(), plane.middle(), (own.coupling().width() + plane.width()) / 2);
        }
        VertexResult result = computed(setup);
        assertTrue(result.heat().isEmpty());
        assertTrue(result.temperatureFactor() < own.temperatureFactor());
        assertTrue(result.temperatureFactor() > own.temperatureFactor() - 0.15, "no hole in it");
    }

    /** A corner and its mirror image lose the same. */
    @Test
    void aMirroredCornerIsTheSame() {
        VertexResult one = computed(three(corner(), deckEdge("wall.outside"), deckEdge("wall.structure.outside")));
        VertexResult other = computed(three(corner(), deckEdge("wall.structure.outside"), deckEdge("wall.outside")));
        assertEquals(
                heat(one).coupling().middle(),
                heat(other).coupling().middle(),
                (heat(one).coupling().width() + heat(other).coupling().width()) / 2);
        assertEquals(one.temperatureFactor(), other.temperatureFactor(), 0.002);
    }

    /** Where a floor bears into one wall of an inside corner and the other passes by. */
    private static VertexSetup floorAtAnInsideCorner(boolean below, boolean above) {
        Assembly wall = Samples.framedSetup(JunctionKind.OUTSIDE_CORNER).first();
        JunctionSetup corner = setup(JunctionKind.INSIDE_CORNER, wall, Optional.of(wall), 270);
        Detail tight = named("inside-corner-boards-tight");
        Detail floor = detail(
                "intermediate floor",
                "- band: wall\n- block: floor\n  material: softwood\n  wall: [away, wall.structure.outside]\n"
                        + "  storey floor: [storey floor.near, storey floor.far]\n");
        return new VertexSetup(
                0b0111_0111,
                Lists.immutable.of(
                        new EdgeEnd(
                                0,
                                true,
                                1,
                                2,
                                floor,
                                setup(JunctionKind.INTERMEDIATE_FLOOR, wall, Optional.empty(), 90)),
                        new EdgeEnd(2, false, below ? 0 : 1, below ? 1 : 0, tight, corner),
                        new EdgeEnd(2, true, above ? 0 : 1, above ? 1 : 0, tight, corner)),
                true);
    }

    /** Which of two equal walls is the first of a corner and which the second is a matter of names. */
    @Test
    void theOrderOfEqualWallsDoesNotMatter() {
        VertexResult.Heat one = heat(computed(floorAtAnInsideCorner(true, true)));
        for (int order = 0; order < 3; order++) {
            VertexResult.Heat other = heat(computed(floorAtAnInsideCorner(order == 1, order == 2)));
            assertEquals(
                    one.coupling().middle(),
                    other.coupling().middle(),
                    (one.coupling().width() + other.coupling().width()) / 2,
                    "order " + order);
        }
    }

    /** External and internal chi differ by what the lengths and areas say, whatever the corner couples. */
    @Test
    void theDimensionSystemsDifferByLengthsAlone() {
        VertexResult result = computed(underParapet("parapet-bare"));
        double difference =
                heat(result).chiExternal().middle() - heat(result).chiInternal().middle();
        VertexBody composed = VertexBody.of("v", result.setup());
        double expected = 0;
        for (int axis = 0; axis < 3; axis++) {
            int e = (axis + 1) % 3;
            int f = (axis + 2) % 3;
            expected += composed.band(axis).orElseThrow().transmittance()
                    * (composed.length(e, 0, false) * composed.length(f, 0, false)
                            - composed.length(e, 0, true) * composed.length(f, 0, true));
            double plane = Conduction.solve(
                            CutPlanes.section(composed.heatFlow(), composed.side(axis, 0)), new Accuracy(2e-5, 400_000))
                    .coupling("indoor", "outdoor")
                    .middle();
            expected -= plane * (composed.length(axis, 0, false) - composed.length(axis, 0, true));
        }
        assertEquals(expected, difference, 1e-9);
    }

    private static VertexResult.Heat ofConductivities(double board, double concrete, Exposure exposure) {
        Assembly wall = Samples.assembly(
                "wall",
                Samples.layer("brick", 0.8, 180, Role.STRUCTURE),
                Samples.layer("board", board, 200, Role.INSULATION));
        Assembly deck = Samples.assembly(
                "deck",
                Samples.layer("concrete", concrete, 150, Role.STRUCTURE),
                Samples.layer("board", board, 250, Role.INSULATION));
        Detail slabOut = deckEdge("wall.outside");
        JunctionSetup edge = setup(slabOut.junction(), deck, Optional.of(wall), 90, exposure);
        JunctionSetup upright = setup(JunctionKind.OUTSIDE_CORNER, wall, Optional.of(wall), 90, exposure);
        return heat(computed(new VertexSetup(
                1,
                Lists.immutable.of(
                        new EdgeEnd(0, false, 2, 1, slabOut, edge),
                        new EdgeEnd(1, false, 2, 0, slabOut, edge),
                        new EdgeEnd(2, false, 0, 1, corner(), upright)),
                true)));
    }

    /**
     * Against the corner solved again with one conductivity changed. The slab runs out to the face, so that both slopes are large; a
     * cold space beside all of it, whose factor weighs chi once and the field's energy twice, must not show.
     */
    @ParameterizedTest
    @CsvSource({"board, 1", "concrete, 1", "board, 0.5", "concrete, 0.5"})
    void chiFollowsTheConductivities(String material, double factor) {
        Exposure exposure = factor == 1 ? Exposure.outdoors() : new Exposure(Exposure.Kind.UNHEATED, "shed", factor);
        double step = 0.05;
        boolean board = material.equals("board");
        VertexResult.Heat more =
                ofConductivities(0.035 * (board ? 1 + step : 1), 2.3 * (board ? 1 : 1 + step), exposure);
        VertexResult.Heat less =
                ofConductivities(0.035 * (board ? 1 - step : 1), 2.3 * (board ? 1 : 1 - step), exposure);
        VertexResult.Heat here = ofConductivities(0.035, 2.3, exposure);
        for (DimensionSystem system : DimensionSystem.values()) {
            double quotient = (more.chi(system).middle() - less.chi(system).middle()) / (2 * step);
            double slope = here.sloped(system).slopes().get(new HeatInput.OfMaterial(material, board ? 0.035 : 2.3));
            // The middles of intervals move by less than a tenth of their widths where a conductivity moves a little.
            double most = 0.1 * here.chi(system).width() / step;
            assertEquals(quotient, slope, most, system + " " + here.chi(system));
            assertTrue(
                    Math.abs(slope) > 3 * most || system == DimensionSystem.INTERNAL,
                    system + " " + slope + " " + most);
        }
    }

    /** A terrace, the wall that stands on it, and the floor behind: four edges and three rooms' octants. */
    @Test
    void composesATerraceThatMeetsAWall() {
        VertexSetup setup =
                terraceMeetsWall("wall-to-terrace-kerb", "terrace-edge-boards-meet", "intermediate-floor-board-passes");
        VertexResult result = computed(setup);
        assertTrue(heat(result).solution().met());
        // A corner whose edges are all insulated past adds little: within a tenth of the whole.
        assertTrue(Math.abs(heat(result).chiExternal().middle())
                < 0.1 * heat(result).coupling().middle());
        // No corner is warmer than its edges far away from it.
        for (EdgeEnd end : setup.edges()) {
            double edge = EDGES.compute(end.detail(), end.setup()).temperatureFactor();
            assertTrue(result.temperatureFactor() < edge + 0.003, end.detail().id());
        }
    }

    /** Three details of which each lets another surface's layers through have no common corner. */
    @Test
    void refusesACornerThatItsSectionsDoNotSay() {
        Detail corner = detail(
                "outside corner", "- band: wall\n  to: other wall.outside\n- band: other wall\n  to: wall.inside\n");
        Detail deckOver = detail(
                "terrace edge over a room", "- band: wall\n  to: deck.inside\n- band: deck\n  to: wall.outside\n");
        Detail wallPast = detail(
                "terrace edge over a room", "- band: deck\n  to: wall.inside\n- band: wall\n  to: deck.outside\n");
        DetailDoesNotFit refused =
                assertThrows(DetailDoesNotFit.class, () -> VertexBody.of("v", three(corner, deckOver, wallPast)));
        assertTrue(
                refused.reasons()
                        .collect(Phrase::toString)
                        .getFirst()
                        .startsWith("the sections of its edges do not say what fills the corner"),
                refused.getMessage());
    }

    /** Kerbs on a deck that cross over walls of two thicknesses: neither detail says which goes on to the corner. */
    @ParameterizedTest
    @CsvSource({"softwood, structural foam block", "structural foam block, softwood"})
    void ofBlocksThatNothingOrdersTheBetterConductorIsTakenAndTold(String one, String other) {
        VertexSetup setup = kerbs(one, other);
        VertexSections sections =
                new VertexSections(setup, Optional.empty(), (detail, edge) -> SectionLayout.of(detail, edge));
        VertexCells cells = new VertexCells(setup, sections);
        MutableSet<String> crossing = Sets.mutable.empty();
        cells.each(cell -> {
            if (IntStream.range(0, 3)
                    .allMatch(axis -> sections.middle(axis, cell[axis]) > (axis == 2 ? 0.4 : 0)
                            && sections.middle(axis, cell[axis]) < (axis == 2 ? 0.5 : 0.18))) {
                crossing.add(cells.at(cell).material());
            }
        });
        assertEquals(Sets.mutable.of("softwood"), crossing);
        assertEquals(
                Lists.immutable.of(
                        "The details leave open whether softwood or structural foam block goes on here; counted:"
                                + " softwood, which conducts better."),
                VertexBody.of("v", setup).inDoubt());
        assertEquals(
                Lists.immutable.empty(), VertexBody.of("v", kerbs(one, one)).inDoubt());
    }

    private static VertexSetup kerbs(String one, String other) {
        Assembly thick = Samples.assembly(
                "thick",
                Samples.layer("brick", 0.8, 240, Role.STRUCTURE),
                Samples.layer("board", 0.035, 200, Role.INSULATION));
        return new VertexSetup(
                1,
                Lists.immutable.of(
                        kerb(0, 1, one, WALL),
                        kerb(1, 0, other, thick),
                        new EdgeEnd(
                                2,
                                false,
                                0,
                                1,
                                corner(),
                                setup(JunctionKind.OUTSIDE_CORNER, thick, Optional.of(WALL), 90))),
                true);
    }

    private static EdgeEnd kerb(int along, int second, String material, Assembly wall) {
        Detail edge = detail(
                "terrace edge over a room",
                "- band: wall\n  to: deck.structure.inside\n  ends: {insulation: deck.outside}\n"
                        + "- band: deck\n  to: wall.structure.outside\n- block: kerb\n  material: " + material
                        + "\n  deck: [deck.outside, deck.outside + 100 mm]\n"
                        + "  wall: [wall.structure.inside, wall.structure.outside]\n");
        return new EdgeEnd(along, false, 2, second, edge, setup(edge.junction(), DECK, Optional.of(wall), 90));
    }

    @Test
    void refusesWallsOfOtherLayersOnItsTwoSides() {
        VertexSetup good = three(corner(), deckEdge("wall.outside"), deckEdge("wall.outside"));
        EdgeEnd first = good.edges().getFirst();
        EdgeEnd changed =
                new EdgeEnd(0, false, 2, 1, first.detail(), first.setup().between(DECK, Optional.of(masonry())));
        VertexSetup setup = new VertexSetup(
                1, Lists.immutable.of(changed, good.edges().get(1), good.edges().get(2)), true);
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> VertexBody.of("v", setup));
        assertTrue(
                refused.getMessage().contains("the layers on the two sides of one of its surfaces differ"),
                refused.getMessage());
    }

    /** Whichever of two equally warm neighbours a surface faces, the heat is that of one; of two others nobody says which. */
    @Test
    void neighboursAsWarmAsOneAnotherAreOneToTheHeat() {
        VertexResult.Heat one = heat(computed(beside(0.5, 0.5)));
        VertexResult.Heat two = heat(computed(beside(0.5, 0.5, "garage", "store")));
        assertEquals(one.internal(), two.internal());
        assertEquals(one.external(), two.external());
        DetailDoesNotFit refused =
                assertThrows(DetailDoesNotFit.class, () -> VertexBody.of("v", beside(0.5, 0.6, "garage", "store")));
        assertTrue(
                refused.getMessage().contains("faces garage on one side and store on the other"), refused.getMessage());
    }

    /** A corner under a deck; the second wall is said to face one neighbour by its edge with the first, another by the deck's. */
    private static VertexSetup beside(double byCorner, double byDeck, String... names) {
        Exposure corner = new Exposure(Exposure.Kind.UNHEATED, names.length > 0 ? names[0] : "garage", byCorner);
        Exposure deck = new Exposure(Exposure.Kind.UNHEATED, names.length > 0 ? names[1] : "garage", byDeck);
        JunctionSetup edge = setup(deckEdge("wall.outside").junction(), DECK, Optional.of(WALL), 90, deck);
        JunctionSetup walls = setup(JunctionKind.OUTSIDE_CORNER, WALL, Optional.of(WALL), 90, corner);
        return new VertexSetup(
                1,
                Lists.immutable.of(
                        new EdgeEnd(2, false, 0, 1, corner(), walls),
                        new EdgeEnd(0, false, 2, 1, deckEdge("wall.outside"), edge),
                        new EdgeEnd(1, false, 2, 0, deckEdge("wall.outside"), edge)),
                true);
    }

    /** Walls that go on upwards from others of their plane. */
    private static VertexSetup upwards(Assembly below, Assembly above) {
        JunctionKind change = JunctionKind.of("foundation wall to wall above");
        Detail seam = detail(change.label(), "- band: foundation\n- band: wall\n");
        JunctionSetup edge = setup(change, below, Optional.of(above), 180);
        return over(seam, edge, edge, below, above);
    }

    /** A corner of walls over which others go on, with the seams in its two planes. */
    private static VertexSetup over(
            Detail seam, JunctionSetup one, JunctionSetup other, Assembly below, Assembly above) {
        return new VertexSetup(
                0b0001_0001,
                Lists.immutable.of(
                        new EdgeEnd(0, false, 1, 2, seam, one),
                        new EdgeEnd(1, false, 0, 2, seam, other),
                        new EdgeEnd(
                                2,
                                false,
                                0,
                                1,
                                corner(),
                                setup(JunctionKind.OUTSIDE_CORNER, below, Optional.of(below), 90)),
                        new EdgeEnd(
                                2,
                                true,
                                0,
                                1,
                                corner(),
                                setup(JunctionKind.OUTSIDE_CORNER, above, Optional.of(above), 90))),
                true);
    }

    /** Where nothing changes, the corner is the edge that goes through it; where walls above are worse it is as cold as theirs. */
    @Test
    void wallsThatChangeInTheirPlaneMeetInACorner() {
        Assembly thin = Samples.assembly(
                "thin",
                Samples.layer("brick", 0.8, 180, Role.STRUCTURE),
                Samples.layer("board", 0.035, 60, Role.INSULATION));
        double edge = edge(WALL);
        VertexResult same = computed(upwards(WALL, WALL));
        assertEquals(edge, same.temperatureFactor(), 0.002);
        assertEquals(Optional.empty(), same.heat());
        VertexResult changed = computed(upwards(WALL, thin));
        assertEquals(edge(thin), changed.temperatureFactor(), 0.005);
        assertTrue(edge(thin) < edge - 0.02, "walls worth telling apart");
        assertTrue(changed.coldest().along(2) > 0, "above the change");
    }

    private static double edge(Assembly wall) {
        return EDGES.compute(corner(), setup(JunctionKind.OUTSIDE_CORNER, wall, Optional.of(wall), 90))
                .temperatureFactor();
    }
}
