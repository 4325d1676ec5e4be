package coldseam.audit.rules;

import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.Condensation.Verdict;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * An assembly in which water is left after a year, or too much condenses for a while; only where the house file gives a
 * monthly climate.
 */
final class CondensationInsideRule implements Rule {

    @Override
    public String id() {
        return "condensation-inside";
    }

    @Override
    public String says() {
        return "What condenses inside an assembly is little and dries within the year.";
    }

    @Override
    public String closing() {
        return "Hold vapour back on the warm side, or let it out on the cold side.";
    }

    @Override
    public int gravity() {
        return 15;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.assemblies()
                .select(row -> row.moisture()
                        .year()
                        .filter(CondensationInsideRule::wet)
                        .isPresent())
                .collect(row -> draft(facts, row, row.moisture().year().orElseThrow()));
    }

    private static boolean wet(Condensation year) {
        return year.verdict() == Verdict.ACCUMULATES || year.most() > Condensation.MOST;
    }

    private Draft draft(Facts facts, AssemblyRow row, Condensation year) {
        ImmutableList<Surface> surfaces = facts.shell()
                .surfaces()
                .select(surface ->
                        surface.assembly().filter(row.assembly()::equals).isPresent());
        String name = row.assembly().name();
        return new Draft(
                this,
                "assembly " + name,
                Severity.WEAK,
                (year.verdict() == Verdict.ACCUMULATES ? "water collects in \"" : "much water condenses in \"") + name
                        + "\"",
                what(facts, year),
                new Subject.Surfaces(surfaces),
                Lists.immutable.empty(),
                Optional.empty(),
                Optional.empty(),
                "hold vapour back on the warm side or let it out on the cold side, and have a dynamic study made before"
                        + " anything is built");
    }

    private static String what(Facts facts, Condensation year) {
        String most = String.format(
                Locale.ROOT,
                "by diffusion up to %s condense, most by the end of %s at %s",
                facts.say(year.most(), Dimension.MASS_PER_AREA),
                year.wettest().month().getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                year.wettestPlane());
        return year.verdict() == Verdict.ACCUMULATES
                ? most + ", and after a year " + facts.say(year.left(), Dimension.MASS_PER_AREA) + " are left"
                : most + "; " + facts.say(Condensation.MOST, Dimension.MASS_PER_AREA)
                        + " is the most that is usually allowed (DIN 4108-3, from memory)";
    }
}
