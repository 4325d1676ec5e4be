package coldseam.envelope;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What kind of thermal bridge something is: a junction along an edge, or something at a point of a surface. */
public sealed interface BridgeKind permits JunctionKind, PointKind {

    /** The plain name, as files and reports write it. */
    String label();

    /** Its place among the kinds of its sort. */
    int ordinal();

    /** Every kind, junctions first. */
    static ImmutableList<BridgeKind> all() {
        return Lists.immutable.<BridgeKind>of(JunctionKind.values()).newWithAll(Lists.immutable.of(PointKind.values()));
    }
}
