package coldseam.conduction;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * What is solved: painted regions, environments and the boundaries that face them.
 *
 * <p>Points closer to each other or to a line than a few millionths of the section's size are one; see {@code Lattice}.
 *
 * @param symmetry planar or axisymmetric
 * @param regions in painting order
 * @param environments at least one
 * @param boundaries in any order, not overlapping
 * @param probes may be empty
 */
public record Section(
        String name,
        Symmetry symmetry,
        ImmutableList<Region> regions,
        ImmutableList<Environment> environments,
        ImmutableList<Boundary> boundaries,
        ImmutableList<Probe> probes) {}
