package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.PsiLimit;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * No bridge's psi or chi is above the limit for its kind.
 *
 * <p>The psi of the site's dimension system is held to the limit; the other is printed and not judged. Where geometry alone
 * makes this psi the larger of the two (external at more than 180° measured indoors, internal at less), it has a limit of its
 * own. An own psi of the house goes before the computed one. A psi is over its limit where its upper bound is, a chi
 * where its lower bound is (judgement: whatever goes through insulation is over some limit).
 */
public final class TransmittanceOverLimitRule extends SheetRule<TransmittanceOverLimitRule.Found> {

    /**
     * Too much heat lost.
     *
     * @param transmittance psi or chi as it is held to the limit
     * @param limit of it
     * @param system of dimensions that both are of
     */
    public record Found(BridgeSheet<?> worst, Interval transmittance, double limit, DimensionSystem system)
            implements OfSheet {
        @Override
        public ImmutableList<Value> values() {
            String name = worst.dimension() == Dimension.POINT_TRANSMITTANCE ? "chi" : "psi";
            return Lists.immutable.of(
                    new Value(name, transmittance, worst.dimension()), Value.of("limit", limit, worst.dimension()));
        }
    }

    TransmittanceOverLimitRule() {
        super(Severity.WEAK);
    }

    @Override
    Optional<Found> of(BridgeSheet<?> sheet, Facts facts) {
        if (!facts.judges(sheet)) {
            return Optional.empty();
        }
        // The largest of the sheet's places is held to the limit.
        Interval held =
                facts.rows(sheet).maxBy(row -> row.transmittance().upper()).transmittance();
        double limit = limit(facts, sheet);
        return Limits.over(sheet.junction().isPresent() ? held.upper() : held.lower(), limit)
                ? Optional.of(new Found(sheet, held, limit, facts.house().site().dimensions()))
                : Optional.empty();
    }

    @Override
    double badness(Found found) {
        return found.transmittance().middle();
    }

    private static double limit(Facts facts, BridgeSheet<?> sheet) {
        Limits limits = facts.house().limits();
        return sheet.junction()
                .map(junction ->
                        PsiLimit.of(junction, limits, facts.house().site().dimensions()))
                .orElse(limits.chi());
    }
}
