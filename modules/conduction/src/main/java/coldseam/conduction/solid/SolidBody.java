package coldseam.conduction.solid;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What is solved in three dimensions.
 *
 * @param extent nothing is solid outside
 * @param multiplicity how many times what is drawn is there, 4 for a quarter; couplings and flows are for the whole; at
 *     least 1
 * @param cutPlanes faces of the extent where the drawing is cut or is symmetric: adiabatic
 * @param painted in painting order
 * @param environments at least one
 * @param patches may be empty; of one environment they do not overlap
 * @param probes may be empty
 */
public record SolidBody(
        String name,
        Cuboid extent,
        double multiplicity,
        ImmutableSet<BoxSide> cutPlanes,
        ImmutableList<PaintedBox> painted,
        ImmutableList<BodyEnvironment> environments,
        ImmutableList<Patch> patches,
        ImmutableList<BodyProbe> probes) {

    /** m; planes closer than this are one, and no slab is cut thinner. */
    public static final double SNAP = 1e-6;
}
