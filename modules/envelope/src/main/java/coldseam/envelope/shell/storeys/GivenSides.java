package coldseam.envelope.shell.storeys;

import coldseam.envelope.Body;
import coldseam.envelope.House;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.Footprint;
import coldseam.envelope.shell.plan.StepZones;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.tuple.primitive.IntIntPair;
import org.eclipse.collections.impl.tuple.primitive.PrimitiveTuples;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;

/**
 * The sides of storeys as the house file gives them, before they are moved out to the faces of their walls, and how those of
 * one stack stand to another stack.
 *
 * <p>Where a wing's side stands along a wall of the house over its whole length no wall is built: the wing begins at the outer
 * face of the house's wall. Moved out by a wall's thickness, as other sides are, it would reach into the house's wall, and its
 * ends would come out beside that as surfaces some centimetres wide. So it is only where the house stands beside it in all of
 * its storeys: a wall that goes on over the house's roof stands in one plane.
 */
final class GivenSides {

    /** m, of a side's end that says what is beside it there. */
    private static final double END = 5 * StepZones.HAIR;

    private final House house;
    private final Body.FootprintLine drawn;
    private final Stacks stacks;
    /** Of each storey, as given. */
    private final ImmutableList<Footprint> footprints;

    GivenSides(House house, Body.FootprintLine line, Stacks stacks) {
        this.house = house;
        this.drawn = line;
        this.stacks = stacks;
        this.footprints = stacks.storeys().collect(storey -> Footprint.of(storey.outlines()));
    }

    /**
     * m, from the line of a side that stands along a wall of the house outwards to the outer face of that: never positive; empty
     * for any other side.
     */
    Optional<Double> outward(int storey, int side) {
        if (stacks.owners().get(storey) == 0) {
            return Optional.empty();
        }
        ImmutableList<IntIntPair> wall = inOne(storey, side);
        return IntStream.range(0, stacks.owners().get(storey))
                .filter(stack -> wall.allSatisfy(
                        each -> against(stack, each.getOne(), each.getTwo()).isPresent()))
                .mapToObj(stack -> against(stack, storey, side).orElseThrow())
                .findFirst();
    }

    /** That side and those of its stack's other storeys that are drawn over or under it, with their storeys: one wall. */
    private ImmutableList<IntIntPair> inOne(int storey, int side) {
        LineSegment own = line(storey, side);
        return Lists.immutable
                .fromStream(IntStream.range(0, stacks.count()).boxed())
                .select(k -> stacks.stack(k) == stacks.stack(storey))
                .flatCollect(k -> footprints
                        .get(k)
                        .lines()
                        .collect(Footprint.Line::side)
                        .select(i -> beside(own, line(k, i), true) > StepZones.HAIR)
                        .collect(i -> PrimitiveTuples.pair((int) k, (int) i)));
    }

    /** m, from the line of such a side to where its room begins. */
    Optional<Double> inward(int storey, int side) {
        return outward(storey, side).map(outward -> 0.0);
    }

    /** Whether a stretch of a moved side, in lattice units, lies past the ends of the given one. */
    boolean past(int storey, int side, Vertex a, Vertex b) {
        return within(storey, side, a, b).isEmpty();
    }

    /** m, by which a point of a moved side lies past the nearer end of the given one; zero beside that. */
    double past(int storey, int side, Vertex point) {
        double place = place(line(storey, side), point);
        return Math.max(0, Math.max(-place, place - line(storey, side).getLength()));
    }

    /** m, along a line to the foot of a point. */
    private static double place(LineSegment line, Vertex point) {
        return line.projectionFactor(
                        new Coordinate(point.point().x(), point.point().y()))
                * line.getLength();
    }

    /**
     * Whether a stretch of a moved side stands along or in the rooms of another storey, and not along its walls' thickness alone;
     * what lies past the ends of the given side is as what is beside it.
     */
    boolean alongRooms(int storey, int side, Vertex a, Vertex b, int other) {
        Geometry rooms = footprints.get(other).polygon().buffer(StepZones.HAIR);
        LineSegment along = within(storey, side, a, b).orElseGet(() -> end(storey, side, a));
        return along.toGeometry(rooms.getFactory()).intersection(rooms).getLength() > 2 * StepZones.HAIR;
    }

