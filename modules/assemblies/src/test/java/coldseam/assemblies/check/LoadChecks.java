package coldseam.assemblies.check;

import coldseam.assemblies.check.PublishedTable.Row;
import coldseam.assemblies.load.CompressionCheck;
import coldseam.assemblies.load.EdgeStack;
import coldseam.assemblies.load.PermanentShare;
import coldseam.assemblies.load.PlateOnElasticBase;
import coldseam.assemblies.load.ScrewRow;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What boards carry, a plate on insulation, projections and screws: no command asks for these yet. */
final class LoadChecks {

    /** m. */
    private static final double INCH = 0.0254;

    /** N, a pound-force: 0.45359237 kg times 9.80665 m/s². */
    private static final double POUND = 4.4482216152605;

    private static final double POUND_PER_SQUARE_INCH = POUND / (INCH * INCH);

    private LoadChecks() {}

    static ImmutableList<CheckRow> rows(Path folder) {
        ImmutableList<PublishedTable> tables = PublishedTable.read(folder.resolve("loads-and-edges.csv"));
        MutableList<CheckRow> rows = Lists.mutable.empty();
        tables.get(0)
                .rows()
                .forEach(row -> rows.add(row.check(
                        "Permanent load on insulation, not asked for by any command yet",
                        row.text("board") + " of CS(10) " + row.text("CS(10) kPa") + " kPa",
                        board(row))));
        tables.get(1)
                .rows()
                .forEach(row -> rows.add(row.check(
                        "Plate on an elastic base, not asked for by any command yet",
                        row.text("case") + ": " + row.text("quantity"),
                        plate(row))));
        tables.get(2)
                .rows()
                .forEach(row -> rows.add(row.check(
                        "Projection at an edge, not asked for by any command yet",
                        row.text("stack"),
                        stack(row).projection() / INCH)));
        tables.get(3)
                .rows()
                .forEach(row -> rows.add(row.check(
                        "Screws across a board, not asked for by any command yet",
                        row.text("screws in a row") + " screws in a " + row.text("board width in") + " in board: "
                                + row.text("quantity"),
                        screws(row) / INCH)));
        return rows.toImmutable();
    }

    private static double board(Row row) {
        PermanentShare share = PermanentShare.valueOf(
                row.text("board").toUpperCase(Locale.ROOT).replace(' ', '_'));
        return new CompressionCheck(row.number("CS(10) kPa") * 1000, share, 0, 0).permanentResistance() / 1000;
    }

    private static double plate(Row row) {
        boolean us = row.text("units").equals("us");
        double pressure = us ? POUND_PER_SQUARE_INCH : 1;
        double length = us ? INCH : 1;
        PlateOnElasticBase plate = new PlateOnElasticBase(
                row.number("P lbf or N") * (us ? POUND : 1),
                PlateOnElasticBase.stiffness(
                        row.number("E lbf/in² or Pa") * pressure,
                        row.number("h in or m") * length,
                        row.number("Poisson")),
                row.number("k lbf/in³ or N/m³") * pressure / length);
        return switch (row.text("quantity")) {
            case "pressure" -> plate.pressure() / (us ? pressure : 1000);
            case "radius" -> plate.radius() / length;
            case "deflection" -> plate.deflection() / (us ? length : 0.001);
            default -> throw unknown(row);
        };
    }

    private static EdgeStack stack(Row row) {
        return new EdgeStack(Lists.immutable
                .with(row.text("parts in").split("\\+"))
                .collect(part -> new EdgeStack.Part("part", Double.parseDouble(part.strip()) * INCH)));
    }

    private static double screws(Row row) {
        ScrewRow screws = new ScrewRow(row.number("board width in") * INCH, (int) row.number("screws in a row"));
        return switch (row.text("quantity")) {
            case "spacing" -> screws.spacing();
            case "edge distance" -> screws.edgeDistance();
            default -> throw unknown(row);
        };
    }

    private static IllegalArgumentException unknown(Row row) {
        return new IllegalArgumentException(row.place() + ": unknown quantity \"" + row.text("quantity") + "\"");
    }
}
