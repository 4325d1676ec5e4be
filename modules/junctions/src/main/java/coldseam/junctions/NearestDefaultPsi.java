package coldseam.junctions;

import coldseam.envelope.Assembly;
import coldseam.envelope.BridgeKind;
import coldseam.envelope.DefaultPsi;
import coldseam.envelope.DefaultPsi.WallType;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Finds the default psi that a computed junction may be set beside. */
public final class NearestDefaultPsi {

    private NearestDefaultPsi() {}

    /**
     * The row that comes nearest to a computed junction: by kind, by where the wall's insulation lies, and by whether the
     * pen line goes on unbroken.
     */
    public static Optional<DefaultPsi> of(JunctionResult result) {
        JunctionSetup setup = result.setup();
        Assembly wall = setup.kind().faces().getFirst() == BridgeKind.Facing.SIDE
                ? setup.first()
                : setup.second().orElse(setup.first());
        return wallType(wall)
                .flatMap(type -> setup.kind()
                        .defaults()
                        .detectOptional(row -> row.wall() == type
                                && row.passes() == result.penLine().unbroken()));
    }

    /** Where the insulation lies between the layers of the structure; empty where it cannot be said. */
    static Optional<WallType> wallType(Assembly wall) {
        ImmutableList<Layer> layers = wall.layers();
        int insulation = layers.detectIndex(layer -> layer.role() == Role.INSULATION);
        ImmutableList<Layer> structure = wall.structure();
        if (insulation < 0) {
            // The table's lightweight wall: 0.12 W/(m·K); bricks and concrete are no such walls.
            return structure.notEmpty()
                            && structure.allSatisfy(layer -> layer.framing().isEmpty()
                                    && layer.material().conductivity() <= 0.2)
                    ? Optional.of(WallType.LIGHT)
                    : Optional.empty();
        }
        boolean inside = layers.take(insulation).anySatisfy(NearestDefaultPsi::heavy);
        boolean outside = layers.drop(insulation + 1).anySatisfy(NearestDefaultPsi::heavy);
        if (inside && outside) {
            return Optional.of(WallType.MIDDLE);
        }
        return inside ? Optional.of(WallType.OUTSIDE) : outside ? Optional.of(WallType.INSIDE) : Optional.empty();
    }

    /** A leaf of the wall, and no plaster or render; framed leaves are no row of the table. */
    private static boolean heavy(Layer layer) {
        return (layer.role() == Role.STRUCTURE || layer.role() == Role.CLADDING)
                && layer.thickness() >= 0.08
                && layer.framing().isEmpty();
    }
}
