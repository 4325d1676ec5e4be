package coldseam.audit.assumed;

import coldseam.audit.Audit;
import coldseam.audit.PointRow;
import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Layer;
import coldseam.envelope.Material;
import coldseam.envelope.PointKind;
import coldseam.envelope.Role;
import coldseam.envelope.Seam;
import coldseam.envelope.shell.Spans;
import coldseam.envelope.shell.Surface;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.set.ImmutableSet;

/** What carries build-ups, and what holds or bears what stands outside of their insulation. */
public final class Carrying {

    /** m; thicker ones stand on something, thinner ones hang on what holds cladding (common practice, no source). */
    private static final double STANDS = 0.05;

    /** m; solid boards of wood and slabs of concrete that carry a wall or a roof begin here (common practice, no source). */
    private static final double CARRIES = 0.06;

    /** W/(m·K); of metal. */
    static final double METAL = 10;

    /** Spans over their depth; slabs and joists have some 20 to 35 without anything under them (common practice, no source). */
    private static final double SLENDER = 60;

    /** m, that folded sheets of metal span, which are deeper than they are thick (common practice, no source). */
    private static final double FOLDED = 4;

    /** m; folded sheets that carry are thicker (common practice, no source). */
    private static final double THIN_METAL = 5e-4;

    /** Cosine of ten degrees: boards stay where they are put (judgement). */
    static final double LEVEL = 0.985;

    /** m, 1 1/2 in: the width of a slender stud, and its spacing where they stand far apart, 24 in (common practice, no source). */
    private static final double STUD = 0.038;

    private static final double SPACING = 0.61;

    /** m, between the two plates that a wall has at least (common practice, no source). */
    private static final double STUD_LENGTH = 2.7;

    /** On each m², and m across: what holds boards outside of walls (common practice, no source). */
    private static final double FASTENERS = 4;

    private static final double THICK_FASTENER = 0.004;

    private static final PointKind ANGLE = PointKind.of("angle");

    private static final JunctionKind LEDGE = JunctionKind.of("masonry veneer ledge");

    /** Masonry outside the insulation of walls, and what is listed that bears it. */
    public static final Assumption<Leaf> LEAF =
            audit -> OfHouse.assemblies(audit, surface -> surface.use() == Body.Use.WALL)
                    .flatCollect(assembly -> leaves(assembly).collect(layer -> leaf(audit, assembly, layer)));

    /** Those that boards alone carry: studs, rafters or joists are left out. */
    public static final Assumption<Assembly> BARE = audit -> OfHouse.assemblies(
                    audit,
                    surface -> surface.assembly()
                            .filter(assembly -> isBare(assembly, spans(surface)))
                            .isPresent())
            .toImmutableSortedListBy(Assembly::name);

    /** Those with insulation outside of what carries that hangs there, and nothing listed that holds it. */
    public static final Assumption<Assembly> UNFASTENED = audit -> OfHouse.assemblies(
                    audit,
                    surface -> hangs(surface)
                            && audit.points()
                                    .noneSatisfy(row -> row.kind().countedInU()
                                            && row.surface().name().equals(surface.name())))
            .select(assembly -> assembly.fasteners().isEmpty() && isBoardedOutside(assembly))
            .toImmutableSortedListBy(Assembly::name);

    /** Framed walls whose members are said to take less of them than studs and plates do, and what stands round the openings. */
    public static final Assumption<Few> FEW_STUDS = audit ->
            OfHouse.assemblies(audit, surface -> surface.use() == Body.Use.WALL).flatCollect(wall -> few(audit, wall));

    /** The same of roofs and floors, whose rafters or joists are said to take less of them than slender ones far apart do. */
    public static final Assumption<Few> FEW_RAFTERS = audit -> OfHouse.assemblies(audit, Carrying::spans)
            .collect(assembly -> new Few(assembly, ofMembers(assembly), STUD / SPACING))
            .select(few -> few.share() < few.least())
            .toImmutableSortedListBy(few -> few.assembly().name());

