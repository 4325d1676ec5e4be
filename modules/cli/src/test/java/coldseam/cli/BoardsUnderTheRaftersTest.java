package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
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

/** An old house whose covering stays: boards outside its walls, and under its rafters from the rooms. */
@Tag("slow")
class BoardsUnderTheRaftersTest {

    private static final Path OLD = CommittedReport.ROOT.resolve("fixtures/houses/old");

    private static final String HOUSE = "boards-under-the-rafters.yaml";

    @TempDir
    Path folder;

    private static ImmutableList<Detail> standing(Audit audit) {
        return audit.sheets().collect(sheet -> sheet.result().detail()).distinct();
    }

    /** Eaves, gables and collar are joined, and rain led out over the walls' boards; what nothing joins while the old house stands is a gap and is said to be one. */
    @Test
    void whatCannotBeJoinedWithNothingTakenDownIsAllThatIsFound() {
        Audit audit = HouseAudit.of(OLD.resolve(HOUSE), Bench.SHARED).compute();
        assertEquals(
                Lists.immutable.of("Insulation broken at the existing slab edge"),
                audit.findings().collect(new FindingWords(UnitSystem.SI)::title).toSortedList());
        assertEquals(
                Lists.immutable.empty(),
                standing(audit)
                        .reject(each -> each.suits().takesDown().isEmpty())
                        .collect(Detail::id));
    }

    /** Without a collar the slopes' boards meet below the ridge; with boards inside the walls too, those at eaves and verges. */
    @Test
    void boardsInsideRoofAndWallsMeetEverywhereButOnTheSlab() throws IOException {
        String wall = "    - {material: mineral wool board, thickness: 140 mm, role: insulation, controls: [heat]}\n";
        String studs =
                "    - {material: mineral wool batt, thickness: 100 mm, role: structure, framing: {material: softwood, share: 20 %}}\n";
        String text = Files.readString(OLD.resolve(HOUSE))
                .replaceFirst("    collar: .*\n", "")
                .replaceFirst("(?s)  collar:\n    layers:.*?  slab:", "  slab:")
                .replace(
                        "- {kinds: [slope to collar ceiling], detail: collar-stiff-boards-between-rafters-and-joists}",
                        "- {kinds: [ridge], detail: ridge-inner-boards-mitred}")
                .replaceFirst("- .kinds: .gable under a cold loft.*\n", "");
        assertEquals(Lists.immutable.of("Insulation broken at the existing slab edge"), titles(text));
        String inside = text.replace(wall, "")
                .replace("    - {material: plywood, thickness: 12 mm, role: structure, controls: [air, vapour]}\n", "")
                .replace(
                        studs,
                        "    - {material: airtight membrane, thickness: 0.5 mm, role: membrane, controls: [air, vapour]}\n"
                                + wall + studs)
                .replace("eaves-stiff-boards-between-rafters-over-the-plate", "eaves-inner-boards-meet")
                .replace("verge-stiff-boards-between-the-studs", "verge-inner-boards-meet");
        assertEquals(Lists.immutable.empty(), titles(inside).select(each -> each.matches(".* (eaves|verge|ridge).*")));
    }

    private ImmutableList<String> titles(String text) throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, text);
        return HouseAudit.of(file, Bench.SHARED)
                .compute()
                .findings()
                .collect(new FindingWords(UnitSystem.SI)::title)
                .toSortedList()
                .toImmutable();
    }

    /** The worst for any build goes before that for one, where it fits; at the eaves it does not. */
    @Test
    void whereNothingIsChosenTheWorstStandsIn() throws IOException {
        String text = Files.readString(OLD.resolve(HOUSE));
        Path bare = folder.resolve(HOUSE);
        Files.writeString(bare, text.substring(0, text.indexOf("junctions:")));
        Audit audit = HouseAudit.of(bare, Bench.SHARED).compute();
        assertEquals(
                Lists.immutable.of(
                        "collar-square-cut",
                        "eaves-inner-boards-end-at-the-plate",
                        "verge-inner-boards-end-at-the-gable"),
                standing(audit)
                        .collect(Detail::id)
                        .select(each -> each.matches("(collar|eaves|verge)-.*"))
                        .toSortedList());
    }
}
