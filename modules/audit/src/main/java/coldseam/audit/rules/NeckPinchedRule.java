package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.PenLine;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** Insulation that passes a junction, yet is too thin at its narrowest. */
final class NeckPinchedRule implements Rule {

    @Override
    public String id() {
        return "neck-pinched";
    }

    @Override
    public String says() {
        return "Insulation keeps a share of its thickness through every junction.";
    }

    @Override
    public String closing() {
        return "Choose a detail that keeps more of the thickness.";
    }

    @Override
    public int gravity() {
        return 20;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionSheet> pinched = facts.judged().select(sheet -> pinches(facts, sheet));
        return Facts.byDetail(pinched)
                .collect(sheets -> draft(
                        facts,
                        sheets.toSortedListBy(sheet -> sheet.result().penLine().share())
                                .toImmutable()));
    }

    /** Whether an unbroken pen line is too thin. */
    static boolean pinches(Facts facts, JunctionSheet sheet) {
        PenLine line = sheet.result().penLine();
        return line.unbroken() && !(line.share() >= facts.house().limits().neckShare());
    }

    private Draft draft(Facts facts, ImmutableList<JunctionSheet> worstFirst) {
        JunctionSheet sheet = worstFirst.getFirst();
        PenLine line = sheet.result().penLine();
        return facts.about(
                worstFirst,
                this,
                Severity.WEAK,
                "insulation pinched at the " + sheet.result().setup().kind().label(),
                String.format(
                        Locale.ROOT,
                        "%s of insulation are left at the narrowest, %s of the thinner neighbour; the limit is %s",
                        facts.say(line.neck(), Dimension.THICKNESS),
                        facts.say(line.share(), Dimension.SHARE),
                        facts.say(facts.house().limits().neckShare(), Dimension.SHARE)),
                "keep more of the thickness; " + facts.better(sheet));
    }
}
