package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.assumed.OldParts;
import coldseam.audit.house.HouseAudit;
import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An old frame house whose sheathing and siding stay under two layers of board, held by screws through furring. */
@Tag("slow")
class BoardsOverSidingTest {

    /** W/(m²·K); the reckoning by hand is rounded to it. */
    private static final double BY_HAND = 1e-4;

    /**
     * Sill plate, rim, header and thresholds draw over it, and the screws count in U. ISO 6946:2017 annex F.3 (from memory),
     * worked out apart: 0.8·50·28.27 mm²·6.25/m² / 0.16 m · (4.571 / 7.606)² = 0.0160 W/(m²·K), the whole resistance without the studs
     * as bridges.
     */
    @Test
    void seamsDrawOverItAndScrewsCount() {
        Audit audit = HouseAudit.of(
                        CommittedReport.ROOT.resolve("fixtures/houses/old/boards-over-siding.yaml"), Bench.SHARED)
                .compute();
        assertEquals(Lists.immutable.empty(), audit.findings());
        // Old studs may run past the floor; the file does not say that they do.
        assertEquals(
                Lists.immutable.of("intermediate floor"),
                OldParts.PLATFORM.in(audit).collect(JunctionRow::kindLabel).distinct());
        AssemblyRow wall =
                audit.assemblies().detect(row -> row.assembly().name().equals("wall"));
        assertEquals(0.0160, wall.transmittance() - wall.build().uncorrected(), BY_HAND);
    }
}
