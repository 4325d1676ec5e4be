package coldseam.envelope.shell.storeys;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.plan.Footprint;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Heights of a body by storeys, on the lattice.
 *
 * <p>A storey's height runs from its floor's upper face to the next floor's upper face. So:
 *
 * <ul>
 *   <li>the lowest floor's upper face is at its level on ground and over unheated spaces, at the crawl space's height over a
 *       crawl space, and at minus the cellar's depth in a cellar (ground level is z = 0 there);
 *   <li>the shell's lower plane is the underside of the lowest floor's assembly;
 *   <li>a terrace or lower roof continues the ceiling below it: its inner face lies where the internal floor's underside
 *       is, its outer face the whole assembly higher;
 *   <li>an overhang continues the floor above it: its inner face is that floor's upper face, its outer face the whole
 *       assembly lower;
 *   <li>the walls of two storeys take over from one another at the terrace's outer face where the storey has a terrace
 *       that lies no higher than the upper floor, else at the overhang's outer face where there is one, else at the upper
 *       floor's upper face; steps in the outer planes lie at that height too; walls of two build-ups in one plane always
 *       do at that floor ({@link WallPieces});
 *   <li>in the top storey the height runs to the top of the ceiling's structure, so a flat roof's or top ceiling's inner
 *       face lies lower by its layers from the inside through the last structure layer.
 * </ul>
 *
 * @param floors z of each storey's floor
 * @param ceilings m, z of the inner face of what lies flat and open above each storey
 * @param takeOver z where the next storey's walls take over, outer faces
 * @param takeOverInside z of the same line on the inner faces
 * @param tops z to which each storey's height runs
 */
record StoreyLevels(
        ImmutableList<Long> floors,
        ImmutableList<Double> ceilings,
        ImmutableList<Long> takeOver,
        ImmutableList<Long> takeOverInside,
        ImmutableList<Long> tops) {

    /** What the levels depend on beside heights. */
    interface Lookup {

        /** What lies flat and open above a storey: the thicker where there are two. */
        Optional<Assembly> terrace(int storey);

        /** What hangs over the air under a storey; empty where nothing does, as more than a step. */
        Optional<Assembly> overhang(int storey);

        /** Whether the next storey leaves part of this one open under something flat, as more than a step. */
        boolean hasTerrace(int storey);
    }

    public static StoreyLevels of(Stacks stacks, Lookup lookup) {
        MutableList<Long> floors = Lists.mutable.empty();
        MutableList<Double> ceilings = Lists.mutable.empty();
        MutableList<Long> takeOver = Lists.mutable.empty();
        MutableList<Long> takeOverInside = Lists.mutable.empty();
        MutableList<Long> tops = Lists.mutable.empty();
        double floor = 0;
        for (int k = 0; k < stacks.count(); k++) {
            floor = stacks.lowest(k) ? lowestFloor(stacks.stack(k).base()) : floor;
            floors.add(Vertex.height(floor));
            floor += stacks.storey(k).height();
            tops.add(Vertex.height(floor));
            if (stacks.top(k)) {
                // Nothing takes over from a top storey; the lists go by storey.
                ceilings.add(floor);
                takeOver.add(Vertex.height(floor));
                takeOverInside.add(Vertex.height(floor));
            } else {
                double ceiling = floor - stacks.storey(k + 1).floorThickness();
                double deck = ceiling + Footprint.thickness(lookup.terrace(k));
                double soffit = floor - Footprint.thickness(lookup.overhang(k + 1));
                boolean terrace = lookup.hasTerrace(k) && deck <= floor;
                ceilings.add(ceiling);
                takeOver.add(Vertex.height(terrace ? deck : soffit));
                takeOverInside.add(Vertex.height(terrace ? ceiling : floor));
            }
        }
        return new StoreyLevels(
                floors.toImmutable(),
                ceilings.toImmutable(),
                takeOver.toImmutable(),
                takeOverInside.toImmutable(),
                tops.toImmutable());
    }

    /** What every face of a storey has in common. */
    Facet.Traits traits(Stacks stacks, int storey, Facet.Mark mark) {
        return new Facet.Traits(
                stacks.storey(storey).name(), stacks.level(storey), Vertex.metres(floors.get(storey)), mark);
    }

    /** z of the outer face of something flat that lies open above a storey. */
    public long flat(int storey, Optional<Assembly> assembly) {
        return Vertex.height(ceilings.get(storey) + Footprint.thickness(assembly));
    }

    /** z of the outer face of something that lies under a storey. */
    long soffit(int storey, Optional<Assembly> assembly) {
        return floors.get(storey) - Vertex.height(Footprint.thickness(assembly));
    }

    /** m, z of a storey's floor. */
    public static double floor(Body.Stack stack, int storey) {
        return lowestFloor(stack.base()) + stack.storeys().take(storey).sumOfDouble(Body.Storey::height);
    }

    /** z to which the top storey's height runs. */
    public static long top(Body.Stack stack) {
        return Vertex.height(floor(stack, stack.storeys().size()));
    }

    private static double lowestFloor(Body.Base base) {
        return switch (base.kind()) {
            case SLAB_ON_GROUND, OVER_UNHEATED -> base.level();
            case SUSPENDED -> base.crawlSpace().map(Body.CrawlSpace::height).orElse(0.0);
            case HEATED_CELLAR -> -base.depth();
        };
    }
}
