package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.audit.Value;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.PenLine;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Insulation that passes a junction keeps a share of its thickness. */
public final class NeckPinchedRule extends SheetRule {

    /**
     * A neck that is too thin.
     *
     * @param limit least share of the thinner neighbour's insulation, 0 to 1
     */
    public record Found(JunctionSheet worst, double limit) implements Evidence {
        /** The insulation's line. */
        public PenLine line() {
            return worst.result().penLine();
        }

        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("neck", line().neck(), Dimension.THICKNESS),
                    Value.of("share of the thickness", line().share(), Dimension.SHARE),
                    Value.of("limit", limit, Dimension.SHARE));
        }
    }

    NeckPinchedRule() {
        super(Severity.WEAK);
    }

    @Override
    public int gravity() {
        return 20;
    }

    @Override
    ImmutableList<BridgeSheet> breaking(Facts facts) {
        return facts.judged().select(sheet -> pinches(facts, sheet));
    }

    /** Whether an unbroken pen line is too thin. */
    static boolean pinches(Facts facts, BridgeSheet sheet) {
        return sheet instanceof JunctionSheet junction
                && junction.result().penLine().unbroken()
                && !(junction.result().penLine().share()
                        >= facts.house().limits().neckShare());
    }

    @Override
    double badness(Facts facts, BridgeSheet sheet) {
        return -((JunctionSheet) sheet).result().penLine().share();
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet> worstFirst) {
        return new Found(
                (JunctionSheet) worstFirst.getFirst(), facts.house().limits().neckShare());
    }
}
