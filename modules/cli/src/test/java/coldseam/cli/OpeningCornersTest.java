package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.check.PublishedTable;
import coldseam.assemblies.check.PublishedTable.Row;
import coldseam.audit.Audit;
import coldseam.audit.OpeningCorners;
import coldseam.conduction.Interval;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.VertexWords;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Test;

/** What is told of the corners of windows and doors is what fixtures/published/window-corners.csv has, rounded outwards. */
class OpeningCornersTest {

    private static final ImmutableList<Row> CASES = PublishedTable.read(
                    CommittedReport.ROOT.resolve("fixtures/published/window-corners.csv"))
            .getOnly()
            .rows();

    @Test
    void theRangesHoldEveryCaseAndAreNoWider() {
        assertEquals(OpeningCorners.CASES, CASES.size());
        assertEquals(OpeningCorners.LAPPED, outwards(CASES.select(OpeningCornersTest::lapped)));
        assertEquals(OpeningCorners.UNLAPPED, outwards(CASES.reject(OpeningCornersTest::lapped)));
    }

    private static boolean lapped(Row row) {
        return row.text("frame").equals("lapped");
    }

    /** To hundredths of a W/K. */
    private static Interval outwards(ImmutableList<Row> rows) {
        double lower = rows.collectDouble(row -> row.number("chi from")).min();
        double upper = rows.collectDouble(row -> row.number("chi to")).max();
        return new Interval(Math.floor(lower * 100) / 100, Math.ceil(upper * 100) / 100);
    }

    @Test
    void fourOfEachAreToldBesideWhatIsCounted() {
        Audit audit = Bench.shared("shapes/walk-out");
        OpeningCorners corners = OpeningCorners.of(audit);
        assertEquals(36, corners.number());
        assertEquals(36 * 0.08, corners.unlapped().upper(), 1e-12);
        assertEquals(
                "H_T has nothing of these 36 corners; by 14 cases worked out in walls, they would add -0.36 to 0.36 W/K"
                        + " where boards lap every frame, -0.72 to 2.88 W/K where they lap none, the most in bare"
                        + " reveals of concrete.",
                VertexWords.ofOpenings(audit, UnitSystem.SI));
        assertTrue(VertexWords.ofOpenings(audit, UnitSystem.US).contains("Btu"));
    }
}
