package coldseam.report.compare;

import coldseam.envelope.Alternatives.Change;
import coldseam.junctions.detail.Detail;
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
        lines.add("the house loses " + words.heat(built.more()) + ": " + CompareWords.standing(built.standing()));
        words.worst(built).ifPresent(lines::add);
        lines.add(words.money(each));
        CompareWords.thickness(built).ifPresent(lines::add);
        lines.add("to be built: " + words.size(each));
        detail(each, built).ifPresent(order -> lines.add("order: " + order));
        words.changes(built.changes()).ifPresent(changes -> lines.add("findings: " + changes));
        if (!each.option().remark().isEmpty()) {
            lines.add("remark: " + each.option().remark());
        }
        if (!each.onFront()) {
            lines.add("no set of the front has it");
        }
        return lines.toImmutable();
    }

    /** The order of building of the detail, each step a few words. */
    private static java.util.Optional<String> detail(Alternative each, Alternative.Built built) {
        if (!(each.option().change() instanceof Change.Detail)) {
            return java.util.Optional.empty();
        }
        return CompareWords.worstSheet(built)
                .map(sheet -> sheet.result().detail())
                .map(Detail::order)
                .map(order ->
                        order.collect(step -> step.replaceFirst("\\.$", "")).makeString("; "));
    }
}
