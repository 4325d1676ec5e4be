package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.envelope.Limits;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** The coldest inner surface of every two seams that are computed in one section keeps the least temperature factor fRsi. */
public final class PairUnderLimitRule extends ColdMeetingRule<PairRow, PairSheet> {

    /**
     * Seams between which mould may grow.
     *
     * @param worst the coldest of them
     * @param need fRsi that is held to: by the limits, or by a month or humid rooms where these ask for more
     */
    public record Found(PairSheet worst, double need) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return ColdSurfaceRule.values(worst, need);
        }
    }

    @Override
    ImmutableList<PairRow> judged(Facts facts) {
        return facts.judgedPairs();
    }

    @Override
    PairSheet sheet(PairRow row) {
        return row.sheet().orElseThrow();
    }

    @Override
    boolean follows(Facts facts, PairSheet pair) {
        return Limits.under(
                Math.min(pair.one().temperatureFactor(), pair.other().temperatureFactor()),
                facts.mould().need());
    }

    @Override
    String cause(PairSheet pair) {
        return "pair of "
                + Lists.immutable
                        .of(pair.one(), pair.other())
                        .collect(each -> each.result().detail().id())
                        .toSortedList()
                        .makeString();
    }

    @Override
    Evidence evidence(Facts facts, PairSheet worst) {
        return new Found(worst, facts.mould().need());
    }

    @Override
    Subject subject(ImmutableList<PairRow> rows) {
        return new Subject.Bridges(rows.flatCollect(
                        row -> Lists.immutable.of(row.pair().one(), row.pair().other()))
                .distinctBy(row -> row.name()));
    }
}
