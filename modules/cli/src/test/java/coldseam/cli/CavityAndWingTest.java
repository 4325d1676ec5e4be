package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.Audit;
import coldseam.audit.assumed.Layering;
import coldseam.audit.assumed.Unlisted;
import coldseam.audit.house.HouseAudit;
import coldseam.envelope.JunctionKind;
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

/** A house of cavity brick under boards, and a new wing beside its old floor. */
@Tag("slow")
class CavityAndWingTest {

    private static final Path HOUSE = CommittedReport.ROOT.resolve("fixtures/houses/old/cavity-and-wing.yaml");

    private static final String FILLING = "    - {material: loose mineral wool, thickness: 65 mm, role: structure}\n";

    @TempDir
    Path folder;

    private Audit audit(String text) throws IOException {
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, text);
        return HouseAudit.of(file, Bench.SHARED).compute();
    }

    private static ImmutableList<String> titles(Audit audit) {
        return audit.findings().collect(new FindingWords(UnitSystem.SI)::title);
    }

    /** Its roof stays, and its ground floor. */
    @Test
    void allSeamsOfFilledCavityBrickCanBeBuilt() {
        Audit audit = HouseAudit.of(HOUSE, Bench.SHARED).compute();
        assertEquals(Lists.immutable.empty(), titles(audit));
        assertEquals(Lists.immutable.empty(), Unlisted.WALLS_BETWEEN_FLOORS.in(audit));
        assertEquals(Lists.immutable.empty(), Layering.CAVITY.in(audit));
    }

    /** Left empty, its cavity must be closed: no board outside holds back the air that gets in. */
    @Test
    void anEmptyCavityIsTold() throws IOException {
        Audit audit = audit(
                Files.readString(HOUSE)
                        .replace(
                                FILLING,
                                "    - {material: air, thickness: 50 mm, role: air layer, air: {ventilation: unventilated}}\n"));
        assertEquals(Lists.immutable.empty(), titles(audit));
        assertEquals(
                "cavity wall", Layering.CAVITY.in(audit).getOnly().assembly().name());
        // Floors bear on the inner leaf: a slab through the cavity would lose 0.035 W/(m·K) more.
        assertTrue(audit.junctions()
                .select(row -> row.sheet()
                        .filter(sheet -> sheet.result().detail().kind() == JunctionKind.INTERMEDIATE_FLOOR)
                        .isPresent())
                .allSatisfy(row -> row.psi().upper() < 0.01));
    }

    /** What fills the cavity runs on past a gap of the boards, and closes none: floors and lintels go through it. */
    @Test
    void theFillingClosesNoGapOfTheBoards() throws IOException {
        Audit audit = audit(Files.readString(HOUSE)
                .replace("detail: outside-corner-unbroken", "detail: outside-corner-solid-post"));
        assertEquals(Lists.immutable.of("Insulation broken at the outside corner"), titles(audit));
        assertEquals(
                Lists.immutable.of(0.0),
                audit.sheets()
                        .select(sheet -> sheet.result().detail().kind() == JunctionKind.OUTSIDE_CORNER)
                        .collect(sheet -> sheet.result().penLine().leastNeck())
                        .distinct());
    }
}
