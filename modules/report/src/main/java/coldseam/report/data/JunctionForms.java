package coldseam.report.data;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.BOUNDS;
import static coldseam.report.data.Types.PLACE;
import static coldseam.report.data.Types.POINT;
import static coldseam.report.data.Types.TEXTS;
import static coldseam.report.data.Types.WORD;

import coldseam.audit.AsFound;
import coldseam.audit.BridgeSheet;
import coldseam.audit.JunctionRow;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Surface;
import coldseam.files.JsonForm;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.PenLine;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.detail.Cost;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DetailParameter;
import coldseam.report.words.ControlLineWords;
import coldseam.report.words.FoundWords;
import coldseam.report.words.SourceWords;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.impl.factory.Lists;

/** Seams and their sheets. */
final class JunctionForms {

    static final JsonForm<JunctionRow> EDGE = JsonForm.<JunctionRow>of("EdgeData")
            .with("name", TEXT, row -> row.edge().name())
            .with("kind", TEXT, row -> row.edge().kind().label())
            .with("surfaces", TEXTS, row -> row.surfaces().collect(Surface::name))
            .maybe("opening", TEXT, row -> row.edge().opening().map(Opening::name))
            .with("place", TEXT, row -> row.edge().place())
            .says("where a person finds it")
            .with("length_m", NUMBER, JunctionRow::length)
            .says("in the dimensions in use")
            .with("externalLength_m", NUMBER, row -> row.edge().externalLength())
            .with("internalLength_m", NUMBER, row -> row.edge().internalLength())
            .with("angle_deg", NUMBER, row -> row.edge().angle())
            .with("from_m", PLACE, row -> row.edge().from())
            .with("to_m", PLACE, row -> row.edge().to())
            .maybe("sheet", TEXT, row -> row.sheet().map(BridgeSheet::id))
            .with("psi_W_per_mK", BOUNDS, JunctionRow::psi)
            .says("in the dimensions in use")
            .with("temperatureFactor", NUMBER, JunctionRow::factor)
            .says("1 where psi holds those of its surfaces")
            .with("loss_W_per_K", BOUNDS, JunctionRow::loss)
            .with("source", TEXT, row -> SourceWords.kind(row.source()))
            .says("of psi: computed, stand-in, own or none")
            .with("sourceSays", TEXT, row -> SourceWords.of(row.source()))
            .says("the same in words; of an own psi what the house file cites")
            .with("unknown", FLAG, row -> !row.source().known())
            .says("whether psi is a stand-in");

    private static final JsonForm<PenLine> PEN_LINE = JsonForm.<PenLine>of("PenLineData")
            .with("unbroken", FLAG, PenLine::unbroken)
            .with("neck_m", NUMBER, PenLine::neck)
            .says("zero where broken")
            .with("share", NUMBER, PenLine::share)
            .says("of the thinner surface's insulation, 0 to 1")
            .with("path_m", POINT.list(), PenLine::path);

    private static final JsonForm<WeakestPath> WEAKEST_PATH = JsonForm.<WeakestPath>of("PathData")
            .with("resistance_m2K_per_W", NUMBER, WeakestPath::resistance)
            .with("neighbour_m2K_per_W", NUMBER, WeakestPath::neighbour)
            .with("ratio", NUMBER, WeakestPath::ratio)
            .with("path_m", POINT.list(), WeakestPath::path);

    /** A plane part with the factor of what it faces. */
    private record Faced(JunctionResult.Leg leg, double factor) {}

    private static final JsonForm<Faced> LEG = JsonForm.<Faced>of("LegData")
            .with("name", TEXT, each -> each.leg().name())
            .with("transmittance_W_per_m2K", NUMBER, each -> each.leg().transmittance())
            .with("temperatureFactor", NUMBER, Faced::factor)
            .says("b of what it faces; psi is the coupling less the sum of b, transmittance and length")
            .with("externalLength_m", NUMBER, each -> each.leg().externalLength())
            .with("internalLength_m", NUMBER, each -> each.leg().internalLength())
            .with("insulationThickness_m", NUMBER, each -> each.leg().insulationThickness());

