package coldseam.options;

import coldseam.audit.Audit;
import coldseam.audit.engine.Progress;
import coldseam.audit.engine.Sections;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.files.Fault;
import coldseam.files.FileFaultException;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.detail.Detail;
import coldseam.options.front.Front;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/**
 * Compares a house with its alternatives: every house that is needed is named, their sections are counted and solved on all
 * cores, then each is audited through the front door.
 */
public final class Comparer {

    private final Variants variants;
    private final HouseAudit ready;
    private final Map<ImmutableIntList, HouseAudit> houses = new LinkedHashMap<>();
    private final Map<ImmutableIntList, ImmutableList<Phrase>> refused = new LinkedHashMap<>();
    private final Map<ImmutableIntList, Audit> audits = new ConcurrentHashMap<>();

    private Comparer(HouseAudit ready) {
        this.variants = new Variants(ready);
        this.ready = ready;
    }

    /**
     * Compares.
     *
     * @param ready the house as its file describes it, with at least one decision
     * @param progress hears how many sections are solved, and how many houses are audited
     */
    public static Comparison compare(HouseAudit ready, Wish wish, Progress progress) {
        return new Comparer(ready).compare(wish, progress);
    }

    private Comparison compare(Wish wish, Progress progress) {
        // 1. Every house that is needed: each option alone, and a few of every combination.
        Set<ImmutableIntList> needed = new LinkedHashSet<>();
        needed.add(variants.nothing());
        for (int d = 0; d < variants.decisions().size(); d++) {
            for (int k = 1; k <= variants.decisions().get(d).options().size(); k++) {
                needed.add(variants.alone(d, k));
            }
        }
        for (ImmutableIntList combination : variants.combinations()) {
            for (int side = 0; side < variants.sides(); side++) {
                needed.add(variants.side(combination, side));
            }
        }
        needed.forEach(this::prepare);
        // 2. Their sections, each once, on all cores.
        Sections sections = HouseAudit.sections(houses.values());
        ready.solve(sections, progress::at);
        // 3. Their audits, which find the sections remembered.
        AtomicInteger done = new AtomicInteger();
        houses.keySet().stream().toList().parallelStream().forEach(set -> {
            audits.put(set, houses.get(set).computeSections());
            synchronized (done) {
                progress.at("houses", done.incrementAndGet(), houses.size());
            }
        });
        // 4. All sets, their front and the answers.
        Combinations combinations = new Combinations(variants, audits);
        Front all = Front.of(combinations.scenarios());
        ImmutableList<Alternative> alternatives = alternatives(combinations, all);
        // 5. With their corners, which add up over no parts: only the houses that are told of.
        WholeAudits whole = new WholeAudits(variants, progress::at);
        return new FrontAnswers(variants, this::audited, whole, combinations, all, wish)
                .comparison(alternatives, sections.all().size());
    }

    private void prepare(ImmutableIntList set) {
        try {
            houses.put(set, variants.house(set));
        } catch (FileFaultException noShell) {
            refused.put(set, noShell.faults().collect(Fault::asked).collect(Phrase::of));
        }
    }

    private Audit audited(ImmutableIntList set) {
        return audits.computeIfAbsent(set, none -> variants.house(set).computeSections());
    }

    private ImmutableList<Alternative> alternatives(Combinations combinations, Front all) {
        MutableList<Alternative> alone = Lists.mutable.empty();
        for (int d = 0; d < variants.decisions().size(); d++) {
            Decision decision = variants.decisions().get(d);
            for (int k = 1; k <= decision.options().size(); k++) {
                alone.add(alternative(d, k, combinations.isOn(all, d, k)));
            }
        }
        return alone.toImmutable();
    }

    /** Other options of the decision that can be built and whose difference in loss the intervals do not tell. */
    private ImmutableList<String> asGood(int number, int k) {
        HeatSum own = HeatSum.of(audits.get(variants.alone(number, k)));
        return variants.decisions()
                .get(number)
                .options()
                .collectWithIndex((option, other) -> new Numbered(option, other + 1))
                .select(other -> other.number() != k && fits(variants.alone(number, other.number())))
                .select(other -> Standing.of(HeatSum.of(audits.get(variants.alone(number, other.number())))
                                .minus(own)
                                .value())
                        == Standing.AS_GOOD)
                .collect(other -> other.option().name());
    }

