package coldseam.report.data;

import coldseam.audit.AsFound;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.HeatLoss;
import coldseam.audit.HoldPoint;
import coldseam.audit.JunctionRow;
import coldseam.audit.Sheet;
import coldseam.audit.Subject;
import coldseam.audit.Value;
import coldseam.audit.engine.InputUncertainty;
import coldseam.conduction.Point;
import coldseam.envelope.Assembly;
import coldseam.envelope.Layer;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.words.ControlLineWords;
import coldseam.report.words.FindingWords;
import coldseam.report.words.FoundWords;
import coldseam.report.words.HeatLossWords;
import coldseam.report.words.HoldPointWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.InputWords;
import coldseam.report.words.MethodWords;
import coldseam.report.words.SourceWords;
import coldseam.report.words.TerraceWords;
import coldseam.report.words.UncertaintyWords;
import coldseam.report.words.VerdictWords;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.Maps;
import org.eclipse.collections.impl.factory.SortedMaps;

/** Turns the audit into its data. */
final class Convert {

    private static final int FORMAT_VERSION = 3;

    private static final FindingWords WORDS = new FindingWords(UnitSystem.SI);

    private Convert() {}

    static AuditData audit(Audit audit) {
        var submittal = audit.house().submittal();
        var site = audit.house().site();
        var limits = audit.house().limits();
        HonestWords honest = new HonestWords(audit, UnitSystem.SI);
        var verdict = audit.verdict();
        var shell = audit.shell();
        return new AuditData(
                "coldseam audit",
                FORMAT_VERSION,
                audit.version(),
                audit.inputDigest(),
                audit.house().name(),
                new AuditData.Submittal(
                        submittal.address(),
                        submittal.client(),
                        submittal.preparedBy(),
                        submittal.date().map(LocalDate::toString),
                        submittal.revision()),
                word(audit.heatLoss().system()),
                new AuditData.Site(
                        site.indoorTemperature(),
                        site.outdoorTemperature(),
                        site.indoorHumidity(),
                        site.heatingDegreeDays(),
                        site.groundName(),
                        site.groundConductivity()),
                new AuditData.Limits(
                        limits.neckShare(), limits.pathShare(), limits.psi(), limits.temperatureFactor(), limits.chi()),
                new AuditData.Verdict(
                        verdict.unbroken(),
                        verdict.gaps(),
                        verdict.weakSpots(),
                        VerdictWords.sentence(verdict),
                        honest.assumed(),
                        honest.measuredBy(),
                        honest.held()),
                new AuditData.Work(
                        audit.work().junctions(),
                        audit.work().found(),
                        audit.work().points(),
                        audit.work().corners(),
                        audit.work().unknowns()),
                new AuditData.Shell(
                        shell.closed(),
                        shell.externalVolume(),
                        shell.internalVolume(),
                        shell.floorArea(),
                        shell.groundFloorArea(),
                        shell.exposedPerimeter()),
                audit.sides()
                        .collect(s -> new AuditData.Side(
                                word(s.side()),
                                s.area(),
                                s.openings(),
                                s.missing(),
                                s.insulatedShare(),
                                s.meanTransmittance())),
                shell.surfaces().collect(Convert::surface),
                shell.openEdges()
                        .collect(e -> new AuditData.OpenEdge(
                                e.place(), e.length(), e.surfaces(), point(e.from()), point(e.to()))),
                audit.assemblies()
                        .collect(a -> new AssemblyData(
                                a.assembly().name(),
                                a.transmittance(),
                                a.area(),
                                word(a.build().direction()),
                                layers(a.assembly()),
                                MoistureConvert.condensation(a.moisture()))),
                audit.sheets().collect(sheet -> sheet(sheet, audit.found())),
                audit.junctions().collect(Convert::edge),
                audit.pairSheets().collect(ConvertPairs::sheet),
                audit.pairs().collect(row -> ConvertPairs.row(row, audit.mould())),
                audit.pointSheets().collect(ConvertPoints::sheet),
                audit.points().collect(ConvertPoints::row),
                audit.vertexSheets().collect(ConvertVertices::sheet),
                audit.vertices().collect(row -> ConvertVertices.row(row, audit.mould())),
                heatLoss(audit.heatLoss(), InputUncertainty.of(audit), honest.unknown()),
                audit.findings().collect(Convert::finding),
                MoistureConvert.mould(audit.mould()),
                audit.terraces()
                        .collect(t -> new AuditData.Terrace(
                                t.surface().name(),
                                t.underside(),
                                t.dewPoint(),
                                t.safe(),
                                TerraceWords.brief(t, UnitSystem.SI))),
                audit.holdPoints().collectWithIndex((point, i) -> holdPoint(point, i + 1)),
                InputWords.of(audit, UnitSystem.SI).collect(i -> new AuditData.Input(i.what(), i.value(), i.source())),
                MethodWords.method(audit, UnitSystem.SI),
                MethodWords.cautions());
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static AuditData.HoldPoint holdPoint(HoldPoint point, int number) {
        return new AuditData.HoldPoint(
                point.name(),
                point.before(),
                point.lookAt(),
                point.items()
                        .collectWithIndex((item, i) -> new AuditData.HoldPointItem(
                                HoldPointWords.number(number, i + 1), item.lookAt(), item.sheets())),
                point.sheets());
    }

    static ImmutableList<Double> point(Point3 p) {
        return Lists.immutable.of(p.x(), p.y(), p.z());
    }

    private static ImmutableList<Double> point(Point p) {
        return Lists.immutable.of(p.x(), p.y());
    }

    private static AuditData.Surface surface(Surface s) {
        return new AuditData.Surface(
                s.name(),
                word(s.side()),
                word(s.use()),
                s.assembly().map(Assembly::name),
                word(s.exposure().kind()),
                s.exposure().factor(),
                s.externalArea(),
                s.internalArea(),
                s.openingArea(),
                s.storey(),
                s.outline().collect(Convert::point));
    }

    private static ImmutableList<AssemblyData.LayerData> layers(Assembly assembly) {
        return assembly.layers()
                .collect(layer -> new AssemblyData.LayerData(
                        layer.material().name(),
                        layer.thickness(),
                        layer.material().conductivity(),
                        word(layer.role()),
                        layer.controls().toSortedList().collect(Convert::word).toImmutable(),
                        layer.framing().map(f -> f.material().name()),
                        layer.framing()
                                .map(Layer.Framing::share)
                                .map(OptionalDouble::of)
                                .orElse(OptionalDouble.empty())));
    }

    private static SheetData sheet(BridgeSheet<JunctionResult> sheet, Optional<AsFound> found) {
        JunctionResult r = sheet.result();
        return new SheetData(
                sheet.id(),
                r.detail().kind().label(),
                r.detail().id(),
                r.detail().name(),
                sheet.chosen(),
                sheet.size(),
                sheet.places(),
                BoundsData.of(r.coupling()),
                BoundsData.of(r.psiExternal()),
                BoundsData.of(r.psiInternal()),
                r.temperatureFactor(),
                point(r.coldest()),
                sheet.dewPointHumidity(),
                sheet.mouldHumidity(),
                new SheetData.PenLineData(
                        r.penLine().unbroken(),
                        r.penLine().neck(),
                        r.penLine().share(),
                        r.penLine().path().collect(Convert::point)),
                new SheetData.PathData(
                        r.weakestPath().resistance(),
                        r.weakestPath().neighbour(),
                        r.weakestPath().ratio(),
                        r.weakestPath().path().collect(Convert::point)),
                r.legs()
                        .collect(leg -> new SheetData.LegData(
                                leg.name(),
                                leg.transmittance(),
                                leg.externalLength(),
                                leg.internalLength(),
                                leg.insulationThickness())),
                connections(r.detail()),
                r.controls().collect(Convert::controlLine),
                sheet.best()
                        .map(best -> new SheetData.BestData(
                                best.detail().id(),
                                best.detail().name(),
                                BoundsData.of(best.psiExternal()),
                                BoundsData.of(best.psiInternal()),
                                best.temperatureFactor())),
                found.map(each -> each.of(sheet).collect(Convert::found)).orElse(Lists.immutable.empty()),
                sheet.options().collect(Convert::option),
                parameters(r.detail()),
                r.solution().unknowns(),
                r.solution().met(),
                r.notes().newWithAll(r.solution().notes()).distinct());
    }

    /** How air, water and vapour control pass, by their names in order. */
    static ImmutableMap<String, String> connections(Detail detail) {
        var connections = SortedMaps.mutable.<String, String>empty();
        detail.connections().forEachKeyValue((control, how) -> connections.put(word(control), word(how)));
        return Maps.immutable.ofMap(connections);
    }

    private static SheetData.FoundData found(AsFound.Seam seam) {
        return new SheetData.FoundData(
                seam.places(),
                seam.length(),
                FoundWords.state(seam),
                seam.sheet()
                        .map(was -> new SheetData.FoundResultData(
                                was.result().detail().id(),
                                was.chosen(),
                                BoundsData.of(was.result().psiExternal()),
                                BoundsData.of(was.result().psiInternal()),
                                was.temperatureFactor(),
                                point(was.result().coldest()),
                                FoundWords.coldest(was.result()),
                                was.dewPointHumidity(),
                                was.mouldHumidity(),
                                was.result().penLine().unbroken(),
                                was.result().penLine().neck())));
    }

    private static SheetData.OptionData option(JunctionResult option) {
        return new SheetData.OptionData(
                option.detail().id(),
                option.detail().name(),
                word(option.detail().rank()),
                BoundsData.of(option.psiExternal()),
                BoundsData.of(option.psiInternal()),
                option.temperatureFactor(),
                option.penLine().unbroken(),
                option.penLine().neck(),
                option.detail()
                        .cost()
                        .map(cost -> new SheetData.CostData(cost.amount(), cost.currency(), cost.source())));
    }

    private static SheetData.ControlLineData controlLine(ControlLine line) {
        return new SheetData.ControlLineData(
                word(line.control()),
                ControlLineWords.state(line),
                line instanceof ControlLine.Continuous continuous ? continuous.stripLength() : 0,
                line instanceof ControlLine.Continuous continuous ? continuous.sheets() : Lists.immutable.empty(),
                line.path().collect(Convert::point));
    }

    /** Lengths of a detail's own that the house file sets, by name. */
    static ImmutableMap<String, Double> parameters(Detail detail) {
        var parameters = SortedMaps.mutable.<String, Double>empty();
        detail.parameters().select(DetailParameter::given).forEach(each -> parameters.put(each.name(), each.value()));
        return Maps.immutable.ofMap(parameters);
    }

    private static EdgeData edge(JunctionRow row) {
        var edge = row.edge();
        ImmutableList<String> surfaces = Lists.immutable.of(edge.first().name());
        return new EdgeData(
                edge.name(),
                edge.kind().label(),
                edge.second().map(s -> surfaces.newWith(s.name())).orElse(surfaces),
                edge.opening().map(Opening::name),
                edge.place(),
                row.length(),
                edge.externalLength(),
                edge.internalLength(),
                edge.angle(),
                point(edge.from()),
                point(edge.to()),
                row.sheet().map(BridgeSheet::id),
                BoundsData.of(row.psi()),
                row.factor(),
                BoundsData.of(row.loss()),
                SourceWords.kind(row.source()),
                SourceWords.of(row.source()),
                !row.source().known());
    }

    private static HeatLossData heatLoss(HeatLoss h, InputUncertainty inputs, Optional<String> unknown) {
        return new HeatLossData(
                BoundsData.of(h.total()),
                unknown,
                BoundsData.of(inputs.range(h.total())),
                inputs.largestFirst()
                        .collect(each -> new HeatLossData.InputData(
                                UncertaintyWords.name(each, inputs, UnitSystem.SI),
                                each.within(),
                                each.effect(),
                                inputs.share(each))),
                h.surfaces(),
                h.ground(),
                h.unheated(),
                BoundsData.of(h.positiveJunctions()),
                BoundsData.of(h.negativeJunctions()),
                BoundsData.of(h.pairs()),
                BoundsData.of(h.points()),
                BoundsData.of(h.vertices()),
                BoundsData.of(h.junctionShare()),
                BoundsData.of(h.otherSystemTotal()),
                BoundsData.of(h.vertexRemainder()),
                h.correctionRemainder(),
                h.ventilation(),
                BoundsData.of(h.designLoad()),
                h.annualLoss(),
                h.lines()
                        .collect(line -> new HeatLossData.LineData(
                                word(line.group()),
                                HeatLossWords.name(line.part()),
                                line.size(),
                                sizeUnit(line.group()),
                                BoundsData.of(line.transmittance()),
                                line.factor(),
                                BoundsData.of(line.loss()))));
    }

    private static String sizeUnit(HeatLoss.Group group) {
        return group.size().map(size -> size == Dimension.AREA ? "m2" : "m").orElse("");
    }

    private static FindingData finding(coldseam.audit.Finding f) {
        return new FindingData(
                f.number(),
                f.rule(),
                word(f.severity()),
                WORDS.title(f),
                WORDS.what(f),
                WORDS.place(f),
                point(f.subject().at()),
                f.subject().length(),
                f.subject()
                        .match(
                                Subject.Bridges::edges,
                                surfaces -> Lists.immutable.empty(),
                                hole -> Lists.immutable.empty(),
                                corners -> Lists.immutable.empty()),
                f.subject() instanceof Subject.Corners about
                        ? about.rows().collect(row -> row.corner().name())
                        : Lists.immutable.empty(),
                f.subject().surface().map(coldseam.envelope.shell.Surface::name),
                f.sheet().map(Sheet::id),
                f.loss().map(BoundsData::of),
                f.moneyPerYear(),
                WORDS.toDo(f),
                f.breaches()
                        .collect(breach -> new FindingData.BreachData(
                                breach.rule(), breach.evidence().values().collect(Convert::value))));
    }

    private static FindingData.ValueData value(Value value) {
        return new FindingData.ValueData(
                value.name(),
                UnitSystem.SI.value(value.value().lower(), value.dimension()),
                UnitSystem.SI.value(value.value().upper(), value.dimension()),
                UnitSystem.SI.label(value.dimension()));
    }
}
