package coldseam.envelope;

import java.util.OptionalDouble;

/**
 * A light well before a window in a wall that stands in the ground: a box of plastic or concrete, or an areaway.
 *
 * @param width m, clear, along the wall
 * @param left m from the surface's left end seen from outdoors to it; in the middle of its window where empty
 * @param belowSill m, of its floor under its window's sill
 * @param projection m, clear, from the wall's outer face outwards
 * @param drain where water in it goes
 */
public record LightWell(double width, OptionalDouble left, double belowSill, double projection, Drain drain) {

    /** Where water in a light well goes. */
    public enum Drain {
        FOOTING_DRAIN,
        SOAKAWAY,
        SEWER,
        NONE
    }
}
