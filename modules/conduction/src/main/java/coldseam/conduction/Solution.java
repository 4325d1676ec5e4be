package coldseam.conduction;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * A solved section and the evidence for it.
 *
 * @param section what was solved
 * @param couplings one for each pair of environments, in the section's order; W/(m·K), or W/K if axisymmetric
 * @param heatFlows one for each environment, positive into the section; W/m, or W if axisymmetric
 * @param surfaces one for each environment that faces a boundary
 * @param probes in the section's order
 * @param field the temperature field behind it
 * @param accuracy what was asked
 * @param outcome whether the interval is as narrow as asked, and if not, why
 * @param unknowns of both solved systems at the last refinement
 * @param seconds wall time
 * @param notes what was snapped, closed or given up, in plain words
 */
public record Solution(
        Section section,
        ImmutableList<Coupling> couplings,
        ImmutableList<HeatFlow> heatFlows,
        ImmutableList<SurfaceTemperature> surfaces,
        ImmutableList<ProbeTemperature> probes,
        TemperatureField field,
        Accuracy accuracy,
        Outcome outcome,
        int unknowns,
        double seconds,
        ImmutableList<String> notes) {

    /** As much of the largest coupling as rounding alone may leave open. */
    private static final double ROUNDING = 1e-9;

    /** The thermal coupling coefficient between two environments: W/(m·K), or W/K if axisymmetric. */
    public record Coupling(String first, String second, Interval value) {

        /** The interval's width over its middle; 0 where it has no width, infinite where the coupling is. */
        public double relativeWidth() {
            double width = value.width();
            return width == 0 ? 0 : width == Double.POSITIVE_INFINITY ? width : width / value.middle();
        }
    }

    /** The heat flow out of an environment into the section: W/m, or W if axisymmetric. */
    public record HeatFlow(String environment, Interval value) {}

    /**
     * The lowest surface temperature that faces an environment; an estimate, not proven.
     *
     * @param lowest °C
     * @param at where
     * @param change K, since the refinement before the last
     */
    public record SurfaceTemperature(String environment, double lowest, Point at, double change) {}

    /**
     * The temperature at a probe; an estimate, not proven.
     *
     * @param temperature °C
     * @param change K, since the refinement before the last
     */
    public record ProbeTemperature(String name, double temperature, double change) {}

    /** Whether the interval is as narrow as asked. */
    public boolean met() {
        return outcome instanceof Outcome.Met;
    }

    /**
     * The coupling between two environments, in either order.
     *
     * @throws IllegalArgumentException where the section has no such pair
     */
    public Interval coupling(String first, String second) {
        Coupling found =
                couplings.detect(c -> c.first().equals(first) && c.second().equals(second)
                        || c.first().equals(second) && c.second().equals(first));
        if (found == null) {
            throw new IllegalArgumentException("no coupling between " + first + " and " + second + "; there are "
                    + couplings.collect(c -> c.first() + "–" + c.second()).makeString());
        }
        return found.value();
    }

    /**
     * The couplings whose own interval is wider than the accuracy asked for. With more than two environments the accuracy
     * is asked of their total, and a coupling that is a small part of it may be a wide one; it is proven all the same. One
     * that is nothing but rounding beside the largest coupling is not counted.
     */
    public ImmutableList<Coupling> widerThanAsked() {
        double largest = couplings.collectDouble(c -> c.value().lower()).maxIfEmpty(0);
        return couplings.select(
                c -> c.relativeWidth() > accuracy.relativeWidth() && c.value().width() > ROUNDING * largest);
    }

    /**
     * The lowest surface temperature facing an environment.
     *
     * @throws IllegalArgumentException where no boundary faces it
     */
    public SurfaceTemperature surface(String environment) {
        SurfaceTemperature found = surfaces.detect(s -> s.environment().equals(environment));
        if (found == null) {
            throw new IllegalArgumentException("no boundary faces " + environment + "; there are "
                    + surfaces.collect(s -> s.environment()).makeString());
        }
        return found;
    }
}
