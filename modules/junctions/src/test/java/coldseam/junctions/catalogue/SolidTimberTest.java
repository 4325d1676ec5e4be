package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.junctions.BuiltIn;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.TypicalSetups;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What bears in a house whose walls are solid timber: wood, as in a frame, and no concrete but in the ground. */
@Tag("slow")
final class SolidTimberTest {

    private static final Material PANEL =
            MaterialLibrary.named("cross-laminated timber").orElseThrow();

    /** What stands on the ground beside a house, whatever that is built of. */
    private static final Pattern ON_THE_GROUND =
            Pattern.compile("retaining wall|flight|rib of the slab|ledge|light well");

    private static Assembly ofTimber(Assembly assembly) {
        return new Assembly(
                assembly.name(),
                assembly.layers()
                        .collect(layer -> layer.role() == Role.STRUCTURE ? TypicalSetups.of(layer, PANEL) : layer),
                assembly.fasteners(),
                assembly.gaps(),
                assembly.rain());
    }

    /** Concrete that a detail draws of its own, not what a house's layers are. */
    private static ImmutableList<String> concrete(Detail detail, JunctionSetup setup) {
        return BuiltIn.composed(detail, setup)
                .plan()
                .pieces()
                .select(piece -> piece.origin() instanceof SectionPlan.Origin.OfDetail
                        && piece.material().name().equals("reinforced concrete"))
                .collect(piece -> ((SectionPlan.Origin.OfDetail) piece.origin()).what())
                .reject(what -> ON_THE_GROUND.matcher(what).find());
    }

    @Test
    void floorsAndLintelsAreNoConcreteInWallsOfSolidTimber() {
        StringBuilder faults = new StringBuilder();
        int inMasonry = 0;
        for (Detail detail : CatalogueFile.builtIn()
                .junctions()
                .reject(each -> each.junction().form().ground())) {
            JunctionSetup masonry = TypicalBuild.MASONRY.setup(detail);
            JunctionSetup timber =
                    masonry.between(ofTimber(masonry.first()), masonry.second().map(SolidTimberTest::ofTimber));
            try {
                inMasonry += concrete(detail, masonry).size();
                concrete(detail, timber)
                        .forEach(what -> faults.append(detail.id())
                                .append(": ")
                                .append(what)
                                .append('\n'));
            } catch (DetailDoesNotFit notOffered) {
                // What is told of layers that a setup lacks is held elsewhere.
            }
        }
        assertEquals("", faults.toString());
        assertTrue(inMasonry >= 20, inMasonry + " parts of concrete in masonry");
    }
}
