package coldseam.audit.rules;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Value;
import coldseam.files.quantity.Dimension;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The coldest point of every bridge keeps the temperature factor that the month asks for which asks for most; only where the
 * house file gives a monthly climate.
 */
public final class MouldByMonthRule extends ColdSurfaceRule<MouldByMonthRule.Found> {

    /** A surface on which mould may grow. */
    public record Found(BridgeSheet<?> worst, MonthlyTemperatureFactor.Need need) implements OfSheet {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("temperature factor", worst.temperatureFactor(), Dimension.RATIO),
                    Value.of("limit", need.temperatureFactor(), Dimension.RATIO),
                    Value.of("indoor humidity", need.indoorHumidity(), Dimension.SHARE));
        }
    }

    @Override
    OptionalDouble needed(Facts facts) {
        return facts.mould().monthly().stream()
                .mapToDouble(monthly -> monthly.critical().temperatureFactor())
                .findFirst();
    }

    @Override
    Found found(BridgeSheet<?> sheet, Facts facts) {
        return new Found(sheet, facts.mould().monthly().orElseThrow().critical());
    }
}
