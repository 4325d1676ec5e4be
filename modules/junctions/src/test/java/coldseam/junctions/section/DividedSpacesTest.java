package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Where a loft, a garage or a crawl space ends and outdoors begins. */
class DividedSpacesTest {

    private static Composition composed(String id, TypicalBuild build) {
        Detail detail = CatalogueFile.builtIn().find(id).orElseThrow();
        return BuiltIn.composed(detail, build.setup(detail));
    }

    @Test
    void noBuiltInDetailLeavesItToChance() {
        MutableList<String> faults = Lists.mutable.empty();
        for (TypicalBuild build : TypicalBuild.values()) {
            for (Detail detail : CatalogueFile.builtIn().junctions()) {
                composed(detail.id(), build)
                        .notes()
                        .select(note -> note.startsWith("Nothing divides"))
                        .forEach(note -> faults.add(detail.id() + " in " + build + ": " + note));
            }
        }
        assertTrue(faults.isEmpty(), faults.makeString("\n"));
    }

    @Test
    void theRoofDividesTheLoftFromOutdoorsWhereTheDetailSays() {
        Composition composition = composed("eaves-loft-raised-heel", TypicalBuild.MASONRY);
        ImmutableList<Point> loft = ends(composition, "loft");
        ImmutableList<Point> outdoors = ends(composition, Surroundings.OUTDOOR);
        ImmutableList<Point> both = loft.select(outdoors::contains).distinct();
        assertEquals(1, both.size(), loft + " and " + outdoors);
        // Half of the ceiling's 300 mm of insulation above 12.5 + 25 mm; the wall's face at 15 + 240 + 200 + 10 mm.
        assertEquals(0.1875, both.getFirst().y(), 1e-6);
        assertEquals(0.465, both.getFirst().x(), 1e-6);
    }

    /** The gable goes on up: its inner face is the loft's, its outer one outdoors', and they meet nowhere. */
    @Test
    void aGableFacesTheLoftInsideAndOutdoorsOutside() {
        for (String id : new String[] {"gable-cold-loft-wall-bare-above", "gable-cold-loft-wall-insulated-above"}) {
            Composition composition = composed(id, TypicalBuild.MASONRY);
            double most = composition
                    .heatFlow()
                    .boundaries()
                    .select(each -> each.environment().equals("loft"))
                    .flatCollect(Boundary::path)
                    .collectDouble(Point::x)
                    .max();
            // The inner face of the gable's brick: 15 mm of plaster end under the ceiling.
            assertEquals(0.015, most, 1e-6, id);
        }
    }

    private static ImmutableList<Point> ends(Composition composition, String environment) {
        return composition
                .heatFlow()
                .boundaries()
                .select(each -> each.environment().equals(environment))
                .flatCollect(each ->
                        Lists.immutable.of(each.path().getFirst(), each.path().getLast()));
    }
}
