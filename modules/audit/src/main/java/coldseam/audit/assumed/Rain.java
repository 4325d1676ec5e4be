package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.audit.BridgeSheet;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.Role;
import coldseam.envelope.Seam;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Spans;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.language.DetailParameter;
import java.util.function.ToDoubleBiFunction;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What becomes of rain on flat roofs and decks, as far as a house file leaves it open: details join what keeps water out, and
 * none of them sees where it runs.
 */
public final class Rain {

    /** m over the finished deck; less is usual over a drained channel alone (common practice, no source). */
    public static final double UPTURN = 0.15;

    /** m, by which a sill on that height may miss it: what is printed of it is whole millimetres. */
    private static final double PRINTED = 0.0005;

    /** Cosine of half a degree. */
    private static final double LEVEL = 0.99996;

    /** m; soles of wood stand 300 mm over the ground, or 150 mm over gravel or under a cladding (common practice, no source). */
    public static final double SPLASH = 0.15;

    /** Cosine of 20°; flatter, tiles and slates want a roof under them that keeps rain out by itself (common practice, no source). */
    private static final double TILED = 0.9397;

    /** From the middle to the edges; 2 % are usual, of which deflection takes a part (common practice, no source). */
    private static final double LEAST_FALL = 0.01;

    /** One of them an overflow (common practice, no source). */
    public static final int DRAINS = 2;

    /** m² that a drain of usual size serves (common practice, no source). */
    public static final double DRAINED = 150;

    /** m; eaves without a gutter drip as far before their wall, at the least (judgement). */
    private static final double DRIPS = 0.3;

    /** m², in plan; the rain of less does no harm where it falls (judgement). */
    private static final double LEAST_CAUGHT = 5;

    /** mm/d, of a heating season: seldom is one drier (common practice, no source). */
    private static final double DRIZZLE = 1;

    /** W·d/(m²·K·mm); less takes a sheet over the boards, and joints that let hardly any rain in (ISO 6946 annex F, from memory). */
    private static final double TAKES = 0.02;

    /** How details call what the ground lies below the floor's top. */
    private static final String PLINTH = "plinth";

    private static final JunctionKind OUTSIDE_STAIR = JunctionKind.of("outside stair against the wall");

    private static final double STRAIGHT_ON = 180;

    /** m, within which heights are one. */
    private static final double NEARLY = 0.01;

    /** Flights that go down outdoors to a cellar's door: rain runs down them, and no house file says where it leaves. */
    public static final Assumption<Seam> STAIR_FEET =
            audit -> audit.house().seams().select(seam -> seam.kind() == OUTSIDE_STAIR);

    /** Those with boards over what keeps out water, that less rain is said to cool than there usually falls, or runs under them. */
    public static final Assumption<Assembly> LITTLE_RAIN = audit -> OfHouse.assemblies(audit, surface -> true)
            .select(assembly -> assembly.rain()
                    .filter(rain -> rain.precipitation() < DRIZZLE || rain.factor() < TAKES)
                    .isPresent());

    /** Flat roofs and decks of which no layer is cut to falls, or by next to nothing. */
    public static final Assumption<Surface> NO_FALLS =
            audit -> OfHouse.surfaces(audit, surface -> isRainedOn(surface) && !hasFalls(surface));

    /** Flat roofs and decks that parapets and walls stand round, with fewer drains and scuppers than one that is choked leaves. */
    public static final Assumption<FewDrains> FEW_DRAINS =
            audit -> OfHouse.surfaces(audit, surface -> isRainedOn(surface) && isEnclosed(surface, audit.shell()))
                    .collect(surface -> new FewDrains(
                            surface, drains(audit, surface), surface.externalArea() + runsOnto(audit, surface)))
                    .select(few -> few.drains() > 0 && (few.drains() < DRAINS || few.drains() * DRAINED < few.area()));

    /**
     * Flat roofs and decks that parapets and walls stand round, on which no drain or scupper is listed; one that goes on into another
     * is left out.
     */
    public static final Assumption<Surface> ENCLOSED = audit -> OfHouse.surfaces(
            audit, surface -> isRainedOn(surface) && isEnclosed(surface, audit.shell()) && drains(audit, surface) == 0);

