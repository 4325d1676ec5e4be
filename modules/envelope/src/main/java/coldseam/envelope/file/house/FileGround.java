package coldseam.envelope.file.house;

import coldseam.files.BadValueException;
import coldseam.files.Bounds;
import coldseam.files.Doc;
import coldseam.files.Marked;
import coldseam.files.Noun;
import coldseam.files.Short;
import coldseam.files.Unit;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import org.eclipse.collections.api.factory.Lists;

@Noun("ground")
@Doc("A kind of ground of ISO 13370, or a name with a conductivity of one's own.")
sealed interface FileGround {

    String label();

    /** W/(m·K). */
    double conductivity();

    /** Design conductivities of the ground, ISO 13370:2017 table 7; from memory. */
    enum Kind {
        CLAY_OR_SILT(1.5),
        SAND_OR_GRAVEL(2.0),
        HOMOGENEOUS_ROCK(3.5);

        private final double conductivity;

        Kind(double conductivity) {
            this.conductivity = conductivity;
        }
    }

    @Short
    @Noun("ground")
    @Doc("A kind of ground of ISO 13370.")
    record FileGroundKind(
            @Doc("clay or silt 1.5, sand or gravel 2.0, homogeneous rock 3.5 W/(m·K).")
            Kind kind) implements FileGround {
        @Override
        public String label() {
            return Words.word(kind);
        }

        @Override
        public double conductivity() {
            return kind.conductivity;
        }
    }

    @Marked("conductivity")
    @Noun("ground")
    @Doc("Ground with a conductivity of its own.")
    record FileOwnGround(
            @Doc("As the audit prints it, such as \"moist clay, by test\".")
            String name,

            @Doc("Its thermal conductivity.")
            @Unit(Dimension.CONDUCTIVITY)
            @Bounds(atLeast = "0.3 W/(m·K)", atMost = "6 W/(m·K)", usual = "1.5 to 3.5 W/(m·K)")
            double conductivity)
            implements FileGround {

        public FileOwnGround {
            Lists.immutable
                    .with(Kind.values())
                    .select(kind -> Words.word(kind).equals(Words.aloud(name)) && kind.conductivity != conductivity)
                    .forEach(kind -> {
                        throw new BadValueException(
                                "conductivity",
                                "ground of this name conducts as ISO 13370 has it",
                                Phrase.of(conductivity, Dimension.CONDUCTIVITY).and(" of \"" + name + "\""),
                                Phrase.of(kind.conductivity, Dimension.CONDUCTIVITY),
                                "write ground: " + Words.word(kind) + ", or name the test that says otherwise");
                    });
        }

        @Override
        public String label() {
            return name;
        }
    }
}
