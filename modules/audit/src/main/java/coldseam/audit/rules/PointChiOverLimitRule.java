package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.PointSheet;
import coldseam.files.quantity.Dimension;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** Something that goes through the insulation and carries more heat than it may. */
final class PointChiOverLimitRule implements Rule {

    @Override
    public String id() {
        return "point-chi-over-limit";
    }

    @Override
    public String says() {
        return "No post, bracket, pipe or other point loses more than the limit.";
    }

    @Override
    public String closing() {
        return "Choose a detail with a thermal break, or make what goes through smaller.";
    }

    @Override
    public int gravity() {
        return 23;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<PointSheet> over = PointDrafts.judged(facts)
                .select(sheet ->
                        sheet.result().chi().lower() > facts.house().limits().chi());
        return PointDrafts.byDetail(over)
                .collect(sheets -> draft(
                        facts,
                        sheets.toSortedListBy(sheet -> -sheet.result().chi().middle())
                                .toImmutable()));
    }

    private Draft draft(Facts facts, ImmutableList<PointSheet> worstFirst) {
        PointSheet sheet = worstFirst.getFirst();
        return PointDrafts.about(
                facts,
                worstFirst,
                this,
                Severity.WEAK,
                "insulation pierced by a " + PointDrafts.counted(sheet),
                String.format(
                        Locale.ROOT,
                        "\"%s\" loses %s each; the limit is %s",
                        sheet.result().detail().name(),
                        facts.say(sheet.result().chi(), Dimension.POINT_TRANSMITTANCE),
                        facts.say(facts.house().limits().chi(), Dimension.POINT_TRANSMITTANCE)),
                "break the way the heat takes; " + PointDrafts.better(facts, sheet));
    }
}
