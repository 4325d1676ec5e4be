package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Every chosen detail says how air, water and vapour control pass, as far as the surfaces have them. */
public final class LayerNotShownRule extends SheetRule<LayerNotShownRule.Found> {

    /**
     * Layers of which a detail says nothing.
     *
     * @param worst the first of the sheets
     * @param layers of all the sheets
     */
    public record Found(BridgeSheet<?> worst, ImmutableList<Control> layers) implements OfSheet {}

    LayerNotShownRule() {
        super(Severity.UNKNOWN);
    }

    @Override
    Optional<Found> of(BridgeSheet<?> sheet, Facts facts) {
        return Optional.of(sheet)
                .filter(BridgeSheet::chosen)
                .map(chosen -> new Found(
                        chosen, sheet.result().detail().unsaid().select(control -> facts.mustPass(sheet, control))))
                .filter(found -> found.layers().notEmpty());
    }

    @Override
    double badness(Found found) {
        return 0;
    }

    @Override
    Evidence together(ImmutableList<Found> worstFirst) {
        return new Found(
                worstFirst.getFirst().worst(),
                worstFirst.flatCollect(Found::layers).distinct().toImmutableSortedList());
    }
}
