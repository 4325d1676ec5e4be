package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.roof.RoofField;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
    public static final long ROOF = Long.MAX_VALUE;

    /**
     * A heated range of heights over a cell.
     *
     * @param top {@link #ROOF} where a plane of the roof ends it
     * @param first index of the lowest storey it runs through
     * @param last index of the highest
     */
    record Span(long bottom, long top, int first, int last) {}

    /** Lattice units of height by which two that cross at a rounded point may miss one another. */
    private static final long CROSSING = 8;

    /** What part of a storey's wall a face is. */
    public enum Part {
        BELOW_GROUND,
        /** Under a floor on the ground beside it. */
        UNDER_FLOOR,
        WALL,
        /** Over the eaves of a roof whose slopes rise beside it. */
        GABLE
    }

    /**
     * Whose face it is.
     *
     * @param storey index
     * @param line of the plan on which it stands: that storey's side, a step's, or one of its roof
     */
    record Owner(int storey, Plan.Tag line, Part part) implements Comparable<Owner> {

        boolean isWall() {
            return line.kind() == Plan.Kind.SIDE;
        }

        @Override
        public int compareTo(Owner other) {
            int byStorey = Integer.compare(storey, other.storey);
            int byKind = byStorey != 0 ? byStorey : Boolean.compare(isWall(), other.isWall());
            int byLine = byKind != 0 ? byKind : line.compareTo(other.line);
            return byLine != 0 ? byLine : part.compareTo(other.part);
        }
    }

    /** A span over the two ends of a bound. */
    private record Reach(long bottomA, long bottomB, long topA, long topB, int first, int last) {

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
                    last);
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
                    last);
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
                    last);
            Reach over = new Reach(
                    Math.max(bottomA, Math.min(topA, cut.topA)),
                    Math.max(bottomB, Math.min(topB, cut.topB)),
                    topA,
                    topB,
                    first,
                    last);
            return Lists.immutable.of(under, over).reject(Reach::isEmpty);
        }
    }

    /** A part of a bound with the ground beside it. */
    private record Stretch(Vertex a, Vertex b, Reach ground) {}

    /** A part of an upright face: from {@code a} on the left to {@code b} on the right, seen from outdoors. */
    private record Piece(Vertex a, Vertex b, Reach reach) {}

    /** What stands beside a wall. */
    interface Beside {

        /** Whether a stretch of a storey's wall stands in the ground. */
        boolean reachesGround(Owner owner, Vertex a, Vertex b);

        /** z of the ground. */
        long ground(Vertex point);

        /** Whether a storey's part that begins in a cell stands on the ground or over a crawl space. */
        boolean onGround(int storey, int cell);
    }

    private final Plan plan;
    private final int storeys;
    private final StoreyLevels levels;
    private final ImmutableList<ImmutableList<Span>> spans;
    private final RoofField roof;
    private final ImmutableList<Optional<RoofForm>> forms;
    private final Beside beside;
    private final Map<Owner, MutableList<Piece>> pieces = new TreeMap<>();

    /**
     * @param spans of each cell of the plan, bottom → top
     * @param roof heights where a plane of the roof ends a span
     * @param forms of each storey's roof
     * @param beside the ground and floors on it
     */
    WallPieces(
            Plan plan,
            int storeys,
            StoreyLevels levels,
            ImmutableList<ImmutableList<Span>> spans,
            RoofField roof,
            ImmutableList<Optional<RoofForm>> forms,
            Beside beside) {
        this.plan = plan;
        this.storeys = storeys;
        this.levels = levels;
        this.spans = spans;
        this.roof = roof;
        this.forms = forms;
        this.beside = beside;
    }

    /** Outlines of all upright faces by their owner, seen from outdoors, in order. */
    public Map<Owner, ImmutableList<ImmutableList<Vertex>>> outlines() {
        for (Plan.Bound bound : plan.bounds()) {
            assign(bound, true);
            assign(bound, false);
        }
        Map<Owner, ImmutableList<ImmutableList<Vertex>>> outlines = new TreeMap<>();
        pieces.forEach((owner, list) -> outlines.put(owner, join(list)));
        return outlines;
    }

    /** What is heated over the ends of a bound on one hand of it. */
    private ImmutableList<Reach> reaches(int cell, Vertex a, Vertex b) {
        return cell == Plan.OUTSIDE
                ? Lists.immutable.empty()
                : spans.get(cell)
                        .collect(span -> new Reach(
                                span.bottom(),
                                span.bottom(),
                                span.top() == ROOF ? roof.at(cell, span.last(), a) : span.top(),
                                span.top() == ROOF ? roof.at(cell, span.last(), b) : span.top(),
                                span.first(),
                                span.last()));
    }

    /** Shares what is heated on one hand of a bound and not on the other among the storeys whose side runs there. */
    private void assign(Plan.Bound bound, boolean fullOnLeft) {
        Vertex a = fullOnLeft ? bound.from() : bound.to();
        Vertex b = fullOnLeft ? bound.to() : bound.from();
        ImmutableList<Reach> full = reaches(fullOnLeft ? bound.left() : bound.right(), a, b);
        ImmutableList<Reach> empty = reaches(fullOnLeft ? bound.right() : bound.left(), a, b);
        Reach ground = new Reach(beside.ground(a), beside.ground(b), beside.ground(a), beside.ground(b), 0, 0);
        Vertex from = a;
        for (Vertex to : crossings(full, empty.newWith(ground), a, b).newWith(b)) {
            Vertex start = from;
            assign(
                    bound,
                    fullOnLeft,
                    new Stretch(from.at(0), to.at(0), ground.part(a, b, from, to)),
                    full.collect(reach -> reach.part(a, b, start, to)),
                    empty.collect(reach -> reach.part(a, b, start, to)));
            from = to;
        }
    }

    /** Where along a bound a height on its one hand crosses one on its other, each with that height. */
    private static ImmutableList<Vertex> crossings(
            ImmutableList<Reach> full, ImmutableList<Reach> empty, Vertex a, Vertex b) {
        MutableList<Vertex> crossings = Lists.mutable.empty();
        for (Vertex one : full.flatCollect(Reach::ends)) {
            for (Vertex other : empty.flatCollect(Reach::ends)) {
                double before = one.x() - other.x();
                double after = one.y() - other.y();
                if (Math.signum(before) * Math.signum(after) < 0) {
                    double share = before / (before - after);
                    crossings.add(new Vertex(
                            Math.round(a.x() + share * (b.x() - a.x())),
                            Math.round(a.y() + share * (b.y() - a.y())),
                            Math.round(one.x() + share * (one.y() - one.x()))));
                }
            }
        }
        return crossings
                .reject(v -> v.at(0).equals(a) || v.at(0).equals(b))
                .distinctBy(v -> v.at(0))
                .sortThisByDouble(v -> v.minus(a).at(0).dot(b.minus(a)))
                .toImmutable();
    }

    private void assign(
            Plan.Bound bound,
            boolean fullOnLeft,
            Stretch stretch,
            ImmutableList<Reach> heated,
            ImmutableList<Reach> taken) {
        Vertex a = stretch.a();
        Vertex b = stretch.b();
        int full = fullOnLeft ? bound.left() : bound.right();
        int empty = fullOnLeft ? bound.right() : bound.left();
        MutableList<Reach> rest = heated.toList();
        for (Reach cut : taken) {
            rest = rest.flatCollect(reach -> reach.without(cut));
        }
        for (Reach reach : rest) {
            ImmutableList<Integer> here =
                    Lists.immutable.fromStream(java.util.stream.IntStream.rangeClosed(reach.first(), reach.last())
                            .filter(k -> plan.in(full, k) && !plan.in(empty, k))
                            .boxed());
            if (here.isEmpty()) {
                add(cutting(bound, reach), a, b, reach);
            }
            long from = Long.MIN_VALUE;
            for (int i = 0; i < here.size(); i++) {
                int storey = here.get(i);
                long to = i + 1 < here.size() ? levels.takeOver().get(here.get(i + 1) - 1) : ROOF;
                Reach part = reach.between(from, to);
                boolean under = taken.anySatisfy(over -> over.isOver(part) && beside.onGround(over.first(), empty));
                Plan.Tag line = bound.side(storey, fullOnLeft).orElseThrow();
                if (under) {
                    add(new Owner(storey, line, Part.UNDER_FLOOR), a, b, part);
                } else {
                    side(new Owner(storey, line, Part.WALL), stretch, part);
                }
                from = to;
            }
        }
    }

    /** Heated to different heights on both hands of a line that merely cuts: under a gable, or at a step. */
    private Owner cutting(Plan.Bound bound, Reach reach) {
        Optional<Plan.Tag> roofLine =
                bound.runs().collect(Plan.Run::tag).detectOptional(tag -> tag.kind() == Plan.Kind.ROOF);
        Optional<Plan.Tag> areaLine = bound.runs()
                .collect(Plan.Run::tag)
                .detectOptional(tag -> tag.kind() == Plan.Kind.AREA
                        && Lists.immutable
                                .of(bound.left(), bound.right())
                                .anySatisfy(
                                        cell -> roof.plane(cell, tag.storey()).isPresent()));
        if (roofLine.isPresent() || areaLine.isPresent()) {
            Plan.Tag line = roofLine.or(() -> areaLine).orElseThrow();
            return new Owner(line.storey(), line, Part.GABLE);
        }
        Plan.Tag line = bound.cut().orElse(bound.runs().getFirst().tag());
        return new Owner(nearest(reach), new Plan.Tag(Plan.Kind.STEP_END, line.storey(), line.number()), Part.WALL);
    }

    private void side(Owner owner, Stretch stretch, Reach reach) {
        Vertex a = stretch.a();
        Vertex b = stretch.b();
        Optional<RoofForm> form = owner.isWall()
                ? forms.get(owner.storey()).filter(f -> f.parted(owner.line().number()))
                : Optional.empty();
        long eaves = form.map(RoofForm::eaves).orElse(ROOF);
        Reach rest = reach;
        if (owner.isWall() && beside.reachesGround(owner, a, b)) {
            Reach cut = stretch.ground();
            add(
                    new Owner(owner.storey(), owner.line(), Part.BELOW_GROUND),
                    a,
                    b,
                    reach.between(Long.MIN_VALUE, Long.MIN_VALUE, cut.topA(), cut.topB()));
            rest = reach.between(cut.topA(), cut.topB(), ROOF, ROOF);
        }
        add(owner, a, b, rest.between(Long.MIN_VALUE, eaves));
        add(new Owner(owner.storey(), owner.line(), Part.GABLE), a, b, rest.between(eaves, ROOF));
    }

    private int nearest(Reach span) {
        int storey = 0;
        while (storey + 1 < storeys && levels.takeOver().get(storey) <= Math.min(span.bottomA(), span.bottomB())) {
            storey++;
        }
        return storey;
    }

    private void add(Owner owner, Vertex a, Vertex b, Reach reach) {
        if (!reach.isEmpty()) {
            pieces.computeIfAbsent(owner, o -> Lists.mutable.empty()).add(new Piece(a, b, reach));
        }
    }

    /** Joins pieces of one line that touch. */
    private static ImmutableList<ImmutableList<Vertex>> join(MutableList<Piece> list) {
        MutableList<Piece> waiting =
                list.toSortedListBy(piece -> (double) piece.reach().bottomA());
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
                && Math.max(left.reach().bottomB(), right.reach().bottomA())
                        < Math.min(left.reach().topB(), right.reach().topA());
    }

    private static ImmutableList<Vertex> outline(MutableList<Piece> chain) {
        MutableList<Vertex> corners = Lists.mutable.empty();
        for (Piece piece : chain) {
            corners.add(piece.a().at(piece.reach().bottomA()));
            corners.add(piece.b().at(piece.reach().bottomB()));
        }
        for (Piece piece : chain.asReversed()) {
            corners.add(piece.b().at(piece.reach().topB()));
            corners.add(piece.a().at(piece.reach().topA()));
        }
        return Ring.tidy(corners.toImmutable());
    }
}
