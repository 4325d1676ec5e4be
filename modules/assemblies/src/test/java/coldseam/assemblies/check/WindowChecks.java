package coldseam.assemblies.check;

import coldseam.assemblies.check.PublishedTable.Row;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.envelope.Opening;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** ISO 10077-1. */
final class WindowChecks {

    private static final String AREA = "ISO 10077-1, windows";

    private WindowChecks() {}

    static ImmutableList<CheckRow> rows(Path folder) {
        ImmutableList<PublishedTable> tables = PublishedTable.read(folder.resolve("windows.csv"));
        return tables.get(0)
                .rows()
                .collect(row -> row.check(AREA, row.text("case"), byArea(row).transmittance()))
                .newWithAll(tables.get(1)
                        .rows()
                        .collect(row ->
                                row.check(AREA, row.text("case"), bySize(row).transmittance())));
    }

    private static WindowTransmittance byArea(Row row) {
        return new WindowTransmittance(
                Lists.immutable.of(new WindowTransmittance.Pane(
                        row.number("Ag m²"), row.number("Ug W/(m²·K)"), row.number("lg m"), row.number("psi W/(m·K)"))),
                Lists.immutable.of(new WindowTransmittance.Frame(row.number("Af m²"), row.number("Uf W/(m²·K)"))));
    }

    private static WindowTransmittance bySize(Row row) {
        return WindowTransmittance.rectangular(
                row.number("width m"),
                row.number("height m"),
                new Opening.Glazed(
                        row.number("Ug W/(m²·K)"),
                        row.number("Uf W/(m²·K)"),
                        row.number("visible frame m"),
                        row.number("psi W/(m·K)"),
                        Optional.empty(),
                        1));
    }
}
