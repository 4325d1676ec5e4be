package coldseam.assemblies.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.check.CheckRow.Sureness;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ValidationTableTest {

    @Test
    void rowsStandByAreaWithTheirNotes() {
        String table = ValidationTable.write(Lists.immutable.of(
                new CheckRow("Walls", "a|b", "S 1", Sureness.READ, 0.3, 0.30354, 0.005, "half a digit", "W/(m²·K)"),
                new CheckRow("Floors", "c", "S 2", Sureness.FROM_MEMORY, 12, 12, 0, "a sum", ""),
                new CheckRow("Walls", "d", "S 1", Sureness.READ, 0.3, 0.31, 0.005, "half a digit", "W/(m²·K)")));
        assertEquals("""
                # Computed against published

                Made by the build; a test compares this page with what the code computes and fails where a value is off by more than its tolerance.

                | published values are | number | within tolerance |
                |---|---:|---:|
                | from outside: read | 2 | 1 |
                | from outside: from memory | 1 | 1 |
                | from outside, together | 3 | 2 |

                "Worked out apart" means worked out by ourselves from the stated inputs, without this code; it checks the arithmetic, not the standard, and is not from outside. "From memory" means remembered from the source named, not seen.

                ## Walls

                | what | published | computed | difference | tolerance | unit | source |
                |---|---:|---:|---:|---:|---|---|
                | a\\|b | 0.3000 | 0.3035 | 0.0035 | 0.005 | W/(m²·K) | 1 |
                | d | 0.3000 | 0.3100 | **OFF** 0.0100 | 0.005 | W/(m²·K) | 1 |

                1. S 1 (read). Tolerance: half a digit.

                ## Floors

                | what | published | computed | difference | tolerance | unit | source |
                |---|---:|---:|---:|---:|---|---|
                | c | 12.0000000 | 12.0000000 | 0.0000000 | 0 |  | 1 |

                1. S 2 (from memory). Tolerance: a sum.
                """, table);
    }

    @Test
    void thePublishedChecksAllStandInTheTableWithinTolerance() {
        String table = ValidationTable.write(PublishedChecks.rows(PublishedChecksTest.PUBLISHED));
        assertFalse(table.contains("**OFF**"));
        assertTrue(table.contains("| mould limit") || table.contains(": mould limit |"));
        assertEquals(table, ValidationTable.write(PublishedChecks.rows(PublishedChecksTest.PUBLISHED)));
    }

    @Test
    void faultsInAFileNameTheirLine(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("values.csv");
        Files.writeString(file, "# head\na; published\n1; 2; 3\n");
        assertEquals(
                "values.csv:3: there are 3 fields for 2 columns; separate fields with semicolons",
                assertThrows(IllegalArgumentException.class, () -> PublishedTable.read(file))
                        .getMessage());
        Files.writeString(file, "# head\n\na; b\nx; y\n\nc\n1\n");
        PublishedTable.Row first = PublishedTable.read(file).get(0).rows().getOnly();
        assertEquals(2, PublishedTable.read(file).size());
        assertEquals(
                "values.csv:4: a is \"x\"; a number is needed",
                assertThrows(IllegalArgumentException.class, () -> first.number("a"))
                        .getMessage());
        assertEquals(
                "values.csv:4: there is no column \"c\" beside a, b. Add it to the block's first line",
                assertThrows(IllegalArgumentException.class, () -> first.text("c"))
                        .getMessage());
        assertThrows(UncheckedIOException.class, () -> PublishedTable.read(folder.resolve("none.csv")));
    }
}
