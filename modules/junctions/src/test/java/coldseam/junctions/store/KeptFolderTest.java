package coldseam.junctions.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptFolderTest {

    private static final int ENTRY = 1000;

    @TempDir
    private Path place;

    private static String name(int i) {
        return String.format("%02x-entry", i);
    }

    private static void old(Path entry, Duration age) throws IOException {
        Files.setLastModifiedTime(entry, FileTime.from(Instant.now().minus(age)));
    }

    private long held() throws IOException {
        try (Stream<Path> all = Files.walk(place)) {
            return all.filter(Files::isRegularFile).count();
        }
    }

    @Test
    void whatWasLongestUnusedGoesFirst() throws IOException {
        KeptFolder folder = KeptFolder.in(place, 8 * ENTRY);
        for (int i = 0; i < 8; i++) {
            folder.put(name(i), new byte[ENTRY]);
            old(folder.entry(name(i)), Duration.ofDays(30 - i));
        }
        assertEquals(8, held());
        // The oldest is used again, by another run.
        assertTrue(KeptFolder.in(place, 8 * ENTRY).get(name(0)).isPresent());
        folder.put(name(8), new byte[ENTRY]);
        // Three quarters of the limit are six entries.
        assertEquals(6, held());
        for (int i = 0; i < 9; i++) {
            assertEquals(i == 0 || i > 3, folder.get(name(i)).isPresent(), name(i));
        }
    }

    @Test
    void anotherRunsEntriesCountToo() throws IOException {
        KeptFolder.in(place).put(name(0), new byte[10 * ENTRY]);
        old(KeptFolder.in(place).entry(name(0)), Duration.ofDays(1));
        KeptFolder folder = KeptFolder.in(place, 8 * ENTRY);
        folder.put(name(1), new byte[ENTRY]);
        assertEquals(Optional.empty(), folder.get(name(0)));
        assertTrue(folder.get(name(1)).isPresent());
    }

    @Test
    void somebodysOwnFolderGrows() throws IOException {
        KeptFolder folder = KeptFolder.in(place);
        for (int i = 0; i < 20; i++) {
            folder.put(name(i), new byte[ENTRY]);
        }
        assertEquals(20, held());
        assertEquals(20, folder.added());
        assertArrayEquals(new byte[ENTRY], folder.get(name(3)).orElseThrow());
    }

    @Test
    void afterAFailureNothingMoreIsTriedAndItIsToldOnce() throws IOException {
        Path file = Files.writeString(place.resolve("file"), "in the way");
        KeptFolder folder = KeptFolder.in(file, KeptFolder.USUAL_LIMIT);
        folder.put(name(0), new byte[ENTRY]);
        assertTrue(folder.trouble().orElseThrow().getMessage().contains("file"), folder.trouble()::toString);
        Files.delete(file);
        folder.put(name(1), new byte[ENTRY]);
        assertEquals(0, held());
        assertEquals(0, folder.added());
    }
}
