package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.BodyFacets;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.roof.RoofField;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
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

    private static final long ROOF = Heated.ROOF;

    /** What part of a storey's wall a face is. */
    public enum Part {
        BELOW_GROUND,
        /** Under a floor on the ground beside it; where no step leads down to it indoors, the jog between their undersides. */
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

    /** A part of a bound with the ground beside it. */
    private record Stretch(Vertex a, Vertex b, Reach ground) {}

    /** A part of an upright face: from {@code a} on the left to {@code b} on the right, seen from outdoors. */
    record Piece(Vertex a, Vertex b, Reach reach) {

        Piece with(Reach other) {
            return new Piece(a, b, other);
        }
    }

    /** What stands beside a wall. */
    interface Beside {

        /**
         * Whether a piece of a storey's wall stands in the ground.
         *
         * @param lowest the lowest storey behind it, its own or one of a stack that reaches lower
         */
        boolean reachesGround(Owner owner, int lowest, Piece piece);

        /** Whether two walls are built alike and face alike, so that it does not matter whose a part of a face is. */
        boolean alike(Owner one, Owner other);

        /** Whether a wall and the gable over it, built alike, are one surface: an opening stands in both. */
        boolean isOne(Owner wall);

        /** z of the ground. */
        long ground(Vertex point);

        /**
         * Whether what is below a storey's part that begins in a cell is no open air: the ground, a crawl space, or what the
         * lowest floor of another stack lies over.
         */
        boolean closedBelow(int storey, int cell);
    }

    private final Plan plan;
    private final Stacks stacks;
    private final GivenSides given;
    private final StoreyLevels levels;
    private final Heated heated;
    private final RoofField roof;
    private final ImmutableList<Optional<RoofForm>> forms;
    private final Beside beside;
    private final Map<Owner, MutableList<Piece>> pieces = new TreeMap<>();
    private double widestJog;

    /**
     * @param heated over each cell of the plan
     * @param forms of each storey's roof
     * @param beside the ground and floors on it
     */
    WallPieces(
            Plan plan,
            Stacks stacks,
            GivenSides given,
            StoreyLevels levels,
            Heated heated,
            ImmutableList<Optional<RoofForm>> forms,
            Beside beside) {
        this.plan = plan;
        this.stacks = stacks;
        this.given = given;
        this.levels = levels;
        this.heated = heated;
        this.roof = heated.roof();
        this.forms = forms;
        this.beside = beside;
    }

    /** Outlines of all upright faces by their owner, seen from outdoors, in order. */
    public Map<Owner, ImmutableList<ImmutableList<Vertex>>> outlines() {
        for (Plan.Bound bound : plan.bounds()) {
            assign(bound, true);
            assign(bound, false);
        }
        if (stacks.all().size() > 1) {
            widestJog = Math.max(widestJog, Jogs.take(given, pieces));
        }
        Map<Owner, ImmutableList<ImmutableList<Vertex>>> outlines = new TreeMap<>();
        pieces.forEach((owner, list) -> outlines.put(owner, join(list)));
        return outlines;
    }

    /** m, of the widest jog between two stacks: of walls in plan, of floors in height; zero without. */
    double widestJog() {
        return widestJog;
    }

    /** What is heated over the ends of a bound on one hand of it. */
    private ImmutableList<Reach> reaches(int cell, Vertex a, Vertex b) {
        return cell == Plan.OUTSIDE
                ? Lists.immutable.empty()
                : heated.spans()
                        .get(cell)
                        .collect(span -> new Reach(
                                span.bottom(),
                                span.bottom(),
                                heated.top(span, cell, a),
                                heated.top(span, cell, b),
                                span.first(),
                                Lists.immutable.fromStream(IntStream.rangeClosed(span.first(), span.last())
                                        .boxed())));
    }

    /** Those that meet, together. */
    private static ImmutableList<Reach> together(ImmutableList<Reach> reaches) {
        MutableList<Reach> together = Lists.mutable.empty();
        for (Reach reach : reaches) {
            Reach grown = reach;
            for (Reach other : together.select(reach::meets)) {
                together.remove(other);
                grown = other.with(grown);
            }
            together.add(grown);
        }
        return together.toImmutable();
    }

    /** Shares what is heated on one hand of a bound and not on the other among the storeys whose side runs there. */
    private void assign(Plan.Bound bound, boolean fullOnLeft) {
        Vertex a = fullOnLeft ? bound.from() : bound.to();
        Vertex b = fullOnLeft ? bound.to() : bound.from();
        ImmutableList<Reach> own = reaches(fullOnLeft ? bound.left() : bound.right(), a, b);
        ImmutableList<Reach> full = together(own);
        ImmutableList<Reach> empty = together(reaches(fullOnLeft ? bound.right() : bound.left(), a, b));
        Reach ground = new Reach(
                beside.ground(a), beside.ground(b), beside.ground(a), beside.ground(b), 0, Lists.immutable.empty());
        Vertex from = a;
        ImmutableList<Reach> levels = levels(full);
        for (Vertex to : crossings(
                        full.newWithAll(levels), empty.newWith(ground).newWithAll(levels), a, b)
                .newWith(b)) {
            Vertex start = from;
            assign(
                    bound,
                    fullOnLeft,
                    new Stretch(from.at(0), to.at(0), ground.part(a, b, from, to)),
                    own.collect(reach -> reach.part(a, b, start, to)),
                    full.collect(reach -> reach.part(a, b, start, to)),
                    empty.collect(reach -> reach.part(a, b, start, to)));
            from = to;
        }
    }

    /** Floors, where storeys take over from one another and where gables begin, where something slopes beside them. */
    private ImmutableList<Reach> levels(ImmutableList<Reach> full) {
        return full.flatCollect(Reach::storeys)
                .flatCollect(k -> Lists.immutable
                        .ofAll(forms.get(k).map(RoofForm::eaves).stream().toList())
                        .newWith(levels.takeOver().get(k)))
                .newWithAll(full.collect(reach -> levels.floors().get(reach.first())))
                .collect(z -> new Reach(z, z, z, z, 0, Lists.immutable.empty()));
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
                    crossings.add(a.toward(b, share).at(Math.round(one.x() + share * (one.y() - one.x()))));
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
            ImmutableList<Reach> own,
            ImmutableList<Reach> together,
            ImmutableList<Reach> taken) {
        Vertex a = stretch.a();
        Vertex b = stretch.b();
        int full = fullOnLeft ? bound.left() : bound.right();
        int empty = fullOnLeft ? bound.right() : bound.left();
        MutableList<Reach> rest = together.toList();
        for (Reach cut : taken) {
            rest = rest.flatCollect(reach -> reach.without(cut));
        }
        for (Reach reach : rest) {
            ImmutableList<Integer> here = reach.storeys().select(k -> plan.in(full, k) && !plan.in(empty, k));
            if (here.isEmpty()) {
                add(cutting(bound, reach), a, b, reach);
            }
            Reach left = reach;
            for (ImmutableList<Integer> stack : byStack(here, own)) {
                boolean all = here.allSatisfy(k -> stack.contains(k)
                        || beside.alike(owner(bound, fullOnLeft, stack.getFirst()), owner(bound, fullOnLeft, k)));
                Reach whole = all ? left : left.within(own(own, stack.getFirst()));
                share(bound, fullOnLeft, stretch, whole, stack, taken);
                if (all) {
                    break;
                }
                // What of another stack reaches further down or up than this one.
                left = left.without(whole).getFirstOptional().orElse(whole.between(ROOF, ROOF));
            }
        }
    }

    private static Reach own(ImmutableList<Reach> own, int storey) {
        return own.detect(reach -> reach.storeys().contains(storey));
    }

    /** Storeys of each stack, that of the tallest first. */
    private ImmutableList<ImmutableList<Integer>> byStack(ImmutableList<Integer> here, ImmutableList<Reach> own) {
        return here.collect(k -> stacks.owners().get(k))
                .distinct()
                .collect(s -> here.select(k -> stacks.owners().get(k).equals(s)))
                .toImmutableSortedListBy(list -> -own(own, list.getFirst()).size());
    }

    private static Owner owner(Plan.Bound bound, boolean onLeft, int storey) {
        return new Owner(storey, bound.side(storey, onLeft).orElseThrow(), Part.WALL);
    }

    /** Shares a reach among the storeys of one stack. */
    private void share(
            Plan.Bound bound,
            boolean fullOnLeft,
            Stretch stretch,
            Reach reach,
            ImmutableList<Integer> here,
            ImmutableList<Reach> taken) {
        int empty = fullOnLeft ? bound.right() : bound.left();
        long from = Long.MIN_VALUE;
        for (int i = 0; i < here.size(); i++) {
            int storey = here.get(i);
            long to = i + 1 < here.size() ? takeOver(bound, fullOnLeft, reach, storey, here.get(i + 1)) : ROOF;
            Reach part = reach.between(from, to);
            Owner owner = owner(bound, fullOnLeft, storey);
            Optional<Reach> over = taken.detectOptional(each -> each.isOver(part)
                    && beside.closedBelow(each.first(), empty)
                    && given.alongRooms(storey, owner.line().number(), stretch.a(), stretch.b(), each.first()));
            if (over.isPresent()) {
                add(
                        new Owner(storey, underFloor(owner, over.get(), part), Part.UNDER_FLOOR),
                        stretch.a(),
                        stretch.b(),
                        part);
            } else {
                boolean other = i == 0 && stacks.first(reach.first()) != stacks.first(storey);
                side(owner, other ? reach.first() : storey, stretch, part);
            }
            from = to;
        }
    }

    /** The line of what stands under the floor beside it: a side's wall where indoors a step leads down to its own floor. */
    private Plan.Tag underFloor(Owner owner, Reach over, Reach part) {
        Plan.Tag line = owner.line();
        if (levels.floors().get(owner.storey()) < levels.floors().get(over.first())) {
            return line;
        }
        widestJog = Math.max(
                widestJog, Vertex.metres(Math.max(part.topA() - part.bottomA(), part.topB() - part.bottomB())));
        return new Plan.Tag(Plan.Kind.STEP_END, line.storey(), line.number());
    }

    /**
     * Where the walls of one storey take over from those of another. Before a deck or flat roof that ends just under the upper one's
     * floor they do at its outer face: what is left of the lower wall is too low to be one. Walls built otherwise, or facing
     * something else, do where the sections of such a seam have them do, at the upper floor's upper face: it matters there whose
     * a part of the face is.
     */
    private long takeOver(Plan.Bound bound, boolean fullOnLeft, Reach reach, int lower, int upper) {
        long usual = levels.takeOver().get(upper - 1);
        if (!beside.alike(owner(bound, fullOnLeft, lower), owner(bound, fullOnLeft, upper))) {
            return levels.floors().get(upper);
        }
        long foot = reach.bottomA();
        boolean before = foot < usual
                && reach.bottomB() == foot
                && BodyFacets.Above.isJustOver(
                        Vertex.metres(levels.floors().get(upper)),
                        stacks.storey(upper).floorThickness(),
                        Vertex.metres(foot))
                && endsFlat(fullOnLeft ? bound.right() : bound.left(), foot);
        return before ? foot : usual;
    }

    /** Whether what is heated over a cell ends there, level all over it. */
    private boolean endsFlat(int cell, long height) {
        return cell != Plan.OUTSIDE
                && heated.spans()
                        .get(cell)
                        .anySatisfy(span -> plan.beside(cell)
                                .flatCollect(bound -> Lists.immutable.of(bound.from(), bound.to()))
                                .allSatisfy(node -> heated.top(span, cell, node) == height));
    }

    /** Heated to different heights on both hands of a line that merely cuts: under a gable, or at a step. */
    private Owner cutting(Plan.Bound bound, Reach reach) {
        Optional<Plan.Tag> roofLine = bound.runs()
                .collect(Plan.Run::tag)
                .detectOptional(
                        tag -> tag.kind() == Plan.Kind.ROOF && reach.storeys().contains(tag.storey()));
        Optional<Plan.Tag> areaLine = bound.runs()
                .collect(Plan.Run::tag)
                .detectOptional(tag -> tag.kind() == Plan.Kind.AREA
                        // Under the floor it is a jog between two bases.
                        && reach.bottomA() >= levels.floors().get(tag.storey())
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

    private void side(Owner owner, int lowest, Stretch stretch, Reach reach) {
        if (reach.isEmpty()) {
            return;
        }
        Vertex a = stretch.a();
        Vertex b = stretch.b();
        Optional<RoofForm> form = owner.isWall()
                ? forms.get(owner.storey()).filter(f -> f.parted(owner.line().number()) && !beside.isOne(owner))
                : Optional.empty();
        long eaves = form.map(RoofForm::eaves).orElse(ROOF);
        Reach rest = reach;
        if (owner.isWall() && beside.reachesGround(owner, lowest, new Piece(a, b, reach))) {
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
        int storey = stacks.first(span.first());
        while (stacks.carries(storey) && levels.takeOver().get(storey) <= Math.min(span.bottomA(), span.bottomB())) {
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
            MutableList<Piece> touching = Lists.mutable.of(waiting.getFirst());
            for (int i = 0; i < touching.size(); i++) {
                Piece piece = touching.get(i);
                touching.addAllIterable(waiting.select(
                        each -> !touching.contains(each) && (follows(piece, each) || follows(each, piece))));
            }
            MutableList<Piece> chain = chain(waiting);
            boolean whole = chain.size() == touching.size();
            // Where two touch one side of a third, one over the other, they are no chain; round a hole they are no
            // ring.
            Optional<ImmutableList<Vertex>> around =
                    whole ? Optional.empty() : PieceRing.around(touching.toImmutable());
            if (around.isPresent()) {
                waiting.removeAllIterable(touching);
            }
            outlines.add(around.orElseGet(() -> outline(chain)));
        }
        return outlines.toImmutable();
    }

    /** Takes out the first and all that run on from it to both sides. */
    private static MutableList<Piece> chain(MutableList<Piece> waiting) {
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
        return chain;
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
