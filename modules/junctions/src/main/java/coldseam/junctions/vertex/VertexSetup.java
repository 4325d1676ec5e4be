package coldseam.junctions.vertex;

import coldseam.envelope.Exposure;
import coldseam.envelope.KindForm;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Everything of a house that a vertex depends on: the edges that meet there at right angles, each with its detail. Two
 * vertices with equal setups have equal results.
 *
 * <p>There are three axes, 0, 1 and 2, each the outward normal of a surface (or, where a floor bears in, the way up); the
 * inner faces meet at the origin, where walls step indoors from storey to storey those of the lower. Axis 2 is upright.
 *
 * @param rooms which of the eight octants are rooms: bit a + 2b + 4c, where a, b and c are 1 on the side of growing
 *     coordinates of axes 0, 1 and 2
 * @param edges at least three
 * @param upwards whether axis 2 points up
 * @param corner a detail of its own; empty where there is none for it
 */
public record VertexSetup(int rooms, ImmutableList<EdgeEnd> edges, boolean upwards, Optional<CornerDetail> corner) {

    /** Without a detail of its own. */
    public VertexSetup(int rooms, ImmutableList<EdgeEnd> edges, boolean upwards) {
        this(rooms, edges, upwards, Optional.empty());
    }

    /** The same with a detail of its own. */
    public VertexSetup with(Optional<CornerDetail> own) {
        return new VertexSetup(rooms, edges, upwards, own);
    }

    /**
     * An edge that ends in the vertex.
     *
     * @param along the axis along which it runs
     * @param growing whether it runs from the vertex towards growing coordinates
     * @param first the axis that is the outward normal of its detail's first band
     * @param second that of the second band; or the way from a thing's near face to its far one; or, where bands go on from one
     *     another, the way from the first into the second
     * @param detail that closes it
     * @param setup what the detail is laid on, at an angle of 90° or 270°; of 180° where bands go on from one another
     */
    public record EdgeEnd(int along, boolean growing, int first, int second, Detail detail, JunctionSetup setup) {

        /** Whether its bands go on from one another in one plane. */
        boolean inPlane() {
            return setup.kind().form().meeting() == KindForm.Meeting.END_TO_END;
        }
    }

    /** Whether an octant is a room; each side is 0 or 1, 1 where the coordinate of that axis grows. */
    public boolean room(int a, int b, int c) {
        return room(a + 2 * b + 4 * c);
    }

    /** Whether an octant is a room, by its bit among {@link #rooms}. */
    boolean room(int octant) {
        return (rooms >> octant & 1) == 1;
    }

    /** Whether the surface with an axis for its normal reaches into the quadrant between two sides of the others. */
    public boolean surface(int axis, int side, int otherSide) {
        int[] at = new int[3];
        at[(axis + 1) % 3] = side;
        at[(axis + 2) % 3] = otherSide;
        boolean inside = room(at[0], at[1], at[2]);
        at[axis] = 1;
        return inside != room(at[0], at[1], at[2]);
    }

    /** Whether an upright axis' surface is a party wall, behind which a neighbour's house goes on. */
    boolean party(int axis) {
        return axis < 2
                && edges.anySatisfy(
                        end -> end.first() == axis && isParty(end.setup().firstExposure())
                                || end.second() == axis && isParty(end.setup().secondExposure()));
    }

    private static boolean isParty(Exposure exposure) {
        return exposure.kind() == Exposure.Kind.PARTY;
    }

    /** Whether soil is drawn in it. */
    boolean onGround() {
        return edges.anySatisfy(end -> end.setup().ground().isPresent());
    }

    /** Whether it lies on or in the ground, whose surfaces lose their heat by ISO 13370, corners and all. */
    public boolean besideGround() {
        return edges.anySatisfy(end -> end.setup().ground().isPresent()
                || end.setup().firstExposure().kind() == Exposure.Kind.GROUND
                || end.setup().secondExposure().kind() == Exposure.Kind.GROUND);
    }

    /**
     * Whether it adds something of its own to the heat loss: not beside the ground; nor where the layers of a wall change in its
     * plane, for then no one corner is where lengths end.
     */
    boolean countsHeat() {
        return !besideGround() && edges.noneSatisfy(EdgeEnd::inPlane);
    }

    /** °C. */
    public double indoorTemperature() {
        return edges.getFirst().setup().indoorTemperature();
    }

    /** °C. */
    public double outdoorTemperature() {
        return edges.getFirst().setup().outdoorTemperature();
    }
}
