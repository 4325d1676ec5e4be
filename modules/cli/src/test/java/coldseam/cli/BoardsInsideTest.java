package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.house.HouseAudit;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.detail.Detail;
import coldseam.report.words.FindingWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An old house of stone that is insulated inside, with the details that are drawn for such walls alone. */
@Tag("slow")
class BoardsInsideTest {

    private static final Path OLD = CommittedReport.ROOT.resolve("fixtures/houses/old");

    private static final String HOUSE = "boards-inside.yaml";

    @TempDir
    Path folder;

    private static ImmutableList<String> standing(Audit audit) {
        return audit.sheets()
                .collect(sheet -> sheet.result().detail().id())
                .distinct()
                .toSortedList()
                .toImmutable();
    }

    @Test
    void everySeamIsUnbrokenWithNothingTakenDown() {
        Audit audit = HouseAudit.of(OLD.resolve(HOUSE), Bench.SHARED).compute();
        assertEquals(Lists.immutable.empty(), audit.findings());
        assertFalse(standing(audit).isEmpty());
    }

    /** Nobody who chose nothing is given the better ones; and of two worst ones the colder. */
    @Test
    void whereNothingIsChosenTheWorstStandsIn() throws IOException {
        String text = Files.readString(OLD.resolve(HOUSE));
        Path bare = folder.resolve(HOUSE);
        Files.writeString(bare, text.substring(0, text.indexOf("points:")));
        Audit audit = HouseAudit.of(bare, Bench.SHARED).compute();
        assertEquals(
                Lists.immutable.of(
                        "eaves-cold-loft-inner-boards-end-below",
                        "existing-slab-edge-inner-boards-apart",
                        "gable-cold-loft-inner-boards-end-below",
                        "head-inner-bare",
                        "intermediate-floor-slab-through",
                        "jamb-inner-bare-reveal",
                        "outside-corner-solid-post",
                        "sill-inner-bare",
                        "slab-threshold-on-concrete"),
                standing(audit));
        // Those that would ask for a part to be taken down, and be drawn for other walls, are not told of.
        assertEquals(
                Lists.immutable.empty(),
                audit.sheets()
                        .flatCollect(BridgeSheet::withheld)
                        .collect(Detail::id)
                        .distinct());
    }

    /** Where slab, deck and roofs bear in the masonry, what stays is told of each; a course of blocks and a joint close what they can. */
    @Test
    void underATerraceWhatPassesIsToldAndWhatComesDownClosesIt() throws IOException {
        Path house = OLD.resolve("boards-inside-under-a-terrace.yaml");
        ImmutableList<String> closed = Lists.immutable.of(
                "Cold corner of 2 × parapet, outside corner",
                "Cold corner of wall to terrace, terrace edge over a room, outside corner",
                "Insulation broken at the abutment",
                "Insulation broken at the floor over an unheated space",
                "Insulation broken at the parapet",
                "Insulation broken at the terrace edge over a room",
                "Insulation broken at the wall to terrace",
                "Insulation, air and vapour control broken at the eaves of an insulated roof");
        ImmutableList<String> left = Lists.immutable.of(
                "Cold corner of intermediate floor, terrace edge over a room, wall to terrace, outside corner",
                "Insulation broken at the intermediate floor",
                "Insulation broken at the verge",
                "Much heat lost at the inside corner");
        assertEquals(
                closed.newWithAll(left).toSortedList(),
                titles(HouseAudit.of(house, Bench.SHARED).compute()));
        Path taken = folder.resolve("taken-down.yaml");
        Files.writeString(
                taken,
                Files.readString(house)
                        .replace(
                                "retrofit: {}",
                                "retrofit: {taken-down: [roof, parapet, foot of the wall, edge of the floor]}")
                        .replace("inner-boards-strip-on-the-slab", "slab-clear-of-inner-boards")
                        .replace("inner-boards-return-under-the-deck", "inner-boards-on-a-course")
                        .replace("inner-boards-board-up-the-wall", "inner-boards-on-a-course")
                        .replace("parapet-inner-boards-wrapped", "parapet-inner-boards-on-a-course")
                        .replace("eaves-rafters-through", "eaves-rafters-on-a-purlin-inside"));
        assertEquals(
                left.toSortedList(), titles(HouseAudit.of(taken, Bench.SHARED).compute()));
    }

    private static ImmutableList<String> titles(Audit audit) {
        return audit.findings()
                .collect(new FindingWords(UnitSystem.SI)::title)
                .toSortedList()
                .toImmutable();
    }
}
