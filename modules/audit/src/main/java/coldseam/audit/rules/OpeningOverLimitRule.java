package coldseam.audit.rules;

import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.Limits;
import coldseam.envelope.Opening;
import coldseam.envelope.SurfaceLimits;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** No window or door has a U above the limit for its kind. */
public final class OpeningOverLimitRule implements Rule {

    /**
     * Openings that lose too much.
     *
     * @param openings the worst first
     * @param transmittance W/(m²·K), of the worst
     * @param limit W/(m²·K), for it
     * @param source of the limit; empty where the house file sets it
     */
    public record Found(ImmutableList<Opening> openings, double transmittance, double limit, Optional<String> source)
            implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("U", transmittance, Dimension.TRANSMITTANCE),
                    Value.of("limit", limit, Dimension.TRANSMITTANCE));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Opening> over = facts.house()
                .openings()
                .select(opening -> Limits.over(transmittance(opening), limit(facts, opening)))
                .toImmutableSortedListBy(opening -> limit(facts, opening) - transmittance(opening));
        ImmutableList<Surface> walls = over.flatCollect(
                        opening -> facts.shell().surfaces().select(surface -> surface.holds(opening)))
                .distinct();
        return walls.isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(draft(facts, over, walls));
    }

    private Draft draft(Facts facts, ImmutableList<Opening> over, ImmutableList<Surface> walls) {
        Opening worst = over.getFirst();
        return new Draft(
                "openings",
                Severity.WEAK,
                new Found(
                        over,
                        transmittance(worst),
                        limit(facts, worst),
                        most(facts, worst).source()),
                new Subject.Surfaces(walls),
                Lists.immutable.empty(),
                Optional.of(Interval.of(over.sumOfDouble(opening ->
                        (transmittance(opening) - limit(facts, opening)) * opening.width() * opening.height()))));
    }

    private static double transmittance(Opening opening) {
        return WindowTransmittance.transmittance(opening);
    }

    private static double limit(Facts facts, Opening opening) {
        return most(facts, opening).transmittance();
    }

    private static SurfaceLimits.Most most(Facts facts, Opening opening) {
        return facts.house().limits().surfaces().of(opening.kind());
    }
}
