package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.engine.Unknown;
import coldseam.envelope.House;
import coldseam.options.Comparison.Answer;
import coldseam.options.Comparison.Asked;
import coldseam.options.Comparison.Best;
import coldseam.options.Comparison.Corners;
import coldseam.options.Comparison.Next;
import coldseam.options.Comparison.Worth;
import coldseam.options.front.Choice;
import coldseam.options.front.Front;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * Asks the front, and audits each set that it answers with as a whole: an answer stands only where the audit says the same.
 */
final class FrontAnswers {

    /** Sets that are audited for one answer, at most; past it none is proven. */
    private static final int MOST_TRIED = 12;

    /** A seam of no value or one that another disturbs by nobody knows how much, and a hole, keep to no limit: they say so by these. */
    private static final ImmutableSet<String> NOT_KNOWN = Sets.immutable.of(
            "corner-out-of-range", "detail-not-chosen", "detail-out-of-range", "open-edge", "seams-touch");

    private static final ImmutableSet<String> TRANSMITTANCE =
            NOT_KNOWN.newWith("transmittance-over-limit").toImmutable();
    private static final ImmutableSet<String> SURFACE = NOT_KNOWN
            .newWith("temperature-factor-under-limit")
            .newWith("mould-by-month")
            .newWith("corner-under-limit")
            .newWith("pair-under-limit")
            .toImmutable();

    private final Variants variants;
    private final Function<ImmutableIntList, Audit> audited;
    private final WholeAudits whole;
    private final Combinations combinations;
    private final Front front;
    private final Wish wish;
    private final Audit described;
    private final House house;

    FrontAnswers(
            Variants variants,
            Function<ImmutableIntList, Audit> audited,
            WholeAudits whole,
            Combinations combinations,
            Front front,
            Wish wish) {
        this.variants = variants;
        this.audited = audited;
        this.whole = whole;
        this.combinations = combinations;
        this.front = front;
        this.wish = wish;
        this.described = audited.apply(variants.nothing());
        this.house = described.house();
    }

    Comparison comparison(ImmutableList<Alternative> alternatives, int sections) {
        ImmutableList<Answer> answers = all();
        Optional<Answer> chosen = answers.detectOptional(answer -> answer.best().isPresent());
        MutableMap<Choice, ImmutableIntList> sets = Maps.mutable.empty();
        front.choices().forEach(choice -> sets.put(choice, combinations.set(choice)));
        return new Comparison(
                described,
                alternatives,
                sections,
                combinations.size(),
                combinations.unbuildable(),
                combinations.priced(),
                front,
                sets.toImmutable(),
                answers,
                chosen,
                chosen.flatMap(Answer::best).flatMap(this::next),
                chosen.flatMap(Answer::best).map(this::worth).orElse(Lists.immutable.empty()),
                new Corners(
                        whole.of(variants.nothing()),
                        chosen.flatMap(Answer::best).map(best -> whole.of(best.set()))));
    }

    /** What was wished for first, then what is always asked. */
    private ImmutableList<Answer> all() {
        MutableList<Answer> answers = Lists.mutable.empty();
        if (wish.budget().isPresent()) {
            answers.add(combinations.priced() ? budget() : new Answer(Asked.BUDGET, wish.budget(), Optional.empty()));
        }
        if (wish.heatLoss().isPresent()) {
            answers.add(
                    limited(Asked.HEAT_LOSS, wish.heatLoss(), wish.heatLoss().getAsDouble()));
        }
        OptionalDouble perWatt = perWattPerKelvin();
        if (wish.energy().isPresent() && perWatt.isPresent()) {
            double ventilation = described.heatLoss().ventilation().orElse(0);
            answers.add(limited(
                    Asked.ENERGY, wish.energy(), wish.energy().getAsDouble() / perWatt.getAsDouble() - ventilation));
        }
        if (combinations.priced() && house.prices().heat().isPresent() && perWatt.isPresent()) {
            answers.add(leastCost(perWatt.getAsDouble() * house.prices().heat().getAsDouble()));
        }
        answers.add(free(Asked.NO_FINDING, combinations.allRules()));
        answers.add(free(Asked.SURFACE, SURFACE));
        answers.add(free(Asked.TRANSMITTANCE, TRANSMITTANCE));
        answers.add(new Answer(
                Asked.LEAST_LOSS,
                OptionalDouble.empty(),
                front.within(Long.MAX_VALUE).map(this::best)));
        return answers.toImmutable();
    }

    /** kWh a year for each W/K. */
    private OptionalDouble perWattPerKelvin() {
        return Yearly.energy(coldseam.conduction.Interval.of(1), house)
                .map(each -> OptionalDouble.of(each.middle()))
                .orElse(OptionalDouble.empty());
    }

    private Answer budget() {
        return new Answer(
                Asked.BUDGET,
                wish.budget(),
                front.within((long) Math.floor(wish.budget().getAsDouble())).map(this::best));
    }

