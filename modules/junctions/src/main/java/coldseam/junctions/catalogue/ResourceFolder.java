package coldseam.junctions.catalogue;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The files of a folder that comes with the tool: a folder while building, in the jar afterwards. */
public final class ResourceFolder {

    private static final String SUFFIX = ".yaml";

    private ResourceFolder() {}

    /**
     * The names of the YAML files beside a resource, sorted.
     *
     * @param resource absolute path of a file of this module, such as {@code /details/README.md}
     */
    public static ImmutableList<String> yamlBeside(String resource) {
        try {
            URI place = ResourceFolder.class.getResource(resource).toURI();
            if (!place.getScheme().equals("jar")) {
                return names(Path.of(place).getParent());
            }
            try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
                return names(jar.getPath(resource).getParent());
            }
        } catch (URISyntaxException | IOException broken) {
            throw new IllegalStateException(
                    "the files beside " + resource + " cannot be listed; please report this", broken);
        }
    }

    private static ImmutableList<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return Lists.immutable.withAll(files.map(each -> each.getFileName().toString())
                    .filter(name -> name.endsWith(SUFFIX))
                    .sorted()
                    .toList());
        }
    }
}
