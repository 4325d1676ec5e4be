package coldseam.audit;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Climate;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind.StoreyFloor;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Role;
import coldseam.envelope.Site;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.hand.HandDrawing;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * What of a house there may be, but seldom is: where it is a slip of the pen or a trick, the house loses more than is computed.
 *
 * @param byHand edges whose section is drawn by hand: that it carries, and controls air, water and vapour, its file alone says
 * @param ownDetails edges built by a detail's file of the house's own: how it is built and holds, that file alone says
 * @param ownPoints points built by such a file
 * @param ownCorners corners at which such a file says what meets
 * @param bare assemblies that boards alone carry: studs, rafters or joists are left out
 * @param naked assemblies outdoors whose outermost layer is a thin sheet, in sun and wind
 * @param raised floors on the ground that lie over all the ground beside them
 * @param tall walls so high indoors that a floor is likely to meet them, and none does
 * @param platform edges at which floors meet old framed walls whose studs are not said to run past them
 * @param under what lies on the ground and stays, with insulation under it that was not found there
 * @param best windows and doors that, or whose frames, lose less than the best that are usual
 * @param steps doors whose sill nobody steps over
 * @param large windows and doors that are larger than one usually is
 * @param thin flat roofs and decks that miss the limit of their U where what is cut to falls is thinnest, though not as a whole
 * @param slim windows and doors whose frame or spacer is said to be slimmer, or to lose less, than those there usually are
 * @param dark how few windows there are for so much floor; empty where there are enough of them, or none at all
 * @param propped walls that are built new under what stays
 * @param renewed assemblies of a new build that an old house's material carries
 * @param removed what was found and is planned no more, though nothing says that it comes off
 * @param warmed bases whose crawl space, or whose edge, is said to be insulated better than those there usually are
 * @param thinFloor m, of the thinnest internal floor, where hardly any is as thin; its edges lose the less
 * @param parapet m, of the highest where it is higher than a guard: the wind's load on it bears on the seam
 * @param far m, the house's length, where hardly any is as long
 * @param site what is said of the air and the ground
 * @param still materials of the house file that conduct less than boards without a vacuum do
 */
