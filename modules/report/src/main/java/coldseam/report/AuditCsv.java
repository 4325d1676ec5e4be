package coldseam.report;

import coldseam.assemblies.moisture.Condensation;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSource;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.PointRow;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Surface;
import coldseam.files.Csv;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.ControlLineWords;
import coldseam.report.words.HeatLossWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.PairWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.SourceWords;
import coldseam.report.words.VertexWords;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;

/** The audit's tables as CSV: units stand in the head, numbers are not rounded. */
public enum AuditCsv {
    /** One row for each edge. */
    EDGES("", AuditCsv::edges),
    /** One row for each line of the table, and the total. */
    HEAT_LOSS("-heat-loss", AuditCsv::heatLoss),
    /** One row for each set of points. */
    POINTS("-points", AuditCsv::points),
    /** One row for each two seams that touch. */
    PAIRS("-pairs", AuditCsv::pairs),
    /** One row for each corner where three or more edges meet. */
    VERTICES("-vertices", AuditCsv::vertices),
    /** One row for each assembly: whether water gathers inside it over a year, by diffusion. */
    MOISTURE("-moisture", AuditCsv::moisture);

    private final String suffix;
    private final BiFunction<Audit, UnitSystem, String> text;

    AuditCsv(String suffix, BiFunction<Audit, UnitSystem, String> text) {
        this.suffix = suffix;
        this.text = text;
    }

    /** What is added to the name of the register's file; empty for the register itself. */
    public String suffix() {
        return suffix;
    }

    /** The table with its head. */
    public String text(Audit audit, UnitSystem units) {
        return text.apply(audit, units);
    }

    private static String edges(Audit audit, UnitSystem units) {
        Csv<JunctionRow> csv = Csv.<JunctionRow>in(units)
                .with("edge", row -> row.edge().name())
                .with("kind", row -> row.edge().kind().label())
                .with("first surface", row -> row.edge().first().name())
                .with(
                        "second surface",
                        row -> row.edge().second().map(Surface::name).orElse(""))
                .with("place", row -> row.edge().place())
                .with("sheet", row -> of(row.sheet(), sheet -> sheet.id()))
                .with("detail", row -> of(row.sheet(), s -> s.result().detail().id()))
                .with("fRsi", row -> of(row.sheet(), s -> Csv.plain(s.result().temperatureFactor())))
                .with("mould from indoor humidity %", row -> of(row.sheet(), s -> Csv.plain(100 * s.mouldHumidity())))
                .with("length", Dimension.LENGTH, JunctionRow::length);
        csv = bounds(csv, "psi", Dimension.LINEAR_TRANSMITTANCE, JunctionRow::psi)
                .with("factor b", Dimension.RATIO, JunctionRow::factor);
        return bounds(csv, "loss", Dimension.HEAT_LOSS_COEFFICIENT, JunctionRow::loss)
                .with(
                        "status",
                        row -> status(audit.findings().select(f -> f.subject().isAbout(row.edge())), row.source()))
                .with("source", row -> SourceWords.of(row.source()))
                .with("air line", row -> line(row, Control.AIR))
                .with("water line", row -> line(row, Control.WATER))
                .with("vapour line", row -> line(row, Control.VAPOUR))
                .text(audit.junctions());
    }

    /** How a control line runs in the section of an edge; empty where none was followed. */
    private static String line(JunctionRow row, Control control) {
        return row.sheet()
                .flatMap(sheet -> sheet.result().controls().detectOptional(each -> each.control() == control))
                .map(ControlLineWords::state)
                .orElse("");
    }

    /** How grave what was found about something is. */
    private static String status(ImmutableList<Finding> about, BridgeSource source) {
        return about.isEmpty()
                ? source.known() ? "in order" : "unknown"
                : about.collect(finding -> Words.word(finding.severity()))
                        .distinct()
                        .makeString(" and ");
    }

    /** A row of the table: one of its lines, or the total, which has neither size nor transmittance. */
    private record Loss(String group, Optional<HeatLoss.Line> line, Interval loss) {}

