package coldseam.audit;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * Work stops until somebody has looked.
 *
 * @param name plain
 * @param before what would cover it
 * @param items what to look at and photograph, each with its own signature and photograph
 * @param bridges sheets of the junctions, then of the points it belongs to
 */
public record HoldPoint(String name, String before, ImmutableList<Item> items, ImmutableList<BridgeSheet<?>> bridges) {

    /**
     * One thing to look at.
     *
     * @param lookAt in plain words
     * @param bridges sheets whose details ask for it; none where the stop does, or a corner's own detail
     */
    public record Item(String lookAt, ImmutableList<BridgeSheet<?>> bridges) {

        /** Ids of the sheets whose details ask for it. */
        public ImmutableList<String> sheets() {
            return bridges.collect(BridgeSheet::id);
        }
    }

    /** What to look at, without whose it is. */
    public ImmutableList<String> lookAt() {
        return items.collect(Item::lookAt);
    }

    /** Ids of all sheets it belongs to. */
    public ImmutableList<String> sheets() {
        return bridges.collect(BridgeSheet::id);
    }
}
