package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.audit.house.BuiltInWorkshop;
import coldseam.files.SameNames;
import coldseam.junctions.TypicalBuild;
import coldseam.junctions.atlas.Sweep;
import coldseam.junctions.catalogue.CatalogueFile;
import coldseam.junctions.detail.Detail;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.MutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** reports/atlas.csv against the catalogue: all of its options, and two of its kinds solved again. */
@Tag("slow")
class CommittedAtlasTest {

    private static final String OPTION = "option";
    private static final String FITS = "fits";

    /** The table prints six digits. */
    private static final double PRINTED = 1e-6;

    @TempDir
    Path folder;

    /** Rows by their columns. */
    private static ImmutableList<MutableMap<String, String>> rows(Path csv) throws IOException {
        List<String> lines = Files.readAllLines(csv);
        List<String> head = cells(lines.get(0));
        return Lists.immutable.withAll(lines.subList(1, lines.size())).collect(line -> {
            List<String> cells = cells(line);
            MutableMap<String, String> row = Maps.mutable.empty();
            for (int i = 0; i < head.size(); i++) {
                row.put(head.get(i), cells.get(i));
            }
            return row;
        });
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    private static String key(MutableMap<String, String> row) {
        return row.get(OPTION) + " " + row.get("surface that changes") + " " + row.get("insulation mm");
    }

    @Test
    void holdsEveryOptionAndWhatTwoKindsAreComputedToNow() throws IOException {
        ImmutableList<MutableMap<String, String>> committed =
                rows(CommittedReport.ROOT.resolve("reports").resolve("atlas.csv"));
        SameNames.check(
                CatalogueFile.builtIn()
                        .junctions()
                        // In walls of blocks alone there is no insulation to make thicker.
                        .select(detail ->
                                Sweep.of(TypicalBuild.MASONRY.setup(detail), "").notEmpty())
                        .collect(Detail::id),
                committed.collect(row -> row.get(OPTION)),
                "write reports/atlas.csv anew: java -jar modules/cli/target/coldseam.jar catalogue --atlas reports");
        committed
                .select(row -> row.get(FITS).equals("yes"))
                .forEach(row -> assertEquals("yes", row.get("interval as narrow as asked"), key(row)));
        StringWriter err = new StringWriter();
        assertEquals(
                0,
                Coldseam.run(
                        Terminal.of(new StringWriter(), err),
                        new BuiltInWorkshop(),
                        Optional.empty(),
                        "catalogue",
                        "--kind",
                        "ridge,parapet",
                        "--width",
                        "1e-2",
                        "--atlas",
                        folder.toString()),
                err::toString);
        ImmutableList<MutableMap<String, String>> now = rows(folder.resolve("atlas.csv"));
        assertTrue(now.size() > 60, now.size() + " rows");
        for (MutableMap<String, String> row : now) {
            MutableMap<String, String> kept = committed.detect(each -> key(each).equals(key(row)));
            assertEquals(row.get(FITS), kept.get(FITS), key(row));
            assertEquals(row.get("reason"), kept.get("reason"), key(row));
            if (row.get(FITS).equals("yes")) {
                // Two proven intervals of one section overlap, however wide each is.
                assertTrue(
                        lower(row) <= upper(kept) + PRINTED && lower(kept) <= upper(row) + PRINTED,
                        () -> "reports/atlas.csv is out of date: " + kept + "; now " + row);
            }
        }
    }

    private static double lower(MutableMap<String, String> row) {
        return Double.parseDouble(row.get("psi external lower W/(m·K)"));
    }

    private static double upper(MutableMap<String, String> row) {
        return Double.parseDouble(row.get("psi external upper W/(m·K)"));
    }
}
