package coldseam.conduction.solid;

import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Solution;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A solved body and the evidence for it.
 *
 * @param body what was solved
 * @param couplings one for each pair of environments, in the body's order; W/K, of all that the multiplicity counts
 * @param heatFlows one for each environment, positive into the body; W
 * @param surfaces one for each environment
 * @param probes in the body's order
 * @param patches in the body's order
 * @param field the temperature behind it
 * @param accuracy what was asked
 * @param met whether the interval is as narrow as asked
 * @param unknowns of both solved systems at the last refinement
 * @param seconds wall time
 * @param notes what was made one, left out or given up, in plain words
 */
public record BodySolution(
        Body body,
        ImmutableList<Solution.Coupling> couplings,
        ImmutableList<Solution.HeatFlow> heatFlows,
        ImmutableList<Lowest> surfaces,
        ImmutableList<Solution.ProbeTemperature> probes,
        ImmutableList<PatchTemperature> patches,
        BodyField field,
        Accuracy accuracy,
        boolean met,
        int unknowns,
        double seconds,
        ImmutableList<String> notes) {

    /**
     * The lowest surface temperature that faces an environment; an estimate, not proven.
     *
     * @param lowest °C
     * @param at where
     * @param change K, since the refinement before the last
     */
    public record Lowest(String environment, double lowest, Place at, double change) {}

    /**
     * The mean temperature of a patch of surface, proven.
     *
     * @param mean °C
     * @param area m², of what is drawn
     */
    public record PatchTemperature(String name, Interval mean, double area) {}

    /**
     * The coupling between two environments, in either order.
     *
     * @throws IllegalArgumentException where the body has no such pair
     */
    public Interval coupling(String first, String second) {
        return one(
                        couplings.select(c -> c.first().equals(first)
                                        && c.second().equals(second)
                                || c.first().equals(second) && c.second().equals(first)),
                        "coupling between " + first + " and " + second)
                .value();
    }

    /** The flow out of an environment, W. */
    public Interval heatFlow(String environment) {
        return one(heatFlows.select(each -> each.environment().equals(environment)), "environment " + environment)
                .value();
    }

    /** The lowest surface temperature facing an environment. */
    public Lowest surface(String environment) {
        return one(surfaces.select(each -> each.environment().equals(environment)), "environment " + environment);
    }

    /** The temperature at a probe, °C. */
    public double probe(String name) {
        return one(probes.select(each -> each.name().equals(name)), "probe " + name)
                .temperature();
    }

    private static <T> T one(ImmutableList<T> found, String what) {
        if (found.size() != 1) {
            throw new IllegalArgumentException("the body has no " + what);
        }
        return found.getOnly();
    }
}
