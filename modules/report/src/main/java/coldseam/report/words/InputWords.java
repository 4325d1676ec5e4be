package coldseam.report.words;

import coldseam.assemblies.ground.SuspendedFloor;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.engine.GroundRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Climate;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.PointBridges;
import coldseam.envelope.Provenance;
import coldseam.envelope.Role;
import coldseam.envelope.Site;
import coldseam.envelope.SurfaceLimits;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.PointResult;
import coldseam.junctions.detail.Cost;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.vertex.VertexResult;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.tuple.Tuples;

/** The values that went in, each with its source. */
public final class InputWords {

    private static final String FILE = "house file";

    private static final String DEFAULT = "default: ";

    /** Of 100,000 Btu (IT). */
    private static final double KWH_OF_A_THERM = 29.3071;

    private static final String COMMON_PRACTICE = "common practice, no source";

    private final House house;
    private final Shell shell;
    private final ImmutableList<BridgeSheet<JunctionResult>> junctions;
    private final ImmutableList<BridgeSheet<PointResult>> points;
    private final ImmutableList<VertexResult.Own> corners;
    private final ImmutableList<GroundRow> ground;
    private final UnitSystem units;
    private final MutableList<InputRow> rows = Lists.mutable.empty();

    private InputWords(Audit audit, UnitSystem units) {
        this.house = audit.house();
        this.shell = audit.shell();
        this.junctions = audit.sheets();
        this.points = audit.pointSheets();
        this.ground = GroundRow.of(audit);
        this.corners = audit.vertexSheets()
                .flatCollect(sheet -> sheet.result().corner().stream().toList())
                .distinct();
        this.units = units;
    }

    public static ImmutableList<InputRow> of(Audit audit, UnitSystem units) {
        return of(audit, units, true);
    }

    /** The same without windows and doors, of which those with one U stand together. */
    static ImmutableList<InputRow> besideOpenings(Audit audit, UnitSystem units) {
        return of(audit, units, false);
    }

    private static ImmutableList<InputRow> of(Audit audit, UnitSystem units, boolean openings) {
        InputWords inputs = new InputWords(audit, units);
        inputs.site();
        inputs.neighbours();
        inputs.crawlSpaces();
        inputs.limits();
        if (openings) {
            inputs.openings();
        }
        inputs.ownPsi();
        inputs.points();
        inputs.corners();
        inputs.parameters();
        inputs.prices();
        inputs.materials();
        inputs.insulates();
        inputs.controls();
        inputs.bears();
        return inputs.rows.toImmutable();
    }

    private void site() {
        Site site = house.site();
        String weather = site.source().orElse(FILE + ", without a source");
        row("Indoor design temperature", say(site.indoorTemperature(), Dimension.TEMPERATURE), FILE);
        row("Outdoor design temperature", say(site.outdoorTemperature(), Dimension.TEMPERATURE), weather);
        row(
                "Indoor humidity at the design condition",
                say(site.indoorHumidity(), Dimension.SHARE),
                said(Site.Usual.INDOOR_HUMIDITY));
        site.climate().ifPresentOrElse(this::climate, () -> row("Monthly climate", "none", FILE));
        site.heatingDegreeDays()
                .ifPresent(days -> row("Heating degree days", say(days, Dimension.DEGREE_DAYS), weather));
        row(
                "Conductivity of the ground (" + site.groundName() + ")",
                say(site.groundConductivity(), Dimension.CONDUCTIVITY),
                said(Site.Usual.GROUND) + "; named kinds by ISO 13370:2017 (from memory)");
        row("Dimension system", Words.word(site.dimensions()), FILE);
        site.ventilationHeatLoss()
                .ifPresent(loss -> row("Ventilation heat loss", say(loss, Dimension.HEAT_LOSS_COEFFICIENT), FILE));
        house.prices().heat().ifPresent(price -> row("Price of heat", priceOfHeat(price), FILE));
    }

    /** @param price for each kWh */
    private String priceOfHeat(double price) {
        String currency = house.prices().currency();
        return units == UnitSystem.US
                ? Format.of("%.2f %s per therm", price * KWH_OF_A_THERM, currency)
                : Format.of("%.3f %s per kWh", price, currency);
    }

    private void crawlSpaces() {
        for (GroundRow row : ground) {
            if (row.method() instanceof SuspendedFloor floor) {
                row(
                        "Crawl space under " + row.name(),
                        GroundWords.crawlSpace(new Print(units), floor.space()),
                        FILE
                                + ", or what is usual where it says nothing; shielding factors ISO 13370:2017 table 8 (from memory)");
            }
        }
    }

    /** Where a value of the site comes from that may be left out. */
    private String said(Site.Usual value) {
        return house.site().usual().contains(value) ? "what is usual, the house file does not say" : FILE;
    }

