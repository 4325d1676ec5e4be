package coldseam.envelope.file.house;

import coldseam.envelope.Alternatives.Change;
import coldseam.envelope.Opening;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Inline;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.SelfChecking;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("the part of alternatives")
@Doc("What might be built otherwise, compared by \"coldseam compare\"; each decision by a name of its own.")
record FileAlternatives(
        @Size(max = 60) @Doc("Other details for junctions, each decision by a name.") @Default("")
        ImmutableList<Named<OfJunctions>> junctions,

        @Size(max = 20) @Doc("Other build-ups, by the name of the assembly they would replace.") @Default("")
        ImmutableList<Named<OfAssembly>> assemblies,

        @Size(max = 20) @Doc("Other windows and doors, each decision by a name.") @Default("")
        ImmutableList<Named<OfOpenings>> openings,

        @Size(max = 60) @Doc("Other details for points, by the name of the set.") @Default("")
        ImmutableList<Named<OfPoints>> points) {

    /** One decision or option has this many at most. */
    private static final int MOST_OPTIONS = 12;

    @Noun("a decision about junctions")
    @Doc("Other details for some junctions.")
    record OfJunctions(
            @Inline FileSelector which,

            @Doc(
                    "Cost of the detail that is described, such as 35 EUR/m; without it the options' costs are extra costs.")
            Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Size(min = 1, max = MOST_OPTIONS) @Doc("The other details.")
            ImmutableList<DetailOption> options)
            implements Decides<DetailOption>, PerMetre {}

    @Noun("another detail")
    @Doc("A detail that might be chosen.")
    record DetailOption(
            @Doc("Id of a detail of the catalogue, or the path of a detail or section file beside this file.")
            @Refers("detail")
            Located<String> detail,

            @Doc("Lengths of the detail's own, by the names its file gives them.") @Default("")
            ImmutableList<Named<FileChoice.FileParameterValue>> parameters,

            @Doc("Its name in tables; the detail's id and its lengths where it is missing.")
            Optional<String> name,

            @Doc(
                    "For each length of junction, such as 35 EUR/m; the price of the detail under prices where it is missing.")
            Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Doc("What else speaks for or against it.") @Default("")
            String remark)
            implements OtherDetail, PerMetre {}

    @Noun("a decision about an assembly")
    @Doc("Other build-ups in the place of an assembly.")
    record OfAssembly(
            @Doc("Cost of what is described, such as 90 EUR/m²; without it the options' costs are extra costs.")
            Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Size(min = 1, max = MOST_OPTIONS) @Doc("The other build-ups.")
            ImmutableList<BuildUpOption> options)
            implements Decides<BuildUpOption>, PerSquareMetre {}

    @Noun("another build-up")
    @Doc("Another thickness of one layer, or another assembly of this file.")
    record BuildUpOption(
            @Doc("Other thickness of the layer that controls heat, or of the layer named.")
            @Unit(Dimension.THICKNESS)
            @Bounds(above = "0 mm", atMost = "2 m")
            OptionalDouble thickness,

            @Doc("Material of the layer whose thickness is meant; the layer that controls heat where it is missing.")
            Optional<Located<String>> layer,

            @Doc("Instead of thickness: name of an assembly of this file that takes its place.") @Refers("assembly")
            Optional<Located<String>> assembly,

            @Doc("Its name in tables.") Optional<String> name,

            @Doc("For each area of its surfaces, such as 90 EUR/m².")
            Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Doc("What else speaks for or against it.") @Default("")
            String remark,

            Position place)
            implements Choosable, PerSquareMetre {

        @Override
        public void check(Faults faults) {
            price().check(faults);
            if (thickness.isPresent() == assembly.isPresent()) {
                faults.add(
                        place,
                        "another build-up is another thickness, or another assembly",
                        assembly.isPresent() ? "both" : "neither",
                        "thickness: 240 mm, or assembly: a name",
                        assembly.isPresent() ? "remove one of them" : "write one of them");
            }
            if (layer.isPresent() && thickness.isEmpty()) {
                faults.add(
                        layer.get().place(),
                        "layer says whose thickness is meant",
                        "layer without thickness",
                        "add thickness, or remove layer");
            }
        }

        @Override
        public String title() {
            return name.or(() -> assembly.map(Located::value))
                    .orElseGet(() -> layer.map(each -> each.value() + " ").orElse("")
                            + UnitSystem.SI.format(thickness.orElseThrow(), Dimension.THICKNESS));
        }
    }

    @Noun("a decision about openings")
    @Doc("Other windows or doors in the places of some.")
    record OfOpenings(
            @Doc("Names of the windows and doors that are decided together.")
            @Size(min = 1, max = 400)
            @Refers("opening")
            ImmutableList<String> openings,

            @Doc("Cost of what is described, such as 480 EUR/m²; without it the options' costs are extra costs.")
            Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Size(min = 1, max = MOST_OPTIONS) @Doc("The others.")
            ImmutableList<OpeningOption> options)
            implements Decides<OpeningOption>, PerSquareMetre {}

    @Noun("another opening")
    @Doc("A window or door that might be chosen; its size stays.")
    record OpeningOption(
            @Doc("Its name in tables.") String name,

            @Doc("Thermal transmittance of frame and glass together, as declared; or give glazing.")
            @Unit(Dimension.TRANSMITTANCE)
            @Bounds(atLeast = "0.1 W/(m²·K)", atMost = "7 W/(m²·K)", usual = "0.7 to 2 W/(m²·K)")
            OptionalDouble transmittance,

            @Doc("Thermal transmittance of the frame; that of the whole where it is missing.")
            @Unit(Dimension.TRANSMITTANCE)
            @Bounds(atLeast = "0.5 W/(m²·K)", atMost = "7 W/(m²·K)", usual = "0.8 to 2 W/(m²·K)")
            OptionalDouble frameTransmittance,

            @Doc("Instead of transmittance: what it follows from.")
            Optional<FileGlazing> glazing,

            @Doc("Where its thermal transmittance is declared; source is where its cost comes from.")
            Optional<String> declared,

            @Doc("Depth of the frame across the wall; as described where it is missing.")
            @Unit(Dimension.THICKNESS)
            @Bounds(atLeast = "20 mm", atMost = "300 mm", usual = "60 to 120 mm")
            OptionalDouble frameDepth,

            @Doc("From the wall's outer face to the frame's; as described where it is missing.")
            @Unit(Dimension.THICKNESS)
            @Bounds(atLeast = "0 mm", atMost = "2 m")
            OptionalDouble setBack,

            @Doc("For each area of window, such as 480 EUR/m².")
            Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Doc("What else speaks for or against it.") @Default("")
            String remark,

            Position place)
            implements Choosable, PerSquareMetre {

        OpeningOption {
            FileOpening.requireRating(transmittance, frameTransmittance, glazing);
            SourceText.require("declared", declared);
        }

        @Override
        public String title() {
            return name;
        }

        Change change() {
            return new Change.Windows(
                    FileOpening.rating(transmittance, frameTransmittance, glazing, declared), frameDepth, setBack);
        }

        /** Adds the fault of a frame that leaves no glass in an opening, or of a window that loses less than any. */
        void fit(Opening opening, Faults faults) {
            try {
                FileOpening.least(opening.kind(), transmittance);
                glazing.ifPresent(each -> FileOpening.room(each, opening.width(), opening.height()));
            } catch (BadValueException bad) {
                faults.add(bad.at(place));
            }
        }
    }

    @Noun("a decision about points")
    @Doc("Other details for a set of points.")
    record OfPoints(
            @Doc(
                    "Cost of the detail that is described, such as 85 EUR each; without it the options' costs are extra costs.")
            Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Size(min = 1, max = MOST_OPTIONS) @Doc("The other details.")
            ImmutableList<PointOption> options)
            implements Decides<PointOption>, PerPiece {}

    @Noun("another point detail")
    @Doc("A point detail that might be chosen.")
    record PointOption(
            @Doc("Id of a point detail of the catalogue, or the path of a point file beside this file.")
            @Refers("point detail")
            Located<String> detail,

            @Doc("Lengths of the detail that are other here, by their names.") @Default("")
            ImmutableList<Named<FilePoints.FileLength>> parameters,

            @Doc("Its name in tables; the detail's id and its lengths where it is missing.")
            Optional<String> name,

            @Doc("For each, such as 85 EUR each.") Optional<Located<String>> cost,

            @Doc("Where the cost comes from.") Optional<String> source,

            @Doc("What else speaks for or against it.") @Default("")
            String remark)
            implements OtherDetail, PerPiece {}

    /** What has a cost. */
    interface Priced extends SelfChecking {

        Optional<Located<String>> cost();

        Optional<String> source();

        PriceRange per();

        default FileCost price() {
            return new FileCost(per(), cost(), source());
        }

        @Override
        default void check(Faults faults) {
            price().check(faults);
        }
    }

    /** What costs so much for each length. */
    interface PerMetre extends Priced {
        @Override
        default PriceRange per() {
            return PriceRange.METRE;
        }
    }

    /** What costs so much for each area. */
    interface PerSquareMetre extends Priced {
        @Override
        default PriceRange per() {
            return PriceRange.SQUARE_METRE;
        }
    }

    /** What costs so much for each piece. */
    interface PerPiece extends Priced {
        @Override
        default PriceRange per() {
            return PriceRange.PIECE;
        }
    }

    /** An option; its cost is that of building it. */
    interface Choosable extends Priced {

        /** Its name in tables. */
        String title();

        String remark();

        Position place();
    }

    /** Another detail of a junction or a point. */
    interface OtherDetail extends Choosable {

        Located<String> detail();

        ImmutableList<? extends Named<? extends FileChoice.Length>> parameters();

        Optional<String> name();

        @Override
        default String title() {
            return name().orElseGet(() -> Lists.immutable
                    .of(detail().value())
                    .newWithAll(parameters()
                            .collect(each -> each.name() + " "
                                    + UnitSystem.SI.format(each.value().value(), Dimension.THICKNESS)))
                    .makeString(", "));
        }

        @Override
        default Position place() {
            return detail().place();
        }

        default Change change() {
            return new Change.Detail(detail().value(), FileChoice.lengths(parameters()));
        }
    }

    /** A decision among options; its cost is that of what is described. */
    interface Decides<O extends Choosable> extends Priced {
        ImmutableList<O> options();
    }

    /** In the file's order. */
    ImmutableList<Named<? extends Decides<?>>> decisions() {
        return Lists.immutable
                .<Named<? extends Decides<?>>>withAll(junctions)
                .newWithAll(assemblies)
                .newWithAll(openings)
                .newWithAll(points);
    }

    /** Every cost that is written somewhere in it. */
    ImmutableList<FileCost> costs() {
        return decisions()
                .flatCollect(each -> each.value()
                        .options()
                        .<FileCost>collect(Priced::price)
                        .newWith(each.value().price()))
                .select(each -> each.cost().isPresent());
    }

    /** Of the costs; empty where there is none that can be read. */
    String currency() {
        return costs().flatCollect(each -> each.currency().stream().toList())
                .getFirstOptional()
                .map(Located::value)
                .orElse("");
    }

    /** Every decision's name with its place. */
    ImmutableList<Located<String>> names() {
        return decisions().collect(each -> new Located<>(each.name(), each.place()));
    }
}
