package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The ground beside a body by storeys: where its walls stand in it.
 *
 * <p>A cellar's walls do up to the ground. Where the ground has heights of its own, every wall does that it reaches over the
 * lowest floor; along a wall it runs even from one corner of the lowest storey to the next, elsewhere as beside the nearest of
 * that storey's sides.
 */
final class StoreyGround {

    private final Body.Storeys body;
    private final ImmutableList<Vertex> corners;
    private final ImmutableList<Long> heights;
    private final long floor;

    /**
     * @param outer the lowest storey's outer faces
     * @param floor z of its floor
     */
    StoreyGround(Body.Storeys body, Footprint outer, long floor) {
        this.body = body;
        this.corners = outer.corners().collect(Vertex::inPlan);
        this.floor = floor;
        this.heights = outer.sides()
                .collect(side -> body.ground().isEmpty()
                        ? 0L
                        : Vertex.height(body.ground().get(side < 0 ? -1 - side : side)));
    }

    /** z of the ground beside a point of the plan. */
    public long at(Vertex point) {
        double nearest = Double.POSITIVE_INFINITY;
        double height = 0;
        for (int i = 0; i < corners.size(); i++) {
            Vertex along = corners.get((i + 1) % corners.size()).minus(corners.get(i));
            double share = point.minus(corners.get(i)).dot(along) / along.dot(along);
            double place = Math.min(1, Math.max(0, share));
            double off = Math.hypot(
                    corners.get(i).x() + place * along.x() - point.x(),
                    corners.get(i).y() + place * along.y() - point.y());
            if (off < nearest - Vertex.ONE) {
                nearest = off;
                height = heights.get(i) + place * (heights.get((i + 1) % corners.size()) - heights.get(i));
            }
        }
        return Math.round(height);
    }

    /** Whether a stretch of wall stands in the ground beside it. */
    boolean reaches(Body.Wall wall, int storey, Vertex a, Vertex b) {
        boolean cellar = storey == 0 && body.base().kind() == Body.Base.Kind.HEATED_CELLAR;
        boolean stands = cellar || body.ground().notEmpty();
        return stands && wall.exposure().kind() == Exposure.Kind.OUTDOORS && Math.max(at(a), at(b)) > floor;
    }
}
