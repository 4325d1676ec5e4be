package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.assemblies.check.CheckRow;
import coldseam.assemblies.check.PublishedChecks;
import coldseam.assemblies.check.ValidationTable;
import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Everything computed that is published, against what is published: reports/validation.md. */
@Tag("slow")
class ValidationTest {

    private static final Path FIXTURES = CommittedReport.ROOT.resolve("fixtures");

    @Test
    void everyValueIsWithinItsToleranceAndThePageIsUpToDate() throws IOException {
        ImmutableList<CheckRow> rows = Lists.mutable
                .withAll(ConductionChecks.rows(FIXTURES))
                .withAll(WholeHouseChecks.rows(FIXTURES.resolve("published")))
                .withAll(PublishedChecks.rows(FIXTURES.resolve("published")))
                .toImmutable();
        assertTrue(rows.size() > 500, () -> "only " + rows.size() + " rows were read");
        assertEquals(
                Lists.immutable.empty(),
                rows.reject(CheckRow::passes)
                        .collect(
                                row -> row.what() + ": computed " + row.computed() + ", published " + row.published()));
        CommittedReport.check("validation.md", ValidationTable.write(rows));
    }
}
