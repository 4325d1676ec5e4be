package coldseam.audit.assumed;

import coldseam.audit.AsFound;
import coldseam.audit.Audit;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.JunctionKind.StoreyFloor;
import coldseam.envelope.Layer;
import coldseam.envelope.Opening;
import coldseam.envelope.PointKind;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.detail.BandDrawing;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.Statement;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** What of an old house is said to stay, to come off, or to be new. */
public final class OldParts {

    private static final String OLD = "old ";

    /** The length of a detail that draws a roof past its wall. */
    private static final String OVERHANG = "overhang";

    private static final Optional<StoreyFloor> BEARS_IN = Optional.of(StoreyFloor.BEARS_IN_THE_WALL);

    /** Edges at which floors meet old framed walls whose studs are not said to run past them. */
    public static final Assumption<JunctionRow> PLATFORM = audit -> OfHouse.old(
            audit,
            old -> audit.junctions()
                    .select(row -> row.edge().kind().storeyFloor().equals(BEARS_IN)
                            && row.edge().first().staysIn(old)
                            && row.edge().first().isFramed()));

    /** Edges at which floors that are said to be of nothing are drawn as slabs in old masonry. */
    public static final Assumption<JunctionRow> SLABS = audit -> OfHouse.old(
            audit,
            old -> audit.junctions()
                    .select(row -> row.edge().meetsFloor()
                            && row.edge().internalFloor(audit.house().body()).isEmpty()
                            && row.sheet()
                                    .filter(sheet -> drawsSlab(sheet.result().detail()))
                                    .isPresent()
                            && row.surfaces().anySatisfy(each -> isOfMasonry(each) && each.staysIn(old))));

    /** Heads over which a lintel is drawn of concrete in old masonry, since their opening says nothing of it. */
    public static final Assumption<JunctionRow> LINTELS = audit -> OfHouse.old(
            audit,
            old -> audit.junctions()
                    .select(row -> row.edge().opening().flatMap(Opening::lintel).isEmpty()
                            && row.sheet()
                                    .filter(sheet -> sheet.result()
                                            .detail()
                                            .drawing()
                                            .pieces()
                                            .contains("lintel"))
                                    .isPresent()
                            && row.surfaces().anySatisfy(each -> isOfMasonry(each) && each.staysIn(old))));

    private static final PointKind JOIST_END = PointKind.of("joist end");

    /** Storeys and levels on floors of joists that bear in masonry, where no end of a joist is listed on a wall beside that floor. */
    public static final Assumption<String> JOIST_ENDS = audit -> {
        ImmutableList<Edge> beside = audit.shell()
                .edges()
                .select(edge ->
                        edge.isAtJoists(audit.house().body()) && edge.surfaces().anySatisfy(OldParts::isOfMasonry));
        return beside.collect(Edge::storeyOnFloor)
                .distinct()
                .reject(storey -> audit.points()
                        .anySatisfy(row -> row.kind() == JOIST_END
                                && beside.anySatisfy(
                                        edge -> edge.storeyOnFloor().equals(storey) && edge.isAt(row.surface()))));
    };

    /** m from one joist to the next; hardly any stand farther apart (common practice, no source). */
    private static final double JOISTS_APART = 1;

    /** Walls in which fewer ends of joists are listed than a floor has along them. */
    public static final Assumption<Joists> FEW_JOIST_ENDS = audit -> audit.shell()
            .edges()
            .select(edge ->
                    edge.isAtJoists(audit.house().body()) && edge.surfaces().anySatisfy(OldParts::isOfMasonry))
            .collect(edge -> new Joists(
                    edge.first(),
                    (int) audit.points()
                            .select(row -> row.kind() == JOIST_END && edge.isAt(row.surface()))
                            .sumOfInt(PointRow::number),
                    edge.externalLength()))
            .select(joists -> joists.ends() > 0 && joists.ends() * JOISTS_APART < joists.length());

