package coldseam.junctions.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.envelope.Assembly;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.file.house.BuildUps;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.plan.SectionPlan;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;
import org.junit.jupiter.api.Test;

/** A wall of masonry stands on itself between the ends of joists; a rim board and a plate bear a frame alone. */
class JoistsInMasonryTest {

    private static final ImmutableSet<String> ASKED =
            Sets.immutable.of("rim board", "sill plate", "wall between the joists' ends");

    @Test
    void masonryGoesOnBetweenTheJoists() {
        assertEquals(
                Sets.immutable.of("wall between the joists' ends"),
                drawn(BuildUps.all().get("wall").masonry()));
    }

    @Test
    void aFrameStandsOnRimAndPlate() {
        assertEquals(
                Sets.immutable.of("rim board", "sill plate"),
                drawn(BuildUps.all().get("wall").frame()));
    }

    @Test
    void masonryStandsOnABeamOverOpenAir() {
        for (String id : Lists.immutable.of(
                "overhang-edge-bare",
                "overhang-edge-boards-wrap",
                "overhang-edge-boards-on-top-bare",
                "overhang-edge-boards-on-top-on-a-course",
                "overhang-edge-inner-boards-meet",
                "overhang-edge-inner-boards-apart")) {
            assertTrue(
                    drawnUnderBrick(id)
                            .anySatisfy(each -> each.own().equals("beam at the edge")
                                    && Shapes.of(each.outline().corners()).getArea() > 0.03),
                    id);
        }
    }

    private static ImmutableList<SectionPlan.Piece> drawnUnderBrick(String id) {
        JunctionKind kind = JunctionKind.of("overhang edge");
        Detail detail =
                CatalogueFile.builtIn().options(kind).detect(each -> each.id().equals(id));
        boolean onTop = id.contains("on-top") || id.contains("inner");
        Assembly joists = BuildUps.all()
                .get(onTop ? "joists insulated inside" : "floor of the other build")
                .masonry();
        Assembly wall = BuildUps.all()
                .get(id.contains("inner") ? "wall insulated inside" : "wall")
                .masonry();
        return Composer.compose(detail, TypicalBuild.MASONRY.setup(kind).between(joists, Optional.of(wall)))
                .plan()
                .pieces();
    }

    /** Those asked for that are drawn under a wall on joists that are filled alone. */
    private static ImmutableSet<String> drawn(Assembly wall) {
        JunctionKind kind = JunctionKind.of("floor over an unheated space");
        Assembly joists = BuildUps.all().get("floor insulated in its frame").masonry();
        Detail detail =
                CatalogueFile.builtIn().options(kind).detect(each -> each.id().equals("unheated-below-outer-skirt"));
        return Composer.compose(detail, TypicalBuild.MASONRY.setup(kind).between(joists, Optional.of(wall)))
                .plan()
                .pieces()
                .collect(SectionPlan.Piece::own)
                .toSet()
                .toImmutable()
                .intersect(ASKED);
    }
}
