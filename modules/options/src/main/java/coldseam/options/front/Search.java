package coldseam.options.front;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.primitive.IntLists;

/**
 * Merges group after group, leaving out what the package says; within a scenario the partial sets are kept by cost, so
 * that one pass over the sorted candidates with the least upper bound seen so far decides each.
 */
final class Search {

    /** Partial sets of one scenario beyond which bounds decide: memory for some hundred groups, and seconds. */
    static final int MOST = 60_000;

    private final Scenario scenario;
    private final MutableList<ImmutableList<Item>> groups = Lists.mutable.empty();
    private final MutableList<Level> levels = Lists.mutable.empty();
    private boolean allKept = true;

    private Search(Scenario scenario) {
        this.scenario = scenario;
    }

    /**
     * Partial sets after a group, by cost, of equal cost by upper bound. Entry i of each array is of one set: its sums, the
     * entry of the level before that it goes on, and the index of the item it takes.
     */
    private static final class Level {
        private long[] cost = new long[64];
        private long[] lower = new long[64];
        private long[] upper = new long[64];
        private int[] before = new int[64];
        private int[] item = new int[64];
        private int size;

        void add(long newCost, long newLower, long newUpper, int newBefore, int newItem) {
            if (size == cost.length) {
                int more = 2 * size;
                cost = Arrays.copyOf(cost, more);
                lower = Arrays.copyOf(lower, more);
                upper = Arrays.copyOf(upper, more);
                before = Arrays.copyOf(before, more);
                item = Arrays.copyOf(item, more);
            }
            cost[size] = newCost;
            lower[size] = newLower;
            upper[size] = newUpper;
            before[size] = newBefore;
            item[size] = newItem;
            size++;
        }
    }

    /** What decides whether a candidate is left out; candidates come by cost, of equal cost by upper bound. */
    private interface Sieve {
        boolean leavesOut(long lower, long upper);
    }

    /** Leaves out what surely loses no less than a set that costs no more. */
    private static final class BySureLoss implements Sieve {
        private long least = Long.MAX_VALUE;

        @Override
        public boolean leavesOut(long lower, long upper) {
            if (least <= lower) {
                return true;
            }
            least = Math.min(least, upper);
            return false;
        }
    }

    /** Leaves out what has no lower bound of either kind than a set that costs no more. */
    private static final class ByBounds implements Sieve {
        /** Upper bounds with the least lower bound among the sets that have it; both fall together. */
        private final TreeMap<Long, Long> stairs = new TreeMap<>();

        @Override
        public boolean leavesOut(long lower, long upper) {
            Map.Entry<Long, Long> below = stairs.floorEntry(upper);
            if (below != null && below.getValue() <= lower) {
                return true;
            }
            for (var next = stairs.ceilingEntry(upper);
                    next != null && next.getValue() >= lower;
                    next = stairs.ceilingEntry(upper)) {
                stairs.remove(next.getKey());
            }
            stairs.put(upper, lower);
            return false;
        }
    }

    static Front front(ImmutableList<Scenario> scenarios) {
        ImmutableList<Search> searches = scenarios
                .reject(scenario -> scenario.groups().anySatisfy(ImmutableList::isEmpty))
                .collect(Search::new);
        MutableList<Choice> all = Lists.mutable.empty();
        searches.forEach(search -> all.addAllIterable(search.choices()));
        boolean allKept = searches.allSatisfy(search -> search.allKept);
        all.sort(
                (a, b) -> a.cost() != b.cost() ? Long.compare(a.cost(), b.cost()) : Long.compare(a.upper(), b.upper()));
        Sieve sieve = allKept ? new BySureLoss() : new ByBounds();
        return new Front(
                all.reject(choice -> sieve.leavesOut(choice.lower(), choice.upper()))
                        .toImmutable(),
                allKept);
    }

    private ImmutableList<Choice> choices() {
        Level start = new Level();
        // What is fixed is one number in all sets of the scenario: its interval says nothing of which is better.
        start.add(0, 0, 0, -1, -1);
        levels.add(start);
        for (ImmutableList<Item> all : scenario.groups()) {
            ImmutableList<Item> group = notBeaten(all);
            groups.add(group);
            Level merged = merged(levels.getLast(), group, new BySureLoss());
            if (merged.size > MOST || !allKept) {
                allKept = false;
                merged = merged(levels.getLast(), group, new ByBounds());
            }
            levels.add(merged);
        }
        MutableList<Choice> all = Lists.mutable.empty();
        for (int i = 0; i < levels.getLast().size; i++) {
            all.add(choice(i));
        }
        return all.toImmutable();
    }

    /** Without the items that another of the group surely beats: exchanging it leaves all else as it is. */
    private static ImmutableList<Item> notBeaten(ImmutableList<Item> group) {
        return group.reject(item -> group.anySatisfy(
                other -> other.cost() <= item.cost() && other.upper() <= item.lower() && !sameNumbers(other, item)));
    }

    private static boolean sameNumbers(Item one, Item other) {
        return one.cost() == other.cost() && one.lower() == other.lower() && one.upper() == other.upper();
    }

    /** Every set of the level with every item of the group, less what is left out: a merge of as many sorted lists. */
    private static Level merged(Level level, ImmutableList<Item> group, Sieve sieve) {
        int items = group.size();
        long[] cost = new long[items];
        long[] lower = new long[items];
        long[] upper = new long[items];
        for (int k = 0; k < items; k++) {
            cost[k] = group.get(k).cost();
            lower[k] = group.get(k).lower();
            upper[k] = group.get(k).upper();
        }
        int[] at = new int[items];
        Level merged = new Level();
        while (true) {
            int next = -1;
            long nextCost = 0;
            long nextUpper = 0;
            for (int k = 0; k < items; k++) {
                if (at[k] < level.size) {
                    long c = level.cost[at[k]] + cost[k];
                    long u = level.upper[at[k]] + upper[k];
                    if (next < 0 || c < nextCost || c == nextCost && u < nextUpper) {
                        next = k;
                        nextCost = c;
                        nextUpper = u;
                    }
                }
            }
            if (next < 0) {
                return merged;
            }
            int from = at[next]++;
            long l = level.lower[from] + lower[next];
            if (!sieve.leavesOut(l, nextUpper)) {
                merged.add(nextCost, l, nextUpper, from, next);
            }
        }
    }

    /** Follows a set of the last level back through all of them. */
    private Choice choice(int index) {
        int[] ids = new int[groups.size()];
        int entry = index;
        for (int g = groups.size(); g > 0; g--) {
            Level level = levels.get(g);
            ids[g - 1] = groups.get(g - 1).get(level.item[entry]).id();
            entry = level.before[entry];
        }
        Level last = levels.getLast();
        Item fixed = scenario.fixed();
        return new Choice(
                fixed.id(),
                IntLists.immutable.of(ids),
                fixed.cost() + last.cost[index],
                fixed.lower() + last.lower[index],
                fixed.upper() + last.upper[index]);
    }
}
