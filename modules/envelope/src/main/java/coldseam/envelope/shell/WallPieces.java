package coldseam.envelope.shell;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToLongFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Upright faces of stacked storeys: wherever one side of a bound of the plan is heated at some height and the other is not.
 *
 * <p>Because the faces are what separates full from empty over a plan without gaps, the shell they form with the level
 * faces is closed by construction.
 */
final class WallPieces {

    /** The height that stands for "up to the roof". */
    static final long ROOF = Long.MAX_VALUE;

    /**
     * A heated range of heights over a cell.
     *
     * @param first index of the lowest storey it runs through
     * @param last index of the highest
     */
    record Span(long bottom, long top, int first, int last) {

        Span between(long from, long to) {
            return new Span(from, to, first, last);
        }
    }

    /**
     * Whose face it is.
     *
     * @param storey index
     * @param line of the plan on which it stands: that storey's side, or a step's
     * @param belowGround whether it stands in the ground
     */
    record Owner(int storey, Plan.Tag line, boolean belowGround) implements Comparable<Owner> {

        boolean isWall() {
            return line.kind() == Plan.Kind.SIDE;
        }

        @Override
        public int compareTo(Owner other) {
            int byStorey = Integer.compare(storey, other.storey);
            int byKind = byStorey != 0 ? byStorey : Boolean.compare(isWall(), other.isWall());
            int byLine = byKind != 0 ? byKind : line.compareTo(other.line);
            return byLine != 0 ? byLine : Boolean.compare(other.belowGround, belowGround);
        }
    }

    /** A part of an upright face: from {@code a} on the left to {@code b} on the right, seen from outdoors. */
    private record Piece(Vertex a, Vertex b, long bottom, long topA, long topB) {}

    private final Plan plan;
    private final int storeys;
    private final StoreyLevels levels;
    private final ImmutableList<ImmutableList<Span>> spans;
    private final ToLongFunction<Vertex> roof;
    private final Map<Owner, MutableList<Piece>> pieces = new TreeMap<>();

    /**
     * @param spans of each cell of the plan, bottom → top
     * @param roof height at which a wall of the top storey ends, over a plan point
     */
    WallPieces(
            Plan plan,
            int storeys,
            StoreyLevels levels,
            ImmutableList<ImmutableList<Span>> spans,
            ToLongFunction<Vertex> roof) {
        this.plan = plan;
        this.storeys = storeys;
        this.levels = levels;
        this.spans = spans;
        this.roof = roof;
    }

    /** Outlines of all upright faces, each owner's from left to right. */
    Map<Owner, ImmutableList<ImmutableList<Vertex>>> outlines(java.util.function.Predicate<Owner> meetsGround) {
        for (Plan.Bound bound : plan.bounds()) {
            ImmutableList<Span> left = spansOf(bound.left());
            ImmutableList<Span> right = spansOf(bound.right());
            for (Span span : without(left, right)) {
                assign(bound, true, span, meetsGround);
            }
            for (Span span : without(right, left)) {
                assign(bound, false, span, meetsGround);
            }
        }
        Map<Owner, ImmutableList<ImmutableList<Vertex>>> outlines = new TreeMap<>();
        pieces.forEach((owner, list) -> outlines.put(owner, join(list)));
        return outlines;
    }

    private ImmutableList<Span> spansOf(int cell) {
        return cell == Plan.OUTSIDE ? Lists.immutable.empty() : spans.get(cell);
    }

    private static ImmutableList<Span> without(ImmutableList<Span> full, ImmutableList<Span> taken) {
        MutableList<Span> rest = full.toList();
        for (Span cut : taken) {
            MutableList<Span> next = Lists.mutable.empty();
            for (Span span : rest) {
                if (cut.top() <= span.bottom() || cut.bottom() >= span.top()) {
                    next.add(span);
                    continue;
                }
                if (span.bottom() < cut.bottom()) {
                    next.add(span.between(span.bottom(), cut.bottom()));
                }
                if (cut.top() < span.top()) {
                    next.add(span.between(cut.top(), span.top()));
                }
            }
            rest = next;
        }
        return rest.toImmutable();
    }

