package coldseam.junctions.vertex;

import coldseam.envelope.CornerKind;
import coldseam.envelope.CornerKind.Side;
import coldseam.junctions.detail.CornerDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.vertex.VertexSetup.EdgeEnd;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * A corner's own detail as it lies in a vertex.
 *
 * @param detail of a corner
 * @param axes which axis of the vertex each of its surfaces stands for
 * @param named whether the house names it, so that it goes before what the sections say; else it is asked only where they leave
 *     the corner open
 */
public record CornerDetail(Detail detail, ImmutableList<Integer> axes, boolean named) {

    /** As the kind has it, and with its first two surfaces exchanged. */
    private static final ImmutableList<ImmutableList<Integer>> WAYS =
            Lists.immutable.of(Lists.immutable.of(0, 1, 2), Lists.immutable.of(1, 0, 2));

    /**
     * The first of some details of corners that is for this vertex.
     *
     * @param options others among them are passed over
     * @param named whether the house names them
     */
    public static Optional<CornerDetail> find(VertexSetup setup, ImmutableList<Detail> options, boolean named) {
        for (Detail option : options) {
            if (option.drawing() instanceof CornerDrawing drawing) {
                Optional<ImmutableList<Integer>> axes = WAYS.detectOptional(way -> isFor(drawing, setup, way));
                if (axes.isPresent()) {
                    return Optional.of(new CornerDetail(option, axes.get(), named));
                }
            }
        }
        return Optional.empty();
    }

    /** How it is painted. */
    CornerDrawing drawing() {
        return (CornerDrawing) detail.drawing();
    }

    private static boolean isFor(CornerDrawing drawing, VertexSetup setup, ImmutableList<Integer> axes) {
        CornerKind kind = drawing.kind();
        return kind.upwards() == setup.upwards()
                && kind.edges().size() == setup.edges().size()
                && rooms(kind, axes) == setup.rooms()
                && setup.edges()
                        .allSatisfy(end -> drawing.meets(end.detail())
                                && kind.edges().anySatisfy(edge -> is(edge, end, kind, axes)));
    }

    private static boolean is(CornerKind.Edge edge, EdgeEnd end, CornerKind kind, ImmutableList<Integer> axes) {
        return edge.kind() == end.setup().kind()
                && axes.get(kind.surfaces().indexOf(edge.surface())) == end.along()
                && (edge.runs() == Side.BEFORE) == end.growing();
    }

    /** The rooms' octants as a vertex counts them. */
    static int rooms(CornerKind kind, ImmutableList<Integer> axes) {
        int rooms = 0;
        for (CornerKind.Room room : kind.rooms()) {
            ImmutableList<Side> sides = Lists.immutable.of(room.first(), room.second(), room.third());
            int octant = 0;
            for (int surface = 0; surface < 3; surface++) {
                octant |= sides.get(surface) == Side.BEFORE ? 1 << axes.get(surface) : 0;
            }
            rooms |= 1 << octant;
        }
        return rooms;
    }
}
