package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.check.PublishedTable;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.JunctionKind;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The catalogue's psi in its typical build-ups beside the ranges of fixtures/published/psi-ranges.csv: inside, or outside for a
 * reason that the table gives. The ranges are the trade's and tables', mostly without a build-up, and so no proof of a number.
 */
@Tag("slow")
class PsiRangesTest {

    /** W/(m·K): half the last digit that the ranges are given to. */
    private static final double HALF_A_DIGIT = 0.005;

    /** Narrower than that digit. */
    private static final BridgeComputer COMPUTER = Bench.computer(new Accuracy(1e-3, 100_000), 100);

    private static final Catalogue CATALOGUE = CatalogueFile.builtIn();

    private static final ImmutableList<PublishedTable.Row> ROWS = PublishedTable.read(
                    CommittedReport.ROOT.resolve("fixtures/published/psi-ranges.csv"))
            .flatCollect(PublishedTable::rows);

    private static Detail detail(PublishedTable.Row row) {
        String[] named = row.text("option").split(" at ");
        return (named.length < 2 ? CATALOGUE.find(named[0]) : CATALOGUE.find(named[0], JunctionKind.of(named[1])))
                .orElseThrow(() -> new AssertionError(row.place() + ": no option \"" + row.text("option") + "\""));
    }

    private static Interval psi(PublishedTable.Row row) {
        Detail detail = detail(row);
        TypicalBuild build = TypicalBuild.valueOf(row.text("build").toUpperCase(Locale.ROOT));
        return COMPUTER.compute(detail, build.setup(detail))
                .psi(DimensionSystem.valueOf(row.text("dimensions").toUpperCase(Locale.ROOT)));
    }

    private static String verdict(PublishedTable.Row row, Interval psi) {
        if (psi.lower() > row.number("highest") + HALF_A_DIGIT) {
            return "above";
        }
        boolean atMost = row.text("lowest").isEmpty();
        return atMost || psi.upper() >= row.number("lowest") - HALF_A_DIGIT ? "inside" : "below";
    }

    @Test
    void eachOptionLiesWhereTheTableSays() {
        Map<Integer, String> faults = new ConcurrentHashMap<>();
        ROWS.castToList().parallelStream().forEach(row -> {
            Interval psi = psi(row);
            String verdict = verdict(row, psi);
            if (!verdict.equals(row.text("verdict"))) {
                faults.put(
                        ROWS.indexOf(row),
                        String.format(
                                Locale.ROOT,
                                "%s: %s, %s, %s is %.3f to %.3f W/(m·K), %s of [%s, %s]",
                                row.place(),
                                row.text("option"),
                                row.text("build"),
                                row.text("dimensions"),
                                psi.lower(),
                                psi.upper(),
                                verdict,
                                row.text("lowest"),
                                row.text("highest")));
            }
        });
        assertEquals("", String.join("\n", new java.util.TreeMap<>(faults).values()));
    }

    /** Whoever reads that an option lies outside reads why. */
    @Test
    void whatLiesOutsideSaysWhyAndWhatLiesInsideNeedsNoExcuse() {
        assertEquals(
                "",
                ROWS.select(row -> row.text("verdict").equals("inside")
                                        != row.text("why").isEmpty()
                                || !row.text("why").isEmpty() && row.text("why").length() < 30)
                        .collect(PublishedTable.Row::place)
                        .makeString("\n"));
        assertTrue(ROWS.count(row -> row.text("verdict").equals("inside")) > ROWS.size() / 2, "most lie inside");
    }
}
