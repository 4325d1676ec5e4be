package coldseam.envelope.file.house;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Refers;
import coldseam.files.Short;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.OptionalDouble;

@Short
@Noun("a lower roof")
@Doc("A roof over what lies open above a storey: flat, or a lean-to of one slope.")
record FileLowerRoof(
        @Doc("Its assembly.") @Refers("assembly") String assembly,

        @Doc("Its pitch where it is a lean-to; none for a flat one.")
        @Default("0 °")
        @Unit(Dimension.ANGLE)
        @Bounds(atLeast = "0 °", atMost = "75 °")
        double pitch,

        @Doc("The side of the storey along which a lean-to's eaves run: south, or side 1.")
        Optional<Located<String>> lowSide,

        @Doc(
                "Height of a lean-to's eaves: from the storey's floor to the top of the rafters over the inner face of the low"
                        + " side's wall; the storey's height where it is missing.")
        @Unit(Dimension.LENGTH)
        @Bounds(atLeast = "1 m", atMost = "20 m")
        OptionalDouble eaves,

        @Doc(
                "Where it lies in plan, as far as that is open; beyond the walls it counts for nothing. All that is open where it is"
                        + " missing.")
        Optional<FileFootprint> area,

        @Doc(
                "Assembly of walls that a lean-to leaves upright beside a terrace; that of the low side's wall where it is missing.")
        @Refers("assembly")
        Optional<String> wall,

        @Doc(
                "What it faces: outdoors, or a neighbour's name, such as the cold space under the eaves beside a knee wall.")
        @Default("outdoors")
        @Refers("neighbour")
        String faces,

        Position place) {

    /** °; what slopes less is within what footprints and facets may differ by. */
    static final double LEAST_PITCH = 1;

    FileLowerRoof {
        if (pitch > 0 && pitch < LEAST_PITCH) {
            throw new BadValueException(
                    "pitch",
                    "a lean-to slopes visibly",
                    Format.of("%.3g °", pitch),
                    "at least 1 °, or none for a flat roof",
                    "correct the pitch, or remove it with low-side, eaves and wall");
        }
        if (pitch > 0 && lowSide.isEmpty()) {
            throw new BadValueException(
                    "pitch",
                    "a lean-to needs the key low-side",
                    Phrase.of(pitch, Dimension.ANGLE),
                    Phrase.of("a compass word, or side 1 and so on"),
                    "add it, such as low-side: south, or remove the pitch");
        }
        String given = lowSide.isPresent() ? "lowSide" : eaves.isPresent() ? "eaves" : wall.isPresent() ? "wall" : "";
        if (pitch == 0 && !given.isEmpty()) {
            throw new BadValueException(
                    given,
                    "a flat lower roof has no keys low-side, eaves and wall",
                    "pitch 0 °",
                    "a pitch of more than 0 °",
                    "remove the key, or add the pitch");
        }
    }

    void check(StoreyOutlines outlines, Faults faults) {
        lowSide.ifPresent(word -> FileRoof.checkSide("low-side", word, outlines, faults));
    }

    /** The lower roof over a storey of this height, m, with these outlines. */
    Body.LowerRoof roof(StoreyOutlines outlines, double height, Exposure exposure) {
        int side = lowSide.map(word -> outlines.of(word.value()).getFirst()).orElse(0);
        return new Body.LowerRoof(
                area.map(FileFootprint::corners).map(BodyBuilder::counterclockwise),
                assembly,
                pitch,
                outlines.turned(side),
                eaves.orElse(height),
                wall,
                exposure);
    }
}
