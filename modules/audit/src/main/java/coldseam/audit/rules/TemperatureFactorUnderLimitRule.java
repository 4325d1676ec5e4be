package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Value;
import coldseam.files.quantity.Dimension;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The coldest inner surface of every bridge keeps the least temperature factor fRsi. */
public final class TemperatureFactorUnderLimitRule extends ColdSurfaceRule {

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

    @Override
    public int gravity() {
        return 22;
    }

    @Override
    OptionalDouble needed(Facts facts) {
        return OptionalDouble.of(facts.house().limits().temperatureFactor());
    }

    @Override
    Evidence evidence(Facts facts, ImmutableList<BridgeSheet<?>> worstFirst) {
        return new Found(worstFirst.getFirst(), facts.house().limits().temperatureFactor());
    }
}
