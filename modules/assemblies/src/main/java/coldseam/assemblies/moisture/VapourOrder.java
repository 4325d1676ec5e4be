package coldseam.assemblies.moisture;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Whether an assembly gets more open to vapour towards outdoors.
 *
 * <p>Rules of thumb, common practice, no source: what lies inside the insulation should hold vapour back five times as much as what
 * lies outside it, and nothing that can get wet should lie between two tight layers. A warning is a reason to compute
 * {@link Condensation}, not a proof of damage.
 *
 * @param insideDiffusion m, sd of all inside the outermost insulating layer
 * @param outsideDiffusion m, sd of all outside it, up to a well-ventilated air layer
 * @param warnings empty where the order is the usual one
 */
public record VapourOrder(double insideDiffusion, double outsideDiffusion, ImmutableList<String> warnings) {

    /** How many times tighter inside should be than outside; common practice, no source. */
    public static final double INSIDE_TO_OUTSIDE = 5;

    /** m, from which a layer counts as tight; common practice, no source. */
    public static final double TIGHT_FROM = 100;

    /**
     * The order of an assembly's layers.
     *
     * @throws IllegalArgumentException where layers have no vapour resistance factor, naming every one
     */
    public static VapourOrder of(Assembly assembly) {
        ImmutableList<String> missing = VapourStack.missing(assembly);
        if (missing.notEmpty()) {
            throw new IllegalArgumentException("assembly \"" + assembly.name() + "\": " + missing.makeString("; "));
        }
        ImmutableList<Layer> layers = VapourStack.upToVentilation(assembly);
        int insulation = layers.detectLastIndex(Layer::insulates);
        MutableList<String> warnings = Lists.mutable.empty();
        if (insulation < 0) {
            return new VapourOrder(layers.sumOfDouble(VapourStack::diffusion), 0, warnings.toImmutable());
        }
        double inside = layers.take(insulation).sumOfDouble(VapourStack::diffusion);
        double outside = layers.drop(insulation + 1).sumOfDouble(VapourStack::diffusion);
        if (inside < INSIDE_TO_OUTSIDE * outside) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "vapour meets sd %.2f m inside the insulation and %.2f m outside it; usual is at least %.0f times as"
                            + " much inside (common practice, no source)",
                    inside,
                    outside,
                    INSIDE_TO_OUTSIDE));
        }
        trapped(layers, warnings);
        return new VapourOrder(inside, outside, warnings.toImmutable());
    }

    /** Wood, boards or fibres between two tight layers cannot dry to either side. */
    private static void trapped(ImmutableList<Layer> layers, MutableList<String> warnings) {
        int first = layers.detectIndex(VapourOrder::tight);
        int last = layers.detectLastIndex(VapourOrder::tight);
        if (first < 0 || last <= first + 1) {
            return;
        }
        ImmutableList<Layer> between = layers.subList(first + 1, last).toImmutable();
        if (between.anySatisfy(layer -> !tight(layer) && layer.air().isEmpty())) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "%s lies between two tight layers, %s and %s, and cannot dry to either side (common practice, no"
                            + " source)",
                    between.reject(VapourOrder::tight)
                            .collect(layer -> layer.material().name())
                            .distinct()
                            .makeString(" and "),
                    layers.get(first).material().name(),
                    layers.get(last).material().name()));
        }
    }

    private static boolean tight(Layer layer) {
        return VapourStack.diffusion(layer) >= TIGHT_FROM;
    }
}
