package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** The outline of pieces of one upright plane that touch, in whatever order: what two of them share is no part of it. */
final class PieceRing {

    /** Lattice units of height, upwards. */
    private record Span(long from, long to) {

        MutableList<Span> without(Span other) {
            return Lists.mutable
                    .of(
                            new Span(from, Math.min(to, Math.max(from, other.from))),
                            new Span(Math.max(from, Math.min(to, other.to)), to))
                    .select(span -> span.to > span.from);
        }
    }

    /** By its start each edge's end, walked around what is full. */
    private final Map<Vertex, Vertex> ends = new TreeMap<>();

    private boolean crossed;

    private PieceRing() {}

    /** Seen as the pieces are; empty where it is no single ring. */
    static Optional<ImmutableList<Vertex>> around(ImmutableList<WallPieces.Piece> pieces) {
        PieceRing ring = new PieceRing();
        Map<Vertex, MutableList<Span>> rising = new TreeMap<>();
        Map<Vertex, MutableList<Span>> falling = new TreeMap<>();
        for (WallPieces.Piece piece : pieces) {
            Vertex a = piece.a();
            Vertex b = piece.b();
            Reach reach = piece.reach();
            ring.edge(a.at(reach.bottomA()), b.at(reach.bottomB()));
            ring.edge(b.at(reach.topB()), a.at(reach.topA()));
            rising.computeIfAbsent(b, v -> Lists.mutable.empty()).add(new Span(reach.bottomB(), reach.topB()));
            falling.computeIfAbsent(a, v -> Lists.mutable.empty()).add(new Span(reach.bottomA(), reach.topA()));
        }
        rising.forEach((v, spans) -> left(spans, falling.get(v)).forEach(s -> ring.edge(v.at(s.from), v.at(s.to))));
        falling.forEach((v, spans) -> left(spans, rising.get(v)).forEach(s -> ring.edge(v.at(s.to), v.at(s.from))));
        return ring.single();
    }

    private static MutableList<Span> left(MutableList<Span> spans, MutableList<Span> across) {
        MutableList<Span> left = spans;
        for (Span cut : across == null ? Lists.mutable.<Span>empty() : across) {
            left = left.flatCollect(span -> span.without(cut));
        }
        return left;
    }

    private void edge(Vertex from, Vertex to) {
        crossed |= !from.equals(to) && ends.put(from, to) != null;
    }

    private Optional<ImmutableList<Vertex>> single() {
        MutableList<Vertex> ring = Lists.mutable.empty();
        Vertex start = ends.keySet().iterator().next();
        Vertex at = start;
        do {
            ring.add(at);
            at = ends.get(at);
        } while (at != null && !at.equals(start) && ring.size() <= ends.size());
        return crossed || ring.size() != ends.size() ? Optional.empty() : Optional.of(Ring.tidy(ring.toImmutable()));
    }
}
