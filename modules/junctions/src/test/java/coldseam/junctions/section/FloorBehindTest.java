package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Boundary;
import coldseam.conduction.Environment;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import coldseam.conduction.Region;
import coldseam.conduction.Section;
import coldseam.conduction.Symmetry;
import coldseam.conduction.solve.Conduction;
import coldseam.envelope.Body;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.compute.BridgeComputers;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A floor behind a deck, at a height of its own: it is drawn there, and what carries the deck ends in the wall. */
class FloorBehindTest {

    private static final Accuracy ACCURACY = new Accuracy(1e-5, 200_000);

    private static final double CONCRETE = 2.3;

    private static final double BLOCK = 0.5;

    private static final double WOOL = 0.035;

    private static final double FOAM = 0.025;

    private static Detail detail(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    /** 360 mm of deck before 400 mm of wall. */
    private static JunctionSetup setup(double thickness, double rise) {
        return new JunctionSetup(
                JunctionKind.WALL_TO_TERRACE,
                Samples.assembly(
                        "deck",
                        Samples.layer("slab", CONCRETE, 180, Role.STRUCTURE),
                        Samples.layer("foam", FOAM, 180, Role.INSULATION)),
                Optional.of(Samples.assembly(
                        "wall",
                        Samples.layer("block", BLOCK, 200, Role.STRUCTURE),
                        Samples.layer("wool", WOOL, 200, Role.INSULATION))),
                270,
                0,
                Exposure.outdoors(),
                Exposure.outdoors(),
                Optional.empty(),
                thickness,
                rise,
                false,
                0,
                OptionalDouble.empty(),
                Optional.empty(),
                20,
                -10,
                Body.Use.WALL,
                Maps.immutable.empty());
    }

    private static double conductivity(String material) {
        return MaterialLibrary.named(material).orElseThrow().conductivity();
    }

    private static Region box(double conductivity, double x0, double y0, double x1, double y1) {
        return new Region(
                "box",
                conductivity,
                new Polygon(Lists.immutable.of(
                        new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1))));
    }

    private static Boundary faces(String environment, double resistance, Point... path) {
        return new Boundary(environment, Lists.immutable.of(path), OptionalDouble.of(resistance));
    }

    /**
     * The section drawn a second time by its corners: x from the wall's inner face outwards, y from the deck's inner face up.
     *
     * @param low m, of the floor's underside
     * @param top m, of its upper face
     * @param left m, where the drawing is cut, as the other three
     */
    private static Interval byHand(double low, double top, double left, double below, double right, double above) {
        double deck = 0.36;
        double foot = deck + 0.15;
        double plinth = 0.4 - 0.03;
        double board = conductivity("extruded polystyrene board");
        ImmutableList<Region> regions = Lists.immutable.of(
                box(BLOCK, 0, below, 0.2, 0),
                box(BLOCK, 0, 0, 0.08, 0.18), // the deck bears 120 mm deep in the wall
                box(CONCRETE, 0.08, 0, right, 0.18),
                box(conductivity("reinforced concrete"), left, low, 0.2, top),
                box(BLOCK, 0, top, 0.2, above),
                box(WOOL, 0.2, foot, 0.4, above),
                box(board, 0.2, deck, plinth, foot),
                box(FOAM, 0.2, 0.18, right, deck));
        return Conduction.solve(
                        new Section(
                                "by hand",
                                Symmetry.PLANAR,
                                low > 0.18 ? regions.newWith(box(BLOCK, 0, 0.18, 0.2, low)) : regions,
                                Lists.immutable.of(
                                        new Environment("indoor", 20, 0.13), new Environment("outdoor", -10, 0.04)),
                                Lists.immutable.of(
                                        faces("indoor", 0.10, new Point(0.2, 0), new Point(right, 0)),
                                        faces("indoor", 0.13, new Point(0.2, below), new Point(0.2, 0)),
                                        faces("indoor", 0.13, new Point(0, below), new Point(0, low)),
                                        // What looks down like the deck's ceiling has its resistance.
                                        faces("indoor", 0.10, new Point(0, low), new Point(left, low)),
                                        faces(
                                                "indoor",
                                                0.13,
                                                new Point(left, top),
                                                new Point(0, top),
                                                new Point(0, above)),
                                        faces(
                                                "outdoor",
                                                0.04,
                                                new Point(right, deck),
                                                new Point(plinth, deck),
                                                new Point(plinth, foot),
                                                new Point(0.4, foot),
                                                new Point(0.4, above))),
                                Lists.immutable.empty()),
                        ACCURACY)
                .coupling("indoor", "outdoor");
    }

