package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexRow.Obstacle;
import coldseam.files.Groups;
import coldseam.files.quantity.Phrase;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Every corner's own detail that the house names fits where it is taken. Where it does not, nothing is known of a corner that
 * its edges' details might have said, and that might be cold.
 */
public final class CornerOutOfRangeRule implements Rule {

    /**
     * Corners for which it cannot be built.
     *
     * @param reasons why not, as the detail gives them
     */
    public record Found(ImmutableList<Phrase> reasons) implements Evidence {}

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<VertexRow> misfits = facts.corners()
                .select(row -> row.obstacle().filter(Obstacle.MISFIT::equals).isPresent());
        return Groups.by(misfits, VertexRow::reasons)
                .collect(rows -> new Draft(
                        "misfit " + rows.getFirst().corner().name(),
                        Severity.UNKNOWN,
                        new Found(rows.getFirst().reasons().distinct()),
                        new Subject.Corners(rows)));
    }
}