    /** Seams along which the rain of a slope comes down level before what rises beyond, with no drain or scupper on either. */
    public static final Assumption<JunctionRow> LEVEL_GUTTER = audit -> audit.junctions()
            .select(row -> holdsRain(row.edge())
                    && audit.points()
                            .noneSatisfy(point -> point.kind().drains()
                                    && row.surfaces().anySatisfy(each -> isOne(each, point.surface()))));

    /** Flat roofs and decks that eaves lie over: what drips from those falls there, unless gutters lead it away. */
    public static final Assumption<UnderEaves> UNDER_EAVES =
            audit -> OfHouse.surfaces(audit, Rain::isRainedOn).flatCollect(below -> underEaves(audit, below));

    /** Walls with wood in their structure whose foot stands so near to the ground that rain splashes up to it. */
    public static final Assumption<Splashed> SPLASHED = audit -> OfHouse.surfaces(
                    audit,
                    surface -> surface.use() == Body.Use.WALL
                            && surface.faces(Exposure.Kind.OUTDOORS)
                            && surface.assembly().filter(Carrying::isOfWood).isPresent()
                            && !overOpenAir(audit, surface))
            .collect(wall -> new Splashed(wall.assembly().orElseThrow(), overGround(audit, wall)))
            .select(foot -> foot.height() < SPLASH - PRINTED)
            .toSortedListBy(Splashed::height)
            .distinctBy(foot -> foot.assembly().name())
            .toImmutable();

    /** Roofs of tiles or slates that slope so little that wind drives rain under them, over nothing better. */
    public static final Assumption<LowPitch> LOW_PITCH = audit -> OfHouse.surfaces(audit, Rain::isSlope)
            .select(roof -> roof.normal().z() > TILED
                    && roof.assembly().filter(Rain::shedsOnly).isPresent())
            .flatCollect(Rain::lowPitch)
            .distinctBy(low -> low.roof().partOf());

    /** Sills of doors and windows that stand low over the deck, roof or ground before them. */
    public static final Assumption<LowSill> LOW_SILL =
            audit -> OfHouse.surfaces(audit, wall -> wall.use() == Body.Use.WALL && wall.faces(Exposure.Kind.OUTDOORS))
                    .flatCollect(wall -> audit.house()
                            .openings()
                            .select(opening ->
                                    wall.holds(opening) && opening.lightWell().isEmpty())
                            .flatCollect(opening -> sills(audit, opening, wall)
                                    .toSortedListBy(LowSill::least)
                                    .take(1)))
                    .select(sill -> sill.least() < UPTURN - PRINTED);

    /** Flat roofs and decks on which sheets of metal keep out water: their seams are folded, and stand in it. */
    public static final Assumption<Seamed> SEAMED = audit -> OfHouse.surfaces(audit, Rain::isRainedOn)
            .flatCollect(surface -> surface.assembly()
                    .map(Assembly::layers)
                    .orElseThrow()
                    .select(layer -> layer.controls().contains(Control.WATER)
                            && layer.material().conductivity() > Carrying.METAL)
                    .collect(layer -> new Seamed(surface, layer)));

    private Rain() {}

    /**
     * A roof or deck that drains badly where it does.
     *
     * @param drains and scuppers that are listed there
     * @param area m², in plan, of it and of the slopes that go up from it
     */
    public record FewDrains(Surface surface, int drains, double area) {}

    /**
     * A flat roof or deck with the eaves of slopes over it.
     *
     * @param area m², in plan, of the slopes, as much of them as drips there
     */
    public record UnderEaves(Surface below, double area) {}

    /**
     * Walls with wood near the ground.
     *
     * @param height m, of the lowest of their floors over the ground beside it
     */
    public record Splashed(Assembly assembly, double height) {}

    /**
     * A roof of little pitch.
     *
     * @param tiles what lies outermost
     * @param pitch degrees
     */
    public record LowPitch(Surface roof, Layer tiles, double pitch) {}

    /** Metal that keeps water out of a surface on the level. */
    public record Seamed(Surface surface, Layer layer) {}