    /**
     * Joists that bear in a wall.
     *
     * @param ends how many are listed
     * @param length m, of the floor along it
     */
    public record Joists(Surface wall, int ends, double length) {}

    /** Whether it has a storey floor that is of concrete in masonry, unless the file says otherwise. */
    private static boolean drawsSlab(Detail detail) {
        return detail.drawing() instanceof BandDrawing drawing
                && drawing.statements()
                        .anySatisfy(statement -> statement instanceof Statement.Where where
                                && where.build() == Statement.Build.BEARS_SLABS);
    }

    private static boolean isOfMasonry(Surface wall) {
        return wall.use() == Body.Use.WALL
                && !wall.isFramed()
                && wall.assembly()
                        .filter(built -> built.structure()
                                .anySatisfy(layer -> !layer.material().timber()))
                        .isPresent();
    }

    /** What lies on the ground and stays, with insulation under it that was not found there. */
    public static final Assumption<Surface> ON_NEW_INSULATION =
            audit -> OfHouse.old(audit, old -> OfHouse.surfaces(audit, surface -> liesOnNew(surface, old)));

    /** Walls that are built new under a floor, a wall or a roof that stays. */
    public static final Assumption<Surface> PROPPED = audit -> OfHouse.old(
            audit,
            old -> OfHouse.surfaces(
                    audit,
                    wall -> wall.use() == Body.Use.WALL
                            && !wall.staysIn(old)
                            && on(audit, wall)
                                    .anySatisfy(each -> each.staysIn(old)
                                            && (each.use() == Body.Use.WALL || !old.takesDown(Retrofit.ROOF)))));

    /** Walls and decks over rooms that stay and bear walls that are built new. */
    public static final Assumption<Surface> LOADED = audit -> OfHouse.old(
            audit,
            old -> OfHouse.surfaces(
                    audit,
                    surface -> (surface.use() == Body.Use.WALL || surface.use() == Body.Use.TERRACE)
                            && surface.staysIn(old)
                            && on(audit, surface)
                                    .anySatisfy(each -> each.use() == Body.Use.WALL && !each.staysIn(old))));

    /** Roofs that come down and are not built new: what stood on their walls goes up again. */
    public static final Assumption<Surface> PUT_BACK = audit -> OfHouse.old(
            audit,
            old -> OfHouse.surfaces(
                    audit,
                    surface -> surface.use() == Body.Use.ROOF && surface.staysIn(old) && old.takesDown(Retrofit.ROOF)));

    /** Build-ups of a new build that an old house's material carries; a material's name decides nothing, it only asks. */
    public static final Assumption<Assembly> BUILT_NEW =
            audit -> audit.house().retrofit().isPresent()
                    ? Lists.immutable.empty()
                    : OfHouse.assemblies(audit, surface -> true)
                            .select(assembly -> assembly.structure()
                                    .anySatisfy(layer -> layer.material().name().startsWith(OLD)));

    /**
     * What was found and is planned no more, though nothing says that it comes off. What stays on in silence would hold vapour back,
     * or part insulation from what it should lie on.
     */
    public static final Assumption<Removed> REMOVED = audit -> OfHouse.old(
            audit,
            old -> old.found()
                    .map(found -> OfHouse.assemblies(audit, surface -> surface.staysIn(old))
                            .select(planned -> found.assemblies().containsKey(planned.name()))
                            .collect(planned -> removed(found.assemblies().get(planned.name()), planned))
                            .select(each -> each.layers().notEmpty()))
                    .orElse(Lists.immutable.empty()));

    /** Edges of what stays that are built by details of the house's own, which alone say what comes down for them. */
    public static final Assumption<JunctionRow> BUILT_ROUND = audit -> OfHouse.old(
            audit,
            old -> audit.junctions()
                    .select(row -> row.sheet().filter(OwnWord::isOwn).isPresent()
                            && row.surfaces().anySatisfy(each -> each.staysIn(old))));

