package coldseam.junctions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.JunctionKind;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.detail.Rank;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** Where a wall's air gap ends above the ground, a deck or a roof, insects and mice find it open. */
final class CatalogueMeshTest {

    private static final ImmutableList<JunctionKind> FEET = Lists.immutable.of(
            JunctionKind.SLAB_EDGE,
            JunctionKind.EXISTING_SLAB_EDGE,
            JunctionKind.of("porch slab against the house"),
            JunctionKind.CRAWL_SPACE_EDGE,
            JunctionKind.UNHEATED_BELOW_EDGE,
            JunctionKind.FOUNDATION_WALL_TOP,
            JunctionKind.WALL_TO_TERRACE,
            JunctionKind.ROOF_STEP);

    /** A wall's air layer that is told where to end, in the line of its band. */
    private static final Pattern ENDS = Pattern.compile("- band: wall\\n( +to: .*\\n)? +ends: .*air layer: ");

    private static String text(Detail detail) {
        try (InputStream in = CatalogueMeshTest.class.getResourceAsStream("/details/" + detail.id() + ".yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new AssertionError(detail.id(), unreadable);
        }
    }

    @Test
    void anAirGapsFootHasItsMesh() {
        ImmutableList<Detail> open = FEET.flatCollect(CatalogueFile.builtIn()::options)
                .reject(each -> each.rank() == Rank.WORST)
                .select(each -> ENDS.matcher(text(each)).find());
        assertTrue(open.size() >= 18, open.size() + " details");
        assertEquals(
                "",
                open.reject(each -> each.drawing().pieces().contains("insect mesh"))
                        .collect(Detail::id)
                        .makeString("\n"));
    }
}