    /**
     * A door or window over what rain falls on.
     *
     * @param before deck or roof; a wall where it is the ground
     * @param height m, of the sill over the deck with all its layers, where those cut to falls are thinnest
     * @param least m, where they are thickest
     */
    public record LowSill(Opening opening, Surface before, double height, double least) {}

    private static boolean isRainedOn(Surface surface) {
        return surface.faces(Exposure.Kind.OUTDOORS)
                && (surface.use() == Body.Use.ROOF || surface.use() == Body.Use.TERRACE)
                && surface.assembly().isPresent()
                && surface.normal().z() > LEVEL;
    }

    /** Without any fall nobody asks how far it is across, which takes longer than all else that is assumed. */
    private static boolean hasFalls(Surface surface) {
        double fall = fall(surface);
        return fall > 0 && fall > LEAST_FALL * Spans.across(surface) / 2;
    }

    /** m, by which its layers are thicker in one place than in another. */
    public static double fall(Surface surface) {
        return surface.assembly().map(Assembly::layers).orElseThrow().sumOfDouble(Rain::fall);
    }

    private static double fall(Layer layer) {
        return layer.taper().map(taper -> taper.thickest() - layer.thickness()).orElse(0.0);
    }

    private static int drains(Audit audit, Surface surface) {
        return (int) audit.points()
                .select(row -> row.kind().drains() && row.surface().name().equals(surface.name()))
                .sumOfInt(PointRow::number);
    }

    private static boolean isEnclosed(Surface surface, Shell shell) {
        ImmutableList<Edge> round = shell.edges()
                .select(edge -> edge.opening().isEmpty() && edge.second().isPresent() && edge.isAt(surface));
        return round.notEmpty() && round.allSatisfy(edge -> edge.kind().parapet() || edge.angle() > STRAIGHT_ON);
    }

    private static boolean holdsRain(Edge edge) {
        return edge.opening().isEmpty()
                && edge.angle() > STRAIGHT_ON
                && Math.abs(edge.from().z() - edge.to().z()) < NEARLY
                && edge.second()
                        .filter(second -> rises(edge.first(), second, edge) && rises(second, edge.first(), edge))
                        .filter(second -> isSlope(edge.first()) || isSlope(second))
                        .isPresent();
    }

    /** Whether a surface goes up from its edge with another, wherever it goes farther on. */
    private static boolean rises(Surface surface, Surface other, Edge at) {
        double across = Vectors.dot(surface.normal(), other.normal());
        double up = other.normal().z() - across * surface.normal().z();
        return (at.angle() > STRAIGHT_ON ? up : -up) > OfHouse.HAIR;
    }

    /** m², in plan, of the slopes that go up from a flat roof or deck, as much of them as runs onto it. */
    private static double runsOnto(Audit audit, Surface surface) {
        return ofSlopes(audit, (edge, slope) -> edge.isAt(surface) ? edge.externalLength() : 0);
    }

    /** What the eaves of slopes lie over. */
    private static ImmutableList<UnderEaves> underEaves(Audit audit, Surface below) {
        double area = ofSlopes(audit, (edge, slope) -> {
            Point3 out = Vectors.times(
                    Vectors.unit(new Point3(slope.normal().x(), slope.normal().y(), 0)), DRIPS);
            return edge.angle() < STRAIGHT_ON && edge.from().z() > below.top() + NEARLY
                    ? Spans.over(below, Vectors.plus(edge.from(), out), Vectors.plus(edge.to(), out))
                    : 0;
        });
        return area > LEAST_CAUGHT ? Lists.immutable.of(new UnderEaves(below, area)) : Lists.immutable.empty();
    }

    /** m², in plan, of all slopes, each by how much of the lines to which it falls counts, m of an edge. */
    private static double ofSlopes(Audit audit, ToDoubleBiFunction<Edge, Surface> counts) {
        return OfHouse.surfaces(audit, Rain::isSlope).sumOfDouble(slope -> {
            ImmutableList<Edge> foot = audit.shell().edges().select(edge -> isFoot(edge, slope));
            double whole = foot.sumOfDouble(Edge::externalLength);
            double part = foot.sumOfDouble(edge -> counts.applyAsDouble(edge, slope));
            return part > 0 ? slope.externalArea() * slope.normal().z() * part / whole : 0;
        });
    }

