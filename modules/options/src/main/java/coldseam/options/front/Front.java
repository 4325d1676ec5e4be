package coldseam.options.front;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The sets that are worth knowing; see the package for what is left out.
 *
 * @param choices by cost, of equal cost by upper bound
 * @param allKept whether every set that cannot be told apart from these is among them; else only their bounds are exact
 */
public record Front(ImmutableList<Choice> choices, boolean allKept) {

    /** What is best, and what may be. */
    public record Answer(Choice proven, ImmutableList<Choice> asGood) {}

    /** The front of all sets of all scenarios. */
    public static Front of(ImmutableList<Scenario> scenarios) {
        return Search.front(scenarios);
    }

    /**
     * The least loss for a budget.
     *
     * @return the set of least upper bound that costs no more, and with it all kept ones that cost no more and may lose less;
     *     empty where everything costs more
     */
    public Optional<Answer> within(long budget) {
        ImmutableList<Choice> affordable = choices.select(choice -> choice.cost() <= budget);
        // By cost, so that of equal bounds the cheapest comes first.
        return affordable
                .minByOptional(Choice::upper)
                .map(best -> new Answer(
                        best, affordable.select(other -> other.lower() < best.upper() && !other.equals(best))));
    }

    /**
     * The least cost for a target.
     *
     * @param limit of the loss, µW/K
     * @return the cheapest set whose upper bound keeps to it, and with it all kept ones that cost less and may keep to it;
     *     empty where none is proven to
     */
    public Optional<Answer> cheapest(long limit) {
        return choices.detectOptional(choice -> choice.upper() <= limit)
                .map(proven -> new Answer(
                        proven, choices.select(other -> other.cost() < proven.cost() && other.lower() <= limit)));
    }

    /**
     * The staircase of what is proven: each set whose upper bound lies below those of all cheaper ones, by cost. It is what a
     * picture shows.
     */
    public ImmutableList<Choice> steps() {
        long[] least = {Long.MAX_VALUE};
        return choices.select(choice -> {
            boolean lower = choice.upper() < least[0];
            least[0] = Math.min(least[0], choice.upper());
            return lower;
        });
    }
}
