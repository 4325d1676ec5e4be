package coldseam.envelope.shell.plan;

import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The outline of some cells of the plan, traced along the bounds that have one of them on one hand and none on the other.
 *
 * @param rings counterclockwise around the cells, clockwise around what they leave out; each from its least corner on
 */
public record PlanRings(ImmutableList<ImmutableList<Vertex>> rings) {

    public static PlanRings of(Plan plan, ImmutableList<Integer> cells) {
        return new PlanRings(everyNode(plan, cells).rings().collect(ring -> fromLeast(Ring.tidy(ring))));
    }

    /** The same with nodes in the middle of straight lines, each from its least on. */
    public static PlanRings everyNode(Plan plan, ImmutableList<Integer> cells) {
        Map<Vertex, MutableList<Vertex>> ways = new TreeMap<>();
        BitSet inside = new BitSet();
        cells.forEach(inside::set);
        for (Plan.Bound bound : plan.bounds()) {
            boolean left = bound.left() >= 0 && inside.get(bound.left());
            if (left != (bound.right() >= 0 && inside.get(bound.right()))) {
                Vertex from = left ? bound.from() : bound.to();
                Vertex to = left ? bound.to() : bound.from();
                ways.computeIfAbsent(from, v -> Lists.mutable.empty()).add(to);
            }
        }
        MutableList<ImmutableList<Vertex>> rings = Lists.mutable.empty();
        for (Map.Entry<Vertex, MutableList<Vertex>> start : ways.entrySet()) {
            while (start.getValue().notEmpty()) {
                rings.add(trace(ways, start.getKey()));
            }
        }
        return new PlanRings(rings.toImmutable());
    }

    private static ImmutableList<Vertex> trace(Map<Vertex, MutableList<Vertex>> ways, Vertex start) {
        MutableList<Vertex> ring = Lists.mutable.of(start);
        Vertex before = start;
        Vertex here = ways.get(start).remove(0);
        while (!here.equals(start)) {
            ring.add(here);
            Vertex back = before.minus(here);
            Vertex at = here;
            // Where the cells touch themselves in a point, the way with the least room inside keeps the rings apart.
            Vertex next = ways.get(here)
                    .toSortedList((p, q) -> clockwise(back, p.minus(at), q.minus(at)))
                    .getFirst();
            ways.get(here).remove(next);
            before = here;
            here = next;
        }
        return ring.toImmutable();
    }

    private static ImmutableList<Vertex> fromLeast(ImmutableList<Vertex> ring) {
        int first = ring.indexOf(ring.min());
        return ring.drop(first).newWithAll(ring.take(first));
    }

    /** Compares two directions by their angle clockwise from a third. */
    private static int clockwise(Vertex from, Vertex one, Vertex other) {
        int half = Integer.compare(half(from, one), half(from, other));
        return half != 0 ? half : Long.signum(one.cross(other).z());
    }

    private static int half(Vertex from, Vertex way) {
        long cross = from.cross(way).z();
        if (cross == 0) {
            return from.dot(way) < 0 ? 1 : 3;
        }
        return cross < 0 ? 0 : 2;
    }

    private static boolean hole(ImmutableList<Vertex> ring) {
        return Ring.doubleArea(ring).z() < 0;
    }

    /** The only ring of cells that hang together and leave no hole. */
    public ImmutableList<Vertex> only() {
        if (rings.size() != 1) {
            throw new IllegalStateException("an outline of " + rings.size() + " rings where one is due");
        }
        return rings.getOnly();
    }

    public ImmutableList<ImmutableList<Vertex>> holes() {
        return rings.select(PlanRings::hole);
    }

    /** m². */
    public double area() {
        return rings.sumOfDouble(ring -> Ring.doubleArea(ring).z()) / 2 * Vertex.metres(1) * Vertex.metres(1);
    }
}
