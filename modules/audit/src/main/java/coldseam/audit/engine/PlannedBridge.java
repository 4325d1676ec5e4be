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
 * @param opening whose side it is, by name
 * @param size m in the site's dimension system, or how many
 * @param setup what its details depend on; empty where a surface has no assembly
 * @param candidates the detail to take: the chosen one alone, or else all of the kind, from the worst on, of which the
 *     first that fits stands in, or a colder one of its rank; none where nothing is to be computed
 * @param options all of the kind that can be built there and that it is compared with, from the worst on
 * @param withheld those of the kind that ask for parts taken down which the house keeps, and take the layers, from the worst on
 * @param hindrances why the chosen detail cannot be built there, or none can stand in; with one, nothing is computed
 * @param chosen whether the house file chose the detail
 */
record PlannedBridge<S extends BridgeSetup>(
        String name,
        Optional<String> opening,
        double size,
        Optional<S> setup,
        ImmutableList<Detail> candidates,
        ImmutableList<Detail> options,
        ImmutableList<Detail> withheld,
        ImmutableList<String> hindrances,
        boolean chosen) {

    /**
     * Details for a setup, of which the first that fits is taken, or a colder one of its rank: what is computed once, however many places ask.
     *
     * @param compared whether another is only compared with it
     */
    record Question<S>(ImmutableList<Detail> details, S setup, boolean compared) {}

    /** As it stands there already: whatever it needed to be built, and whatever else might be built. */
    PlannedBridge<S> asFound() {
        return new PlannedBridge<>(
                name,
                opening,
                size,
                setup,
                candidates.collect(Detail::asFound),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                Lists.immutable.empty(),
                chosen);
    }

    /** The question of the candidates; none where nothing is to be computed. */
    Optional<Question<S>> question() {
        return candidates.isEmpty() || hindrances.notEmpty()
                ? Optional.empty()
                : setup.map(each -> new Question<>(candidates, each, false));
    }

    /** The questions of what it is compared with, less what is chosen; none where nothing is to be computed. */
    ImmutableList<Question<S>> comparisons() {
        return candidates.isEmpty() || hindrances.notEmpty() || setup.isEmpty()
                ? Lists.immutable.empty()
                : options.reject(detail -> chosen && candidates.contains(detail))
                        .collect(detail -> about(detail, true));
    }

    /** The question of one detail for its setup. */
    Question<S> about(Detail detail, boolean compared) {
        return new Question<>(Lists.immutable.of(detail), setup.orElseThrow(), compared);
    }
}
