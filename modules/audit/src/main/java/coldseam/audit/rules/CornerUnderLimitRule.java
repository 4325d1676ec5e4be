package coldseam.audit.rules;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.Mould;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.envelope.Limits;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The coldest inner surface of every computed corner keeps the least temperature factor fRsi: that of the limits, and, where
 * the house file gives a monthly climate, what the month asks for that asks for most.
 */
public final class CornerUnderLimitRule extends ColdMeetingRule<VertexRow, VertexSheet> {

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
            return ColdSurfaceRule.values(worst, need());
        }

        /** fRsi that is held to. */
        public double need() {
            return month.map(MonthlyTemperatureFactor.Need::temperatureFactor)
                    .or(() -> humid.map(Mould.Humid::temperatureFactor))
                    .orElse(limit);
        }
    }

    @Override
    ImmutableList<VertexRow> judged(Facts facts) {
        return facts.judgedCorners();
    }

    @Override
    VertexSheet sheet(VertexRow row) {
        return row.sheet().orElseThrow();
    }

    /** Whether an edge of it is found cold by itself. One that is merely broken may stay warm, and its finding tells of no mould. */
    @Override
    boolean follows(Facts facts, VertexSheet corner) {
        return facts.sheets()
                .anySatisfy(sheet -> corner.edges().contains(sheet.id())
                        && Limits.under(sheet.temperatureFactor(), facts.mould().need()));
    }

    @Override
    String cause(VertexSheet corner) {
        return "corner of "
                + corner.result()
                        .setup()
                        .edges()
                        .collect(end -> end.detail().id())
                        .distinct()
                        .toSortedList()
                        .makeString();
    }

    @Override
    Evidence evidence(Facts facts, VertexSheet worst) {
        double limit = facts.house().limits().temperatureFactor();
        return new Found(
                worst,
                limit,
                facts.mould()
                        .monthly()
                        .map(MonthlyTemperatureFactor::critical)
                        .filter(need -> need.temperatureFactor() > limit),
                facts.mould().humid().filter(each -> each.temperatureFactor() > limit));
    }

    @Override
    Subject subject(ImmutableList<VertexRow> rows) {
        return new Subject.Corners(rows);
    }
}