    private static final JsonForm<ControlLine> CONTROL_LINE = JsonForm.<ControlLine>of("ControlLineData")
            .with("control", WORD, ControlLine::control)
            .says("air, water or vapour")
            .with("state", TEXT, ControlLineWords::state)
            .says("continuous, broken, changes side, or not shown")
            .with(
                    "strips_m",
                    NUMBER,
                    line -> line instanceof ControlLine.Continuous continuous ? continuous.stripLength() : 0.0)
            .says("over what cannot control, on tapes and laps that are not drawn")
            .with(
                    "sheets",
                    TEXTS,
                    line -> line instanceof ControlLine.Continuous continuous
                            ? continuous.sheets()
                            : Lists.immutable.empty())
            .says("sheets of the detail that it runs in")
            .with("path_m", POINT.list(), ControlLine::path)
            .says("as far as it comes");

    /** The detail that something came of. */
    static final JsonForm<BridgeResult> NAMED = JsonForm.<BridgeResult>of("")
            .with("detail", TEXT, result -> result.detail().id())
            .with("detailName", TEXT, result -> result.detail().name());

    private static final JsonForm<JunctionResult> PSI = JsonForm.<JunctionResult>of("")
            .with("psiExternal_W_per_mK", BOUNDS, JunctionResult::psiExternal)
            .with("psiInternal_W_per_mK", BOUNDS, JunctionResult::psiInternal)
            .with("temperatureFactor", NUMBER, JunctionResult::temperatureFactor);

    private static final JsonForm<JunctionResult> BEST = JsonForm.<JunctionResult>of("BestData")
            .all(NAMED, result -> result)
            .all(PSI, result -> result)
            .with("parameters", NUMBER.byName(), result -> parameters(result.detail()))
            .says("that are not its file's own, m by name");

    private static final JsonForm<JunctionResult> CONTINUITY = JsonForm.<JunctionResult>of("")
            .with("unbroken", FLAG, result -> result.penLine().unbroken())
            .with("neck_m", NUMBER, result -> result.penLine().neck())
            .says("zero where broken");

    private static final JsonForm<JunctionResult> OPTION = JsonForm.<JunctionResult>of("OptionData")
            .all(NAMED, result -> result)
            .with("rank", WORD, result -> result.detail().rank())
            .all(PSI, result -> result)
            .all(CONTINUITY, result -> result)
            .maybe(
                    "cost",
                    cost("CostData", "amount_per_m"),
                    result -> result.detail().cost());

    private static final JsonForm<BridgeSheet<JunctionResult>> FOUND_RESULT = JsonForm.<BridgeSheet<JunctionResult>>of(
                    "FoundResultData")
            .with("detail", TEXT, sheet -> sheet.result().detail().id())
            .with("said", FLAG, BridgeSheet::chosen)
            .says("whether the house file says that it was found; else the worst of its kind stands in")
            .all(PSI, BridgeSheet::result)
            .with("coldest_m", POINT, sheet -> sheet.result().coldest())
            .says("in the section")
            .with("coldestOn", TEXT, sheet -> FoundWords.coldest(sheet.result()))
            .says("in words: on what it lies")
            .with("dewPointHumidity", NUMBER, BridgeSheet::dewPointHumidity)
            .with("mouldHumidity", NUMBER, BridgeSheet::mouldHumidity)
            .all(CONTINUITY, BridgeSheet::result);

    private static final JsonForm<AsFound.Seam> FOUND = JsonForm.<AsFound.Seam>of("FoundData")
            .with("edges", TEXTS, AsFound.Seam::places)
            .says("names of edges")
            .with("length_m", NUMBER, AsFound.Seam::length)
            .with("state", TEXT, seam -> FoundWords.state(seam, UnitSystem.SI))
            .says("in words: the detail that was found, or why it is not known")
            .maybe("result", FOUND_RESULT, AsFound.Seam::sheet);

    /** A sheet among all, with what was found in its places. */
    record In(BridgeSheet<JunctionResult> sheet, Optional<AsFound> found) {

        JunctionResult result() {
            return sheet.result();
        }

        ImmutableList<AsFound.Seam> seams() {
            return found.map(each -> each.of(sheet)).orElse(Lists.immutable.empty());
        }
    }

