package coldseam.assemblies;

import coldseam.envelope.Assembly;
import coldseam.envelope.Role;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * An assembly as a stack of homogeneous layers for the section of a junction.
 *
 * <p>The stack's U is the uncorrected U of ISO 6946. One bridged layer gets λ_eq = d/(RT − rest); where several layers are bridged,
 * what is left of RT is shared among them in proportion to their levelled resistances, the lower limit's. Of a slightly ventilated
 * air layer and what is outside it only the share counts that ISO 6946 counts. A tapered layer is drawn, and counts here, at its
 * thinnest.
 *
 * @param layers all layers inside → outside, each saying whether it carries heat
 * @param interiorSurfaceResistance Rsi, m²·K/W
 * @param exteriorSurfaceResistance Rse, m²·K/W; Rsi's value where the outer face is in a well-ventilated air layer
 * @param transmittance U of the stack, W/(m²·K)
 */
public record EquivalentLayers(
        ImmutableList<EquivalentLayer> layers,
        double interiorSurfaceResistance,
        double exteriorSurfaceResistance,
        double transmittance) {

    /**
     * The stack of an assembly.
     *
     * @throws AssemblyException where the assembly cannot be computed, with all its faults
     */
    public static EquivalentLayers of(Assembly assembly, HeatFlow direction, OuterSurface outerSurface) {
        Transmittance u = Transmittance.of(assembly, direction, outerSurface);
        double total = (u.upperLimit() + u.lowerLimit()) / 2;
        double even = u.interiorSurfaceResistance() + u.exteriorSurfaceResistance();
        double bridged = 0;
        for (LayerResistance layer : u.layers()) {
            double counted = layer.combined() * layer.counted();
            if (layer.framing().isPresent()) {
                bridged += counted;
            } else {
                even += counted;
            }
        }
        // Of bridged layers only; without any it means nothing and is not used.
        double stretch = (total - even) / bridged;
        ImmutableList<EquivalentLayer> layers = u.layers().collect(layer -> equivalent(layer, stretch));
        return new EquivalentLayers(layers, u.interiorSurfaceResistance(), u.exteriorSurfaceResistance(), 1 / total);
    }

    private static EquivalentLayer equivalent(LayerResistance of, double stretch) {
        double thickness = of.layer().thickness();
        double own = of.layer().material().conductivity();
        if (of.counted() == 0) {
            return new EquivalentLayer(of.layer(), thickness, own, EquivalentLayer.Part.VENTILATED);
        }
        if (of.layer().role() == Role.MEMBRANE) {
            return new EquivalentLayer(of.layer(), thickness, own, EquivalentLayer.Part.NEGLIGIBLE);
        }
        double resistance = of.combined() * of.counted() * (of.framing().isPresent() ? stretch : 1);
        return new EquivalentLayer(of.layer(), thickness, thickness / resistance, EquivalentLayer.Part.CARRIES_HEAT);
    }

    /** The layers that carry heat, inside → outside. */
    public ImmutableList<EquivalentLayer> carrying() {
        return layers.select(layer -> layer.part() == EquivalentLayer.Part.CARRIES_HEAT);
    }
}
