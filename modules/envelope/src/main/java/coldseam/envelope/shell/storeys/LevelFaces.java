package coldseam.envelope.shell.storeys;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.mesh.FacetNames;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.PlanRegions;
import coldseam.envelope.shell.plan.PlanRings;
import coldseam.envelope.shell.roof.RoofField;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableLongList;

/** Facets under and over storeys: floors on the ground, overhangs, terraces, lower roofs, and level steps of the walls. */
record LevelFaces(
        Stacks stacks, PlanRegions regions, Heated heated, StoreyLevels levels, StoreyParts parts, RoofField field) {

    /** Name of the facet under the lowest storey. */
    public static final String FLOOR = "lowest floor";

    /** Regions between storeys, or under the lowest or over the top one, as far as they lie outdoors. */
    ImmutableList<PlanRegions.Region> beside(int lower, boolean open, boolean step) {
        return regions.beside(lower, open, step)
                .flatCollect(region ->
                        regions.shown(region, cell -> heated.shown(cell, open ? lower : lower + 1, open)));
    }

    /** The lowest storeys' floors. */
    public ImmutableList<Facet> base() {
        return stacks.lowests()
                .flatCollect(k -> FacetNames.numbered(
                        FLOOR + stacks.of(k),
                        beside(k - 1, false, false)
                                .toSortedListBy(PlanRegions.Region::part)
                                .collect(region -> floor(k, region.part(), region.cells()))));
    }

    private Facet floor(int storey, int part, ImmutableList<Integer> cells) {
        Optional<Assembly> assembly = parts.underside(storey, part);
        Optional<Body.Base> base = parts.base(storey, part);
        boolean onGround = base.map(Body.Base::onGround).orElse(false);
        // One over a cold cellar stands on its walls; what hangs over a garage or a porch is said to be an overhang.
        boolean stands = onGround
                || stacks.lowest(storey)
                || part > 0
                || base.isPresent() && stacks.storey(storey).overhang().isEmpty();
        boolean cellar = base.map(Body.Base::kind).equals(Optional.of(Body.Base.Kind.HEATED_CELLAR));
        long height = levels.soffit(storey, assembly);
        return new Facet(
                "",
                stands ? Body.Use.FLOOR : Body.Use.OVERHANG,
                assembly,
                base.map(Body.Base::exposure).orElse(Exposure.outdoors()),
                PlanRings.of(regions.plan(), cells)
                        .only()
                        .collect(v -> v.at(height))
                        .toReversed(),
                levels.traits(stacks, storey, cellar ? Facet.Mark.CELLAR : Facet.Mark.NONE));
    }

    public static Facet step(String name, Facet.Traits traits, ImmutableList<Vertex> outline, double inset) {
        return new Facet(
                name, name, name, Body.Use.WALL, Optional.empty(), Exposure.outdoors(), outline, inset, traits);
    }

    /** Terraces, lower roofs, floors and overhangs between storeys, and level steps. */
    public ImmutableList<Facet> between() {
        MutableList<Facet> facets = Lists.mutable.empty();
        for (int k : stacks.pairs().castToList()) {
            Body.Storey below = stacks.storey(k);
            Body.Storey above = stacks.storey(k + 1);
            double rise = Vertex.metres(
                    levels.takeOver().get(k) - levels.takeOverInside().get(k));
            MutableList<Facet> open = Lists.mutable.empty();
            MutableList<Facet> roofed = Lists.mutable.empty();
            for (PlanRegions.Region region : beside(k, true, false)) {
                (region.lowerRoof() ? roofed : open).add(openFace(region));
            }
            MutableList<Facet> over = Lists.mutable.empty();
            for (PlanRegions.Region region : beside(k, false, false)) {
                over.add(floor(k + 1, region.part(), region.cells()));
            }
            MutableList<Facet> steps = Lists.mutable.empty();
            for (PlanRegions.Region region : beside(k, true, true)) {
                steps.add(step("", levels.traits(stacks, k, Facet.Mark.STEP), outline(region), rise));
            }
            for (PlanRegions.Region region : beside(k, false, true)) {
                steps.add(step(
                        "",
                        levels.traits(stacks, k + 1, Facet.Mark.STEP),
                        outline(region).toReversed(),
                        -rise));
            }
            MutableList<Facet> grounded = over.select(facet -> facet.use() == Body.Use.FLOOR);
            over.removeAllIterable(grounded);
            String deck = below.terraceIsWalkedOn() ? "terrace over " : "lower roof over ";
            facets.addAllIterable(FacetNames.apart(open, deck + below.name(), middle(k + 1)));
            facets.addAllIterable(FacetNames.apart(
                    roofed,
                    (roofed.anySatisfy(facet -> facet.use() == Body.Use.CEILING) ? "ceiling over " : "lower roof over ")
                            + below.name(),
                    middle(k + 1)));
            facets.addAllIterable(FacetNames.apart(grounded, "floor under " + above.name(), middle(k)));
            facets.addAllIterable(FacetNames.apart(over, "overhang under " + above.name(), middle(k)));
            facets.addAllIterable(
                    FacetNames.apart(steps, "step between " + below.name() + " and " + above.name(), middle(k)));
        }
        return facets.toImmutable();
    }

    private ImmutableList<Vertex> outline(PlanRegions.Region step) {
        long height = levels.takeOver().get(step.lower());
        return PlanRings.of(regions.plan(), step.cells()).only().collect(v -> v.at(height));
    }

    /** The middle of a storey in plan, its courts filled. */
    public Vertex middle(int storey) {
        ImmutableList<Vertex> outline =
                Ring.straight(regions.plan().walks(storey).getFirst());
        return Plan.vertex(Plan.polygon(outline).getCentroid().getCoordinate());
    }

    /** A terrace or a lower roof. */
    private Facet openFace(PlanRegions.Region region) {
        int storey = region.lower();
        Optional<Assembly> assembly = parts.assembly(region);
        boolean walked = !region.lowerRoof() && stacks.storey(storey).terraceIsWalkedOn();
        int first = region.cells().getFirst();
        boolean slopes = parts.form(first, storey).isPresent();
        boolean parapet = !walked && !slopes && stacks.stack(storey).roof().parapetHeight() > 0;
        long flat = levels.flat(storey, assembly);
        ImmutableList<Vertex> outline = slopes
                ? PlanRings.everyNode(regions.plan(), region.cells())
                        .only()
                        .collect(node -> node.at(field.at(first, storey, node)))
                : PlanRings.of(regions.plan(), region.cells()).only().collect(v -> v.at(flat));
        Exposure exposure = region.lowerRoof()
                ? stacks.storey(storey).lowerRoof().orElseThrow().exposure()
                : Exposure.outdoors();
        boolean ceiling = exposure.kind() != Exposure.Kind.OUTDOORS;
        return new Facet(
                "",
                walked ? Body.Use.TERRACE : ceiling ? Body.Use.CEILING : Body.Use.ROOF,
                assembly,
                exposure,
                outline,
                levels.traits(stacks, storey, parapet ? Facet.Mark.PARAPET : Facet.Mark.NONE));
    }

    /** m, of the highest jog between two level faces of one storey that lie side by side; zero without. */
    double widestJog() {
        double widest = 0;
        for (int k : stacks.pairs().castToList()) {
            widest = Math.max(
                    widest,
                    jog(regions.beside(k, true, false)
                            .reject(region ->
                                    parts.form(region.cells().getFirst(), k).isPresent())
                            .collectLong(region -> levels.flat(k, parts.assembly(region)))));
        }
        for (int k = 0; k < stacks.count(); k++) {
            int storey = k;
            widest = Math.max(
                    widest,
                    jog(regions.beside(k - 1, false, false)
                            .collectLong(region -> levels.soffit(storey, parts.assembly(region)))));
        }
        return widest;
    }

    private static double jog(ImmutableLongList heights) {
        return heights.isEmpty() ? 0 : Vertex.metres(heights.max() - heights.min());
    }
}
