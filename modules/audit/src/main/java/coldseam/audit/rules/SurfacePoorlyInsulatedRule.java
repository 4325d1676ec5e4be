package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Value;
import coldseam.conduction.Interval;
import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.Limits;
import coldseam.envelope.SurfaceLimits;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.InsulationThickness;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.list.primitive.IntInterval;

/**
 * No surface's U is above the limit for its use, and none is far poorer than the house's others, each against what a minimum code
 * asks of its use: walls have half the R of roofs in every house.
 *
 * <p>U is that of the assembly by ISO 6946, also where it meets the ground. Beside an unheated space it counts with that
 * space's temperature factor, though never with less than a half. Twice the limit is a gap: what is there insulates in name
 * only (judgement).
 */
public final class SurfacePoorlyInsulatedRule implements Rule {

    /** How many times the limit the layer counts as missing. */
    static final double HARDLY_THERE = 2;

    /** m: boards are sold in these. */
    private static final double STEP = 0.005;

    /** Half a metre. */
    private static final int MOST_STEPS = 100;

    /** The least temperature factor that U is held with. */
    private static final double LEAST_FACTOR = 0.5;

    /**
     * Surfaces of one assembly.
     *
     * @param transmittance W/(m²·K), as it is held to the limit: of the worst of them
     * @param limit W/(m²·K)
     * @param others W/(m²·K), what U would be if it stood to a minimum code for its use as the house's other surfaces do on
     *     average; empty where there is none
     * @param overLimit whether the limit is missed; else it is the others that it falls short of
     * @param source of the limit; empty where the house file sets it
     * @param more m, in whole steps, by which the insulation of the worst of them must be thicker for it; empty where it has
     *     no layer that can be, or where half a metre is not enough
     */
    public record Found(
            String assembly,
            double transmittance,
            double limit,
            Optional<Double> others,
            boolean overLimit,
            Optional<String> source,
            Optional<Double> more)
            implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            ImmutableList<Value> held = Lists.immutable.of(
                    Value.of("U", transmittance, Dimension.TRANSMITTANCE),
                    Value.of("limit", limit, Dimension.TRANSMITTANCE));
            return others.map(mean ->
                            held.newWith(Value.of("in proportion to the others", mean, Dimension.TRANSMITTANCE)))
                    .orElse(held);
        }

        /** Whether what is there insulates in name only. */
        public boolean hardlyThere() {
            return overLimit && transmittance > HARDLY_THERE * limit;
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        ImmutableList<Surface> held = facts.shell().surfaces().select(SurfacePoorlyInsulatedRule::isHeld);
        return Groups.by(held, Facts::assembly).flatCollect(alike -> {
            Optional<Double> others = meanShare(facts, held.reject(alike::contains));
            ImmutableList<Surface> lacking =
                    alike.select(surface -> isOver(facts, surface) || isFarBelow(facts, surface, others));
            return lacking.isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(draft(facts, lacking, others));
        });
    }

    /** What has no heat layer at all is another rule's. */
    static boolean isHeld(Surface surface) {
        return surface.assembly().isPresent()
                && !surface.faces(Exposure.Kind.PARTY)
                && Facts.has(surface, Control.HEAT);
    }

    private Draft draft(Facts facts, ImmutableList<Surface> surfaces, Optional<Double> others) {
        Surface worst = surfaces.maxBy(surface -> held(surface) / limit(facts, surface));
        Optional<Double> proportion = others.map(share -> share * usual(facts, worst));
        Found found = new Found(
                Facts.assembly(worst),
                held(worst),
                limit(facts, worst),
                proportion,
                isOver(facts, worst),
                most(facts, worst).source(),
                more(
                        worst,
                        isOver(facts, worst)
                                ? limit(facts, worst)
                                : proportion.orElseThrow()
                                        / facts.house().limits().meanShare()));
        return Draft.ofAssembly(
                found.hardlyThere() ? Severity.GAP : Severity.WEAK,
                found,
                surfaces,
                Optional.of(Interval.of(surfaces.sumOfDouble(surface -> lost(facts, surface)))));
    }

    /** W/K lost against the limit; none where it is kept. */
    private static double lost(Facts facts, Surface surface) {
        double more = Facts.assemblyTransmittance(surface) - limit(facts, surface);
        return Math.max(0, more)
                * SurfaceWithoutLayerRule.opaqueArea(facts, surface)
                * surface.exposure().factor();
    }

    static double limit(Facts facts, Surface surface) {
        return most(facts, surface).transmittance();
    }

    static SurfaceLimits.Most most(Facts facts, Surface surface) {
        return facts.house()
                .limits()
                .surfaces()
                .of(surface.use(), surface.exposure().kind());
    }

    static double held(Surface surface) {
        return held(surface, surface.assembly().orElseThrow());
    }

    /** What a surface would be held to the limit with, were it built so. */
    private static double held(Surface surface, Assembly assembly) {
        return Facts.transmittance(surface, assembly) * factor(surface);
    }

    /** What U is multiplied with before it is held to the limit. */
    static double factor(Surface surface) {
        Exposure exposure = surface.exposure();
        return exposure.kind() == Exposure.Kind.UNHEATED ? Math.max(LEAST_FACTOR, exposure.factor()) : 1;
    }

    private static Optional<Double> more(Surface surface, double limit) {
        Assembly assembly = surface.assembly().orElseThrow();
        double now = InsulationThickness.of(assembly);
        return IntInterval.oneTo(MOST_STEPS)
                .collect(step -> step * STEP)
                .detectOptional(more -> InsulationThickness.with(assembly, now + more)
                        .filter(thicker -> !Limits.over(held(surface, thicker), limit))
                        .isPresent());
    }

    static boolean isOver(Facts facts, Surface surface) {
        return Limits.over(held(surface), limit(facts, surface));
    }

    private static boolean isFarBelow(Facts facts, Surface surface, Optional<Double> others) {
        return others.filter(mean -> Limits.over(
                        share(facts, surface) * facts.house().limits().meanShare(), mean))
                .isPresent();
    }

    /** U over what a minimum code asks of its use, whatever the house sets as its limit. */
    private static double share(Facts facts, Surface surface) {
        return held(surface) / usual(facts, surface);
    }

    private static double usual(Facts facts, Surface surface) {
        return SurfaceLimits.usual(facts.house().site())
                .of(surface.use(), surface.exposure().kind())
                .transmittance();
    }

    /** Weighed by area; what lies beside an unheated space counts with its own U, or all others would have to make up for its warmth. */
    private static Optional<Double> meanShare(Facts facts, ImmutableList<Surface> surfaces) {
        double area = surfaces.sumOfDouble(surface -> SurfaceWithoutLayerRule.opaqueArea(facts, surface));
        return area > 0
                ? Optional.of(surfaces.sumOfDouble(surface -> share(facts, surface)
                                / factor(surface)
                                * SurfaceWithoutLayerRule.opaqueArea(facts, surface))
                        / area)
                : Optional.empty();
    }
}
