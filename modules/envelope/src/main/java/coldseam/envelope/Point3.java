package coldseam.envelope;

import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Positional;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;

/** A point in space, m. */
@Positional
@Noun("a point in space")
@Doc("A point in space.")
public record Point3(
        @Doc("East.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "-1000 m", atMost = "1000 m")
        double x,

        @Doc("North.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "-1000 m", atMost = "1000 m")
        double y,

        @Doc("Up.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "-1000 m", atMost = "1000 m")
        double z) {}
