package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The coldest inner surface of every bridge keeps the least temperature factor fRsi. */
public final class TemperatureFactorUnderLimitRule extends SheetRule {

    /** A surface that gets cold enough for mould. */
    public record Found(BridgeSheet<?> worst, double limit) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("temperature factor", worst.temperatureFactor(), Dimension.RATIO),
                    Value.of("limit", limit, Dimension.RATIO),
                    Value.of("humidity for mould", worst.mouldHumidity(), Dimension.SHARE),
                    Value.of("humidity for the dew point", worst.dewPointHumidity(), Dimension.SHARE));
        }
    }

    TemperatureFactorUnderLimitRule() {
        super(Severity.WEAK);
    }

    @Override
    public int gravity() {
        return 22;
    }

    @Override
    ImmutableList<BridgeSheet<?>> breaking(Facts facts) {
        return facts.judged()
                .select(sheet -> Limits.under(
                        sheet.temperatureFactor(), facts.house().limits().temperatureFactor()));
    }

    @Override
    double badness(Facts facts, BridgeSheet<?> sheet) {
        return -sheet.temperatureFactor();
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst) {
        return new Found(worstFirst.getFirst(), facts.house().limits().temperatureFactor());
    }
}
