package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * No psi of the house's own is less than what its seam's chosen detail is proven to lose: below the computed lower bound by
 * more than half of the last digit that psi is usually given in.
 */
public final class OwnPsiBelowComputedRule extends SheetRule {

    /** W/(m·K); psi is given to 0.001 (common practice, no source). */
    private static final double HALF_A_DIGIT = 0.0005;

    /**
     * An own psi that promises too much.
     *
     * @param worst the detail as computed
     * @param own W/(m·K)
     * @param computed W/(m·K), in the same dimension system
     */
    public record Found(BridgeSheet<?> worst, double own, Interval computed) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("own psi", own, Dimension.LINEAR_TRANSMITTANCE),
                    new Value("psi", computed, Dimension.LINEAR_TRANSMITTANCE));
        }
    }

    OwnPsiBelowComputedRule() {
        super(Severity.WEAK);
    }

    @Override
    ImmutableList<BridgeSheet<?>> breaking(Facts facts) {
        return facts.sheets().select(sheet -> sheet.chosen() && badness(facts, sheet) > HALF_A_DIGIT);
    }

    /** W/(m·K), by which the least own psi of the sheet's places lies below the computed lower bound. */
    @Override
    double badness(Facts facts, BridgeSheet<?> sheet) {
        ImmutableList<JunctionRow> own = own(facts, sheet);
        return own.isEmpty() ? 0 : computed(facts, sheet).lower() - least(own);
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst) {
        BridgeSheet<?> worst = worstFirst.getFirst();
        return new Found(worst, least(own(facts, worst)), computed(facts, worst));
    }

    private static ImmutableList<JunctionRow> own(Facts facts, BridgeSheet<?> sheet) {
        return facts.rows(sheet)
                .selectInstancesOf(JunctionRow.class)
                .select(row -> row.source() instanceof BridgeSource.Own);
    }

    private static double least(ImmutableList<JunctionRow> own) {
        return own.collectDouble(row -> row.psi().middle()).min();
    }

    private static Interval computed(Facts facts, BridgeSheet<?> sheet) {
        DimensionSystem system = facts.house().site().dimensions();
        return sheet.result().psiOrChi(system);
    }
}
