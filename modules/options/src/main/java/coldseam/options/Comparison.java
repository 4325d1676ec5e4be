package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.Finding;
import coldseam.conduction.Interval;
import coldseam.envelope.Alternatives.Decision;
import coldseam.options.front.Choice;
import coldseam.options.front.Front;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A house and what it might be.
 *
 * @param described the house as its file describes it
 * @param alternatives each option alone, in the file's order
 * @param sections that were needed
 * @param combinations of build-ups and openings that were looked at, what is described first
 * @param unbuildable how many others cannot be built, since a detail does not fit or a wall leaves no room
 * @param priced whether every option has a cost; else costs count as nothing, and the front is of heat alone
 * @param front of all sets
 * @param sets what the front's choices are, in its order
 * @param answers to what was asked, in order
 * @param chosen the answer that is shown first; empty where there is no set at all
 * @param next the set that surely loses less than the chosen one and opens no gap that it has not, for the least money a W/K; empty where
 *     none does
 * @param worth of each decision of the chosen set that is not as described: W/K that taking it back would lose, the most first
 * @param corners which the sums leave out
 */
public record Comparison(
        Audit described,
        ImmutableList<Alternative> alternatives,
        int sections,
        int combinations,
        int unbuildable,
        boolean priced,
        Front front,
        ImmutableMap<Choice, ImmutableIntList> sets,
        ImmutableList<Answer> answers,
        Optional<Answer> chosen,
        Optional<Next> next,
        ImmutableList<Worth> worth,
        Corners corners) {

    /** What was asked. */
    public enum Asked {
        /** The least loss within a budget. */
        BUDGET,
        /** The least cost for a limit of H_T. */
        HEAT_LOSS,
        /** The least cost for a limit of a year's loss. */
        ENERGY,
        /** The least cost with every psi and chi within its limit. */
        TRANSMITTANCE,
        /** The least cost with every inner surface warm enough. */
        SURFACE,
        /** The least cost with nothing found. */
        NO_FINDING,
        /** The least cost of building and of heat over the years of the house file that opens no gap. */
        LEAST_COST,
        /** The least loss, whatever it costs. */
        LEAST_LOSS
    }

    /**
     * An answer.
     *
     * @param limit budget, W/K or kWh; empty where none was given
     * @param best the set; empty where none is proven to do it
     * @param against what is found in the house as described and must not be for it; empty where there is a set
     */
    public record Answer(Asked asked, OptionalDouble limit, Optional<Best> best, ImmutableList<Finding> against) {

        Answer(Asked asked, OptionalDouble limit, Optional<Best> best) {
            this(asked, limit, best, Lists.immutable.empty());
        }
    }

    /**
     * A set that was audited as a whole.
     *
     * @param choice on the front
     * @param set by decision, 0 for what is described
     * @param audit of the whole house
     * @param more W/K that it loses more than what is described
     * @param changes to the findings
     * @param asGood how many other sets of the front cannot be told apart from it in this
     * @param cheapest of these, of those that cost less than it; empty where none does
     */
    public record Best(
            Choice choice,
            ImmutableIntList set,
            Audit audit,
            Interval more,
            Changes changes,
            int asGood,
            Optional<Choice> cheapest) {}

    /** A set of the front that is the next best step, and what it changes of the chosen one's findings. */
    public record Next(Choice choice, Changes changes) {}

    /** What one decision does in a set. */
    public record Worth(int decision, int option, Interval less) {}

    /**
     * Audits with the corners where edges meet, whose loss follows from all of these edges' details and so adds up over no
     * decisions.
     *
     * @param described of the house as described
     * @param chosen of the chosen set; empty where there is none
     */
    public record Corners(Audit described, Optional<Audit> chosen) {}

    /** W/K that a set loses, corners left out. */
    public static Interval loss(Choice of) {
        return new Interval(of.lower() / Combinations.MICRO, of.upper() / Combinations.MICRO);
    }

    /** W/K that a set loses more than another. */
    public static Interval more(Choice than, Choice set) {
        return new Interval(
                (set.lower() - than.upper()) / Combinations.MICRO, (set.upper() - than.lower()) / Combinations.MICRO);
    }

    /** The house as it was found; empty where its file does not say. */
    public Optional<Before> before() {
        return Before.of(corners.described());
    }

    /** The option of a decision in a set; empty for what is described. */
    public Optional<Alternative> option(int decision, int number) {
        if (number == 0) {
            return Optional.empty();
        }
        return Optional.of(alternatives
                .select(each -> each.decision()
                        .equals(alternatives
                                .collect(Alternative::decision)
                                .distinct()
                                .get(decision)))
                .get(number - 1));
    }

    /** The options of a set that are not what is described, in the decisions' order. */
    public ImmutableList<Alternative> options(ImmutableIntList set) {
        return set.collectWithIndex((number, decision) -> option(decision, number))
                .flatCollect(each -> Lists.immutable.withAll(each.stream().toList()))
                .toImmutable();
    }

    /** The option alone that surely saves most and opens no gap; empty where none surely saves so. */
    public Optional<Alternative> worthMost() {
        return alternatives
                .select(each -> sound(each) && each.built().orElseThrow().standing() == Standing.BETTER)
                .minByOptional(each -> each.built().orElseThrow().more().upper());
    }

    /** Options alone that surely save, cost less or the same and open no gap, what saves most first. */
    public ImmutableList<Alternative> betterForNoMore() {
        return alternatives
                .select(each -> sound(each)
                        && each.built().orElseThrow().standing() == Standing.BETTER
                        && each.built().orElseThrow().cost().orElse(1) <= 0)
                .toImmutableSortedListBy(
                        each -> each.built().orElseThrow().more().upper());
    }

    /** Junctions or points of the house as described that a decision is about; none of a build-up or an opening. */
    public ImmutableList<BridgeRow> rows(Decision decision) {
        return new Part(decision, described).rows();
    }

    /** The worst of what a decision is about, in the house as described; empty where nothing of it is computed. */
    public Optional<Worst> worst(Decision decision) {
        return new Part(decision, described).worst();
    }

    /** Options of the same decision whose loss the intervals cannot tell from its own. */
    public ImmutableList<Alternative> asGood(Alternative as) {
        return alternatives.select(each -> each.decision().equals(as.decision())
                && as.asGood().contains(each.option().name()));
    }

    private static boolean sound(Alternative each) {
        return each.built().filter(built -> built.changes().breaksNothing()).isPresent();
    }

    /** The option alone that is paid back first and opens no gap; empty where none surely is. */
    public Optional<Alternative> paidBackFirst() {
        return alternatives
                .select(each -> sound(each)
                        && each.built().flatMap(Alternative.Built::payback).isPresent())
                .minByOptional(each ->
                        each.built().orElseThrow().payback().orElseThrow().upper());
    }
}
