package coldseam.audit.assumed;

import coldseam.assemblies.HeatFlow;
import coldseam.assemblies.OuterSurface;
import coldseam.assemblies.Transmittance;
import coldseam.audit.Audit;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Control;
import coldseam.envelope.Exposure;
import coldseam.envelope.Layer;
import coldseam.envelope.Limits;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.envelope.file.house.MaterialLibrary;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** What fills build-ups, and what lies outermost or thinnest in them. */
public final class Layering {

    /** m; sheets that stand in the sun for good are thicker, or of metal (common practice, no source). */
    private static final double SHEET = 0.001;

    /** m; thicker sheets on walls are boards (judgement). */
    private static final double HUNG = 0.01;

    /** Of what is painted or covered with dust more is sent out (common practice, no source). */
    private static final double BRIGHT_FROM = 0.5;

    /** m of still air; what is more open dries outwards in a summer (common practice, no source). */
    private static final double SHUT_OUTSIDE = 2;

    /** m of still air; what slows vapour more keeps a wall as damp as it is for years (common practice, no source). */
    private static final double TIGHT = 5;

    /** kg/m², of 50 mm of gravel: the least on boards that lie loose in rain and wind (common practice, no source). */
    public static final double BALLAST = 80;

    /** Boards over the sheet of what is level, which nothing glues: water lifts them, and wind. */
    public static final Assumption<Loose> LOOSE = audit -> OfHouse.assemblies(
                    audit,
                    surface -> surface.faces(Exposure.Kind.OUTDOORS)
                            && surface.normal().z() > Carrying.LEVEL)
            .flatCollect(Layering::loose);

    /** Those of masonry between two that let hardly any vapour through: what of rain or mortar is in it does not dry. */
    public static final Assumption<Shut> BAGGED =
            audit -> OfHouse.assemblies(audit, surface -> surface.faces(Exposure.Kind.OUTDOORS))
                    .flatCollect(Layering::bagged);

    /**
     * Air inside the insulation, between what carries or outside of what keeps out air: outdoor air that gets in there passes all boards
     * by.
     */
    public static final Assumption<LayerOf> CAVITY =
            audit -> OfHouse.assemblies(audit, surface -> true).flatCollect(Layering::cavities);

    /** Those outdoors whose outermost layer is a thin sheet, or on walls what insulates, in sun and wind. */
    public static final Assumption<Assembly> NAKED =
            audit -> OfHouse.assemblies(audit, surface -> surface.faces(Exposure.Kind.OUTDOORS) && isNaked(surface))
                    .toImmutableSortedListBy(Assembly::name);

    /** Those whose innermost layer is a thin sheet, or insulates: nothing lines it. */
    public static final Assumption<Assembly> UNLINED = audit -> OfHouse.assemblies(audit, surface -> true)
            .select(assembly -> isUnlined(assembly.layers().getFirst()))
            .toImmutableSortedListBy(Assembly::name);

    /** What rain dissolves or swells, outside of what keeps water out. */
    public static final Assumption<LayerOf> WETTED =
            audit -> OfHouse.assemblies(audit, surface -> surface.faces(Exposure.Kind.OUTDOORS))
                    .flatCollect(Layering::wetted);

    /** Flat roofs and decks that miss the limit of their U where what is cut to falls is thinnest, though not as a whole. */
    public static final Assumption<Thin> THIN_FALLS =
            audit -> audit.shell().surfaces().flatCollect(surface -> thin(audit, surface));

    /** Air outside of all insulation that is not said to let outdoor air in: it and what lies outside it then count in U, or in part. */
    public static final Assumption<LayerOf> CLOSED =
            audit -> OfHouse.assemblies(audit, surface -> surface.faces(Exposure.Kind.OUTDOORS))
                    .flatCollect(assembly -> assembly.layers()
                            .drop(assembly.layers().detectLastIndex(Layer::insulates) + 1)
                            .select(layer -> layer.air().isPresent() && !layer.isWellVentilated())
                            .collect(air -> new LayerOf(assembly, air)))
                    .reject(closed -> closed.assembly().layers().noneSatisfy(Layer::insulates));

    /** Layers that metal goes through, of which U is counted as through wood: what metal gathers from beside it is not in it. */
    public static final Assumption<LayerOf> METAL = audit -> OfHouse.assemblies(audit, surface -> true)
            .flatCollect(assembly -> assembly.layers()
                    .select(layer -> layer.framing()
                            .filter(members -> members.material().conductivity() > Carrying.METAL)
                            .isPresent())
                    .collect(layer -> new LayerOf(assembly, layer)));

