package coldseam.conduction;

import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A part of the outline that faces an environment; what no boundary names is adiabatic.
 *
 * @param environment the name of one of the section's environments
 * @param path at least two points along the outline (or along a hole), in either sense
 * @param surfaceResistance m²·K/W, zero or more; the environment's own where empty
 */
public record Boundary(String environment, ImmutableList<Point> path, OptionalDouble surfaceResistance) {}
