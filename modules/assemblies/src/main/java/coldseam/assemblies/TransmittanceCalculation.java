package coldseam.assemblies;

import coldseam.assemblies.Transmittance.Corrections;
import coldseam.assemblies.Transmittance.Taper;
import coldseam.assemblies.Transmittance.Warning;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.files.quantity.Format;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Computes one {@link Transmittance}; the assembly has no faults. */
final class TransmittanceCalculation {

    /** W/(m·K): no metal of ISO 10456 conducts less, no mineral or wood more. */
    private static final double METAL_FROM = 10;

    /** The share of U below which corrections are left out (ISO 6946:2017 7, from memory). */
    private static final double CORRECTED_FROM = 0.03;

    private final Assembly assembly;
    private final HeatFlow direction;
    private final OuterSurface outerSurface;
    private final Stack stack;
    private final ImmutableList<Stack.State> states;

    TransmittanceCalculation(Assembly assembly, HeatFlow direction, OuterSurface outerSurface) {
        this.assembly = assembly;
        this.direction = direction;
        this.outerSurface = outerSurface;
        this.stack = new Stack(assembly, direction);
        this.states = stack.states(outerSurface.resistance(direction));
    }

    Transmittance result() {
        double upper = weighed(state -> stack.upperLimit(state.layers(), surfaces(state)));
        double lower = weighed(state -> stack.lowerLimit(state.layers(), surfaces(state)));
        double total = weighed(this::total);
        double unbridged = weighed(state -> stack.unbridged(state.layers(), surfaces(state)));
        return new Transmittance(
                assembly.name(),
                direction,
                outerSurface,
                direction.interiorSurfaceResistance(),
                weighed(Stack.State::exterior),
                layers(),
                upper,
                lower,
                taper(),
                total,
                corrections(total, unbridged),
                warnings(upper / lower));
    }

    private double weighed(ToDoubleFunction<Stack.State> quantity) {
        return states.sumOfDouble(state -> state.weight() * quantity.applyAsDouble(state));
    }

    private double surfaces(Stack.State state) {
        return direction.interiorSurfaceResistance() + state.exterior();
    }

    /** (R'T + R''T)/2 of the layers as drawn. */
    private double mean(Stack.State state) {
        double surfaces = surfaces(state);
        return (stack.upperLimit(state.layers(), surfaces) + stack.lowerLimit(state.layers(), surfaces)) / 2;
    }

    private double total(Stack.State state) {
        double rest = mean(state);
        double greatest = stack.greatestTaper(state.layers());
        if (greatest == 0) {
            return rest;
        }
        return 1 / TaperedLayers.transmittance(shape(), rest, greatest);
    }

    private Layer.Taper.Shape shape() {
        return assembly.layers()
                .detect(layer -> layer.taper().isPresent())
                .taper()
                .orElseThrow()
                .shape();
    }

    private Optional<Taper> taper() {
        double greatest = weighed(state -> stack.greatestTaper(state.layers()));
        return greatest == 0 ? Optional.empty() : Optional.of(new Taper(weighed(this::mean), greatest));
    }

    private ImmutableList<LayerResistance> layers() {
        return assembly.layers().collectWithIndex((layer, i) -> {
            double counted = states.sumOfDouble(state -> i < state.layers() ? state.weight() : 0);
            OptionalDouble framing = stack.bridged(i) ? OptionalDouble.of(stack.framing(i)) : OptionalDouble.empty();
            return new LayerResistance(layer, stack.main(i), framing, stack.levelled(i), counted);
        });
    }

    private Corrections corrections(double total, double unbridged) {
        double gaps = gaps(unbridged);
        double fasteners =
                assembly.fasteners().map(given -> fasteners(given, unbridged)).orElse(0.0);
        double rain = assembly.rain().map(given -> rain(given, total)).orElse(0.0);
        return new Corrections(gaps, fasteners, rain, gaps + fasteners + rain >= CORRECTED_FROM / total);
    }

