package coldseam.junctions.detail;

import coldseam.files.Noun;
import coldseam.files.ResourceFolder;
import coldseam.files.SourceNode;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Maps;

/** Parts that many drawings have and one file draws, such as the rim of a framed floor: their statements by name. */
final class SharedParts {

    private static final ResourceFolder FOLDER = new ResourceFolder("/parts/");

    /** Read one after another: details are read side by side, and would wait for this class while it waited for their threads. */
    private static final ImmutableMap<String, ImmutableList<SourceNode>> PARTS = FOLDER.names()
            .collect(file -> FOLDER.read(file, FilePart.class, Maps.immutable.empty()))
            .toImmutableMap(FilePart::part, FilePart::drawing);

    /** A part's file as it is written. */
    @Noun("a part")
    private record FilePart(String part, ImmutableList<SourceNode> drawing) {}

    private SharedParts() {}

    /** Sorted. */
    static ImmutableList<String> names() {
        return PARTS.keysView().toImmutableSortedList();
    }

    /** The statements of a part that there is. */
    static ImmutableList<SourceNode> statements(String name) {
        return PARTS.get(name);
    }
}
