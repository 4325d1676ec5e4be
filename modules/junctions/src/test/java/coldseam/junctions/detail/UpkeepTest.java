package coldseam.junctions.detail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.junctions.catalogue.CatalogueFile;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

/** What asks to be looked after, and what lies covered; common practice, no source. */
class UpkeepTest {

    private static final ImmutableList<Detail> ALL = CatalogueFile.builtIn()
            .junctions()
            .newWithAll(CatalogueFile.builtIn().points());

    private static ImmutableList<String> asked(String id) {
        return Upkeep.of(ALL.detect(each -> each.id().equals(id))).collect(Upkeep::look);
    }

    @Test
    void everyRuleAndEachOfItsWordsAsksSomething() {
        assertEquals(
                Lists.immutable.empty(),
                Upkeep.all()
                        .reject(rule ->
                                ALL.anySatisfy(detail -> Upkeep.of(detail).contains(rule))));
        ImmutableList<String> pieces =
                ALL.flatCollect(detail -> detail.drawing().pieces());
        assertEquals(
                Lists.immutable.empty(),
                Upkeep.words().reject(word -> pieces.anySatisfy(piece -> piece.matches(".*\\b" + word + "s?\\b.*"))));
    }

    @Test
    void whatIsDrawnInSightAsks() {
        assertTrue(asked("terrace-threshold-on-block")
                .containsAll(Lists.mutable.of(
                        "Lift the grating before the door and clear the channel under it.",
                        "See that the pan under the door drains at its front edge.")));
        assertTrue(asked("roof-drain-insulated").getOnly().startsWith("Clear the drain"));
        assertTrue(asked("abutment-inner-boards-meet").getLast().startsWith("Paint the wall's inside only"));
    }

    /** A pane or a panel is no pan, and insulation that laps a frame from outside wears out of sight. */
    @Test
    void whatLiesCoveredAsksNothing() {
        assertEquals(Lists.immutable.empty(), asked("intermediate-floor-board-passes"));
        assertEquals(Lists.immutable.empty(), asked("outside-corner-unbroken"));
    }
}