    /** Edges of flat roofs that stay, by details that draw nothing of them past the wall. */
    public static final Assumption<JunctionRow> NO_OVERHANG = audit -> OfHouse.old(
            audit,
            old -> audit.junctions()
                    .select(row -> row.edge().kind() == JunctionKind.FLAT_ROOF_EDGE
                            && row.surfaces().anySatisfy(each -> each.use() == Body.Use.ROOF && each.staysIn(old))
                            && !old.takesDown(Retrofit.ROOF)
                            && row.sheet()
                                    .filter(sheet -> sheet.result()
                                            .detail()
                                            .parameters()
                                            .noneSatisfy(length -> length.name().equals(OVERHANG)))
                                    .isPresent()));

    /** Seams as found by details or drawings of the house's own: the worse those are, the more the work seems to save. */
    public static final Assumption<AsFound.Seam> FOUND_BY_ITS_OWN = audit -> audit.found()
            .map(found -> found.seams()
                    .select(seam -> seam.sheet().filter(OwnWord::isOwn).isPresent()))
            .orElse(Lists.immutable.empty());

    private OldParts() {}

    /**
     * Layers that are found, and not planned.
     *
     * @param found the build-up they are found in
     */
    public record Removed(Assembly found, ImmutableList<Layer> layers) {}

    /** Whether insulation is to come under what stays. */
    private static boolean liesOnNew(Surface surface, Retrofit old) {
        boolean found = old.found()
                .flatMap(there ->
                        surface.assembly().map(planned -> there.assemblies().get(planned.name())))
                .filter(OldParts::isInsulatedOutside)
                .isPresent();
        return surface.use() == Body.Use.FLOOR
                && surface.faces(Exposure.Kind.GROUND)
                && surface.staysIn(old)
                && surface.assembly().filter(OldParts::isInsulatedOutside).isPresent()
                && !found;
    }

    private static boolean isInsulatedOutside(Assembly assembly) {
        return assembly.outsideStructure().anySatisfy(Layer::insulates);
    }

    /** What rests on a wall or a deck. */
    private static ImmutableList<Surface> on(Audit audit, Surface below) {
        return audit.shell()
                .edges()
                .flatCollect(edge -> above(edge, below).stream().toList());
    }

    /** What rests on a wall at an edge along its top, or rises from a deck. */
    private static Optional<Surface> above(Edge edge, Surface below) {
        return edge.second()
                .filter(other -> edge.opening().isEmpty() && OfHouse.isLevel(edge))
                .map(other -> edge.first().equals(below) ? other : edge.first())
                .filter(other ->
                        (edge.first().equals(below) || edge.second().get().equals(below))
                                && other.top() > below.top() - OfHouse.HAIR
                                && (below.use() == Body.Use.TERRACE
                                        ? other.top() > below.top() + OfHouse.HAIR
                                        : other.foot() > below.foot() + OfHouse.HAIR));
    }

    private static Removed removed(Assembly found, Assembly planned) {
        MutableList<Layer> there = planned.layers().toList();
        return new Removed(found, found.layers().reject(layer -> takes(there, layer) || isSpaceAlone(layer)));
    }

    /** Whether a layer is among those that are planned, of which it takes the thinnest: of two sheets the other stays for the other. */
    private static boolean takes(MutableList<Layer> planned, Layer layer) {
        return planned.select(each -> staysIn(layer, each))
                .minByOptional(Layer::thickness)
                .filter(planned::remove)
                .isPresent();
    }

    /** Whether a layer is there still, its space filled or not. */
    private static boolean staysIn(Layer layer, Layer planned) {
        return planned.thickness() > layer.thickness() - OfHouse.HAIR
                && (planned.material().name().equals(layer.material().name())
                        || layer.material().isAir()
                                && layer.framing().isPresent()
                                && planned.framing()
                                        .map(Layer.Framing::material)
                                        .equals(layer.framing().map(Layer.Framing::material)));
    }

    /** Air between other layers goes with them, or is filled. */
    private static boolean isSpaceAlone(Layer layer) {
        return layer.material().isAir() && layer.framing().isEmpty();
    }
}
