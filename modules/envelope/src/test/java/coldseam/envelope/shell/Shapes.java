package coldseam.envelope.shell;

import coldseam.envelope.file.house.HouseFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The houses of fixtures/houses/shapes. Their shells are made when a class of tests is loaded, not by the first of its tests that asks:
 * so each test is known to go through all the code that makes them (DEVELOPERS.md, Mutation testing).
 */
final class Shapes {

    static final ImmutableMap<Path, Shell> SHELLS = Lists.immutable
            .ofAll(houses())
            .toImmutableMap(file -> file, file -> HouseFile.read(file).shell());

    private Shapes() {}

    static List<Path> houses() {
        try (Stream<Path> files =
                Files.list(Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes"))) {
            return files.filter(each -> each.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
