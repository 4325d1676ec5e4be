package coldseam.envelope.file.house;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file of fixtures/faulty is refused with exactly the messages beside it, all at once. */
class FaultyHousesTest {

    private static final Path FOLDER = Path.of(System.getProperty("coldseam.root"), "fixtures", "faulty");
    private static final KnownNames DETAILS =
            KnownNames.of(Lists.immutable.with("slab-edge-insulated", "corner-wrapped"));

    static List<Path> faulty() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(each -> each.getFileName().toString().matches("\\d.*\\.(yaml|json)"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void isRefusedWithTheseMessages(Path file) throws IOException {
        String name = file.getFileName().toString();
        byte[] content = Files.readAllBytes(file);
        FileFaultException refused = assertThrows(
                FileFaultException.class,
                () -> HouseFile.read(name, content, Optional.of(DETAILS)).shell());
        Path expected = file.resolveSibling(name.replaceFirst("\\.\\w+$", ".expected"));
        String said = refused.getMessage() + "\n";
        if (Boolean.getBoolean("coldseam.write")) {
            Files.writeString(expected, said);
        }
        assertEquals(Files.exists(expected) ? Files.readString(expected) : "", said);
    }

    @Test
    void thereAreAtLeastForty() throws IOException {
        assertTrue(faulty().size() >= 40);
    }

    @Test
    void theHouseTheyAreMadeFromIsGood() throws IOException {
        byte[] content = Files.readAllBytes(FOLDER.resolve("good.yaml"));
        assertDoesNotThrow(() -> HouseFile.read("good.yaml", content, Optional.of(DETAILS)));
    }
}
