package coldseam.envelope;

import java.util.OptionalDouble;

/**
 * A window or door.
 *
 * @param name unique
 * @param kind window or door
 * @param surface name of the surface it lies in
 * @param width m
 * @param height m
 * @param left m from the surface's left end seen from outdoors to the opening; centred where empty
 * @param sill m above the storey's floor
 * @param transmittance W/(m²·K), of frame and glass together
 * @param frameDepth m, of the frame across the wall
 * @param frameTransmittance W/(m²·K), of the frame
 * @param setBack m, from the wall's outer face to the frame's outer face; in the middle of the insulation where empty
 */
public record Opening(
        String name,
        Kind kind,
        String surface,
        double width,
        double height,
        OptionalDouble left,
        double sill,
        double transmittance,
        double frameDepth,
        double frameTransmittance,
        OptionalDouble setBack) {

    /** Kinds of opening. */
    public enum Kind {
        WINDOW,
        DOOR
    }
}
