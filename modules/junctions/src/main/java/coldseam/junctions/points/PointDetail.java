package coldseam.junctions.points;

import coldseam.junctions.Rank;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A post, column or bracket through the insulation, drawn round.
 *
 * @param id unique
 * @param kind such as "guard post on a terrace"
 * @param name plain, short
 * @param rank among its kind's options
 * @param roundedHow how the true shape became a round one, and what that leaves out
 * @param failure how it goes wrong
 * @param section what is solved
 */
public record PointDetail(
        String id, String kind, String name, Rank rank, String roundedHow, String failure, PointSection section) {

    /** The built-in ones, by kind and from worst to best. */
    public static ImmutableList<PointDetail> builtIn() {
        return BuiltInPoints.all();
    }
}
