package coldseam.junctions.store;

import coldseam.junctions.WeakestPath;
import coldseam.junctions.path.PathFinding;
import coldseam.junctions.path.PathQuestion;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.JTSVersion;

/**
 * Keeps weakest paths on disk as {@link SolutionStore} keeps sections. The code whose hash is in their names is all of this
 * room's, with the version of the geometry library that cuts sections into triangles.
 */
public record PathStore(KeptFolder folder, PathFinding search) implements PathFinding {

    private static final byte[] SEARCH = Seal.digest(
            SolutionStore.Core.hash(WeakestPath.class),
            JTSVersion.CURRENT_VERSION.toString().getBytes(StandardCharsets.UTF_8));

    @Override
    public WeakestPath find(PathQuestion question) {
        return folder.answer(
                name(question),
                content -> (WeakestPath) RecordBytes.read(content, Lists.immutable.empty(), RecordBytes.Fields.NONE),
                () -> search.find(question),
                path -> Optional.of(RecordBytes.write(path, Lists.immutable.empty())));
    }

    /** The hash of a question. */
    static String name(PathQuestion question) {
        return Seal.name(SEARCH, RecordBytes.inFull(question));
    }
}
