package coldseam.junctions.detail;

import coldseam.envelope.CornerKind;
import coldseam.envelope.JunctionKind;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Faults;
import coldseam.files.Inline;
import coldseam.files.Key;
import coldseam.files.Located;
import coldseam.files.Marked;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Positional;
import coldseam.files.Size;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A corner's detail file as it is written.
 *
 * @param id among all details
 * @param text what every detail file says
 * @param meets which details it lets its edges have, by their kind; any of a kind that is left out
 * @param drawing boxes in painting order
 */
@Marked("corner")
@Noun("a corner detail")
record FileCorner(
        @Key("corner") Located<String> id,
        CornerKind kind,
        @Inline FileText text,
        @Size(max = 20) @Default("") ImmutableList<FileMeets> meets,
        @Size(min = 1, max = 100) ImmutableList<FileBox> drawing,
        @Key("cost-each") @Bounds(atLeast = "0") OptionalDouble cost)
        implements FileBridge {

    @Override
    public DetailDrawing read(String content, Faults faults) {
        return new CornerDrawingReader(this, content, faults).drawing();
    }

    /** The details that edges of a kind may have. */
    @Noun("what a corner meets")
    record FileMeets(
            Position place,
            JunctionKind kind,
            @Size(min = 1, max = 50) ImmutableList<String> details) {}

    /**
     * A box of a material.
     *
     * @param material its name, {@code same as wall.structure}, or {@code air}
     * @param between its lines, by surface; it runs on where a surface is left out
     * @param onlyOpen whether it fills only what the sections of the edges leave open
     * @param where the build it is for, such as {@code wall framed}
     */
    @Noun("a box")
    record FileBox(
            String box,
            Located<String> material,
            @Size(max = 3) @Default("") ImmutableList<Named<FileRange>> between,
            @Default("false") boolean onlyOpen,
            Optional<Located<String>> where) {}

    /** From one line to another. */
    @Positional
    record FileRange(Located<String> from, Located<String> to) {}
}
