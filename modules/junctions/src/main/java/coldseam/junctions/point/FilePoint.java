package coldseam.junctions.point;

import coldseam.envelope.PointKind;
import coldseam.files.Bounds;
import coldseam.files.Default;
import coldseam.files.Located;
import coldseam.files.Named;
import coldseam.files.Noun;
import coldseam.junctions.detail.FileDetail;
import coldseam.junctions.detail.Rank;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A point file as it is written; README.md beside the built-in ones explains each key.
 *
 * @param point its id
 * @param needs roles of layers that must be there
 * @param thickness allowed, by role; {@code surface} for the whole
 * @param requires conditions such as {@code insulation.outside - insulation.inside >= 40 mm}
 * @param parameters lengths of its own
 * @param materials of its own
 * @param lines of its own
 * @param drawing bodies in painting order
 */
@Noun("a point detail")
record FilePoint(
        Located<String> point,
        PointKind kind,
        String name,
        Rank rank,
        String looksLike,
        @Default("") ImmutableList<Located<String>> needs,
        @Default("") ImmutableList<Named<FileDetail.FileSpan>> thickness,
        @Default("") ImmutableList<Located<String>> requires,
        @Default("") ImmutableList<Named<FileDetail.FileParameter>> parameters,
        @Default("") ImmutableList<Named<FileDetail.FileOwnMaterial>> materials,
        @Default("") ImmutableList<Named<Located<String>>> lines,
        ImmutableList<FileBody> drawing,
        String drawnRound,
        ImmutableList<String> order,
        FileDetail.FileConnections connections,
        ImmutableList<String> failures,
        ImmutableList<String> photographs,
        @Default("") ImmutableList<String> cautions,
        @Bounds(atLeast = "0") OptionalDouble costEach) {

    /**
     * A round body about the axis.
     *
     * @param body what it is
     * @param material its name, or {@code same as ROLE}
     * @param diameter outside, a length
     * @param hole diameter inside, a length
     * @param from line of one end
     * @param to line of the other
     */
    @Noun("a body")
    record FileBody(
            String body,
            Located<String> material,
            Located<String> diameter,
            Optional<Located<String>> hole,
            Located<String> from,
            Located<String> to,
            @Default("false") boolean drawnOnly) {}
}
