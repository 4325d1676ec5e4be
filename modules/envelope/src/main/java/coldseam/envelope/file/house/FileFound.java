package coldseam.envelope.file.house;

import coldseam.envelope.Assembly;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Retrofit.Found.Window;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Named;
import coldseam.files.Nearest;
import coldseam.files.Noun;
import coldseam.files.Refers;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.Whole;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

@Noun("a house as found")
@Doc("What is there before anything is built: build-ups, windows and doors, and the details of the seams.")
record FileFound(
        @Size(min = 1, max = 200)
        @Doc(
                "The build-up that is found where each is planned, by the planned one's name, such as {brick wall: bare brick"
                        + " wall}; its own name where it stays as it is. What is left out is not known.")
        ImmutableList<Named<FileFoundAssembly>> assemblies,

        @Size(max = 400)
        @Doc("Windows and doors as they are found, by name. What is left out is not known.")
        @Default("")
        ImmutableList<Named<FileFoundOpening>> openings,

        @Size(max = 400)
        @Doc(
                "Which detail is found at which junctions; the first that matches wins. Where none does, the worst of the kind"
                        + " that fits is taken, and said to be.")
        @Default("")
        ImmutableList<FileChoice> junctions) {

    @Whole
    @Noun("a build-up as found")
    @Doc("An assembly of this file.")
    record FileFoundAssembly(
            @Doc("Its name.") @Refers("assembly") String value) {}

    @Noun("an opening as found")
    @Doc("The window or door that is there; its place and size stay.")
    record FileFoundOpening(
            @Doc("Thermal transmittance of frame and glass together.")
            @Unit(Dimension.TRANSMITTANCE)
            @Bounds(atLeast = "0.4 W/(m²·K)", atMost = "7 W/(m²·K)", usual = "2 to 6 W/(m²·K)")
            double transmittance,

            @Doc("Thermal transmittance of the frame; that of the whole where it is missing.")
            @Unit(Dimension.TRANSMITTANCE)
            @Bounds(atLeast = "0.5 W/(m²·K)", atMost = "7 W/(m²·K)", usual = "1.5 to 6 W/(m²·K)")
            OptionalDouble frameTransmittance,

            @Doc("From the old wall's outer face to the frame's; where the detail has it if it is missing.")
            @Unit(Dimension.THICKNESS)
            @Bounds(atLeast = "0 mm", atMost = "2 m")
            OptionalDouble setBack,

            @Doc("Where its thermal transmittance comes from, such as a measurement or the maker's papers.")
            Optional<String> source) {

        FileFoundOpening {
            SourceText.require("source", source);
        }

        Window window() {
            return new Window(
                    FileOpening.rating(OptionalDouble.of(transmittance), frameTransmittance, Optional.empty(), source),
                    setBack);
        }
    }

    /** Adds every name that is none of those planned. */
    void check(ImmutableList<String> planned, ImmutableList<String> windows, Faults faults) {
        unknown("a build-up as found stands under the name of the planned one", assemblies, planned, faults);
        unknown("a window or door as found stands under its name", openings, windows, faults);
    }

    private static void unknown(
            String asked, ImmutableList<? extends Named<?>> given, ImmutableList<String> known, Faults faults) {
        given.reject(each -> known.contains(each.name()))
                .forEach(each -> faults.add(
                        each.place(),
                        asked,
                        '"' + each.name() + '"',
                        known.isEmpty() ? "none: the house has none" : "one of " + Nearest.among(each.name(), known),
                        Nearest.meant(each.name(), known).orElse("correct the name")));
    }

    /**
     * @param all assemblies of the file
     * @param planned openings of the file, of which one may be a row
     */
    Retrofit.Found found(ImmutableMap<String, Assembly> all, ImmutableList<Named<FileOpening>> planned) {
        MutableMap<String, Window> windows = Maps.mutable.empty();
        openings.forEach(each -> planned.select(one -> one.name().equals(each.name()))
                .flatCollect(one -> one.value().openings(one.name()))
                .forEach(one -> windows.put(one.name(), each.value().window())));
        return new Retrofit.Found(
                assemblies.toImmutableMap(
                        Named::name, each -> all.get(each.value().value())),
                windows.toImmutable(),
                junctions.collect(FileChoice::choice));
    }
}
