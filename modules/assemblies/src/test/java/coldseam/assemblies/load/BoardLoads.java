package coldseam.assemblies.load;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.files.quantity.Format;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What the insulating layers of a terrace or floor carry: the weight of the layers on top of them and a live load.
 *
 * <p>Framed layers are left out, their framing carries. See {@link CompressionCheck#CAUTION}.
 *
 * @param boards from the top down, each with its check
 * @param missing one sentence for each value without which a board cannot be checked
 */
public record BoardLoads(ImmutableList<Board> boards, ImmutableList<String> missing) {

    /**
     * Pa, a live load for terraces: the upper end of EN 1991-1-1's range for balconies, 2.5 to 4.0 kPa (from memory). It covers 40
     * and 60 lbf/ft² of US codes.
     */
    public static final double TERRACE_LIVE_LOAD = 4000;

    /** m/s². */
    private static final double GRAVITY = 9.80665;

    /** Which face of an assembly is on top. */
    public enum Top {
        /** Of roofs and terraces. */
        OUTER_FACE,
        /** Of floors. */
        INNER_FACE
    }

    /**
     * An insulating layer.
     *
     * @param layer of the assembly
     * @param check its stress against what it bears
     */
    public record Board(Layer layer, CompressionCheck check) {}

    /**
     * The boards of an assembly.
     *
     * @param shares of the strength that each board's material may carry for good
     * @param live Pa, zero or more, everywhere on top
     * @throws IllegalArgumentException where the live load is negative
     */
    public static BoardLoads of(Assembly assembly, Top top, Function<Material, PermanentShare> shares, double live) {
        Arguments.notNegative("the live load on an assembly", live, "Pa");
        ImmutableList<Layer> downwards =
                top == Top.INNER_FACE ? assembly.layers() : assembly.layers().toReversed();
        MutableList<Board> boards = Lists.mutable.empty();
        MutableList<String> missing = Lists.mutable.empty();
        boolean known = true;
        double weight = 0;
        // Under the last board nothing matters.
        for (Layer layer : downwards.take(downwards.detectLastIndex(BoardLoads::insulates) + 1)) {
            if (insulates(layer)) {
                if (layer.material().compressiveStrength().isEmpty()) {
                    missing.add(layer.material().name()
                            + " has no compressive strength; give its material the stress at 10 % strain");
                } else if (known) {
                    double strength = layer.material().compressiveStrength().getAsDouble();
                    boards.add(new Board(
                            layer, new CompressionCheck(strength, shares.apply(layer.material()), weight, live)));
                }
            }
            boolean weighs = layer.role() != Role.MEMBRANE && layer.air().isEmpty();
            if (weighs && layer.material().density().isEmpty()) {
                known = false;
                missing.add(Format.of(
                        "%s has no density; what lies under it cannot be checked. Give its material one",
                        layer.material().name()));
            } else if (weighs) {
                weight += layer.material().density().getAsDouble() * layer.thickness() * GRAVITY;
            }
        }
        return new BoardLoads(boards.toImmutable(), missing.toImmutable());
    }

    private static boolean insulates(Layer layer) {
        return layer.framing().isEmpty() && layer.insulates();
    }
}
