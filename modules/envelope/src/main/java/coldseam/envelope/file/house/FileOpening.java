package coldseam.envelope.file.house;

import coldseam.envelope.LightWell;
import coldseam.envelope.Opening;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Located;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.list.primitive.IntInterval;

@Noun("an opening")
@Doc("A window or door.")
record FileOpening(
        @Doc("window or door.") Opening.Kind kind,

        @Doc("Name of the surface it lies in, such as ground floor south wall.")
        Located<String> surface,

        @Doc("Of the frame, outside.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0.2 m", atMost = "12 m", usual = "0.4 to 3 m")
        double width,

        @Doc("Of the frame, outside.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0.2 m", atMost = "8 m", usual = "0.4 to 3 m")
        double height,

        @Doc("From the surface's left end, seen from outdoors, to the opening; centred where it is missing.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "500 m")
        OptionalDouble left,

        @Doc(
                "Its lower edge above the storey's floor, measured upright; asked for in a gable that begins above that floor; in a ceiling or flat roof from its lower or southern end, in the middle where left out.")
        @Default("0 m")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "20 m")
        double sill,

        @Doc("Thermal transmittance of frame and glass together, as declared; or give glazing.")
        @Unit(Dimension.TRANSMITTANCE)
        @Bounds(
                atLeast = "0.1 W/(m²·K)",
                atMost = "7 W/(m²·K)",
                usual = "triple glass 0.7 to 1.0, double glass 1.1 to 1.6, single glass 5, doors 0.8 to 2, insulated"
                        + " hatches 0.1 to 0.5 W/(m²·K)")
        OptionalDouble transmittance,

        @Doc("Instead of transmittance: what it follows from.")
        Optional<FileGlazing> glazing,

        @Doc("Where transmittance, or what glazing has, is declared: a product's declaration, a test or a person.")
        Optional<String> source,

        @Doc("Depth of the frame across the wall.")
        @Default("80 mm")
        @Unit(Dimension.THICKNESS)
        @Bounds(atLeast = "20 mm", atMost = "300 mm", usual = "60 to 120 mm")
        double frameDepth,

        @Doc("Thermal transmittance of the frame; that of the whole where it is missing.")
        @Unit(Dimension.TRANSMITTANCE)
        @Bounds(atLeast = "0.5 W/(m²·K)", atMost = "7 W/(m²·K)", usual = "0.8 to 2 W/(m²·K)")
        OptionalDouble frameTransmittance,

        @Doc("From the wall's outer face to the frame's; in the middle of the insulation where it is missing.")
        @Unit(Dimension.THICKNESS)
        @Bounds(atLeast = "0 mm", atMost = "2 m")
        OptionalDouble setBack,

        @Doc("Whether a roller shutter's box sits over it, in the place of its head.") @Default("false")
        boolean shutterBox,

        @Doc(
                "What carries the masonry over it: concrete, as where the key is left out; steel, drawn solid, which loses more than beams with brick between; timber; or arch, of what the wall is of.")
        Optional<Opening.Lintel> lintel,

        @Doc("The light well before a window in a wall that stands in the ground.")
        Optional<LightWell> lightWell,

        @Doc("How many of the same size stand in a row; they are numbered from the left.")
        @Default("1")
        @Bounds(atLeast = "1", atMost = "50")
        int count,

        @Doc("Clear distance between those in a row.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "0 m", atMost = "100 m")
        OptionalDouble spacing) {

    /** m; hatches and doors in knee walls are as small (judgement). */
    private static final double LEAST_DOOR = 0.5;

    /** W/(m²·K); the best panes there are, four with gas between them, in no frame (judgement). */
    private static final double LEAST_WINDOW = 0.4;

    FileOpening {
        least(kind, transmittance);
        if (kind == Opening.Kind.DOOR && Math.min(width, height) < LEAST_DOOR) {
            throw new BadValueException(
                    width < LEAST_DOOR ? "width" : "height",
                    "somebody can go through a door",
                    Phrase.of(Math.min(width, height), Dimension.LENGTH),
                    Phrase.of("at least ")
                            .and(LEAST_DOOR, Dimension.LENGTH)
                            .and("; usual: ")
                            .and("0.8", 0.8, Dimension.LENGTH)
                            .and(" to ")
                            .and("1.2 m", 1.2, Dimension.LENGTH)
                            .and(" by ")
                            .and("2", 2, Dimension.LENGTH)
                            .and(" to ")
                            .and("2.4 m", 2.4, Dimension.LENGTH),
                    "correct it, or write kind: window");
        }
        boolean row = count > 1;
        if (row && (spacing.isEmpty() || left.isEmpty())) {
            throw new BadValueException(
                    "count",
                    "openings in a row need the keys left and spacing",
                    "count: " + count,
                    "add them: left: 1 m and spacing: 600 mm");
        }
        if (!row && spacing.isPresent()) {
            throw new BadValueException(
                    "spacing", "only openings in a row have the key spacing", "count: 1", "remove it, or add count");
        }
        lightWell.ifPresent(well -> require(well, kind, width, row));
        SourceText.require("source", source);
        requireRating(transmittance, frameTransmittance, glazing);
        glazing.ifPresent(each -> room(each, width, height));
    }

    /** Refuses a light well that cannot stand before what it is said to. */
    private static void require(LightWell well, Opening.Kind kind, double width, boolean row) {
        if (kind == Opening.Kind.DOOR) {
            throw new BadValueException(
                    "lightWell",
                    "a light well stands before a window",
                    "kind: door",
                    "remove it, and list the stair under seams: {kind: outside stair against the wall, surface: ..., length:"
                            + " ...}");
        }
        if (well.width() < width) {
            throw new BadValueException(
                    "lightWell",
                    "a light well is at least as wide as its window",
                    Phrase.of("a width of ").and(well.width(), Dimension.LENGTH),
                    Phrase.of("at least ").and(width, Dimension.LENGTH),
                    "correct its width");
        }
        if (row && well.left().isPresent()) {
            throw new BadValueException(
                    "lightWell",
                    "each window of a row has its own light well, before its middle",
                    "left beside count",
                    "remove left; for one light well before several windows give each window a name of its own, and the"
                            + " light well to one of them");
        }
    }

    /** Refuses a rating that is none, or is two. */
    static void requireRating(
            OptionalDouble transmittance, OptionalDouble frameTransmittance, Optional<FileGlazing> glazing) {
        if (transmittance.isPresent() == glazing.isPresent()) {
            throw new BadValueException(
                    "",
                    "an opening needs either transmittance or glazing",
                    glazing.isPresent() ? "both" : "neither",
                    "transmittance: 0.9 W/(m²·K), or glazing: {glass: 0.6 W/(m²·K), frame: 1.0 W/(m²·K), frame-width:"
                            + " 110 mm, spacer: improved}",
                    glazing.isPresent() ? "remove one of them" : "write one of them");
        }
        if (glazing.isPresent() && frameTransmittance.isPresent()) {
            throw new BadValueException(
                    "frameTransmittance",
                    "the frame of a glazing has its transmittance there",
                    "frame-transmittance beside glazing",
                    "remove frame-transmittance");
        }
    }

    /** Refuses a window, W/(m²·K), that loses less than any; hatches and doors may. */
    static void least(Opening.Kind kind, OptionalDouble transmittance) {
        if (kind == Opening.Kind.WINDOW && transmittance.orElse(LEAST_WINDOW) < LEAST_WINDOW) {
            throw new BadValueException(
                    "transmittance",
                    "no window loses as little; only hatches and doors do",
                    Phrase.of(transmittance.getAsDouble(), Dimension.TRANSMITTANCE),
                    Phrase.of("at least ").and(LEAST_WINDOW, Dimension.TRANSMITTANCE),
                    "check value and unit");
        }
    }

    /** Refuses a frame that leaves no glass in an opening, m. */
    static void room(FileGlazing glazing, double width, double height) {
        room(glazing, "width", width, true);
        room(glazing, "height", height, false);
    }

    static Opening.Rating rating(
            OptionalDouble transmittance,
            OptionalDouble frameTransmittance,
            Optional<FileGlazing> glazing,
            Optional<String> source) {
        return glazing.<Opening.Rating>map(each -> each.rating(source))
                .orElseGet(() -> new Opening.Declared(
                        transmittance.orElseThrow(), frameTransmittance.orElseGet(transmittance::orElseThrow), source));
    }

    private static void room(FileGlazing glazing, String which, double size, boolean wide) {
        if (glazing.across(wide) >= size) {
            throw new BadValueException(
                    "glazing",
                    "the frame leaves no glass in the " + which,
                    Phrase.of("a frame of ")
                            .and(glazing.across(wide), Dimension.THICKNESS)
                            .and(" altogether"),
                    Phrase.of("less than ").and(size, Dimension.THICKNESS),
                    "correct frame-width or lights; a door of one leaf has its declared transmittance");
        }
    }

    /** One for each of the row; named like the row where it is the only one. */
    ImmutableList<Opening> openings(String name) {
        if (count == 1) {
            return Lists.immutable.with(opening(name, left));
        }
        return IntInterval.fromTo(1, count)
                .collect(number -> opening(
                        name + " " + number,
                        OptionalDouble.of(left.getAsDouble() + (number - 1) * (width + spacing.getAsDouble()))))
                .toImmutable();
    }

    private Opening opening(String name, OptionalDouble from) {
        return new Opening(
                name,
                kind,
                surface.value(),
                width,
                height,
                from,
                sill,
                rating(transmittance, frameTransmittance, glazing, source),
                frameDepth,
                setBack,
                shutterBox,
                lightWell,
                lintel);
    }
}
