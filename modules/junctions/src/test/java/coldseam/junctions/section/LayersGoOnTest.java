package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.JunctionKind;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.DetailFile;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** What houses' own details are held to, the catalogue keeps as well. */
class LayersGoOnTest {

    private static void require(Detail detail, JunctionSetup setup) {
        Composition composition = BuiltIn.composed(detail, setup);
        LayersGoOn.require(
                detail,
                Scene.of(detail, (BandDrawing) detail.drawing(), setup),
                composition.plan(),
                composition.ends());
    }

    @Test
    void theCataloguesSectionsEndInAllTheirLayers() {
        MutableList<String> faults = Lists.mutable.empty();
        for (TypicalBuild build : TypicalBuild.values()) {
            for (Detail detail : CatalogueFile.builtIn().junctions()) {
                try {
                    require(detail, build.setup(detail));
                } catch (DetailDoesNotFit refused) {
                    faults.add(build + ": " + refused.getMessage());
                }
            }
        }
        assertEquals("", faults.makeString("\n"));
    }

    /** A sheet takes no part in the heat flow and yet is a layer: what keeps air out may not end before. */
    @Test
    void aMembraneThatIsLeftOutIsMissed() {
        Detail detail = DetailFile.read(
                "corner",
                "detail: corner\nkind: outside corner\nname: n\nrank: best\nlooks-like: l\norder: []\n"
                        + "connections: {}\nfailures: []\nphotographs: []\ndrawing:\n"
                        + "- {band: wall, without: [membrane]}\n- {band: other wall}\n");
        DetailDoesNotFit refused = assertThrows(
                DetailDoesNotFit.class, () -> require(detail, TypicalBuild.FRAME.setup(JunctionKind.OUTSIDE_CORNER)));
        assertTrue(refused.getMessage().contains("membrane"), refused.getMessage());
    }
}