    /**
     * The sums leave corners and what seams that touch lose more than apart out, the limit does not: so the sets that may keep to it, were their corners those of the house
     * as described, are audited with their own.
     */
    private Answer limited(Asked asked, OptionalDouble told, double wattsPerKelvin) {
        long limit = (long) Math.floor(wattsPerKelvin * Combinations.MICRO);
        HeatLoss asDescribed = whole.of(variants.nothing()).heatLoss();
        double corners = asDescribed.vertices().plus(asDescribed.pairs()).lower();
        long perhaps = limit + (long) Math.ceil(Math.max(0, -corners) * Combinations.MICRO);
        int asGood = front.cheapest(limit).map(found -> found.asGood().size()).orElse(0);
        return new Answer(
                asked,
                told,
                first(
                        front.choices().select(choice -> choice.upper() <= perhaps),
                        set -> Unknown.of(whole.of(set)).none()
                                && whole.of(set).heatLoss().total().upper() <= wattsPerKelvin,
                        asGood));
    }

    /** Parts that break a rule are left out of the sums; corners, which are no part of any, are found by whole audits. */
    private Answer free(Asked asked, ImmutableSet<String> rules) {
        Predicate<Finding> against = finding -> asked == Asked.NO_FINDING
                || finding.breaches().collect(Breach::rule).anySatisfy(rules::contains);
        Optional<Best> best = first(
                Front.of(combinations.without(rules)).choices(),
                set -> whole.of(set).findings().noneSatisfy(against::test),
                0);
        return new Answer(
                asked,
                OptionalDouble.empty(),
                best,
                best.isPresent()
                        ? Lists.immutable.empty()
                        : whole.of(variants.nothing()).findings().select(against::test));
    }

    /** The first set, by cost, whose audit as a whole says so, too. */
    private Optional<Best> first(ImmutableList<Choice> byCost, Predicate<ImmutableIntList> holds, int asGood) {
        return byCost.take(MOST_TRIED)
                .detectOptional(choice -> holds.test(combinations.set(choice)))
                .map(choice -> best(choice, asGood));
    }

    /**
     * By the upper bound of what it costs in all, so that no other is proven to cost less; of those that open no gap, which nobody is
     * advised to build for what it saves.
     */
    private Answer leastCost(double moneyPerWattPerKelvin) {
        double perMicro = moneyPerWattPerKelvin * house.prices().years() / Combinations.MICRO;
        ToDoubleFunction<Choice> most = choice -> choice.cost() + choice.upper() * perMicro;
        Optional<Choice> least = front.choices()
                .toSortedListBy(most::applyAsDouble)
                .take(MOST_TRIED)
                .detectOptional(this::opensNoGap);
        return new Answer(
                Asked.LEAST_COST,
                OptionalDouble.of(house.prices().years()),
                least.map(choice -> best(
                        choice,
                        front.choices()
                                .count(other -> other != choice
                                        && other.cost() + other.lower() * perMicro < most.applyAsDouble(choice)
                                        && opensNoGap(other)))));
    }

    private boolean opensNoGap(Choice choice) {
        return Changes.between(described, audited.apply(combinations.set(choice)))
                .breaksNothing();
    }

    private Best best(Front.Answer found) {
        return best(
                found.proven(),
                found.asGood().size(),
                found.asGood()
                        .select(other -> other.cost() < found.proven().cost())
                        .minByOptional(Choice::cost));
    }

    private Best best(Choice choice, int asGood) {
        return best(choice, asGood, Optional.empty());
    }

    private Best best(Choice choice, int asGood, Optional<Choice> cheapest) {
        ImmutableIntList set = combinations.set(choice);
        Audit audit = audited.apply(set);
        return new Best(
                choice,
                set,
                audit,
                HeatSum.of(audit).minus(HeatSum.of(described)).value(),
                Changes.between(described, audit),
                asGood,
                cheapest);
    }

    /** Among the sets that cost more, surely lose less and leave no more gaps, the one that costs least for each W/K. */
    private Optional<Next> next(Best best) {
        Choice chosen = best.choice();
        return front.steps()
                .select(choice -> choice.cost() > chosen.cost() && choice.upper() < chosen.lower())
                .toSortedListBy(choice -> (double) (choice.cost() - chosen.cost()) / (chosen.lower() - choice.upper()))
                .take(MOST_TRIED)
                .asLazy()
                .collect(choice ->
                        new Next(choice, Changes.between(best.audit(), audited.apply(combinations.set(choice)))))
                .detectOptional(next -> next.changes().breaksNothing());
    }

    private ImmutableList<Worth> worth(Best best) {
        MutableList<Worth> worth = Lists.mutable.empty();
        for (int d = 0; d < best.set().size(); d++) {
            if (best.set().get(d) > 0) {
                try {
                    Audit without = audited.apply(Variants.with(best.set(), d, 0));
                    worth.add(new Worth(
                            d,
                            best.set().get(d),
                            HeatSum.of(without).minus(HeatSum.of(best.audit())).value()));
                } catch (coldseam.files.FileFaultException noShell) {
                    // Taken back alone it cannot be built, so that there is nothing to hold it against.
                    continue;
                }
            }
        }
        return worth.toImmutableSortedListBy(each -> -each.less().middle());
    }
}
