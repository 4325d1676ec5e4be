package coldseam.audit.engine;

import coldseam.assemblies.EquivalentLayers;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.plan.HeatInput;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * How assemblies' resistances follow the conductivities of their layers, members and fasteners: quotients of the formulas of ISO
 * 6946 a ten-thousandth to either side, since between its limits what members bridge follows every other layer as well.
 */
final class LayerSlopes {

    /** Step of ln k for quotients of closed formulas, whose error is of its square. */
    private static final double STEP = 1e-4;

    private LayerSlopes() {}

    /** df / d ln k at k, of a function of what k is multiplied by. */
    static double slope(ToDoubleFunction<Double> of) {
        return (of.applyAsDouble(1 + STEP) - of.applyAsDouble(1 - STEP)) / (2 * STEP);
    }

    /**
     * Of a surface's resistance, corrections counted in.
     *
     * @return dR / d ln k of each material, m²·K/W; none of air layers
     */
    static Map<HeatInput, Double> resistance(Surface surface) {
        Map<HeatInput, Double> of = new TreeMap<>(HeatInput.ORDER);
        surface.assembly()
                .ifPresent(assembly -> inputs(assembly)
                        .forEach(input -> of.put(
                                input,
                                slope(factor -> 1
                                        / Transmittance.of(
                                                        scaled(assembly, input, factor), flow(surface), outer(surface))
                                                .corrected()))));
        return of;
    }

    /**
     * Of a layer with members, as sections draw it: the mean of all surfaces that have it, by area.
     *
     * @return d ln k of the layer as drawn / d ln k of each material; empty where no surface has it
     */
    static Map<HeatInput, Double> framed(Layer layer, ImmutableList<Surface> surfaces) {
        Map<HeatInput, Double> of = new TreeMap<>(HeatInput.ORDER);
        ImmutableList<Surface> with = surfaces.select(surface -> surface.externalArea() > 0
                && surface.assembly()
                        .filter(each -> each.layers().contains(layer))
                        .isPresent());
        double area = with.sumOfDouble(Surface::externalArea);
        with.forEach(surface -> inputs(surface.assembly().orElseThrow())
                .forEach(input -> of.merge(
                        input,
                        surface.externalArea() / area * slope(factor -> Math.log(drawn(layer, surface, input, factor))),
                        Double::sum)));
        return of;
    }

    /** W/(m·K), of a layer as sections draw it. */
    private static double drawn(Layer layer, Surface surface, HeatInput input, double factor) {
        Assembly assembly = surface.assembly().orElseThrow();
        int index = assembly.layers().indexOf(layer);
        return EquivalentLayers.of(scaled(assembly, input, factor), flow(surface), outer(surface))
                .layers()
                .get(index)
                .conductivity();
    }

    private static HeatFlow flow(Surface surface) {
        return HeatFlow.through(surface.normal());
    }

    private static OuterSurface outer(Surface surface) {
        return OuterSurface.of(surface.exposure());
    }

    private static ImmutableSet<HeatInput> inputs(Assembly assembly) {
        return assembly.materials()
                .newWithAll(assembly.fasteners().map(Assembly.Fasteners::material).stream()
                        .toList())
                .collect(HeatInput::of)
                .reject(input -> input == HeatInput.Other.AIR_LAYERS)
                .toImmutableSet();
    }

    private static Assembly scaled(Assembly assembly, HeatInput input, double factor) {
        return new Assembly(
                assembly.name(),
                assembly.layers()
                        .collect(layer -> new Layer(
                                scaled(layer.material(), input, factor),
                                layer.thickness(),
                                layer.role(),
                                layer.framing()
                                        .map(members -> new Layer.Framing(
                                                scaled(members.material(), input, factor), members.share())),
                                layer.air(),
                                layer.taper(),
                                layer.controls())),
                assembly.fasteners()
                        .map(each -> new Assembly.Fasteners(
                                scaled(each.material(), input, factor),
                                each.diameter(),
                                each.perSquareMetre(),
                                each.recess())),
                assembly.gaps(),
                assembly.rain());
    }

    private static Material scaled(Material material, HeatInput input, double factor) {
        return HeatInput.of(material).equals(input) ? material.conducting(material.conductivity() * factor) : material;
    }
}
