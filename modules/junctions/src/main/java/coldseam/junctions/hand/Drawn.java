package coldseam.junctions.hand;

import coldseam.envelope.file.house.OtherFile;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.SourceDocument;
import coldseam.files.SourceNode;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;

/** What a section file draws: a section, or a body where it has the keys of one. */
public sealed interface Drawn permits DrawnSection, DrawnBody {

    /**
     * Reads a section file, YAML or JSON.
     *
     * @throws FileFaultException with every fault of the file, or else every fault of what it draws
     */
    static Drawn load(Path path) {
        Faults faults = new Faults();
        Optional<Drawn> drawn = SourceDocument.read(path, faults)
                .filter(node ->
                        !OtherFile.isRefused(node, "a section file", Lists.immutable.of("section", "painted"), faults))
                .flatMap(node -> solid(node)
                        ? DrawnBody.bind(node, faults)
                        : DrawnSection.bind(node, faults).map(each -> each));
        faults.throwIfAny();
        return drawn.orElseThrow();
    }

    private static boolean solid(SourceNode node) {
        return node instanceof SourceNode.Mapping mapping
                && (mapping.entry("body").isPresent()
                        || mapping.entry("painted").isPresent());
    }
}
