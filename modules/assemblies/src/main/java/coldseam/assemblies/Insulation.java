package coldseam.assemblies;

import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import org.eclipse.collections.api.list.ImmutableList;

/** Which layers of an assembly the corrections of ISO 6946 annex F are about. */
final class Insulation {

    private Insulation() {}

    /** The insulation over the water control layer, or all of it where no layer controls water. */
    static ImmutableList<Layer> overMembrane(Assembly assembly) {
        ImmutableList<Layer> layers = assembly.layers();
        int membrane = layers.detectLastIndex(layer -> layer.controls().contains(Control.WATER));
        ImmutableList<Layer> pierced = assembly.pierced();
        if (membrane < 0) {
            return pierced;
        }
        ImmutableList<Layer> outside = layers.drop(membrane + 1);
        return pierced.select(layer -> outside.anySatisfy(other -> other == layer));
    }

    /** Thickness that counts in the mean: for a tapered layer the volume under its slope, m. */
    static double meanThickness(Layer layer) {
        return layer.taper()
                .map(taper -> layer.thickness()
                        + TaperedLayers.meanShare(taper.shape()) * (taper.thickest() - layer.thickness()))
                .orElse(layer.thickness());
    }

    /** m²·K/W of some layers, bridging ignored. */
    static double resistance(ImmutableList<Layer> layers) {
        return layers.sumOfDouble(
                layer -> meanThickness(layer) / layer.material().conductivity());
    }
}
