package coldseam.report.data;

import static coldseam.files.JsonType.FLAG;
import static coldseam.files.JsonType.NUMBER;
import static coldseam.files.JsonType.TEXT;
import static coldseam.files.JsonType.WHOLE;
import static coldseam.report.data.Types.PLACE;
import static coldseam.report.data.Types.TEXTS;
import static coldseam.report.data.Types.WORD;

import coldseam.assemblies.ground.Basement;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Digests;
import coldseam.audit.HoldPoint;
import coldseam.audit.SideSummary;
import coldseam.audit.TerraceLine;
import coldseam.audit.UpkeepItem;
import coldseam.audit.Work;
import coldseam.audit.engine.GroundRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Limits;
import coldseam.envelope.Site;
import coldseam.envelope.Submittal;
import coldseam.envelope.shell.OpenEdge;
import coldseam.envelope.shell.Surface;
import coldseam.files.JsonForm;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.words.HoldPointWords;
import coldseam.report.words.HonestWords;
import coldseam.report.words.InputRow;
import coldseam.report.words.InputWords;
import coldseam.report.words.MethodWords;
import coldseam.report.words.TakeOff;
import coldseam.report.words.TerraceWords;
import coldseam.report.words.VerdictWords;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A whole audit; keys carry their unit, all is in SI units. */
public final class AuditForm {

    private static final int FORMAT_VERSION = 3;

    private static final JsonForm<Submittal> SUBMITTAL = JsonForm.<Submittal>of("Submittal")
            .maybe("address", TEXT, Submittal::address)
            .maybe("client", TEXT, Submittal::client)
            .maybe("preparedBy", TEXT, Submittal::preparedBy)
            .maybe("date", TEXT, submittal -> submittal.date().map(LocalDate::toString))
            .says("year-month-day")
            .maybe("revision", TEXT, Submittal::revision);

    private static final JsonForm<Digests.OfDetail> DETAIL_DIGEST = JsonForm.<Digests.OfDetail>of("DetailDigest")
            .with("file", TEXT, Digests.OfDetail::file)
            .says("as the house file names it")
            .with("digest", TEXT, Digests.OfDetail::digest)
            .says("SHA-256, hexadecimal");

    private static final JsonForm<Site> SITE = JsonForm.<Site>of("Site")
            .with("indoorTemperature_degC", NUMBER, Site::indoorTemperature)
            .with("outdoorTemperature_degC", NUMBER, Site::outdoorTemperature)
            .with("indoorHumidity", NUMBER, Site::indoorHumidity)
            .says("relative, 0 to 1")
            .maybeNumber("heatingDegreeDays_Kd", Site::heatingDegreeDays)
            .maybe("source", TEXT, Site::source)
            .says("of the outdoor design temperature and the degree days")
            .with("ground", TEXT, Site::groundName)
            .with("groundConductivity_W_per_mK", NUMBER, Site::groundConductivity);

    private static final JsonForm<Limits> LIMITS = JsonForm.<Limits>of("Limits")
            .with("neckShare", NUMBER, Limits::neckShare)
            .says("least neck over the thinner neighbour's insulation")
            .with("pathShare", NUMBER, Limits::pathShare)
            .says("least ratio of the weakest path")
            .with("psi_W_per_mK", NUMBER, Limits::psi)
            .with("temperatureFactor", NUMBER, Limits::temperatureFactor)
            .with("chi_W_per_K", NUMBER, Limits::chi)
            .says("largest of one point");

    private static final JsonForm<Audit> VERDICT = JsonForm.<Audit>of("Verdict")
            .with("unbroken", FLAG, audit -> audit.verdict().unbroken())
            .with("gaps", WHOLE, audit -> audit.verdict().gaps())
            .with("weakSpots", WHOLE, audit -> audit.verdict().weakSpots())
            .with("sentence", TEXT, audit -> VerdictWords.sentence(audit.verdict()))
            .maybe("assumed", TEXT, audit -> honest(audit).assumed())
            .says("what rests on the house file's word alone")
            .with("measuredBy", TEXT, audit -> honest(audit).measuredBy())
            .says("what it was held to")
            .maybe("heldByMemory", TEXT, audit -> honest(audit).held())
            .says("what is known less well than it would be with more memory");

