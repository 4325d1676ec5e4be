package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Point2;
import coldseam.envelope.shell.fault.ShellFault;
import coldseam.envelope.shell.fault.ShellFaults;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.GroundLine;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.MutableSet;
import org.eclipse.collections.impl.factory.Sets;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * The ground beside a body by storeys: where its walls stand in it.
 *
 * <p>A cellar's walls do up to the ground. Where the ground has heights of its own, every wall does that it reaches over the
 * floor behind it: beside a slab's rim alone it is a slab's edge; along a wall it runs even from one corner of the lowest storey to the next, elsewhere as beside the nearest of
 * that storey's sides.
 *
 * <p>Where the walls of two parts of the house meet, both say how high it lies there. Drawn at lines that lie within the walls,
 * moved out with their faces, the two differ by what the ground falls in the walls' thickness; there it is the lower, and the
 * wall stands in the air for as much more. By more than that they contradict each other.
 */
final class StoreyGround {

    /** m, to which heights of the ground are taken and given, so that two of one place differ by as much. */
    private static final double AS_GIVEN = 0.01;

    private final Stacks stacks;
    private final StoreyLevels levels;
    private final ImmutableList<Part> parts;
    private final ShellFaults faults;
    private final MutableSet<Vertex> refused = Sets.mutable.empty();

    /**
     * The ground as a part of the house says it.
     *
     * @param moved m, by which the corners of that are moved out at most
     */
    private record Part(Body.Stack stack, GroundLine line, double moved) {

        boolean isOver(Part other) {
            return Vertex.height(StoreyLevels.floor(stack, 0)) >= StoreyLevels.top(other.stack);
        }

        String name() {
            return stack.name().isEmpty() ? "the main house" : "wing \"" + stack.name() + "\"";
        }
    }

    private record Near(Part part, GroundLine.Beside beside) {}

    /**
     * @param outer each storey's outer faces
     * @param faults receives where parts of the house contradict each other
     */
    StoreyGround(Stacks stacks, ImmutableList<Footprint> outer, StoreyLevels levels, ShellFaults faults) {
        this.stacks = stacks;
        this.levels = levels;
        this.faults = faults;
        this.parts = stacks.lowests()
                .collect(k -> new Part(
                        stacks.stack(k),
                        new GroundLine(stretches(stacks.stack(k).ground(), outer.get(k))),
                        moved(Footprint.of(stacks.storey(k).outlines()), outer.get(k))));
    }

    /** m, by which a footprint's corners are moved out at most. */
    private static double moved(Footprint given, Footprint outer) {
        return outer.starts()
                .collectDouble(i -> {
                    LineSegment line = given.line(outer.side(i));
                    return Math.max(
                            line.p0.distance(coordinate(outer.corners().get(i))),
                            line.p1.distance(coordinate(outer.end(i))));
                })
                .max();
    }

    private static Coordinate coordinate(Point2 point) {
        return new Coordinate(point.x(), point.y());
    }

    /** Beside a court whose corners have no heights the ground lies as beside the nearest outer side. */
    private static ImmutableList<GroundLine.Stretch> stretches(ImmutableList<Double> ground, Footprint outer) {
        MutableList<GroundLine.Stretch> stretches = Lists.mutable.empty();
        ImmutableList<Optional<Long>> heights = outer.lines().collect(line -> height(ground, line.side()));
        for (int i = 0; i < outer.corners().size(); i++) {
            Optional<Long> from = heights.get(i);
            Optional<Long> to = heights.get(outer.next().get(i));
            if (from.isPresent() && to.isPresent()) {
                stretches.add(new GroundLine.Stretch(
                        Vertex.inPlan(outer.corners().get(i)), Vertex.inPlan(outer.end(i)), from.get(), to.get()));
            }
        }
        return stretches.toImmutable();
    }

    private static Optional<Long> height(ImmutableList<Double> ground, int corner) {
        return ground.isEmpty()
                ? Optional.of(0L)
                : corner < ground.size() ? Optional.of(Vertex.height(ground.get(corner))) : Optional.empty();
    }

    /** z of the ground beside a point of the plan. */
    public long at(Vertex point) {
        return near(point).collectLong(each -> each.beside().height()).min();
    }

    /** What the nearest say; what stands on another part of the house does not stand in its ground. */
    private ImmutableList<Near> near(Vertex point) {
        ImmutableList<Near> all =
                parts.collect(part -> new Near(part, part.line().beside(point)));
        ImmutableList<GroundLine.Beside> besides = all.collect(Near::beside);
        ImmutableList<Near> nearest = all.select(each -> each.beside().nearest(besides));
        return nearest.reject(each -> nearest.anySatisfy(other -> each.part().isOver(other.part())));
    }

    /** Refuses two heights of one place on the walls of two parts of the house, where one of them reaches over the foot of a wall there. */
    private void contradicts(Vertex point, long foot) {
        ImmutableList<Near> near = near(point).select(each -> each.beside().on());
        if (near.size() < 2) {
            return;
        }
        Near low = near.minBy(each -> each.beside().height());
        Near high = near.maxBy(each -> each.beside().height());
        double allowed = AS_GIVEN
                + (low.beside().stretch().slope() + high.beside().stretch().slope())
                        * (low.part().moved() + high.part().moved());
        double apart = Vertex.metres(high.beside().height() - low.beside().height());
        if (high.beside().height() > foot && apart > allowed && refused.add(point.at(0))) {
            Near last = near.maxBy(each -> stacks.all().indexOf(each.part().stack()));
            faults.add(
                    ShellFault.Part.BODY,
                    last.part().stack().name(),
                    "Ground: where %s and %s meet, at [%.3f m, %.3f m], it lies at %.3f m by the one and at %.3f m by the other;"
                            + " allowed: at most %.3f m apart, by what it falls in their walls' thickness and a centimetre. Give"
                            + " both one height there in their key ground, with a corner of each at that place if need be; a"
                            + " part without the key has level ground at 0 m.",
                    low.part().name(),
                    high.part().name(),
                    Vertex.metres(point.x()),
                    Vertex.metres(point.y()),
                    Vertex.metres(low.beside().height()),
                    Vertex.metres(high.beside().height()),
                    allowed);
        }
    }

    /**
     * Whether a piece of wall stands in the ground beside it.
     *
     * @param lowest the lowest storey of what is heated behind it
     */
    boolean reaches(Body.Wall wall, int lowest, WallPieces.Piece piece) {
        Body.Stack stack = stacks.stack(lowest);
        boolean cellar = stacks.lowest(lowest) && stack.base().kind() == Body.Base.Kind.HEATED_CELLAR;
        boolean stands = cellar || stack.ground().notEmpty();
        if (!stands || wall.exposure().kind() != Exposure.Kind.OUTDOORS) {
            return false;
        }
        long floor = levels.floors().get(lowest);
        contradicts(piece.a(), Math.max(floor, piece.reach().bottomA()));
        contradicts(piece.b(), Math.max(floor, piece.reach().bottomB()));
        return Math.max(at(piece.a()), at(piece.b())) > floor;
    }
}
