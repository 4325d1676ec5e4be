package coldseam.audit;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Control;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Exposure;
import coldseam.envelope.House;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.PointKind;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Role;
import coldseam.envelope.Seam;
import coldseam.envelope.SurfaceLimits;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/**
 * What of an audit rests on the house file's word alone.
 *
 * @param besideHeated m², of surfaces said to face heated neighbours, gross
 * @param besideWarm m², of surfaces beside spaces said to be unheated and yet warmer than such spaces are
 * @param warm those spaces, by name
 * @param sheltered m², of walls beside unheated spaces, where those are more than half of all; nobody asks them to keep out rain
 * @param open m², of walls and roofs with nothing against rain beside spaces that are said to be unheated and as cold as outdoors
 * @param shut unheated spaces that no door or hatch is listed to, by name; empty for a loft
 * @param nothingMeets m², of walls insulated inside on which hardly a seam of an inner wall, stair or joist bay is listed, gross
 * @param unparted m, of seams where two floors meet, with hardly a wall listed that goes down through the insulation of either
 * @param cavities air inside the insulation that lies between what carries: outdoor air that gets in there passes all boards by
 * @param leaves of masonry outside the insulation of walls, and what is listed that bears them
 * @param notThere kinds of opening of which the house has none, of doors those that one walks through: who leaves them out has
 *     less to lose and fewer seams
 * @param relaxed limits that are laxer than the defaults
 * @param untouched uses of surfaces through which no point is listed: nothing goes through their insulation at a spot
 * @param withoutProduct how many conductivities in use are generic ones, of the built-in list or by the house file's own words
 * @param conductivities how many are in use
 * @param undeclared windows and doors whose U has no source
 * @param foundUndeclared how many windows and doors as found have a U without a source
 * @param ownSeams edges whose psi is the house file's own
 * @param overrides materials of the house file that are said to insulate, to control air, water or vapour, or to bear ground,
 *     splash, load or rain, beyond what their values or the built-in list say
 * @param bySource materials of the built-in list that count as insulation by its word alone, such as blocks that carry
 * @param rain what becomes of it on flat roofs and decks
 * @param unlikely what is there, but is seldom so
 */
