package coldseam.report.words;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.JunctionRow;
import coldseam.conduction.Interval;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.House;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Changes;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Answer;
import coldseam.options.Comparison.Asked;
import coldseam.options.Comparison.Best;
import coldseam.options.Yearly;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;

/**
 * What is said of all sets of a comparison and of their front.
 *
 * @param comparison that it is about
 * @param units to print in
 */
public record FrontWords(Comparison comparison, UnitSystem units) {

    private CompareWords words() {
        return new CompareWords(units);
    }

    private House house() {
        return comparison.described().house();
    }

    private String currency() {
        return house().prices().currency();
    }

    /** The house as described, its loss with corners and its verdict, in a sentence or two. */
    public String described() {
        var whole = comparison.corners().described();
        return "As described: H_T = " + new HonestWords(whole, units).total()
                + words().year(whole).map(each -> ", " + each).orElse("") + ". "
                + VerdictWords.sentence(whole.verdict());
    }

    /** What the verdict on the house as described rests on, and what it was measured by. */
    public ImmutableList<String> rests() {
        HonestWords honest = new HonestWords(comparison.corners().described(), units);
        return Lists.immutable.withAll(honest.assumed().stream().toList()).newWith(honest.measuredBy());
    }

    /** The verdict on a set, and what it rests on that the one on the house as described does not. */
    public String verdict(Best best) {
        return VerdictWords.sentence(best.audit().verdict())
                + new HonestWords(best.audit(), units)
                        .assumedBeside(comparison.described())
                        .map(each -> " " + each)
                        .orElse("");
    }

    /** The house as it was found, beside what is planned; empty where its file does not say. */
    public Optional<String> found() {
        return comparison
                .before()
                .map(before -> "As found: it loses " + words().heat(before.more())
                        + " than as described"
                        + Yearly.energy(before.more(), house())
                                .map(each -> ", " + units.format(each.middle(), Dimension.ENERGY) + " a year")
                                .orElse("")
                        + CompareWords.yearly(before.more(), house())
                                .map(each -> ", " + each)
                                .orElse("")
                        + ". Build-ups and windows that the house file does not say are as planned in both"
                        + (before.unknown() > 0
                                ? "; of " + units.format(before.unknown(), Dimension.LENGTH)
                                        + " of seams it does not say what was found, and these are in neither."
                                : "."));
    }

    /** What is said where the house as found is all there is to compare. */
    public static String noAlternatives() {
        return "The house file lists no alternatives: add the key alternatives for what might be built otherwise.";
    }

    /** How many sets there were. */
    public String counted() {
        return Phrases.count(comparison.sections(), "section", "sections") + ", "
                + Phrases.count(comparison.combinations(), "combination", "combinations")
                + " of build-ups and windows"
                + (comparison.unbuildable() > 0
                        ? " (" + comparison.unbuildable()
                                + " more cannot be built, since a detail does not fit or the shape leaves no room)"
                        : "")
                + ", "
                + Phrases.count(comparison.front().choices().size(), "set", "sets") + " on the front"
                + (comparison.priced() ? "." : ", of heat alone: not every option has a cost.");
    }

    /** What the sums leave out, and how much that is. */
    public String corners() {
        Audit described = comparison.corners().described();
        return "H is of surfaces, seams and points. Corners where edges meet, and what seams that touch lose more than apart, are not in it, since that hangs on the"
                + " details of all edges there: they add " + words().corners(described)
                + " to the house as described"
                + comparison
                        .corners()
                        .chosen()
                        .map(chosen -> " and " + words().corners(chosen) + " to the chosen set")
                        .orElse("")
                + ". Nobody has computed what they add to other sets; where an option breaks a seam that may be tenths of a "
                + units.label(Dimension.HEAT_LOSS_COEFFICIENT)
                + " for all its corners, so sets that lie closer together than that may stand the other way round ("
                + VertexWords.count(described) + ").";
    }

    /** Which question is answered first. */
    public Optional<String> chosen() {
        return comparison.chosen().map(answer -> "Chosen: " + question(answer));
    }

    /** What a set comes to against the house as described: its loss, its money, its cost and how many are as good. */
    public String outcome(Best best) {
        return step(best.more(), best.choice().cost())
                + (best.asGood() > 0
                        ? "; " + Phrases.count(best.asGood(), "other set", "other sets") + " may be as good"
                                + best.cheapest()
                                        .filter(cheaper -> comparison.priced())
                                        .map(cheaper -> (best.asGood() == 1 ? " and " : "; one ")
                                                + CompareWords.extra(
                                                        cheaper.cost()
                                                                - best.choice().cost(),
                                                        currency())
                                                + ": "
                                                + set(comparison.sets().get(cheaper)))
                                        .orElse("")
                        : "");
    }

