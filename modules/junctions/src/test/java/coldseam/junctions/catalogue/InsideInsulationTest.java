package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.file.house.BuildUps;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.InsulationThickness;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.section.Composer;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Details of kinds that any wall has, laid on one that is insulated inside: which fit, and in which order. */
@Tag("slow")
final class InsideInsulationTest {

    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    /** From worst to best; what stands outside the structure does not fit. */
    private static final ImmutableMap<String, ImmutableList<String>> ORDER = Maps.immutable
            .of(
                    "jamb",
                    Lists.immutable.of(
                            "jamb-inner-bare-reveal",
                            "jamb-reveal-lined",
                            "jamb-inner-boards-over-the-buck",
                            "jamb-flush-lapped"),
                    "head",
                    Lists.immutable.of(
                            "head-inner-bare",
                            "head-reveal-lined",
                            "head-inner-boards-over-the-buck",
                            "head-flush-lapped"),
                    "sill",
                    Lists.immutable.of(
                            "sill-inner-bare",
                            "sill-reveal-lined",
                            "sill-inner-boards-over-the-buck",
                            "sill-flush-lapped"),
                    "party wall",
                    Lists.immutable.of("party-wall-insulation-stops", "party-wall-return-strip", "party-wall-lined"))
            // A slab stays a weak spot there: nothing passes its edge indoors, as boards do between joists.
            .newWithKeyValue(
                    "intermediate floor",
                    Lists.immutable.of(
                            "intermediate-floor-slab-through",
                            "intermediate-floor-joist-bays-bare",
                            "intermediate-floor-edge-thin-board",
                            "intermediate-floor-joist-bays-strip",
                            "intermediate-floor-joist-bays-boards-pass"));

    private static JunctionSetup setup(JunctionKind kind, double board) {
        Assembly wall = InsulationThickness.with(
                        BuildUps.all().get("wall insulated inside").masonry(), board)
                .orElseThrow();
        JunctionSetup typical = TypicalBuild.MASONRY.setup(kind);
        return typical.between(wall, typical.second());
    }

    private static boolean fits(Detail detail, JunctionSetup setup) {
        try {
            BuiltIn.composed(detail, setup);
            return true;
        } catch (DetailDoesNotFit misfit) {
            return false;
        }
    }

    /** m of board, no thinner than a frame is deep: one that stands proud of thin board loses as much as a lined sill. */
    @ParameterizedTest
    @ValueSource(doubles = {0.09, 0.12, 0.18})
    void optionsFitFromWorstToBest(double board) {
        ORDER.forEachKeyValue((kind, ids) -> {
            JunctionSetup setup = setup(JunctionKind.of(kind), board);
            ImmutableList<Detail> fitting =
                    CATALOGUE.options(JunctionKind.of(kind)).select(each -> fits(each, setup));
            assertEquals(
                    ids,
                    fitting.toSortedListBy(each ->
                                    -CatalogueBreadthTest.psi(each, setup).middle())
                            .collect(Detail::id));
        });
    }

    /** A slab that bears in an old wall goes through the boards indoors; those that are returned along it take a part of its loss back. */
    @ParameterizedTest
    @ValueSource(doubles = {0.08, 0.12, 0.18})
    void boardsReturnedAlongAFloorLoseLess(double board) {
        JunctionSetup setup = setup(JunctionKind.INTERMEDIATE_FLOOR, board);
        double bare = psi("intermediate-floor-slab-through", setup);
        double returned = psi("intermediate-floor-edge-thin-board", setup);
        assertTrue(bare > 0.3 && returned > 0 && returned < 0.8 * bare, returned + " of " + bare + " W/(m·K)");
    }

