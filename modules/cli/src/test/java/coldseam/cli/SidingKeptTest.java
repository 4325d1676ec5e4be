package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.FindingWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An old frame that is filled between its studs alone, its siding kept, on a new slab and under a parapet, with a storey that stands out. */
@Tag("slow")
class SidingKeptTest {

    private static final Path HOUSE = CommittedReport.ROOT.resolve("fixtures/houses/old/siding-kept.yaml");

    @TempDir
    Path folder;

    /** With nothing taken down. */
    @Test
    void allSeamsClose() {
        assertEquals(
                Lists.immutable.empty(),
                HouseAudit.of(HOUSE, Bench.SHARED)
                        .compute()
                        .findings()
                        .collect(new FindingWords(UnitSystem.SI)::title)
                        .toSortedList()
                        .toImmutable());
    }

    /** Where nobody chose, no seam is left without a value. */
    @Test
    void whatIsThereStandsInAtEverySeam() throws IOException {
        String text = Files.readString(HOUSE);
        Path bare = folder.resolve("bare.yaml");
        Files.writeString(bare, text.substring(0, text.indexOf("junctions:")));
        Audit audit = HouseAudit.of(bare, Bench.SHARED).compute();
        ImmutableList<String> standing = audit.sheets()
                .collect(sheet -> sheet.result().detail().id())
                .distinct()
                .toSortedList()
                .toImmutable();
        assertEquals(
                Lists.immutable.of(
                        "floor-change-in-frame-bays-empty",
                        "head-in-frame-bare",
                        "jamb-in-frame-pockets-empty",
                        "outside-corner-in-frame-solid-post",
                        "overhang-edge-in-frame-bays-empty",
                        "parapet-in-frame-bays-empty",
                        "sill-in-frame-bare",
                        "slab-edge-bare",
                        "slab-threshold-on-concrete",
                        "thickness-change-in-frame-solid-post",
                        "wall-under-overhang-gap"),
                standing);
    }
}
