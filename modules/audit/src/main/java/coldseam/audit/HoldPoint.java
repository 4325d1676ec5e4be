package coldseam.audit;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * Work stops until somebody has looked.
 *
 * @param name plain
 * @param before what would cover it
 * @param lookAt what to look at and photograph
 * @param bridges sheets of the junctions, then of the points it belongs to
 */
public record HoldPoint(
        String name, String before, ImmutableList<String> lookAt, ImmutableList<BridgeSheet<?>> bridges) {

    /** Ids of all sheets it belongs to. */
    public ImmutableList<String> sheets() {
        return bridges.collect(BridgeSheet::id);
    }
}
