package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The house files that {@code coldseam start} writes. */
class StartTest {

    private static final Path HOUSES = CommittedReport.ROOT.resolve("fixtures/houses");

    @TempDir
    Path folder;

    @Test
    void aFileIsWrittenAndTheNextCommandNamed() throws IOException {
        Path file = folder.resolve("my house.yaml");
        Run run = Run.of("start", file.toString());
        assertEquals(0, run.code(), run::err);
        assertEquals(Files.readString(HOUSES.resolve("first-house.yaml")), Files.readString(file));
        assertTrue(run.out().contains("coldseam check \"" + file + '"'), run::out);
        assertTrue(
                run.out().contains("coldseam audit \"" + file + "\" -o \"" + folder.resolve("my house.pdf") + '"'),
                run::out);
        Path old = folder.resolve("new folder/old.yaml");
        assertEquals(0, Run.of("start", "--old", old.toString()).code());
        assertEquals(Files.readString(HOUSES.resolve("old/brick-house.yaml")), Files.readString(old));
    }

    @Test
    void aFileThatIsThereStays() throws IOException {
        Path file = Files.writeString(folder.resolve("house.yaml"), "mine");
        Run run = Run.of("start", file.toString());
        assertEquals(2, run.code());
        assertEquals(file + ": is there already; name another file\n", run.err());
        assertEquals("mine", Files.readString(file));
        Run inside = Run.of("start", folder.toString());
        assertEquals(2, inside.code());
        assertEquals(folder + ": is a folder; name a file in it\n", inside.err());
        assertEquals(List.of(file), Files.list(folder).toList());
    }

    /** One begins with nothing found, so that whatever is found later came by what one changed. */
    @Test
    @Tag("slow")
    void theOldHouseIsUnbrokenAsItStands() {
        assertEquals(
                List.of(),
                Bench.shared(HOUSES.resolve("old/brick-house.yaml"))
                        .findings()
                        .collect(Finding::toString)
                        .castToList());
    }
}
