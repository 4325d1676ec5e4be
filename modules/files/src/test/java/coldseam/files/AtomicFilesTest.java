package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
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

    @Test
    void throughALinkTheFileIsWrittenThatItLeadsTo(@TempDir Path folder) throws IOException {
        Path there = Files.writeString(folder.resolve("there.pdf"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.pdf"), Path.of("there.pdf"));
        AtomicFiles.write(link, "new");
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(there));
        Path toNothing = Files.createSymbolicLink(folder.resolve("to-nothing.pdf"), Path.of("more/not-yet.pdf"));
        AtomicFiles.write(toNothing, "first");
        assertTrue(Files.isSymbolicLink(toNothing));
        assertEquals("first", Files.readString(folder.resolve("more/not-yet.pdf")));
        Path round = Files.createSymbolicLink(folder.resolve("round.pdf"), Path.of("round.pdf"));
        assertThrows(IOException.class, () -> AtomicFiles.write(round, "text"));
    }

    @Test
    void aPipeStaysOneAndTakesTheBytes(@TempDir Path folder) throws Exception {
        Path pipe = folder.resolve("pipe");
        try {
            assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
        } catch (IOException noSuchProgram) {
            assumeTrue(false, "no program that makes a pipe");
        }
        CompletableFuture<String> read = CompletableFuture.supplyAsync(() -> said(pipe));
        AtomicFiles.write(pipe, "all of it");
        assertFalse(Files.isRegularFile(pipe), "a file has taken its place");
        assertEquals("all of it", read.get(HANGS_SECONDS, TimeUnit.SECONDS));
    }

    /** The longest name that most file systems have, bytes. */
    private static final int LONGEST_NAME = 255;

    @Test
    void theLongestNameIsWritten(@TempDir Path folder) throws IOException {
        Path target = folder.resolve("a".repeat(LONGEST_NAME - ".csv".length()) + ".csv");
        AtomicFiles.write(target, "seams");
        assertEquals("seams", Files.readString(target));
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
