package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import org.eclipse.collections.api.list.ImmutableList;

/** Every chosen detail says how air, water and vapour control pass, as far as the surfaces have them. */
public final class LayerNotShownRule extends SheetRule {

    /**
     * Layers of which a detail says nothing.
     *
     * @param first of the sheets
     * @param layers of all the sheets
     */
    public record Found(BridgeSheet<?> first, ImmutableList<Control> layers) implements Evidence {}

    LayerNotShownRule() {
        super(Severity.UNKNOWN);
    }

    @Override
    ImmutableList<BridgeSheet<?>> breaking(Facts facts) {
        return facts.sheets()
                .select(sheet -> sheet.chosen() && hidden(facts, sheet).notEmpty());
    }

    @Override
    double badness(Facts facts, BridgeSheet<?> sheet) {
        return 0;
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> sheets) {
        return new Found(
                sheets.getFirst(),
                sheets.flatCollect(sheet -> hidden(facts, sheet)).distinct().toImmutableSortedList());
    }

    private static ImmutableList<Control> hidden(Facts facts, BridgeSheet<?> sheet) {
        return sheet.result().detail().unsaid().select(control -> facts.mustPass(sheet, control));
    }
}