public record Unlikely(
        ImmutableList<JunctionRow> byHand,
        ImmutableList<JunctionRow> ownDetails,
        int ownPoints,
        int ownCorners,
        ImmutableList<Assembly> bare,
        ImmutableList<Assembly> naked,
        ImmutableList<Raised> raised,
        ImmutableList<Surface> tall,
        ImmutableList<JunctionRow> platform,
        ImmutableList<Surface> under,
        ImmutableList<Opening> best,
        ImmutableList<Opening> steps,
        ImmutableList<Opening> large,
        ImmutableList<Thin> thin,
        ImmutableList<Opening> slim,
        Optional<Dark> dark,
        ImmutableList<Surface> propped,
        ImmutableList<Assembly> renewed,
        ImmutableList<Removed> removed,
        ImmutableList<Body.Base> warmed,
        OptionalDouble thinFloor,
        OptionalDouble parapet,
        OptionalDouble far,
        ImmutableList<Weather> site,
        ImmutableList<Material> still) {

    /** What of the air and the ground is seldom so. */
    public enum Weather {
        /** The rooms are drier than rooms in use are. */
        DRY_ROOMS,
        /** The coldest days are milder than winters are. */
        MILD,
        /** The ground conducts less than any that is named. */
        DRY_GROUND,
        /** The months are all alike, so that winter is no colder. */
        EVEN_YEAR,
        /** A cold month's air is as dry as a desert's. */
        DRY_WINTER,
        /** The rooms are aired better than dwellings of which nothing is known. */
        AIRED
    }

    /**
     * Windows for a floor.
     *
     * @param windows m², frames counted in
     * @param floor m²
     */
    public record Dark(double windows, double floor) {}

    /** Of rooms in use, in winter and without a humidifier, hardly any is drier (common practice, no source). */
    private static final double DRY = 0.30;

    /** °C; design temperatures of places that heat are seldom milder (judgement). */
    private static final double MILD = 5;

    /** W/(m·K), of clay or silt: the least of the grounds that are named. */
    private static final double CLAY =
            MaterialLibrary.named("clay or silt").orElseThrow().conductivity();

    /**
     * A floor that fill must bear.
     *
     * @param height m, of its underside over the highest ground beside the house
     */
    public record Raised(Surface floor, double height) {}

    /**
     * Layers that are found, and not planned.
     *
     * @param found the build-up they are found in
     */
    public record Removed(Assembly found, ImmutableList<Layer> layers) {}

    /**
     * A surface cut to falls.
     *
     * @param transmittance W/(m²·K), where it is thinnest
     */
    public record Thin(Surface surface, double transmittance) {}

    /** m; solid boards of wood and slabs of concrete that carry a wall or a roof begin here (common practice, no source). */
    private static final double CARRIES = 0.06;

    /** W/(m·K); sheets of metal carry at any thickness. */
    private static final double METAL = 10;

    /** m between a floor's top and what is over it; rooms of one storey are seldom higher (judgement). */
    private static final double ONE_STOREY = 4.2;

    private static final double LEVEL = 0.001;

    /** m; slabs are seldom cast so high over the ground (judgement). */
    private static final double FILL = 0.3;

    /** m; sheets that stand in the sun for good are thicker, or of metal (common practice, no source). */
    private static final double SHEET = 0.001;

    /** W/(m²·K) of frame and glass together: triple glass in insulated frames has 0.7 to 0.8 (common practice, no source). */
    private static final double BEST = 0.6;

    /** m over the floor; higher ones are windows, or have stairs before them (judgement). */
    private static final double STEP = 0.5;

    /** m; what opens is seldom wider or higher, and what stands fixed is made of several (common practice, no source). */
    private static final double WIDE_DOOR = 3;

    private static final double WIDE_WINDOW = 4;

    private static final double HIGH = 3;

    /** W/(m·K); foams and fibres conduct more (common practice, no source). */
    private static final double STILL = 0.018;

    /** m; of slim profiles of steel, and sashes narrower than any of wood or plastic (common practice, no source). */
    private static final double SLIM = 0.05;

    /** W/(m·K); the best spacers between three panes have 0.03 (common practice, no source). */
    private static final double BEST_EDGE = 0.025;

    /** Of the floor; codes ask for an eighth to a tenth of each room that is lived in (common practice, no source). */
    private static final double LIT = 0.05;

    /** K between the warmest and the coldest month, where anybody heats (judgement). */
    private static final double SEASONS = 5;

    /** Mean of a month that is colder than {@link #COLD}; outside of deserts it is damper (common practice, no source). */
    private static final double DRY_MONTH = 0.40;

    /** °C. */
    private static final double COLD = 10;

    private static final String OLD = "old ";

    /** m²·K/W, on the ground of a crawl space: 180 mm of good board (common practice, no source). */
    private static final double WARM_GROUND = 5;

    /** W/(m²·K), of its walls: insulated as those of rooms (judgement). */
    private static final double WARM_WALLS = 0.3;

    /** m; boards along a slab's edge are seldom as deep or as wide, or as thick (common practice, no source). */
    private static final double FAR_EDGE = 1.5;

    private static final double THICK_EDGE = 0.25;

    /** m; solid floors of one room's span begin here (common practice, no source). */
    private static final double THIN_FLOOR = 0.12;

    /** m; guards of roofs and balconies are 1.0 to 1.1 high (common practice, no source). */
    private static final double GUARD = 1.2;

    /** m; longer ones are several houses, or a slip of the pen (judgement). */
    private static final double FAR = 40;

    private static final Optional<StoreyFloor> BEARS_IN = Optional.of(StoreyFloor.BEARS_IN_THE_WALL);

    static Unlikely of(Audit audit, ImmutableList<Material> used) {
        return new Unlikely(
                audit.junctions()
                        .select(row -> row.sheet()
                                .filter(sheet -> sheet.result().detail().drawing() instanceof HandDrawing)
                                .isPresent()),
                audit.junctions()
                        .select(row -> row.sheet()
                                .map(sheet -> sheet.result().detail())
                                .filter(detail -> !(detail.drawing() instanceof HandDrawing) && detail.own())
                                .isPresent()),
                (int) audit.points()
                        .select(row -> row.sheet()
                                .filter(sheet -> sheet.result().detail().own())
                                .isPresent())
                        .sumOfInt(PointRow::number),
                (int) audit.vertexSheets()
                        .select(sheet -> sheet.result()
                                .corner()
                                .filter(corner -> corner.detail().own())
                                .isPresent())
                        .sumOfInt(sheet -> sheet.places().size()),
                audit.shell()
                        .surfaces()
                        .flatCollect(surface -> surface.assembly().stream().toList())
                        .distinct()
                        .select(Unlikely::isBare)
                        .toSortedListBy(Assembly::name)
                        .toImmutable(),
                audit.shell()
                        .surfaces()
                        .select(surface -> surface.exposure().kind() == Exposure.Kind.OUTDOORS)
                        .flatCollect(surface -> surface.assembly().stream().toList())
                        .distinct()
                        .select(Unlikely::isNaked)
                        .toSortedListBy(Assembly::name)
                        .toImmutable(),
                audit.shell()
                        .surfaces()
                        .select(surface -> surface.use() == Body.Use.FLOOR
                                && surface.exposure().kind() == Exposure.Kind.GROUND)
                        .collect(floor -> new Raised(
                                floor, foot(floor) - ground(audit.house().body(), floor)))
                        .select(floor -> floor.height() > FILL),
                audit.shell().surfaces().select(Unlikely::isTall),
                audit.house()
                        .retrofit()
                        .map(old -> audit.junctions()
                                .select(row -> row.edge().kind().storeyFloor().equals(BEARS_IN)
                                        && row.edge().first().staysIn(old)
                                        && row.edge().first().isFramed()))
                        .orElse(Lists.immutable.empty()),
                audit.house()
                        .retrofit()
                        .map(old -> audit.shell().surfaces().select(surface -> liesOnNew(surface, old)))
                        .orElse(Lists.immutable.empty()),
                audit.house().openings().select(opening -> least(opening) < BEST),
                audit.shell()
                        .surfaces()
                        .select(surface -> surface.use() == Body.Use.WALL)
                        .flatCollect(surface -> audit.house()
                                .openings()
                                .select(opening -> opening.surface().equals(surface.name())))
                        .select(opening -> opening.kind() == Opening.Kind.DOOR && opening.sill() > STEP),
                audit.house().openings().select(Unlikely::isLarge),
                audit.shell().surfaces().flatCollect(surface -> thin(audit, surface)),
                audit.house().openings().select(Unlikely::isSlim),
                dark(audit),
                propped(audit),
                renewed(audit),
                removed(audit),
                bases(audit.house().body()).select(Unlikely::isWarmed),
                thinFloor(audit.house().body()),
                over(
                        GUARD,
                        audit.shell()
                                .surfaces()
                                .select(surface -> surface.use() == Body.Use.ROOF)
                                .collectDouble(roof -> audit.house().body().parapetHeight(roof.name(), roof.storey()))
                                .maxIfEmpty(0)),
                over(FAR, length(audit)),
                weather(audit.house().site()),
                used.select(material -> material.conductivity() < STILL && !Assumed.isBuiltIn(material)));
    }

    private static OptionalDouble over(double usual, double value) {
        return value > usual ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** m, from east to west or from south to north, whichever is more. */
    private static double length(Audit audit) {
        ImmutableList<Point3> points = audit.shell().surfaces().flatCollect(Surface::outline);
        return points.isEmpty()
                ? 0
                : Math.max(
                        points.collectDouble(Point3::x).max()
                                - points.collectDouble(Point3::x).min(),
                        points.collectDouble(Point3::y).max()
                                - points.collectDouble(Point3::y).min());
    }

    /** W/(m²·K), of the whole or of its frame. */
    public static double least(Opening opening) {
        return Math.min(WindowTransmittance.transmittance(opening), opening.frameTransmittance());
    }

    private static boolean isLarge(Opening opening) {
        return opening.width() > (opening.kind() == Opening.Kind.DOOR ? WIDE_DOOR : WIDE_WINDOW)
                || opening.height() > HIGH;
    }

    private static boolean isSlim(Opening opening) {
        return opening.rating().match(whole -> false, it -> it.frameWidth() < SLIM || it.edge() < BEST_EDGE);
    }

    private static Optional<Dark> dark(Audit audit) {
        double windows = audit.house()
                .openings()
                .select(opening -> opening.kind() == Opening.Kind.WINDOW)
                .sumOfDouble(opening -> opening.width() * opening.height());
        double floor = audit.shell().floorArea();
        return Optional.of(new Dark(windows, floor)).filter(it -> windows > 0 && windows < LIT * floor);
    }

    /** Walls under a floor, a wall or a roof that is not built new with them. */
    private static ImmutableList<Surface> propped(Audit audit) {
        return audit.house()
                .retrofit()
                .map(old -> audit.shell()
                        .surfaces()
                        .select(wall -> wall.use() == Body.Use.WALL
                                && !wall.staysIn(old)
                                && audit.shell()
                                        .edges()
                                        .flatCollect(edge ->
                                                above(edge, wall).stream().toList())
                                        .anySatisfy(each -> each.staysIn(old)
                                                && (each.use() == Body.Use.WALL || !old.takesDown("roof")))))
                .orElse(Lists.immutable.empty());
    }

    /** What rests on a wall at an edge along its top. */
    private static Optional<Surface> above(Edge edge, Surface wall) {
        return edge.second()
                .filter(other -> edge.opening().isEmpty()
                        && Math.abs(edge.from().z() - edge.to().z()) < LEVEL)
                .map(other -> edge.first().equals(wall) ? other : edge.first())
                .filter(other ->
                        (edge.first().equals(wall) || edge.second().get().equals(wall))
                                && top(other) > top(wall) - LEVEL
                                && foot(other) > foot(wall) + LEVEL);
    }

    private static double top(Surface surface) {
        return surface.outline().collectDouble(Point3::z).max();
    }

    private static double foot(Surface surface) {
        return surface.outline().collectDouble(Point3::z).min();
    }

    /** A material's name decides nothing; it only asks. */
    private static ImmutableList<Assembly> renewed(Audit audit) {
        return audit.house().retrofit().isPresent()
                ? Lists.immutable.empty()
                : audit.shell()
                        .surfaces()
                        .flatCollect(surface -> surface.assembly().stream().toList())
                        .distinct()
                        .select(assembly -> assembly.layers()
                                .anySatisfy(layer -> layer.role() == Role.STRUCTURE
                                        && layer.material().name().startsWith(OLD)));
    }

    /** What stays on in silence would hold vapour back, or part insulation from what it should lie on. */
    private static ImmutableList<Removed> removed(Audit audit) {
        return audit.house()
                .retrofit()
                .flatMap(Retrofit::found)
                .map(found -> audit.shell()
                        .surfaces()
                        .select(surface ->
                                surface.staysIn(audit.house().retrofit().get()))
                        .flatCollect(surface -> surface.assembly().stream().toList())
                        .distinct()
                        .select(planned -> found.assemblies().containsKey(planned.name()))
                        .collect(planned -> removed(found.assemblies().get(planned.name()), planned))
                        .select(each -> each.layers().notEmpty()))
                .orElse(Lists.immutable.empty());
    }

    private static Removed removed(Assembly found, Assembly planned) {
        MutableList<Layer> there = planned.layers().toList();
        return new Removed(
                found,
                found.layers()
                        .reject(layer -> there.removeIf(each ->
                                each.material().name().equals(layer.material().name())
                                        && each.thickness() > layer.thickness() - LEVEL)));
    }

    private static ImmutableList<Body.Base> bases(Body body) {
        return body instanceof Body.Storeys storeys
                ? storeys.stacks()
                        .flatCollect(stack -> stack.otherBases()
                                .collect(Body.AreaBase::base)
                                .newWith(stack.base())
                                .newWithAll(stack.storeys()
                                        .flatCollect(
                                                storey -> storey.base().stream().toList())))
                : Lists.immutable.empty();
    }

    private static boolean isWarmed(Body.Base base) {
        return base.crawlSpace()
                        .filter(space ->
                                space.groundResistance() > WARM_GROUND || space.wallTransmittance() < WARM_WALLS)
                        .isPresent()
                || base.edge()
                        .filter(edge -> edge.extent() > FAR_EDGE || edge.thickness() > THICK_EDGE)
                        .isPresent();
    }

    private static OptionalDouble thinFloor(Body body) {
        ImmutableList<Double> floors = body instanceof Body.Storeys storeys
                ? storeys.stacks().flatCollect(stack -> stack.storeys().drop(1).collect(Body.Storey::floorThickness))
                : ((Body.Explicit) body).levels().drop(1).collect(Body.Level::floorThickness);
        return floors.select(each -> each < THIN_FLOOR)
                .minOptional()
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static ImmutableList<Weather> weather(Site site) {
        ImmutableList<Climate.Mean> months = site.climate().map(Climate::months).orElse(Lists.immutable.empty());
        MutableList<Weather> seldom = Lists.mutable.empty();
        add(seldom, Weather.DRY_ROOMS, site.indoorHumidity() < DRY);
        add(seldom, Weather.MILD, site.outdoorTemperature() > MILD);
        add(seldom, Weather.DRY_GROUND, site.groundConductivity() < CLAY);
        add(seldom, Weather.EVEN_YEAR, months.notEmpty() && seasons(months) < SEASONS);
        add(
                seldom,
                Weather.DRY_WINTER,
                months.anySatisfy(month -> month.temperature() < COLD && month.humidity() < DRY_MONTH));
        add(
                seldom,
                Weather.AIRED,
                site.climate()
                        .map(Climate::indoors)
                        .filter(air -> air == Climate.Indoors.STORAGE || air == Climate.Indoors.WELL_VENTILATED)
                        .isPresent());
        return seldom.toImmutable();
    }

    /** K, by which the warmest month is warmer than the coldest. */
    private static double seasons(ImmutableList<Climate.Mean> months) {
        return months.collectDouble(Climate.Mean::temperature).max()
                - months.collectDouble(Climate.Mean::temperature).min();
    }

    private static void add(MutableList<Weather> to, Weather what, boolean said) {
        if (said) {
            to.add(what);
        }
    }

    private static ImmutableList<Thin> thin(Audit audit, Surface surface) {
        double limit = audit.house()
                .limits()
                .surfaces()
                .of(surface.use(), surface.exposure().kind());
        return Lists.immutable.fromStream(surface.assembly().stream()
                .map(assembly -> Transmittance.of(
                        assembly, HeatFlow.through(surface.normal()), OuterSurface.of(surface.exposure())))
                .filter(u -> !Limits.over(u.corrected(), limit))
                .flatMap(u -> u.taper().stream())
                .map(taper -> new Thin(surface, 1 / taper.rest()))
                .filter(thin -> Limits.over(thin.transmittance(), limit)));
    }

    /** Whether insulation is to come under what stays. */
    private static boolean liesOnNew(Surface surface, Retrofit old) {
        boolean found = old.found()
                .flatMap(there ->
                        surface.assembly().map(planned -> there.assemblies().get(planned.name())))
                .filter(Unlikely::isInsulatedOutside)
                .isPresent();
        return surface.use() == Body.Use.FLOOR
                && surface.exposure().kind() == Exposure.Kind.GROUND
                && surface.staysIn(old)
                && surface.assembly().filter(Unlikely::isInsulatedOutside).isPresent()
                && !found;
    }

    private static boolean isInsulatedOutside(Assembly assembly) {
        int carries = assembly.layers().detectLastIndex(layer -> layer.role() == Role.STRUCTURE);
        return carries >= 0 && assembly.layers().drop(carries + 1).anySatisfy(Layer::insulates);
    }

    private static boolean isBare(Assembly assembly) {
        ImmutableList<Layer> structure = assembly.layers().select(layer -> layer.role() == Role.STRUCTURE);
        return structure.notEmpty()
                && assembly.layers().noneSatisfy(layer -> layer.framing().isPresent())
                && structure.noneSatisfy(layer -> layer.material().conductivity() > METAL)
                && structure.sumOfDouble(Layer::thickness) < CARRIES;
    }

    /** m, z of the highest ground beside the part of the house that a floor belongs to. */
    private static double ground(Body body, Surface floor) {
        if (body instanceof Body.Storeys storeys) {
            return storeys.stackOf(floor.storey())
                    .ground()
                    .collectDouble(each -> each)
                    .maxIfEmpty(0);
        }
        Body.Explicit explicit = (Body.Explicit) body;
        return explicit.ground()
                .collectDouble(point -> explicit.points().get(point).z())
                .maxIfEmpty(explicit.groundLevel());
    }

    private static boolean isNaked(Assembly assembly) {
        Layer last = assembly.layers().getLast();
        return last.role() == Role.MEMBRANE
                && last.thickness() < SHEET
                && last.material().conductivity() < METAL;
    }

    /** Gables and what else ends in a slope are as high as their roof. */
    private static boolean isTall(Surface surface) {
        double top = surface.innerOutline().collectDouble(Point3::z).max();
        double foot = surface.innerOutline().collectDouble(Point3::z).min();
        return surface.use() == Body.Use.WALL
                && surface.exposure().kind() != Exposure.Kind.PARTY
                && top - foot > ONE_STOREY
                && surface.innerOutline()
                                .select(point -> top - point.z() < LEVEL)
                                .distinct()
                                .size()
                        > 1;
    }
}
