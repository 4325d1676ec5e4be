package coldseam.assemblies;

import coldseam.envelope.BridgeKind;
import coldseam.envelope.Point3;

/**
 * Direction of the heat flow through an assembly.
 *
 * <p>Source of the surface resistances: ISO 6946:2017 table 7, plane surfaces (from memory).
 */
public enum HeatFlow {
    /** Through roofs, ceilings and terraces. */
    UPWARDS(0.10),
    /** Through walls; also up to 30° from the horizontal. */
    HORIZONTAL(0.13),
    /** Through floors. */
    DOWNWARDS(0.17);

    /** The sine of 30°, up to which a heat flow counts as horizontal. */
    private static final double HORIZONTAL_UP_TO = 0.5;

    private final double interior;

    HeatFlow(double interior) {
        this.interior = interior;
    }

    /** The interior surface resistance Rsi, m²·K/W. */
    public double interiorSurfaceResistance() {
        return interior;
    }

    /** The direction in which heat leaves through a surface that looks this way. */
    public static HeatFlow through(BridgeKind.Facing facing) {
        return switch (facing) {
            case UP -> UPWARDS;
            case SIDE -> HORIZONTAL;
            case DOWN -> DOWNWARDS;
        };
    }

    /**
     * The direction in which heat leaves through a plane.
     *
     * @param outwardNormal of the plane, any length greater than zero
     * @throws IllegalArgumentException where the normal has no length
     */
    public static HeatFlow through(Point3 outwardNormal) {
        double length = Math.sqrt(outwardNormal.x() * outwardNormal.x()
                + outwardNormal.y() * outwardNormal.y()
                + outwardNormal.z() * outwardNormal.z());
        if (!(length > 0)) {
            throw new IllegalArgumentException("the outward normal of a surface has the length " + length
                    + "; allowed is more than 0. Correct the surface's points.");
        }
        double rise = outwardNormal.z() / length;
        // The allowance keeps a slope of exactly 60°, computed from sines, on the side of the walls.
        if (Math.abs(rise) <= HORIZONTAL_UP_TO + 1e-9) {
            return HORIZONTAL;
        }
        return rise > 0 ? UPWARDS : DOWNWARDS;
    }
}
