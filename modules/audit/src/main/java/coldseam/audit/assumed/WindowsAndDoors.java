package coldseam.audit.assumed;

import coldseam.assemblies.window.WindowTransmittance;
import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.rules.Facts;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Limits;
import coldseam.envelope.Opening;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Edge;
import coldseam.junctions.section.Surroundings;
import java.util.regex.Pattern;
import org.eclipse.collections.api.block.predicate.Predicate;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What is said of windows and doors. */
public final class WindowsAndDoors {

    /** m; the least of a door that one walks through (judgement). */
    private static final double WALK_WIDE = 0.6;

    private static final double WALK_HIGH = 1.6;

    /** W/(m²·K) of frame and glass together: triple glass in insulated frames has 0.7 to 0.8 (common practice, no source). */
    private static final double BEST = 0.6;

    /** W/(m²·K); of three panes the best have 0.5 (common practice, no source). */
    public static final double BEST_GLASS = 0.45;

    /** m over the floor; higher ones are windows, or have stairs before them (judgement). */
    private static final double STEP = 0.5;

    /** m; what opens is seldom wider or higher, and what stands fixed is made of several (common practice, no source). */
    private static final double WIDE_DOOR = 3;

    private static final double WIDE_WINDOW = 4;

    private static final double HIGH = 3;

    /** m; of slim profiles of steel, and sashes narrower than any of wood or plastic (common practice, no source). */
    private static final double SLIM = 0.05;

    /** W/(m·K); the best spacers between three panes have 0.03 (common practice, no source). */
    private static final double BEST_EDGE = 0.025;

    /** W/(m·K), of frames with their insulation; wood and foam together conduct 0.06 and more (judgement). */
    private static final double FRAME_CONDUCTS = 0.04;

    /** Of the floor; codes ask for an eighth to a tenth of each room that is lived in (common practice, no source). */
    private static final double LIT = 0.05;

    /** m, of a sill over the floor of its light well; leaves and snow lie as high (common practice, no source). */
    public static final double OVER_WELL = 0.1;

    /** The length of a detail that covers a frame's face. */
    private static final String LAP = "lap";

    /** What a source says of glass that does not stand upright (our own definition). */
    private static final Pattern ASLANT =
            Pattern.compile("slope|sloping|aslant|inclin|pitch|horizontal|level|°", Pattern.CASE_INSENSITIVE);

    /** Kinds of opening of which the house has none, of doors those by which one comes in: hatches and doors to decks are others. */
    public static final Assumption<NoOpening> OPENINGS = audit -> Lists.immutable
            .with(Opening.Kind.values())
            .collect(kind ->
                    new NoOpening(kind, audit.house().openings().anySatisfy(opening -> opening.kind() == kind)))
            .reject(none -> none.other()
                    && (none.kind() == Opening.Kind.WINDOW
                            || audit.house().openings().anySatisfy(opening -> isWayIn(audit, opening))));

    /** Those that, or whose frames, lose less than the best that are usual; not a hatch indoors, whose lid is as thick as one makes it. */
    public static final Assumption<Opening> BETTER_THAN_BEST =
            audit -> audit.house().openings().select(opening -> least(opening) < BEST && !isHatch(audit, opening));

    /** Those whose glass alone is said to lose less than that of three panes; with its frame it need not. */
    public static final Assumption<Opening> BETTER_GLASS =
            those(opening -> opening.rating().match(whole -> false, it -> it.glass() < BEST_GLASS));

    /** Doors whose sill nobody steps over, in their walls' order. */
    public static final Assumption<Opening> HIGH_SILL =
            audit -> OfHouse.surfaces(audit, surface -> surface.use() == Body.Use.WALL)
                    .flatCollect(wall -> audit.house().openings().select(wall::holds))
                    .select(opening -> opening.kind() == Opening.Kind.DOOR && opening.sill() > STEP);

    /** Those that are larger than one usually is. */
    public static final Assumption<Opening> LARGE =
            those(opening -> opening.width() > (opening.kind() == Opening.Kind.DOOR ? WIDE_DOOR : WIDE_WINDOW)
                    || opening.height() > HIGH);

    /** Those whose frame or spacer is said to be slimmer, or to lose less, than those there usually are. */
    public static final Assumption<Opening> SLIM_FRAME = those(opening ->
            opening.rating().match(whole -> false, it -> it.frameWidth() < SLIM || it.edge() < BEST_EDGE));

