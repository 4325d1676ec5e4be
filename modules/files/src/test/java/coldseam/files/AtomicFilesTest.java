package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFilesTest {

    @Test
    void writesWholeFilesAndLeavesNothingElse(@TempDir Path folder) throws IOException {
        Path target = folder.resolve("new/audit.json");
        AtomicFiles.write(target, "one");
        AtomicFiles.write(target, "two");
        assertEquals("two", Files.readString(target));
        try (Stream<Path> files = Files.list(target.getParent())) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void keepsTheOldFileWhereItCannotBeReplaced(@TempDir Path folder) throws IOException {
        Path inTheWay = folder.resolve("taken");
        Files.createDirectories(inTheWay.resolve("full"));
        assertThrows(IOException.class, () -> AtomicFiles.write(inTheWay, "text"));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }
}
