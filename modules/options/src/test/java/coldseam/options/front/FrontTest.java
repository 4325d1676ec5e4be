package coldseam.options.front;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.primitive.IntLists;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The front against every set one by one, and, where these are too many, against a general-purpose solver. */
class FrontTest {

    /** µW/K of each W/K, as the solver is told losses, so that its numbers are of like size. */
    private static final double MICRO = 1e6;

    /** Scenarios of small whole numbers, so that ties and overlaps are many. */
    private static ImmutableList<Scenario> small(Random random, int scenarios, int groups, int items, int width) {
        return Lists.immutable.fromStream(IntStream.range(0, scenarios).mapToObj(s -> {
            int lower = random.nextInt(8);
            return new Scenario(
                    new Item(s, random.nextInt(4), lower, lower + random.nextInt(width + 1)),
                    Lists.immutable.fromStream(IntStream.range(0, groups)
                            .mapToObj(g -> Lists.immutable.fromStream(IntStream.range(0, items)
                                    .mapToObj(k -> {
                                        int low = random.nextInt(12) - 3;
                                        return new Item(k, random.nextInt(8), low, low + random.nextInt(width + 1));
                                    })))));
        }));
    }

    /** Every set there is. */
    private static ImmutableList<Choice> all(ImmutableList<Scenario> scenarios) {
        MutableList<Choice> all = Lists.mutable.empty();
        for (Scenario scenario : scenarios) {
            Item fixed = scenario.fixed();
            MutableList<Choice> partial = Lists.mutable.of(
                    new Choice(fixed.id(), IntLists.immutable.empty(), fixed.cost(), fixed.lower(), fixed.upper()));
            for (ImmutableList<Item> group : scenario.groups()) {
                partial = partial.flatCollect(before -> group.collect(item -> new Choice(
                        before.scenario(),
                        before.items().newWith(item.id()),
                        before.cost() + item.cost(),
                        before.lower() + item.lower(),
                        before.upper() + item.upper())));
            }
            all.addAllIterable(partial);
        }
        return all.toImmutable();
    }

    /** True losses of every item within its bounds, the same in every set, as a house has them. */
    private static long loss(ImmutableList<Scenario> scenarios, Choice choice, long seed) {
        Scenario scenario = scenarios.detect(each -> each.fixed().id() == choice.scenario());
        long sum = loss(scenario.fixed(), seed, choice.scenario(), -1);
        for (int g = 0; g < choice.items().size(); g++) {
            int id = choice.items().get(g);
            Item item = scenario.groups().get(g).detect(each -> each.id() == id);
            sum += loss(item, seed, choice.scenario(), g);
        }
        return sum;
    }

    private static long loss(Item item, long seed, int scenario, int group) {
        long width = item.upper() - item.lower();
        Random random = new Random(31 * (31 * (31 * seed + scenario) + group) + item.id());
        return switch (random.nextInt(3)) {
            case 0 -> item.lower();
            case 1 -> item.upper();
            default -> item.lower() + random.nextInt((int) width + 1);
        };
    }

    @Property(tries = 300)
    void everySetLeftOutIsMatchedByAKeptOneWhateverTheTrueLosses(
            @ForAll long seed, @ForAll @IntRange(min = 0, max = 5) int width) {
        Random random = new Random(seed);
        ImmutableList<Scenario> scenarios =
                small(random, 1 + random.nextInt(3), random.nextInt(5), 1 + random.nextInt(4), width);
        Front front = Front.of(scenarios);
        assertTrue(front.allKept());
        for (long truth = 0; truth < 5; truth++) {
            long draw = seed + truth;
            for (Choice any : all(scenarios)) {
                assertTrue(
                        front.choices()
                                .anySatisfy(kept -> kept.cost() <= any.cost()
                                        && loss(scenarios, kept, draw) <= loss(scenarios, any, draw)),
                        () -> any + " is lost");
            }
        }
    }

