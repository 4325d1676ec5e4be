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

    /** m²·K/W of some layers, bridging ignored. */
    static double resistance(ImmutableList<Layer> layers) {
        return layers.sumOfDouble(
                layer -> TaperedLayers.meanThickness(layer) / layer.material().conductivity());
    }
}
