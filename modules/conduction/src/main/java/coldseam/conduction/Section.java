package coldseam.conduction;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * What is solved: painted regions, environments and the boundaries that face them.
 *
 * @param name what it shows
 * @param symmetry planar or axisymmetric
 * @param snap metres, greater than zero: points closer than this to each other or to a line are one; a thousandth of the
 *     drawing's unit for a drawing in millimetres
 * @param regions in painting order
 * @param environments at least one
 * @param boundaries in any order, not overlapping
 * @param probes may be empty
 */
public record Section(
        String name,
        Symmetry symmetry,
        double snap,
        ImmutableList<Region> regions,
        ImmutableList<Environment> environments,
        ImmutableList<Boundary> boundaries,
        ImmutableList<Probe> probes) {}