    /** Hatches that are said to lose less than as much of the ceiling that they open. */
    public static final Assumption<Opening> THICK_LID = audit -> OfHouse.surfaces(
                    audit, surface -> surface.use() != Body.Use.WALL && !surface.faces(Exposure.Kind.OUTDOORS))
            .flatCollect(surface -> audit.house()
                    .openings()
                    .select(opening -> surface.holds(opening)
                            && surface.assembly()
                                    .filter(around -> least(opening) < Facts.transmittance(surface, around))
                                    .isPresent()));

    /** Frames too thin for what they are said to hold back. */
    public static final Assumption<ThinFrame> THIN_FRAME = audit -> audit.house()
            .openings()
            .collect(opening -> new ThinFrame(opening, conducts(opening)))
            .select(frame -> frame.conductivity() < FRAME_CONDUCTS && !isHatch(audit, frame.opening()));

    /** Those in slopes and flat roofs whose U nobody says to be that of the slope: declared U are of glass upright (EN 673, from memory). */
    public static final Assumption<Opening> UPRIGHT = audit -> OfHouse.surfaces(
                    audit, surface -> surface.use() == Body.Use.ROOF || surface.use() == Body.Use.TERRACE)
            .flatCollect(roof -> audit.house().openings().select(roof::holds))
            .select(opening -> opening.kind() == Opening.Kind.WINDOW
                    && opening.rating()
                            .source()
                            .filter(text -> ASLANT.matcher(text).find())
                            .isEmpty());

    /** Those before whose glass boards lie: their seams' laps are longer than the house says that the frame is wide. */
    public static final Assumption<Lapped> LAPPED_GLASS =
            audit -> audit.junctions().flatCollect(WindowsAndDoors::lapped).distinct();

    /** How few windows there are for so much floor; empty where there are enough of them, or none at all. */
    public static final Assumption<Dark> DARK = audit -> {
        double windows = audit.house()
                .openings()
                .select(opening -> opening.kind() == Opening.Kind.WINDOW)
                .sumOfDouble(opening -> opening.width() * opening.height());
        double floor = audit.shell().floorArea();
        return windows > 0 && windows < LIT * floor
                ? Lists.immutable.of(new Dark(windows, floor))
                : Lists.immutable.empty();
    };

    /** Those whose U has no source. */
    public static final Assumption<Opening> WITHOUT_SOURCE =
            those(opening -> !opening.rating().isSourced());

    /** Those as found whose U has no source. */
    public static final Assumption<Retrofit.Found.Window> FOUND_WITHOUT_SOURCE = audit -> OfHouse.old(
            audit,
            old -> old.found()
                    .map(found -> found.windows()
                            .valuesView()
                            .select(window -> !window.rating().isSourced())
                            .toImmutableList())
                    .orElse(Lists.immutable.empty()));

    /** Windows in walls beside spaces said to be unheated, which are counted as if it were warmer before them than outdoors. */
    public static final Assumption<Opening> INTO_UNHEATED = audit -> OfHouse.surfaces(
                    audit, surface -> surface.use() == Body.Use.WALL && surface.faces(Exposure.Kind.UNHEATED))
            .flatCollect(wall -> audit.house()
                    .openings()
                    .select(opening -> opening.kind() == Opening.Kind.WINDOW && wall.holds(opening)));

    /** Those with a light well, and nothing that carries listed on their wall: what holds it then goes through no boards. */
    public static final Assumption<Opening> HELD_BY_NOTHING = audit -> audit.house()
            .openings()
            .select(opening -> opening.lightWell().isPresent())
            .reject(opening -> audit.points()
                    .anySatisfy(row -> row.kind().carries()
                            && (row.surface().holds(opening)
                                    || row.points().surface().equals(opening.surface()))));

    /** Windows whose sill lies low over the floor of the light well that they stand in, their own or another's. */
    public static final Assumption<Opening> LOW_IN_WELL = audit -> {
        ImmutableList<Edge> floors =
                audit.shell().edges().select(edge -> edge.kind() == JunctionKind.LIGHT_WELL && OfHouse.isLevel(edge));
        return audit.shell()
                .edges()
                .select(edge -> edge.kind() == JunctionKind.SILL && floors.anySatisfy(floor -> isLowOver(floor, edge)))
                .flatCollect(edge -> edge.opening().stream().toList());
    };

