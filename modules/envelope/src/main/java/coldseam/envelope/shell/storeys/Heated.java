package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.roof.RoofField;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What is heated over each cell of the plan.
 *
 * <p>Where stacks reach into one another the house is all of them together: what one of them ends in inside another is indoors
 * and no surface. Over a cell no two of their ends cross, since the plan is parted where they do.
 *
 * @param plan of all storeys
 * @param spans of each cell: those of each stack, bottom → top
 * @param roof heights where a plane of a roof ends a span
 */
record Heated(Plan plan, ImmutableList<ImmutableList<Span>> spans, RoofField roof) {

    /** The height that stands for "up to the roof". */
    static final long ROOF = Long.MAX_VALUE;

    /**
     * A heated range of heights over a cell.
     *
     * @param top {@link #ROOF} where a plane of the roof ends it
     * @param first index of the lowest storey it runs through
     * @param last index of the highest
     */
    record Span(long bottom, long top, int first, int last) {}

    long top(Span span, int cell, Vertex node) {
        return span.top() == ROOF ? roof.at(cell, span.last(), node) : span.top();
    }

    /** Whether the end of a storey's span lies outdoors: over it, or under it. */
    boolean shown(int cell, int storey, boolean over) {
        ImmutableList<Span> here = spans.get(cell);
        int own = here.detectIndex(span -> (over ? span.last() : span.first()) == storey);
        for (int i = 0; i < here.size(); i++) {
            if (i != own && hides(cell, here.get(i), i < own, here.get(own), over)) {
                return false;
            }
        }
        return true;
    }

    /** Of two that end alike the earlier shows. */
    private boolean hides(int cell, Span other, boolean earlier, Span own, boolean over) {
        long reachesUp = 0;
        long reachesDown = 0;
        for (Plan.Bound bound : plan.beside(cell)) {
            for (Vertex node : new Vertex[] {bound.from(), bound.to()}) {
                long end = over ? top(own, cell, node) : own.bottom();
                reachesUp += top(other, cell, node) - end;
                reachesDown += end - other.bottom();
            }
        }
        long further = over ? reachesUp : reachesDown;
        return reachesUp >= 0 && reachesDown >= 0 && (further > 0 || earlier);
    }
}
