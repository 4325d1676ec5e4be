package coldseam.envelope;

import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.OptionalDouble;

/** A light well before a window in a wall that stands in the ground: a box of plastic or concrete, or an areaway; lengths in m. */
@Noun("a light well")
@Doc("A light well before a window in a wall that stands in the ground; the wall behind it faces open air.")
public record LightWell(
        @Doc("Clear, along the wall; another window may stand in the same one, without a light-well of its own.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0.3 m", atMost = "12 m", usual = "0.8 to 1.5 m")
        double width,

        @Doc("From the surface's left end, seen from outdoors, to it; in the middle of its window where it is missing.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "500 m")
        OptionalDouble left,

        @Doc("Of its floor under the window's sill.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "3 m", usual = "150 to 300 mm")
        double belowSill,

        @Doc("Clear, from the wall's outer face outwards.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0.2 m", atMost = "5 m", usual = "0.4 to 1 m")
        double projection,

        @Doc("Where water in it goes: footing drain, soakaway, sewer, or none.")
        Drain drain) {

    /** Where water in a light well goes. */
    public enum Drain {
        FOOTING_DRAIN,
        SOAKAWAY,
        SEWER,
        NONE
    }
}
