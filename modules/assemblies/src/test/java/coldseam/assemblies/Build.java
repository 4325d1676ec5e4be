package coldseam.assemblies;

import coldseam.envelope.Assembly;
import coldseam.envelope.Control;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Sets;

/** Assemblies for tests, in few words. */
public final class Build {

    private Build() {}

    public static Material material(String name, double conductivity) {
        return material(name, conductivity, OptionalDouble.empty());
    }

    public static Material material(String name, double conductivity, OptionalDouble mu) {
        return new Material(
                name,
                conductivity,
                mu,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                conductivity <= Material.INSULATES_UP_TO,
                new Provenance("test", Provenance.Sureness.DECLARED));
    }

    public static Layer layer(Role role, String name, double millimetres, double conductivity) {
        return new Layer(
                material(name, conductivity),
                millimetres / 1000,
                role,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sets.immutable.empty());
    }

    public static Layer vapour(Role role, String name, double millimetres, double conductivity, double mu) {
        Layer plain = layer(role, name, millimetres, conductivity);
        return new Layer(
                material(name, conductivity, OptionalDouble.of(mu)),
                plain.thickness(),
                role,
                plain.framing(),
                plain.air(),
                plain.taper(),
                plain.controls());
    }

    public static Layer framed(Layer layer, double conductivity, double share) {
        return new Layer(
                layer.material(),
                layer.thickness(),
                layer.role(),
                Optional.of(new Layer.Framing(material("framing", conductivity), share)),
                layer.air(),
                layer.taper(),
                layer.controls());
    }

    public static Layer tapered(Layer layer, Layer.Taper.Shape shape, double thickestMillimetres) {
        return new Layer(
                layer.material(),
                layer.thickness(),
                layer.role(),
                layer.framing(),
                layer.air(),
                Optional.of(new Layer.Taper(shape, thickestMillimetres / 1000)),
                layer.controls());
    }

    public static Layer controlling(Layer layer, Control control) {
        return new Layer(
                layer.material(),
                layer.thickness(),
                layer.role(),
                layer.framing(),
                layer.air(),
                layer.taper(),
                layer.controls().newWith(control));
    }

    public static Layer air(double millimetres, Layer.Ventilation ventilation, double openings) {
        return air(millimetres, ventilation, openings, 0.9);
    }

    public static Layer air(double millimetres, Layer.Ventilation ventilation, double openings, double emissivity) {
        return new Layer(
                material("air", 0.025),
                millimetres / 1000,
                Role.AIR_LAYER,
                Optional.empty(),
                Optional.of(new Layer.AirLayer(ventilation, openings, emissivity)),
                Optional.empty(),
                Sets.immutable.empty());
    }

    public static Assembly assembly(Layer... layers) {
        return new Assembly(
                "test", Lists.immutable.of(layers), Optional.empty(), Assembly.AirGaps.NONE, Optional.empty());
    }

    public static Assembly with(Assembly assembly, Assembly.AirGaps gaps) {
        return new Assembly(assembly.name(), assembly.layers(), assembly.fasteners(), gaps, assembly.rain());
    }

    public static Assembly with(Assembly assembly, Assembly.Fasteners fasteners) {
        return new Assembly(
                assembly.name(), assembly.layers(), Optional.of(fasteners), assembly.gaps(), assembly.rain());
    }

    public static Assembly with(Assembly assembly, Assembly.Rain rain) {
        return new Assembly(
                assembly.name(), assembly.layers(), assembly.fasteners(), assembly.gaps(), Optional.of(rain));
    }
}