    @Property(tries = 300)
    void whatIsKeptIsThereAndNoneSurelyBeatsAnother(@ForAll long seed, @ForAll @IntRange(min = 0, max = 5) int width) {
        Random random = new Random(seed);
        ImmutableList<Scenario> scenarios =
                small(random, 1 + random.nextInt(3), 1 + random.nextInt(4), 1 + random.nextInt(4), width);
        ImmutableList<Choice> kept = Front.of(scenarios).choices();
        assertTrue(all(scenarios).containsAllIterable(kept));
        for (Choice one : kept) {
            assertFalse(
                    kept.anySatisfy(other -> other != one && other.cost() <= one.cost() && other.upper() < one.lower()),
                    () -> one + " is beaten");
        }
    }

    @Property(tries = 300)
    void answersAreThoseOfAllSets(@ForAll long seed, @ForAll @IntRange(min = 0, max = 5) int width) {
        Random random = new Random(seed);
        ImmutableList<Scenario> scenarios =
                small(random, 1 + random.nextInt(3), 1 + random.nextInt(4), 1 + random.nextInt(4), width);
        ImmutableList<Choice> all = all(scenarios);
        Front front = Front.of(scenarios);
        for (long budget = -1; budget < 40; budget += 3) {
            long limit = budget;
            ImmutableList<Choice> affordable = all.select(each -> each.cost() <= limit);
            assertEquals(
                    affordable.collectLong(Choice::upper).minIfEmpty(Long.MAX_VALUE),
                    front.within(limit).map(answer -> answer.proven().upper()).orElse(Long.MAX_VALUE));
            assertEquals(
                    all.select(each -> each.upper() <= limit)
                            .collectLong(Choice::cost)
                            .minIfEmpty(Long.MAX_VALUE),
                    front.cheapest(limit).map(answer -> answer.proven().cost()).orElse(Long.MAX_VALUE));
        }
    }

    /** Of each budget's best set the first of its cost, and nothing else. */
    @Property(tries = 300)
    void stepsAreTheBestOfEveryBudgetOnce(@ForAll long seed, @ForAll @IntRange(min = 0, max = 5) int width) {
        Random random = new Random(seed);
        Front front =
                Front.of(small(random, 1 + random.nextInt(3), 1 + random.nextInt(3), 1 + random.nextInt(4), width));
        ImmutableList<Choice> best = Lists.immutable.fromStream(LongStream.range(0, 60)
                .mapToObj(front::within)
                .flatMap(Optional::stream)
                .map(Front.Answer::proven)
                .distinct());
        assertEquals(best, front.steps());
    }

    /** Groups whose items overlap and cost the same keep every set: too many, so that bounds must decide. */
    @Test
    void ofTooManyThatCannotBeToldApartTheBoundsStayExact() {
        Random random = new Random(7);
        ImmutableList<ImmutableList<Item>> groups = Lists.immutable.fromStream(IntStream.range(0, 40)
                .mapToObj(g -> Lists.immutable.fromStream(IntStream.range(0, 4).mapToObj(k -> {
                    long low = 1000 * random.nextInt(1000);
                    return new Item(k, 100 * random.nextInt(3), low, low + 300_000 + 1000 * random.nextInt(400));
                }))));
        ImmutableList<Scenario> scenario = Lists.immutable.of(new Scenario(new Item(0, 0, 0, 0), groups));
        Front front = Front.of(scenario);
        assertFalse(front.allKept());
        long leastUpper =
                groups.sumOfLong(items -> items.collectLong(Item::upper).min());
        long leastLower =
                groups.sumOfLong(items -> items.collectLong(Item::lower).min());
        assertEquals(leastUpper, front.choices().collectLong(Choice::upper).min());
        assertEquals(leastLower, front.choices().collectLong(Choice::lower).min());
        assertEquals(leastUpper, front.within(1L << 40).orElseThrow().proven().upper());
    }

