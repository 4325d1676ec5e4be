package coldseam.envelope.file.house;

import coldseam.envelope.Opening;
import coldseam.envelope.file.Bounds;
import coldseam.envelope.file.Default;
import coldseam.envelope.file.Doc;
import coldseam.envelope.file.Located;
import coldseam.envelope.file.Noun;
import coldseam.envelope.file.Unit;
import coldseam.envelope.quantity.Dimension;
import java.util.OptionalDouble;

@Noun("an opening")
@Doc("A window or door.")
record FileOpening(
        @Doc("window or door.") Opening.Kind kind,

        @Doc("Name of the surface it lies in, such as ground floor south wall.")
        Located<String> surface,

        @Doc("Of the frame, outside.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "0.1 m", atMost = "20 m")
        double width,

        @Doc("Of the frame, outside.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "0.1 m", atMost = "20 m")
        double height,

        @Doc("From the surface's left end, seen from outdoors, to the opening; centred where it is missing.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "500 m")
        OptionalDouble left,

        @Doc("Its lower edge above the storey's floor.")
        @Default("0 m")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "20 m")
        double sill,

        @Doc("Thermal transmittance of frame and glass together.")
        @Unit(Dimension.TRANSMITTANCE)
        @Bounds(above = "0 W/(m²·K)", atMost = "7 W/(m²·K)")
        double transmittance,

        @Doc("Depth of the frame across the wall.")
        @Default("80 mm")
        @Unit(Dimension.THICKNESS)
        @Bounds(atLeast = "20 mm", atMost = "500 mm")
        double frameDepth,

        @Doc("Thermal transmittance of the frame; that of the whole where it is missing.")
        @Unit(Dimension.TRANSMITTANCE)
        @Bounds(above = "0 W/(m²·K)", atMost = "7 W/(m²·K)")
        OptionalDouble frameTransmittance,

        @Doc("From the wall's outer face to the frame's; in the middle of the insulation where it is missing.")
        @Unit(Dimension.THICKNESS)
        @Bounds(atLeast = "0 mm", atMost = "2 m")
        OptionalDouble setBack) {

    Opening opening(String name) {
        return new Opening(
                name,
                kind,
                surface.value(),
                width,
                height,
                left,
                sill,
                transmittance,
                frameDepth,
                frameTransmittance.orElse(transmittance),
                setBack);
    }
}
