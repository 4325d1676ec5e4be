package coldseam.report;

import coldseam.assemblies.moisture.Condensation;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.JunctionSheet;
import coldseam.audit.PointRow;
import coldseam.audit.PointSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.file.AtomicFiles;
import coldseam.envelope.quantity.Dimension;
import coldseam.envelope.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The edge register, the heat-loss table and the assemblies' year of moisture as CSV (RFC 4180, UTF-8); units stand in the head, numbers are not rounded. */
public final class AuditCsv {

    private AuditCsv() {}

    /**
     * Writes the edge register whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(Audit audit, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, edges(audit, units));
    }

    /**
     * Writes the heat-loss table whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void writeHeatLoss(Audit audit, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, heatLoss(audit, units));
    }

    /**
     * Writes the year of each assembly whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void writeMoisture(Audit audit, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, moisture(audit, units));
    }

    /** One row for each edge. */
    public static String edges(Audit audit, UnitSystem units) {
        String psi = units.label(Dimension.LINEAR_TRANSMITTANCE);
        String loss = units.label(Dimension.HEAT_LOSS_COEFFICIENT);
        StringBuilder out = new StringBuilder();
        row(
                out,
                Lists.immutable.of(
                        "edge",
                        "kind",
                        "first surface",
                        "second surface",
                        "place",
                        "sheet",
                        "detail",
                        "fRsi",
                        "mould from indoor humidity %",
                        "length " + units.label(Dimension.LENGTH),
                        "psi lower " + psi,
                        "psi upper " + psi,
                        "factor b",
                        "loss lower " + loss,
                        "loss upper " + loss,
                        "status",
                        "source"));
        for (JunctionRow row : audit.junctions()) {
            row(out, edge(audit, row, units));
        }
        return out.toString();
    }

    private static ImmutableList<String> edge(Audit audit, JunctionRow row, UnitSystem units) {
        Optional<JunctionSheet> sheet =
                row.sheet().flatMap(id -> audit.sheets().detectOptional(s -> s.id().equals(id)));
        ImmutableList<String> words = audit.findings()
                .select(f -> f.edges().contains(row.edge().name()))
                .collect(f -> f.severity().name().toLowerCase(Locale.ROOT))
                .distinct();
        return Lists.immutable
                .of(
                        row.edge().name(),
                        row.edge().kind().label(),
                        row.edge().first().name(),
                        row.edge().second().map(s -> s.name()).orElse(""),
                        row.edge().place(),
                        row.sheet().orElse(""),
                        sheet.map(s -> s.result().detail().id()).orElse(""),
                        sheet.map(s -> plain(s.result().temperatureFactor())).orElse(""),
                        sheet.map(s -> plain(100 * s.mouldHumidity())).orElse(""))
                .newWith(number(row.length(), Dimension.LENGTH, units))
                .newWithAll(bounds(row.psi(), Dimension.LINEAR_TRANSMITTANCE, units))
                .newWith(number(row.factor(), Dimension.RATIO, units))
                .newWithAll(bounds(row.loss(), Dimension.HEAT_LOSS_COEFFICIENT, units))
                .newWith(words.notEmpty() ? words.makeString(" and ") : row.unknown() ? "unknown" : "in order")
                .newWith(row.source());
    }

    /** One row for each line of the table, and the total. */
    public static String heatLoss(Audit audit, UnitSystem units) {
        String loss = units.label(Dimension.HEAT_LOSS_COEFFICIENT);
        StringBuilder out = new StringBuilder();
        row(
                out,
                Lists.immutable.of(
                        "group",
                        "part",
                        "size",
                        "unit of size",
                        "transmittance lower",
                        "transmittance upper",
                        "unit of transmittance",
                        "factor b",
                        "loss lower " + loss,
                        "loss upper " + loss));
        for (HeatLoss.Line line : audit.heatLoss().lines()) {
            Dimension size = line.sizeUnit().equals("m²") ? Dimension.AREA : Dimension.LENGTH;
            Dimension u = line.sizeUnit().equals("m²")
                    ? Dimension.TRANSMITTANCE
                    : line.sizeUnit().equals("m") ? Dimension.LINEAR_TRANSMITTANCE : Dimension.POINT_TRANSMITTANCE;
            boolean count = line.sizeUnit().isEmpty();
            row(
                    out,
                    Lists.immutable
                            .of(line.group().name().toLowerCase(Locale.ROOT), line.name())
                            .newWith(count ? plain(line.size()) : number(line.size(), size, units))
                            .newWith(count ? "" : units.label(size))
                            .newWithAll(bounds(line.transmittance(), u, units))
                            .newWith(units.label(u))
                            .newWith(number(line.factor(), Dimension.RATIO, units))
                            .newWithAll(bounds(line.loss(), Dimension.HEAT_LOSS_COEFFICIENT, units)));
        }
        row(
                out,
                Lists.immutable
                        .of("total", "", "", "", "", "", "", "")
                        .newWithAll(bounds(audit.heatLoss().total(), Dimension.HEAT_LOSS_COEFFICIENT, units)));
        return out.toString();
    }

