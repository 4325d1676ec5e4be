package coldseam.junctions.point;

import coldseam.envelope.Control;
import coldseam.envelope.PointKind;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Rank;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * One way to take something through a surface's insulation: what a point file says.
 *
 * @param id unique in its catalogue
 * @param kind of thing it is
 * @param name plain, short
 * @param rank among its kind's options
 * @param looksLike what one sees on site
 * @param drawnRound how the true shape became a round one, and what that leaves out
 * @param order of building, first step first
 * @param connections of air, water and vapour control
 * @param failures how it goes wrong
 * @param photographs what to photograph before it is covered
 * @param cautions structure, fire, moisture: what must be asked of whom
 * @param costEach in the house's currency
 * @param drawing how its section is put together
 */
public record PointDetail(
        String id,
        PointKind kind,
        String name,
        Rank rank,
        String looksLike,
        String drawnRound,
        ImmutableList<String> order,
        ImmutableMap<Control, Connection> connections,
        ImmutableList<String> failures,
        ImmutableList<String> photographs,
        ImmutableList<String> cautions,
        OptionalDouble costEach,
        PointDrawing drawing) {

    PointDetail named(String other) {
        return new PointDetail(
                other,
                kind,
                name,
                rank,
                looksLike,
                drawnRound,
                order,
                connections,
                failures,
                photographs,
                cautions,
                costEach,
                drawing);
    }
}
