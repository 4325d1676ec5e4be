package coldseam.assemblies.check;

import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Every published value of this module's physics, computed again. */
public final class PublishedChecks {

    private PublishedChecks() {}

    /**
     * The rows, area by area, in the files' order.
     *
     * @param folder {@code fixtures/published}
     * @throws java.io.UncheckedIOException where a file cannot be read
     * @throws IllegalArgumentException where a file is malformed, naming file and line
     */
    public static ImmutableList<CheckRow> rows(Path folder) {
        return Lists.mutable
                .<CheckRow>empty()
                .withAll(TransmittanceChecks.rows(folder))
                .withAll(GroundChecks.rows(folder))
                .withAll(WindowChecks.rows(folder))
                .withAll(MoistureChecks.rows(folder))
                .withAll(LoadChecks.rows(folder))
                .toImmutable();
    }
}
