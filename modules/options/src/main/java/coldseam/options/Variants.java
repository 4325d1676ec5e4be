package coldseam.options;

import coldseam.audit.house.HouseAudit;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.House;
import org.eclipse.collections.api.factory.primitive.IntLists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;
import org.eclipse.collections.api.list.primitive.MutableIntList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * Houses that might be built. A set names one: for each decision 0 for what is described, or the number of an option from
 * 1 on.
 */
final class Variants {

    private final HouseAudit described;
    private final House house;
    private final ImmutableList<Decision> decisions;
    private final ImmutableSet<String> details;

    Variants(HouseAudit described) {
        this.described = described;
        this.house = described.house();
        this.decisions = described.alternatives().decisions();
        this.details = described.alternatives().details();
    }

    ImmutableList<Decision> decisions() {
        return decisions;
    }

    /** As the house file describes it. */
    ImmutableIntList nothing() {
        return IntLists.immutable.of(new int[decisions.size()]);
    }

    /** One decision by one option, all others as described. */
    ImmutableIntList alone(int decision, int option) {
        return with(nothing(), decision, option);
    }

    /** The same set with one decision otherwise. */
    static ImmutableIntList with(ImmutableIntList set, int decision, int option) {
        int[] changed = set.toArray();
        changed[decision] = option;
        return IntLists.immutable.of(changed);
    }

    /** Every combination of what moves other junctions' setups, all else as described; nothing first. */
    ImmutableList<ImmutableIntList> combinations() {
        ImmutableList<ImmutableIntList> all = org.eclipse.collections.api.factory.Lists.immutable.of(nothing());
        for (int d = 0; d < decisions.size(); d++) {
            int decision = d;
            if (decisions.get(d).about().movesOthers()) {
                all = all.flatCollect(set -> numbers(decision).collect(option -> with(set, decision, option)));
            }
        }
        return all;
    }

    /** Numbers of what may be decided, what is described first. */
    ImmutableIntList numbers(int decision) {
        MutableIntList numbers = IntLists.mutable.empty();
        for (int k = 0; k <= decisions.get(decision).options().size(); k++) {
            numbers.add(k);
        }
        return numbers.toImmutable();
    }

    /**
     * The combinations' houses in which every other decision has its option of this number, or its last: some few audits show
     * every option of every decision, since those that move nothing else are computed each by itself.
     */
    ImmutableIntList side(ImmutableIntList combination, int number) {
        int[] set = combination.toArray();
        for (int d = 0; d < set.length; d++) {
            if (!decisions.get(d).about().movesOthers()) {
                set[d] = Math.min(number, decisions.get(d).options().size());
            }
        }
        return IntLists.immutable.of(set);
    }

    /** How many sides a combination has. */
    int sides() {
        return 1
                + decisions
                        .reject(each -> each.about().movesOthers())
                        .collectInt(each -> each.options().size())
                        .maxIfEmpty(0);
    }

    /**
     * The house of a set, ready to be audited.
     *
     * @throws coldseam.files.FileFaultException where it has no shell
     */
    HouseAudit house(ImmutableIntList set) {
        House changed = house;
        for (int d = 0; d < set.size(); d++) {
            if (set.get(d) > 0) {
                Decision decision = decisions.get(d);
                changed = decision.applied(changed, decision.options().get(set.get(d) - 1));
            }
        }
        return described.changed(changed, details);
    }
}
