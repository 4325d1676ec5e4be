package coldseam.envelope.file.house;

import coldseam.envelope.OwnPsi;
import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Inline;
import coldseam.files.Located;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;

@Noun("an own psi value")
@Doc("A linear thermal transmittance the house brings along.")
record FileOwnPsi(
        @Inline FileSelector which,

        @Doc("Its value, in the site's dimension system.")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-5 W/(m·K)", atMost = "5 W/(m·K)")
        Located<Double> psi,

        @Doc("Where it comes from.") String source) {

    FileOwnPsi {
        SourceText.require("source", source);
    }

    OwnPsi ownPsi() {
        return new OwnPsi(which.selector(), psi.value(), source);
    }

    LoadedHouse.PlacedPsi placed() {
        return new LoadedHouse.PlacedPsi(ownPsi(), psi.place(), which.surfaces());
    }
}