    /** Where the wall is built otherwise they are refused, with what they are for. */
    @Test
    void whatIsForOneBuildAloneIsRefusedElsewhere() {
        Detail joists =
                CATALOGUE.find("intermediate-floor-joist-bays-boards-pass").orElseThrow();
        JunctionSetup outside = TypicalBuild.MASONRY.setup(JunctionKind.INTERMEDIATE_FLOOR);
        assertFalse(Composer.isFor(joists, outside));
        assertTrue(Composer.isFor(joists, setup(JunctionKind.INTERMEDIATE_FLOOR, 0.1)));
        DetailDoesNotFit refused = assertThrows(DetailDoesNotFit.class, () -> BuiltIn.composed(joists, outside));
        assertEquals(
                joists.who() + " is drawn for one build alone: wall insulated inside; the layers here are others."
                        + " Choose another detail.",
                refused.getMessage());
    }

    private static double psi(String detail, JunctionSetup setup) {
        return CatalogueBreadthTest.psi(CATALOGUE.find(detail).orElseThrow(), setup)
                .middle();
    }

    /** A frame in the boards' plane, and boards that pass between joists, keep every layer whole beside masonry that goes on outside. */
    @ParameterizedTest
    @ValueSource(strings = {"jamb", "head", "sill", "intermediate floor"})
    void theBestCarriesEveryLayer(String kind) {
        JunctionSetup setup = setup(JunctionKind.of(kind), 0.10);
        Detail best = CATALOGUE.find(ORDER.get(kind).getLast()).orElseThrow();
        assertEquals(Lists.immutable.empty(), CatalogueTradeTest.lost(best, setup, true));
    }

    /** Over a cellar or a crawl space the boards go down between the joists to those under the floor: nothing else is whole there. */
    @ParameterizedTest
    @CsvSource({
        "floor over an unheated space, unheated-below-inner-boards-down",
        "crawl space edge, unheated-below-inner-boards-down",
        "door threshold over a cold space, cold-threshold-in-inner-boards"
    })
    void boardsGoDownBetweenTheJoists(String name, String id) {
        JunctionKind kind = JunctionKind.of(name);
        JunctionSetup typical = TypicalBuild.MASONRY.setup(kind);
        Assembly wall = InsulationThickness.with(
                        BuildUps.all().get("wall insulated inside").masonry(), 0.12)
                .orElseThrow();
        Assembly joists = BuildUps.all().get("floor over a cold space").frame();
        JunctionSetup setup = typical.between(joists, Optional.of(wall));
        ImmutableList<Detail> whole = CATALOGUE
                .options(kind)
                .select(each -> fits(each, setup))
                .select(each -> CatalogueTradeTest.lost(each, setup, true).isEmpty());
        assertEquals(Lists.immutable.of(id), whole.collect(Detail::id));
    }

    /**
     * Where concrete bears in the masonry: boards that pass one another with that between carry air, water and vapour, lose less than
     * where nothing is done, and are told as the gap they are; a course of blocks, or a joint, closes it.
     */
    @ParameterizedTest
    @CsvSource({
        "flat-roof-edge-deck-through-inner-boards, flat-roof-edge-inner-boards-band-outside, flat-roof-edge-inner-boards-on-a-course",
        "flat-roof-edge-deck-through-inner-boards, flat-roof-edge-inner-boards-return-under-the-roof, flat-roof-edge-deck-stops-short",
        "parapet-deck-through-inner-boards, parapet-inner-boards-wrapped, parapet-deck-stops-short",
        "parapet-deck-through-inner-boards, parapet-inner-boards-return-under-the-roof, parapet-deck-stops-short",
        "parapet-deck-through-inner-boards, parapet-inner-boards-wrapped, parapet-inner-boards-on-a-course",
        "step-inner-boards-wall-bare, step-inner-boards-board-up-the-wall, step-inner-boards-on-a-course",
        "abutment-inner-boards-wall-bare, abutment-inner-boards-board-up-the-wall, abutment-inner-boards-on-a-course",
        "terrace-edge-joists-through, terrace-edge-inner-boards-band-outside, terrace-edge-inner-boards-on-a-course",
        "terrace-edge-joists-through, terrace-edge-inner-boards-return-under-the-deck, terrace-edge-inner-boards-on-a-course",
        "wall-to-terrace-deck-through, wall-to-terrace-inner-boards-board-up-the-wall, wall-to-terrace-inner-boards-on-a-course",
        "unheated-below-wall-runs-past, unheated-below-inner-boards-strip-on-the-slab, unheated-below-slab-clear-of-inner-boards",
        "unheated-below-wall-runs-past, unheated-below-inner-boards-board-outside, unheated-below-slab-clear-of-inner-boards",
        "overhang-edge-bare, overhang-edge-inner-boards-band-outside, overhang-edge-inner-boards-on-a-course"
    })
    void boardsThatPassOneAnotherAreToldAndBlocksCloseTheGap(String bare, String passing, String closing) {
        Detail middle = CATALOGUE.find(passing).orElseThrow();
        Detail best = CATALOGUE.find(closing).orElseThrow();
        JunctionSetup setup = TypicalBuild.MASONRY.setup(middle);
        assertEquals(Lists.immutable.of("heat"), CatalogueTradeTest.lost(middle, setup, true));
        assertEquals(Lists.immutable.empty(), CatalogueTradeTest.lost(best, setup, true));
        double worst = psi(bare, setup);
        assertTrue(psi(passing, setup) < 0.5 * worst, () -> psi(passing, setup) + " of " + worst + " W/(m·K)");
        assertTrue(psi(closing, setup) < psi(passing, setup), () -> psi(closing, setup) + " W/(m·K)");
    }

