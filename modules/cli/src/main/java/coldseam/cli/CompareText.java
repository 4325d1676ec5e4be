package coldseam.cli;

import coldseam.files.Groups;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Comparison;
import coldseam.options.Comparison.Answer;
import coldseam.report.words.CompareWords;
import coldseam.report.words.FrontWords;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** A comparison in the columns of a terminal. */
final class CompareText {

    private final Comparison comparison;
    private final CompareWords words;
    private final FrontWords front;
    private final MutableList<String> lines = Lists.mutable.empty();

    private CompareText(Comparison comparison, UnitSystem units) {
        this.comparison = comparison;
        this.words = new CompareWords(units);
        this.front = new FrontWords(comparison, units);
    }

    static ImmutableList<String> of(Comparison comparison, UnitSystem units) {
        return new CompareText(comparison, units).text();
    }

    private ImmutableList<String> text() {
        fold("", comparison.described().house().name() + ". " + front.described());
        front.rests().forEach(text -> fold("  ", text));
        front.found().ifPresent(text -> fold("", text));
        lines.add("");
        if (comparison.alternatives().isEmpty()) {
            fold("", FrontWords.noAlternatives());
            return lines.toImmutable();
        }
        lines.add("In short, beside what is described:");
        for (Alternative each : comparison.alternatives()) {
            fold("  ", front.brief(each));
        }
        lines.add("");
        front.catalogued().ifPresent(where -> {
            fold("", where);
            lines.add("");
        });
        lines.add("Each option alone, all else as described:");
        for (ImmutableList<Alternative> options : Groups.by(comparison.alternatives(), Alternative::decision)) {
            lines.add("");
            fold("  ", front.described(options.getFirst().decision()));
            front.worst(options.getFirst().decision()).ifPresent(line -> fold("      ", line));
            options.forEach(this::option);
        }
        lines.add("");
        fold("", "All combinations: " + front.counted());
        fold("", front.corners());
        comparison.answers().forEach(this::answer);
        lines.add("");
        front.next().ifPresent(next -> fold("  ", next));
        front.worth().forEach(text -> fold("  ", text));
        lines.add("");
        CompareWords.cautions().forEach(text -> fold("", text));
        return lines.toImmutable();
    }

    private void option(Alternative each) {
        lines.add("");
        fold("  ", front.name(each));
        each.misfits().forEach(reason -> fold("      ", "does not fit: " + reason.in(words.units())));
        front.lines(each).forEach(line -> fold("      ", line));
    }

    private void answer(Answer answer) {
        boolean chosen = comparison.chosen().filter(answer::equals).isPresent();
        lines.add("");
        fold("  ", (chosen ? "chosen: " : "") + front.question(answer) + ":");
        if (answer.best().isEmpty()) {
            fold("      ", front.noAnswer(answer));
            return;
        }
        if (front.sameAs(answer).isPresent()) {
            fold("      ", front.sameAs(answer).get());
            return;
        }
        Comparison.Best best = answer.best().get();
        fold("      ", front.set(best.set()));
        fold("      ", "H = " + words.loss(best.audit()) + ", " + front.outcome(best));
        fold("      ", front.verdict(best));
    }

    private void fold(String indent, String text) {
        lines.addAllIterable(Columns.fold(text, indent, indent + "  "));
    }
}
