package coldseam.junctions.vertex;

import coldseam.files.quantity.Phrase;
import coldseam.junctions.DetailDoesNotFit;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.sorted.ImmutableSortedSet;
import org.eclipse.collections.api.set.sorted.MutableSortedSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.SortedSets;

/**
 * What fills each cell of a vertex's box, from the sections of its edges.
 *
 * <p>Where a cell lies past all that two of the sections change along one axis, the box is there as it is at that axis' face:
 * the section of the edge that leaves through it, or, where none does, what the others show there; a face through which nothing
 * leaves goes before the others. Where two level edges turn round the rooms at a re-entrant corner, or beside a deck that goes on
 * round an outside one, each detail's own runs on until it meets the other's on the diagonal. Everywhere else the three sections,
 * one along each axis, are asked.
 * <ol>
 *   <li>A surface's layer is where both sections of its edges show it: it ends at the one surface as the one detail says, at
 *       the other as the other does. So what two sections agree on holds.
 *   <li>What a detail adds (a block, a kerb) goes before layers that only one section shows; but a floor
 *       that bears in beside a deck does not go on in its insulation.
 *   <li>Where a section shows air, a layer that the others do not agree on has ended; but not one of a wall that goes on past
 *       the vertex, if the section on the other side of a surface shows it, too.
 *   <li>Where two surfaces' layers conduct alike, it does not matter whose goes through.
 * </ol>
 * Where none of this decides, the section on the other side of a surface is asked within its thickness; then, where
 * two edges of equal walls show two blocks, each runs round the corner as a ring; what only one of two edges on the
 * ground has ends where air lies over the ground; last, a block that an edge shows goes before those that are only put together
 * at a face of the box. Where a rule finds several things, the one that conducts better is there,
 * so that a corner is filled as its mirror image is. Where none of this helps, the sections do not say how the corner is
 * built; then a detail of the corner's own may. Where there is none, of blocks of several edges the one that conducts best is
 * taken, and told, since a corner loses no more than so whichever of them goes on; anything else is refused. A detail of the
 * corner's own may also paint over what the sections say, but not where they leave the box.
 */
final class VertexCells {

    /** m; walls that differ by less are equally thick. */
    private static final double SAME = 1e-6;

    /** Two materials of two edges' blocks that meet: the one taken, which conducts better, and the other. */
    record Doubt(String taken, String other) implements Comparable<Doubt> {

        private static final Comparator<Doubt> ORDER =
                Comparator.comparing(Doubt::taken).thenComparing(Doubt::other);

        @Override
        public int compareTo(Doubt that) {
            return ORDER.compare(this, that);
        }
    }

    private final VertexSetup setup;
    private final VertexSections sections;
    private final int[] n = new int[3];
    private final Filling[] filled;
    private final boolean[][] open = new boolean[3][2];
    /** Of each axis, what was found of a cell: every cell asks those in line with it. */
    private final Filling[][] votes;

    private final MutableSortedSet<Doubt> inDoubt = SortedSets.mutable.empty();

    private int undecided = -1;

    /** @throws DetailDoesNotFit where the sections do not say what fills some cell */
    VertexCells(VertexSetup setup, VertexSections sections) {
        this.setup = setup;
        this.sections = sections;
        for (int axis = 0; axis < 3; axis++) {
            n[axis] = sections.cells(axis);
        }
        for (int axis = 0; axis < 3; axis++) {
            open[axis][0] = isOpen(axis, 0);
            open[axis][1] = isOpen(axis, 1);
        }
        filled = new Filling[n[0] * n[1] * n[2]];
        votes = new Filling[3][filled.length];
        each(cell -> filled[index(cell)] = decided(cell));
        if (undecided >= 0) {
            throw DetailDoesNotFit.of(Phrase.of("the sections of its edges do not say what fills the corner ")
                    .and(place(undecided))
                    .and(" from the inner faces"));
        }
    }

    /** Hears of each cell. */
    interface Cell {
        void at(int[] cell);
    }

    void each(Cell visitor) {
        int[] cell = new int[3];
        for (cell[2] = 0; cell[2] < n[2]; cell[2]++) {
            for (cell[1] = 0; cell[1] < n[1]; cell[1]++) {
                for (cell[0] = 0; cell[0] < n[0]; cell[0]++) {
                    visitor.at(cell);
                }
            }
        }
    }

    int index(int[] cell) {
        return (cell[2] * n[1] + cell[1]) * n[0] + cell[0];
    }

