package coldseam.audit.rules;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Mould;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.envelope.Limits;
import coldseam.files.Groups;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The coldest inner surface of every computed corner keeps the least temperature factor fRsi: that of the limits, and, where
 * the house file gives a monthly climate, what the month asks for that asks for most. A corner is colder than the edges that
 * meet in it, so that these may keep the limit where it does not. Where one of them does not, or its insulation is broken or
 * pinched, that is said instead: the cold corner follows from it.
 */
public final class CornerUnderLimitRule implements Rule {

    /**
     * Corners on which mould may grow.
     *
     * @param worst the coldest of them
     * @param limit least fRsi by the house's limits
     * @param month that asks for more than the limit; empty where none does, or without a monthly climate
     * @param humid rooms that ask for more than the limit; empty where they do not, or a climate is given
     */
    public record Found(
            VertexSheet worst, double limit, Optional<MonthlyTemperatureFactor.Need> month, Optional<Mould.Humid> humid)
            implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("temperature factor", worst.temperatureFactor(), Dimension.RATIO),
                    Value.of("limit", need(), Dimension.RATIO),
                    Value.of("humidity for mould", worst.mouldHumidity(), Dimension.SHARE),
                    Value.of("humidity for the dew point", worst.dewPointHumidity(), Dimension.SHARE));
        }

        /** fRsi that is held to. */
        public double need() {
            return month.map(MonthlyTemperatureFactor.Need::temperatureFactor)
                    .or(() -> humid.map(Mould.Humid::temperatureFactor))
                    .orElse(limit);
        }
    }

    @Override
    public int gravity() {
        return 24;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        double limit = facts.house().limits().temperatureFactor();
        Optional<MonthlyTemperatureFactor.Need> month = facts.mould()
                .monthly()
                .map(MonthlyTemperatureFactor::critical)
                .filter(need -> need.temperatureFactor() > limit);
        Optional<Mould.Humid> humid = facts.mould().humid().filter(each -> each.temperatureFactor() > limit);
        ImmutableList<VertexRow> under = facts.judgedCorners()
                .select(row -> Limits.under(
                                sheet(row).temperatureFactor(), facts.mould().need())
                        && !follows(facts, sheet(row)));
        return Groups.by(under, CornerUnderLimitRule::cause)
                .collect(rows -> rows.toSortedListBy(row -> sheet(row).temperatureFactor())
                        .toImmutable())
                .collect(rows -> new Draft(
                        this,
                        cause(rows.getFirst()),
                        Severity.WEAK,
                        new Found(sheet(rows.getFirst()), limit, month, humid),
                        new Subject.Corners(rows)));
    }

    /** Whether an edge of it is found cold, broken or pinched by itself. */
    private static boolean follows(Facts facts, VertexSheet corner) {
        return facts.sheets()
                .anySatisfy(sheet -> corner.edges().contains(sheet.id())
                        && (sheet.temperatureFactor() < facts.mould().need()
                                || LayerBrokenRule.heatBreaks(facts, sheet)
                                || NeckPinchedRule.pinches(facts, sheet)));
    }

    private static VertexSheet sheet(VertexRow row) {
        return row.sheet().orElseThrow();
    }

    /** What is wrong with corners of the same details has one cause. */
    private static String cause(VertexRow row) {
        return "corner of "
                + sheet(row)
                        .result()
                        .setup()
                        .edges()
                        .collect(end -> end.detail().id())
                        .distinct()
                        .toSortedList()
                        .makeString();
    }
}