    private static String heatLoss(Audit audit, UnitSystem units) {
        ImmutableList<Loss> rows = audit.heatLoss()
                .lines()
                .collect(line -> new Loss(Words.word(line.group()), Optional.of(line), line.loss()))
                .newWith(new Loss("total", Optional.empty(), audit.heatLoss().total()));
        String least = new HonestWords(audit, units)
                .unknown()
                .map(why -> "at least, not known: " + why)
                .orElse("");
        Csv<Loss> csv = Csv.<Loss>in(units)
                .with("group", Loss::group)
                .with(
                        "part",
                        row -> row.line()
                                .map(line -> HeatLossWords.name(line.part()))
                                .orElse(least));
        csv = csv.with(
                        "size",
                        row -> of(
                                row.line(),
                                line -> number(units, line.size(), size(line).orElse(Dimension.RATIO))))
                .with("unit of size", row -> of(row.line().flatMap(AuditCsv::size), units::label))
                .with(
                        "transmittance lower",
                        row -> of(
                                row.line(), l -> number(units, l.transmittance().lower(), transmittance(l))))
                .with(
                        "transmittance upper",
                        row -> of(
                                row.line(), l -> number(units, l.transmittance().upper(), transmittance(l))))
                .with("unit of transmittance", row -> of(row.line(), line -> units.label(transmittance(line))))
                .with("factor b", row -> of(row.line(), line -> Csv.plain(line.factor())));
        return bounds(csv, "loss", Dimension.HEAT_LOSS_COEFFICIENT, Loss::loss).text(rows);
    }

    private static Optional<Dimension> size(HeatLoss.Line line) {
        return line.group().size();
    }

    private static Dimension transmittance(HeatLoss.Line line) {
        return line.group().transmittance();
    }

    private static String moisture(Audit audit, UnitSystem units) {
        Csv<AssemblyRow> csv = Csv.in(units);
        return csv.with("assembly", row -> row.assembly().name())
                .with("heat flow", row -> Words.word(row.build().direction()))
                .with(
                        "verdict",
                        row -> year(row).map(y -> Words.word(y.verdict())).orElse("not checked"))
                .with(
                        csv.head("most", Dimension.MASS_PER_AREA),
                        row -> of(year(row), y -> csv.number(y.most(), Dimension.MASS_PER_AREA)))
                .with(
                        "wettest month",
                        row -> of(wet(row), y -> Phrases.month(y.wettest().month())))
                .with("wettest plane", row -> of(wet(row), Condensation::wettestPlane))
                .with(
                        csv.head("left after a year", Dimension.MASS_PER_AREA),
                        row -> of(year(row), y -> csv.number(y.left(), Dimension.MASS_PER_AREA)))
                .with("why not checked", row -> row.moisture().unchecked())
                .text(audit.assemblies());
    }

    private static Optional<Condensation> year(AssemblyRow row) {
        return row.moisture().year();
    }

    private static Optional<Condensation> wet(AssemblyRow row) {
        return year(row).filter(year -> year.verdict() != Condensation.Verdict.STAYS_DRY);
    }

    private static String points(Audit audit, UnitSystem units) {
        Csv<PointRow> csv = Csv.<PointRow>in(units)
                .with("points", row -> row.points().name())
                .with("kind", row -> row.kind().label())
                .with("surface", row -> row.surface().name())
                .with("sheet", row -> of(row.sheet(), sheet -> sheet.id()))
                .with("detail", row -> of(row.sheet(), s -> s.result().detail().id()))
                .with("number", row -> Csv.plain(row.number()));
        csv = bounds(csv, "chi", Dimension.POINT_TRANSMITTANCE, PointRow::chi)
                .with("factor b", Dimension.RATIO, PointRow::factor);
        return bounds(csv, "loss", Dimension.HEAT_LOSS_COEFFICIENT, PointRow::loss)
                .with("fRsi", row -> of(row.sheet(), s -> Csv.plain(s.result().temperatureFactor())))
                .with(
                        "status",
                        row -> status(audit.findings().select(f -> f.subject().isAbout(row)), row.source()))
                .with("source", row -> SourceWords.of(row.source()))
                .text(audit.points());
    }

