package coldseam.envelope;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * Which junctions are meant; every part that is not empty must match.
 *
 * @param kinds any of these
 * @param surfaces names of surfaces or openings that must all be beside the junction
 */
public record Selector(ImmutableSet<JunctionKind> kinds, ImmutableList<String> surfaces) {}
