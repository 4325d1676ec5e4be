package coldseam.junctions.section;

import coldseam.envelope.Duty;
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

    private FloatingStructure() {}

    /**
     * How many bodies that hold what carries a surface do not touch one another; one or none is as it should be. Of a surface
     * with two leaves the thicker one carries.
     */
    static int bodies(SectionPlan plan) {
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
            if (bears(piece)) {
                Geometry seen = Shapes.difference(area, covered);
                if (!seen.isEmpty()) {
                    bearing.add(seen.buffer(BED / 2));
                    if (piece.origin() instanceof Origin.OfLayer of
                            && of.layer().thickness() == (of.first() ? first : second)) {
                        leaves.add(seen);
                    }
                }
            }
            covered = Shapes.union(Lists.immutable.of(covered, area));
        }
        return bodies(Shapes.union(bearing), leaves.toImmutable());
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

    private static boolean bears(Piece piece) {
        return piece.origin() instanceof Origin.OfGround
                || piece.role() == Role.STRUCTURE
                || piece.origin() instanceof Origin.OfDetail && piece.material().canBear(Duty.LOAD);
    }
}
