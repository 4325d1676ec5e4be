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
     * A coupling with what it follows.
     *
     * @param inputs of what conducts, in its order; empty where nothing is solid
     * @param flows how the heat flow follows each by ln k, W or W/m, for the solution's own temperatures
     * @param scale what makes slopes of them: one over the difference of temperature
     */
    static Sloped of(Interval value, ImmutableList<Optional<HeatInput>> inputs, double[] flows, double scale) {
        Map<HeatInput, Double> slopes = new TreeMap<>(HeatInput.ORDER);
        inputs.forEachWithIndex(
                (input, i) -> input.ifPresent(each -> slopes.merge(each, flows[i] * scale, Double::sum)));
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
