package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Mould;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The coldest inner surface of every two seams that are computed in one section keeps the least temperature factor fRsi, as
 * corners' do ({@link CornerUnderLimitRule}). Where one of them does not keep it by itself, that is said instead.
 */
public final class PairUnderLimitRule implements Rule {

    /**
     * Seams between which mould may grow.
     *
     * @param worst the coldest of them
     * @param need fRsi that is held to: by the limits, or by a month or humid rooms where these ask for more
     */
    public record Found(PairSheet worst, double need) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("temperature factor", worst.temperatureFactor(), Dimension.RATIO),
                    Value.of("limit", need, Dimension.RATIO),
                    Value.of("humidity for mould", worst.mouldHumidity(), Dimension.SHARE),
                    Value.of("humidity for the dew point", worst.dewPointHumidity(), Dimension.SHARE));
        }
    }

    @Override
    public int gravity() {
        return 24;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        Mould mould = facts.mould();
        ImmutableList<PairRow> under = facts.judgedPairs()
                .select(row -> Limits.under(sheet(row).temperatureFactor(), mould.need())
                        && sheet(row).one().temperatureFactor() >= mould.need()
                        && sheet(row).other().temperatureFactor() >= mould.need());
        return under.collect(PairUnderLimitRule::cause)
                .distinct()
                .collect(cause -> under.select(row -> cause(row).equals(cause))
                        .toSortedListBy(row -> sheet(row).temperatureFactor())
                        .toImmutable())
                .collect(rows -> new Draft(
                        this,
                        cause(rows.getFirst()),
                        Severity.WEAK,
                        new Found(sheet(rows.getFirst()), mould.need()),
                        new Subject.Bridges(rows.flatCollect(row -> Lists.immutable.of(
                                        row.pair().one(), row.pair().other()))
                                .distinctBy(row -> row.name()))));
    }

    private static PairSheet sheet(PairRow row) {
        return row.sheet().orElseThrow();
    }

    /** What is wrong with pairs of the same details has one cause. */
    private static String cause(PairRow row) {
        return "pair of "
                + Lists.immutable
                        .of(sheet(row).one(), sheet(row).other())
                        .collect(each -> each.result().detail().id())
                        .toSortedList()
                        .makeString();
    }
}
