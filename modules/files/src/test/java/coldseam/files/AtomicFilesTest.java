package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
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

    /** Bytes; enough for a write to take some time. */
    private static final int LARGE = 1 << 20;

    /** A guard against hanging; no speed is asserted. */
    private static final long HANGS_SECONDS = 120;

    /** Writes one file over and over, until it is killed. */
    static final class Writer {

        private Writer() {}

        public static void main(String[] arguments) throws IOException {
            while (true) {
                AtomicFiles.write(Path.of(arguments[0]), arguments[1].repeat(LARGE));
            }
        }
    }

    /** Two processes that write one file do not mix, and one that is killed leaves the whole of what it or the other wrote. */
    @Test
    void whoeverWritesAndIsKilledTheFileIsWhole(@TempDir Path folder) throws Exception {
        Path target = folder.resolve("audit.json");
        Process one = writer(target, "a", folder.resolve("one.txt"));
        Process other = writer(target, "b", folder.resolve("other.txt"));
        try {
            int seen = 0;
            for (long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(HANGS_SECONDS); seen < 100; ) {
                assertTrue(System.nanoTime() < end, "neither of one another's writes is seen");
                assertTrue(one.isAlive(), () -> said(folder.resolve("one.txt")));
                assertTrue(other.isAlive(), () -> said(folder.resolve("other.txt")));
                if (Files.exists(target)) {
                    seen += whole(target).equals(seen % 2 == 0 ? "a" : "b") ? 1 : 0;
                }
            }
        } finally {
            one.destroyForcibly().waitFor();
            other.destroyForcibly().waitFor();
        }
        whole(target);
    }

    private static Process writer(Path target, String letter, Path said) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Writer.class.getName(),
                        target.toString(),
                        letter)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
    }

    /** The letter that the file consists of. */
    private static String whole(Path target) throws IOException {
        String text = Files.readString(target);
        assertEquals(LARGE, text.length());
        assertEquals(text, text.substring(0, 1).repeat(LARGE));
        return text.substring(0, 1);
    }

    private static String said(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException none) {
            return none.toString();
        }
    }
}
