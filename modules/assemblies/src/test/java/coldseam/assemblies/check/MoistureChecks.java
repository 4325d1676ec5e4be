package coldseam.assemblies.check;

import coldseam.assemblies.check.PublishedTable.Row;
import coldseam.assemblies.moisture.BlockMethod;
import coldseam.assemblies.moisture.Condensation;
import coldseam.assemblies.moisture.IndoorAir;
import coldseam.assemblies.moisture.MonthlyTemperatureFactor;
import coldseam.assemblies.moisture.SaturationPressure;
import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.assemblies.moisture.VapourStack;
import coldseam.envelope.Climate;
import java.nio.file.Path;
import java.time.Month;
import java.util.Locale;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** ISO 13788: saturation, surfaces, a year of one climate and one wall; the block method of DIN 4108-3. */
final class MoistureChecks {

    private static final double INDOOR = 20;

    private static final IndoorAir DWELLING = IndoorAir.of(Climate.Indoors.DWELLING, Double.NaN);

    /** The plane between wool and board, counted from the inner surface. */
    private static final int WET_PLANE = 2;

    private MoistureChecks() {}

    static ImmutableList<CheckRow> rows(Path folder) {
        ImmutableList<PublishedTable> tables = PublishedTable.read(folder.resolve("moisture.csv"));
        MutableList<CheckRow> rows = Lists.mutable.empty();
        tables.get(0)
                .rows()
                .forEach(row -> rows.add(row.check(
                        "ISO 13788, saturation pressure",
                        row.text("temperature °C") + " °C",
                        SaturationPressure.at(row.number("temperature °C")))));
        tables.get(1).rows().forEach(row -> rows.add(surface(row)));
        Climate climate = new Climate(
                "made up",
                Climate.Indoors.DWELLING,
                tables.get(2)
                        .rows()
                        .collect(row -> new Climate.Mean(
                                month(row, "month"), row.number("outdoor °C"), row.number("outdoor %") / 100)));
        MonthlyTemperatureFactor factors = MonthlyTemperatureFactor.of(climate, DWELLING, INDOOR);
        tables.get(3).rows().forEach(row -> rows.add(need(row, factors)));
        Condensation year = Condensation.of(wall(0.13), climate, DWELLING, INDOOR);
        tables.get(4).rows().forEach(row -> rows.add(condensation(row, year)));
        BlockMethod block = BlockMethod.of(wall(0.25), BlockMethod.DRYING_WALL);
        tables.get(5).rows().forEach(row -> rows.add(block(row, block)));
        return rows.toImmutable();
    }

    /** The wall the file's header describes, its layers whole. */
    private static VapourStack wall(double interiorSurfaceResistance) {
        return new VapourStack(
                interiorSurfaceResistance,
                0.04,
                Lists.immutable.of(
                        new VapourStack.Slice("plasterboard", 0.0125 / 0.25, 8 * 0.0125),
                        new VapourStack.Slice("mineral wool", 0.16 / 0.04, 0.16),
                        new VapourStack.Slice("board", 0.015 / 0.13, 50 * 0.015)));
    }

    private static CheckRow surface(Row row) {
        double indoor = row.number("indoor °C");
        double humidity = row.number("indoor %") / 100;
        double outdoor = row.number("outdoor °C");
        double computed = switch (row.text("quantity")) {
            case "dew point" -> SurfaceHumidity.dewPoint(indoor, humidity);
            case "mould limit" ->
                SaturationPressure.dewPoint(
                        SurfaceHumidity.vapourPressure(indoor, humidity) / SurfaceHumidity.MOULD_LIMIT);
            case "fRsi for dew" -> SurfaceHumidity.temperatureFactorNeeded(indoor, outdoor, humidity, 1);
            case "fRsi for mould" ->
                SurfaceHumidity.temperatureFactorNeeded(indoor, outdoor, humidity, SurfaceHumidity.MOULD_LIMIT);
            default -> throw unknown(row, "quantity");
        };
        return row.check(
                "ISO 13788, surfaces",
                String.format(
                        Locale.ROOT,
                        "%s °C, %s %% indoors, %s °C outdoors: %s",
                        row.text("indoor °C"),
                        row.text("indoor %"),
                        row.text("outdoor °C"),
                        row.text("quantity")),
                computed);
    }

    private static CheckRow need(Row row, MonthlyTemperatureFactor factors) {
        Month month = month(row, "month of need");
        MonthlyTemperatureFactor.Need need = factors.months().detect(each -> each.month() == month);
        double computed = switch (row.text("quantity")) {
            case "pe" -> need.outdoorPressure();
            case "excess" -> need.excess();
            case "pi" -> need.indoorPressure();
            case "indoor humidity" -> 100 * need.indoorHumidity();
            case "least saturation" -> need.leastSaturation();
            case "least temperature" -> need.leastTemperature();
            case "fRsi" -> need.temperatureFactor();
            default -> throw unknown(row, "quantity");
        };
        return row.check(
                "ISO 13788, monthly temperature factor",
                row.text("month of need") + ": " + row.text("quantity"),
                computed);
    }

    private static CheckRow condensation(Row row, Condensation year) {
        Month month = month(row, "month of condensation");
        Condensation.Plane plane =
                year.months().detect(each -> each.month() == month).planes().get(WET_PLANE);
        double computed = switch (row.text("quantity")) {
            case "plane temperature" -> plane.temperature();
            case "gain" -> plane.gain();
            case "amount" -> plane.amount();
            default -> throw unknown(row, "quantity");
        };
        return row.check(
                "ISO 13788, condensation in a wall",
                row.text("month of condensation") + ": " + row.text("quantity"),
                computed);
    }

    private static CheckRow block(Row row, BlockMethod block) {
        double computed = switch (row.text("block quantity")) {
            case "wetted" -> block.wetted();
            case "evaporated" -> block.evaporated();
            case "plane temperature" -> block.planeTemperature();
            default -> throw unknown(row, "block quantity");
        };
        return row.check("DIN 4108-3, block method", row.text("block quantity"), computed);
    }

    private static Month month(Row row, String column) {
        return Month.valueOf(row.text(column).toUpperCase(Locale.ROOT));
    }

    private static IllegalArgumentException unknown(Row row, String column) {
        return new IllegalArgumentException(row.place() + ": unknown quantity \"" + row.text(column) + "\"");
    }
}
