package coldseam.files;

import coldseam.files.SourceNode.Kind;
import coldseam.files.SourceNode.Mapping;
import coldseam.files.SourceNode.Scalar;
import coldseam.files.SourceNode.Sequence;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.QuantityParser;
import coldseam.files.quantity.UnitSystem;
import coldseam.files.quantity.UnreadableException;
import java.nio.file.Path;

/** In which units whoever wrote a file measures: whoever writes feet is to be answered in feet. */
public final class WrittenIn {

    private int feet;
    private int metres;

    private WrittenIn() {}

    /** US where more lengths of the file are in feet and inches than in metres, else SI; SI where it cannot be read, too. */
    public static UnitSystem of(Path path) {
        WrittenIn lengths = new WrittenIn();
        SourceDocument.read(path, new Faults()).ifPresent(lengths::count);
        return lengths.feet > lengths.metres ? UnitSystem.US : UnitSystem.SI;
    }

    private void count(SourceNode node) {
        if (node instanceof Mapping mapping) {
            mapping.entries().forEach(entry -> count(entry.value()));
        } else if (node instanceof Sequence sequence) {
            sequence.items().forEach(this::count);
        } else if (node instanceof Scalar scalar && scalar.kind() == Kind.TEXT && isLength(scalar.text())) {
            // Metres and their parts have an m in every spelling; feet and inches have none.
            if (scalar.text().contains("m")) {
                metres++;
            } else {
                feet++;
            }
        }
    }

    private static boolean isLength(String text) {
        try {
            QuantityParser.parse(text, Dimension.LENGTH);
            return true;
        } catch (UnreadableException other) {
            return false;
        }
    }
}