    /** m, the last of the given side before a stretch that lies past its end. */
    private LineSegment end(int storey, int side, Vertex past) {
        LineSegment line = line(storey, side);
        double share = END / line.getLength();
        return place(line, past) < line.getLength() / 2
                ? new LineSegment(line.p0, line.pointAlong(share))
                : new LineSegment(line.pointAlong(1 - share), line.p1);
    }

    /** m, what of the given side lies beside a stretch of the moved one. */
    private Optional<LineSegment> within(int storey, int side, Vertex a, Vertex b) {
        LineSegment line = line(storey, side);
        double from = Math.max(0, Math.min(place(line, a), place(line, b)));
        double to = Math.min(line.getLength(), Math.max(place(line, a), place(line, b)));
        return to - from > StepZones.HAIR
                ? Optional.of(new LineSegment(
                        line.pointAlong(from / line.getLength()), line.pointAlong(to / line.getLength())))
                : Optional.empty();
    }

    /** m, in plan. */
    private LineSegment line(int storey, int side) {
        return footprints.get(storey).line(side);
    }

    private Optional<Double> against(int stack, int storey, int side) {
        double foot = foot(storey);
        double top = top(storey);
        ImmutableList<Integer> beside = Lists.immutable
                .fromStream(IntStream.range(0, stacks.count()).boxed())
                .select(k -> stacks.owners().get(k) == stack && stacks.floor(k) < top && ends(k) > foot);
        if (beside.isEmpty()
                || stacks.floor(beside.getFirst()) > (foot + top) / 2
                || outerTop(beside.getLast()) < top
                || slopes(storey)) {
            return Optional.empty();
        }
        ImmutableList<Optional<Double>> outwards = beside.collect(k -> along(k, storey, side));
        return outwards.allSatisfy(Optional::isPresent)
                ? outwards.collect(Optional::orElseThrow).minOptional().map(outward -> -outward)
                : Optional.empty();
    }

    /** Whether a roof that slopes rises over a storey: its gable may come out over the house. */
    private boolean slopes(int storey) {
        return stacks.top(storey) && !stacks.stack(storey).roof().flatTop();
    }

    /** m, z to which a storey surely stands outside. */
    private double outerTop(int storey) {
        return slopes(storey) ? ends(storey) : top(storey);
    }

    private double ends(int storey) {
        return stacks.floor(storey) + stacks.storey(storey).height();
    }

    /** m, z of the outer face of what lies under a storey. */
    private double foot(int storey) {
        return stacks.floor(storey)
                - (stacks.lowest(storey)
                        ? Footprint.thickness(
                                house.assembly(stacks.stack(storey).base().assembly()))
                        : 0);
    }

    /** m, z of the outer face of what lies flat over a storey. */
    private double top(int storey) {
        return ends(storey)
                + (stacks.top(storey)
                        ? Footprint.beyondStructure(
                                house.assembly(stacks.stack(storey).roof().assembly()))
                        : 0);
    }

    /** m, from its line outwards to the outer face of the wall of another storey along which a side runs, however many corners lie in it. */
    private Optional<Double> along(int other, int storey, int side) {
        LineSegment own = line(storey, side);
        ImmutableList<Integer> beside = footprints
                .get(other)
                .lines()
                .collect(Footprint.Line::side)
                .select(i -> beside(own, line(other, i), false) > StepZones.HAIR);
        ImmutableList<Double> outwards = beside.collect(i -> Footprint.outward(
                        drawn,
                        house.assembly(stacks.storey(other).walls().get(i).assembly())))
                .distinct();
        boolean whole =
                beside.sumOfDouble(i -> beside(own, line(other, i), false)) >= own.getLength() - 2 * StepZones.HAIR;
        return whole && outwards.size() == 1 ? outwards.getFirstOptional() : Optional.empty();
    }

    /** m, along which a side lies on another, which runs the same way or the other. */
    private static double beside(LineSegment side, LineSegment other, boolean sameWay) {
        double start = other.projectionFactor(side.p0) * other.getLength();
        double end = other.projectionFactor(side.p1) * other.getLength();
        boolean onIt =
                Math.max(other.distancePerpendicular(side.p0), other.distancePerpendicular(side.p1)) <= StepZones.HAIR;
        return onIt && start < end == sameWay
                ? Math.min(Math.max(start, end), other.getLength()) - Math.max(Math.min(start, end), 0)
                : 0;
    }
}
