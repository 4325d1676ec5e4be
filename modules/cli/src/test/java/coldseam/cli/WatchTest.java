package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.files.quantity.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house that is saved again and again, on a box whose junctions need no computing. */
class WatchTest {

    @TempDir
    Path folder;

    /** Saves the next text each time it is asked, until there is none. */
    private record Saving(Path file, Deque<String> texts) implements Watch.Waiting {
        @Override
        public String state(ImmutableList<Path> files) {
            return "";
        }

        @Override
        public boolean saved(ImmutableList<Path> files, String state) {
            if (texts.isEmpty()) {
                return false;
            }
            try {
                Files.writeString(file, texts.remove());
                return true;
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }

    private static String box() throws IOException {
        try (InputStream in = WatchTest.class.getResourceAsStream("box.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void saysWhatEachSavingChanged() throws IOException {
        Path file = Files.writeString(folder.resolve("box.yaml"), box());
        String worse = box().replace("walls: {all: wall}", "walls: {all: wall, east: bare wall}");
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = new Watch(file, Bench.SHARED, () -> UnitSystem.SI, Terminal.of(out, err), false)
                .run(new Saving(
                        file,
                        new ArrayDeque<>(List.of(worse, worse.replace("height: 3 m", "height: tall"), box(), box()))));
        assertEquals(Exit.FOUND.code(), code);
        String[] told = out.toString().split("Waiting for .* to be saved; Ctrl\\+C ends\\.\n");
        assertEquals(5, told.length, out::toString);
        assertTrue(told[0].contains("[detail-not-chosen]"), told[0]);

        assertTrue(told[1].contains("\n  new  "), told[1]);
        assertFalse(told[1].contains("\n  gone "), told[1]);
        assertTrue(told[1].contains(", before "), told[1]);

        assertEquals("", told[2].strip());
        assertTrue(err.toString().contains("box.yaml:34:13: height: a length is needed; got tall"), err::toString);

        // What went is said against the last house that could be read.
        assertTrue(told[3].contains("\n  gone "), told[3]);
        assertFalse(told[3].contains("\n  new "), told[3]);

        // The verdict never stands without what it assumes.
        for (int i : new int[] {0, 1, 3, 4}) {
            assertTrue(told[i].contains("\n  Of it assumed:\n  -  "), told[i]);
        }
        assertTrue(told[4].contains(", as before\n  findings as before"), told[4]);
        out.toString()
                .lines()
                .forEach(line -> assertTrue(
                        line.startsWith("Waiting") || line.codePointCount(0, line.length()) <= Terminal.WIDTH, line));
    }

    /** Remembers what was waited for. */
    private record Looking(List<ImmutableList<Path>> at) implements Watch.Waiting {
        @Override
        public String state(ImmutableList<Path> files) {
            at.add(files);
            return "";
        }

        @Override
        public boolean saved(ImmutableList<Path> files, String state) {
            return false;
        }
    }

    /** A detail of the house's own that has a fault, or is not there yet: it will be saved, not the house. */
    @Test
    void waitsForDetailsThatCannotBeRead() throws IOException {
        Path broken = Files.writeString(folder.resolve("my corner.yaml"), "detail: [");
        Path file = Files.writeString(
                folder.resolve("box.yaml"),
                box() + "junctions:\n- {kinds: [outside corner], detail: my corner.yaml}\n"
                        + "corners:\n- \"later.yml\"\n- ./deep/last.json # like the first.yaml\n# and no\0name.yaml\n");
        Looking looking = new Looking(new ArrayList<>());
        StringWriter err = new StringWriter();
        int code = new Watch(file, Bench.SHARED, () -> UnitSystem.SI, Terminal.of(new StringWriter(), err), false)
                .run(looking);
        assertEquals(Exit.REFUSED.code(), code);
        assertTrue(looking.at().get(0).containsAll(List.of(file, broken, folder.resolve("later.yml"))), err::toString);
        assertTrue(looking.at().get(0).contains(file.resolveSibling("./deep/last.json")), looking::toString);
    }

    /** Phases are of one run: an option that would be passed over in silence is refused. */
    @Test
    void timesNoWatching() {
        Run run = Run.with(Bench.SHARED, "check", folder.resolve("box.yaml").toString(), "--watch", "--timings");
        assertEquals(Exit.REFUSED.code(), run.code());
        assertTrue(run.err().startsWith("--watch: got it with --timings"), run::err);
    }

    /** Also where it was saved between reading and waiting, and where it is gone for a while. */
    @Test
    void aSavedFileIsSeen() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "one");
        Polling polling = new Polling(Duration.ofMillis(5));
        ImmutableList<Path> files = Lists.immutable.of(file, folder.resolve("b.yaml"));
        String before = polling.state(files);
        Files.writeString(folder.resolve("b.yaml"), "new");
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> assertTrue(polling.saved(files, before)));
        String with = polling.state(files);
        Files.delete(file);
        assertTimeoutPreemptively(Duration.ofSeconds(30), () -> assertTrue(polling.saved(files, with)));
        Thread.currentThread().interrupt();
        assertFalse(polling.saved(files, polling.state(files)), "nobody waits any more");
        assertTrue(Thread.interrupted(), "the interrupt is kept");
    }
}
