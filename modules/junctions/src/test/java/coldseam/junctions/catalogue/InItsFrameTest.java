package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.file.house.BuildUps;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import coldseam.junctions.section.Composer;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An old frame house whose bays are filled, and no more, has options at its usual seams: as it is found, and better. */
@Tag("slow")
final class InItsFrameTest {

    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    private static final ImmutableList<JunctionKind> USUAL = Lists.immutable
            .with(new String[] {
                "existing slab edge",
                "floor over an unheated space",
                "crawl space edge",
                "foundation wall to wall above",
                "outside corner",
                "inside corner",
                "intermediate floor",
                "jamb",
                "head",
                "sill",
                "door threshold over a cold space",
                "door threshold over a heated room",
                "balloon frame at a floor",
                "eaves under a cold loft",
                "gable under a cold loft",
                "eaves of an insulated roof",
                "high eaves of a mono-pitch",
                "knee wall",
                "foot of a knee wall",
                "verge",
                "flat roof edge",
                "parapet",
                "overhang edge",
                "wall under an overhang",
                "slab edge",
                "change of wall thickness",
                "change of wall at a floor"
            })
            .collect(JunctionKind::of);

    /** Its surfaces that are usually framed, without boards; of a loft, a cellar or a flat roof, whose boards lie on its deck, the walls alone. */
    private static JunctionSetup withoutBoards(JunctionKind kind) {
        JunctionSetup usual = TypicalBuild.FRAME.setup(kind);
        return usual.between(
                withoutBoards(kind, 0, usual.first()), usual.second().map(each -> withoutBoards(kind, 1, each)));
    }

    private static Assembly withoutBoards(JunctionKind kind, int which, Assembly usual) {
        String band = kind.bands().get(which);
        boolean pitched = band.equals("roof") && !kind.typical().first().equals("flat roof");
        return band.contains("wall") || pitched
                ? BuildUps.all().get(BuildUps.inItsFrame(kind, which)).frame()
                : usual;
    }

    @Test
    void everyUsualSeamIsOfferedAsFoundAndBetter() {
        MutableList<String> faults = Lists.mutable.empty();
        for (JunctionKind kind : USUAL) {
            JunctionSetup setup = withoutBoards(kind);
            ImmutableList<Detail> offered = CATALOGUE.options(kind).select(each -> fits(each, setup));
            if (offered.noneSatisfy(each -> each.rank() == Rank.WORST)) {
                faults.add(kind.label() + ": none as found");
            }
            if (offered.noneSatisfy(each -> each.rank() != Rank.WORST
                    && CatalogueTradeTest.lost(each, setup, false).isEmpty())) {
                faults.add(kind.label() + ": none that carries air, water and vapour among "
                        + offered.collect(Detail::id).makeString(", "));
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** A floor that stands out over open air, filled between its joists alone, bears walls of every build and stands on them. */
    @Test
    void aFilledFloorHasOptionsBesideEveryWall() {
        assertEquals("", withoutOption(Lists.immutable.of("overhang edge", "wall under an overhang"), false));
    }

    /** So do the joists of a loft with batts between them, the most usual ceiling of all, beside blocks as well. */
    @Test
    void aLoftsFilledJoistsHaveOptionsBesideEveryWall() {
        assertEquals("", withoutOption(Lists.immutable.of("eaves under a cold loft", "gable under a cold loft"), true));
    }

    /** What is neither offered as found nor, unbroken, better beside a first surface that is filled in its frame alone. */
    private static String withoutOption(ImmutableList<String> kinds, boolean blocks) {
        MutableList<String> faults = Lists.mutable.empty();
        for (JunctionKind kind : kinds.collect(JunctionKind::of)) {
            Assembly filled = BuildUps.all().get(BuildUps.inItsFrame(kind, 0)).frame();
            BridgeKind.Facing faces = kind.faces().get(1);
            MutableList<Assembly> walls = Lists.mutable.of(
                    BuildUps.all().get("wall").masonry(),
                    BuildUps.all().get("wall").frame(),
                    BuildUps.all().get(BuildUps.insulatedInside(faces)).masonry(),
                    BuildUps.all().get(BuildUps.frameInsulatedInside(faces)).frame(),
                    BuildUps.all().get(BuildUps.inItsFrame(kind, 1)).frame());
            if (blocks) {
                walls.add(BuildUps.all().get(BuildUps.monolithic()).masonry());
            }
            for (Assembly wall : walls) {
                JunctionSetup setup = TypicalBuild.FRAME.setup(kind).between(filled, Optional.of(wall));
                ImmutableList<Detail> offered = CATALOGUE.options(kind).select(each -> fits(each, setup));
                if (offered.noneSatisfy(each -> each.rank() == Rank.WORST)) {
                    faults.add(kind.label() + ", " + wall.name() + ": none as found");
                }
                // Neither floor nor ceiling is lined with what keeps out rain.
                if (offered.noneSatisfy(each -> CatalogueTradeTest.lost(each, setup, true)
                        .reject("water"::equals)
                        .isEmpty())) {
                    faults.add(kind.label() + ", " + wall.name() + ": none unbroken among "
                            + offered.collect(Detail::id).makeString(", "));
                }
            }
        }
        return faults.makeString("\n");
    }

    private static boolean fits(Detail detail, JunctionSetup setup) {
        try {
            return Composer.compose(detail, setup) != null;
        } catch (DetailDoesNotFit misfit) {
            return false;
        }
    }

    /** What is drawn for frames without boards is offered nowhere else. */
    @Test
    void boardsOutsideAreAnotherBuild() {
        Detail filled = CATALOGUE.find("outside-corner-in-frame-filled").orElseThrow();
        JunctionSetup boards = TypicalBuild.FRAME.setup(JunctionKind.OUTSIDE_CORNER);
        JunctionSetup bare = withoutBoards(JunctionKind.OUTSIDE_CORNER);
        assertTrue(Composer.isFor(filled, bare));
        assertFalse(Composer.isFor(filled, boards));
        assertFalse(Composer.isFor(filled, bare.between(boards.first(), bare.second())));
    }
}