    private void climate(Climate climate) {
        climate.months()
                .forEach(mean -> row(
                        "Outdoor air in " + Phrases.month(mean.month()),
                        say(mean.temperature(), Dimension.TEMPERATURE) + ", " + say(mean.humidity(), Dimension.SHARE),
                        climate.source()));
        row(
                "Rooms month by month",
                climate.indoors() == Climate.Indoors.SITE_HUMIDITY
                        ? "the indoor humidity above, all year"
                        : "humidity class \"" + Words.word(climate.indoors()) + "\"",
                said(Site.Usual.HUMIDITY_BY_MONTHS) + "; classes of ISO 13788:2012 annex A (from memory)");
        row(
                "Vapour resistance factors μ",
                "beside the conductivities",
                "of built-in materials ISO 10456:2007 table 3, dry side (from memory), or common practice");
    }

    private void neighbours() {
        shell.surfaces()
                .collect(Surface::exposure)
                .select(exposure -> exposure.kind() == Exposure.Kind.UNHEATED)
                .distinct()
                .forEach(exposure -> row(
                        "Temperature factor b of " + exposure.neighbour(),
                        say(exposure.factor(), Dimension.RATIO),
                        exposure.source().isEmpty() ? FILE : exposure.source()));
    }

    private void limits() {
        Limits limits = house.limits();
        Limits usual = Limits.defaults(house.site());
        String judgement = "judgement";
        row("Least neck of the insulation", limits.neckShare(), usual.neckShare(), Dimension.SHARE, judgement);
        row("Least ratio of the weakest path", limits.pathShare(), usual.pathShare(), Dimension.SHARE, judgement);
        row(
                "Largest psi, " + Words.word(house.site().dimensions()) + " dimensions",
                limits.psi(),
                usual.psi(),
                Dimension.LINEAR_TRANSMITTANCE,
                "the trade's rule for a bridge-free junction");
        row(
                "Largest psi where geometry alone makes it the larger one",
                limits.geometryPsi(),
                usual.geometryPsi(),
                Dimension.LINEAR_TRANSMITTANCE,
                judgement);
        row(
                "Largest psi around windows and doors",
                limits.openingPsi(),
                usual.openingPsi(),
                Dimension.LINEAR_TRANSMITTANCE,
                COMMON_PRACTICE);
        row(
                "Least R of a surface in proportion to the others",
                limits.meanShare(),
                usual.meanShare(),
                Dimension.SHARE,
                judgement);
        surfaceLimits(limits.surfaces());
        row(
                "Least temperature factor fRsi",
                limits.temperatureFactor(),
                usual.temperatureFactor(),
                Dimension.RATIO,
                "20 °C, 50 % and -5 °C by ISO 13788:2012 (from memory)");
    }

    /** A limit, and where its default comes from if it is that. */
    private void row(String of, double limit, double usual, Dimension dimension, String source) {
        row(of, say(limit, dimension), limit == usual ? DEFAULT + source : FILE);
    }

    private void surfaceLimits(SurfaceLimits limits) {
        row("walls", limits.wall());
        row("roofs", limits.roof());
        row("floors over air", limits.floor());
        row("what meets the ground", limits.ground());
        row("windows", limits.window());
        row("doors", limits.door());
    }

    private void row(String of, SurfaceLimits.Most limit) {
        row(
                "Largest U of " + of,
                say(limit.transmittance(), Dimension.TRANSMITTANCE),
                limit.source().map(DEFAULT::concat).orElse(FILE));
    }

    private void openings() {
        house.openings()
                .groupBy(opening -> Tuples.pair(WindowTransmittance.transmittance(opening), openingSource(opening)))
                .keyMultiValuePairsView()
                .toSortedListBy(pair -> pair.getOne())
                .forEach(pair -> row(
                        "U of " + pair.getTwo().collect(Opening::name).makeString(", "),
                        say(pair.getOne().getOne(), Dimension.TRANSMITTANCE),
                        pair.getOne().getTwo()));
    }

    private static String openingSource(Opening opening) {
        String source = opening.rating().source().orElse(FILE + ", without a product's source");
        return WindowTransmittance.of(opening).isPresent()
                ? "of glass, frame and spacer (ISO 10077-1): " + source
                : source;
    }

    /** What counts as insulation by a word of a file and not by its conductivity; no layer of air ever does. */
    private void insulates() {
        house.materials()
                .toSortedListBy(Material::name)
                .select(material ->
                        !material.isAir() && material.insulatesSource().isPresent())
                .forEach(material -> row(
                        Phrases.capital(material.name()) + " counts as insulation",
                        say(material.conductivity(), Dimension.CONDUCTIVITY),
                        material.insulatesSource().orElseThrow()));
    }

    private void ownPsi() {
        house.ownPsi()
                .forEach(own -> row(
                        "psi of "
                                + own.which()
                                        .kinds()
                                        .collect(kind -> kind.label())
                                        .toSortedList()
                                        .makeString(", ")
                                + own.which().surfaces().makeString(" ", ", ", ""),
                        say(own.psi(), Dimension.LINEAR_TRANSMITTANCE),
                        own.source()));
    }

