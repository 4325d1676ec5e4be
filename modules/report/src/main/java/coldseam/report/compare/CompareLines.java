package coldseam.report.compare;

import coldseam.options.Alternative;
import coldseam.report.words.CompareWords;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** What one option does, line by line, for the terminal and the PDF alike. */
public final class CompareLines {

    private CompareLines() {}

    /** Empty where it cannot be built. */
    public static ImmutableList<String> of(Alternative each, CompareWords words) {
        if (each.built().isEmpty()) {
            return Lists.immutable.empty();
        }
        Alternative.Built built = each.built().get();
        MutableList<String> lines = Lists.mutable.empty();
        lines.add("the house loses " + words.heat(built.more()) + ": " + CompareWords.standing(built.standing())
                + (each.asGood().notEmpty()
                        ? ", and as good as "
                                + each.asGood().collect(words.units()::told).makeString(", ")
                        : ""));
        words.worst(each).ifPresent(lines::add);
        lines.add(words.money(each));
        CompareWords.thickness(built).ifPresent(lines::add);
        lines.add("to be built: " + words.size(each));
        if (each.order().notEmpty()) {
            lines.add("order: "
                    + each.order()
                            .collect(step -> words.units().told(step.replaceFirst("\\.$", "")))
                            .makeString("; "));
        }
        words.changes(built.changes()).ifPresent(changes -> lines.add("findings: " + changes));
        if (!each.option().remark().isEmpty()) {
            lines.add("remark: " + each.option().remark());
        }
        if (!each.onFront()) {
            lines.add("no set of the front has it");
        }
        return lines.toImmutable();
    }
}