    /** The next best step after the chosen set; empty where no set is chosen. */
    public Optional<String> next() {
        return comparison
                .chosen()
                .flatMap(Answer::best)
                .map(best -> comparison
                        .next()
                        .map(next -> "Next best step: "
                                + set(comparison.sets().get(next.choice())) + "; "
                                + step(
                                        Comparison.more(best.choice(), next.choice()),
                                        next.choice().cost() - best.choice().cost())
                                + " than the chosen set" + appears(next.changes()) + ".")
                        .orElse("No set " + (comparison.priced() ? "that costs more " : "")
                                + "surely loses less than the chosen one and opens no gap."));
    }

    /** "; appears: Water collects in "roof""; nothing where nothing does. */
    private String appears(Changes changes) {
        return words().changes(new Changes(changes.appear(), Lists.immutable.empty()))
                .map(each -> "; " + each)
                .orElse("");
    }

    /** Which decision is worth most, alone and in the chosen set, and what is paid back first. */
    public ImmutableList<String> worth() {
        MutableList<String> said = Lists.mutable.empty();
        if (comparison.betterForNoMore().notEmpty()) {
            said.add("Loses less for no more money: "
                    + comparison
                            .betterForNoMore()
                            .collect(each -> name(each) + ", "
                                    + words().heat(each.built().orElseThrow().more()) + ", "
                                    + CompareWords.extra(
                                            each.built().orElseThrow().cost().orElseThrow(), currency())
                                    + appears(each.built().orElseThrow().changes()))
                            .makeString("; ")
                    + ".");
        }
        comparison
                .worthMost()
                .ifPresent(most -> said.add("Worth most alone: " + name(most) + ", "
                        + words().heat(most.built().orElseThrow().more())
                        + appears(most.built().orElseThrow().changes()) + "."));
        comparison
                .paidBackFirst()
                .ifPresent(first -> said.add("Paid back first: " + name(first) + "; " + words().money(first)
                        + appears(first.built().orElseThrow().changes()) + "."));
        comparison
                .worth()
                .getFirstOptional()
                .ifPresent(most -> said.add("Worth most in the chosen set: "
                        + name(comparison.option(most.decision(), most.option()).orElseThrow())
                        + "; without it " + words().heat(most.less()) + "."));
        return said.toImmutable();
    }

    /** An option by its decision. */
    public String name(Alternative each) {
        return each.decision().name() + ": " + words().name(each);
    }

    /** An option in a sentence, and another of what it rests on that what is described does not. */
    public String brief(Alternative each) {
        return words().brief(each)
                + besides(each).map(assumed -> ". " + assumed).orElse("");
    }

    /** What one option does, line by line; empty where it cannot be built. */
    public ImmutableList<String> lines(Alternative each) {
        return words().lines(each, comparison.asGood(each))
                .newWithAll(besides(each).stream().toList());
    }

    private Optional<String> besides(Alternative each) {
        return each.built()
                .filter(built -> !each.described())
                .flatMap(built -> new HonestWords(built.audit(), units).assumedBeside(comparison.described()));
    }

    /** "parapet, as described: Parapet on insulating blocks": what a decision's options are held against. */
    public String described(Decision decision) {
        ImmutableList<BridgeRow> rows = comparison.rows(decision);
        ImmutableList<String> details = BridgeRow.sheets(rows)
                .collect(sheet -> sheet.result().detail())
                .collect(detail -> detail.name() + new Phrases(units).given(detail))
                .distinct();
        return decision.name() + ", as described"
                + (details.isEmpty()
                        ? ""
                        : (rows.allSatisfy(row -> row.source().known())
                                        ? ": "
                                        : ": nobody has chosen, so the worst option stands in, ")
                                + Phrases.listed(details));
    }

    /** How warm and how tight it is as described, as {@link #lines} says of each option; empty where nothing of it is computed. */
    public Optional<String> worst(Decision decision) {
        return comparison.worst(decision).map(worst -> words().worst(decision.about(), worst));
    }

