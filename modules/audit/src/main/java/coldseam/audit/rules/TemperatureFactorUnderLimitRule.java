package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Value;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** The coldest inner surface of every bridge keeps the least temperature factor fRsi. */
public final class TemperatureFactorUnderLimitRule extends ColdSurfaceRule<TemperatureFactorUnderLimitRule.Found> {

    /** A surface that gets cold enough for mould. */
    public record Found(BridgeSheet<?> worst, double limit) implements Cold {
        @Override
        public ImmutableList<Value> values() {
            return ColdSurfaceRule.values(worst, limit);
        }
    }

    @Override
    Optional<Found> held(BridgeSheet<?> sheet, Facts facts) {
        return Optional.of(new Found(sheet, facts.house().limits().temperatureFactor()));
    }
}
