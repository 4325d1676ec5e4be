package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeRow;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.files.Groups;
import coldseam.files.quantity.Phrase;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Every chosen detail fits the layers and the angle it meets. */
public final class DetailOutOfRangeRule implements Rule {

    /**
     * A detail that cannot be built there.
     *
     * @param rows it was chosen for
     * @param reasons why not, as the detail gives them
     */
    public record Found(ImmutableList<BridgeRow> rows, ImmutableList<Phrase> reasons) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(Facts.extent(rows));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<BridgeRow> misfits =
                facts.rows().select(row -> row.misfits().notEmpty() && !row.noneFits());
        return Groups.by(misfits, BridgeRow::misfits).collect(this::draft);
    }

    private Draft draft(ImmutableList<BridgeRow> rows) {
        return new Draft(
                "misfit " + rows.maxBy(BridgeRow::size).name(),
                Severity.UNKNOWN,
                new Found(rows, rows.getFirst().misfits().distinct()),
                new Subject.Bridges(rows));
    }
}
