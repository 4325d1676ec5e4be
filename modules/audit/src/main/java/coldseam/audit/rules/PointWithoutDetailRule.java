package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.PointRow;
import coldseam.audit.PointSheet;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** Something that goes through the insulation, and nobody has said how. */
final class PointWithoutDetailRule implements Rule {

    @Override
    public String id() {
        return "point-without-detail";
    }

    @Override
    public String says() {
        return "Somebody chose how each post, bracket, pipe and other point goes through the insulation.";
    }

    @Override
    public String closing() {
        return "Choose a detail for it in the house file.";
    }

    @Override
    public int gravity() {
        return 5;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.points().select(row -> row.points().detail().isEmpty()).collect(row -> draft(facts, row));
    }

    private Draft draft(Facts facts, PointRow row) {
        Optional<PointSheet> sheet = row.sheet();
        return PointDrafts.about(
                facts,
                Lists.immutable.of(row),
                this,
                "points " + row.points().name(),
                Severity.UNKNOWN,
                "no detail chosen: " + row.kind().label() + ", " + row.points().name(),
                sheet.map(each -> "nobody has said how it goes through; the worst option stands in, \""
                                + each.result().detail().name() + "\", with chi "
                                + facts.say(each.result().chi(), Dimension.POINT_TRANSMITTANCE))
                        .orElse(
                                "nobody has said how it goes through, and no detail of the catalogue fits these layers"),
                sheet,
                sheet.flatMap(each -> PointDrafts.lostAgainstBest(facts, Lists.immutable.of(each))),
                sheet.map(each -> "choose a detail for it under points; " + PointDrafts.better(facts, each))
                        .orElse("write a point file of your own and name it under points"));
    }
}