    static final JsonForm<In> SHEET = JsonForm.<In>of("SheetData")
            .with("id", TEXT, in -> in.sheet().id())
            .all(detail("of junction"), In::sheet)
            .with("length_m", NUMBER, in -> in.sheet().size())
            .with("edges", TEXTS, in -> in.sheet().places())
            .says("names of edges")
            .with("coupling_W_per_mK", BOUNDS, in -> in.result().coupling())
            .says("thermal coupling coefficient L2D")
            .with("psiExternal_W_per_mK", BOUNDS, in -> in.result().psiExternal())
            .with("psiInternal_W_per_mK", BOUNDS, in -> in.result().psiInternal())
            .with("temperatureFactor", NUMBER, in -> in.result().temperatureFactor())
            .says("with a surface resistance of 0.25 m2K/W; an estimate")
            .with("coldest_m", POINT, in -> in.result().coldest())
            .says("in the section")
            .all(humidities(), In::sheet)
            .with("penLine", PEN_LINE, in -> in.result().penLine())
            .with("weakestPath", WEAKEST_PATH, in -> in.result().weakestPath())
            .with(
                    "legs",
                    LEG.list(),
                    in -> in.result()
                            .legs()
                            .collect(leg -> new Faced(leg, in.result().factor(leg))))
            .with("connections", TEXT.byName(), in -> connections(in.result().detail()))
            .says("how air, water and vapour control pass")
            .with("controlLines", CONTROL_LINE.list(), in -> in.result().controls())
            .says("the lines of air, water and vapour control as they run in the section; empty of a drawing without"
                    + " layers")
            .maybe("best", BEST, in -> in.sheet().best())
            .says("the best option of the catalogue; left out where it is this one")
            .with("asFound", FOUND.list(), In::seams)
            .says("what was found in its places before anything is built; empty where the house file does not say")
            .with("options", OPTION.list(), in -> in.sheet().options())
            .says("of the catalogue that fit the same layers, from worst to best as it ranks them")
            .with("parameters", NUMBER.byName(), in -> parameters(in.result().detail()))
            .says("of the detail that the house file set, m by name")
            .with("unknowns", WHOLE, in -> in.result().solution().unknowns())
            .says("of both solved systems")
            .with("accuracyMet", FLAG, in -> in.result().solution().met())
            .says("whether the interval is as narrow as asked")
            .with(
                    "notes",
                    TEXTS,
                    in -> in.result()
                            .notes()
                            .newWithAll(in.result().solution().notes())
                            .distinct());

    private JunctionForms() {}

    /**
     * What a sheet's detail is.
     *
     * @param kind says what it is a kind of
     */
    static JsonForm<BridgeSheet<?>> detail(String kind) {
        return JsonForm.<BridgeSheet<?>>of("")
                .with("kind", TEXT, sheet -> sheet.result().detail().kind().label())
                .says(kind)
                .with("detail", TEXT, sheet -> sheet.result().detail().id())
                .says("id in the catalogue")
                .with("detailName", TEXT, sheet -> sheet.result().detail().name())
                .with("chosen", FLAG, BridgeSheet::chosen)
                .says("whether the house file chose the detail");
    }

    /** From which humidity a sheet's coldest point is wet. */
    static JsonForm<BridgeSheet<?>> humidities() {
        return JsonForm.<BridgeSheet<?>>of("")
                .with("dewPointHumidity", NUMBER, BridgeSheet::dewPointHumidity)
                .says("relative indoor humidity at which the coldest point reaches the dew point")
                .with("mouldHumidity", NUMBER, BridgeSheet::mouldHumidity)
                .says("relative indoor humidity from which mould may grow there");
    }

    /**
     * What a detail costs.
     *
     * @param amount key of the amount, with what it is for
     */
    static JsonForm<Cost> cost(String name, String amount) {
        return JsonForm.<Cost>of(name)
                .with(amount, NUMBER, Cost::amount)
                .with("currency", TEXT, Cost::currency)
                .with("source", TEXT, Cost::source);
    }

    /** How air, water and vapour control pass, by their names. */
    static ImmutableMap<String, String> connections(Detail detail) {
        return detail.connections()
                .keyValuesView()
                .toImmutableMap(pair -> Types.word(pair.getOne()), pair -> Types.word(pair.getTwo()));
    }

    /** Lengths that the house file sets, m. */
    static ImmutableMap<String, Double> parameters(Detail detail) {
        return detail.parameters()
                .select(DetailParameter::given)
                .toImmutableMap(DetailParameter::name, DetailParameter::value);
    }
}
