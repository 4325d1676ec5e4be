package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Accuracy;
import coldseam.envelope.Opening;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.Samples;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lintels of what the opening says: steel loses more than concrete, the wall's own brick and timber lose less. */
class LintelTest {

    private static final Detail HEAD = detail("head-inner-bare");

    private static Detail detail(String id) {
        return CatalogueFile.builtIn().find(id).orElseThrow();
    }

    private static JunctionResult computed(TypicalBuild build, Optional<Opening.Lintel> lintel) {
        return computed(HEAD, build, lintel);
    }

    private static JunctionResult computed(Detail detail, TypicalBuild build, Optional<Opening.Lintel> lintel) {
        JunctionSetup setup = build.setup(detail);
        return Samples.ofHeat(new Accuracy(3e-3, 200_000))
                .compute(
                        detail,
                        new JunctionSetup(
                                setup.kind(),
                                setup.first(),
                                setup.second(),
                                setup.angle(),
                                setup.firstExposure(),
                                setup.secondExposure(),
                                setup.opening().map(each -> each.under(lintel)),
                                setup.floorThickness(),
                                setup.upstand(),
                                setup.ground(),
                                setup.indoorTemperature(),
                                setup.outdoorTemperature()));
    }

    private static JunctionResult inMasonry(Opening.Lintel lintel) {
        return computed(TypicalBuild.MASONRY, Optional.of(lintel));
    }

    private static void losesLess(Opening.Lintel one, Opening.Lintel other) {
        double less = inMasonry(one).psiExternal().upper();
        double more = inMasonry(other).psiExternal().lower();
        assertTrue(less < more, () -> one + " " + less + ", " + other + " " + more);
    }

    @Test
    void whatCarriesOverAnOpeningIsOfWhatIsSaid() {
        losesLess(Opening.Lintel.TIMBER, Opening.Lintel.ARCH);
        losesLess(Opening.Lintel.ARCH, Opening.Lintel.CONCRETE);
        losesLess(Opening.Lintel.CONCRETE, Opening.Lintel.STEEL);
    }

    /** A head that draws its lintel itself, behind board in a wall of blocks. */
    @Test
    void behindBoardItIsOfWhatIsSaid() {
        Detail behind = detail("head-in-blocks-lintel-behind-board");
        double concrete = computed(behind, TypicalBuild.MASONRY, Optional.empty())
                .psiExternal()
                .lower();
        double timber = computed(behind, TypicalBuild.MASONRY, Optional.of(Opening.Lintel.TIMBER))
                .psiExternal()
                .upper();
        assertTrue(timber < concrete, () -> timber + ", " + concrete);
    }

    @Test
    void whereNothingIsSaidItIsOfConcrete() {
        assertEquals(
                inMasonry(Opening.Lintel.CONCRETE).psiExternal(),
                computed(TypicalBuild.MASONRY, Optional.empty()).psiExternal());
    }

    /** A frame has its header, whatever is said. */
    @Test
    void aFrameIsDrawnAsEver() {
        assertEquals(
                computed(TypicalBuild.FRAME, Optional.empty()).psiExternal(),
                computed(TypicalBuild.FRAME, Optional.of(Opening.Lintel.STEEL)).psiExternal());
    }
}