    private static String pairs(Audit audit, UnitSystem units) {
        Csv<PairRow> csv = Csv.<PairRow>in(units)
                .with("one", row -> row.pair().one().name())
                .with("other", row -> row.pair().other().name())
                .with("surface", row -> row.surface().name())
                .with("distance", Dimension.LENGTH, row -> row.pair().distance())
                .with("length", Dimension.LENGTH, row -> row.pair().length())
                .with("sheet", row -> of(row.sheet(), PairSheet::id));
        for (boolean lower : new boolean[] {true, false}) {
            csv = csv.with(
                    csv.head(lower ? "psi of both lower" : "psi of both upper", Dimension.LINEAR_TRANSMITTANCE),
                    row -> of(row.sheet(), sheet -> {
                        Interval psi = sheet.psi(audit.heatLoss().system());
                        return number(units, lower ? psi.lower() : psi.upper(), Dimension.LINEAR_TRANSMITTANCE);
                    }));
        }
        for (boolean lower : new boolean[] {true, false}) {
            csv = csv.with(
                    csv.head(
                            lower ? "more than apart lower" : "more than apart upper", Dimension.HEAT_LOSS_COEFFICIENT),
                    row -> of(
                            row.sheet(),
                            sheet -> number(
                                    units,
                                    lower ? row.loss().lower() : row.loss().upper(),
                                    Dimension.HEAT_LOSS_COEFFICIENT)));
        }
        return csv.with("fRsi", row -> of(row.sheet(), sheet -> Csv.plain(sheet.temperatureFactor())))
                .with(
                        "mould from indoor humidity %",
                        row -> of(row.sheet(), sheet -> Csv.plain(100 * sheet.mouldHumidity())))
                .with("status", row -> PairWords.status(row, audit.mould(), units))
                .text(audit.pairs());
    }

    private static String vertices(Audit audit, UnitSystem units) {
        Csv<VertexRow> csv = Csv.<VertexRow>in(units)
                .with("corner", row -> row.corner().name())
                .with("place", row -> row.corner().place())
                .with(
                        "edges",
                        row -> row.corner()
                                .ends()
                                .collect(end -> end.edge().name())
                                .makeString("; "))
                .with(
                        "angles",
                        row -> row.corner()
                                .angles()
                                .collect(angle -> Long.toString(Math.round(angle)))
                                .makeString("; "))
                .with("sheet", row -> of(row.sheet(), VertexSheet::id));
        for (boolean lower : new boolean[] {true, false}) {
            csv = csv.with(
                    csv.head(lower ? "chi lower" : "chi upper", Dimension.POINT_TRANSMITTANCE),
                    row -> of(row.sheet().flatMap(sheet -> sheet.result().heat()), heat -> {
                        Interval chi = heat.chi(audit.heatLoss().system());
                        return number(units, lower ? chi.lower() : chi.upper(), Dimension.POINT_TRANSMITTANCE);
                    }));
        }
        return csv.with("fRsi", row -> of(row.sheet(), sheet -> Csv.plain(sheet.temperatureFactor())))
                .with(
                        "mould from indoor humidity %",
                        row -> of(row.sheet(), sheet -> Csv.plain(100 * sheet.mouldHumidity())))
                .with("status", row -> VertexWords.status(row, audit.mould(), units))
                .text(audit.vertices());
    }

    private static <R> Csv<R> bounds(Csv<R> csv, String name, Dimension dimension, Function<R, Interval> value) {
        return csv.with(name + " lower", dimension, row -> value.apply(row).lower())
                .with(name + " upper", dimension, row -> value.apply(row).upper());
    }

    private static String number(UnitSystem units, double value, Dimension dimension) {
        return Csv.plain(units.value(value, dimension));
    }

    private static <T> String of(Optional<T> what, Function<T, String> cell) {
        return what.map(cell).orElse("");
    }
}
