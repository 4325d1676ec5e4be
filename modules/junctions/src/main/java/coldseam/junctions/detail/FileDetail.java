package coldseam.junctions.detail;

import coldseam.envelope.JunctionKind;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.Marked;
import coldseam.files.Named;
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
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * A junction's detail file as it is written.
 *
 * @param place of the file's mapping
 * @param detail its id
 * @param suits what it can be built in; empty for both
 * @param takesDown parts of an old house that must come down for it
 * @param needs layers that must be there, such as {@code wall.insulation}
 * @param angles degrees
 * @param thickness allowed, by layer
 * @param requires conditions such as {@code upstand >= 150 mm}
 * @param parameters lengths of its own
 * @param materials of its own
 * @param lines of its own
 * @param drawing statements in painting order
 */
@Marked("detail")
@Noun("a detail")
record FileDetail(
        Position place,
        Located<String> detail,
        JunctionKind kind,
        String name,
        Rank rank,
        @Default("") ImmutableSet<Suits.Work> suits,
        @Default("") ImmutableList<String> takesDown,
        String looksLike,
        @Size(max = 100) @Default("") ImmutableList<Located<String>> needs,
        Optional<FileAngles> angles,
        @Size(max = 100) @Default("") ImmutableList<Named<FileSpan>> thickness,
        @Size(max = 100) @Default("") ImmutableList<Located<String>> requires,
        @Size(max = 100) @Default("") ImmutableList<Named<FileParameter>> parameters,
        @Size(max = 100) @Default("") ImmutableList<Named<FileOwnMaterial>> materials,
        @Size(max = 100) @Default("") ImmutableList<Named<Located<String>>> lines,
        @Size(max = 100) ImmutableList<SourceNode> drawing,
        @Size(max = 100) ImmutableList<String> order,
        FileConnections connections,
        @Size(max = 100) ImmutableList<String> failures,
        @Size(max = 100) ImmutableList<Photograph> photographs,
        @Size(max = 100) @Default("") ImmutableList<String> cautions,
        @Bounds(atLeast = "0") OptionalDouble costPerMetre)
        implements FileText {

    /** Least and most. */
    @Positional
    record FileAngles(
            @Unit(Dimension.ANGLE) @Bounds(atLeast = "10 °", atMost = "350 °")
            double least,

            @Unit(Dimension.ANGLE) @Bounds(atLeast = "10 °", atMost = "350 °")
            double most) {}

    @Override
    public Located<String> id() {
        return detail;
    }

    @Override
    public OptionalDouble amount() {
        return costPerMetre;
    }

    @Override
    public Cost.Per per() {
        return Cost.Per.METRE;
    }

    @Override
    public DetailDrawing read(String content, Faults faults) {
        return new BandDrawingReader(this, content, faults).drawing();
    }
}