    Filling at(int[] cell) {
        return filled[index(cell)];
    }

    /** @throws DetailDoesNotFit saying that the corner's own detail encloses air */
    void refuseHole() {
        throw sections.corner.orElseThrow().encloses();
    }

    void clear(int[] cell) {
        filled[index(cell)] = Filling.AIR;
    }

    int size(int axis) {
        return n[axis];
    }

    private Phrase place(int index) {
        int[] cell = {index % n[0], index / n[0] % n[1], index / (n[0] * n[1])};
        return Phrase.millimetres(sections.middle(0, cell[0]))
                .and(", ")
                .andMillimetres(sections.middle(1, cell[1]))
                .and(" and ")
                .andMillimetres(sections.middle(2, cell[2]));
    }

    private Filling decided(int[] cell) {
        Optional<Filling> over = own(cell, false);
        if (over.isPresent()) {
            if (leaves(cell) && !over.get().conductsLike(said(cell).orElse(Filling.AIR))) {
                throw sections.corner.orElseThrow().refused();
            }
            if (isSoft(over.get())) {
                said(cell).filter(Filling::carries).ifPresent(sections.corner.orElseThrow()::refuseUnborne);
            }
            return over.get();
        }
        return said(cell).or(() -> own(cell, true)).or(() -> ofBlocks(cell)).orElseGet(() -> {
            undecided = undecided < 0 ? index(cell) : undecided;
            return Filling.AIR;
        });
    }

    /** Of several blocks of several edges the one that conducts best: more is never lost than so, whichever goes on. */
    private Optional<Filling> ofBlocks(int[] cell) {
        ImmutableList<Filling> blocks = shown(cell);
        if (blocks.size() < 2) {
            return Optional.empty();
        }
        Filling best = blocks.maxBy(Filling::conductivity);
        blocks.reject(best::same).forEach(other -> inDoubt.add(new Doubt(best.material(), other.material())));
        return Optional.of(best);
    }

    /** The blocks in a cell that edges show; not what is only put together at a face through which no edge leaves. */
    private ImmutableList<Filling> shown(int[] cell) {
        return Lists.immutable
                .of(0, 1, 2)
                .select(axis -> sections.edge(axis, voting(axis, cell)).isPresent())
                .collect(axis -> vote(axis, cell))
                .select(Filling::block);
    }

    /** The pairs of blocks of which no section says which goes on, so that the better conductor was taken. */
    ImmutableSortedSet<Doubt> inDoubt() {
        return inDoubt.toImmutable();
    }

    private boolean isSoft(Filling filling) {
        return !filling.air() && sections.corner.orElseThrow().isSoft(filling);
    }

    /** Whether it is the corner's own detail that lets air be in a cell. */
    boolean isEmptied(int[] cell) {
        return own(cell, false).filter(Filling::air).isPresent();
    }

    /** What the corner's own detail fills a cell with. */
    private Optional<Filling> own(int[] cell, boolean open) {
        return sections.corner.flatMap(boxes -> boxes.at(
                new double[] {sections.middle(0, cell[0]), sections.middle(1, cell[1]), sections.middle(2, cell[2])},
                open));
    }

    /** Whether a cell lies at a cut of the box, where the house goes on. */
    private boolean leaves(int[] cell) {
        boolean leaves = false;
        for (int axis = 0; axis < 3; axis++) {
            leaves |= cell[axis] == 0 && sections.cut[axis][0] || cell[axis] == n[axis] - 1 && sections.cut[axis][1];
        }
        return leaves;
    }

    /** What the sections say of a cell; empty where they leave it open. */
    private Optional<Filling> said(int[] cell) {
        // Where nothing leaves the box all ends before it, whatever goes on along another axis.
        Optional<Filling> past = turned(cell, false)
                .or(() -> past(cell, true))
                .or(() -> past(cell, false))
                .or(() -> turned(cell, true));
        if (past.isPresent()) {
            return past;
        }
        MutableList<Filling> votes = Lists.mutable.of(vote(0, cell), vote(1, cell), vote(2, cell));
        // Over the end of the ground lies outdoor air whatever the corner is: it speaks only where nothing else does.
        return same(votes)
                .or(() -> unpierced(cell, votes))
                .or(() -> added(votes))
                .or(() -> goesOn(cell, votes))
                .or(() -> ended(votes))
                .or(() -> beyond(cell, votes, false))
                .or(() -> ring(cell, votes))
                .or(() -> beyond(cell, votes, true))
                .or(() -> Optional.of(shown(cell))
                        .filter(blocks -> blocks.size() == 1)
                        .map(ImmutableList::getOnly));
    }

