package coldseam.envelope.shell.storeys;

import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.mesh.Facet;
import coldseam.envelope.shell.roof.RoofForm;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * A house of several stacks a second way: level sections through its facets against the union of the stacks' own.
 *
 * <p>Between every two levels what the facets enclose must be as large as the union, and where nothing slopes as long around; at
 * every level what lies flat must be what the union gains or loses there. So no volume, wall, roof or floor can be lost or
 * doubled where stacks meet. A difference is a fault of our own.
 *
 * @param roofs of each stack
 */
record StackSections(ImmutableList<StoreySections> stacks, ImmutableList<RoofForm> roofs, ImmutableList<Facet> facets) {

    /** z of a unit normal above which a facet lies flat. */
    private static final double FLAT = 0.999999;

    /** z of a unit normal below which a facet stands upright. */
    private static final double UPRIGHT = 1e-6;

    /** m, by which slopes move a section's line. */
    private static final double SLOPE = 8;

    /**
     * Compares both.
     *
     * @throws IllegalStateException where they differ
     */
    void check() {
        TreeSet<Long> heights = new TreeSet<>();
        facets.forEach(facet -> facet.outline().forEach(corner -> heights.add(corner.z())));
        for (long low : heights) {
            Long high = heights.higher(low);
            if (high != null && high - low > 2 * Vertex.ONE) {
                section((low + high) / 2.0);
            }
        }
        // Whatever lies level has a height at which others stand, also where it is lost itself.
        heights.forEach(this::level);
    }

    private Geometry at(double height) {
        Geometry all = stacks.getFirst().at(height, roofs.getFirst());
        for (int s = 1; s < stacks.size(); s++) {
            all = StoreyEnd.overlay(all, stacks.get(s).at(height, roofs.get(s)), OverlayNG.UNION);
        }
        return all;
    }

    private void section(double height) {
        MutableList<StoreySections.Cut> cuts = StoreySections.cutsAt(facets, height);
        boolean upright = cuts.allSatisfy(cut -> Math.abs(cut.facet().normal().z()) < UPRIGHT);
        Geometry expected = at(height);
        Supplier<String> place = StoreySections.say("section at %.4f m", height);
        StoreySections.require(
                expected.getArea(), StoreySections.area(cuts), upright ? around() : SLOPE * around(), place);
        StoreySections.require(
                0, StoreySections.gap(cuts), around(), StoreySections.say("the outline's gap at %.4f m", height));
        if (upright) {
            // A corner moves by no more than the reach, and there are fewer of them than metres.
            StoreySections.require(
                    StoreyEnd.withoutSlits(expected).getLength(),
                    cuts.sumOfDouble(StoreySections.Cut::length),
                    around(),
                    StoreySections.say("walls at %.4f m", height));
        }
    }

    private void level(long height) {
        Geometry under = at(height - 0.5);
        Geometry over = at(height + 0.5);
        for (int way : new int[] {-1, 1}) {
            double found = facets.select(facet -> way * facet.normal().z() > FLAT)
                    .select(facet -> facet.outline().getFirst().z() == height)
                    .sumOfDouble(facet ->
                            StoreySections.square(way * facet.doubleArea().z() / 2.0));
            Geometry expected = StoreyEnd.overlay(way > 0 ? under : over, way > 0 ? over : under, OverlayNG.DIFFERENCE);
            StoreySections.require(
                    expected.getArea(),
                    found,
                    around(),
                    StoreySections.say((way > 0 ? "what lies open" : "what hangs over") + " at %.4f m", height));
        }
    }

    private double around() {
        return stacks.sumOfDouble(StoreySections::around);
    }
}
