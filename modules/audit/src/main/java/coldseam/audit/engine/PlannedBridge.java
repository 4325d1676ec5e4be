package coldseam.audit.engine;

import coldseam.junctions.BridgeSetup;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What is to be computed for an edge, or for a set of points.
 *
 * @param name of the edge or the set
 * @param size m in the site's dimension system, or how many
 * @param setup what its details depend on; empty where a surface has no assembly
 * @param candidates the detail to take: the chosen one alone, or else all of the kind, from the worst on, of which the
 *     first that fits stands in; none where nothing is to be computed
 * @param options all of the kind that can be built there and that it is compared with, from the worst on
 * @param hindrances why the chosen detail cannot be built there; with one, nothing is computed
 * @param chosen whether the house file chose the detail
 */
record PlannedBridge<S extends BridgeSetup>(
        String name,
        double size,
        Optional<S> setup,
        ImmutableList<Detail> candidates,
        ImmutableList<Detail> options,
        ImmutableList<String> hindrances,
        boolean chosen) {

    /** A detail for a setup: what is computed once, however many places ask. */
    record Question<S>(Detail detail, S setup) {}

    /** The questions of the candidates. */
    ImmutableList<Question<S>> questions() {
        return hindrances.isEmpty() ? about(candidates) : Lists.immutable.empty();
    }

    /** The questions of what it is compared with; none where nothing is to be computed. */
    ImmutableList<Question<S>> comparisons() {
        return candidates.isEmpty() || hindrances.notEmpty() ? Lists.immutable.empty() : about(options);
    }

    private ImmutableList<Question<S>> about(ImmutableList<Detail> details) {
        return setup.map(each -> details.collect(detail -> new Question<>(detail, each)))
                .orElse(Lists.immutable.empty());
    }
}