    /** Where wood bears in the wall, nothing comes down for it: boards pass between the joists and close the line. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "parapet-inner-boards-up-between-the-joists",
                "wall-under-overhang-inner-boards-up-between-the-joists"
            })
    void boardsBetweenTheJoistsCloseTheLine(String id) {
        Detail between = CATALOGUE.find(id).orElseThrow();
        assertEquals(Rank.BEST, between.rank());
        assertTrue(between.suits().takesDown().isEmpty());
        for (TypicalBuild build : TypicalBuild.values()) {
            JunctionSetup setup = build.setup(between);
            assertEquals(Lists.immutable.empty(), CatalogueTradeTest.lost(between, setup, true), build.toString());
        }
    }

    /** Both surfaces of a junction insulated from the rooms. */
    private static JunctionSetup bothInside(JunctionKind kind) {
        JunctionSetup typical = TypicalBuild.MASONRY.setup(kind);
        return typical.between(inside(kind, 0), Optional.of(inside(kind, 1)));
    }

    private static Assembly inside(JunctionKind kind, int which) {
        return BuildUps.all()
                .get(BuildUps.insulatedInside(kind.faces().get(which)))
                .masonry();
    }

    /** What is drawn and told for boards outside is not among them: these alone fit, from the one that loses most to the best. */
    @ParameterizedTest
    @CsvSource({
        "slab edge, slab-edge-inner-boards-apart slab-edge-inner-boards-meet",
        "existing slab edge, existing-slab-edge-inner-boards-apart existing-slab-edge-inner-boards-meet",
        "cellar slab to wall, cellar-slab-tight-to-wall cellar-slab-inner-boards-meet",
        "floor over an unheated space, unheated-below-inner-boards-apart unheated-below-inner-boards-meet",
        "crawl space edge, crawl-space-edge-rim-bare unheated-below-inner-boards-meet",
        "overhang edge, overhang-edge-inner-boards-apart overhang-edge-inner-boards-meet",
        "stepped footing, stepped-footing-inner-boards-apart stepped-footing-inner-boards-meet",
        "wall under an overhang, wall-under-overhang-inner-boards-apart wall-under-overhang-inner-boards-return-under-the-slab",
        "door threshold on a slab, slab-threshold-on-concrete slab-threshold-in-inner-boards",
        "garage slab at the door, garage-slab-cast-through garage-slab-in-inner-boards",
        "cellar door threshold, cellar-door-slab-through cellar-door-in-inner-boards",
        "door threshold over a cold space, cold-threshold-on-structure cold-threshold-on-inner-boards",
        "door threshold over open air, overhang-threshold-on-structure overhang-threshold-in-inner-boards",
        "door threshold on a terrace, terrace-threshold-inner-boards-apart terrace-threshold-in-inner-boards-on-a-course",
        "eaves of an insulated roof, eaves-inner-boards-apart eaves-inner-boards-meet",
        "high eaves of a mono-pitch, eaves-inner-boards-apart eaves-inner-boards-meet",
        "knee wall, eaves-inner-boards-apart eaves-inner-boards-meet",
        "verge, verge-inner-boards-apart verge-inner-boards-meet",
        "flat roof edge, flat-roof-edge-inner-boards-apart flat-roof-edge-inner-boards-meet",
        "parapet, parapet-inner-boards-apart parapet-inner-boards-meet",
        "terrace edge over a room, terrace-edge-inner-boards-apart terrace-edge-inner-boards-meet",
        "wall to terrace, wall-to-terrace-inner-boards-apart wall-to-terrace-inner-boards-down-between-the-joists",
        "step between heights, step-inner-boards-apart step-inner-boards-down-between-the-joists",
        "abutment, abutment-inner-boards-apart abutment-inner-boards-meet",
        "dormer cheek, dormer-cheek-inner-boards-apart dormer-cheek-inner-boards-meet",
        "foundation wall to wall above, foundation-rim-bare foundation-rim-joist-bays-boards-pass",
        "ridge, ridge-square-cut ridge-gap-foamed ridge-inner-boards-mitred"
    })
    void boardsInsideOnBothSidesHaveDetailsOfTheirOwn(String name, String ids) {
        JunctionKind kind = JunctionKind.of(name);
        JunctionSetup setup = bothInside(kind);
        assertEquals(
                ids,
                CATALOGUE
                        .options(kind)
                        .select(each -> fits(each, setup))
                        .toSortedListBy(
                                each -> -CatalogueBreadthTest.psi(each, setup).middle())
                        .collect(Detail::id)
                        .makeString(" "));
    }

