package coldseam.audit.engine;

import coldseam.envelope.OwnPsi;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What is to be computed for an edge.
 *
 * @param edge of the shell
 * @param setup what its details depend on; empty where a surface beside it has no assembly
 * @param candidates the detail to take: the chosen one alone, or else all of the kind, from the worst on, of which the
 *     first that fits stands in
 * @param options those of the kind that can be built there, from the worst on
 * @param withheld those of the kind that ask for parts taken down which the house keeps, and take the layers, from the worst on
 * @param hindrances why the chosen detail cannot be built there; empty where it can
 * @param chosen whether the house file chose the detail
 * @param own psi of its own, which goes before the computed one
 */
record PlannedEdge(
        Edge edge,
        Optional<JunctionSetup> setup,
        ImmutableList<Detail> candidates,
        ImmutableList<Detail> options,
        ImmutableList<Detail> withheld,
        ImmutableList<String> hindrances,
        boolean chosen,
        Optional<OwnPsi> own) {

    /** As it stands there already: whatever it needed to be built, and whatever else might be built. */
    PlannedEdge asFound() {
        return new PlannedEdge(
                edge,
                setup,
                candidates.collect(Detail::asFound),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                chosen,
                Optional.empty());
    }
}
