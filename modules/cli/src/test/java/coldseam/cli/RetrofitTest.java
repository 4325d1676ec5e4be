package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.house.BuiltInWorkshop;
import coldseam.audit.house.HouseAudit;
import coldseam.files.FileFaultException;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.store.KeptFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An old house is told, and its savings are counted against, only what can be built in the structure that stays. */
@Tag("slow")
class RetrofitTest {

    private static final Path BOX = CommittedReport.ROOT.resolve("fixtures/houses/planted/box.yaml");

    @TempDir
    Path folder;

    private Audit audit(String retrofit, String slabEdge) throws IOException {
        return HouseAudit.of(
                        written(retrofit, slabEdge),
                        new BuiltInWorkshop().keepingIn(KeptFolder.in(folder.resolve("solved"))))
                .compute();
    }

    private Path written(String retrofit, String slabEdge) throws IOException {
        Path file = folder.resolve("box.yaml");
        Files.writeString(
                file,
                Files.readString(BOX)
                        .replace("assemblies:\n", retrofit + "assemblies:\n")
                        .replace("detail: slab-edge-raft", "detail: " + slabEdge));
        return file;
    }

    private static BridgeSheet<?> slabEdge(Audit audit) {
        return audit.sheets().detect(sheet -> sheet.kind().equals("slab edge"));
    }

    private static Optional<String> best(Audit audit) {
        return slabEdge(audit).best().map((BridgeResult found) -> found.detail().id());
    }

    private static ImmutableList<String> options(Audit audit) {
        return slabEdge(audit)
                .options()
                .collect(option -> ((BridgeResult) option).detail().id());
    }

    @Test
    void anOldHouseIsNotToldToPutBoardsUnderItsWalls() throws IOException {
        String strip = "slab-edge-in-old-walls-strip";
        Audit fresh = audit("", "slab-edge-bare");
        assertEquals(Optional.of("slab-edge-raft"), best(fresh));
        assertFalse(options(fresh).anySatisfy(id -> id.contains("in-old-walls")));

        Audit old = audit("retrofit: {built-new: [lowest floor]}\n", strip);
        assertEquals(Optional.empty(), best(old), "nothing better leaves the walls as they are");
        assertTrue(options(old).allSatisfy(id -> id.contains("in-old-walls")), options(old)::toString);

        Audit cut = audit("retrofit: {built-new: [lowest floor], taken-down: [foot of the wall]}\n", strip);
        assertEquals(Optional.of("slab-edge-in-old-walls-course"), best(cut));
    }

    @Test
    void theEdgeOfAFloorThatStaysIsAKindOfItsOwn() throws IOException {
        Audit kept = audit("retrofit: {}\n", "slab-edge-raft");
        assertFalse(kept.sheets().anySatisfy(sheet -> sheet.kind().equals("slab edge")));
        assertTrue(kept.sheets().anySatisfy(sheet -> sheet.kind().equals("existing slab edge")));
        // The choice for a new slab's edge means it no more, so it is a seam that nobody handled.
        assertTrue(kept.findings()
                .flatCollect(finding -> finding.breaches())
                .anySatisfy(breach -> breach.rule().equals("detail-not-chosen")));
    }

    @Test
    void namesOfWhatComesDownAreKnown() throws IOException {
        Path file = written("retrofit: {built-new: [lowest flor], taken-down: [parapets]}\n", "slab-edge-raft");
        FileFaultException refused =
                assertThrows(FileFaultException.class, () -> HouseAudit.of(file, new BuiltInWorkshop()));
        assertEquals(2, refused.faults().size());
        assertEquals(
                "did you mean \"lowest floor\"?", refused.faults().getFirst().next());
        assertEquals("did you mean \"parapet\"?", refused.faults().getLast().next());
    }
}