    private record Numbered(Option option, int number) {}

    private boolean fits(ImmutableIntList set) {
        Audit audit = audits.get(set);
        return audit != null
                && Part.misfits(audit.bridges(), audits.get(variants.nothing())).isEmpty();
    }

    private Alternative alternative(int number, int k, boolean onFront) {
        Decision decision = variants.decisions().get(number);
        Option option = decision.options().get(k - 1);
        ImmutableIntList set = variants.alone(number, k);
        if (refused.containsKey(set)) {
            return misfit(decision, option, refused.get(set));
        }
        Audit described = audits.get(variants.nothing());
        Audit audit = audits.get(set);
        ImmutableList<Phrase> misfits = Part.misfits(audit.bridges(), described);
        if (misfits.notEmpty()) {
            return misfit(decision, option, misfits);
        }
        Part part = new Part(decision, audit);
        Optional<Worst> worst = part.worst();
        OptionalDouble own = extraCost(decision, option, described, audit);
        ImmutableList<Alternative.Built.Elsewhere> elsewhere =
                own.isPresent() ? elsewhere(number, described, audit) : Lists.immutable.empty();
        return new Alternative(
                decision,
                option,
                detail(option)
                        .map(named -> worst.<Detail>map(
                                        each -> each.leakiest().result().detail())
                                .orElse(named)),
                Optional.of(new Alternative.Built(
                        audit,
                        worst,
                        part.size(),
                        HeatSum.of(audit).minus(HeatSum.of(described)).value(),
                        own.isPresent()
                                ? OptionalDouble.of(
                                        own.getAsDouble() + elsewhere.sumOfDouble(Alternative.Built.Elsewhere::cost))
                                : own,
                        elsewhere,
                        thicker(option, described),
                        audit.shell().floorArea() - described.shell().floorArea(),
                        Changes.between(described, audit),
                        UpkeepChange.between(described, audit))),
                Lists.immutable.empty(),
                asGood(number, k),
                onFront,
                isDescribed(decision, option, described));
    }

    private Alternative misfit(Decision decision, Option option, ImmutableList<Phrase> why) {
        return new Alternative(
                decision, option, detail(option), Optional.empty(), why, Lists.immutable.empty(), false, false);
    }

    private Optional<Detail> detail(Option option) {
        return option.change() instanceof Change.Detail change
                ? ready.catalogue().find(change.detail())
                : Optional.empty();
    }

    private static boolean isDescribed(Decision decision, Option option, Audit described) {
        return described.shell().isDescribed(described.house(), decision, option);
    }

    /** What an option costs more in one house than what is described does in another, whole; empty where it is not known. */
    static OptionalDouble extraCost(Decision decision, Option option, Audit described, Audit built) {
        if (isDescribed(decision, option, described)) {
            return OptionalDouble.of(growth(decision, described, built));
        }
        OptionalDouble before = new Part(decision, described).describedCost(option);
        OptionalDouble after = new Part(decision, built).cost(option);
        return before.isPresent() && after.isPresent()
                ? OptionalDouble.of(Math.rint(after.getAsDouble() - before.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** What the others' described parts cost more there, where their size is another. */
    private ImmutableList<Alternative.Built.Elsewhere> elsewhere(int number, Audit described, Audit built) {
        return variants.decisions()
                .reject(variants.decisions().get(number)::equals)
                .collect(other -> new Alternative.Built.Elsewhere(other.name(), growth(other, described, built)))
                .reject(other -> other.cost() == 0);
    }

    /** What the described part of a decision costs more in another house, whole; nothing where it is not known. */
    static double growth(Decision decision, Audit described, Audit built) {
        Option against = decision.options().getFirst();
        OptionalDouble before = new Part(decision, described).describedCost(against);
        OptionalDouble here = new Part(decision, built).describedCost(against);
        return before.isPresent() && here.isPresent() ? Math.rint(here.getAsDouble() - before.getAsDouble()) : 0;
    }

    private static double thicker(Option option, Audit described) {
        return option.change() instanceof Change.BuildUp other
                ? other.assembly().thickness()
                        - described
                                .house()
                                .assemblies()
                                .get(other.assembly().name())
                                .thickness()
                : 0;
    }
}
