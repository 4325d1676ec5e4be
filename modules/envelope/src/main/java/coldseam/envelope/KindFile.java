package coldseam.envelope;

import coldseam.files.BadValueException;
import coldseam.files.Binder;
import coldseam.files.Default;
import coldseam.files.Doc;
import coldseam.files.Key;
import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import coldseam.files.Size;
import coldseam.files.Unit;
import coldseam.files.quantity.Dimension;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.collections.api.list.ImmutableList;

/** The file of a kind as it is written; README.md beside the files explains each key. */
sealed interface KindFile {

    /** The plain name. */
    String label();

    /** The hold points it belongs to. */
    ImmutableList<Stop> holdPoints();

    /** Its place among the kinds of its sort. */
    int place();

    /** All files of a folder, by their place and then their name. */
    static <T extends Record & KindFile> ImmutableList<T> all(String folder, Class<T> type) {
        return new ResourceFolder("/kinds/" + folder + "/")
                .read((tree, content, faults) -> Binder.bind(tree, type, faults))
                .toImmutableSortedList(
                        Comparator.<T>comparingInt(KindFile::place).thenComparing(KindFile::label));
    }

    @Noun("a kind of junction")
    record OfJunction(
            @Key("junction") String label,
            int place,
            String first,
            String second,
            @Size(min = 1, max = 2) ImmutableList<BridgeKind.Facing> faces,
            KindForm form,
            JunctionKind.Whereabouts where,
            @Size(min = 1) ImmutableList<Stop> holdPoints,
            JunctionKind.Typical typical,
            @Default("false") boolean uprightSeam,
            @Default("false") boolean parapet,
            @Default("false") boolean groundAtFloor,
            @Default("false") boolean threshold,
            @Default("false") boolean atInsideInsulation,
            Optional<JunctionKind.StoreyFloor> storeyFloor,
            Optional<String> wallInPsi,
            @Default("") ImmutableList<FileDefaultPsi> defaults)
            implements KindFile {

        public OfJunction {
            int buildUps = form.twoBuildUps() ? 2 : 1;
            if (faces.size() != buildUps) {
                throw new BadValueException(
                        "faces",
                        "each build-up faces one way",
                        String.valueOf(faces.size()),
                        String.valueOf(buildUps),
                        "say it of each band that is a surface, and of the wall in whose place a door stands");
            }
            if (typical.second().isPresent() != form.twoBuildUps()) {
                throw new BadValueException(
                        "typical",
                        "a typical build-up is needed of each band that is one, and of no other",
                        typical.second().isPresent() ? "two" : "one",
                        String.valueOf(buildUps),
                        typical.second().isPresent() ? "remove second" : "add second");
            }
        }
    }

    /** A row of the table of ISO 14683. */
    @Noun("a default psi")
    record FileDefaultPsi(
            String row,
            DefaultPsi.WallType wall,
            @Doc("Whether the insulation goes on unbroken.") boolean passes,
            @Unit(Dimension.LINEAR_TRANSMITTANCE) double external,
            @Unit(Dimension.LINEAR_TRANSMITTANCE) double internal) {}

    @Noun("a kind of point")
    record OfPoint(
            @Key("point") String label,
            int place,
            String typical,
            @Size(min = 1, max = 3) ImmutableList<BridgeKind.Facing> faces,
            @Size(min = 1) ImmutableList<Stop> holdPoints,
            @Default("false") boolean countedInU,
            @Default("false") boolean carries,
            @Default("false") boolean drains,
            @Default("") @Size(max = 8) ImmutableList<PointKind.Service> serves,
            Optional<PointKind.Service> needs,
            OptionalInt atMost)
            implements KindFile {}

    @Noun("a kind of corner")
    record OfCorner(
            @Key("corner") String label,
            int place,
            @Size(min = 3, max = 3) ImmutableList<String> surfaces,
            BridgeKind.Facing faces,
            @Size(min = 3, max = 6) ImmutableList<CornerKind.Edge> edges,
            @Size(min = 1, max = 7) ImmutableList<CornerKind.Room> rooms,
            @Size(min = 1) ImmutableList<Stop> holdPoints)
            implements KindFile {

        public OfCorner {
            edges.reject(edge -> surfaces.contains(edge.surface())).forEach(edge -> {
                throw new BadValueException(
                        "edges",
                        "an edge runs along the normal of one of the surfaces",
                        '"' + edge.surface() + '"',
                        surfaces.makeString(", "),
                        "name one of them");
            });
        }
    }
}