    private static final JsonForm<Work> WORK = JsonForm.<Work>of("Work")
            .with("junctions", WHOLE, Work::junctions)
            .says("different details of seams, those they are compared with counted in")
            .with("found", WHOLE, Work::found)
            .says("likewise of seams as they were found")
            .with("points", WHOLE, Work::points)
            .says("likewise of points")
            .with("corners", WHOLE, Work::corners)
            .says("different corners in three dimensions, at most")
            .with("unknowns", NUMBER, Work::unknowns)
            .says("expected in all, within some three times");

    private static final JsonForm<Audit> SHELL = JsonForm.<Audit>of("Shell")
            .with("closed", FLAG, audit -> audit.shell().closed())
            .with("externalVolume_m3", NUMBER, audit -> audit.shell().externalVolume())
            .with("internalVolume_m3", NUMBER, audit -> audit.shell().internalVolume())
            .with("floorArea_m2", NUMBER, audit -> audit.shell().floorArea())
            .says(
                    "of every heated storey between the inner faces of its outer walls, with inner walls, stairs and what is low under"
                            + " a slope, but without the strip that a wall between the house and a wing that only abuts it would stand on")
            .with("groundFloorArea_m2", NUMBER, audit -> audit.shell().groundFloorArea())
            .with("exposedPerimeter_m", NUMBER, audit -> audit.shell().exposedPerimeter());

    private static final JsonForm<GroundRow> GROUND = JsonForm.<GroundRow>of("FloorOnGround")
            .with("floors", TEXT.list(), row -> row.floors().collect(Surface::name))
            .with("area_m2", NUMBER, row -> row.method().floor().area())
            .says("A of ISO 13370, between outer faces")
            .with("exposedPerimeter_m", NUMBER, row -> row.method().floor().perimeter())
            .says("P, to outdoors, to the ground or to an unheated space")
            .with(
                    "characteristicDimension_m",
                    NUMBER,
                    row -> row.method().floor().characteristicDimension())
            .says("B' = A/(P/2)")
            .with("wallThickness_m", NUMBER, row -> row.method().floor().wallThickness())
            .says("w, the mean along P")
            .with("equivalentThickness_m", NUMBER, row -> row.method().equivalentThickness())
            .says("dt; under a suspended floor dg, of its ground")
            .with("transmittance_W_per_m2K", NUMBER, row -> row.method().transmittance())
            .maybe("depth_m", NUMBER, row -> basement(row).map(Basement::depth))
            .says("z of a basement, the mean along P")
            .maybe("wallEquivalentThickness_m", NUMBER, row -> basement(row).map(Basement::wallThickness))
            .says("dw of its walls in the ground")
            .maybe("wallTransmittance_W_per_m2K", NUMBER, row -> basement(row).map(Basement::wallTransmittance))
            .says("of its walls in the ground");

    private static Optional<Basement> basement(GroundRow row) {
        return row.method() instanceof Basement basement ? Optional.of(basement) : Optional.empty();
    }

    private static final JsonForm<SideSummary> SIDE = JsonForm.<SideSummary>of("Side")
            .with("side", WORD, SideSummary::side)
            .with("area_m2", NUMBER, SideSummary::area)
            .with("exposed_m2", NUMBER, SideSummary::exposedArea)
            .says("of it what no heated neighbour is behind")
            .with("openings_m2", NUMBER, SideSummary::openings)
            .with("missing_m2", NUMBER, SideSummary::missing)
            .says("of holes, where nothing closes the envelope")
            .with("insulatedShare", NUMBER, SideSummary::insulatedShare)
            .says("of the opaque exposed area, what is missing counted in, 0 to 1")
            .with("meanTransmittance_W_per_m2K", NUMBER, SideSummary::meanTransmittance)
            .says("of the exposed area, openings counted in");

    private static final JsonForm<Surface> SURFACE = JsonForm.<Surface>of("Surface")
            .with("name", TEXT, Surface::name)
            .with("side", WORD, Surface::side)
            .with("use", WORD, Surface::use)
            .maybe("assembly", TEXT, surface -> surface.assembly().map(Assembly::name))
            .with("exposure", WORD, surface -> surface.exposure().kind())
            .maybe(
                    "neighbour",
                    TEXT,
                    surface -> Optional.of(surface.exposure().neighbour()).filter(name -> !name.isEmpty()))
            .says("name of the unheated or heated space behind it")
            .with("temperatureFactor", NUMBER, surface -> surface.exposure().factor())
            .with("externalArea_m2", NUMBER, Surface::externalArea)
            .with("internalArea_m2", NUMBER, Surface::internalArea)
            .with("openingArea_m2", NUMBER, Surface::openingArea)
            .with("storey", TEXT, Surface::storey)
            .with("outline_m", PLACE.list(), Surface::outline)
            .says("corners on the outer plane, counterclockwise seen from outdoors: east, north, up");