    /** That keeps them from nobody else: not from boards on one side alone, nor where what carries is all that insulates. */
    @Test
    void whatIsNotForBothInsideIsForEveryOther() {
        JunctionKind kind = JunctionKind.of("slab edge");
        Detail strip = CATALOGUE.find("slab-edge-in-old-walls-strip").orElseThrow();
        JunctionSetup typical = TypicalBuild.MASONRY.setup(kind);
        Assembly wall = typical.second().orElseThrow();
        assertFalse(Composer.isFor(strip, bothInside(kind)));
        assertTrue(Composer.isFor(strip, typical));
        assertTrue(Composer.isFor(strip, typical.between(inside(kind, 0), Optional.of(wall))));
        assertTrue(Composer.isFor(strip, typical.between(typical.first(), Optional.of(inside(kind, 1)))));
        ImmutableList<String> alone = Lists.immutable.of(BuildUps.monolithic(), BuildUps.inItsFrame(kind, 1));
        alone.collect(use -> BuildUps.all().get(use).frame())
                .forEach(each -> assertTrue(
                        Composer.isFor(strip, typical.between(inside(kind, 0), Optional.of(each))), each.toString()));
        assertTrue(strip.drawing().forAnyBuild());
    }

    /** What is drawn for a wall of blocks beside another is offered whichever of them the shell names first, and nowhere else. */
    @Test
    void blocksBesideBoardsAreMeantInEitherOrder() {
        Detail through =
                CATALOGUE.find("outside-corner-blocks-through-beside-boards").orElseThrow();
        JunctionSetup typical = TypicalBuild.MASONRY.setup(JunctionKind.OUTSIDE_CORNER);
        Assembly boards = typical.first();
        Assembly blocks = BuildUps.all().get(BuildUps.monolithic()).masonry();
        JunctionSetup first = typical.between(blocks, Optional.of(boards));
        JunctionSetup second = typical.between(boards, Optional.of(blocks));
        assertTrue(Composer.isFor(through, first) && Composer.isFor(through, second));
        assertFalse(Composer.isFor(through, typical));
        assertFalse(Composer.isFor(through, typical.between(blocks, Optional.of(blocks))));
        assertEquals(psi(through.id(), first), psi(through.id(), second), 1e-3);
    }
}
