package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.GroundLine;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The ground beside a body by storeys: where its walls stand in it.
 *
 * <p>A cellar's walls do up to the ground. Where the ground has heights of its own, every wall does that it reaches over the
 * floor behind it: beside a slab's rim alone it is a slab's edge; along a wall it runs even from one corner of the lowest storey to the next, elsewhere as beside the nearest of
 * that storey's sides.
 */
final class StoreyGround {

    private final Stacks stacks;
    private final StoreyLevels levels;
    private final GroundLine line;

    /**
     * @param outer each storey's outer faces
     */
    StoreyGround(Stacks stacks, ImmutableList<Footprint> outer, StoreyLevels levels) {
        this.stacks = stacks;
        this.levels = levels;
        this.line = new GroundLine(
                stacks.lowests().flatCollect(k -> stretches(stacks.stack(k).ground(), outer.get(k))));
    }

    /** Beside a court whose corners have no heights the ground lies as beside the nearest outer side. */
    private static ImmutableList<GroundLine.Stretch> stretches(ImmutableList<Double> ground, Footprint outer) {
        MutableList<GroundLine.Stretch> stretches = Lists.mutable.empty();
        ImmutableList<Optional<Long>> heights = outer.lines().collect(line -> height(ground, line.side()));
        for (int i = 0; i < outer.corners().size(); i++) {
            Optional<Long> from = heights.get(i);
            Optional<Long> to = heights.get(outer.next().get(i));
            if (from.isPresent() && to.isPresent()) {
                stretches.add(new GroundLine.Stretch(
                        Vertex.inPlan(outer.corners().get(i)), Vertex.inPlan(outer.end(i)), from.get(), to.get()));
            }
        }
        return stretches.toImmutable();
    }

    private static Optional<Long> height(ImmutableList<Double> ground, int corner) {
        return ground.isEmpty()
                ? Optional.of(0L)
                : corner < ground.size() ? Optional.of(Vertex.height(ground.get(corner))) : Optional.empty();
    }

    /** z of the ground beside a point of the plan. */
    public long at(Vertex point) {
        return line.at(point);
    }

    /**
     * Whether a stretch of wall stands in the ground beside it.
     *
     * @param lowest the lowest storey of what is heated behind it
     */
    boolean reaches(Body.Wall wall, int lowest, Vertex a, Vertex b) {
        Body.Stack stack = stacks.stack(lowest);
        boolean cellar = stacks.lowest(lowest) && stack.base().kind() == Body.Base.Kind.HEATED_CELLAR;
        boolean stands = cellar || stack.ground().notEmpty();
        return stands
                && wall.exposure().kind() == Exposure.Kind.OUTDOORS
                && Math.max(at(a), at(b)) > levels.floors().get(lowest);
    }
}