    @Test
    void aGroupWithoutItemsMakesItsScenarioImpossible() {
        Scenario possible = new Scenario(new Item(1, 5, 10, 10), Lists.immutable.empty());
        Scenario not = new Scenario(new Item(0, 0, 0, 0), Lists.immutable.of(Lists.immutable.empty()));
        assertEquals(
                Lists.immutable.of(1),
                Front.of(Lists.immutable.of(not, possible)).choices().collect(Choice::scenario));
        assertEquals(Lists.immutable.empty(), Front.of(Lists.immutable.of(not)).choices());
    }

    /** A house of the size that the front is made for, as it may be: dearer is better, and intervals of some 0.0003 W/K. */
    static ImmutableList<Scenario> house(long seed, int scenarios, int groups, int items) {
        Random random = new Random(seed);
        return Lists.immutable.fromStream(IntStream.range(0, scenarios)
                .mapToObj(s -> new Scenario(
                        new Item(s, 700 * s, 150_000_000 - 2_000_000L * s, 150_000_000 - 2_000_000L * s),
                        Lists.immutable.fromStream(IntStream.range(0, groups).mapToObj(g -> {
                            double size = 0.5 + 3 * random.nextDouble();
                            return Lists.immutable.fromStream(IntStream.range(0, items)
                                    .mapToObj(k -> {
                                        long low = Math.round(
                                                1e6 * size * Math.exp(-0.5 * k) * (0.7 + 0.6 * random.nextDouble()));
                                        long cost = k == 0 ? 0 : Math.round(200 * k * (0.5 + random.nextDouble()));
                                        return new Item(k, cost, low, low + Math.round(600 * random.nextDouble()));
                                    }));
                        })))));
    }

    @Test
    void aLargeHouseHasTheAnswersOfAGeneralSolver() {
        ImmutableList<Scenario> house = house(11, 1, 40, 6);
        Front front = Front.of(house);
        assertTrue(front.allKept());
        for (long budget : new long[] {500, 4_000, 9_000, 20_000}) {
            double least = solve(house.getOnly(), budget, Double.NaN);
            // W/K: the solver's own tolerance of a whole variable, some 1e-6 of costs and losses of this size.
            assertEquals(least, front.within(budget).orElseThrow().proven().upper() / MICRO, 1e-4, "budget " + budget);
        }
        for (double limit : new double[] {170, 180, 200}) {
            assertEquals(
                    solve(house.getOnly(), Long.MAX_VALUE, limit),
                    front.cheapest(Math.round(limit * MICRO))
                            .orElseThrow()
                            .proven()
                            .cost(),
                    0.01,
                    "limit " + limit);
        }
    }

    /** Least upper bound, W/K, within a budget; or least cost within a limit of the upper bound, W/K, where one is given. */
    private static double solve(Scenario scenario, long budget, double limit) {
        boolean cheapest = !Double.isNaN(limit);
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Expression one = model.newExpression("other");
        if (cheapest) {
            one.upper(limit - scenario.fixed().upper() / MICRO);
        } else {
            one.upper(budget - scenario.fixed().cost());
        }
        for (ImmutableList<Item> group : scenario.groups()) {
            Expression exactlyOne = model.newExpression("group " + model.countVariables());
            exactlyOne.level(1);
            for (Item item : group) {
                Variable taken = model.newVariable("x" + model.countVariables()).binary();
                double loss = item.upper() / MICRO;
                taken.weight(cheapest ? item.cost() : loss);
                one.set(taken, cheapest ? loss : item.cost());
                exactlyOne.set(taken, 1);
            }
        }
        Optimisation.Result result = model.minimise();
        assertTrue(result.getState().isOptimal(), () -> result.toString());
        return result.getValue()
                + (cheapest ? scenario.fixed().cost() : scenario.fixed().upper() / MICRO);
    }
}
