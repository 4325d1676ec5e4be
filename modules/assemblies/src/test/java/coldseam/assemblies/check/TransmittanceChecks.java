package coldseam.assemblies.check;

import coldseam.assemblies.AirLayers;
import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.TaperedLayers;
import coldseam.assemblies.TaperedTriangle;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.check.PublishedTable.Row;
import coldseam.envelope.Layer.Taper.Shape;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** ISO 6946: worked transmittances, air layers, tapered layers, thickness for a target. */
final class TransmittanceChecks {

    private TransmittanceChecks() {}

    static ImmutableList<CheckRow> rows(Path folder) {
        MutableList<CheckRow> rows = Lists.mutable.empty();
        worked(PublishedTable.read(folder.resolve("thermal-transmittance.csv")), rows);
        for (Row row :
                PublishedTable.read(folder.resolve("air-layers.csv")).getOnly().rows()) {
            rows.add(airLayer(row));
        }
        for (Row row : PublishedTable.read(folder.resolve("tapered-layers.csv"))
                .getOnly()
                .rows()) {
            rows.add(row.check("ISO 6946, tapered layers", row.text("shape"), tapered(row)));
        }
        for (Row row : PublishedTable.read(folder.resolve("roof-insulation-thickness.csv"))
                .getOnly()
                .rows()) {
            rows.add(roofThickness(row));
        }
        return rows.toImmutable();
    }

    private static void worked(ImmutableList<PublishedTable> tables, MutableList<CheckRow> rows) {
        ImmutableList<Row> cases = tables.get(0).rows();
        for (Row row : tables.get(1).rows()) {
            String name = row.text("case");
            Row of = cases.detectOptional(each -> each.text("case").equals(name))
                    .orElseThrow(() -> new IllegalArgumentException(
                            row.place() + ": the first block has no case \"" + name + "\""));
            Transmittance u = Transmittance.of(
                    BuildUpNotation.assembly(of.place(), name, of.text("build-up"), of.text("corrections")),
                    BuildUpNotation.direction(of.text("direction")),
                    OuterSurface.OUTDOORS);
            String quantity = row.text("quantity");
            rows.add(row.check("ISO 6946, worked transmittances", name + ": " + quantity, quantity(row, u, quantity)));
        }
    }

    private static double quantity(Row row, Transmittance u, String quantity) {
        return switch (quantity) {
            case "R'T" -> u.upperLimit();
            case "R''T" -> u.lowerLimit();
            case "RT" -> u.total();
            case "error" -> 100 * u.relativeError();
            case "U" -> u.uncorrected();
            case "Uc" -> u.corrected();
            case "Uc with gaps" -> u.uncorrected() + u.corrections().gaps();
            case "gaps" -> u.corrections().gaps();
            case "fasteners" -> u.corrections().fasteners();
            case "rain" -> u.corrections().rain();
            default -> throw new IllegalArgumentException(row.place() + ": unknown quantity \"" + quantity + "\"");
        };
    }

    private static CheckRow airLayer(Row row) {
        double thickness = row.number("thickness mm");
        double emissivity = row.number("emissivity");
        String direction = row.text("direction");
        return row.check(
                "ISO 6946, unventilated air layers",
                String.format(Locale.ROOT, "%.0f mm, %s, emissivity %s", thickness, direction, emissivity),
                AirLayers.resistance(thickness / 1000, BuildUpNotation.direction(direction), emissivity));
    }

    private static double tapered(Row row) {
        double rest = row.number("R0");
        double greatest = row.number("R2");
        return switch (row.text("shape")) {
            case "rectangle" -> TaperedLayers.transmittance(Shape.RECTANGLE, rest, greatest);
            case "triangle thickest at apex" ->
                TaperedLayers.transmittance(Shape.TRIANGLE_THICKEST_AT_APEX, rest, greatest);
            case "triangle thinnest at apex" ->
                TaperedLayers.transmittance(Shape.TRIANGLE_THINNEST_AT_APEX, rest, greatest);
            case "triangle of three thicknesses" -> TaperedTriangle.transmittance(rest, row.number("R1"), greatest);
            default -> throw new IllegalArgumentException(row.place() + ": unknown shape");
        };
    }

    private static CheckRow roofThickness(Row row) {
        String target = row.text("U W/(m²·K)");
        String conductivity = row.text("conductivity W/(m·K)");
        return row.check(
                "Thickness of roof insulation",
                "U " + target + " W/(m²·K) with " + conductivity + " W/(m·K)",
                thickness(row, row.number("U W/(m²·K)"), conductivity));
    }

    /** mm, searched by bisection on the transmittance, so that the whole computation is checked. */
    private static double thickness(Row row, double target, String conductivity) {
        double low = 1;
        double high = 1000;
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            String buildUp = String.format(Locale.ROOT, "*board %.9f mm %s", middle, conductivity);
            double u = Transmittance.of(
                            BuildUpNotation.assembly(row.place(), "roof", buildUp, "none"),
                            HeatFlow.UPWARDS,
                            OuterSurface.OUTDOORS)
                    .uncorrected();
            if (u > target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
