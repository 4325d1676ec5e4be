package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.files.Groups;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Every bridge has a detail that somebody chose: without one it is unknown how its layers pass. */
public final class DetailNotChosenRule implements Rule {

    /**
     * Bridges of one kind for which nobody chose, with something that stands in or without.
     *
     * @param rows of them
     * @param standIn the worst option, which stands in; empty where none was computed
     */
    public record Found(ImmutableList<BridgeRow> rows, Optional<BridgeSheet<?>> standIn) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            ImmutableList<Value> extent = Lists.immutable.of(Facts.extent(rows));
            return standIn.map(sheet -> extent.newWith(new Value("stand-in", sheet.external(), sheet.dimension())))
                    .orElse(extent);
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<BridgeRow> undecided = facts.rows().select(DetailNotChosenRule::undecided);
        return Groups.by(undecided, BridgeRow::kindLabel)
                .flatCollect(rows -> Groups.by(rows, row -> row.sheet().isPresent()))
                .collect(rows -> draft(facts, rows));
    }

    /** What does not fit is another rule's. */
    private static boolean undecided(BridgeRow row) {
        return row.sheet()
                .map(sheet -> !sheet.chosen())
                .orElse(row.noneFits() || row.misfits().isEmpty());
    }

    private Draft draft(Facts facts, ImmutableList<BridgeRow> rows) {
        ImmutableList<BridgeSheet<?>> sheets = BridgeRow.sheets(rows);
        return new Draft(
                "kind " + rows.getFirst().kindLabel() + (sheets.isEmpty() ? ", nothing stands in" : ""),
                Severity.UNKNOWN,
                new Found(rows, sheets.getFirstOptional()),
                new Subject.Bridges(rows),
                sheets,
                facts.lostAgainstBest(sheets));
    }
}
