package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.Audit;
import coldseam.audit.house.HouseAudit;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.house.HouseDrawing;
import coldseam.report.words.FindingWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which findings the pictures of a house show. */
@Tag("slow")
class HouseDrawingTest {

    @TempDir
    Path folder;

    /** Of the edges along a sunk half's floor the first of the longest lies under the other half, the rest in the open. */
    @Test
    void aFindingIsMarkedAtAnyPlaceOfItThatShows() throws IOException {
        String text = Files.readString(CommittedReport.ROOT.resolve("fixtures/houses/shapes/split-level.yaml"));
        Path open = Files.writeString(folder.resolve("open.yaml"), text.substring(0, text.indexOf("junctions:")));
        Audit audit = HouseAudit.of(open, Bench.SHARED).compute();
        FindingWords words = new FindingWords(UnitSystem.SI);
        List<String> hidden = new HouseDrawing(audit, HouseDrawing.Views.of(audit.shell()))
                .hidden()
                .collect(words::title)
                .castToList();
        assertEquals(List.of("No detail chosen: stepped footing"), hidden);
    }
}
