package coldseam.assemblies.check;

import coldseam.assemblies.check.PublishedTable.Row;
import coldseam.assemblies.ground.Basement;
import coldseam.assemblies.ground.GroundFloor;
import coldseam.assemblies.ground.SlabOnGround;
import coldseam.assemblies.ground.SuspendedFloor;
import coldseam.assemblies.ground.UnheatedBasement;
import coldseam.envelope.Body.CrawlSpace;
import coldseam.envelope.Body.EdgeInsulation;
import java.nio.file.Path;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** ISO 13370: slabs by perimeter and area, edge insulation, worked floors. */
final class GroundChecks {

    private static final double CLAY = 1.5;

    private GroundChecks() {}

    static ImmutableList<CheckRow> rows(Path folder) {
        ImmutableList<PublishedTable> tables = PublishedTable.read(folder.resolve("ground.csv"));
        MutableList<CheckRow> rows = Lists.mutable.empty();
        tables.get(0).rows().forEach(row -> rows.add(byPerimeter(row)));
        tables.get(1).rows().forEach(row -> rows.add(edge(row)));
        tables.get(2).rows().forEach(row -> rows.add(row.check("ISO 13370, worked floors", what(row), slab(row))));
        tables.get(3).rows().forEach(row -> rows.add(row.check("ISO 13370, worked floors", what(row), suspended(row))));
        tables.get(4).rows().forEach(row -> rows.add(row.check("ISO 13370, worked floors", what(row), basement(row))));
        return rows.toImmutable();
    }

    private static String what(Row row) {
        return row.text("case") + ": " + row.text("quantity");
    }

    private static CheckRow byPerimeter(Row row) {
        double area = 100;
        GroundFloor floor = new GroundFloor(area, row.number("P/A 1/m") * area, 0.3, CLAY);
        return row.check(
                "ISO 13370, solid floors on clay by P/A",
                "P/A " + row.text("P/A 1/m") + " 1/m, Rf " + row.text("Rf m²·K/W") + " m²·K/W",
                SlabOnGround.of(floor, row.number("Rf m²·K/W"), Lists.immutable.empty())
                        .transmittance());
    }

    private static CheckRow edge(Row row) {
        double resistance = row.number("R' m²·K/W");
        double board = 0.035;
        // The board whose own resistance less that of the ground it replaces is the tabulated one.
        double thickness = resistance / (1 / board - 1 / CLAY);
        SlabOnGround slab = SlabOnGround.of(
                new GroundFloor(80, 36, 0.3, CLAY),
                0,
                Lists.immutable.of(new EdgeInsulation(
                        row.text("lies").equals("downwards"),
                        row.number("D m"),
                        thickness,
                        BuildUpNotation.material("board", board))));
        return row.check(
                "ISO 13370, edge insulation, uninsulated slab on clay",
                row.text("lies") + ", " + row.text("D m") + " m, R' " + row.text("R' m²·K/W") + " m²·K/W",
                slab.edgePsi());
    }

    private static GroundFloor floor(Row row) {
        return new GroundFloor(row.number("A m²"), row.number("P m"), row.number("w m"), row.number("ground W/(m·K)"));
    }

    private static double slab(Row row) {
        String edge = row.text("edge");
        ImmutableList<EdgeInsulation> edges = edge.equals("none")
                ? Lists.immutable.empty()
                : Lists.immutable.of(new EdgeInsulation(
                        edge.equals("downwards"),
                        row.number("D m"),
                        row.number("board mm") / 1000,
                        BuildUpNotation.material("board", row.number("board W/(m·K)"))));
        SlabOnGround slab = SlabOnGround.of(floor(row), row.number("Rf m²·K/W"), edges);
        return switch (row.text("quantity")) {
            case "U" -> slab.transmittance();
            case "H" -> slab.floor().area() * slab.transmittance();
            case "dt" -> slab.equivalentThickness();
            case "psi" -> slab.edgePsi();
            default -> throw unknown(row);
        };
    }

    private static double suspended(Row row) {
        SuspendedFloor floor = SuspendedFloor.of(
                floor(row),
                row.number("Uf W/(m²·K)"),
                new CrawlSpace(
                        row.number("h m"),
                        row.number("Uw W/(m²·K)"),
                        row.number("vents m²/m"),
                        row.number("wind m/s"),
                        row.number("shielding"),
                        0));
        return switch (row.text("quantity")) {
            case "dg" -> floor.equivalentThickness();
            case "Ug" -> floor.groundTransmittance();
            case "Ux" -> floor.edgeTransmittance();
            case "U" -> floor.transmittance();
            default -> throw unknown(row);
        };
    }

    private static double basement(Row row) {
        Basement below = Basement.of(floor(row), row.number("z m"), row.number("Rf m²·K/W"), row.number("Rw m²·K/W"));
        return switch (row.text("quantity")) {
            case "Ubf" -> below.transmittance();
            case "Ubw" -> below.wallTransmittance();
            case "H" -> UnheatedBasement.coupling(below);
            case "U'" -> UnheatedBasement.coupling(below) / (below.floor().area() + UnheatedBasement.wallArea(below));
            case "U" ->
                new UnheatedBasement(
                                below,
                                row.number("Uf W/(m²·K)"),
                                row.number("h m"),
                                row.number("Uw W/(m²·K)"),
                                row.number("n 1/h"),
                                row.number("V m³"))
                        .transmittance();
            default -> throw unknown(row);
        };
    }

    private static IllegalArgumentException unknown(Row row) {
        return new IllegalArgumentException(row.place() + ": unknown quantity \"" + row.text("quantity") + "\"");
    }
}
