package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * No psi of the house's own is less than what its seam's chosen detail is proven to lose: below the computed lower bound by
 * more than half of the last digit that psi is usually given in.
 */
public final class OwnPsiBelowComputedRule extends SheetRule<OwnPsiBelowComputedRule.Found> {

    /** W/(m·K); psi is given to 0.001 (common practice, no source). */
    private static final double HALF_A_DIGIT = 0.0005;

    /**
     * An own psi that promises too much.
     *
     * @param worst the detail as computed
     * @param own W/(m·K)
     * @param computed W/(m·K), in the same dimension system
     */
    public record Found(BridgeSheet<?> worst, double own, Interval computed) implements OfSheet {
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
    Optional<Found> of(BridgeSheet<?> sheet, Facts facts) {
        Interval computed = sheet.result().psiOrChi(facts.house().site().dimensions());
        ImmutableList<JunctionRow> own = facts.rows(sheet)
                .selectInstancesOf(JunctionRow.class)
                .select(row -> row.source() instanceof BridgeSource.Own);
        return Optional.of(own)
                .filter(rows -> sheet.chosen() && rows.notEmpty())
                .map(rows -> rows.collectDouble(row -> row.psi().middle()).min())
                .map(least -> new Found(sheet, least, computed))
                .filter(found -> badness(found) > HALF_A_DIGIT);
    }

    /** W/(m·K), by which the least own psi of the sheet's places lies below the computed lower bound. */
    @Override
    double badness(Found found) {
        return found.computed().lower() - found.own();
    }
}
