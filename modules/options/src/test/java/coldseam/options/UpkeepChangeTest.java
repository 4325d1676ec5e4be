package coldseam.options;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.BridgeSheet;
import coldseam.audit.UpkeepItem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Upkeep;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** What is to be looked after otherwise in another house. */
class UpkeepChangeTest {

    private static final Upkeep MESH = new Upkeep("See that the mesh is whole.", "each year");
    private static final Upkeep DRAIN = new Upkeep("Clear the drain.", "each spring and autumn");

    private static UpkeepItem item(Upkeep upkeep, String id, String... places) {
        BridgeSheet<JunctionResult> sheet = new BridgeSheet<>(
                id,
                null,
                Optional.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.of(places),
                1,
                true,
                null,
                OptionalDouble.empty());
        return new UpkeepItem(upkeep, Lists.immutable.empty(), Lists.immutable.of(sheet));
    }

    private static UpkeepChange between(UpkeepItem first, UpkeepItem... second) {
        return UpkeepChange.between(Lists.immutable.of(first), Lists.immutable.of(second));
    }

    private static UpkeepChange change(ImmutableList<Upkeep> besides, ImmutableList<Upkeep> noLonger) {
        return new UpkeepChange(besides, noLonger);
    }

    /** Sheets are numbered anew in each house, so that places tell. */
    @Test
    void whatIsAskedAtTheSamePlacesIsTheSame() {
        assertEquals(
                change(Lists.immutable.empty(), Lists.immutable.empty()),
                between(
                        item(MESH, "J3", "eaves north", "eaves south"),
                        item(MESH, "J7", "eaves south", "eaves north")));
    }

    /** Though the rest of the house asks for it anyway. */
    @Test
    void anotherPlaceIsMore() {
        assertEquals(
                change(Lists.immutable.of(MESH), Lists.immutable.empty()),
                between(item(MESH, "J3", "eaves north"), item(MESH, "J3", "eaves north", "eaves south")));
        assertEquals(
                change(Lists.immutable.empty(), Lists.immutable.of(MESH)),
                between(item(MESH, "J3", "eaves north", "eaves south"), item(MESH, "J3", "eaves north")));
    }

    @Test
    void oneForTheOther() {
        assertEquals(
                change(Lists.immutable.of(DRAIN), Lists.immutable.of(MESH)),
                between(item(MESH, "J3", "eaves"), item(DRAIN, "J3", "eaves")));
    }
}