    /** Walls and slopes whose boards outside are said to hang on fewer fasteners, or thinner ones, than there usually are. */
    public static final Assumption<Assembly> FEW_FASTENERS = audit -> OfHouse.assemblies(audit, Carrying::hangs)
            .select(assembly -> assembly.fasteners()
                            .filter(it -> it.perSquareMetre() < FASTENERS || it.diameter() < THICK_FASTENER)
                            .isPresent()
                    && isBoardedOutside(assembly))
            .toImmutableSortedListBy(Assembly::name);

    /** The same where they are listed as points, on some surface. */
    public static final Assumption<Assembly> FEW_LISTED =
            audit -> OfHouse.assemblies(audit, surface -> hangs(surface) && isHeldByFew(audit, surface))
                    .select(assembly -> assembly.fasteners().isEmpty() && isBoardedOutside(assembly))
                    .toImmutableSortedListBy(Assembly::name);

    /** Those that span rooms and are carried by masonry alone. */
    public static final Assumption<Assembly> VAULT = audit -> OfHouse.assemblies(audit, Carrying::spans)
            .select(Carrying::isOfMasonry)
            .toImmutableSortedListBy(Assembly::name);

    /** Roofs, decks and floors whose structure is so thin for its span that something indoors must bear it. */
    public static final Assumption<Slender> SLENDER_SPAN = audit -> OfHouse.surfaces(
                    audit,
                    surface -> spans(surface)
                            && surface.use() != Body.Use.CEILING
                            && surface.assembly().isPresent())
            .flatCollect(Carrying::slender);

    /** Floors on the ground that masonry alone carries: laid, and not cast, so that walls stand on something else. */
    public static final Assumption<Assembly> LAID =
            audit -> OfHouse.assemblies(audit, surface -> surface.use() == Body.Use.FLOOR && isInGround(surface))
                    .select(Carrying::isOfMasonry)
                    .toImmutableSortedListBy(Assembly::name);

    /** Those in the ground whose structure is of wood, or has wood in it. */
    public static final Assumption<Assembly> WOOD_IN_GROUND = audit -> OfHouse.assemblies(audit, Carrying::isInGround)
            .select(Carrying::isOfWood)
            .toImmutableSortedListBy(Assembly::name);

    private Carrying() {}

    private static boolean isHeldByFew(Audit audit, Surface surface) {
        long listed = audit.points()
                .select(row -> row.kind().countedInU() && row.surface().name().equals(surface.name()))
                .sumOfInt(PointRow::number);
        return listed > 0 && listed < FASTENERS * (surface.externalArea() - surface.openingArea());
    }

    /**
     * Members of a framed wall.
     *
     * @param share of the wall, as said
     * @param least of its own area that studs, plates and what stands round its openings take
     */
    public record Few(Assembly assembly, double share, double least) {}

    /**
     * A surface that is thin for its span.
     *
     * @param layer what carries it
     * @param span m, between its walls
     */
    public record Slender(Surface surface, Layer layer, double span) {}

    /**
     * A layer outside the insulation that stands for itself: what bears it goes through the insulation, as a ledge below it or as
     * angles over openings, or it stands on the ground before it.
     *
     * @param ledge m, of ledges listed on its walls
     * @param angles how many are listed there
     */
    public record Leaf(Assembly assembly, Layer layer, double ledge, int angles) {}

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

    private static Leaf leaf(Audit audit, Assembly assembly, Layer layer) {
        ImmutableSet<String> before =
                OfHouse.walls(audit, assembly).collect(Surface::name).toImmutableSet();
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
    }

    /** Whether what lies outside would slide or fall off: not on the level, nor held by soil. */
    private static boolean hangs(Surface surface) {
        return surface.normal().z() < LEVEL && !isInGround(surface) && !surface.faces(Exposure.Kind.PARTY);
    }

    private static boolean isBoardedOutside(Assembly assembly) {
        return assembly.outsideStructure()
                .anySatisfy(layer -> layer.insulates() && layer.framing().isEmpty());
    }