    /** One row for each assembly: whether water gathers inside it over a year, by diffusion. */
    public static String moisture(Audit audit, UnitSystem units) {
        String amount = units.label(Dimension.MASS_PER_AREA);
        StringBuilder out = new StringBuilder();
        row(
                out,
                Lists.immutable.of(
                        "assembly",
                        "heat flow",
                        "verdict",
                        "most " + amount,
                        "wettest month",
                        "wettest plane",
                        "left after a year " + amount,
                        "why not checked"));
        for (AssemblyRow row : audit.assemblies()) {
            row(out, moisture(row, units));
        }
        return out.toString();
    }

    private static ImmutableList<String> moisture(AssemblyRow row, UnitSystem units) {
        ImmutableList<String> start = Lists.immutable.of(
                row.assembly().name(), row.build().direction().name().toLowerCase(Locale.ROOT));
        if (row.moisture().year().isEmpty()) {
            return start.newWithAll(Lists.immutable.of(
                    "not checked", "", "", "", "", row.moisture().unchecked()));
        }
        Condensation year = row.moisture().year().get();
        boolean wet = year.verdict() != Condensation.Verdict.STAYS_DRY;
        return start.newWithAll(Lists.immutable.of(
                year.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                number(year.most(), Dimension.MASS_PER_AREA, units),
                wet ? year.wettest().month().getDisplayName(TextStyle.FULL, Locale.ENGLISH) : "",
                wet ? year.wettestPlane() : "",
                number(year.left(), Dimension.MASS_PER_AREA, units),
                ""));
    }

    /**
     * Writes the points whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void writePoints(Audit audit, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, points(audit, units));
    }

    /** One row for each set of points. */
    public static String points(Audit audit, UnitSystem units) {
        String chi = units.label(Dimension.POINT_TRANSMITTANCE);
        String loss = units.label(Dimension.HEAT_LOSS_COEFFICIENT);
        StringBuilder out = new StringBuilder();
        row(
                out,
                Lists.immutable
                        .of("points", "kind", "surface", "sheet", "detail", "number")
                        .newWithAll(Lists.immutable.of("chi lower " + chi, "chi upper " + chi, "factor b"))
                        .newWithAll(Lists.immutable.of("loss lower " + loss, "loss upper " + loss, "fRsi"))
                        .newWithAll(Lists.immutable.of("status", "source")));
        for (PointRow point : audit.points()) {
            Optional<PointSheet> sheet =
                    point.sheet().flatMap(id -> audit.pointSheets().detectOptional(s -> s.id().equals(id)));
            row(
                    out,
                    Lists.immutable
                            .of(
                                    point.points().name(),
                                    point.kind().label(),
                                    point.surface().name())
                            .newWith(point.sheet().orElse(""))
                            .newWith(sheet.map(s -> s.result().detail().id()).orElse(""))
                            .newWith(plain(point.number()))
                            .newWithAll(bounds(point.chi(), Dimension.POINT_TRANSMITTANCE, units))
                            .newWith(number(point.factor(), Dimension.RATIO, units))
                            .newWithAll(bounds(point.loss(), Dimension.HEAT_LOSS_COEFFICIENT, units))
                            .newWith(sheet.map(s -> plain(s.result().temperatureFactor()))
                                    .orElse(""))
                            .newWith(status(audit, point))
                            .newWith(point.source()));
        }
        return out.toString();
    }

    private static String status(Audit audit, PointRow point) {
        ImmutableList<String> words = audit.findings()
                .select(f -> f.rule().startsWith("point-")
                        && (f.sheet().isPresent() && f.sheet().equals(point.sheet())
                                || f.place().contains(point.place())))
                .collect(f -> f.severity().name().toLowerCase(Locale.ROOT))
                .distinct();
        return words.notEmpty() ? words.makeString(" and ") : point.unknown() ? "unknown" : "in order";
    }

    private static ImmutableList<String> bounds(Interval interval, Dimension dimension, UnitSystem units) {
        return Lists.immutable.of(
                number(interval.lower(), dimension, units), number(interval.upper(), dimension, units));
    }

    private static String number(double value, Dimension dimension, UnitSystem units) {
        return plain(units.value(value, dimension));
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    private static void row(StringBuilder out, ImmutableList<String> cells) {
        out.append(cells.collect(AuditCsv::cell).makeString(",")).append("\r\n");
    }

    /** Quoted where it must be; a text that a spreadsheet would run as a formula is kept from it by a quote mark. */
    private static String cell(String text) {
        boolean formula = !text.isEmpty() && "=@\t\r".indexOf(text.charAt(0)) >= 0;
        String safe = formula ? "'" + text : text;
        boolean quote = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quote ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
