package coldseam.audit;

import org.eclipse.collections.api.list.ImmutableList;

/**
 * Work stops until somebody has looked.
 *
 * @param name plain
 * @param before what would cover it
 * @param lookAt what to look at and photograph
 * @param junctions sheets of those it belongs to
 * @param points sheets of those it belongs to
 */
public record HoldPoint(
        String name,
        String before,
        ImmutableList<String> lookAt,
        ImmutableList<JunctionSheet> junctions,
        ImmutableList<PointSheet> points) {

    /** Ids of all sheets it belongs to. */
    public ImmutableList<String> sheets() {
        return junctions.collect(JunctionSheet::id).newWithAll(points.collect(PointSheet::id));
    }
}
