package coldseam.report;

import coldseam.assemblies.moisture.Condensation;
import coldseam.audit.AssemblyRow;
import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.Finding;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.audit.PairRow;
import coldseam.audit.PairSheet;
import coldseam.audit.PointRow;
import coldseam.audit.Sheet;
import coldseam.audit.VertexRow;
import coldseam.audit.VertexSheet;
import coldseam.envelope.Control;
import coldseam.envelope.shell.Surface;
import coldseam.files.Csv;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.ControlLine;
import coldseam.report.words.ControlLineWords;
import coldseam.report.words.HeatLossWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.PairWords;
import coldseam.report.words.Phrases;
import coldseam.report.words.PrintedLoss;
import coldseam.report.words.SourceWords;
import coldseam.report.words.TakeOff;
import coldseam.report.words.VertexWords;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.eclipse.collections.api.list.ImmutableList;

/** The audit's tables as CSV: units stand in the head; losses of the heat-loss table are as printed, no other number is rounded. */
public enum AuditCsv {
    /** One row for each edge. */
    EDGES("", AuditCsv::edges),
    /** One row for each surface, as it is taken off. */
    SURFACES("-surfaces", AuditCsv::surfaces),
    /** One row for each window and door. */
    OPENINGS("-openings", AuditCsv::openings),
    /** One row for each line of the table, and the total: the losses as printed in it, so that both add up alike. */
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
        return Csv.<JunctionRow>in(units)
                .with("edge", row -> row.edge().name())
                .with("kind", row -> row.edge().kind().label())
                .with("first surface", row -> row.edge().first().name())
                .some("second surface", row -> row.edge().second(), Surface::name)
                .with("place", row -> row.edge().place())
                .and(AuditCsv::sheet)
                .and(cold(JunctionRow::sheet))
                .with("length", Dimension.LENGTH, JunctionRow::length)
                .and(Intervals.always("psi", Dimension.LINEAR_TRANSMITTANCE, JunctionRow::psi))
                .and(AuditCsv::loss)
                .with("b of the surfaces in psi", row -> yes(row.factorInPsi()))
                .and(found(audit))
                .some("air line", row -> line(row, Control.AIR), ControlLineWords::state)
                .some("water line", row -> line(row, Control.WATER), ControlLineWords::state)
                .some("vapour line", row -> line(row, Control.VAPOUR), ControlLineWords::state)
                .text(audit.junctions());
    }

    private static String surfaces(Audit audit, UnitSystem units) {
        return Csv.<TakeOff.OfSurface>in(units)
                .with("surface", row -> row.surface().name())
                .with("side", row -> audit.shell().nameOf(row.surface().side()))
                .with("use", row -> Words.word(row.surface().use()))
                .with("built as", TakeOff.OfSurface::builtAs)
                .with("faces", TakeOff.OfSurface::faces)
                .with(
                        "factor b",
                        Dimension.RATIO,
                        row -> row.surface().exposure().factor())
                .with(
                        "gross area, external dimensions",
                        Dimension.AREA,
                        row -> row.surface().externalArea())
                .with(
                        "gross area, internal dimensions",
                        Dimension.AREA,
                        row -> row.surface().internalArea())
                .with("openings", Dimension.AREA, row -> row.surface().openingArea())
                .with(
                        "net area, " + Words.word(audit.heatLoss().system()) + " dimensions",
                        Dimension.AREA,
                        TakeOff.OfSurface::net)
                .text(TakeOff.surfaces(audit));
    }

    private static String openings(Audit audit, UnitSystem units) {
        return Csv.<TakeOff.OfOpening>in(units)
                .with("opening", row -> row.opening().name())
                .with("kind", row -> Words.word(row.opening().kind()))
                .with("surface", TakeOff.OfOpening::in)
                .with("side", row -> row.side(audit))
                .with("width", Dimension.LENGTH, row -> row.opening().width())
                .with("height", Dimension.LENGTH, row -> row.opening().height())
                .with("area", Dimension.AREA, TakeOff.OfOpening::area)
                .with("transmittance", Dimension.TRANSMITTANCE, TakeOff.OfOpening::transmittance)
                .some("source", row -> row.opening().rating().source(), source -> source)
                .text(TakeOff.openings(audit));
    }

    private static String temperatureFactor(Sheet sheet) {
        return Csv.plain(sheet.temperatureFactor());
    }

    private static <R> UnaryOperator<Csv<R>> cold(Function<R, ? extends Optional<? extends Sheet>> sheet) {
        return csv -> csv.some("fRsi", sheet, AuditCsv::temperatureFactor)
                .some("mould from indoor humidity %", sheet, each -> Csv.plain(100 * each.mouldHumidity()));
    }

    private static <R extends BridgeRow> Csv<R> sheet(Csv<R> csv) {
        return csv.some("sheet", BridgeRow::sheet, BridgeSheet::id)
                .some(
                        "detail",
                        BridgeRow::sheet,
                        sheet -> sheet.result().detail().id());
    }

    private static <R extends BridgeRow> Csv<R> loss(Csv<R> csv) {
        return csv.with("factor b", Dimension.RATIO, BridgeRow::factor)
                .and(Intervals.always("loss", Dimension.HEAT_LOSS_COEFFICIENT, BridgeRow::loss));
    }

    /** How grave what was found about it is, and its numbers as the list of gaps and the drawing of the house have them. */
    private static <R extends BridgeRow> UnaryOperator<Csv<R>> found(Audit audit) {
        Function<R, ImmutableList<Finding>> about =
                row -> audit.findings().select(finding -> finding.subject().isAbout(row));
        return csv -> csv.with("status", row -> status(about.apply(row), row.source()))
                .with("source", row -> SourceWords.of(row.source()))
                .with(
                        "findings",
                        row -> about.apply(row)
                                .collect(finding -> Integer.toString(finding.number()))
                                .makeString("; "));
    }

    /** As it runs in the section of an edge; empty where none was followed. */
    private static Optional<ControlLine> line(JunctionRow row, Control control) {
        return row.sheet()
                .flatMap(sheet -> sheet.result().controls().detectOptional(each -> each.control() == control));
    }

    private static String yes(boolean is) {
        return is ? "yes" : "";
    }

    private static String status(ImmutableList<Finding> about, BridgeSource source) {
        return about.isEmpty()
                ? source.known() ? "in order" : "unknown"
                : about.collect(finding -> Words.word(finding.severity()))
                        .distinct()
                        .makeString(" and ");
    }

    /** A row of the table: one of its lines, or the total, which has neither size nor transmittance. */
    private record Loss(String group, Optional<HeatLoss.Line> line, PrintedLoss loss) {}

    private static String heatLoss(Audit audit, UnitSystem units) {
        ImmutableList<Loss> rows = audit.heatLoss()
                .lines()
                .collect(line -> new Loss(Words.word(line.group()), Optional.of(line), PrintedLoss.of(line, units)))
                .newWith(new Loss(
                        "total",
                        Optional.empty(),
                        PrintedLoss.of(audit.heatLoss().lines(), units)));
        String partial = new HonestWords(audit, units).partial().orElse("");
        return Csv.<Loss>in(units)
                .with("group", Loss::group)
                .with(
                        "part",
                        row -> row.line()
                                .map(line -> HeatLossWords.name(line.part(), audit.heatLoss()))
                                .orElse(partial))
                .some(
                        "size",
                        Loss::line,
                        line -> number(units, line.size(), size(line).orElse(Dimension.RATIO)))
                .some("unit of size", row -> row.line().flatMap(AuditCsv::size), units::label)
                .some(
                        "transmittance lower",
                        Loss::line,
                        line -> number(units, line.transmittance().lower(), transmittance(line)))
                .some(
                        "transmittance upper",
                        Loss::line,
                        line -> number(units, line.transmittance().upper(), transmittance(line)))
                .some("unit of transmittance", Loss::line, line -> units.label(transmittance(line)))
                .some("factor b", Loss::line, line -> Csv.plain(line.factor()))
                .some("b of the surfaces in psi", Loss::line, line -> yes(line.factorInPsi()))
                .with(lossHead("lower", units), row -> row.loss().lower().toPlainString())
                .with(lossHead("upper", units), row -> row.loss().upper().toPlainString())
                .text(rows);
    }

    private static String lossHead(String bound, UnitSystem units) {
        return "loss " + bound + " " + units.label(Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private static String number(UnitSystem units, double value, Dimension dimension) {
        return Csv.plain(units.value(value, dimension));
    }

    private static Optional<Dimension> size(HeatLoss.Line line) {
        return line.group().size();
    }

    private static Dimension transmittance(HeatLoss.Line line) {
        return line.group().transmittance();
    }

    private static String moisture(Audit audit, UnitSystem units) {
        return Csv.<AssemblyRow>in(units)
                .with("assembly", row -> row.assembly().name())
                .with("heat flow", row -> Words.word(row.build().direction()))
                .with(
                        "verdict",
                        row -> row.year().map(y -> Words.word(y.verdict())).orElse("not checked"))
                .some("most", Dimension.MASS_PER_AREA, row -> row.year().map(Condensation::most))
                .some(
                        "wettest month",
                        AssemblyRow::wet,
                        year -> Phrases.month(year.wettest().month()))
                .some("wettest plane", AssemblyRow::wet, Condensation::wettestPlane)
                .some(
                        "left after a year",
                        Dimension.MASS_PER_AREA,
                        row -> row.year().map(Condensation::left))
                .with("why not checked", row -> row.moisture().unchecked())
                .text(audit.assemblies());
    }

    private static String points(Audit audit, UnitSystem units) {
        return Csv.<PointRow>in(units)
                .with("points", row -> row.points().name())
                .with("kind", row -> row.kind().label())
                .with("surface", row -> row.surface().name())
                .and(AuditCsv::sheet)
                .with("number", row -> Csv.plain(row.number()))
                .and(Intervals.always("chi", Dimension.POINT_TRANSMITTANCE, PointRow::chi))
                .and(AuditCsv::loss)
                .some("fRsi", PointRow::sheet, AuditCsv::temperatureFactor)
                .and(found(audit))
                .text(audit.points());
    }

    private static String pairs(Audit audit, UnitSystem units) {
        return Csv.<PairRow>in(units)
                .with("one", row -> row.pair().one().name())
                .with("other", row -> row.pair().other().name())
                .with("surface", row -> row.surface().name())
                .with("distance", Dimension.LENGTH, row -> row.pair().distance())
                .with("length", Dimension.LENGTH, row -> row.pair().length())
                .some("sheet", PairRow::sheet, PairSheet::id)
                .and(Intervals.of(
                        "psi of both",
                        Dimension.LINEAR_TRANSMITTANCE,
                        row -> row.sheet()
                                .map(sheet -> sheet.psi(audit.heatLoss().system()))))
                .and(Intervals.of(
                        "more than apart",
                        Dimension.HEAT_LOSS_COEFFICIENT,
                        row -> row.sheet().map(sheet -> row.loss())))
                .and(cold(PairRow::sheet))
                .with("status", row -> PairWords.status(row, audit.mould(), units))
                .text(audit.pairs());
    }

    private static String vertices(Audit audit, UnitSystem units) {
        return Csv.<VertexRow>in(units)
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
                .some("sheet", VertexRow::sheet, VertexSheet::id)
                .and(Intervals.of(
                        "chi",
                        Dimension.POINT_TRANSMITTANCE,
                        row -> row.sheet()
                                .flatMap(sheet -> sheet.result().heat())
                                .map(heat -> heat.chi(audit.heatLoss().system()))))
                .and(cold(VertexRow::sheet))
                .with("status", row -> VertexWords.status(row, audit.mould(), units))
                .text(audit.vertices());
    }
}
