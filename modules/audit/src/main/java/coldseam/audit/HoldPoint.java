package coldseam.audit;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * Work stops until somebody has looked.
 *
 * @param name plain
 * @param before what would cover it
 * @param lookAt what to look at and photograph
 * @param junctions ids of the sheets it belongs to, of junctions and of points
 */
public record HoldPoint(String name, String before, ImmutableList<String> lookAt, ImmutableList<String> junctions) {}
