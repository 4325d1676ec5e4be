package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules about computed bridges share: sheets with one detail fail for one cause, and the worst leads. */
abstract class SheetRule implements Rule {

    private final Severity severity;

    SheetRule(Severity severity) {
        this.severity = severity;
    }

    @Override
    public final ImmutableList<Draft> find(Facts facts) {
        return Facts.byDetail(breaking(facts)).collect(sheets -> {
            ImmutableList<BridgeSheet<?>> worstFirst = sheets.toImmutableSortedListBy(sheet -> -badness(facts, sheet));
            return facts.about(worstFirst, this, severity, evidence(facts, worstFirst));
        });
    }

    /** The sheets that break it. */
    abstract ImmutableList<BridgeSheet<?>> breaking(Facts facts);

    /** Greater for what is worse. */
    abstract double badness(Facts facts, BridgeSheet<?> sheet);

    /** What was found with sheets of one detail. */
    abstract Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst);
}
