package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.WeakestPath;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** A way out of the house that resists much less than the surfaces beside it. */
final class WeakestPathRule implements Rule {

    @Override
    public String id() {
        return "weakest-path";
    }

    @Override
    public String says() {
        return "No way from indoors to outdoors through a junction resists less than a share of the surfaces beside it.";
    }

    @Override
    public String closing() {
        return "Lengthen the way, or put insulation across it.";
    }

    @Override
    public int gravity() {
        return 21;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionSheet> weak = facts.judged()
                .reject(sheet -> LayerBrokenRule.heatBreaks(facts, sheet) || NeckPinchedRule.pinches(facts, sheet))
                .reject(sheet -> sheet.result().weakestPath().ratio()
                        >= facts.house().limits().pathShare());
        return Facts.byDetail(weak)
                .collect(sheets -> draft(
                        facts,
                        sheets.toSortedListBy(
                                        sheet -> sheet.result().weakestPath().ratio())
                                .toImmutable()));
    }

    private Draft draft(Facts facts, ImmutableList<JunctionSheet> worstFirst) {
        JunctionSheet sheet = worstFirst.getFirst();
        WeakestPath path = sheet.result().weakestPath();
        return facts.about(
                worstFirst,
                this,
                Severity.WEAK,
                "a short way out at the " + sheet.result().setup().kind().label(),
                String.format(
                        Locale.ROOT,
                        "the weakest path resists %s, %s of the surface beside it; the limit is %s",
                        facts.say(path.resistance(), Dimension.RESISTANCE),
                        facts.say(path.ratio(), Dimension.SHARE),
                        facts.say(facts.house().limits().pathShare(), Dimension.SHARE)),
                "lengthen the way or put insulation across it; " + facts.better(sheet));
    }
}
