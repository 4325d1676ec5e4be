package coldseam.envelope.shell.plan;

import coldseam.envelope.shell.lattice.Vertex;
import java.util.Comparator;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The ground beside a house: along each stretch of a line round it even from one end to the other, elsewhere as beside the nearest;
 * as beside the lower where two are equally near.
 *
 * @param stretches at least one
 */
public record GroundLine(ImmutableList<Stretch> stretches) {

    /** Lattice units within which two stretches are equally near: a place on both is snapped to the lattice. */
    private static final long AS_NEAR = 2 * Vertex.ONE;

    /**
     * A stretch of the line; its ends differ in plan.
     *
     * @param from in plan
     * @param to in plan
     * @param atFrom z of the ground there
     * @param atTo z of the ground there
     */
    public record Stretch(Vertex from, Vertex to, long atFrom, long atTo) {

        private Beside beside(Vertex point) {
            Vertex along = to.minus(from);
            double share = point.at(0).minus(from).dot(along) / along.dot(along);
            double place = Math.min(1, Math.max(0, share));
            double off = Math.hypot(from.x() + place * along.x() - point.x(), from.y() + place * along.y() - point.y());
            return new Beside(this, off, Math.round(atFrom + place * (atTo - atFrom)));
        }

        /** Height by length, never negative. */
        public double slope() {
            return Math.abs(atTo - atFrom) / to.minus(from).length();
        }
    }

    /**
     * The ground beside a point of the plan.
     *
     * @param stretch the nearest
     * @param off lattice units in plan from the point to that
     * @param height z of the ground there
     */
    public record Beside(Stretch stretch, double off, long height) {

        /** Whether the point lies on the line. */
        public boolean on() {
            return off <= AS_NEAR;
        }

        /** Whether no other of some is nearer. */
        public boolean nearest(ImmutableList<Beside> others) {
            return others.allSatisfy(other -> off <= other.off() + AS_NEAR);
        }
    }

    /** z of the ground beside a point of the plan. */
    public long at(Vertex point) {
        return beside(point).height();
    }

    /** The ground beside a point of the plan. */
    public Beside beside(Vertex point) {
        ImmutableList<Beside> all = stretches.collect(each -> each.beside(point));
        return all.select(each -> each.nearest(all)).min(Comparator.comparingLong(Beside::height));
    }
}
