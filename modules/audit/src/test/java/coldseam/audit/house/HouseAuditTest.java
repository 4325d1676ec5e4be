package coldseam.audit.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.engine.Sample;
import coldseam.envelope.House;
import coldseam.files.Fault;
import coldseam.files.Faults;
import coldseam.files.FileFaultException;
import coldseam.files.KnownNames;
import coldseam.files.Position;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.catalogue.Catalogue;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The front door: what every caller gets. */
class HouseAuditTest {

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void write() throws IOException {
        file = Files.writeString(folder.resolve("box.yaml"), Sample.yaml());
    }

    /** The details of the sample; {@code meanwhile} happens once the file has been read. */
    private static Workshop workshop(Runnable meanwhile, BridgeComputer computer) {
        Catalogue catalogue = Sample.catalogue(Sample.good());
        return new Workshop() {
            @Override
            public KnownNames known(Path houseFile) {
                meanwhile.run();
                return KnownNames.of(catalogue.junctions().collect(each -> each.id()));
            }

            @Override
            public Catalogue catalogue(House house, Path houseFile) {
                return catalogue;
            }

            @Override
            public BridgeComputer computer() {
                return computer;
            }
        };
    }

    @Test
    void digestIsThatOfTheBytesThatWereReadWhateverBecomesOfTheFile() throws Exception {
        byte[] read = Files.readAllBytes(file);
        Audit audit = HouseAudit.of(file, workshop(() -> overwrite("house: another\n"), Sample.computer()))
                .compute();
        assertEquals(
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(read)), audit.inputDigest());
        assertEquals(Sample.house(Sample.yaml()).name(), audit.house().name());
    }

    private void overwrite(String content) {
        try {
            Files.writeString(file, content);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Test
    void anyCallerGetsTheChecksOfDetailsAndPoints() throws IOException {
        Files.writeString(
                file,
                Sample.yaml()
                        + "points:\n  posts: {surface: nowhere, detail: steel-post-on-block, number: 2}\n"
                        + "own-psi:\n- {surfaces: [elsewhere], psi: 0.1 W/(m·K), source: a guess}\n");
        FileFaultException refused = assertThrows(
                FileFaultException.class, () -> HouseAudit.of(file, workshop(() -> {}, Sample.computer())));
        ImmutableList<String> said = refused.faults().collect(Fault::message);
        assertEquals(2, said.size(), said::toString);
        int lines = (int) Sample.yaml().lines().count();
        assertTrue(
                said.get(0).startsWith(file + ":" + (lines + 2) + ":20: the name of a surface of this house"),
                said::toString);
        assertTrue(
                said.get(1).startsWith(file + ":" + (lines + 4) + ":15: the name of a surface, an opening"),
                said::toString);
    }

    /** A point on a gable hung there until a window was made higher; the gable of another wing was named as meant. */
    @Test
    void aGableThatIsOneWithItsWallIsToldSo() {
        Faults faults = new Faults();
        LateChecks.unknown(
                new Position(file.toString(), 1, 1),
                "a surface",
                "gable over house north wall",
                Lists.immutable.of("gable over house south wall", "house north wall"),
                faults);
        assertTrue(
                faults.sorted().getOnly().message().contains("; write \"house north wall\": a window reaches from it"),
                () -> faults.sorted().toString());
    }

    @Test
    void progressCountsUpToAllOfEachStep() {
        var heard = Lists.mutable.<String>empty();
        HouseAudit.of(file, workshop(() -> {}, Sample.computer()))
                .compute((step, done, of) -> heard.add(step + " " + done + "/" + of));
        assertEquals("junctions 0/3", heard.getFirst());
        assertTrue(heard.contains("junctions 3/3"), heard::toString);
    }
}
