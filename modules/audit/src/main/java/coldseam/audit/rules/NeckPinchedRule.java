package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.PenLine;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Insulation that passes a junction keeps a share of its thickness. */
public final class NeckPinchedRule extends SheetRule<NeckPinchedRule.Found> {

    /**
     * A neck that is too thin.
     *
     * @param line the worst one's insulation
     * @param limit least share of the thinner neighbour's insulation, 0 to 1
     */
    public record Found(BridgeSheet<?> worst, PenLine line, double limit) implements OfSheet {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("neck", line.neck(), Dimension.THICKNESS),
                    Value.of("share of the thickness", line.share(), Dimension.SHARE),
                    Value.of("limit", limit, Dimension.SHARE));
        }
    }

    NeckPinchedRule() {
        super(Severity.WEAK);
    }

    @Override
    Optional<Found> of(BridgeSheet<?> sheet, Facts facts) {
        return facts.judges(sheet) ? pinched(facts, sheet) : Optional.empty();
    }

    @Override
    double badness(Found found) {
        return -found.line().share();
    }

    /** A sheet whose pen line is unbroken and too thin. */
    static Optional<Found> pinched(Facts facts, BridgeSheet<?> sheet) {
        double limit = facts.house().limits().neckShare();
        return sheet.junction()
                .map(JunctionResult::penLine)
                .filter(line -> line.unbroken() && Limits.under(line.share(), limit))
                .map(line -> new Found(sheet, line, limit));
    }
}
