package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Mould;
import coldseam.audit.Value;
import coldseam.files.quantity.Dimension;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * In rooms more humid than the usual limit of fRsi stands for, the coldest point of every bridge keeps what their humidity asks
 * for; only where the house file gives no monthly climate, by which {@link MouldByMonthRule} judges.
 */
public final class HumidityOverLimitRule extends ColdSurfaceRule<HumidityOverLimitRule.Found> {

    /** A surface too cold for such rooms. */
    public record Found(BridgeSheet<?> worst, Mould.Humid humid) implements OfSheet {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("temperature factor", worst.temperatureFactor(), Dimension.RATIO),
                    Value.of("limit", humid.temperatureFactor(), Dimension.RATIO),
                    Value.of("indoor humidity", humid.humidity(), Dimension.SHARE));
        }
    }

    @Override
    OptionalDouble needed(Facts facts) {
        return facts.mould().humid().stream()
                .mapToDouble(Mould.Humid::temperatureFactor)
                .findFirst();
    }

    @Override
    Found found(BridgeSheet<?> sheet, Facts facts) {
        return new Found(sheet, facts.mould().humid().orElseThrow());
    }
}