    /** Shares a range of heights among the storeys whose side runs here. */
    private void assign(
            Plan.Bound bound, boolean fullOnLeft, Span span, java.util.function.Predicate<Owner> meetsGround) {
        Vertex a = fullOnLeft ? bound.from() : bound.to();
        Vertex b = fullOnLeft ? bound.to() : bound.from();
        int full = fullOnLeft ? bound.left() : bound.right();
        int empty = fullOnLeft ? bound.right() : bound.left();
        MutableList<Integer> here = Lists.mutable.empty();
        for (int k = span.first(); k <= span.last(); k++) {
            if (plan.in(full, k) && !plan.in(empty, k)) {
                here.add(k);
            }
        }
        if (here.isEmpty()) {
            // Heated to different heights on both hands of a line that merely cuts.
            Plan.Tag line = bound.cut().orElse(bound.runs().getFirst().tag());
            add(
                    new Owner(nearest(span), new Plan.Tag(Plan.Kind.STEP_END, line.storey(), line.number()), false),
                    a,
                    b,
                    span);
            return;
        }
        long from = span.bottom();
        for (int i = 0; i < here.size(); i++) {
            int storey = here.get(i);
            long to = i + 1 < here.size() ? levels.takeOver().get(here.get(i + 1) - 1) : ROOF;
            Span part = span.between(Math.max(from, span.bottom()), Math.min(to, span.top()));
            if (part.bottom() < part.top()) {
                Owner owner = new Owner(storey, bound.side(storey, fullOnLeft).orElseThrow(), false);
                if (meetsGround.test(owner) && part.bottom() < 0) {
                    add(
                            new Owner(storey, owner.line(), true),
                            a,
                            b,
                            part.between(part.bottom(), Math.min(0, part.top())));
                    part = part.between(Math.min(0, part.top()), part.top());
                }
                if (part.bottom() < part.top()) {
                    add(owner, a, b, part);
                }
            }
            from = to;
        }
    }

    private int nearest(Span span) {
        int storey = 0;
        while (storey + 1 < storeys && levels.takeOver().get(storey) <= span.bottom()) {
            storey++;
        }
        return storey;
    }

    private void add(Owner owner, Vertex a, Vertex b, Span span) {
        long topA = span.top() == ROOF ? roof.applyAsLong(a) : span.top();
        long topB = span.top() == ROOF ? roof.applyAsLong(b) : span.top();
        pieces.computeIfAbsent(owner, o -> Lists.mutable.empty()).add(new Piece(a, b, span.bottom(), topA, topB));
    }

    /** Joins pieces of one line that touch. */
    private static ImmutableList<ImmutableList<Vertex>> join(MutableList<Piece> list) {
        MutableList<Piece> waiting = list.toSortedListBy(piece -> (double) piece.bottom());
        MutableList<ImmutableList<Vertex>> outlines = Lists.mutable.empty();
        while (waiting.notEmpty()) {
            MutableList<Piece> chain = Lists.mutable.of(waiting.remove(0));
            boolean grown = true;
            while (grown) {
                Piece last = chain.getLast();
                Piece first = chain.getFirst();
                Piece after = waiting.detect(piece -> follows(last, piece));
                Piece before = waiting.detect(piece -> follows(piece, first));
                if (after != null) {
                    waiting.remove(after);
                    chain.add(after);
                } else if (before != null) {
                    waiting.remove(before);
                    chain.add(0, before);
                }
                grown = after != null || before != null;
            }
            outlines.add(outline(chain));
        }
        return outlines.toImmutable();
    }

    private static boolean follows(Piece left, Piece right) {
        return left.b().equals(right.a())
                && Math.max(left.bottom(), right.bottom()) < Math.min(left.topB(), right.topA());
    }

    private static ImmutableList<Vertex> outline(MutableList<Piece> chain) {
        MutableList<Vertex> corners = Lists.mutable.empty();
        for (Piece piece : chain) {
            corners.add(piece.a().at(piece.bottom()));
            corners.add(piece.b().at(piece.bottom()));
        }
        for (Piece piece : chain.asReversed()) {
            corners.add(piece.b().at(piece.topB()));
            corners.add(piece.a().at(piece.topA()));
        }
        return Facet.tidy(corners.toImmutable());
    }
}
