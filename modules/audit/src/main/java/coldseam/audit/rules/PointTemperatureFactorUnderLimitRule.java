package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.PointSheet;
import coldseam.files.quantity.Dimension;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** An inner surface that gets cold enough for mould where something goes through the insulation. */
final class PointTemperatureFactorUnderLimitRule implements Rule {

    @Override
    public String id() {
        return "point-temperature-factor-under-limit";
    }

    @Override
    public String says() {
        return "The coldest inner surface at every post, bracket, pipe or other point keeps the least temperature factor fRsi.";
    }

    @Override
    public String closing() {
        return "Warm the coldest point: break the way the heat takes, or insulate the pipe indoors.";
    }

    @Override
    public int gravity() {
        return 24;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<PointSheet> cold = PointDrafts.judged(facts)
                .reject(sheet -> sheet.result().temperatureFactor()
                        >= facts.house().limits().temperatureFactor());
        return PointDrafts.byDetail(cold)
                .collect(sheets -> draft(
                        facts,
                        sheets.toSortedListBy(sheet -> sheet.result().temperatureFactor())
                                .toImmutable()));
    }

    private Draft draft(Facts facts, ImmutableList<PointSheet> worstFirst) {
        PointSheet sheet = worstFirst.getFirst();
        return PointDrafts.about(
                facts,
                worstFirst,
                this,
                Severity.WEAK,
                "cold inner surface at a " + PointDrafts.counted(sheet),
                String.format(
                        Locale.ROOT,
                        "the temperature factor fRsi is %.3f there, the limit %.2f; at the design temperature mould can grow"
                                + " there from %s indoor humidity on, and it drips from %s on",
                        sheet.result().temperatureFactor(),
                        facts.house().limits().temperatureFactor(),
                        facts.say(sheet.mouldHumidity(), Dimension.SHARE),
                        facts.say(sheet.dewPointHumidity(), Dimension.SHARE)),
                "warm the coldest point; " + PointDrafts.better(facts, sheet));
    }
}