    /** What was asked, with its limit: "the least loss for 5000 EUR more". */
    public String question(Answer answer) {
        double limit = answer.limit().orElse(0);
        String least = comparison.priced() ? "least cost" : "least loss";
        return switch (answer.asked()) {
            case BUDGET -> Format.of("least loss within %.0f %s", limit, currency());
            case HEAT_LOSS -> least + " for H_T up to " + units.format(limit, Dimension.HEAT_LOSS_COEFFICIENT);
            case ENERGY -> least + " for a loss of up to " + units.format(limit, Dimension.ENERGY) + " a year";
            case TRANSMITTANCE -> least + " with every psi and chi within its limit";
            case SURFACE -> least + " with every seam warm enough inside";
            case NO_FINDING -> least + " with nothing found";
            case LEAST_COST ->
                Format.of(
                        "least cost of building and of heat over %.0f years, at today's price, that opens no gap",
                        limit);
            case LEAST_LOSS -> "least loss of all";
        };
    }

    /** Why there is no answer. */
    public String noAnswer(Answer answer) {
        if (answer.asked() != Asked.BUDGET) {
            return "no set is proven to do it"
                    + (answer.against().isEmpty()
                            ? ""
                            : "; against it stands "
                                    + (isFirstToBeHindered(answer)
                                            ? "as described: " + words().titles(answer.against())
                                            : "the same"));
        }
        return comparison.priced()
                ? "nothing costs so little"
                : "not answered, since " + unpriced().makeString(", ")
                        + (unpriced().size() == 1 ? " has" : " have") + " no cost";
    }

    /** What stands against several is told of the first of them. */
    private boolean isFirstToBeHindered(Answer answer) {
        return comparison
                .answers()
                .detect(each -> words().titles(each.against()).equals(words().titles(answer.against())))
                .equals(answer);
    }

    private ImmutableList<String> unpriced() {
        return comparison
                .alternatives()
                .select(each ->
                        each.built().filter(built -> built.cost().isEmpty()).isPresent())
                .collect(this::name);
    }

    /** An earlier answer with the same set, by its question: "the same set as for: least cost with nothing found". */
    public Optional<String> sameAs(Answer answer) {
        return answer.best()
                .flatMap(best -> comparison
                        .answers()
                        .detectOptional(earlier -> earlier.best()
                                .filter(other -> other.set().equals(best.set()))
                                .isPresent()))
                .filter(earlier -> earlier != answer)
                .map(earlier -> "the same set as for: " + question(earlier));
    }

    /** Where all options for the seams that are decided stand; empty where no seam is. */
    public Optional<String> catalogued() {
        ImmutableList<String> kinds = comparison
                .alternatives()
                .collect(Alternative::decision)
                .distinct()
                .flatCollect(comparison::rows)
                .selectInstancesOf(JunctionRow.class)
                .collect(JunctionRow::kindLabel)
                .distinct();
        return kinds.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "All that the catalogue has for these seams in this house: coldseam catalogue --house HOUSE"
                                + " --kind \"" + kinds.makeString(",") + '"');
    }

    /** The set's options by their decisions, or that nothing is changed. */
    public String set(ImmutableIntList set) {
        ImmutableList<Alternative> options = comparison.options(set);
        return options.isEmpty()
                ? "all as described"
                : options.collect(this::name).makeString("; ");
    }

    /** A difference: "0.81 W/K less, 8 EUR a year saved, costs 140 EUR more". */
    private String step(Interval more, double cost) {
        return words().heat(more)
                + CompareWords.yearly(more, house()).map(each -> ", " + each).orElse("")
                + (comparison.priced() ? ", " + CompareWords.extra(cost, currency()) : "");
    }

    /** Why nothing is lost by what is left out. */
    public ImmutableList<String> argument() {
        ImmutableList<String> common = Lists.immutable.of(
                "A change of a build-up or of a window moves psi of every seam it touches, so all "
                        + comparison.combinations()
                        + " combinations of these that can be built are computed in full. Within each, a junction's loss is its"
                        + " own: the losses and costs of junctions and points add up, exactly, as whole numbers.",
                "Of two half-decided sets with the same things still open, one is left out where the other costs no more and its"
                        + " upper bound of the loss is no higher than this one's lower bound. Whatever is decided for the rest adds"
                        + " the same cost and the same true loss to both, so the one left out can never lead to a set that costs"
                        + " less or loses less. Nothing that could be best is lost; sets that the intervals cannot tell apart are"
                        + " kept.");
        return comparison.front().allKept()
                ? common
                : common.newWith(
                        "Here more sets than can be kept could not be told apart. Of these one is left out, too, where"
                                + " another costs no more and neither of its bounds is higher: least proven and least possible loss for"
                                + " every cost are exact still.");
    }
}
