package coldseam.audit;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.assemblies.window.WindowTransmittance;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind.StoreyFloor;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Retrofit;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.hand.HandDrawing;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What of a house there may be, but seldom is: where it is a slip of the pen or a trick, the house loses more than is computed.
 *
 * @param byHand edges whose section is drawn by hand: that it carries, and controls air, water and vapour, its file alone says
 * @param ownDetails edges built by a detail's file of the house's own: how it is built and holds, that file alone says
 * @param ownPoints points built by such a file
 * @param ownCorners corners at which such a file says what meets
 * @param bare assemblies that boards alone carry: studs, rafters or joists are left out
 * @param tall walls so high indoors that a floor is likely to meet them, and none does
 * @param platform edges at which floors meet old framed walls whose studs are not said to run past them
 * @param under what lies on the ground and stays, with insulation under it that was not found there
 * @param best windows and doors that, or whose frames, lose less than the best that are usual
 * @param steps doors whose sill nobody steps over
 * @param large windows and doors that are larger than one usually is
 * @param thin flat roofs and decks that miss the limit of their U where what is cut to falls is thinnest, though not as a whole
 * @param dry whether the rooms are said to be drier than rooms in use are
 * @param mild whether the coldest days are said to be milder than winters are
 * @param dryGround whether the ground is said to conduct less than any that is named
 * @param still materials of the house file that conduct less than boards without a vacuum do
 */
public record Unlikely(
        ImmutableList<JunctionRow> byHand,
        ImmutableList<JunctionRow> ownDetails,
        int ownPoints,
        int ownCorners,
        ImmutableList<Assembly> bare,
        ImmutableList<Surface> tall,
        ImmutableList<JunctionRow> platform,
        ImmutableList<Surface> under,
        ImmutableList<Opening> best,
        ImmutableList<Opening> steps,
        ImmutableList<Opening> large,
        ImmutableList<Thin> thin,
        boolean dry,
        boolean mild,
        boolean dryGround,
        ImmutableList<Material> still) {

    /** Of rooms in use, in winter and without a humidifier, hardly any is drier (common practice, no source). */
    private static final double DRY = 0.30;

    /** °C; design temperatures of places that heat are seldom milder (judgement). */
    private static final double MILD = 5;

    /** W/(m·K), of clay or silt: the least of the grounds that are named. */
    private static final double CLAY =
            MaterialLibrary.named("clay or silt").orElseThrow().conductivity();

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
                audit.house().site().indoorHumidity() < DRY,
                audit.house().site().outdoorTemperature() > MILD,
                audit.house().site().groundConductivity() < CLAY,
                used.select(material -> material.conductivity() < STILL && !Assumed.isBuiltIn(material)));
    }

    /** W/(m²·K), of the whole or of its frame. */
    public static double least(Opening opening) {
        return Math.min(WindowTransmittance.transmittance(opening), opening.frameTransmittance());
    }

    private static boolean isLarge(Opening opening) {
        return opening.width() > (opening.kind() == Opening.Kind.DOOR ? WIDE_DOOR : WIDE_WINDOW)
                || opening.height() > HIGH;
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