    private static final JsonForm<TakeOff.OfOpening> OPENING = JsonForm.<TakeOff.OfOpening>of("Opening")
            .with("name", TEXT, each -> each.opening().name())
            .with("kind", WORD, each -> each.opening().kind())
            .with("surface", TEXT, TakeOff.OfOpening::in)
            .maybe("side", WORD, each -> each.surface().map(Surface::side))
            .with("width_m", NUMBER, each -> each.opening().width())
            .with("height_m", NUMBER, each -> each.opening().height())
            .with("area_m2", NUMBER, TakeOff.OfOpening::area)
            .with("transmittance_W_per_m2K", NUMBER, TakeOff.OfOpening::transmittance)
            .maybe("source", TEXT, each -> each.opening().rating().source())
            .says("where transmittance, or what it follows from, is declared");

    private static final JsonForm<OpenEdge> OPEN_EDGE = JsonForm.<OpenEdge>of("OpenEdge")
            .with("place", TEXT, OpenEdge::place)
            .with("length_m", NUMBER, OpenEdge::length)
            .with("surfaces", TEXTS, OpenEdge::surfaces)
            .with("from_m", PLACE, OpenEdge::from)
            .with("to_m", PLACE, OpenEdge::to);

    private static final JsonForm<TerraceLine> TERRACE = JsonForm.<TerraceLine>of("Terrace")
            .with("surface", TEXT, terrace -> terrace.surface().name())
            .with("underside_degC", NUMBER, terrace -> terrace.deck().temperature())
            .with("dewPoint_degC", NUMBER, terrace -> terrace.deck().dewPoint())
            .with("safe", FLAG, TerraceLine::safe)
            .with("sentence", TEXT, terrace -> TerraceWords.brief(terrace, UnitSystem.SI));

    /** What has a number as printed beside its line to sign. */
    private record Numbered<T>(String number, T of) {}

    private static final JsonForm<Numbered<HoldPoint.Item>> ITEM = JsonForm.<Numbered<HoldPoint.Item>>of(
                    "HoldPointItem")
            .with("number", TEXT, Numbered::number)
            .says("as printed beside its line to sign, such as 3.2")
            .with("lookAt", TEXT, item -> item.of().lookAt())
            .with("junctionSheets", TEXTS, item -> item.of().sheets())
            .says("and point sheets, whose details ask for it; none where the stop itself does");

    /** A hold point, counted from 1. */
    private record Stop(int number, HoldPoint point) {

        ImmutableList<Numbered<HoldPoint.Item>> items() {
            return point.items()
                    .collectWithIndex((item, i) -> new Numbered<>(HoldPointWords.number(number, i + 1), item));
        }
    }

    private static final JsonForm<Stop> HOLD_POINT = JsonForm.<Stop>of("HoldPoint")
            .with("name", TEXT, stop -> stop.point().name())
            .with("before", TEXT, stop -> stop.point().before())
            .with("lookAt", TEXTS, stop -> stop.point().lookAt())
            .with("items", ITEM.list(), Stop::items)
            .says("the same, one by one: each is signed and photographed for itself")
            .with("junctionSheets", TEXTS, stop -> stop.point().sheets())
            .says("and point sheets");

    private static final JsonForm<UpkeepItem> UPKEEP = JsonForm.<UpkeepItem>of("Upkeep")
            .with("look", TEXT, item -> item.upkeep().look())
            .with("often", TEXT, item -> item.upkeep().often())
            .with("assemblies", TEXTS, UpkeepItem::assemblies)
            .says("whose layers ask for it")
            .with("sheets", TEXTS, item -> item.sheets().collect(BridgeSheet::id))
            .says("of junctions and points");

    private static final JsonForm<InputRow> INPUT = JsonForm.<InputRow>of("Input")
            .with("what", TEXT, InputRow::what)
            .with("value", TEXT, InputRow::value)
            .with("source", TEXT, InputRow::source);

