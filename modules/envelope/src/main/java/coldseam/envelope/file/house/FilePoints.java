package coldseam.envelope.file.house;

import coldseam.envelope.PointBridges;
import coldseam.envelope.PointKind;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Unit;
import coldseam.files.Whole;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

@Noun("a set of points")
@Doc("Like things that go through the insulation of a surface: posts, brackets, pipes, fasteners.")
record FilePoints(
        @Doc("Name of the surface they go through, such as ground floor south wall.")
        Located<String> surface,

        @Doc("Id of a point detail of the catalogue, or the path of a point file beside this file.")
        @Refers("point detail")
        Optional<Located<String>> detail,

        @Doc("Their kind, where no detail is chosen yet; the worst option then stands in.")
        Optional<PointKind> kind,

        @Doc("How many there are.") @Bounds(atLeast = "1", atMost = "100000")
        OptionalInt number,

        @Doc("How many on each area of the surface.")
        @Unit(Dimension.PER_AREA)
        @Bounds(atLeast = "0.5 per m²", atMost = "25 per m²", usual = "4 to 12 per m²")
        OptionalDouble perArea,

        @Doc("Largest distance between neighbours of a row, which has one at each end.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "20 mm", atMost = "12 m", usual = "0.3 to 3 m")
        OptionalDouble spacing,

        @Doc("Length of the row.") @Unit(Dimension.LENGTH) @Bounds(above = "0 m", atMost = "1000 m")
        OptionalDouble length,

        @Doc("Name of a surface or opening beside this surface: the row is as long as the edges they share.")
        Optional<Located<String>> along,

        @Doc("Lengths of the detail that are other here, by their names.") @Default("")
        ImmutableList<Named<FileLength>> parameters) {

    @Whole
    @Noun("a parameter")
    @Doc("A length.")
    record FileLength(
            @Doc("Its value.") @Unit(Dimension.LENGTH) @Bounds(atLeast = "0 mm", atMost = "100 m")
            double value,

            Position place)
            implements FileChoice.Length {}

    FilePoints {
        if (detail.isPresent() == kind.isPresent()) {
            throw new BadValueException(
                    "",
                    "points have a detail, or a kind where none is chosen yet",
                    detail.isPresent() ? "both" : "neither",
                    detail.isPresent() ? "remove kind" : "add detail; coldseam catalogue --points lists them");
        }
        ImmutableList<String> counts = counts(number, perArea, spacing);
        if (counts.size() != 1) {
            throw new BadValueException(
                    "",
                    "points are counted in one way",
                    counts.isEmpty() ? "none" : counts.makeString(" and "),
                    "number: 4, or per-area: 6 per m², or spacing: 600 mm with along or length",
                    counts.isEmpty() ? "add one of them" : "remove all but one of them");
        }
        if (spacing.isPresent() && length.isPresent() == along.isPresent()) {
            throw new BadValueException(
                    "spacing",
                    "points in a row need its length, or the surface along which it runs",
                    length.isPresent() ? "both" : "neither",
                    length.isPresent() ? "remove one of them" : "add length: 4 m, or along: the neighbour's name");
        }
        if (spacing.isEmpty() && (length.isPresent() || along.isPresent())) {
            throw new BadValueException(
                    length.isPresent() ? "length" : "along",
                    "only points in a row have the keys length and along",
                    counts.getFirst(),
                    "remove it, or count the points by spacing");
        }
    }

    private static ImmutableList<String> counts(OptionalInt number, OptionalDouble perArea, OptionalDouble spacing) {
        return Lists.immutable
                .of(number.isPresent() ? "number" : "", perArea.isPresent() ? "per-area" : "")
                .newWith(spacing.isPresent() ? "spacing" : "")
                .reject(String::isEmpty);
    }

    PointBridges points(String name) {
        return new PointBridges(
                name, surface.value(), kind, detail.map(Located::value), count(), FileChoice.lengths(parameters));
    }

    private PointBridges.Count count() {
        if (number.isPresent()) {
            return new PointBridges.Count.Number(number.getAsInt());
        }
        return perArea.isPresent()
                ? new PointBridges.Count.PerArea(perArea.getAsDouble())
                : new PointBridges.Count.InRow(spacing.getAsDouble(), length, along.map(Located::value));
    }

    LoadedHouse.PlacedPoints placed(Named<?> row) {
        return new LoadedHouse.PlacedPoints(
                points(row.name()),
                row.place(),
                surface.place(),
                detail.map(Located::place).orElse(row.place()),
                along.map(Located::place).orElse(row.place()),
                parameters.collect(each -> new Named<>(each.name(), each.value().value(), each.place())));
    }
}
