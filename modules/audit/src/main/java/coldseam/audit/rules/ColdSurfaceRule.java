package coldseam.audit.rules;

import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Sheet;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What the rules share that hold the coldest point of every bridge to a temperature factor. */
abstract class ColdSurfaceRule<F extends ColdSurfaceRule.Cold> extends SheetRule<F> {

    /** A sheet, and what its coldest point is held to. */
    interface Cold extends OfSheet {

        /** fRsi that is needed. */
        double limit();

        /** The coldest point, the limit, and the indoor humidity that asks for it. */
        default ImmutableList<Value> values(double indoorHumidity) {
            return Lists.immutable.of(
                    Value.of("temperature factor", worst().temperatureFactor(), Dimension.RATIO),
                    Value.of("limit", limit(), Dimension.RATIO),
                    Value.of("indoor humidity", indoorHumidity, Dimension.SHARE));
        }
    }

    ColdSurfaceRule() {
        super(Severity.WEAK);
    }

    /** What a sheet is held to; empty where the rule does not judge. */
    abstract Optional<F> held(BridgeSheet<?> sheet, Facts facts);

    @Override
    final Optional<F> of(BridgeSheet<?> sheet, Facts facts) {
        return held(sheet, facts)
                .filter(held -> facts.judges(sheet) && Limits.under(sheet.temperatureFactor(), held.limit()));
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
