package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.files.quantity.Dimension;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;

/** An inner surface that gets cold enough for mould. */
final class TemperatureFactorUnderLimitRule implements Rule {

    @Override
    public String id() {
        return "temperature-factor-under-limit";
    }

    @Override
    public String says() {
        return "The coldest point of every junction keeps the least temperature factor fRsi.";
    }

    @Override
    public String closing() {
        return "Warm the coldest point: insulate across the way the heat takes.";
    }

    @Override
    public int gravity() {
        return 22;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<JunctionSheet> cold = facts.judged()
                .reject(sheet -> sheet.result().temperatureFactor()
                        >= facts.house().limits().temperatureFactor());
        return Facts.byDetail(cold)
                .collect(sheets -> draft(
                        facts,
                        sheets.toSortedListBy(sheet -> sheet.result().temperatureFactor())
                                .toImmutable()));
    }

    private Draft draft(Facts facts, ImmutableList<JunctionSheet> worstFirst) {
        JunctionSheet sheet = worstFirst.getFirst();
        return facts.about(
                worstFirst,
                this,
                Severity.WEAK,
                "cold inner surface at the " + sheet.result().setup().kind().label(),
                String.format(
                        Locale.ROOT,
                        "its temperature factor fRsi is %.3f, the limit %.2f; at the design temperature mould can grow there from %s indoor "
                                + "humidity on, and it drips from %s on",
                        sheet.result().temperatureFactor(),
                        facts.house().limits().temperatureFactor(),
                        facts.say(sheet.mouldHumidity(), Dimension.SHARE),
                        facts.say(sheet.dewPointHumidity(), Dimension.SHARE)),
                "warm the coldest point; " + facts.better(sheet));
    }
}
