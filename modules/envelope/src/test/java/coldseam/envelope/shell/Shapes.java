package coldseam.envelope.shell;

import coldseam.envelope.House;
import coldseam.envelope.file.house.HouseFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The houses of fixtures/houses/shapes by their files' names, and those of {@link RareHouses}. Their shells are made when a class of tests
 * is loaded, not by the first of its tests that asks: so each test is known to go through all the code that makes them (DEVELOPERS.md,
 * Mutation testing).
 */
final class Shapes {

    private static final ImmutableMap<String, House> HOUSES = houses();

    static final ImmutableMap<String, Shell> SHELLS = HOUSES.collectValues((name, house) -> ShellBuilder.build(house));

    private Shapes() {}

    static House house(String name) {
        return HOUSES.get(name);
    }

    static List<String> names() {
        return HOUSES.keysView().toSortedList();
    }

    private static ImmutableMap<String, House> houses() {
        try (Stream<Path> files =
                Files.list(Path.of(System.getProperty("coldseam.root"), "fixtures", "houses", "shapes"))) {
            return Lists.immutable
                    .fromStream(files.filter(each -> each.toString().endsWith(".yaml")))
                    .toMap(
                            each -> each.getFileName().toString().replace(".yaml", ""),
                            each -> HouseFiles.read(each).house())
                    .withMap(RareHouses.all().toMap())
                    .toImmutable();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
