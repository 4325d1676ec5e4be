package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.PointRow;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.Limits;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A surface keeps the limit of its U with what goes through it again and again, such as the brackets of a cladding: each may
 * keep the limit of chi, and all together leave little of the insulation.
 *
 * <p>Fewer than one on two square metres are single things, held to the limit of chi alone (judgement). chi counts with its
 * lower bound, as it does where it is held to its own limit. Surfaces whose layers miss the limit already are
 * {@link SurfacePoorlyInsulatedRule}'s.
 */
public final class SurfacePiercedRule implements Rule {

    /** 1/m²; the least that a house file may spread over a surface. */
    private static final double REPEATED = 0.5;

    /**
     * A surface with its points.
     *
     * @param number of the points
     * @param layers W/(m²·K), its U as it is held to the limit, without them
     * @param transmittance W/(m²·K), with them
     * @param limit W/(m²·K)
     * @param source of the limit; empty where the house file sets it
     */
    public record Found(
            String surface, int number, double layers, double transmittance, double limit, Optional<String> source)
            implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("number", number, Dimension.RATIO),
                    Value.of("U", layers, Dimension.TRANSMITTANCE),
                    Value.of("U with the points", transmittance, Dimension.TRANSMITTANCE),
                    Value.of("limit", limit, Dimension.TRANSMITTANCE));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return facts.shell()
                .surfaces()
                .select(SurfacePoorlyInsulatedRule::isHeld)
                .reject(surface -> SurfacePoorlyInsulatedRule.isOver(facts, surface))
                .flatCollect(surface -> draft(facts, surface));
    }

    private ImmutableList<Draft> draft(Facts facts, Surface surface) {
        ImmutableList<PointRow> points = facts.rows()
                .selectInstancesOf(PointRow.class)
                .select(row -> row.surface().name().equals(surface.name()));
        double area = SurfaceWithoutLayerRule.opaqueArea(facts, surface);
        int number = (int) points.sumOfInt(PointRow::number);
        double more = points.sumOfDouble(row -> row.number() * row.chi().lower()) / area;
        double layers = SurfacePoorlyInsulatedRule.held(surface);
        double held = layers + more * SurfacePoorlyInsulatedRule.factor(surface);
        double limit = SurfacePoorlyInsulatedRule.limit(facts, surface);
        if (number < REPEATED * area || !Limits.over(held, limit)) {
            return Lists.immutable.empty();
        }
        return Lists.immutable.of(new Draft(
                "points through " + surface.name(),
                held > SurfacePoorlyInsulatedRule.HARDLY_THERE * limit ? Severity.GAP : Severity.WEAK,
                new Found(
                        surface.name(),
                        number,
                        layers,
                        held,
                        limit,
                        SurfacePoorlyInsulatedRule.most(facts, surface).source()),
                new Subject.Surfaces(Lists.immutable.of(surface)),
                Lists.immutable.empty(),
                Optional.of(Interval.of((held - limit)
                        / SurfacePoorlyInsulatedRule.factor(surface)
                        * area
                        * surface.exposure().factor()))));
    }
}
