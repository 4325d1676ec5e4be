package coldseam.envelope.file.house;

import coldseam.envelope.JunctionKind;
import coldseam.envelope.OwnPsi;
import coldseam.envelope.Selector;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Located;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

@Noun("an own psi value")
@Doc("A linear thermal transmittance the house brings along.")
record FileOwnPsi(
        @Doc("Kinds of junction meant, any of these.") @Default("")
        ImmutableSet<JunctionKind> kinds,

        @Doc("Names of surfaces or openings that must all be beside the junction.") @Default("")
        ImmutableList<Located<String>> surfaces,

        @Doc("Its value, in the site's dimension system.")
        @Unit(Dimension.LINEAR_TRANSMITTANCE)
        @Bounds(atLeast = "-5 W/(m·K)", atMost = "5 W/(m·K)")
        Located<Double> psi,

        @Doc("Where it comes from.") String source) {

    FileOwnPsi {
        FileChoice.requireSome(kinds, surfaces);
        SourceText.require("source", source);
    }

    OwnPsi ownPsi() {
        return new OwnPsi(new Selector(kinds, surfaces.collect(Located::value)), psi.value(), source);
    }

    LoadedHouse.PlacedPsi placed() {
        return new LoadedHouse.PlacedPsi(ownPsi(), psi.place(), surfaces);
    }
}
