package coldseam.envelope.file.house;

import coldseam.envelope.Exposure;
import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Marked;
import coldseam.files.Noun;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import java.util.Optional;

@Noun("a neighbour")
@Doc("What lies on the far side of a wall, floor or roof.")
sealed interface FileNeighbour {

    Exposure exposure(String name);

    @Marked("temperature-factor")
    @Noun("an unheated space")
    @Doc("An unheated space, such as a garage, cellar or loft.")
    record FileUnheated(
            @Doc("Its temperature factor b: 1 as cold as outdoors, 0 as warm as indoors.")
            @Unit(Dimension.RATIO)
            @Bounds(atLeast = "0", atMost = "1", usual = "0.4 to 0.9")
            double temperatureFactor,

            @Doc("Where the factor comes from, such as a calculation; needed where it is below 0.3.")
            Optional<String> source)
            implements FileNeighbour {

        /** Of a space with an outer wall hardly any is smaller (tables of EN 12831 begin at 0.4; from memory). */
        private static final double SMALLEST_USUAL = 0.3;

        public FileUnheated {
            SourceText.require("source", source);
            if (temperatureFactor < SMALLEST_USUAL && source.isEmpty()) {
                throw new BadValueException(
                        "temperatureFactor",
                        "a space nearly as warm as the rooms needs a source for its factor",
                        Format.of("%.2f", temperatureFactor),
                        "0.3 to 1 without",
                        "correct it, give source: with the calculation it is from, or write heated: true where it is heated");
            }
        }

        @Override
        public Exposure exposure(String name) {
            return new Exposure(Exposure.Kind.UNHEATED, name, temperatureFactor, source.orElse(""));
        }
    }

    @Marked("heated")
    @Noun("a heated neighbour")
    @Doc("A heated neighbour behind a party wall.")
    record FileParty(@Doc("Always true.") boolean heated) implements FileNeighbour {
        public FileParty {
            if (!heated) {
                throw new BadValueException(
                        "heated",
                        "an unheated neighbour needs its temperature factor",
                        "heated: false",
                        "write temperature-factor: 0.7 or another number from 0 to 1 instead");
            }
        }

        @Override
        public Exposure exposure(String name) {
            return new Exposure(Exposure.Kind.PARTY, name, 0);
        }
    }
}