    /** @param folded whether a sheet of metal may carry it by its folds, as decks do and walls and slabs do not */
    private static boolean isBare(Assembly assembly, boolean folded) {
        ImmutableList<Layer> structure = assembly.structure();
        return structure.notEmpty()
                && assembly.layers().noneSatisfy(layer -> layer.framing().isPresent())
                && structure.noneSatisfy(
                        layer -> folded && layer.material().conductivity() > METAL && layer.thickness() > THIN_METAL)
                && structure.noneSatisfy(layer ->
                        layer.thickness() >= CARRIES && !layer.material().insulates());
    }

    private static ImmutableList<Slender> slender(Surface surface) {
        Assembly assembly = surface.assembly().orElseThrow();
        ImmutableList<Layer> carries = assembly.structure()
                .select(layer ->
                        layer.air().isEmpty() && !layer.material().carries().nothing());
        ImmutableList<Layer> members =
                assembly.structure().select(layer -> layer.framing().isPresent());
        ImmutableList<Layer> metal = carries.select(layer -> layer.material().conductivity() > METAL);
        if (isBare(assembly, true) || isOfMasonry(assembly) || metal.notEmpty() && metal.size() < carries.size()) {
            return Lists.immutable.empty();
        }
        double span = Spans.across(surface);
        double most = metal.notEmpty() && members.isEmpty() ? FOLDED : 0;
        return (members.isEmpty() ? carries : members)
                .toSortedListBy(layer -> -layer.thickness())
                .take(1)
                .select(layer -> span > Math.max(most, SLENDER * layer.thickness()))
                .collect(layer -> new Slender(surface, layer, span))
                .toImmutable();
    }

    /** The largest share that members, but for sheets of metal, take of a layer that carries; 1 where there are none. */
    private static double ofMembers(Assembly assembly) {
        return assembly.structure()
                .flatCollect(layer -> layer.framing().stream().toList())
                .select(framing -> framing.material().conductivity() < METAL)
                .collectDouble(Layer.Framing::share)
                .maxIfEmpty(1);
    }

    /**
     * What of a framed wall is members at the least: studs on its own area, two plates, and round each opening what lies under and over
     * it and one stud more, since of two at its sides one stands for those that it interrupts.
     */
    private static ImmutableList<Few> few(Audit audit, Assembly assembly) {
        double share = ofMembers(assembly);
        ImmutableList<Surface> walls = OfHouse.walls(audit, assembly);
        double round = audit.house()
                .openings()
                .select(opening -> walls.anySatisfy(wall -> wall.holds(opening)))
                .sumOfDouble(opening -> 2 * opening.width() + opening.height());
        double net = walls.sumOfDouble(Surface::netArea);
        double least = STUD / SPACING + 2 * STUD / STUD_LENGTH + STUD * round / net;
        return share < least ? Lists.immutable.of(new Few(assembly, share, least)) : Lists.immutable.empty();
    }

    /** Whether wood carries it, or is in what carries it. */
    static boolean isOfWood(Assembly assembly) {
        return assembly.structure().anySatisfy(Carrying::isOfWood);
    }

    /** Whether it is wood that carries, or has members of it. */
    static boolean isOfWood(Layer layer) {
        return layer.material().timber()
                || layer.framing().filter(each -> each.material().timber()).isPresent();
    }

    private static boolean isInGround(Surface surface) {
        return surface.faces(Exposure.Kind.GROUND);
    }

    private static boolean spans(Surface surface) {
        return surface.use() != Body.Use.WALL && !isInGround(surface);
    }

    private static boolean isOfMasonry(Assembly assembly) {
        ImmutableList<Layer> structure = assembly.structure();
        return structure.anySatisfy(layer -> layer.material().carries() == Material.Carries.STANDS)
                && structure.noneSatisfy(layer -> layer.framing().isPresent()
                        || layer.thickness() > CARRIES
                                && layer.material().conductivity() > Layer.CARRIES_NOTHING
                                && layer.material().carries() != Material.Carries.STANDS
                                && !layer.material().carries().nothing());
    }
}
