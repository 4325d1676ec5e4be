package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.WeakestPath;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * No way from indoors to outdoors through a junction resists less than a share of the surfaces beside it. Where insulation is
 * broken or pinched that is said instead: the short way follows from it.
 */
public final class WeakestPathRule extends SheetRule {

    /**
     * A way that resists too little.
     *
     * @param path the worst one's way
     * @param limit least share of the weaker surface's resistance, 0 to 1
     */
    public record Found(BridgeSheet<?> worst, WeakestPath path, double limit) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("resistance", path.resistance(), Dimension.RESISTANCE),
                    Value.of("share of the surface's", path.ratio(), Dimension.SHARE),
                    Value.of("limit", limit, Dimension.SHARE));
        }
    }

    WeakestPathRule() {
        super(Severity.WEAK);
    }

    @Override
    ImmutableList<BridgeSheet<?>> breaking(Facts facts) {
        return facts.judged()
                .select(sheet -> sheet.junction().isPresent()
                        && !LayerBrokenRule.heatBreaks(facts, sheet)
                        && !NeckPinchedRule.pinches(facts, sheet)
                        && Limits.under(
                                path(sheet).ratio(), facts.house().limits().pathShare()));
    }

    @Override
    double badness(Facts facts, BridgeSheet<?> sheet) {
        return -path(sheet).ratio();
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst) {
        BridgeSheet<?> worst = worstFirst.getFirst();
        return new Found(worst, path(worst), facts.house().limits().pathShare());
    }

    private static WeakestPath path(BridgeSheet<?> of) {
        return of.junction().orElseThrow().weakestPath();
    }
}
