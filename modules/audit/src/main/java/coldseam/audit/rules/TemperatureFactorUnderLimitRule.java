package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Value;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** The coldest inner surface of every bridge keeps the least temperature factor fRsi. */
public final class TemperatureFactorUnderLimitRule extends ColdSurfaceRule {

    /** A surface that gets cold enough for mould. */
    public record Found(BridgeSheet<?> worst, double limit) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return ColdSurfaceRule.values(worst, limit);
        }
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
