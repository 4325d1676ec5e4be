package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.files.Groups;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules about computed bridges share: sheets with one detail fail for one cause, and the worst leads. */
abstract class SheetRule<F extends SheetRule.OfSheet> implements Rule {

    /** What is found of a sheet, or of several, the worst of which it has. */
    interface OfSheet extends Evidence {
        BridgeSheet<?> worst();
    }

    private final Severity severity;

    SheetRule(Severity severity) {
        this.severity = severity;
    }

    @Override
    public final ImmutableList<Draft> find(Facts facts) {
        ImmutableList<F> found =
                facts.sheets().flatCollect(sheet -> of(sheet, facts).stream().toList());
        return Groups.by(found, each -> Facts.cause(each.worst())).collect(alike -> {
            ImmutableList<F> worstFirst = alike.toImmutableSortedListBy(each -> -badness(each));
            return facts.about(worstFirst.<BridgeSheet<?>>collect(OfSheet::worst), severity, together(worstFirst));
        });
    }

    /** What is found of one sheet; empty where it keeps the rule. */
    abstract Optional<F> of(BridgeSheet<?> sheet, Facts facts);

    /** Greater for what is worse. */
    abstract double badness(F found);

    /** What is found of sheets with one detail: usually that of the worst. */
    Evidence together(ImmutableList<F> worstFirst) {
        return worstFirst.getFirst();
    }
}
