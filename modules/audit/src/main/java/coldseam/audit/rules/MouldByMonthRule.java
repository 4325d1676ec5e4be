package coldseam.audit.rules;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Value;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The coldest point of every bridge keeps the temperature factor that the month asks for which asks for most; only where the
 * house file gives a monthly climate.
 */
public final class MouldByMonthRule extends ColdSurfaceRule<MouldByMonthRule.Found> {

    /** A surface on which mould may grow. */
    public record Found(BridgeSheet<?> worst, MonthlyTemperatureFactor.Need need) implements Cold {
        @Override
        public double limit() {
            return need.temperatureFactor();
        }

        @Override
        public ImmutableList<Value> values() {
            return values(need.indoorHumidity());
        }
    }

    @Override
    Optional<Found> held(BridgeSheet<?> sheet, Facts facts) {
        return facts.mould().monthly().map(monthly -> new Found(sheet, monthly.critical()));
    }
}
