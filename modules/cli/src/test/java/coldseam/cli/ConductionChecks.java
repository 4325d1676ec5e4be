package coldseam.cli;

import coldseam.assemblies.check.CheckRow;
import coldseam.assemblies.check.PublishedTable;
import coldseam.conduction.Accuracy;
import coldseam.conduction.Interval;
import coldseam.conduction.Solved;
import coldseam.conduction.solid.BodySolver;
import coldseam.conduction.solve.Conduction;
import coldseam.junctions.hand.Drawn;
import coldseam.junctions.hand.DrawnBody;
import coldseam.junctions.hand.DrawnSection;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The section files solved, beside what is published for them. */
final class ConductionChecks {

    /** The error of a point's temperature goes with the root of the energy's, so points need a narrower interval. */
    private static final Accuracy FOR_TEMPERATURES =
            new Accuracy(1e-6, Accuracy.standard().maximumUnknowns());

    /** Bodies cost more; their temperatures are held to what this is good for. */
    private static final Accuracy OF_BODIES = new Accuracy(1e-4, 1_600_000);

    private final Path fixtures;
    private final Map<String, Solved<?>> solved = new HashMap<>();

    private ConductionChecks(Path fixtures) {
        this.fixtures = fixtures;
    }

    /** The rows of {@code published/conduction.csv}. */
    static ImmutableList<CheckRow> rows(Path fixtures) {
        ImmutableList<PublishedTable> tables =
                PublishedTable.read(fixtures.resolve("published").resolve("conduction.csv"));
        ConductionChecks checks = new ConductionChecks(fixtures);
        MutableList<CheckRow> rows = Lists.mutable.empty();
        tables.get(0).rows().forEach(row -> rows.add(checks.value(row)));
        tables.get(1).rows().forEach(row -> rows.add(checks.inside(row)));
        return rows.toImmutable();
    }

    private CheckRow value(PublishedTable.Row row) {
        String section = row.text("section");
        String quantity = row.text("quantity");
        String of = row.text("of");
        Solved<?> solution =
                quantity.equals("temperature") ? solve(section, FOR_TEMPERATURES) : solve(section, Accuracy.standard());
        double computed = switch (quantity) {
            case "temperature" ->
                solution.probes().detect(probe -> probe.name().equals(of)).temperature();
            case "flow" ->
                solution.heatFlows()
                        .detect(flow -> flow.environment().equals(of))
                        .value()
                        .middle();
            case "coupling" -> {
                String[] pair = of.split("–");
                yield solution.coupling(pair[0], pair[1]).middle();
            }
            case "psi" -> psi(row, solution).middle();
            case "factor" -> solution.surface(of).lowest();
            default -> throw new IllegalArgumentException(row.place() + ": quantity is \"" + quantity + "\"");
        };
        return row.check("Conduction: " + area(section), section + ", " + quantity + " of " + of, computed);
    }

    /** An exact value has no tolerance but the proven interval itself. */
    private CheckRow inside(PublishedTable.Row row) {
        Interval proven = psi(row, solve(row.text("section"), Accuracy.standard()));
        return new CheckRow(
                "Conduction: exact values inside the proven interval",
                row.text("section"),
                row.text("source"),
                CheckRow.Sureness.COMPUTED,
                row.number("published"),
                proven.middle(),
                new BigDecimal(proven.width() / 2)
                        .round(new MathContext(2, RoundingMode.DOWN))
                        .doubleValue(),
                "half the width of the proven interval, which must hold the exact value, rounded down to two digits",
                row.text("unit"));
    }

    private static Interval psi(PublishedTable.Row row, Solved<?> solution) {
        String[] pair = row.text("of").split("–");
        double less = row.number("l m") / row.number("R m²·K/W");
        return solution.coupling(pair[0], pair[1]).plus(-less);
    }

    private Solved<?> solve(String section, Accuracy accuracy) {
        Drawn drawn = Drawn.load(fixtures.resolve("sections").resolve(section + ".yaml"));
        return drawn instanceof DrawnSection flat
                ? solved.computeIfAbsent(section + " " + accuracy, key -> Conduction.solve(flat.section(), accuracy))
                : solved.computeIfAbsent(section, key -> BodySolver.solve(((DrawnBody) drawn).body(), OF_BODIES));
    }

    private static String area(String section) {
        if (section.startsWith("iso-10211")) {
            return "ISO 10211 validation cases";
        }
        return section.startsWith("warm-side") ? "series solutions" : "rebuilt junctions, against independent programs";
    }
}
