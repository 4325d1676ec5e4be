package coldseam.envelope;

import coldseam.files.OneOf;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What kind of thermal bridge something is: a junction along an edge, or something at a point of a surface.
 *
 * <p>All a kind decides stands in its own file in the folder {@code kinds} of this module.
 */
public sealed interface BridgeKind extends OneOf permits JunctionKind, PointKind {

    /** The plain name, as files and reports write it. */
    @Override
    String label();

    /** Names of the hold points it belongs to. */
    ImmutableList<String> holdPoints();

    /** Every kind, junctions first. */
    static ImmutableList<BridgeKind> all() {
        return Lists.immutable.<BridgeKind>withAll(JunctionKind.all()).newWithAll(PointKind.all());
    }

    /** Which way a surface looks from indoors. */
    enum Facing {
        UP,
        SIDE,
        DOWN
    }
}
