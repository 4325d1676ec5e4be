package coldseam.audit.rules;

import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.audit.Mould;
import coldseam.files.quantity.Dimension;
import java.time.format.TextStyle;
import java.util.Locale;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * An inner surface on which mould may grow in the month that asks for most; only where the house file gives a monthly
 * climate.
 */
final class MouldByMonthRule implements Rule {

    @Override
    public String id() {
        return "mould-by-month";
    }

    @Override
    public String says() {
        return "The coldest point of every junction keeps the temperature factor that the site's months ask for.";
    }

    @Override
    public String closing() {
        return "Warm the coldest point, or keep the rooms drier.";
    }

    @Override
    public int gravity() {
        return 23;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        if (facts.mould().monthly().isEmpty()) {
            return Lists.immutable.empty();
        }
        MonthlyTemperatureFactor.Need need = facts.mould().monthly().get().critical();
        ImmutableList<Mould.Surface> wet = facts.mould().wetByMonth();
        ImmutableList<JunctionSheet> judged = facts.judged().select(sheet -> Mould.among(wet, sheet));
        return Facts.byDetail(judged)
                .collect(sheets -> draft(
                        facts,
                        need,
                        sheets.toSortedListBy(sheet -> sheet.result().temperatureFactor())
                                .toImmutable()));
    }

    private Draft draft(Facts facts, MonthlyTemperatureFactor.Need need, ImmutableList<JunctionSheet> worstFirst) {
        JunctionSheet sheet = worstFirst.getFirst();
        return facts.about(
                worstFirst,
                this,
                Severity.WEAK,
                "mould possible at the " + sheet.result().setup().kind().label(),
                String.format(
                        Locale.ROOT,
                        "its temperature factor fRsi is %.3f; in %s, at %s indoors, it would have to be %.3f to stay free of mould",
                        sheet.result().temperatureFactor(),
                        need.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                        facts.say(need.indoorHumidity(), Dimension.SHARE),
                        need.temperatureFactor()),
                "warm the coldest point, or keep the rooms drier; " + facts.better(sheet));
    }
}