    /**
     * What two level edges show where they turn round the rooms together, in or out, beside a surface that goes on round them: each
     * detail runs on until it meets the other on the diagonal. Empty where that is air that unlike details may fill, or, unless
     * asked for, a wall's layer, in whose place the upright edge may have something of its own.
     */
    private Optional<Filling> turned(int[] cell, boolean walls) {
        int side = turn();
        if (side < 0 || side == 0 && !setup.surface(2, 1, 1)) {
            return Optional.empty();
        }
        boolean alike = edge(0, side).detail().equals(edge(1, side).detail());
        return Optional.of(turning(side, cell))
                .filter(each ->
                        each.air() ? alike && !vote(2, cell).block() : walls || each.block() || each.axis() == 2);
    }

    /** The side to which the two level edges leave, where there are just two that turn: 1 where the rooms' corner is re-entrant; else -1. */
    private int turn() {
        boolean[] leave = new boolean[2];
        for (int side = 0; side < 2; side++) {
            leave[side] =
                    sections.edge(0, side).isPresent() || sections.edge(1, side).isPresent();
        }
        int side = leave[1] ? 1 : 0;
        return leave[0] != leave[1]
                        && sections.edge(0, side).isPresent()
                        && sections.edge(1, side).isPresent()
                ? side
                : -1;
    }

    private VertexSetup.EdgeEnd edge(int axis, int side) {
        return setup.edges().get(sections.edge(axis, side).orElseThrow());
    }

    /**
     * What the nearer of two level edges that turn shows, or, where they turn outwards, the farther; on the diagonal what conducts
     * better.
     */
    private Filling turning(int side, int[] cell) {
        // The section along one axis sees the distance along the other.
        double farther = depth(1, cell) - depth(0, cell);
        Filling one = section(0, cell);
        Filling other = section(1, cell);
        if (Math.abs(farther) <= SAME) {
            return better(one, other);
        }
        return farther > 0 == (side == 1) ? other : one;
    }

    /** What conducts better of two: which is asked first must not matter. */
    private static Filling better(Filling one, Filling other) {
        return one.conductivity() < other.conductivity() ? other : one;
    }

    /** How far out a cell lies along an axis: m indoors, parts of the surface's thickness within it, and m past it. */
    private double depth(int axis, int[] cell) {
        double middle = sections.middle(axis, cell[axis]);
        double thickness = sections.outside[axis];
        return middle < 0 ? middle : middle < thickness ? middle / thickness : 1 + middle - thickness;
    }

    /** A layer of a surface that passes by on the cell's side of another, as two sections show, though the third has ended. */
    private Optional<Filling> goesOn(int[] cell, MutableList<Filling> votes) {
        return instead(
                cell,
                votes,
                false,
                all -> same(all).filter(layer -> passes(layer.axis(), cell) || passes(layer.turned(), cell)));
    }

    /**
     * Whether a surface goes on past the vertex: an upright one unbroken along it above it, or below it, whichever a cell is; a level
     * one round it, where the rooms' corner juts into it.
     */
    private boolean passes(int axis, int[] cell) {
        if (axis == 2) {
            return setup.surface(2, 0, 0) && setup.surface(2, 0, 1) && setup.surface(2, 1, 0);
        }
        int level = sections.middle(2, cell[2]) < 0 ? 0 : 1;
        return axis == 0 && setup.surface(0, 0, level) && setup.surface(0, 1, level)
                || axis == 1 && setup.surface(1, level, 0) && setup.surface(1, level, 1);
    }

    /**
     * What is at the faces of the box that a cell lies behind with no change between; of open faces or of the others. Where two
     * of them show something else, as each detail draws the floor of the rooms in its own way, what conducts better is there:
     * which is asked first must not matter.
     */
    private Optional<Filling> past(int[] cell, boolean through) {
        Optional<Filling> found = Optional.empty();
        for (int axis = 0; axis < 3; axis++) {
            for (int side = 0; side < 2; side++) {
                if (open[axis][side] == through && far(axis, side, cell) && settled(axis, side, cell)) {
                    Filling here = face(axis, side, cell);
                    found = found.filter(other -> other.conductivity() >= here.conductivity())
                            .or(() -> Optional.of(here));
                }
            }
        }
        return found;
    }

