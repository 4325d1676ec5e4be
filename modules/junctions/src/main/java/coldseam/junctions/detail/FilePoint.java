package coldseam.junctions.detail;

import coldseam.envelope.PointKind;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Faults;
import coldseam.files.Inline;
import coldseam.files.Key;
import coldseam.files.Located;
import coldseam.files.Marked;
import coldseam.files.Noun;
import coldseam.files.Size;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A point's detail file as it is written.
 *
 * @param id among all details
 * @param text what every detail file says
 * @param drawing bodies in painting order
 */
@Marked("point")
@Noun("a point detail")
record FilePoint(
        @Key("point") Located<String> id,
        PointKind kind,
        @Inline FileText text,
        @Size(max = 100) ImmutableList<FileBody> drawing,
        Optional<String> drawnRound,
        @Key("cost-each") @Bounds(atLeast = "0") OptionalDouble cost)
        implements FileBridge {

    @Override
    public DetailDrawing read(String content, Faults faults) {
        return new PointDrawingReader(this, content, faults).drawing();
    }

    /**
     * A body on the axis, or beside it.
     *
     * @param material its name, or {@code same as ROLE}
     * @param diameter outside, a length; left out of a rectangle
     * @param hole diameter inside, a length
     * @param width sideways, a length, of a rectangle
     * @param height upwards, a length, of a rectangle
     * @param sideways of its middle from the axis, a length; it is there on both sides
     * @param upwards of its middle from the axis, a length
     * @param belowToo whether it is there below the axis as above
     * @param from line of one end
     * @param to line of the other
     */
    @Noun("a body")
    record FileBody(
            String body,
            Located<String> material,
            Optional<Located<String>> diameter,
            Optional<Located<String>> hole,
            Optional<Located<String>> width,
            Optional<Located<String>> height,
            Optional<Located<String>> sideways,
            Optional<Located<String>> upwards,
            @Default("false") boolean belowToo,
            Located<String> from,
            Located<String> to,
            @Default("false") boolean drawnOnly) {}
}
