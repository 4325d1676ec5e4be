package coldseam.assemblies.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.collections.api.list.ImmutableList;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class PublishedChecksTest {

    static final Path PUBLISHED = Path.of(System.getProperty("coldseam.root"), "fixtures", "published");

    @TestFactory
    Stream<DynamicTest> everyPublishedValue() {
        return PublishedChecks.rows(PUBLISHED).toList().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.area() + ", " + row.what() + ", " + row.sureness().words(),
                        () -> assertEquals(
                                row.published(),
                                row.computed(),
                                row.tolerance(),
                                () -> row.unit() + "; source: " + row.source() + "; tolerance: " + row.reason())));
    }

    @Test
    void eachRowSaysWhereItComesFromAndWhyItsTolerance() {
        ImmutableList<CheckRow> rows = PublishedChecks.rows(PUBLISHED);
        assertTrue(rows.size() > 400, "only " + rows.size() + " rows");
        assertEquals(
                "[]",
                rows.select(row -> row.source().isBlank() || row.reason().isBlank())
                        .toString());
    }

    @Test
    void aValueThatIsOffOrNotANumberDoesNotPass() {
        CheckRow row = new CheckRow("a", "b", "c", CheckRow.Sureness.READ, 1, 1.02, 0.01, "d", "m");
        assertFalse(row.passes());
        assertFalse(new CheckRow("a", "b", "c", CheckRow.Sureness.READ, 1, Double.NaN, 0.01, "d", "m").passes());
    }
}