    /**
     * What the votes agree on where the section on the other side of a surface is asked within its thickness.
     *
     * @param overGround whether air over the end of the ground counts as such a section
     */
    private Optional<Filling> beyond(int[] cell, MutableList<Filling> votes, boolean overGround) {
        return instead(
                cell, votes, overGround, all -> same(all).or(() -> added(all)).or(() -> ended(all)));
    }

    /**
     * What a rule finds where one vote after the other is replaced by what the section on the other side of that axis' surface
     * shows. What the section on the surface's outer side shows, where the cell lies, goes before what the inner one does; of
     * several such what conducts better is there: which is asked first must not matter.
     */
    private Optional<Filling> instead(
            int[] cell,
            MutableList<Filling> votes,
            boolean overGround,
            Function<MutableList<Filling>, Optional<Filling>> rule) {
        return instead(cell, votes, overGround, rule, 1).or(() -> instead(cell, votes, overGround, rule, 0));
    }

    private Optional<Filling> instead(
            int[] cell,
            MutableList<Filling> votes,
            boolean overGround,
            Function<MutableList<Filling>, Optional<Filling>> rule,
            int other) {
        MutableList<Filling> found = Lists.mutable.empty();
        for (int axis = 0; axis < 3; axis++) {
            if (voting(axis, cell) == other || far(axis, 0, cell) || far(axis, 1, cell) || open[axis][other]) {
                continue;
            }
            Filling there = face(axis, other, cell);
            if (overGround || !(there.air() && other == 1 && sections.earth[axis])) {
                MutableList<Filling> instead = votes.clone();
                instead.set(axis, there);
                rule.apply(instead).ifPresent(found::add);
            }
        }
        return found.maxByOptional(Filling::conductivity);
    }

    /**
     * Of two blocks of two edges the one that runs round the corner as a ring: at a room's corner the outer, else the inner; the
     * one that conducts better where they are as far out.
     */
    private Optional<Filling> ring(int[] cell, MutableList<Filling> votes) {
        int other = besideBlocks(cell, votes);
        if (other < 0) {
            return Optional.empty();
        }
        int p = (other + 1) % 3;
        int q = (other + 2) % 3;
        int[] at = new int[3];
        int rooms = 0;
        for (int quadrant = 0; quadrant < 4; quadrant++) {
            at[p] = quadrant % 2;
            at[q] = quadrant / 2;
            rooms += setup.room(at[0], at[1], at[2]) ? 1 : 0;
        }
        if (rooms % 2 == 0 || Math.abs(sections.outside[p] - sections.outside[q]) > SAME) {
            return Optional.empty();
        }
        double farther = sections.middle(p, cell[p]) - sections.middle(q, cell[q]);
        if (Math.abs(farther) <= SAME) {
            return Optional.of(better(votes.get(p), votes.get(q)));
        }
        // The section along one axis sees the distance along the other.
        return Optional.of(votes.get(farther > 0 == (rooms == 1) ? q : p));
    }

    /**
     * The axis whose vote is none of two edges' blocks: it shows something else, or a block that no edge shows but the face where
     * those two go on, as a foundation wall does under a corner; -1 where there are not just two.
     */
    private int besideBlocks(int[] cell, MutableList<Filling> votes) {
        boolean all = votes.allSatisfy(Filling::block);
        ImmutableList<Integer> others = Lists.immutable
                .of(0, 1, 2)
                .select(axis -> all
                        ? sections.edge(axis, voting(axis, cell)).isEmpty()
                        : !votes.get(axis).block());
        return others.size() == 1 ? others.getOnly() : -1;
    }

    /** A deck's insulation beside a floor of rooms that bears in higher up, as the deck's own edges both show it. */
    private Optional<Filling> unpierced(int[] cell, MutableList<Filling> votes) {
        int axis = votes.detectIndex(Filling::block);
        if (axis < 0 || far(axis, 0, cell) || far(axis, 1, cell)) {
            return Optional.empty();
        }
        int other = 1 - voting(axis, cell);
        return Optional.of(face(axis, other, cell))
                .filter(each -> sections.edge(axis, other).isPresent()
                        && each.axis() == 2
                        && !each.carries()
                        && votes.count(each::same) > 0);
    }

    /** What two votes agree on. */
    private static Optional<Filling> same(MutableList<Filling> votes) {
        return votes.detectOptional(one -> votes.count(one::same) > 1);
    }