    /** ΔUg = ΔU''·(R1/RT,h)². */
    private double gaps(double unbridged) {
        double level = switch (assembly.gaps()) {
            case NONE -> 0;
            case BRIDGING -> 0.01;
            case CIRCULATING -> 0.04;
        };
        double share = Insulation.resistance(assembly.pierced()) / unbridged;
        return level * share * share;
    }

    /**
     * ΔUf = α·λf·Af·nf/d1·(R1/RT,h)² with α = 0.8·d1/d0: d1 of the insulation's thickness d0 is pierced, the head sunk from
     * outside, and R1 is the resistance of what is pierced.
     */
    private double fasteners(Assembly.Fasteners fasteners, double unbridged) {
        if (fasteners.material().conductivity() < 1) {
            return 0;
        }
        ImmutableList<Layer> insulation = assembly.pierced();
        double d0 = insulation.sumOfDouble(TaperedLayers::meanThickness);
        double d1 = d0 - fasteners.recess();
        if (!(d1 > 0)) {
            return 0;
        }
        double area = Math.PI * fasteners.diameter() * fasteners.diameter() / 4;
        double share = pierced(insulation, d1) / unbridged;
        return 0.8 * fasteners.material().conductivity() * area * fasteners.perSquareMetre() / d0 * share * share;
    }

    /** m²·K/W of the innermost part of some layers, of a given length. */
    private static double pierced(ImmutableList<Layer> insulation, double length) {
        double left = length;
        double sum = 0;
        for (Layer layer : insulation) {
            double part = Math.min(left, TaperedLayers.meanThickness(layer));
            sum += part / layer.material().conductivity();
            left -= part;
        }
        return sum;
    }

    /** ΔUr = p·f·x·(R1/RT)². */
    private double rain(Assembly.Rain rain, double total) {
        double share = Insulation.resistance(Insulation.overMembrane(assembly)) / total;
        return rain.precipitation() * rain.factor() * share * share;
    }

    private ImmutableList<Warning> warnings(double ratio) {
        MutableList<Warning> warnings = Lists.mutable.empty();
        if (ratio > Transmittance.MOST_RATIO) {
            warnings.add(new Warning(
                    Warning.Kind.LIMITS_FAR_APART,
                    Format.of(
                            "the upper limit of the resistance is %.2f times the lower; up to %.1f the combined method"
                                    + " holds. Compute the layer as a section instead",
                            ratio, Transmittance.MOST_RATIO)));
        }
        assembly.layers().forEachWithIndex((layer, i) -> warn(layer, i, warnings));
        boolean corrected = assembly.fasteners().isPresent()
                || assembly.rain().isPresent()
                || assembly.gaps() != Assembly.AirGaps.NONE;
        if (corrected && assembly.pierced().isEmpty()) {
            warnings.add(new Warning(
                    Warning.Kind.NOTHING_INSULATES,
                    "air gaps, fasteners or rain are given, yet no layer insulates; they count for nothing. Give the"
                            + " insulation its role"));
        }
        return warnings.toImmutable();
    }

    private static void warn(Layer layer, int i, MutableList<Warning> warnings) {
        if (layer.framing()
                .filter(framing -> framing.material().conductivity() >= METAL_FROM)
                .isPresent()) {
            warnings.add(new Warning(
                    Warning.Kind.METAL_BRIDGE,
                    Format.of(
                            "layer %d from inside: %s bridges %s; the combined method does not hold for metal."
                                    + " Compute the layer as a section instead",
                            i + 1,
                            layer.framing().get().material().name(),
                            layer.material().name())));
        }
        if (layer.air().isPresent() && layer.thickness() > AirLayers.THICKEST) {
            warnings.add(new Warning(
                    Warning.Kind.THICK_AIR_LAYER,
                    Format.of(
                            "layer %d from inside is an air layer %.0f mm thick and is counted as %.0f mm; treat it as an"
                                    + " unheated space instead",
                            i + 1, layer.thickness() * 1000, AirLayers.THICKEST * 1000)));
        }
    }
}