    private void points() {
        if (points.isEmpty()) {
            return;
        }
        row("Largest chi of a point", house.limits().chi(), Limits.CHI, Dimension.POINT_TRANSMITTANCE, COMMON_PRACTICE);
        for (PointBridges set : house.points()) {
            set.parameters()
                    .keyValuesView()
                    .toSortedListBy(pair -> pair.getOne())
                    .forEach(pair ->
                            row(pair.getOne() + " of " + set.name(), say(pair.getTwo(), Dimension.THICKNESS), FILE));
        }
    }

    private void corners() {
        corners.collect(VertexResult.Own::detail)
                .distinct()
                .forEach(detail -> row(
                        "Corner built as " + detail.id(),
                        detail.name(),
                        house.corners().contains(detail.id()) ? FILE : "the edges' details leave the corner open"));
    }

    private void parameters() {
        house.choices()
                .forEach(choice -> choice.parameters()
                        .keyValuesView()
                        .toSortedListBy(pair -> pair.getOne())
                        .forEach(pair -> row(
                                pair.getOne() + " of " + choice.detail(), say(pair.getTwo(), Dimension.LENGTH), FILE)));
    }

    private void prices() {
        house.prices()
                .details()
                .keyValuesView()
                .toSortedListBy(pair -> pair.getOne())
                .forEach(pair -> row(
                        "Cost of " + pair.getOne(),
                        Cost.perMetre(
                                        pair.getTwo().perMetre(),
                                        house.prices().currency(),
                                        pair.getTwo().source())
                                .text(units),
                        pair.getTwo().source()));
    }

    /** Whether a detail draws it of a material of its own: layers are the house's, frames are bodies of their U. */
    private static boolean broughtAlong(SectionPlan.Piece piece) {
        return piece.solved()
                && piece.origin() instanceof SectionPlan.Origin.OfDetail of
                && of.like().isEmpty();
    }

    /** The house's materials, and those that its details, points and corners bring along. */
    private void materials() {
        ImmutableList<Material> others = junctions
                .flatCollect(sheet -> sheet.result().plan().pieces())
                .select(InputWords::broughtAlong)
                .newWithAll(points.flatCollect(sheet -> sheet.result().pieces()))
                .collect(SectionPlan.Piece::material)
                .newWithAll(corners.flatCollect(VertexResult.Own::materials))
                .reject(material -> house.materials().containsKey(material.name()))
                .distinct();
        for (Material material :
                house.materials().toList().withAll(others.castToList()).sortThisBy(Material::name)) {
            row(
                    "Conductivity of " + material.name(),
                    say(material.conductivity(), Dimension.CONDUCTIVITY) + vapour(material),
                    source(material.provenance()));
        }
    }

    /** What the layers that control something can do it by. */
    private void controls() {
        house.assemblies()
                .valuesView()
                .flatCollect(Assembly::layers)
                .flatCollect(layer -> layer.controls().collect(control -> Tuples.pair(control, layer.material())))
                .select(named -> named.getTwo().canControl(named.getOne()))
                .toSet()
                .toSortedListBy(named -> named.getOne() + " " + named.getTwo().name())
                .forEach(named -> row(
                        Phrases.capital(Words.word(named.getOne())) + " control by "
                                + named.getTwo().name(),
                        "it can",
                        named.getTwo().controls().get(named.getOne())));
    }

    /** What the insulation may lie in or under, where a source says so. */
    private void bears() {
        house.assemblies()
                .valuesView()
                .flatCollect(Assembly::layers)
                .select(layer -> layer.role() == Role.INSULATION)
                .collect(Layer::material)
                .toSet()
                .toSortedListBy(Material::name)
                .forEach(material -> material.bears()
                        .keyValuesView()
                        .toSortedListBy(pair -> pair.getOne())
                        .forEach(pair -> row(
                                Phrases.capital(material.name()) + " bears " + Words.word(pair.getOne()),
                                "it does",
                                pair.getTwo())));
    }

    /** The vapour resistance factor, where it counts and is known. */
    private String vapour(Material material) {
        if (house.site().climate().isEmpty()
                || material.vapourResistanceFactor().isEmpty()) {
            return "";
        }
        double mu = material.vapourResistanceFactor().getAsDouble();
        return Double.isInfinite(mu) ? "; vapour-tight" : Format.of("; μ %.0f", mu);
    }

    private static String source(Provenance provenance) {
        return switch (provenance.sureness()) {
            case READ, DECLARED -> provenance.source();
            case FROM_MEMORY -> provenance.source() + " (from memory)";
            case COMMON_PRACTICE -> COMMON_PRACTICE;
        };
    }

    private String say(double value, Dimension dimension) {
        return units.format(value, dimension);
    }

    private void row(String what, String value, String source) {
        rows.add(new InputRow(what, value, source));
    }
}
