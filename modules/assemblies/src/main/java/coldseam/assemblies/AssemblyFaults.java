package coldseam.assemblies;

import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.files.quantity.Format;
import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What keeps an assembly from being computed. It is asked before each transmittance, so that places are put into words only where one
 * has a fault.
 */
public final class AssemblyFaults {

    private final MutableList<String> faults = Lists.mutable.empty();

    private AssemblyFaults() {}

    /**
     * Every fault of an assembly.
     *
     * @return one sentence each; empty where the assembly can be computed
     */
    public static ImmutableList<String> of(Assembly assembly) {
        AssemblyFaults found = new AssemblyFaults();
        if (assembly.layers().isEmpty()) {
            found.faults.add("it has no layers; at least one is needed");
        }
        assembly.layers().forEachWithIndex((layer, index) -> found.layer(layer, () -> place(layer, index)));
        found.tapers(assembly);
        assembly.fasteners().ifPresent(fasteners -> found.fasteners(assembly, fasteners));
        assembly.rain().ifPresent(rain -> {
            found.atLeastZero(() -> "rain cooling: precipitation", rain.precipitation(), "mm/day");
            found.atLeastZero(() -> "rain cooling: factor", rain.factor(), "W·day/(m²·K·mm)");
        });
        return found.faults.toImmutable();
    }

    /** Throws where an assembly has faults. */
    static void refuse(Assembly assembly) {
        ImmutableList<String> faults = of(assembly);
        if (faults.notEmpty()) {
            throw new AssemblyException(assembly.name(), faults);
        }
    }

    private static String place(Layer layer, int index) {
        return "layer " + (index + 1) + " from inside (" + layer.material().name() + ")";
    }

    private void layer(Layer layer, Supplier<String> place) {
        positive(() -> place.get() + ": thickness", layer.thickness(), "m");
        if (layer.air().isEmpty()) {
            positive(() -> place.get() + ": conductivity", layer.material().conductivity(), "W/(m·K)");
        }
        layer.framing().ifPresent(framing -> {
            positive(
                    () -> place.get() + ": framing conductivity",
                    framing.material().conductivity(),
                    "W/(m·K)");
            if (!(framing.share() > 0 && framing.share() < 1)) {
                say(place.get() + ": framing share", framing.share(), "", "more than 0 and less than 1");
            }
        });
        layer.air().ifPresent(air -> {
            if (!(air.lowEmissivity() > 0 && air.lowEmissivity() <= 1)) {
                say(place.get() + ": emissivity", air.lowEmissivity(), "", "more than 0, up to 1");
            }
            if (air.ventilation() == Layer.Ventilation.SLIGHTLY_VENTILATED) {
                atLeastZero(() -> place.get() + ": openings", air.openings(), "mm²");
            }
        });
        layer.taper().ifPresent(taper -> {
            if (!(taper.thickest() > layer.thickness() && taper.thickest() < Double.POSITIVE_INFINITY)) {
                say(
                        place.get() + ": greatest thickness",
                        taper.thickest(),
                        "m",
                        Format.of("more than its least thickness, %s m", layer.thickness()));
            }
            if (layer.framing().isPresent() || layer.air().isPresent()) {
                faults.add(place.get() + ": a tapered layer can neither be framed nor be air; split the layer in two");
            }
        });
    }

    private void tapers(Assembly assembly) {
        ImmutableList<Layer.Taper.Shape> shapes = assembly.layers()
                .flatCollect(layer -> layer.taper().map(Lists.immutable::of).orElse(Lists.immutable.empty()))
                .collect(Layer.Taper::shape)
                .distinct();
        if (shapes.size() > 1) {
            faults.add("its tapered layers differ in shape (" + shapes.makeString(", ")
                    + "); one shape is allowed. Split the field into assemblies of one shape each");
        }
    }

    private void fasteners(Assembly assembly, Assembly.Fasteners fasteners) {
        positive(() -> "fasteners: conductivity", fasteners.material().conductivity(), "W/(m·K)");
        positive(() -> "fasteners: diameter", fasteners.diameter(), "m");
        atLeastZero(() -> "fasteners: number", fasteners.perSquareMetre(), "1/m²");
        atLeastZero(() -> "fasteners: recess", fasteners.recess(), "m");
        double insulation = assembly.pierced().sumOfDouble(Layer::thickness);
        if (fasteners.recess() > insulation) {
            say(
                    "fasteners: recess",
                    fasteners.recess(),
                    "m",
                    Format.of("up to the insulation's thickness, %s m", insulation));
        }
    }

    private void positive(Supplier<String> what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            say(what.get(), value, unit, "more than 0");
        }
    }

    private void atLeastZero(Supplier<String> what, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            say(what.get(), value, unit, "0 or more");
        }
    }

    private void say(String what, double value, String unit, String allowed) {
        faults.add(Format.of("%s is %s %s", what, value, unit).strip() + "; allowed is " + allowed);
    }
}
