package coldseam.junctions.detail;

import coldseam.files.Faults;
import coldseam.files.ResourceFolder;
import coldseam.files.SourceNode;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Lists;

/** Parts that many drawings have and one file draws, such as the rim of a framed floor: their statements by name. */
final class SharedParts {

    private static final ResourceFolder FOLDER = new ResourceFolder("/parts/");

    /** Read one after another: details are read side by side, and would wait for this class while it waited for their threads. */
    private static final ImmutableMap<String, ImmutableList<SourceNode>> PARTS = FOLDER.names()
            .collect(file -> FOLDER.read(file, SharedParts::named))
            .toImmutableMap(Named::name, Named::statements);

    private record Named(String name, ImmutableList<SourceNode> statements) {}

    private SharedParts() {}

    /** Sorted. */
    static ImmutableList<String> names() {
        return PARTS.keysView().toImmutableSortedList();
    }

    /** The statements of a part that there is. */
    static ImmutableList<SourceNode> statements(String name) {
        return PARTS.get(name);
    }

    private static Optional<Named> named(SourceNode tree, String content, Faults faults) {
        if (tree instanceof SourceNode.Mapping mapping
                && mapping.entry("part").map(SourceNode.Entry::value).orElse(null) instanceof SourceNode.Scalar name
                && mapping.entry("drawing").map(SourceNode.Entry::value).orElse(null)
                        instanceof SourceNode.Sequence drawing) {
            return Optional.of(new Named(name.text(), Lists.immutable.withAll(drawing.items())));
        }
        faults.add(tree, "a part has a name and a drawing", "", "add part: and drawing:");
        return Optional.empty();
    }
}
