package coldseam.junctions.section;

import coldseam.envelope.Duty;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Geometry;

/**
 * Whether all that carries hangs together in a drawing: what is seen of the surfaces' structures, joined by what else carries (a
 * structural block, insulation that bears loads, the ground). Layers that turn a corner by their roles cut one another where the
 * two surfaces hold them in another order, such as a wall insulated inside beside one insulated outside.
 */
final class FloatingStructure {

    /** m; mortar, a bed, a sheathing board or a membrane may lie between two parts that bear on each other (judgement). */
    private static final double BED = 0.032;

    /** m²; less of a part than this is a sliver of the drawing. */
    private static final double SLIVER = 1e-3;

    /** m²; what is smaller of a parapet is a capping or a batten, which screws hold (judgement). */
    private static final double WEIGHT = 0.04;

    private FloatingStructure() {}

    /**
     * How many bodies that hold what carries a surface do not touch one another; one or none is as it should be. Of a surface
     * with two leaves the thicker one carries.
     *
     * @param parapet whether one stands on the roof: then whatever heavy the detail adds must bear on the rest, too
     */
    static int bodies(SectionPlan plan, boolean parapet) {
        double first = thickest(plan, true);
        double second = thickest(plan, false);
        MutableList<Geometry> bearing = Lists.mutable.empty();
        MutableList<Geometry> leaves = Lists.mutable.empty();
        Geometry covered = Shapes.nothing();
        for (Piece piece : plan.pieces().toReversed()) {
            if (piece.origin() instanceof Origin.OfStrip) {
                continue;
            }
            Geometry area = Shapes.of(piece.outline().corners());
            boolean heavy = parapet && piece.origin() instanceof Origin.OfDetail && isHeavy(piece, area);
            if (heavy || bears(piece, plan)) {
                Geometry seen = Shapes.difference(area, covered);
                if (!seen.isEmpty()) {
                    bearing.add(seen.buffer(BED / 2));
                    if (heavy
                            || piece.origin() instanceof Origin.OfLayer of
                                    && of.layer().thickness() == (of.first() ? first : second)) {
                        leaves.add(seen);
                    }
                }
            }
            covered = Shapes.union(Lists.immutable.of(covered, area));
        }
        return bodies(Shapes.union(bearing), leaves.toImmutable());
    }

    /** Whether nothing drawn that could be a parapet stands as high as that; {@code top} is m in the section. */
    static boolean nothingStands(SectionPlan plan, double top) {
        return plan.pieces()
                .select(piece -> isHeavy(piece, Shapes.of(piece.outline().corners())))
                .flatCollect(piece -> piece.outline().corners())
                .noneSatisfy(corner -> corner.y() > top);
    }

    private static boolean isHeavy(Piece piece, Geometry area) {
        return !piece.material().insulates() && area.getArea() > WEIGHT;
    }

    private static double thickest(SectionPlan plan, boolean first) {
        return plan.pieces()
                .select(piece -> piece.role() == Role.STRUCTURE)
                .collect(Piece::origin)
                .selectInstancesOf(Origin.OfLayer.class)
                .select(of -> of.first() == first)
                .collectDouble(of -> of.layer().thickness())
                .maxIfEmpty(0);
    }

    private static int bodies(Geometry bearing, ImmutableList<Geometry> leaves) {
        int count = 0;
        for (int i = 0; i < bearing.getNumGeometries(); i++) {
            Geometry body = bearing.getGeometryN(i);
            double held =
                    leaves.sumOfDouble(leaf -> Shapes.intersection(leaf, body).getArea());
            count += held > SLIVER ? 1 : 0;
        }
        return count;
    }

    /** Of what a detail adds, insulation carries only where its material bears loads, whatever its role is called. */
    private static boolean bears(Piece piece, SectionPlan plan) {
        return piece.origin() instanceof Origin.OfGround
                || piece.role() == Role.STRUCTURE && (!piece.material().insulates() || isALeafs(piece.material(), plan))
                || piece.origin() instanceof Origin.OfDetail && piece.material().canBear(Duty.LOAD);
    }

    /** What is between the studs of a frame. */
    private static boolean isALeafs(Material material, SectionPlan plan) {
        return plan.pieces()
                .anySatisfy(each -> each.origin() instanceof Origin.OfLayer
                        && each.role() == Role.STRUCTURE
                        && each.material().equals(material));
    }
}