    /** What one detail adds. */
    private static Optional<Filling> added(MutableList<Filling> votes) {
        MutableList<Filling> blocks = votes.select(Filling::block);
        return blocks.size() == 1 ? Optional.of(blocks.getFirst()) : Optional.empty();
    }

    /** Air, where layers have ended; or of layers that conduct alike any. */
    private static Optional<Filling> ended(MutableList<Filling> votes) {
        return votes.noneSatisfy(Filling::block) && votes.anySatisfy(Filling::air)
                ? Optional.of(Filling.AIR)
                : votes.detectOptional(one -> votes.count(one::conductsLike) > 1);
    }

    /** Whether a cell lies past an axis' surface on a side. */
    private boolean far(int axis, int side, int[] cell) {
        double middle = sections.middle(axis, cell[axis]);
        return side == 0 ? middle < sections.inside[axis] : middle > sections.solved[axis];
    }

    /** Whether the sections along the other axes change no more from a cell to a face of the box. */
    private boolean settled(int axis, int side, int[] cell) {
        for (int other = 0; other < 3; other++) {
            if (other == axis) {
                continue;
            }
            Filling here = vote(other, cell);
            int[] next = cell.clone();
            int last = side == 0 ? 0 : n[axis] - 1;
            while (next[axis] != last) {
                next[axis] += side == 0 ? -1 : 1;
                if (!vote(other, next).same(here)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** What the section along an axis shows in a cell. */
    private Filling vote(int axis, int[] cell) {
        int at = index(cell);
        if (votes[axis][at] == null) {
            votes[axis][at] = face(axis, voting(axis, cell), cell);
        }
        return votes[axis][at];
    }

    /** The side of an axis whose section is asked at a cell. */
    private int voting(int axis, int[] cell) {
        boolean low = sections.edge(axis, 0).isPresent();
        boolean high = sections.edge(axis, 1).isPresent();
        boolean past = far(axis, 1, cell);
        if (low && high) {
            return past ? 1 : 0;
        }
        if (low) {
            return past && !open[axis][1] ? 1 : 0;
        }
        return far(axis, 0, cell) && !open[axis][0] ? 0 : 1;
    }

    /** Whether nothing but air leaves through a face. */
    private boolean isOpen(int axis, int side) {
        if (sections.edge(axis, side).isPresent()) {
            return false;
        }
        boolean[] solid = new boolean[1];
        int[] cell = new int[3];
        int e = (axis + 1) % 3;
        int f = (axis + 2) % 3;
        for (cell[e] = 0; cell[e] < n[e]; cell[e]++) {
            for (cell[f] = 0; cell[f] < n[f]; cell[f]++) {
                solid[0] |= !face(axis, side, cell).air();
            }
        }
        return !solid[0];
    }

    /**
     * What is at a face of the box: its edge's section, or else what the sections along the other axes show there. Behind a party
     * wall houses go on in a row: which of the two it is the section of the edge that ends at it says, where it shows one of them.
     */
    private Filling face(int axis, int side, int[] cell) {
        Optional<Integer> edge = sections.edge(axis, side);
        if (edge.isPresent()) {
            return sections.of(edge.get(), cell);
        }
        int[] there = cell.clone();
        there[axis] = side == 0 ? 0 : n[axis] - 1;
        if (axis == 2 && turn() >= 0) {
            return turning(turn(), there);
        }
        Filling one = section((axis + 1) % 3, there);
        Filling other = section((axis + 2) % 3, there);
        Optional<Integer> hither = sections.edge(axis, 1 - side);
        if (side == 1 && setup.party(axis) && hither.isPresent()) {
            Filling goingOn = sections.of(hither.get(), cell);
            if (goingOn.same(one) || goingOn.same(other)) {
                return goingOn;
            }
        }
        if (one.air() || other.air()) {
            return one.air() ? other : one;
        }
        if (one.block() != other.block()) {
            return one.block() ? other : one;
        }
        return better(one, other);
    }

    /** What an edge along an axis shows in a cell; of two, the one on whose side it lies. */
    private Filling section(int axis, int[] cell) {
        Optional<Integer> low = sections.edge(axis, 0);
        Optional<Integer> high = sections.edge(axis, 1);
        Optional<Integer> taken =
                low.isPresent() && high.isPresent() ? far(axis, 1, cell) ? high : low : low.or(() -> high);
        return taken.map(edge -> sections.of(edge, cell)).orElse(Filling.AIR);
    }
}
