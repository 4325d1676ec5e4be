package coldseam.envelope.file.house;

import coldseam.envelope.Body;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Located;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A dormer: measured to its outer faces. */
@Noun("a dormer")
@Doc("A dormer on one slope of the roof, or a row of them, measured to its outer faces.")
record FileDormer(
        @Doc("gabled: two slopes and a ridge; shed: one slope.")
        Form form,

        @Doc("The side of the top storey over whose slope it stands: south, or side 1.")
        Located<String> side,

        @Doc("From its left end, seen from outdoors, to its right.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0.5 m", atMost = "100 m")
        double width,

        @Doc("Height of its front over the slope there, to its own eaves.")
        @Unit(Dimension.LENGTH)
        @Bounds(above = "0 m", atMost = "10 m")
        double height,

        @Doc("Pitch of its own roof: of a shed less than that of the slope it stands on.")
        @Unit(Dimension.ANGLE)
        @Bounds(atLeast = "1 °", atMost = "75 °")
        double pitch,

        @Doc("Assembly of its front and its cheeks.") @Refers("assembly")
        String walls,

        @Doc("Assembly of its roof; the roof's own where it is missing.") @Refers("assembly")
        Optional<String> assembly,

        @Doc("From the outer face of the wall below to its front; zero where both are one face.")
        @Default("0 m")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "50 m")
        double setBack,

        @Doc("From the left end of the wall below, seen from outdoors; in its middle where it is missing.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "500 m")
        OptionalDouble left,

        @Doc("How many of them stand in a row; they are numbered: NAME 1, NAME 2 from the left.")
        @Default("1")
        @Bounds(atLeast = "1", atMost = "20")
        int count,

        @Doc(
                "In a row, from one's left end to the next one's; left is then the first one's, and without it the row stands in the middle.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0.5 m", atMost = "100 m")
        OptionalDouble spacing,

        Position place) {

    /** m; nearer to the wall below a front is meant to stand in its face. */
    private static final double NEAREST = 0.05;

    FileDormer {
        if (count > 1 != spacing.isPresent()) {
            throw new BadValueException(
                    count > 1 ? "count" : "spacing",
                    "dormers in a row have a count and a spacing",
                    count > 1 ? count + " without spacing" : "spacing without count",
                    "both, or neither",
                    count > 1 ? "add it: spacing: 2.5 m" : "add count, or remove the key");
        }
        if (spacing.isPresent() && spacing.getAsDouble() < width) {
            throw new BadValueException(
                    "spacing",
                    "dormers in a row stand beside one another",
                    Phrase.of(spacing.getAsDouble(), Dimension.LENGTH),
                    Phrase.of("more than the width, ").and(width, Dimension.LENGTH),
                    "set them further apart");
        }
        if (setBack > 0 && setBack < NEAREST) {
            throw new BadValueException(
                    "setBack",
                    "a dormer stands in the face of the wall below or back from it",
                    setBack * 1000 + " mm",
                    "0 m, or at least 50 mm",
                    "remove the key, or set it further back");
        }
    }

    /** Forms of a dormer. */
    enum Form {
        GABLED,
        SHED
    }

    /** What it, or each one of its row, is called. */
    ImmutableList<String> names(String name) {
        return count == 1
                ? Lists.immutable.of(name)
                : Lists.immutable.fromStream(IntStream.rangeClosed(1, count).mapToObj(i -> name + " " + i));
    }

    ImmutableList<Body.Dormer> dormers(String name, StoreyOutlines outlines, String roof) {
        int index = outlines.of(side.value()).getFirst();
        return names(name).collectWithIndex((each, i) -> {
            double step = spacing.orElse(0);
            return new Body.Dormer(
                    each,
                    outlines.turned(index),
                    form == Form.GABLED,
                    left.isPresent() ? OptionalDouble.of(left.getAsDouble() + i * step) : left,
                    (i - (count - 1) / 2.0) * step,
                    width,
                    setBack,
                    height,
                    pitch,
                    walls,
                    assembly.orElse(roof));
        });
    }
}
