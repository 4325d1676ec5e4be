package coldseam.envelope.file.house;

import coldseam.envelope.JunctionChoice;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Inline;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Unit;
import coldseam.files.Whole;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

@Noun("a junction choice")
@Doc("A detail for junctions.")
record FileChoice(
        @Inline FileSelector which,

        @Doc("Id of a detail of the catalogue, or the path of a detail or section file beside this file.")
        @Refers("detail")
        Located<String> detail,

        @Doc("Lengths of the detail's own, by the names its file gives them, such as {lap: 60 mm}; each in the detail's"
                + " range.")
        @Default("")
        ImmutableList<Named<FileParameterValue>> parameters) {

    @Whole
    @Noun("the length of a parameter")
    @Doc("The value of a detail's own length.")
    record FileParameterValue(
            @Doc("Such as 60 mm.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "-10 m", atMost = "10 m")
            double value,

            Position place)
            implements Length {}

    /** The length of a detail's parameter. */
    interface Length {
        double value();

        Position place();
    }

    JunctionChoice choice() {
        return new JunctionChoice(which.selector(), detail.value(), lengths(parameters));
    }

    LoadedHouse.PlacedChoice placed() {
        return new LoadedHouse.PlacedChoice(choice(), detail.place(), which.surfaces(), placed(parameters));
    }

    /** Lengths of a detail with their places. */
    static ImmutableList<Named<Located<Double>>> placed(ImmutableList<? extends Named<? extends Length>> parameters) {
        return parameters.collect(each -> new Named<>(
                each.name(), new Located<>(each.value().value(), each.value().place()), each.place()));
    }

    /** Lengths of a detail, m. */
    static ImmutableMap<String, Double> lengths(ImmutableList<? extends Named<? extends Length>> parameters) {
        return parameters.toImmutableMap(Named::name, each -> each.value().value());
    }
}
