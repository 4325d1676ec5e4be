package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A point detail that cannot be built with the layers it goes through. */
final class PointDetailOutOfRangeRule implements Rule {

    @Override
    public String id() {
        return "point-detail-out-of-range";
    }

    @Override
    public String says() {
        return "Every chosen point detail fits the layers it goes through.";
    }

    @Override
    public String closing() {
        return "Choose a detail that fits, or change the layers.";
    }

    @Override
    public int gravity() {
        return 4;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.points()
                .select(row -> facts.pointMisfits().containsKey(row.points().name()))
                .collect(row -> PointDrafts.about(
                        facts,
                        Lists.immutable.of(row),
                        this,
                        "points " + row.points().name(),
                        Severity.UNKNOWN,
                        "detail does not fit: " + row.kind().label() + ", "
                                + row.points().name(),
                        row.number() + " could not be computed: "
                                + facts.pointMisfits()
                                        .get(row.points().name())
                                        .distinct()
                                        .makeString("; ")
                                        .replaceFirst("\\.$", ""),
                        Optional.empty(),
                        Optional.empty(),
                        "choose another detail for it under points, or change the layers"));
    }
}
