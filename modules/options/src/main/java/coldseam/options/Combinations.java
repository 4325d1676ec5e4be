package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.Breach;
import coldseam.audit.BridgeRow;
import coldseam.audit.Finding;
import coldseam.audit.Subject;
import coldseam.audit.rules.Facts;
import coldseam.audit.rules.Findings;
import coldseam.conduction.Interval;
import coldseam.envelope.Alternatives.Decision;
import coldseam.options.front.Choice;
import coldseam.options.front.Front;
import coldseam.options.front.Item;
import coldseam.options.front.Scenario;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Sets;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.primitive.IntLists;

/**
 * The sets of a house as the mathematics wants them: a scenario for each combination of build-ups and openings, a group for
 * each other decision. Losses are rounded outwards to whole µW/K, costs to whole units of the currency, before they are
 * added: so the sums are exact, and a table of them adds up as it is printed.
 */
final class Combinations {

    /** µW/K in a W/K. */
    static final double MICRO = 1e6;

    private final Variants variants;
    private final Map<ImmutableIntList, Audit> audits;
    private final ImmutableIntList local;
    private final ImmutableList<Decision> localDecisions;
    private final MutableList<ImmutableIntList> combinations = Lists.mutable.empty();
    private final MutableList<Scenario> scenarios = Lists.mutable.empty();
    private final Map<Integer, ImmutableSet<String>> fixedRules = new HashMap<>();
    private final Map<ImmutableIntList, ImmutableSet<String>> itemRules = new HashMap<>();
    private final boolean priced;
    private int unbuildable;

    Combinations(Variants variants, Map<ImmutableIntList, Audit> audits) {
        this.variants = variants;
        this.audits = audits;
        int[] others = java.util.stream.IntStream.range(0, variants.decisions().size())
                .filter(d -> !variants.decisions().get(d).about().movesOthers())
                .toArray();
        this.local = IntLists.immutable.of(others);
        this.localDecisions = local.collect(variants.decisions()::get);
        this.priced = allPriced();
        variants.combinations().forEach(this::add);
    }

    private boolean allPriced() {
        Audit described = audits.get(variants.nothing());
        for (int d = 0; d < variants.decisions().size(); d++) {
            for (int k = 1; k <= variants.decisions().get(d).options().size(); k++) {
                Audit alone = audits.get(variants.alone(d, k));
                Decision decision = variants.decisions().get(d);
                if (alone != null
                        && Comparer.extraCost(decision, decision.options().get(k - 1), described, alone)
                                .isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }

    private void add(ImmutableIntList combination) {
        Audit described = audits.get(variants.nothing());
        Audit audit = audits.get(combination);
        if (audit == null) {
            unbuildable++;
            return;
        }
        ImmutableList<BridgeRow> rows = audit.bridges();
        ImmutableList<BridgeRow> fixed = rows.reject(row -> Part.decides(localDecisions, row));
        ImmutableList<ImmutableList<Item>> groups = local.collect(d -> items(combination, d, described));
        if (Part.misfits(fixed, described).notEmpty() || groups.anySatisfy(ImmutableList::isEmpty)) {
            unbuildable++;
            return;
        }
        int id = scenarios.size();
        long cost = 0;
        for (int d = 0; d < combination.size(); d++) {
            if (variants.decisions().get(d).about().movesOthers()) {
                cost += cost(d, combination.get(d), described, audit);
            }
        }
        Interval loss = HeatSum.planes(audit.heatLoss())
                .plus(HeatSum.bridges(audit, fixed))
                .value();
        combinations.add(combination);
        scenarios.add(new Scenario(item(id, cost, loss), groups));
        fixedRules.put(id, rules(Findings.of(Facts.of(audit).only(row -> !Part.decides(localDecisions, row)))));
    }

    private ImmutableList<Item> items(ImmutableIntList combination, int decision, Audit described) {
        MutableList<Item> items = Lists.mutable.empty();
        variants.numbers(decision).forEach(k -> {
            Audit audit = audits.get(variants.side(combination, k));
            Part part = new Part(variants.decisions().get(decision), audit);
            ImmutableList<BridgeRow> rows = part.rows();
            if (Part.misfits(rows, described).isEmpty()) {
                items.add(item(
                        k,
                        cost(decision, k, described, audit),
                        HeatSum.bridges(audit, rows).value()));
                ImmutableList<Decision> only = Lists.immutable.of(part.decision());
                itemRules.put(
                        combination.newWith(decision).newWith(k),
                        rules(Findings.of(Facts.of(audit).only(row -> Part.decides(only, row)))
                                .select(finding -> finding.subject() instanceof Subject.Bridges)));
            }
        });
        return items.toImmutable();
    }

    private static Item item(int id, long cost, Interval loss) {
        return new Item(id, cost, (long) Math.floor(loss.lower() * MICRO), (long) Math.ceil(loss.upper() * MICRO));
    }

    private static ImmutableSet<String> rules(ImmutableList<Finding> findings) {
        return findings.flatCollect(Finding::breaches).collect(Breach::rule).toImmutableSet();
    }

    /** Extra cost of a decision in a house, whole; what is described may cost more there, too, where its size is another. */
    private long cost(int d, int k, Audit described, Audit audit) {
        Decision decision = variants.decisions().get(d);
        if (!priced) {
            return 0;
        }
        if (k > 0) {
            return (long) Comparer.extraCost(decision, decision.options().get(k - 1), described, audit)
                    .orElse(0);
        }
        return (long) Comparer.growth(decision, described, audit);
    }

    ImmutableList<Scenario> scenarios() {
        return scenarios.toImmutable();
    }

    /** Those in which none of the rules finds anything, whatever set of them is taken. */
    ImmutableList<Scenario> without(ImmutableSet<String> rules) {
        return scenarios
                .select(scenario -> free(fixedRules.get(scenario.fixed().id()), rules))
                .collect(scenario -> scenario.only((group, item) -> free(
                        itemRules.get(combinations
                                .get(scenario.fixed().id())
                                .newWith(local.get(group))
                                .newWith(item.id())),
                        rules)))
                .toImmutable();
    }

    /** Every rule that found something somewhere. */
    ImmutableSet<String> allRules() {
        return Sets.immutable
                .withAll(Lists.immutable.withAll(fixedRules.values()).flatCollect(each -> each))
                .newWithAll(Lists.immutable.withAll(itemRules.values()).flatCollect(each -> each));
    }

    private static boolean free(ImmutableSet<String> found, ImmutableSet<String> rules) {
        return found.noneSatisfy(rules::contains);
    }

    /** By decision, 0 for what is described. */
    ImmutableIntList set(Choice choice) {
        ImmutableIntList set = combinations.get(choice.scenario());
        for (int g = 0; g < local.size(); g++) {
            set = Variants.with(set, local.get(g), choice.items().get(g));
        }
        return set;
    }

    /** Whether some set of a front decides a decision by an option. */
    boolean isOn(Front front, int decision, int option) {
        return front.choices().anySatisfy(choice -> set(choice).get(decision) == option);
    }

    int size() {
        return scenarios.size();
    }

    int unbuildable() {
        return unbuildable;
    }

    boolean priced() {
        return priced;
    }
}