    /** Whether the rain of a slope runs down to an edge. */
    private static boolean isFoot(Edge edge, Surface slope) {
        return edge.isAt(slope)
                && edge.opening().isEmpty()
                && Math.abs(edge.from().z() - edge.to().z()) < NEARLY
                && edge.surfaces().anySatisfy(other -> !isOne(other, slope) && rises(slope, other, edge));
    }

    /** Whether rain runs down a surface. */
    private static boolean isSlope(Surface surface) {
        return surface.use() == Body.Use.ROOF
                && surface.faces(Exposure.Kind.OUTDOORS)
                && surface.normal().z() <= LEVEL;
    }

    private static boolean isOne(Surface one, Surface other) {
        return one.name().equals(other.name());
    }

    /** m, of a wall's floor over the ground; where the house file leaves the ground at the floor's level, as it is drawn there. */
    private static double overGround(Audit audit, Surface wall) {
        double said = wall.innerOutline().collectDouble(Point3::z).min()
                - HouseShape.lowestGround(audit.house().body(), wall);
        if (Math.abs(said) >= OfHouse.HAIR) {
            return Math.max(0, said);
        }
        // Over open air nobody said how high: not at the ground, where no floor could stand.
        boolean overAir =
                audit.shell().edges().anySatisfy(edge -> edge.kind() == JunctionKind.OVERHANG_EDGE && edge.isAt(wall));
        return overAir ? Double.POSITIVE_INFINITY : plinth(audit, wall);
    }

    /** m, the least of what is drawn at a wall's foot; 0 where none is. */
    private static double plinth(Audit audit, Surface wall) {
        return audit.junctions()
                .select(row -> row.edge().isAt(wall))
                .flatCollect(row -> row.sheet().stream().toList())
                .flatCollect(Rain::plinths)
                .collectDouble(each -> each)
                .minIfEmpty(0);
    }

    /** m, how far the ground lies under the floor's top in a section; empty where its detail says nothing of it. */
    static ImmutableList<Double> plinths(BridgeSheet<?> sheet) {
        return sheet.result()
                .detail()
                .parameters()
                .select(length -> length.name().equals(PLINTH))
                .collect(DetailParameter::value);
    }

    /** Whether its floor stands on piers: how high, no house file says. */
    private static boolean overOpenAir(Audit audit, Surface wall) {
        return audit.shell()
                .edges()
                .anySatisfy(edge -> edge.isAt(wall) && edge.surfaces().anySatisfy(Rain::isUp));
    }

    private static boolean isUp(Surface floor) {
        return floor.use() == Body.Use.FLOOR && floor.faces(Exposure.Kind.OUTDOORS);
    }

    private static ImmutableList<LowPitch> lowPitch(Surface roof) {
        return Lists.immutable
                .of(roof.assembly().map(Assembly::layers).orElseThrow().getLast())
                .select(layer -> layer.role() == Role.CLADDING && shedsOnly(layer))
                .collect(tiles -> new LowPitch(
                        roof, tiles, Math.toDegrees(Math.acos(roof.normal().z()))));
    }

    /** Whether all that keeps water out of it sheds it only. */
    private static boolean shedsOnly(Assembly assembly) {
        return assembly.layers()
                .select(layer -> layer.controls().contains(Control.WATER))
                .allSatisfy(Rain::shedsOnly);
    }

    private static boolean shedsOnly(Layer layer) {
        return layer.material().canControl(Control.WATER) && !layer.material().canControl(Control.VAPOUR);
    }

    private static ImmutableList<LowSill> sills(Audit audit, Opening opening, Surface wall) {
        double ground = overGround(audit, wall) + opening.sill();
        return UnderSill.of(audit, opening, wall)
                .collect(each -> new LowSill(
                        opening,
                        each.surface(),
                        each.height(),
                        each.height() - (isRainedOn(each.surface()) ? fall(each.surface()) : 0)))
                .newWith(new LowSill(opening, wall, ground, ground));
    }
}
