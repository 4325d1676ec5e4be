package coldseam.audit.rules;

import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.Condensation.Verdict;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What condenses inside an assembly is little and dries within the year; only where the house file gives a monthly climate.
 */
public final class CondensationInsideRule implements Rule {

    /** An assembly in which water is left after a year, or too much condenses for a while. */
    public record Found(String assembly, Condensation year) implements Evidence {
        /** Whether water is left after a year. */
        public boolean accumulates() {
            return year.verdict() == Verdict.ACCUMULATES;
        }

        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("most", year.most(), Dimension.MASS_PER_AREA),
                    Value.of("left after a year", year.left(), Dimension.MASS_PER_AREA),
                    Value.of("limit of the most", Condensation.MOST, Dimension.MASS_PER_AREA));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.assemblies()
                .select(row -> row.moisture()
                        .year()
                        .filter(CondensationInsideRule::wet)
                        .isPresent())
                .collect(row -> draft(facts, row));
    }

    private static boolean wet(Condensation year) {
        return year.verdict() == Verdict.ACCUMULATES || year.most() > Condensation.MOST;
    }

    private Draft draft(Facts facts, AssemblyRow row) {
        String name = row.assembly().name();
        return new Draft(
                "assembly " + name,
                Severity.WEAK,
                new Found(name, row.moisture().year().orElseThrow()),
                new Subject.Surfaces(facts.shell()
                        .surfaces()
                        .select(surface -> surface.assembly()
                                .filter(row.assembly()::equals)
                                .isPresent())));
    }
}