    /** m of still air that slow vapour as a metre does; foams are tighter, what is packed into bays is not (judgement). */
    private static final double FOAM = 20;

    /** Of what frames a core; bays between studs have more (common practice, no source). */
    private static final double SPLINES = 0.1;

    /** Panels of two boards and a core of foam, which go up whole: details draw bays that are filled between timbers. */
    public static final Assumption<Assembly> PANELS = audit -> OfHouse.assemblies(audit, surface -> true)
            .select(Layering::isPanel)
            .toImmutableSortedListBy(Assembly::name);

    /** What counts for a bright face: air beside it resists the more. */
    public static final Assumption<LayerOf> BRIGHT = audit -> OfHouse.assemblies(audit, surface -> true)
            .flatCollect(assembly -> assembly.insideVentilation()
                    .select(layer -> layer.air()
                            .filter(air -> air.lowEmissivity() < BRIGHT_FROM)
                            .isPresent())
                    .collect(air -> new LayerOf(assembly, air)));

    /** m; in narrower gaps outdoor air hardly rises, and what drains stays (common practice, no source). */
    public static final double AIRED = 0.01;

    /** Air that is said to be well ventilated and is too thin for it. */
    public static final Assumption<LayerOf> NARROW = audit -> OfHouse.assemblies(audit, surface -> true)
            .flatCollect(assembly -> assembly.layers()
                    .select(layer -> layer.isWellVentilated() && layer.thickness() < AIRED)
                    .collect(air -> new LayerOf(assembly, air)));

    /** What is cut to falls where no rain runs off over it: its mean resists more than what details draw, its least. */
    public static final Assumption<LayerOf> CUT =
            audit -> OfHouse.assemblies(audit, surface -> surface.normal().z() < Carrying.LEVEL)
                    .flatCollect(assembly -> assembly.layers()
                            .select(layer -> layer.taper().isPresent())
                            .collect(layer -> new LayerOf(assembly, layer)));

    /**
     * Those with wood outside of what holds vapour back, whose outside slows it more than their inside: what gets damp there dries to
     * the rooms or not at all. Where the months are known, they tell what condenses.
     */
    public static final Assumption<Shut> SHUT =
            audit -> audit.house().site().climate().isPresent()
                    ? Lists.immutable.empty()
                    : OfHouse.assemblies(audit, surface -> surface.faces(Exposure.Kind.OUTDOORS))
                            .flatCollect(Layering::shut);

    private Layering() {}

    /**
     * A build-up that dries inwards.
     *
     * @param inside m of still air that slow vapour as much as its layers as far as the outer face of its insulation
     * @param outside the same of what lies beyond; infinite for what lets none through
     */
    public record Shut(Assembly assembly, double inside, double outside) {}

    /**
     * What lies loose on a roof or a deck.
     *
     * @param board the outermost insulation
     * @param weight kg/m², of what lies on it
     */
    public record Loose(Assembly assembly, Layer board, double weight) {}

    /** A layer, and the build-up that it is of. */
    public record LayerOf(Assembly assembly, Layer layer) {}

    /**
     * A surface cut to falls.
     *
     * @param transmittance W/(m²·K), where it is thinnest
     */
    public record Thin(Surface surface, double transmittance) {}

    private static boolean isPanel(Assembly assembly) {
        ImmutableList<Layer> structure = assembly.structure();
        return structure.size() > 2
                && structure.drop(1).take(structure.size() - 2).anySatisfy(Layering::isCore)
                && !structure.getFirst().insulates()
                && !structure.getLast().insulates();
    }

    private static boolean isCore(Layer layer) {
        return layer.insulates()
                && layer.material().vapourResistanceFactor().orElse(0) >= FOAM
                && layer.framing().map(Layer.Framing::share).orElse(0.0) < SPLINES;
    }

    private static ImmutableList<LayerOf> cavities(Assembly assembly) {
        ImmutableList<Layer> layers = assembly.layers();
        int from = layers.detectIndex(layer -> layer.role() == Role.STRUCTURE);
        int to = layers.detectLastIndex(layer -> layer.role() == Role.STRUCTURE);
        int tight = layers.detectLastIndex(layer -> layer.controls().contains(Control.AIR));
        int outermost = layers.detectLastIndex(Layer::insulates);
        return layers.selectWithIndex((layer, at) -> layer.air().isPresent()
                        && (at > from && at < to && to <= outermost && from >= 0
                                || at > tight && at < outermost && tight >= 0 && !layer.isWellVentilated()))
                .collect(air -> new LayerOf(assembly, air));
    }

