package coldseam.junctions.vertex;

import coldseam.conduction.Interval;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;

/**
 * A coupling or a transmittance, and how it follows the conductivities.
 *
 * @param value W/K, or that for each metre or square metre
 * @param slopes its derivative by ln k, for each material by name; an air layer's is "air"
 */
public record Sloped(Interval value, ImmutableMap<String, Double> slopes) {

    /** Nothing. */
    public static final Sloped NONE = new Sloped(Interval.of(0), Maps.immutable.empty());

    /**
     * A coupling with the energies of its field.
     *
     * @param materials of what carries the energies, in their order; "" where nothing is solid
     * @param energies ∫ k |∇u|², for the field's own temperatures
     * @param scale what makes slopes of them: one over the square of the difference of temperature
     */
    static Sloped of(Interval value, ImmutableList<String> materials, double[] energies, double scale) {
        Map<String, Double> slopes = new TreeMap<>();
        materials.forEachWithIndex((material, i) -> {
            if (!material.isEmpty()) {
                slopes.merge(material, energies[i] * scale, Double::sum);
            }
        });
        return new Sloped(value, Maps.immutable.ofAll(slopes));
    }

    /** With another added so many times. */
    Sloped plus(Sloped other, double times) {
        Map<String, Double> sum = new TreeMap<>();
        slopes.forEachKeyValue(sum::put);
        other.slopes.forEachKeyValue((material, slope) -> sum.merge(material, slope * times, Double::sum));
        return new Sloped(value.plus(other.value.times(times)), Maps.immutable.ofAll(sum));
    }
}
