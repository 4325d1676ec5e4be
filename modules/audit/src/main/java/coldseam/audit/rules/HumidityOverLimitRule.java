package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Mould;
import coldseam.audit.Value;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * In rooms more humid than the usual limit of fRsi stands for, the coldest point of every bridge keeps what their humidity asks
 * for; only where the house file gives no monthly climate, by which {@link MouldByMonthRule} judges.
 */
public final class HumidityOverLimitRule extends ColdSurfaceRule<HumidityOverLimitRule.Found> {

    /** A surface too cold for such rooms. */
    public record Found(BridgeSheet<?> worst, Mould.Humid humid) implements Cold {
        @Override
        public double limit() {
            return humid.temperatureFactor();
        }

        @Override
        public ImmutableList<Value> values() {
            return values(humid.humidity());
        }
    }

    @Override
    Optional<Found> held(BridgeSheet<?> sheet, Facts facts) {
        return facts.mould().humid().map(humid -> new Found(sheet, humid));
    }
}