    private static ImmutableList<Shut> shut(Assembly assembly) {
        ImmutableList<Layer> layers = assembly.insideVentilation();
        int cold = layers.detectLastIndex(Layer::insulates) + 1;
        int held = layers.detectLastIndex(layer -> layer.controls().contains(Control.VAPOUR));
        if (layers.take(cold).drop(held + 1).noneSatisfy(Carrying::isOfWood)
                || layers.anySatisfy(layer -> layer.air().isEmpty()
                        && layer.material().vapourResistanceFactor().isEmpty())) {
            return Lists.immutable.empty();
        }
        double inside = slowsAs(layers.take(cold));
        double outside = slowsAs(layers.drop(cold));
        return outside > SHUT_OUTSIDE && outside > inside
                ? Lists.immutable.of(new Shut(assembly, inside, outside))
                : Lists.immutable.empty();
    }

    private static ImmutableList<Loose> loose(Assembly assembly) {
        ImmutableList<Layer> over = assembly.layers()
                .drop(assembly.layers()
                                .detectLastIndex(layer -> layer.controls().contains(Control.WATER))
                        + 1);
        int board = over.detectLastIndex(Layer::insulates);
        double weight = over.drop(board + 1)
                .sumOfDouble(
                        layer -> layer.thickness() * layer.material().density().orElse(0));
        return board < 0 || over.size() == assembly.layers().size() || weight >= BALLAST
                ? Lists.immutable.empty()
                : Lists.immutable.of(new Loose(assembly, over.get(board), weight));
    }

    private static ImmutableList<Shut> bagged(Assembly assembly) {
        ImmutableList<Layer> layers = assembly.insideVentilation();
        int wall = layers.detectIndex(layer -> layer.material().carries() == Material.Carries.STANDS);
        if (wall < 0
                || layers.anySatisfy(layer -> layer.air().isEmpty()
                        && layer.material().vapourResistanceFactor().isEmpty())) {
            return Lists.immutable.empty();
        }
        double inside = slowsAs(layers.take(wall));
        double outside = slowsAs(layers.drop(wall + 1));
        return Math.min(inside, outside) > TIGHT
                ? Lists.immutable.of(new Shut(assembly, inside, outside))
                : Lists.immutable.empty();
    }

    /** m of still air; added without what a compensated sum makes of an infinity, no number. */
    private static double slowsAs(ImmutableList<Layer> layers) {
        return layers.castToList().stream().mapToDouble(Layering::slowsAs).reduce(0, Double::sum);
    }

    /** m of still air. */
    private static double slowsAs(Layer layer) {
        return layer.air().isPresent()
                ? layer.thickness()
                : layer.material().vapourResistanceFactor().orElseThrow() * layer.thickness();
    }

    private static boolean isNaked(Surface surface) {
        return surface.assembly()
                .map(assembly -> assembly.layers().getLast())
                .filter(last -> surface.use() == Body.Use.WALL && last.insulates()
                        || last.role() == Role.MEMBRANE
                                && last.thickness() < (surface.use() == Body.Use.WALL ? HUNG : SHEET)
                                && last.material().conductivity() < Carrying.METAL)
                .isPresent();
    }

    private static boolean isUnlined(Layer first) {
        return first.insulates() || first.role() == Role.MEMBRANE && first.thickness() < HUNG;
    }

    private static ImmutableList<LayerOf> wetted(Assembly assembly) {
        int dry = assembly.layers().detectLastIndex(layer -> layer.controls().contains(Control.WATER));
        return dry < 0
                ? Lists.immutable.empty()
                : assembly.layers()
                        .drop(dry + 1)
                        .select(layer -> MaterialLibrary.isForIndoorsAlone(
                                layer.material().name()))
                        .collect(layer -> new LayerOf(assembly, layer));
    }

    private static ImmutableList<Thin> thin(Audit audit, Surface surface) {
        double limit = audit.house()
                .limits()
                .surfaces()
                .of(surface.use(), surface.exposure().kind())
                .transmittance();
        return Lists.immutable.fromStream(surface.assembly().stream()
                .map(assembly -> Transmittance.of(
                        assembly, HeatFlow.through(surface.normal()), OuterSurface.of(surface.exposure())))
                .filter(u -> !Limits.over(u.corrected(), limit))
                .flatMap(u -> u.taper().stream())
                .map(taper -> new Thin(surface, 1 / taper.rest()))
                .filter(thin -> Limits.over(thin.transmittance(), limit)));
    }
}
