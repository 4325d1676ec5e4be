package coldseam.assemblies;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Temperatures at an assembly's interfaces in steady state, on the way between the framing, where a deck over filled joists is
 * coldest.
 *
 * @param interfaces inside → outside: the inner surface, then the outer face of each layer that counts
 */
public record InterfaceTemperatures(ImmutableList<Interface> interfaces) {

    /**
     * A plane between two layers.
     *
     * @param inside material on its inner side; "room" at the inner surface
     * @param outside material on its outer side; "outdoors" at the last
     * @param temperature °C
     */
    public record Interface(String inside, String outside, double temperature) {}

    /** The temperatures in an assembly, in °C; tapered layers at their thinnest. */
    public static InterfaceTemperatures of(Transmittance u, double indoorTemperature, double outdoorTemperature) {
        ImmutableList<LayerResistance> counted = u.layers().select(layer -> layer.counted() > 0);
        double total = u.interiorSurfaceResistance()
                + counted.sumOfDouble(layer -> layer.resistance() * layer.counted())
                + u.exteriorSurfaceResistance();
        double drop = (indoorTemperature - outdoorTemperature) / total;
        MutableList<Interface> interfaces = Lists.mutable.empty();
        double temperature = indoorTemperature - drop * u.interiorSurfaceResistance();
        String inside = "room";
        for (LayerResistance layer : counted) {
            String name = layer.layer().material().name();
            interfaces.add(new Interface(inside, name, temperature));
            temperature -= drop * layer.resistance() * layer.counted();
            inside = name;
        }
        String beyond = counted.size() < u.layers().size() ? "ventilated air layer" : "outdoors";
        interfaces.add(new Interface(inside, beyond, temperature));
        return new InterfaceTemperatures(interfaces.toImmutable());
    }
}
