package coldseam.junctions.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs kept on disk. */
class RunStoreTest {

    private static final ImmutableList<String> NONE = Lists.immutable.empty();
    private static final byte[] ANSWER = {1, 2, 3};

    @TempDir
    private Path folder;

    private KeptFolder kept;
    private Path file;

    @BeforeEach
    void write() throws IOException {
        kept = KeptFolder.in(folder.resolve("store"));
        file = Files.writeString(folder.resolve("house.yaml"), "a house");
    }

    private RunStore run(String... asked) {
        return RunStore.of(kept, "tool", file, Lists.immutable.with(asked)).orElseThrow();
    }

    private String digest() throws IOException {
        return HexFormat.of().formatHex(Seal.sha256().digest(Files.readAllBytes(file)));
    }

    private Path beside(String name, Instant written) throws IOException {
        Path other = Files.writeString(folder.resolve(name), "a detail");
        return Files.setLastModifiedTime(other, FileTime.from(written));
    }

    @Test
    void whatWasKeptIsFound() throws IOException {
        assertEquals(Optional.empty(), run("a").find());
        run("a").keep(digest(), NONE, ANSWER);
        assertArrayEquals(ANSWER, run("a").find().orElseThrow());
        assertEquals(1, kept.found());
        assertEquals(Optional.empty(), run("b").find());
        assertEquals(Optional.empty(), run("a", "").find());
        assertEquals(
                Optional.empty(),
                RunStore.of(kept, "another", file, Lists.immutable.of("a"))
                        .orElseThrow()
                        .find());
    }

    /** The file was saved while the run began: the answer is of what was read, the name of what was there before. */
    @Test
    void ofAFileThatChangedMeanwhileNothingIsKept() throws IOException {
        RunStore begun = run();
        String before = digest();
        Files.writeString(file, "another house");
        begun.keep(digest(), NONE, ANSWER);
        Files.writeString(file, "a house");
        assertEquals(Optional.empty(), run().find());
        run().keep(before, NONE, ANSWER);
        assertArrayEquals(ANSWER, run().find().orElseThrow());
    }

    @Test
    void filesThatItNamesCountByTheirContent() throws IOException {
        Path own = beside("own.yaml", Instant.now().minusSeconds(60));
        run().keep(digest(), Lists.immutable.of("own.yaml"), ANSWER);
        assertArrayEquals(ANSWER, run().find().orElseThrow());
        Files.writeString(own, "another detail");
        assertEquals(Optional.empty(), run().find());
        Files.writeString(own, "a detail");
        assertArrayEquals(ANSWER, run().find().orElseThrow());
        Files.delete(own);
        assertEquals(Optional.empty(), run().find());
    }

    @Test
    void ofFilesThatWereWrittenMeanwhileNothingIsKept() throws IOException {
        RunStore begun = run();
        beside("own.yaml", Instant.now().plusSeconds(1));
        begun.keep(digest(), Lists.immutable.of("own.yaml"), ANSWER);
        assertEquals(0, kept.added());
    }

    @Test
    void whatAnotherRunMayBetterIsNotKept() throws IOException {
        RunStore begun = run();
        kept.answer("ab", content -> "", () -> "limited by memory", answer -> Optional.empty());
        begun.keep(digest(), NONE, ANSWER);
        assertEquals(0, kept.added());
    }

    @Test
    void whatIsNoFileCannotBeReadTwice() {
        assertEquals(Optional.empty(), RunStore.of(kept, "tool", folder, NONE));
        assertEquals(Optional.empty(), RunStore.of(kept, "tool", folder.resolve("none.yaml"), NONE));
    }

    /** Data count as classes do; what lies in folders is a build at work. */
    @Test
    void aToolIsAllThatLiesInItsJars() throws IOException {
        Path jar = jar("one.jar", "details/corner.yaml", "psi");
        Optional<String> tool = RunStore.tool(jar.toString());
        assertEquals(
                tool, RunStore.tool(jar("two.jar", "details/corner.yaml", "psi").toString()));
        assertNotEquals(
                tool, RunStore.tool(jar("two.jar", "details/corner.yaml", "chi").toString()));
        assertNotEquals(
                tool, RunStore.tool(jar("two.jar", "details/edge.yaml", "psi").toString()));
        assertNotEquals(tool, RunStore.tool(jar + File.pathSeparator + folder.resolve("two.jar")));
        assertEquals(Optional.empty(), RunStore.tool(jar + File.pathSeparator + folder));
        assertEquals(Optional.empty(), RunStore.tool(""));
        Path longer = Files.write(folder.resolve("long.jar"), new byte[100]);
        assertEquals(Optional.empty(), RunStore.tool(longer.toString()));
        Path shorter = Files.write(folder.resolve("short.jar"), new byte[1]);
        assertEquals(Optional.empty(), RunStore.tool(shorter.toString()));
    }

    private Path jar(String name, String entry, String content) throws IOException {
        Path jar = folder.resolve(name);
        try (JarOutputStream to = new JarOutputStream(Files.newOutputStream(jar))) {
            JarEntry made = new JarEntry(entry);
            made.setTime(0);
            to.putNextEntry(made);
            to.write(content.getBytes(java.nio.charset.StandardCharsets.UTF_8));
            to.closeEntry();
        }
        return jar;
    }
}
