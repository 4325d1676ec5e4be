package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.junctions.catalogue.CatalogueFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run that reads what an earlier one read tells the same, to the byte, without auditing; whatever differs is audited. */
class KeptRunTest {

    private static final String WHOLE = "Kept results: all of this audit, in ";
    private static final String OWN_PSI = "kinds: [slab edge, outside corner, flat roof edge]";

    @TempDir
    Path folder;

    private Path house;
    private Path store;
    private Path pdf;

    @BeforeEach
    void box() throws IOException {
        store = folder.resolve("store");
        pdf = folder.resolve("box.pdf");
        try (InputStream in = KeptRunTest.class.getResourceAsStream("box.yaml")) {
            house = Files.write(folder.resolve("box.yaml"), in.readAllBytes());
        }
    }

    /** Another process's run: nothing is remembered but on disk. */
    private Run run(String build, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Coldseam.run(
                Terminal.of(out, err), new BuiltInWorkshop(() -> Optional.of(build)), Optional.of(store), arguments);
        return new Run(code, out.toString(), err.toString());
    }

    private Run check(String... more) {
        return run(
                "build",
                Stream.concat(Stream.of("check", house.toString()), Stream.of(more))
                        .toArray(String[]::new));
    }

    private Run audit(String... more) {
        return run(
                "build",
                Stream.concat(Stream.of("audit", house.toString(), "-o", pdf.toString()), Stream.of(more))
                        .toArray(String[]::new));
    }

    private static boolean whole(Run run) {
        return run.err().contains(WHOLE);
    }

    private void edit(Path file, String old, String by) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(old), old);
        Files.writeString(file, text.replace(old, by));
    }

    @Test
    void theSameAgainIsToldAgain() throws IOException {
        Run first = check();
        assertTrue(!whole(first), first::err);
        Run second = check();
        assertTrue(whole(second), second::err);
        assertEquals(first.out(), second.out());
        assertEquals(Exit.FOUND.code(), second.code());
    }

    @Test
    void documentsAreTheSameWhereverTheyGo() throws IOException {
        Path csv = folder.resolve("box.csv");
        Run first = audit(
                "--csv", csv.toString(), "--json", folder.resolve("box.json").toString());
        Path other = folder.resolve("other");
        Run second = run(
                "build",
                "audit",
                house.toString(),
                "--json",
                other.resolve("b.json").toString(),
                "--csv",
                other.resolve("b.csv").toString(),
                "-o",
                other.resolve("b.pdf").toString());
        assertTrue(!whole(first) && whole(second), second::err);
        assertArrayEquals(Files.readAllBytes(pdf), Files.readAllBytes(other.resolve("b.pdf")));
        for (String each : List.of(
                ".json",
                ".csv",
                "-surfaces.csv",
                "-openings.csv",
                "-points.csv",
                "-heat-loss.csv",
                "-moisture.csv",
                "-pairs.csv",
                "-vertices.csv")) {
            assertEquals(
                    Files.readString(folder.resolve("box" + each)), Files.readString(other.resolve("b" + each)), each);
        }
        assertTrue(second.out().contains("Written: " + other.resolve("b.pdf")), second::out);
    }

    @Test
    @Tag("slow")
    void whateverDecidesTheAnswerIsInItsName() throws IOException {
        assertTrue(!whole(check()));
        assertTrue(!whole(check("--units", "us")));
        assertTrue(!whole(check("--unknowns", "100000")));
        assertTrue(!whole(audit()));
        assertTrue(!whole(audit("--units", "us")));
        assertTrue(!whole(audit("--paper", "letter")));
        assertTrue(!whole(audit("--json", folder.resolve("box.json").toString())));
        assertTrue(!whole(audit("--csv", folder.resolve("box.csv").toString())));
        assertTrue(!whole(run("another build", "check", house.toString())));
        assertTrue(!whole(check("--no-store")));
        edit(house, "# A box", "# The box");
        assertTrue(!whole(check()));
        edit(house, "# The box", "# A box");
        assertTrue(whole(check()), "what was there before is still known");
    }

    /** What the house names is read as well, and so is in the name: by its content, which a house file does not show. */
    @Test
    @Tag("slow")
    void aDetailBesideTheHouseCounts() throws IOException {
        Path own = folder.resolve("own.yaml");
        try (InputStream in = CatalogueFile.class.getResourceAsStream("/details/outside-corner-unbroken.yaml")) {
            Files.write(own, in.readAllBytes());
        }
        Files.setLastModifiedTime(own, FileTime.from(Instant.now().minusSeconds(60)));
        edit(
                house,
                "own-psi:\n- {" + OWN_PSI,
                "junctions: [{kinds: [outside corner], detail: own.yaml}]\nown-psi:\n- {"
                        + OWN_PSI.replace("outside corner, ", ""));
        Run first = check();
        assertEquals(Exit.FOUND.code(), first.code(), first::err);
        Run second = check();
        assertTrue(whole(second), second::err);
        assertEquals(first.out(), second.out());
        edit(own, "name: ", "name: Own ");
        Run renamed = check();
        assertTrue(!whole(renamed), renamed::err);
        Files.delete(own);
        Run without = check();
        assertEquals(Exit.REFUSED.code(), without.code(), without::out);
    }

    @Test
    void whatIsTornIsAuditedAnew() throws IOException {
        Run first = check();
        try (Stream<Path> all = Files.walk(store)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                byte[] bytes = Files.readAllBytes(file);
                bytes[bytes.length / 2] ^= 1;
                Files.write(file, bytes);
            }
        }
        Run second = check();
        assertTrue(!whole(second), second::err);
        assertEquals(first.out(), second.out());
        assertTrue(whole(check()), "and is kept anew");
    }

    @Test
    void aRefusalIsNotKept() throws IOException {
        edit(house, "20 °C", "20 furlongs");
        Run first = check();
        assertEquals(Exit.REFUSED.code(), first.code());
        Run second = check();
        assertTrue(!whole(second), second::err);
        assertEquals(first.err(), second.err());
        assertNotEquals("", first.err());
    }

    @Test
    void everyPartOfWhatIsToldIsKept() {
        Told told = new Told(
                7, Lists.immutable.of("ψ", ""), Lists.immutable.of(new byte[] {1, -2}, Told.bytes("x\n"), new byte[0]));
        Told back = Told.read(told.write());
        assertEquals(7, back.code());
        assertEquals(told.lines(), back.lines());
        assertEquals(3, back.documents().size());
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(told.documents().get(i), back.documents().get(i));
        }
        assertEquals("x\n", new String(back.documents().get(1), StandardCharsets.UTF_8));
    }
}
