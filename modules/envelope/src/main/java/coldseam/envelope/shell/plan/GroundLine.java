package coldseam.envelope.shell.plan;

import coldseam.envelope.shell.lattice.Vertex;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The ground beside a house: along each stretch of a line round it even from one end to the other, elsewhere as beside the nearest.
 *
 * @param stretches at least one
 */
public record GroundLine(ImmutableList<Stretch> stretches) {

    /**
     * A stretch of the line; its ends differ in plan.
     *
     * @param from in plan
     * @param to in plan
     * @param atFrom z of the ground there
     * @param atTo z of the ground there
     */
    public record Stretch(Vertex from, Vertex to, long atFrom, long atTo) {}

    /** z of the ground beside a point of the plan. */
    public long at(Vertex point) {
        double nearest = Double.POSITIVE_INFINITY;
        double height = 0;
        for (Stretch stretch : stretches) {
            Vertex along = stretch.to().minus(stretch.from());
            double share = point.at(0).minus(stretch.from()).dot(along) / along.dot(along);
            double place = Math.min(1, Math.max(0, share));
            double off = Math.hypot(
                    stretch.from().x() + place * along.x() - point.x(),
                    stretch.from().y() + place * along.y() - point.y());
            if (off < nearest - Vertex.ONE) {
                nearest = off;
                height = stretch.atFrom() + place * (stretch.atTo() - stretch.atFrom());
            }
        }
        return Math.round(height);
    }
}
