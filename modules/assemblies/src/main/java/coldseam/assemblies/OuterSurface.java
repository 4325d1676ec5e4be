package coldseam.assemblies;

import coldseam.envelope.Exposure;

/**
 * What an assembly's outer face meets.
 *
 * <p>Source: ISO 6946:2017 table 7 (from memory); for the ground ISO 13370:2017, where Rse stands in the equivalent thickness
 * (from memory).
 */
public enum OuterSurface {
    /** Open air: Rse 0.04 m²·K/W. */
    OUTDOORS,
    /** Ground: Rse 0.04 m²·K/W, as the equivalent thickness of ISO 13370 counts it. */
    GROUND,
    /** Still air of a room, a crawl space or an unheated space: Rse as large as Rsi. */
    INDOORS;

    private static final double OPEN_AIR = 0.04;

    /** The exterior surface resistance Rse, m²·K/W, for a direction of the heat flow. */
    public double resistance(HeatFlow direction) {
        return this == INDOORS ? direction.interiorSurfaceResistance() : OPEN_AIR;
    }

    /** What an exposure means for the outer face. */
    public static OuterSurface of(Exposure exposure) {
        return switch (exposure.kind()) {
            case OUTDOORS -> OUTDOORS;
            case GROUND -> GROUND;
            case CRAWL_SPACE, UNHEATED, PARTY -> INDOORS;
        };
    }
}
