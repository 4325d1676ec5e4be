package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.Subject;
import coldseam.envelope.shell.Edge;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A detail that cannot be built with the layers it meets. */
final class DetailOutOfRangeRule implements Rule {

    @Override
    public String id() {
        return "detail-out-of-range";
    }

    @Override
    public String says() {
        return "Every chosen detail fits the layers and the angle it meets.";
    }

    @Override
    public String closing() {
        return "Choose a detail that fits, or change the layers.";
    }

    @Override
    public int gravity() {
        return 3;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionRow> misfits = facts.rows()
                .select(row -> facts.misfits().containsKey(row.edge().name()));
        return misfits.collect(row -> reasons(facts, row))
                .distinct()
                .collect(reasons -> draft(
                        facts,
                        reasons,
                        misfits.select(row -> reasons(facts, row).equals(reasons))));
    }

    private static String reasons(Facts facts, JunctionRow row) {
        return facts.misfits()
                .get(row.edge().name())
                .distinct()
                .makeString("; ")
                .replaceFirst("\\.$", "");
    }

    private Draft draft(Facts facts, String reasons, ImmutableList<JunctionRow> rows) {
        Edge longest = rows.maxBy(JunctionRow::length).edge();
        double length = rows.sumOfDouble(JunctionRow::length);
        return new Draft(
                this,
                "misfit " + longest.name(),
                Severity.UNKNOWN,
                "detail does not fit: " + longest.kind().label(),
                facts.say(length, Dimension.LENGTH) + " could not be computed: " + reasons,
                new Subject.Edges(rows),
                Lists.immutable.empty(),
                Optional.empty(),
                Optional.empty(),
                "choose another detail for it under junctions, or change the layers");
    }
}