    public static final JsonForm<Audit> AUDIT = JsonForm.<Audit>of("Audit")
            .with("format", TEXT, audit -> "coldseam audit")
            .says("always \"coldseam audit\"")
            .with("formatVersion", WHOLE, audit -> FORMAT_VERSION)
            .says("raised when a key changes its meaning or goes; new keys may come without. 3: a junction and a point"
                    + " break the same rules, under one id (detail-not-chosen, transmittance-over-limit, and"
                    + " layer-broken, layer-not-shown, detail-out-of-range and temperature-factor-under-limit for"
                    + " both); junctionSheet of an edge and of a finding is sheet, which may be a point's; source is a"
                    + " word, with sourceSays beside it; every sentence is in SI units")
            .with("version", TEXT, Audit::version)
            .says("of the tool")
            .with("inputDigest", TEXT, Audit::inputDigest)
            .says("SHA-256 of the house file, hexadecimal")
            .with(
                    "detailDigests",
                    DETAIL_DIGEST.list(),
                    audit -> audit.digests().details())
            .says("of the detail files that the house brings along")
            .with("house", TEXT, audit -> audit.house().name())
            .says("name of the house")
            .with("submittal", SUBMITTAL, audit -> audit.house().submittal())
            .says("what it is handed in with, in the house file's words")
            .with("dimensions", WORD, audit -> audit.heatLoss().system())
            .says("to which faces areas and lengths are measured: external or internal")
            .with("site", SITE, audit -> audit.house().site())
            .with("limits", LIMITS, audit -> audit.house().limits())
            .with("verdict", VERDICT, audit -> audit)
            .with("work", WORK, Audit::work)
            .says("what was to be solved, as it was known before")
            .with("shell", SHELL, audit -> audit)
            .with("sides", SIDE.list(), Audit::sides)
            .says("the six sides")
            .with("surfaces", SURFACE.list(), audit -> audit.shell().surfaces())
            .with("floorsOnGround", GROUND.list(), GroundRow::of)
            .says("what U of floors on the ground follows from")
            .with("openings", OPENING.list(), TakeOff::openings)
            .says("windows and doors")
            .with("openEdges", OPEN_EDGE.list(), audit -> audit.shell().openEdges())
            .says("edges that are not shared by exactly two surfaces")
            .with("assemblies", AssemblyForm.ASSEMBLY.list(), Audit::assemblies)
            .with(
                    "junctionSheets",
                    JunctionForms.SHEET.list(),
                    audit -> audit.sheets().collect(sheet -> new JunctionForms.In(sheet, audit.found())))
            .says("one for each different junction")
            .with("edges", JunctionForms.EDGE.list(), Audit::junctions)
            .says("one for each edge of the shell")
            .with("pairSheets", MeetingForms.PAIR_SHEET.list(), Audit::pairSheets)
            .says("one for each different two seams that touch and are computed in one section")
            .with(
                    "pairs",
                    MeetingForms.PAIR.list(),
                    audit -> audit.pairs().collect(row -> new MeetingForms.Touching(row, audit.mould())))
            .says("one for each two seams that touch")
            .with("pointSheets", PointForms.SHEET.list(), Audit::pointSheets)
            .says("one for each different point")
            .with("points", PointForms.POINT.list(), Audit::points)
            .says("one for each set of points of the house file")
            .with("vertexSheets", MeetingForms.VERTEX_SHEET.list(), Audit::vertexSheets)
            .says("one for each different corner that is computed")
            .with(
                    "vertices",
                    MeetingForms.VERTEX.list(),
                    audit -> audit.vertices().collect(row -> new MeetingForms.Corner(row, audit.mould())))
            .says("one for each corner where three or more edges meet")
            .with("heatLoss", HeatLossForm.HEAT_LOSS, audit -> audit)
            .with("findings", FindingForm.FINDING.list(), Audit::findings)
            .says("by weight, the heaviest first")
            .with("mould", MouldForm.MOULD, Audit::mould)
            .with("terraces", TERRACE.list(), Audit::terraces)
            .with(
                    "holdPoints",
                    HOLD_POINT.list(),
                    audit -> audit.holdPoints().collectWithIndex((point, i) -> new Stop(i + 1, point)))
            .says("in order of building")
            .with("upkeep", UPKEEP.list(), Audit::upkeep)
            .says("what layers in sight and the chosen details ask to be looked after")
            .with("inputs", INPUT.list(), audit -> InputWords.of(audit, UnitSystem.SI))
            .with("method", TEXTS, audit -> MethodWords.method(audit, UnitSystem.SI))
            .with("cautions", TEXTS, audit -> MethodWords.cautions());

    private AuditForm() {}

    private static HonestWords honest(Audit audit) {
        return new HonestWords(audit, UnitSystem.SI);
    }
}
