package coldseam.junctions;

import coldseam.envelope.Assembly;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Role;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * The rows of the default psi table of ISO 14683 (2007 table A.2, 2017 annex C) that are remembered with confidence.
 *
 * <p>All values are from memory, rounded to 0.05 W/(m·K) in the table itself and deliberately on the safe side; the
 * standard's drawings were not at hand. They stand beside a computed psi as an order of magnitude and prove nothing of it.
 *
 * @param code of the row
 * @param kind of junction
 * @param wall where the wall's insulation lies
 * @param passes whether the insulation goes on unbroken past the junction
 * @param external psi, W/(m·K), external dimensions
 * @param internal psi, W/(m·K), overall internal dimensions: internal floors and partitions counted in, as computed psi is
 */
public record DefaultPsi(
        String code, JunctionKind kind, WallType wall, boolean passes, double external, double internal) {

    /** What to say beside every value. */
    public static final String CAUTION = "tabulated default, rounded to 0.05, from memory";

    /** Where a wall's insulation lies. */
    public enum WallType {
        OUTSIDE,
        MIDDLE,
        INSIDE,
        /** One material that insulates a little throughout, without an insulation layer. */
        LIGHT
    }

    private static final ImmutableList<DefaultPsi> ROWS = Lists.immutable.of(
            row("R1", JunctionKind.FLAT_ROOF_EDGE, WallType.OUTSIDE, false, 0.55, 0.75),
            row("R4", JunctionKind.FLAT_ROOF_EDGE, WallType.LIGHT, false, 0.40, 0.65),
            row("R9", JunctionKind.FLAT_ROOF_EDGE, WallType.OUTSIDE, true, -0.05, 0.15),
            row("C1", JunctionKind.OUTSIDE_CORNER, WallType.OUTSIDE, true, -0.05, 0.15),
            row("C2", JunctionKind.OUTSIDE_CORNER, WallType.MIDDLE, true, -0.10, 0.10),
            row("C4", JunctionKind.OUTSIDE_CORNER, WallType.LIGHT, true, -0.15, 0.10),
            row("C5", JunctionKind.INSIDE_CORNER, WallType.OUTSIDE, true, 0.05, -0.15),
            row("IF1", JunctionKind.INTERMEDIATE_FLOOR, WallType.OUTSIDE, true, 0.00, 0.00),
            row("IF2", JunctionKind.INTERMEDIATE_FLOOR, WallType.MIDDLE, false, 0.95, 0.95),
            row("IF3", JunctionKind.INTERMEDIATE_FLOOR, WallType.INSIDE, false, 0.90, 0.90),
            row("IF4", JunctionKind.INTERMEDIATE_FLOOR, WallType.LIGHT, false, 0.70, 0.70),
            row("IW1", JunctionKind.PARTITION, WallType.OUTSIDE, true, 0.00, 0.00),
            row("IW2", JunctionKind.PARTITION, WallType.MIDDLE, false, 0.95, 0.95),
            row("IW3", JunctionKind.PARTITION, WallType.INSIDE, false, 0.90, 0.90),
            row("GF1", JunctionKind.SLAB_EDGE, WallType.OUTSIDE, false, 0.65, 0.80),
            row("GF2", JunctionKind.SLAB_EDGE, WallType.MIDDLE, false, 0.60, 0.75));

    private static DefaultPsi row(
            String code, JunctionKind kind, WallType wall, boolean passes, double external, double internal) {
        return new DefaultPsi(code, kind, wall, passes, external, internal);
    }

    /** All rows, in the table's order. */
    public static ImmutableList<DefaultPsi> rows() {
        return ROWS;
    }

    /** psi in a dimension system, W/(m·K). */
    public double psi(DimensionSystem system) {
        return system == DimensionSystem.EXTERNAL ? external : internal;
    }

    /**
     * The row that comes nearest to a computed junction: by kind, by where the wall's insulation lies, and by whether the
     * pen line goes on unbroken.
     */
    public static Optional<DefaultPsi> beside(JunctionResult result) {
        JunctionSetup setup = result.setup();
        Assembly wall = setup.kind().first().equals("wall")
                ? setup.first()
                : setup.second().orElse(setup.first());
        return wallType(wall)
                .flatMap(type -> ROWS.detectOptional(row -> row.kind() == setup.kind()
                        && row.wall() == type
                        && row.passes() == result.penLine().unbroken()));
    }

    /** Where the insulation lies between the layers of the structure; empty where it cannot be said. */
    static Optional<WallType> wallType(Assembly wall) {
        ImmutableList<Layer> layers = wall.layers();
        int insulation = layers.detectIndex(layer -> layer.role() == Role.INSULATION);
        ImmutableList<Layer> structure = layers.select(layer -> layer.role() == Role.STRUCTURE);
        if (insulation < 0) {
            // The table's lightweight wall: 0.12 W/(m·K); bricks and concrete are no such walls.
            return structure.notEmpty()
                            && structure.allSatisfy(layer -> layer.framing().isEmpty()
                                    && layer.material().conductivity() <= 0.2)
                    ? Optional.of(WallType.LIGHT)
                    : Optional.empty();
        }
        boolean inside = layers.take(insulation).anySatisfy(DefaultPsi::heavy);
        boolean outside = layers.drop(insulation + 1).anySatisfy(DefaultPsi::heavy);
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
