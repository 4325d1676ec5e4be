package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.envelope.Assembly;
import coldseam.envelope.file.house.BuildUps;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Floors of joists that bear in masonry: between the joists the wall goes on, and their ends are points of their own. */
class JoistFloorTest {

    private static final Accuracy ACCURACY = new Accuracy(1e-3, 200_000);

    private static Detail detail(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    private static JunctionResult computed(Detail detail, JunctionSetup setup) {
        return Samples.ofHeat(ACCURACY).compute(detail, setup);
    }

    private static ImmutableList<String> materials(JunctionResult result) {
        return result.plan().pieces().collect(piece -> piece.material().name());
    }

    /** A slab in the wall carries heat along it to the cold that masonry between joists does not. */
    @ParameterizedTest
    @CsvSource({
        "intermediate-floor-board-passes, false",
        "intermediate-floor-slab-through, true",
        "intermediate-floor-edge-thin-board, true",
        "intermediate-floor-in-blocks-to-the-face, true",
        "floor-change-thin-board, true"
    })
    void noConcreteIsDrawnBetweenJoists(String id, boolean bridge) {
        Detail detail = detail(id);
        JunctionSetup slab = TypicalBuild.MASONRY.setup(detail);
        JunctionResult ofSlab = computed(detail, slab);
        JunctionResult ofJoists = computed(detail, Samples.atJoists(slab));
        assertTrue(materials(ofSlab).contains("reinforced concrete"));
        assertTrue(
                !materials(ofJoists).contains("reinforced concrete"),
                () -> materials(ofJoists).makeString());
        assertTrue(materials(ofJoists).contains("softwood"));
        if (bridge) {
            assertTrue(
                    ofJoists.psiExternal().upper() < ofSlab.psiExternal().lower(),
                    () -> ofJoists.psiExternal() + ", " + ofSlab.psiExternal());
        }
    }

    /** Joists in a frame are its own rim, whatever is said of the floor. */
    @Test
    void aFrameIsDrawnAsEver() {
        Detail detail = detail("intermediate-floor-board-passes");
        JunctionSetup frame = TypicalBuild.FRAME.setup(detail);
        assertEquals(
                computed(detail, frame).psiExternal(),
                computed(detail, Samples.atJoists(frame)).psiExternal());
    }

    /** Insulation inside that stops at the floor leaves the wall bare in the bays, as the detail for such bays has it. */
    @Test
    void insulationInsideStopsAtTheFloor() {
        Assembly inside = BuildUps.all().get("wall insulated inside").masonry();
        Detail bare = detail("intermediate-floor-joist-bays-bare");
        Detail through = detail("intermediate-floor-slab-through");
        JunctionSetup setup = TypicalBuild.MASONRY.setup(bare);
        assertEquals(inside, setup.first());
        JunctionResult drawn = computed(through, Samples.atJoists(setup));
        JunctionResult known = computed(bare, setup);
        assertEquals(
                known.psiExternal().middle(),
                drawn.psiExternal().middle(),
                known.psiExternal().width());
    }
}
