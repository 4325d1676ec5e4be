package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.WeakestPath;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * No way from indoors to outdoors through a junction resists less than a share of the surfaces beside it. Where insulation is
 * broken or pinched that is said instead: the short way follows from it.
 */
public final class WeakestPathRule extends SheetRule<WeakestPathRule.Found> {

    /**
     * A way that resists too little.
     *
     * @param path the worst one's way
     * @param limit least share of the weaker surface's resistance, 0 to 1
     */
    public record Found(BridgeSheet<?> worst, WeakestPath path, double limit) implements OfSheet {
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
    Optional<Found> of(BridgeSheet<?> sheet, Facts facts) {
        double limit = facts.house().limits().pathShare();
        return sheet.junction()
                .filter(junction -> facts.judges(sheet)
                        && !LayerBrokenRule.heatBreaks(facts, sheet)
                        && NeckPinchedRule.pinched(facts, sheet).isEmpty())
                .map(JunctionResult::weakestPath)
                .filter(path -> Limits.under(path.ratio(), limit))
                .map(path -> new Found(sheet, path, limit));
    }

    @Override
    double badness(Found found) {
        return -found.path().ratio();
    }
}
