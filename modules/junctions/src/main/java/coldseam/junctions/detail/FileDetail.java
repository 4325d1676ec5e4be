package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Faults;
import coldseam.files.Inline;
import coldseam.files.Key;
import coldseam.files.Located;
import coldseam.files.Marked;
import coldseam.files.Noun;
import coldseam.files.Position;
import coldseam.files.Positional;
import coldseam.files.Size;
import coldseam.files.SourceNode;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A junction's detail file as it is written.
 *
 * @param place of the file's mapping
 * @param id among all details
 * @param also other kinds of the same form and bands, drawn in the same way
 * @param text what every detail file says
 * @param where builds that it is drawn for alone; empty for any
 * @param insulatedInside bands that may be insulated inside what carries them though the other is outside it
 * @param angles degrees
 * @param drawing statements in painting order
 * @param cost for each metre
 */
@Marked("detail")
@Noun("a detail")
record FileDetail(
        Position place,
        @Key("detail") Located<String> id,
        JunctionKind kind,
        @Size(max = 8) @Default("") ImmutableList<Located<JunctionKind>> also,
        @Inline FileText text,
        @Size(max = 4) @Default("") ImmutableList<Located<String>> where,
        @Size(max = 2) @Default("") ImmutableList<Located<String>> insulatedInside,
        Optional<FileAngles> angles,
        @Size(max = 100) ImmutableList<SourceNode> drawing,
        @Key("cost-per-metre") @Bounds(atLeast = "0") OptionalDouble cost)
        implements FileBridge {

    /** Least and most. */
    @Positional
    record FileAngles(
            @Unit(Dimension.ANGLE) @Bounds(atLeast = "10 °", atMost = "350 °")
            double least,

            @Unit(Dimension.ANGLE) @Bounds(atLeast = "10 °", atMost = "350 °")
            double most) {}

    @Override
    public ImmutableList<JunctionKind> alsoFor() {
        return also.collect(Located::value);
    }

    @Override
    public DetailDrawing read(String content, Faults faults) {
        return new BandDrawingReader(this, content, faults).drawing();
    }
}
