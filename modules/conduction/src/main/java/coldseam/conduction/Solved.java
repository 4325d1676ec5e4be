package coldseam.conduction;

import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;

/**
 * What is answered of a section or a body, and the evidence for it.
 *
 * @param <P> a place: a point of a section or of a body
 */
public interface Solved<P> {

    /** As much of the largest coupling as rounding alone may leave open. */
    double ROUNDING = 1e-9;

    /** One for each pair of environments, in the drawing's order; {@link #couplingUnit}. */
    ImmutableList<Coupling> couplings();

    /** One for each environment, positive into what is solved; {@link #flowUnit}. */
    ImmutableList<NetHeatFlow> heatFlows();

    /** One for each environment that faces a surface. */
    ImmutableList<SurfaceTemperature<P>> surfaces();

    /** In the drawing's order. */
    ImmutableList<ProbeTemperature> probes();

    /** What was asked. */
    Accuracy accuracy();

    /** Whether the interval is as narrow as asked, and if not, why. */
    Outcome outcome();

    /** Whether the interval is as narrow as asked. */
    default boolean met() {
        return outcome() instanceof Outcome.Met;
    }

    /** How many unknowns both solved systems had at the last refinement. */
    int unknowns();

    /** Wall time. */
    double seconds();

    /** What was snapped, closed or given up, in plain words. */
    ImmutableList<String> notes();

    /** W/(m·K) or W/K. */
    String couplingUnit();

    /** W/m or W. */
    default String flowUnit() {
        return couplingUnit().equals("W/K") ? "W" : "W/m";
    }

    /**
     * The coupling between two environments, in either order.
     *
     * @throws IllegalArgumentException where there is no such pair
     */
    default Interval coupling(String first, String second) {
        return one(
                        couplings(),
                        c -> c.first().equals(first) && c.second().equals(second)
                                        || c.first().equals(second)
                                                && c.second().equals(first)
                                ? first + "–" + second
                                : c.first() + "–" + c.second(),
                        first + "–" + second,
                        "coupling between")
                .value();
    }

    /** How the heat flow out of an environment follows ln k of each region or painted box, {@link #flowUnit}; it throws like {@link #coupling}. */
    default ImmutableDoubleList slopes(String environment) {
        return one(heatFlows(), NetHeatFlow::environment, environment, "heat flow from")
                .slopes();
    }

    /** The lowest surface temperature facing an environment; it throws like {@link #coupling}. */
    default SurfaceTemperature<P> surface(String environment) {
        return one(surfaces(), SurfaceTemperature::environment, environment, "surface that faces");
    }

    /**
     * The couplings whose own interval is wider than the accuracy asked for. With more than two environments the accuracy
     * is asked of their total, and a coupling that is a small part of it may be a wide one; it is proven all the same. One
     * that is nothing but rounding beside the largest coupling is not counted.
     */
    default ImmutableList<Coupling> widerThanAsked() {
        double largest = couplings().collectDouble(c -> c.value().lower()).maxIfEmpty(0);
        return couplings()
                .select(c -> c.relativeWidth() > accuracy().relativeWidth()
                        && c.value().width() > ROUNDING * largest);
    }

    private static <T> T one(ImmutableList<T> all, Function<T, String> name, String wanted, String what) {
        T found = all.detect(each -> name.apply(each).equals(wanted));
        if (found == null) {
            throw new IllegalArgumentException("no " + what + " " + wanted + "; there are "
                    + all.collect(name::apply).makeString());
        }
        return found;
    }
}
