package coldseam.envelope.file.house;

import coldseam.envelope.Opening;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

@Noun("a glazing")
@Doc("Glass, spacer and frame, from which the transmittance of the whole follows (ISO 10077-1).")
record FileGlazing(
        @Doc("Thermal transmittance of the glass at its centre, as declared.")
        @Unit(Dimension.TRANSMITTANCE)
        @Bounds(atLeast = "0.3 W/(m²·K)", atMost = "6 W/(m²·K)", usual = "0.5 to 1.1 W/(m²·K)")
        double glass,

        @Doc("Thermal transmittance of the frame, as declared.")
        @Unit(Dimension.TRANSMITTANCE)
        @Bounds(atLeast = "0.5 W/(m²·K)", atMost = "7 W/(m²·K)", usual = "0.8 to 2 W/(m²·K)")
        double frame,

        @Doc("Of frame and sash together as seen from outside, on every side and between lights.")
        @Unit(Dimension.THICKNESS)
        @Bounds(atLeast = "20 mm", atMost = "300 mm", usual = "80 to 130 mm")
        double frameWidth,

        @Doc("Linear thermal transmittance of the glass edge, as declared for the spacer.")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "0.01 W/(m·K)", atMost = "0.2 W/(m·K)", usual = "0.03 to 0.08 W/(m·K)")
        OptionalDouble edge,

        @Doc("Instead of edge: metal, or improved where plastic separates the panes; for coated double or triple"
                + " glass in a frame of wood or plastic.")
        Optional<Opening.Spacer> spacer,

        @Doc("How many lights of the same size stand side by side.") @Default("1") @Bounds(atLeast = "1", atMost = "8")
        int lights) {

    FileGlazing {
        if (edge.isPresent() == spacer.isPresent()) {
            throw new BadValueException(
                    "",
                    "a glazing needs either edge or spacer",
                    edge.isPresent() ? "both" : "neither",
                    "edge: 0.035 W/(m·K), or spacer: metal, or spacer: improved",
                    edge.isPresent() ? "remove one of them" : "write one of them");
        }
    }

    /** m, that the frame takes of an opening's width or height at least. */
    double across(boolean wide) {
        return frameWidth * (wide ? lights + 1 : 2);
    }

    Opening.Glazed rating(Optional<String> source) {
        return new Opening.Glazed(
                glass,
                frame,
                frameWidth,
                edge.orElseGet(() -> spacer.orElseThrow().edge()),
                spacer,
                lights,
                source);
    }
}
