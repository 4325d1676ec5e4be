package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Sheet;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules share that hold the coldest point of every bridge to a temperature factor. */
abstract class ColdSurfaceRule<F extends SheetRule.OfSheet> extends SheetRule<F> {

    ColdSurfaceRule() {
        super(Severity.WEAK);
    }

    /** fRsi that is needed; empty where the rule does not judge. */
    abstract OptionalDouble needed(Facts facts);

    /** A sheet that has less. */
    abstract F found(BridgeSheet<?> sheet, Facts facts);

    @Override
    final Optional<F> of(BridgeSheet<?> sheet, Facts facts) {
        OptionalDouble needed = needed(facts);
        return needed.isPresent()
                        && facts.judges(sheet)
                        && Limits.under(sheet.temperatureFactor(), needed.getAsDouble())
                ? Optional.of(found(sheet, facts))
                : Optional.empty();
    }

    @Override
    final double badness(F found) {
        return -found.worst().temperatureFactor();
    }

    /** The coldest point of a sheet, and what it is held to. */
    static ImmutableList<Value> values(Sheet worst, double limit) {
        return Lists.immutable.of(
                Value.of("temperature factor", worst.temperatureFactor(), Dimension.RATIO),
                Value.of("limit", limit, Dimension.RATIO),
                Value.of("humidity for mould", worst.mouldHumidity(), Dimension.SHARE),
                Value.of("humidity for the dew point", worst.dewPointHumidity(), Dimension.SHARE));
    }
}