public record Assumed(
        double besideHeated,
        double besideWarm,
        ImmutableList<Exposure> warm,
        double sheltered,
        double open,
        ImmutableList<String> shut,
        double nothingMeets,
        double unparted,
        ImmutableList<Cavity> cavities,
        ImmutableList<Leaf> leaves,
        ImmutableList<Opening.Kind> notThere,
        ImmutableList<Limit> relaxed,
        ImmutableList<Side> untouched,
        int withoutProduct,
        int conductivities,
        ImmutableList<Opening> undeclared,
        int foundUndeclared,
        ImmutableList<JunctionRow> ownSeams,
        ImmutableList<Material> overrides,
        ImmutableList<Material> bySource,
        Rain rain,
        Unlikely unlikely) {

    /**
     * The temperature factor under which an unheated space is warmer than one with three outer walls, a garage or a cellar with
     * windows: 0.8 (tables of EN 12831:2003, from memory). Warmer ones there are, but the file alone says that this is one.
     */
    private static final double USUAL = 0.8;

    /** Beyond this temperature factor a space is hardly closed; one with a roof and doors is warmer (judgement). */
    private static final double OPEN = 0.95;

    /** m; the least of a door that one walks through (judgement). */
    private static final double WALK_WIDE = 0.6;

    private static final double WALK_HIGH = 1.6;

    /** m; less than the height of one inner wall, or the length of one joist, meets nothing (judgement). */
    private static final double LEAST_MET = 1;

    /** m; thicker ones stand on something, thinner ones hang on what holds cladding (common practice, no source). */
    private static final double STANDS = 0.05;

    private static final PointKind ANGLE = PointKind.of("angle");

    private static final JunctionKind BEARING_WALL = JunctionKind.of("bearing wall through the slab's insulation");

    private static final JunctionKind LEDGE = JunctionKind.of("masonry veneer ledge");

    /**
     * A layer outside the insulation that stands for itself: what bears it goes through the insulation, as a ledge below it or as
     * angles over openings, or it stands on the ground before it.
     *
     * @param ledge m, of ledges listed on its walls
     * @param angles how many are listed there
     */
    public record Leaf(Assembly assembly, Layer layer, double ledge, int angles) {}

    /** Air between the leaves of a wall that carries. */
    public record Cavity(Assembly assembly, Layer air) {}

    /** Where things go through: pipes and masts through roofs, services and anchors through walls, drains through floors. */
    public enum Side {
        WALLS,
        ROOFS,
        FLOORS
    }

    /** Limits that a house file may relax. */
    public enum Limit {
        NECK,
        PATH,
        PSI,
        OPENING_PSI,
        CHI,
        TEMPERATURE_FACTOR,
        MEAN,
        WALLS,
        ROOFS,
        FLOORS,
        GROUND,
        WINDOWS,
        DOORS
    }

    /** Of an audit. */
    public static Assumed of(Audit audit) {
        House house = audit.house();
        ImmutableList<Material> used = house.assemblies()
                .valuesView()
                .flatCollect(assembly -> assembly.layers()
                        .flatCollect(layer -> Lists.immutable
                                .of(layer.material())
                                .newWithAll(layer.framing()
                                        .map(framing -> Lists.immutable.of(framing.material()))
                                        .orElse(Lists.immutable.empty()))))
                .reject(Material::isAir)
                .toSet()
                .toSortedListBy(Material::name)
                .toImmutable();
        return new Assumed(
                area(audit, surface -> surface.exposure().kind() == Exposure.Kind.PARTY),
                area(audit, surface -> isWarm(surface.exposure())),
                audit.shell()
                        .surfaces()
                        .collect(Surface::exposure)
                        .select(Assumed::isWarm)
                        .distinct()
                        .toSortedListBy(Exposure::neighbour)
                        .toImmutable(),
                sheltered(audit),
                area(audit, Assumed::isOpen),
                shut(audit),
                area(audit, surface -> nothingMeets(house, surface)),
                unparted(audit),
                cavities(audit),
                leaves(audit),
                Lists.immutable
                        .with(Opening.Kind.values())
                        .reject(kind -> house.openings()
                                .anySatisfy(opening -> opening.kind() == kind
                                        && (kind == Opening.Kind.WINDOW || isWalkedThrough(opening)))),
                relaxed(house.limits(), Limits.defaults(house.site().heatingDegreeDays())),
                Lists.immutable
                        .with(Side.values())
                        .reject(side -> audit.points().anySatisfy(row -> side(row.surface()) == side)),
                used.count(Assumed::isGeneric),
                used.size(),
                house.openings().select(opening -> !opening.rating().isSourced()),
                house.retrofit()
                        .flatMap(Retrofit::found)
                        .map(found ->
                                found.windows().count(window -> !window.rating().isSourced()))
                        .orElse(0),
                audit.junctions().select(row -> row.source() instanceof BridgeSource.Own),
                used.select(Assumed::isOverride),
                used.select(each -> isBuiltIn(each) && each.insulatesSource().isPresent() && each.insulates()),
                Rain.of(audit),
                Unlikely.of(audit, used));
    }

    private static double area(Audit audit, Predicate<Surface> which) {
        boolean external = audit.house().site().dimensions() == DimensionSystem.EXTERNAL;
        return audit.shell()
                .surfaces()
                .select(which)
                .sumOfDouble(external ? Surface::externalArea : Surface::internalArea);
    }

    private static double sheltered(Audit audit) {
        double walls = area(audit, surface -> surface.use() == Body.Use.WALL);
        double beside = area(
                audit,
                surface -> surface.use() == Body.Use.WALL && surface.exposure().kind() == Exposure.Kind.UNHEATED);
        return beside > walls / 2 ? beside : 0;
    }

    private static ImmutableList<String> shut(Audit audit) {
        ImmutableList<Surface> cold =
                audit.shell().surfaces().select(surface -> surface.exposure().kind() == Exposure.Kind.UNHEATED);
        return cold.collect(surface -> surface.exposure().neighbour())
                .distinct()
                .reject(space -> cold.anySatisfy(surface -> surface.openingArea() > 0
                        && surface.exposure().neighbour().equals(space)));
    }

    private static boolean isWalkedThrough(Opening opening) {
        return opening.width() >= WALK_WIDE && opening.height() >= WALK_HIGH;
    }

    private static Side side(Surface surface) {
        return switch (surface.use()) {
            case WALL -> Side.WALLS;
            case ROOF, CEILING, TERRACE -> Side.ROOFS;
            case FLOOR, OVERHANG -> Side.FLOORS;
        };
    }

    private static boolean isOpen(Surface surface) {
        return surface.exposure().kind() == Exposure.Kind.UNHEATED
                && surface.exposure().factor() > OPEN
                && surface.use() != Body.Use.FLOOR
                && surface.use() != Body.Use.CEILING
                && surface.use() != Body.Use.OVERHANG
                && surface.assembly().filter(it -> it.controls(Control.WATER)).isEmpty();
    }

    private static boolean isWarm(Exposure exposure) {
        return exposure.kind() == Exposure.Kind.UNHEATED && exposure.factor() < USUAL;
    }

    /** Whether all is left out that meets a wall's insulation indoors; geometry shows none of it but floors. */
    private static boolean nothingMeets(House house, Surface surface) {
        return surface.exposure().kind() != Exposure.Kind.PARTY
                && surface.use() == Body.Use.WALL
                && surface.assembly().filter(Assembly::insulatedInside).isPresent()
                && house.seams()
                                .select(seam -> seam.kind().atInsideInsulation()
                                        && seam.surface().equals(surface.name()))
                                .sumOfDouble(Seam::length)
                        < LEAST_MET;
    }

    private static double unparted(Audit audit) {
        return audit.shell()
                .edges()
                .select(edge -> edge.kind() == JunctionKind.FLOOR_CHANGE)
                .select(edge -> audit.house()
                                .seams()
                                .select(seam -> seam.kind() == BEARING_WALL
                                        && (seam.surface().equals(edge.first().name())
                                                || seam.surface()
                                                        .equals(edge.second()
                                                                .orElseThrow()
                                                                .name())))
                                .sumOfDouble(Seam::length)
                        < LEAST_MET)
                .sumOfDouble(Edge::externalLength);
    }

    private static ImmutableList<Cavity> cavities(Audit audit) {
        return audit.shell()
                .surfaces()
                .flatCollect(surface -> surface.assembly().stream().toList())
                .distinct()
                .flatCollect(assembly -> {
                    ImmutableList<Layer> layers = assembly.layers();
                    int from = layers.detectIndex(layer -> layer.role() == Role.STRUCTURE);
                    int to = layers.detectLastIndex(layer -> layer.role() == Role.STRUCTURE);
                    return from < 0 || !layers.drop(to).anySatisfy(Layer::insulates)
                            ? Lists.immutable.<Cavity>empty()
                            : layers.take(to)
                                    .drop(from)
                                    .select(layer -> layer.air().isPresent())
                                    .collect(air -> new Cavity(assembly, air));
                });
    }

    private static ImmutableList<Leaf> leaves(Audit audit) {
        ImmutableList<Surface> walls = audit.shell().surfaces().select(surface -> surface.use() == Body.Use.WALL);
        return walls.flatCollect(surface -> surface.assembly().stream().toList())
                .distinct()
                .flatCollect(assembly -> leaves(assembly).collect(layer -> {
                    ImmutableSet<String> before = walls.select(wall ->
                                    wall.assembly().filter(assembly::equals).isPresent())
                            .collect(Surface::name)
                            .toSet()
                            .toImmutable();
                    return new Leaf(
                            assembly,
                            layer,
                            audit.house()
                                    .seams()
                                    .select(seam -> seam.kind() == LEDGE && before.contains(seam.surface()))
                                    .sumOfDouble(Seam::length),
                            (int) audit.points()
                                    .select(row -> row.kind() == ANGLE
                                            && before.contains(row.points().surface()))
                                    .sumOfInt(PointRow::number));
                }));
    }

    private static ImmutableList<Layer> leaves(Assembly assembly) {
        int outermost = assembly.insulatedInside()
                ? assembly.layers().size()
                : assembly.layers().detectLastIndex(Layer::insulates);
        if (outermost < 0) {
            return Lists.immutable.empty();
        }
        return assembly.layers()
                .drop(outermost + 1)
                .select(layer -> layer.thickness() > STANDS
                        && (layer.role() == Role.CLADDING || layer.role() == Role.STRUCTURE)
                        && layer.framing().isEmpty()
                        && !layer.material().timber());
    }

    static boolean isBuiltIn(Material material) {
        return MaterialLibrary.named(material.name()).filter(material::equals).isPresent();
    }

    /** Of the built-in list, or of the house file that itself says that no product stands behind the value. */
    private static boolean isGeneric(Material material) {
        return isBuiltIn(material) || !material.provenance().isDeclared();
    }

    private static boolean isOverride(Material material) {
        return !isBuiltIn(material)
                && (material.insulatesSource().isPresent()
                        || (material.controls().notEmpty() || material.bears().notEmpty())
                                && MaterialLibrary.named(material.name())
                                        .filter(like -> like.controls().equals(material.controls())
                                                && like.bears().equals(material.bears()))
                                        .isEmpty());
    }

    private static ImmutableList<Limit> relaxed(Limits is, Limits usual) {
        SurfaceLimits most = is.surfaces();
        SurfaceLimits code = usual.surfaces();
        MutableList<Limit> relaxed = Lists.mutable.empty();
        add(relaxed, Limit.NECK, is.neckShare() < usual.neckShare());
        add(relaxed, Limit.PATH, is.pathShare() < usual.pathShare());
        add(relaxed, Limit.PSI, is.psi() > usual.psi() || is.geometryPsi() > usual.geometryPsi());
        add(relaxed, Limit.OPENING_PSI, is.openingPsi() > usual.openingPsi());
        add(relaxed, Limit.CHI, is.chi() > usual.chi());
        add(relaxed, Limit.TEMPERATURE_FACTOR, is.temperatureFactor() < usual.temperatureFactor());
        add(relaxed, Limit.MEAN, is.meanShare() < usual.meanShare());
        add(relaxed, Limit.WALLS, most.wall() > code.wall());
        add(relaxed, Limit.ROOFS, most.roof() > code.roof());
        add(relaxed, Limit.FLOORS, most.floor() > code.floor());
        add(relaxed, Limit.GROUND, most.ground() > code.ground());
        add(relaxed, Limit.WINDOWS, most.window() > code.window());
        add(relaxed, Limit.DOORS, most.door() > code.door());
        return relaxed.toImmutable();
    }

    private static void add(MutableList<Limit> to, Limit limit, boolean relaxed) {
        if (relaxed) {
            to.add(limit);
        }
    }
}
