package coldseam.junctions;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** An assembly's continuous insulation made thicker or thinner. */
public final class InsulationThickness {

    private InsulationThickness() {}

    /** m: the layers whose role is insulation, together; zero without any. */
    public static double of(Assembly assembly) {
        return insulation(assembly).sumOfDouble(Layer::thickness);
    }

    /**
     * The same assembly with so much insulation; several layers keep their shares, and fasteners go where nothing is left to
     * fasten.
     *
     * @param thickness m, zero or more; at zero the layers are left out
     * @return empty where no layer's role is insulation, or where leaving it out leaves no layer
     */
    public static Optional<Assembly> with(Assembly assembly, double thickness) {
        double now = of(assembly);
        if (now == 0) {
            return Optional.empty();
        }
        ImmutableList<Layer> layers = assembly.layers()
                .reject(layer -> thickness == 0 && layer.role() == Role.INSULATION)
                .collect(layer -> layer.role() == Role.INSULATION ? thicker(layer, thickness / now) : layer);
        return layers.isEmpty()
                ? Optional.empty()
                : Optional.of(new Assembly(
                        assembly.name(),
                        layers,
                        assembly.fasteners().filter(each -> thickness > 0).map(each -> recessedInto(each, thickness)),
                        assembly.gaps(),
                        assembly.rain()));
    }

    /** Heads are sunk no deeper than the boards are thick. */
    private static Assembly.Fasteners recessedInto(Assembly.Fasteners fasteners, double thickness) {
        return new Assembly.Fasteners(
                fasteners.material(),
                fasteners.diameter(),
                fasteners.perSquareMetre(),
                Math.min(fasteners.recess(), thickness));
    }

    private static ImmutableList<Layer> insulation(Assembly assembly) {
        return assembly.layers().select(layer -> layer.role() == Role.INSULATION);
    }

    private static Layer thicker(Layer layer, double factor) {
        // A cut to falls keeps its rise: the falls do not grow with the board.
        double thickness = layer.thickness() * factor;
        return new Layer(
                layer.material(),
                thickness,
                layer.role(),
                layer.framing(),
                layer.air(),
                layer.taper()
                        .map(taper -> new Layer.Taper(taper.shape(), taper.thickest() - layer.thickness() + thickness)),
                layer.controls());
    }
}