    /** Right on what carries the deck, and with a piece of wall between; 300 mm thick and 200. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.18", "0.3, 0.25", "0.2, 0.35"})
    void theSectionIsThatByHand(double thickness, double rise) {
        Detail detail = detail("wall-to-terrace-boards-meet");
        JunctionSetup setup = setup(thickness, rise);
        JunctionResult result = BridgeComputers.computer(ACCURACY).compute(detail, setup);
        ImmutableList<Point> corners = Composer.compose(detail, setup)
                .heatFlow()
                .regions()
                .flatCollect(region -> region.outline().corners());
        Interval coupling = byHand(
                rise,
                rise + thickness,
                corners.collectDouble(Point::x).min(),
                corners.collectDouble(Point::y).min(),
                corners.collectDouble(Point::x).max(),
                corners.collectDouble(Point::y).max());
        assertTrue(
                coupling.lower() <= result.coupling().upper()
                        && result.coupling().lower() <= coupling.upper(),
                () -> coupling + " by hand, " + result.coupling());
    }

    /** What would have to stand where the floor bears is refused. */
    @Test
    void noKerbStandsWhereTheFloorBears() {
        for (String id : Lists.immutable.of("kerb", "insulating-course", "board-kerb")) {
            Detail detail = detail("wall-to-terrace-" + id);
            Composer.compose(detail, setup(0, 0));
            String refused = assertThrows(DetailDoesNotFit.class, () -> Composer.compose(detail, setup(0.3, 0.18)))
                    .getMessage();
            assertTrue(refused.contains("the underside of the storey floor"), refused);
        }
    }

    /** In a frame the bays are filled behind a rim board, as at any floor; in both the warm side stays warm. */
    @Test
    void theFloorsEdgeIsThatOfItsBuild() {
        for (TypicalBuild build : TypicalBuild.values()) {
            JunctionSetup typical = build.setup(JunctionKind.WALL_TO_TERRACE);
            JunctionSetup apart = new JunctionSetup(
                    typical.kind(),
                    typical.first(),
                    typical.second(),
                    typical.angle(),
                    0,
                    typical.firstExposure(),
                    typical.secondExposure(),
                    Optional.empty(),
                    0.3,
                    0.2,
                    false,
                    0,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    typical.indoorTemperature(),
                    typical.outdoorTemperature(),
                    typical.firstUse(),
                    typical.materials());
            Composition drawn = Composer.compose(detail("wall-to-terrace-boards-meet"), apart);
            boolean rim = drawn.plan()
                    .pieces()
                    .anySatisfy(piece -> piece.origin().equals(new SectionPlan.Origin.OfDetail("rim board")));
            assertEquals(build == TypicalBuild.FRAME, rim, build.name());
            ImmutableList<SectionPlan.Origin> ofJoists = Composer.compose(
                            detail("wall-to-terrace-boards-meet"), Samples.atJoists(apart))
                    .plan()
                    .pieces()
                    .collect(SectionPlan.Piece::origin);
            assertEquals(
                    build == TypicalBuild.MASONRY,
                    ofJoists.contains(new SectionPlan.Origin.OfDetail("floor boards")),
                    build.name());
            assertEquals(
                    build == TypicalBuild.FRAME,
                    ofJoists.contains(new SectionPlan.Origin.OfDetail("storey floor")),
                    build.name());
        }
    }

    /** 600 mm of stone with boards inside and a floor of joists above the deck: what ends at the deck's height leaves its edge cold. */
    @Test
    void boardsInsideFollowAFloorOfJoists() {
        JunctionSetup typical = setup(0.28, 0.2);
        JunctionSetup old = Samples.atJoists(new JunctionSetup(
                typical.kind(),
                typical.first(),
                Optional.of(Samples.assembly(
                        "stone",
                        Samples.layer("boards", WOOL, 120, Role.INSULATION),
                        Samples.layer("stone", 1.4, 600, Role.STRUCTURE))),
                typical.angle(),
                typical.innerStep(),
                typical.firstExposure(),
                typical.secondExposure(),
                typical.opening(),
                typical.floorThickness(),
                typical.floorRise(),
                false,
                typical.upstand(),
                typical.sill(),
                typical.ground(),
                typical.indoorTemperature(),
                typical.outdoorTemperature(),
                typical.firstUse(),
                typical.materials()));
        ImmutableList<JunctionResult> worstToBest = Lists.immutable
                .of("deck-through", "inner-boards-board-up-the-wall", "inner-boards-on-a-course")
                .collect(id ->
                        BridgeComputers.computer(Accuracy.standard()).compute(detail("wall-to-terrace-" + id), old));
        ImmutableList<Interval> psis = worstToBest.collect(result -> result.psi(DimensionSystem.EXTERNAL));
        assertTrue(
                psis.get(1).upper() < psis.get(0).lower()
                        && psis.get(2).upper() < psis.get(1).lower(),
                psis::toString);
        // 0.78 where the boards stop at the floor boards, 0.91 where the course lies under the joists
        assertTrue(
                worstToBest.get(1).temperatureFactor() > 0.82,
                () -> "fRsi " + worstToBest.get(1).temperatureFactor());
        assertTrue(
                worstToBest.get(2).temperatureFactor() > 0.92,
                () -> "fRsi " + worstToBest.get(2).temperatureFactor());
    }
}
