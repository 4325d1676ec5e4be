package coldseam.junctions.vertex;

import coldseam.conduction.Interval;
import coldseam.junctions.plan.HeatInput;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;

/**
 * A coupling or a transmittance, and how it follows the conductivities.
 *
 * @param value W/K, or that for each metre or square metre
 * @param slopes its derivative by ln k, for each input
 */
public record Sloped(Interval value, ImmutableMap<HeatInput, Double> slopes) {

    /** Nothing. */
    public static final Sloped NONE = new Sloped(Interval.of(0), Maps.immutable.empty());

    /**
     * A coupling with the energies of its field.
     *
     * @param inputs what carries the energies follows, in their order; empty where nothing is solid
     * @param energies ∫ k |∇u|², for the field's own temperatures
     * @param scale what makes slopes of them: one over the square of the difference of temperature
     */
    static Sloped of(Interval value, ImmutableList<Optional<HeatInput>> inputs, double[] energies, double scale) {
        Map<HeatInput, Double> slopes = new TreeMap<>(HeatInput.ORDER);
        inputs.forEachWithIndex(
                (input, i) -> input.ifPresent(each -> slopes.merge(each, energies[i] * scale, Double::sum)));
        return new Sloped(value, Maps.immutable.ofAll(slopes));
    }

    /** With another added so many times. */
    Sloped plus(Sloped other, double times) {
        Map<HeatInput, Double> sum = new TreeMap<>(HeatInput.ORDER);
        slopes.forEachKeyValue(sum::put);
        other.slopes.forEachKeyValue((input, slope) -> sum.merge(input, slope * times, Double::sum));
        return new Sloped(value.plus(other.value.times(times)), Maps.immutable.ofAll(sum));
    }
}
