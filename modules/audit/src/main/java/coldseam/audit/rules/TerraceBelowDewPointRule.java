package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.TerraceLine;
import coldseam.audit.Value;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The structure under a terrace's insulation stays above the dew point of the room's air. */
public final class TerraceBelowDewPointRule implements Rule {

    /** A deck whose underside gets wet from the room below. */
    public record Found(TerraceLine terrace) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("underside", terrace.deck().temperature(), Dimension.TEMPERATURE),
                    Value.of("dew point", terrace.deck().dewPoint(), Dimension.TEMPERATURE));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.terraces()
                .reject(TerraceLine::safe)
                .collect(line -> new Draft(
                        "surface " + line.surface().name(),
                        Severity.WEAK,
                        new Found(line),
                        new Subject.Surfaces(Lists.immutable.of(line.surface()))));
    }
}
