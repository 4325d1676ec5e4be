package coldseam.conduction;

import org.eclipse.collections.api.list.primitive.ImmutableDoubleList;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;

/**
 * The heat flow out of an environment into what is solved.
 *
 * <p>Q is the form Q(e, T) of the environment's own field u, which is 1 there and 0 in all others, with the temperatures T. It is
 * stationary in both fields, so that its derivative by ln k of a region is ∫ k ∇u · ∇T over that region alone (the envelope
 * theorem; worked out apart).
 *
 * @param value W/m of a planar section, W of an axisymmetric one and of a body
 * @param slopes dQ / d ln k of each region, or painted box, in their order, as value; none where the solve was aimed at a
 *     temperature, of which nobody asks them
 */
public record NetHeatFlow(String environment, Interval value, ImmutableDoubleList slopes) {

    /** A flow of which nobody asks what it follows. */
    public NetHeatFlow(String environment, Interval value) {
        this(environment, value, DoubleLists.immutable.empty());
    }

    /** The same, as it follows the conductivities. */
    public NetHeatFlow with(ImmutableDoubleList all) {
        return new NetHeatFlow(environment, value, all);
    }
}
