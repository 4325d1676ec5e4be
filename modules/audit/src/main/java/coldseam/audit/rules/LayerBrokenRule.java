package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.envelope.Control;
import coldseam.junctions.detail.Connection;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Insulation, air, water and vapour control pass every bridge without a break, as far as the surfaces have them. */
public final class LayerBrokenRule extends SheetRule<LayerBrokenRule.Found> {

    /**
     * Layers that end.
     *
     * @param layers of all the sheets
     */
    public record Found(BridgeSheet<?> worst, ImmutableList<Control> layers) implements OfSheet {}

    LayerBrokenRule() {
        super(Severity.GAP);
    }

    @Override
    Optional<Found> of(BridgeSheet<?> sheet, Facts facts) {
        return Optional.of(sheet)
                .filter(BridgeSheet::chosen)
                .map(chosen -> new Found(chosen, broken(facts, sheet)))
                .filter(found -> found.layers().notEmpty());
    }

    @Override
    double badness(Found found) {
        return found.worst().external().middle();
    }

    @Override
    Evidence together(ImmutableList<Found> worstFirst) {
        return new Found(
                worstFirst.getFirst().worst(),
                worstFirst.flatCollect(Found::layers).distinct().toImmutableSortedList());
    }

    private static ImmutableList<Control> broken(Facts facts, BridgeSheet<?> sheet) {
        return Lists.immutable
                .of(Control.values())
                .select(control -> control == Control.HEAT
                        ? heatBreaks(facts, sheet)
                        : sheet.result().detail().connections().get(control) == Connection.BROKEN
                                && facts.mustPass(sheet, control));
    }

    /** Whether the pen line of a judged junction is broken; what goes through a surface breaks its insulation by nature. */
    static boolean heatBreaks(Facts facts, BridgeSheet<?> sheet) {
        return sheet.junction()
                .filter(junction -> facts.judges(sheet) && !junction.penLine().unbroken())
                .isPresent();
    }
}
