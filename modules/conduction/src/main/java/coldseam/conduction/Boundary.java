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
public record Boundary(String environment, ImmutableList<Point> path, OptionalDouble surfaceResistance) {

    /** m, from a place to the nearest point of the path. */
    public double distance(Point place) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < path.size(); i++) {
            least = Math.min(least, place.distance(path.get(i - 1), path.get(i)));
        }
        return least;
    }
}
