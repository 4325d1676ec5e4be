package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.PenLine;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Insulation that passes a junction keeps a share of its thickness. */
public final class NeckPinchedRule extends SheetRule {

    /**
     * A neck that is too thin.
     *
     * @param line the worst one's insulation
     * @param limit least share of the thinner neighbour's insulation, 0 to 1
     */
    public record Found(BridgeSheet<?> worst, PenLine line, double limit) implements Evidence {
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
    ImmutableList<BridgeSheet<?>> breaking(Facts facts) {
        return facts.judged().select(sheet -> pinches(facts, sheet));
    }

    /** Whether an unbroken pen line is too thin. */
    static boolean pinches(Facts facts, BridgeSheet<?> sheet) {
        return sheet.junction()
                .map(JunctionResult::penLine)
                .filter(line -> line.unbroken()
                        && Limits.under(line.share(), facts.house().limits().neckShare()))
                .isPresent();
    }

    @Override
    double badness(Facts facts, BridgeSheet<?> sheet) {
        return -line(sheet).share();
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst) {
        BridgeSheet<?> worst = worstFirst.getFirst();
        return new Found(worst, line(worst), facts.house().limits().neckShare());
    }

    private static PenLine line(BridgeSheet<?> pinched) {
        return pinched.junction().orElseThrow().penLine();
    }
}
