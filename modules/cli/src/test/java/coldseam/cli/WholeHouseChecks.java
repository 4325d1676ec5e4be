package coldseam.cli;

import coldseam.assemblies.check.CheckRow;
import coldseam.assemblies.check.PublishedTable;
import coldseam.audit.house.HouseAudit;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;

/** The heat-loss coefficient of houses, added up from surfaces, seams and corners, beside that of each solved in one piece. */
final class WholeHouseChecks {

    private WholeHouseChecks() {}

    /** The rows of {@code whole-houses.csv}. */
    static ImmutableList<CheckRow> rows(Path published) {
        return PublishedTable.read(published.resolve("whole-houses.csv"))
                .getOnly()
                .rows()
                .collect(row -> row.check(
                        "Heat-loss coefficient of whole houses, each solved in one piece",
                        row.text("house"),
                        transmission(published.resolve("houses").resolve(row.text("house") + ".yaml"))));
    }

    /** W/K. */
    private static double transmission(Path house) {
        return HouseAudit.of(house, Bench.OF_HEAT).compute().heatLoss().total().middle();
    }
}
