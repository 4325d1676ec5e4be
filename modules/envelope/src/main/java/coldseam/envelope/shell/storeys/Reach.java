package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Vertex;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A span over the two ends of a bound, or all that hang together there.
 *
 * @param first the lowest storey of the one that reaches lowest
 * @param storeys it runs through, stack by stack
 */
record Reach(long bottomA, long bottomB, long topA, long topB, int first, ImmutableList<Integer> storeys) {

    /** Lattice units of height by which two that cross at a rounded point may miss one another. */
    private static final long CROSSING = 8;

    /** Whether two meet over the whole bound. */
    boolean meets(Reach other) {
        return bottomA <= other.topA && bottomB <= other.topB && other.bottomA <= topA && other.bottomB <= topB;
    }

    Reach with(Reach other) {
        return new Reach(
                Math.min(bottomA, other.bottomA),
                Math.min(bottomB, other.bottomB),
                Math.max(topA, other.topA),
                Math.max(topB, other.topB),
                other.bottomA + other.bottomB < bottomA + bottomB ? other.first : first,
                storeys.newWithAll(other.storeys));
    }

    /** What of it another reaches, too. */
    Reach within(Reach other) {
        return between(other.bottomA, other.bottomB, other.topA, other.topB);
    }

    long size() {
        return Math.max(0, topA - bottomA) + Math.max(0, topB - bottomB);
    }

    Reach between(long from, long to) {
        return between(from, from, to, to);
    }

    Reach between(long fromA, long fromB, long toA, long toB) {
        return new Reach(
                Math.max(bottomA, Math.min(fromA, topA)),
                Math.max(bottomB, Math.min(fromB, topB)),
                Math.min(topA, Math.max(toA, bottomA)),
                Math.min(topB, Math.max(toB, bottomB)),
                first,
                storeys);
    }

    boolean isOver(Reach other) {
        return bottomA >= other.topA && bottomB >= other.topB;
    }

    /** Its heights at both ends of the bound, bottom and top: x at the one, y at the other. */
    ImmutableList<Vertex> ends() {
        return Lists.immutable.of(new Vertex(bottomA, bottomB, 0), new Vertex(topA, topB, 0));
    }

    /** What of it stands over a part of the bound; heights that cross there are one. */
    Reach part(Vertex a, Vertex b, Vertex from, Vertex to) {
        return new Reach(
                along(bottomA, bottomB, a, b, from),
                along(bottomA, bottomB, a, b, to),
                along(topA, topB, a, b, from),
                along(topA, topB, a, b, to),
                first,
                storeys);
    }

    private static long along(long atA, long atB, Vertex a, Vertex b, Vertex here) {
        if (here.at(0).equals(a) || here.at(0).equals(b)) {
            return here.at(0).equals(a) ? atA : atB;
        }
        Vertex whole = b.minus(a);
        double share = here.at(0).minus(a).dot(whole) / whole.dot(whole);
        long found = Math.round(atA + share * (atB - atA));
        return Math.abs(found - here.z()) <= CROSSING ? here.z() : found;
    }

    boolean isEmpty() {
        return bottomA >= topA && bottomB >= topB;
    }

    /** What of this lies under another, and what over it. */
    ImmutableList<Reach> without(Reach cut) {
        Reach under = new Reach(
                bottomA,
                bottomB,
                Math.min(topA, Math.max(bottomA, cut.bottomA)),
                Math.min(topB, Math.max(bottomB, cut.bottomB)),
                first,
                storeys);
        Reach over = new Reach(
                Math.max(bottomA, Math.min(topA, cut.topA)),
                Math.max(bottomB, Math.min(topB, cut.topB)),
                topA,
                topB,
                first,
                storeys);
        return Lists.immutable.of(under, over).reject(Reach::isEmpty);
    }
}
