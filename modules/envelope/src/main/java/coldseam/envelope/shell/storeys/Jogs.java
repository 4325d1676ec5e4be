package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Plan;
import java.util.Map;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Sets;

/**
 * Takes jogs out of the walls of a house with wings.
 *
 * <p>Moved out by the thickness of its neighbour's wall a side reaches past its given ends. Where a wing's wall is flush with one
 * of the house, what reaches past has nothing of its side beside it at some heights: it is no wall, but the jog between the outer
 * faces of the two.
 */
final class Jogs {

    private final GivenSides given;
    private final Map<WallPieces.Owner, MutableList<WallPieces.Piece>> pieces;
    /** Of the wall that is looked at. */
    private final MutableSet<Jog> jogs = Sets.mutable.empty();

    private double widest;

    private Jogs(GivenSides given, Map<WallPieces.Owner, MutableList<WallPieces.Piece>> pieces) {
        this.given = given;
        this.pieces = pieces;
    }

    /** m, of the widest, all taken out of the pieces of their side; zero without. */
    static double take(GivenSides given, Map<WallPieces.Owner, MutableList<WallPieces.Piece>> pieces) {
        Jogs jogs = new Jogs(given, pieces);
        Lists.immutable
                .ofAll(pieces.keySet())
                .select(WallPieces.Owner::isWall)
                .collect(owner -> new WallPieces.Owner(owner.storey(), owner.line(), WallPieces.Part.WALL))
                .distinct()
                .forEach(jogs::take);
        return jogs.widest;
    }

    /** A part of a jog in plan, at the beginning or at the end of a side. */
    private record Jog(boolean atA, Vertex a, Vertex b) {

        double width() {
            return Vertex.metres(1) * b.minus(a).length();
        }
    }

    private record Owned(WallPieces.Owner owner, WallPieces.Piece piece) {

        boolean touches(Owned other) {
            return piece.b().equals(other.piece.a()) || piece.a().equals(other.piece.b());
        }
    }

    private void take(WallPieces.Owner wall) {
        MutableList<Owned> settled = Lists.mutable.empty();
        MutableList<Owned> past = Lists.mutable.empty();
        jogs.clear();
        for (WallPieces.Part part : WallPieces.Part.values()) {
            WallPieces.Owner owner = new WallPieces.Owner(wall.storey(), wall.line(), part);
            for (WallPieces.Piece piece : pieces.getOrDefault(owner, Lists.mutable.empty())) {
                boolean beyond = given.past(wall.storey(), wall.line().number(), piece.a(), piece.b());
                (beyond ? past : settled).add(new Owned(owner, piece));
            }
        }
        // Outwards from the given side: what lies farther out is parted by what is beside it.
        past.sortThisByDouble(each -> Math.min(
                given.past(wall.storey(), wall.line().number(), each.piece().a()),
                given.past(wall.storey(), wall.line().number(), each.piece().b())));
        for (Owned next : past) {
            pieces.get(next.owner()).remove(next.piece());
            settled.addAllIterable(part(next, settled.select(next::touches).toImmutable()));
        }
        // What parts the plan within a jog parts it, too.
        for (boolean atA : new boolean[] {true, false}) {
            widest = Math.max(widest, jogs.select(jog -> jog.atA() == atA).sumOfDouble(Jog::width));
        }
    }

    /** Parts a piece past its side's end by what of the side is beside it. */
    private ImmutableList<Owned> part(Owned next, ImmutableList<Owned> beside) {
        WallPieces.Piece piece = next.piece();
        boolean atA = beside.anySatisfy(each -> each.piece().b().equals(piece.a()));
        MutableList<Reach> gaps = Lists.mutable.of(piece.reach());
        for (Owned each : beside) {
            Reach reach = each.piece().reach();
            long from = atA ? reach.bottomB() : reach.bottomA();
            long to = atA ? reach.topB() : reach.topA();
            gaps = gaps.flatCollect(gap -> gap.without(level(from, to)));
        }
        gaps.removeIf(gap -> atA ? gap.topA() <= gap.bottomA() : gap.topB() <= gap.bottomB());
        MutableList<Reach> walls = Lists.mutable.of(piece.reach());
        for (Reach gap : gaps) {
            walls = walls.flatCollect(wall -> wall.without(gap));
            jogs.add(new Jog(atA, piece.a(), piece.b()));
            Plan.Tag line = next.owner().line();
            add(
                    new WallPieces.Owner(
                            next.owner().storey(),
                            new Plan.Tag(Plan.Kind.STEP_END, line.storey(), line.number()),
                            WallPieces.Part.WALL),
                    piece.with(gap));
        }
        return walls.collect(wall -> add(owner(next, wall, beside), piece.with(wall)))
                .toImmutable();
    }

    /** Beside a wall under a floor it is one, too. */
    private static WallPieces.Owner owner(Owned next, Reach wall, ImmutableList<Owned> beside) {
        return beside.detectOptional(each -> each.owner().part() == WallPieces.Part.UNDER_FLOOR
                        && each.piece().reach().bottomA() < wall.topA()
                        && wall.bottomA() < each.piece().reach().topA())
                .map(Owned::owner)
                .orElse(next.owner());
    }

    private Owned add(WallPieces.Owner owner, WallPieces.Piece piece) {
        pieces.computeIfAbsent(owner, o -> Lists.mutable.empty()).add(piece);
        return new Owned(owner, piece);
    }

    private static Reach level(long from, long to) {
        return new Reach(from, from, to, to, 0, Lists.immutable.empty());
    }
}
