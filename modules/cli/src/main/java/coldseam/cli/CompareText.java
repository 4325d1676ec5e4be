package coldseam.cli;

import coldseam.audit.Audit;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Answer;
import coldseam.report.compare.CompareLines;
import coldseam.report.words.CompareWords;
import coldseam.report.words.VerdictWords;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** A comparison in the columns of a terminal. */
final class CompareText {

    private final Comparison comparison;
    private final Audit described;
    private final UnitSystem units;
    private final CompareWords words;
    private final MutableList<String> lines = Lists.mutable.empty();

    private CompareText(Comparison comparison, UnitSystem units) {
        this.comparison = comparison;
        this.described = comparison.described();
        this.units = units;
        this.words = new CompareWords(units);
    }

    static ImmutableList<String> of(Comparison comparison, UnitSystem units) {
        return new CompareText(comparison, units).text();
    }

    private ImmutableList<String> text() {
        fold(
                "",
                described.house().name() + " as described: H_T = "
                        + heat(described.heatLoss().total())
                        + words.year(described).map(each -> ", " + each).orElse("") + ". "
                        + VerdictWords.sentence(described.verdict()));
        lines.add("");
        lines.add("Each option alone, all else as described:");
        for (Alternative each : comparison.alternatives()) {
            lines.add("");
            fold("  ", each.decision().name() + ": " + each.option().name());
            each.misfits().forEach(reason -> fold("      ", "does not fit: " + reason));
            CompareLines.of(each, words).forEach(line -> fold("      ", line));
        }
        lines.add("");
        fold(
                "",
                "All combinations: " + comparison.combinations() + " of build-ups and windows, "
                        + comparison.sections() + " sections, "
                        + comparison.front().choices().size() + " sets on the front"
                        + (comparison.priced() ? "." : ", of heat alone: not every option has a cost."));
        comparison.answers().forEach(this::answer);
        next();
        lines.add("");
        CompareWords.cautions().forEach(text -> fold("", text));
        return lines.toImmutable();
    }

    private void answer(Answer answer) {
        lines.add("");
        fold("  ", words.question(answer, described) + ":");
        if (answer.best().isEmpty()) {
            fold("      ", CompareWords.noAnswer(answer.asked()));
            return;
        }
        Comparison.Best best = answer.best().get();
        fold("      ", CompareWords.set(comparison, best.set()));
        fold(
                "      ",
                "H_T = " + heat(best.audit().heatLoss().total()) + ", "
                        + words.step(best.more(), best.choice().cost(), described)
                        + (best.asGood() > 0 ? "; " + best.asGood() + " other sets may be as good" : ""));
        fold("      ", VerdictWords.sentence(best.audit().verdict()));
    }

    private void next() {
        comparison.worthMost().ifPresent(most -> {
            lines.add("");
            fold(
                    "  ",
                    "worth most alone: " + most.decision().name() + ", "
                            + most.option().name() + ", "
                            + words.heat(most.built().orElseThrow().more()));
        });
        comparison
                .chosen()
                .flatMap(Answer::best)
                .ifPresent(best -> comparison
                        .next()
                        .ifPresent(next -> fold(
                                "  ",
                                "next best step after the first answer: "
                                        + CompareWords.set(
                                                comparison, comparison.sets().get(next))
                                        + "; "
                                        + words.step(
                                                new Interval(
                                                        (next.lower()
                                                                        - best.choice()
                                                                                .upper())
                                                                / 1e6,
                                                        (next.upper()
                                                                        - best.choice()
                                                                                .lower())
                                                                / 1e6),
                                                next.cost() - best.choice().cost(),
                                                described))));
    }

    private String heat(Interval value) {
        return units.interval(value.lower(), value.upper(), Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private void fold(String indent, String text) {
        lines.addAllIterable(Columns.fold(text, indent, indent + "  "));
    }
}