    /** The length of a detail that is the height of what spans an opening. */
    private static final String LINTEL = "lintel";

    /** m; nothing that spans an opening is lower (judgement). */
    private static final double LOWEST_LINTEL = 0.05;

    /** Heads that the house file has drawn without a lintel or header: the wall itself carries itself over the opening. */
    public static final Assumption<JunctionRow> NO_LINTEL = audit -> audit.junctions()
            .select(row -> row.sheet()
                    .filter(sheet -> sheet.result()
                            .detail()
                            .drawing()
                            .parameters()
                            .anySatisfy(
                                    each -> each.given() && each.name().equals(LINTEL) && each.value() < LOWEST_LINTEL))
                    .isPresent());

    private WindowsAndDoors() {}

    /**
     * An opening whose frame a detail covers.
     *
     * @param lap m, that the insulation covers
     * @param frame m, the width of the frame
     */
    public record Lapped(Opening opening, double lap, double frame) {}

    private static ImmutableList<Lapped> lapped(JunctionRow row) {
        return Lists.immutable
                .fromStream(row.edge().opening().stream())
                .flatCollect(opening -> Lists.immutable
                        .fromStream(row.sheet().stream())
                        .flatCollect(sheet -> sheet.result().detail().parameters())
                        .select(parameter -> parameter.name().equals(LAP))
                        .collect(parameter -> new Lapped(
                                opening,
                                parameter.value(),
                                opening.rating().match(whole -> Double.POSITIVE_INFINITY, Opening.Glazed::frameWidth))))
                .select(each -> each.lap() > each.frame());
    }

    /**
     * A frame as it is drawn.
     *
     * @param conductivity W/(m·K), of its whole depth, by its U
     */
    public record ThinFrame(Opening opening, double conductivity) {}

    /**
     * A kind of opening that is missing.
     *
     * @param other whether there are some by which nobody comes in
     */
    public record NoOpening(Opening.Kind kind, boolean other) {}

    /**
     * Windows for a floor.
     *
     * @param windows m², frames counted in
     * @param floor m²
     */
    public record Dark(double windows, double floor) {}

    private static boolean isWayIn(Audit audit, Opening opening) {
        return opening.kind() == Opening.Kind.DOOR
                && opening.width() >= WALK_WIDE
                && opening.height() >= WALK_HIGH
                && audit.shell()
                        .surfaces()
                        .anySatisfy(surface -> surface.use() == Body.Use.WALL && surface.holds(opening))
                && audit.shell()
                        .edges()
                        .noneSatisfy(edge -> edge.kind() == JunctionKind.TERRACE_THRESHOLD && edge.isOf(opening));
    }

    private static double conducts(Opening opening) {
        double resistance = 1 / opening.frameTransmittance() - Surroundings.STILL_AIR - Surroundings.OPEN_AIR;
        return resistance > 0 ? opening.frameDepth() / resistance : Double.POSITIVE_INFINITY;
    }

    private static boolean isHatch(Audit audit, Opening opening) {
        return opening.kind() == Opening.Kind.DOOR
                && audit.shell()
                        .surfaces()
                        .anySatisfy(surface -> surface.use() != Body.Use.WALL
                                && !surface.faces(Exposure.Kind.OUTDOORS)
                                && surface.holds(opening));
    }

    /** W/(m²·K), of the whole or of its frame. */
    public static double least(Opening opening) {
        return Math.min(WindowTransmittance.transmittance(opening), opening.frameTransmittance());
    }

    private static boolean isLowOver(Edge floor, Edge sill) {
        double over = sill.from().z() - floor.from().z();
        double x = (sill.from().x() + sill.to().x()) / 2;
        double y = (sill.from().y() + sill.to().y()) / 2;
        double round = Math.hypot(x - floor.from().x(), y - floor.from().y())
                + Math.hypot(x - floor.to().x(), y - floor.to().y());
        return over > -OfHouse.HAIR && Limits.under(over, OVER_WELL) && round < floor.externalLength() + OfHouse.HAIR;
    }

    private static Assumption<Opening> those(Predicate<Opening> which) {
        return audit -> audit.house().openings().select(which);
    }
}
