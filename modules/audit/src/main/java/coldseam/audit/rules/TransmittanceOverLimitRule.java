package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * No bridge's psi or chi is above the limit for its kind.
 *
 * <p>The limit of psi is for external dimensions. Where the surfaces meet at more than 180° measured indoors, geometry alone
 * makes the external psi positive and the internal one negative; there the smaller of the two is held to the limit
 * (judgement). An own psi of the house goes before the computed one. A psi is over its limit where its upper bound is, a chi
 * where its lower bound is (judgement: whatever goes through insulation is over some limit).
 */
public final class TransmittanceOverLimitRule extends SheetRule {

    private static final double STRAIGHT = 180;

    /**
     * Too much heat lost.
     *
     * @param transmittance psi or chi as it is held to the limit
     * @param limit of it
     */
    public record Found(BridgeSheet<?> worst, Interval transmittance, double limit) implements Evidence {
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
    public int gravity() {
        return 30;
    }

    @Override
    ImmutableList<BridgeSheet<?>> breaking(Facts facts) {
        return facts.judged().select(sheet -> {
            Interval held = held(facts, sheet);
            return (sheet.junction().isPresent() ? held.upper() : held.lower()) > limit(facts, sheet);
        });
    }

    @Override
    double badness(Facts facts, BridgeSheet<?> sheet) {
        return held(facts, sheet).middle();
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst) {
        BridgeSheet<?> worst = worstFirst.getFirst();
        return new Found(worst, held(facts, worst), limit(facts, worst));
    }

    private static double limit(Facts facts, BridgeSheet<?> sheet) {
        Limits limits = facts.house().limits();
        return sheet.junction()
                .map(junction -> junction.setup().kind().form().framed() ? limits.openingPsi() : limits.psi())
                .orElse(limits.chi());
    }

    /** What is held to the limit: the largest of the sheet's places. */
    private static Interval held(Facts facts, BridgeSheet<?> sheet) {
        BridgeRow worst = facts.rows(sheet).maxBy(row -> row.transmittance().upper());
        Interval external = facts.external(sheet, worst);
        boolean reentrant = worst instanceof JunctionRow row && row.edge().angle() > STRAIGHT;
        return reentrant && sheet.toInternal() < 0 ? external.plus(sheet.toInternal()) : external;
    }
}
