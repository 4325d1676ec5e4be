package coldseam.junctions.section;

import coldseam.envelope.Duty;
import coldseam.envelope.Material;
import coldseam.envelope.Role;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Piece;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Whether all that carries hangs together in a drawing: what is seen of the surfaces' structures, joined by what else carries (a
 * structural block, insulation that bears loads, the ground). Layers that turn a corner by their roles cut one another where the
 * two surfaces hold them in another order, such as a wall insulated inside beside one insulated outside.
 */
public final class FloatingStructure {

    /** Of a parapet's height that something in the drawing must have; the rest may be a capping. */
    public static final double HIGH = 0.8;

    /** m; what is thinner on the mean is a board or a capping, and no parapet (judgement). */
    public static final double PARAPET = 0.05;

    /**
     * m; mortar, a bed, a sheathing board or a membrane may lie between two parts that bear on each other (judgement), but no
     * insulation that gives way under a load.
     */
    private static final double BED = 0.032;

    /** Of a leaf's thickness that must stand on something: a plate may overhang, but by less than half (judgement). */
    static final double ON_ITS_FOOT = 0.5;

    /** m²; less of a part than this is a sliver of the drawing. */
    private static final double SLIVER = 1e-3;

    /** m²; what is smaller of a parapet is a capping or a batten, which screws hold (judgement). */
    private static final double WEIGHT = 0.04;

    private FloatingStructure() {}

    /**
     * How many bodies that hold what carries a surface do not touch one another; one or none is as it should be. Of a surface
     * with two leaves the thicker one carries, of two alike the inner one.
     *
     * @param parapet whether one stands on the roof: then whatever heavy the detail adds must bear on the rest, too
     */
    static int bodies(SectionPlan plan, boolean parapet) {
        ImmutableList<Integer> first = carrying(plan, true);
        ImmutableList<Integer> second = carrying(plan, false);
        if (sideBySide(plan, parapet, first, second)) {
            return 1;
        }
        MutableList<Geometry> bearing = Lists.mutable.empty();
        MutableList<Geometry> leaves = Lists.mutable.empty();
        MutableList<Geometry> soft = Lists.mutable.empty();
        Geometry covered = Shapes.nothing();
        for (Piece piece : plan.pieces().toReversed()) {
            if (piece.origin() instanceof Origin.OfStrip) {
                continue;
            }
            Geometry area = Shapes.of(piece.outline().corners());
            boolean heavy = parapet && isHeavy(piece);
            if (heavy || bears(piece, plan)) {
                Geometry seen = Shapes.difference(area, covered);
                if (!seen.isEmpty()) {
                    bearing.add(seen.buffer(BED / 2));
                    if (heavy || isLeaf(piece, first, second)) {
                        leaves.add(seen);
                    }
                }
            } else if (piece.material().insulates()) {
                soft.add(Shapes.difference(area, covered));
            }
            covered = Shapes.union(Lists.immutable.of(covered, area));
        }
        return bodies(Shapes.difference(Shapes.union(bearing), Shapes.union(soft)), leaves.toImmutable());
    }

    /**
     * Of what carries a wall that stands on another, the share of its thickness under which something bears, from 0 to 1; at its
     * foot the height is 0.
     *
     * @param leaf the thickest layer of its structure
     */
    static double borne(SectionPlan plan, Band.Stratum leaf) {
        Geometry foot = Shapes.FACTORY.toGeometry(new Envelope(leaf.inside(), leaf.outside(), -2 * BED, 0));
        Geometry bearing = Shapes.nothing();
        for (Piece piece : plan.pieces().reject(each -> each.origin() instanceof Origin.OfStrip)) {
            Geometry area = Shapes.intersection(Shapes.of(piece.outline().corners()), foot);
            bearing = bears(piece, plan)
                    ? Shapes.union(Lists.immutable.of(bearing, area))
                    : Shapes.difference(bearing, area);
        }
        return bearing.getArea() / foot.getArea();
    }

    /**
     * Whether nothing that is seen could be a parapet: what is outside of a wall's boards is none, nor what insulates, unless the
     * wall's own studs stand in it.
     *
     * @param from m in the section, where it begins
     * @param top m, how high it reaches at least
     */
    static boolean nothingStands(SectionPlan plan, double from, double top) {
        Geometry covered = Shapes.nothing();
        for (Piece piece : plan.pieces().toReversed()) {
            Geometry area = Shapes.of(piece.outline().corners());
            boolean cladding = piece.origin() instanceof Origin.OfLayer && piece.role() == Role.CLADDING;
            boolean solid = !cladding && (!piece.material().insulates() || isALeafs(piece.material(), plan));
            if (solid && isAParapet(Shapes.difference(area, covered), from, top)) {
                return false;
            }
            covered = Shapes.union(Lists.immutable.of(covered, area));
        }
        return true;
    }

    private static boolean isAParapet(Geometry seen, double from, double top) {
        Envelope extent = seen.getEnvelopeInternal();
        if (seen.isEmpty() || extent.getMaxY() < top) {
            return false;
        }
        Geometry above =
                Shapes.FACTORY.toGeometry(new Envelope(extent.getMinX(), extent.getMaxX(), from, extent.getMaxY()));
        return Shapes.intersection(seen, above).getArea() > PARAPET * (top - from);
    }

    private static boolean isHeavy(Piece piece) {
        return piece.origin() instanceof Origin.OfDetail
                && !piece.material().insulates()
                && Shapes.of(piece.outline().corners()).getArea() > WEIGHT;
    }

    private static boolean isLeaf(Piece piece, ImmutableList<Integer> first, ImmutableList<Integer> second) {
        return piece.origin() instanceof Origin.OfLayer of && (of.first() ? first : second).contains(of.index());
    }

    /** Whether all leaves are joined where sides of what bears lie on one another; most are, and need no bed between them. */
    private static boolean sideBySide(
            SectionPlan plan, boolean parapet, ImmutableList<Integer> first, ImmutableList<Integer> second) {
        PlanarSubdivision seen = plan.seen();
        ImmutableList<Piece> pieces = seen.faces().collect(face -> plan.pieces().get(face.painted()));
        ImmutableList<Boolean> heavy = pieces.collect(piece -> parapet && isHeavy(piece));
        int[] joined = new int[pieces.size()];
        for (int face = 0; face < joined.length; face++) {
            boolean strip = pieces.get(face).origin() instanceof Origin.OfStrip;
            joined[face] =
                    !strip && (heavy.get(face) || bears(pieces.get(face), plan)) ? face : PlanarSubdivision.NOTHING;
        }
        boolean more = true;
        while (more) {
            more = false;
            for (PlanarSubdivision.Edge edge : seen.edges()) {
                int left = edge.left() < 0 ? PlanarSubdivision.NOTHING : joined[edge.left()];
                int right = edge.right() < 0 ? PlanarSubdivision.NOTHING : joined[edge.right()];
                if (left >= 0 && right >= 0 && left != right && edge.length() > BED) {
                    joined[edge.left()] = Math.min(left, right);
                    joined[edge.right()] = Math.min(left, right);
                    more = true;
                }
            }
        }
        int body = PlanarSubdivision.NOTHING;
        for (int face = 0; face < joined.length; face++) {
            if (joined[face] >= 0 && (heavy.get(face) || isLeaf(pieces.get(face), first, second))) {
                if (body >= 0 && body != joined[face]) {
                    return false;
                }
                body = joined[face];
            }
        }
        return true;
    }

    /**
     * The indices of a surface's layers that carry: of the thickest, the innermost and those beyond insulation from it; of the
     * leaves round a cavity the inner one carries.
     */
    private static ImmutableList<Integer> carrying(SectionPlan plan, boolean first) {
        ImmutableList<Piece> layers = plan.pieces()
                .select(piece -> piece.origin() instanceof Origin.OfLayer of && of.first() == first)
                .toImmutableSortedListBy(FloatingStructure::index);
        ImmutableList<Piece> structure = layers.select(piece -> piece.role() == Role.STRUCTURE);
        double most = structure.collectDouble(FloatingStructure::thickness).maxIfEmpty(0);
        ImmutableList<Piece> thickest = structure.select(piece -> thickness(piece) == most);
        return thickest.select(piece -> index(piece) == index(thickest.getFirst())
                        || layers.anySatisfy(between -> between.role() == Role.INSULATION
                                && index(between) > index(thickest.getFirst())
                                && index(between) < index(piece)))
                .collect(FloatingStructure::index);
    }

    private static int index(Piece piece) {
        return ((Origin.OfLayer) piece.origin()).index();
    }

    private static double thickness(Piece piece) {
        return ((Origin.OfLayer) piece.origin()).layer().thickness();
    }

    private static int bodies(Geometry bearing, ImmutableList<Geometry> leaves) {
        return Shapes.parts(bearing)
                .count(body -> leaves.sumOfDouble(
                                leaf -> Shapes.intersection(leaf, body).getArea())
                        > SLIVER);
    }

    /** Of what a detail adds, insulation carries only where its material bears loads, whatever its role is called. */
    private static boolean bears(Piece piece, SectionPlan plan) {
        return piece.origin() instanceof Origin.OfGround
                || piece.role() == Role.STRUCTURE && (!piece.material().insulates() || isALeafs(piece.material(), plan))
                || piece.origin() instanceof Origin.OfLayer of && of.layer().fillsCavity()
                || piece.origin() instanceof Origin.OfDetail && piece.material().canBear(Duty.LOAD);
    }

    /** What is between the studs of a frame. */
    private static boolean isALeafs(Material material, SectionPlan plan) {
        return plan.pieces()
                .anySatisfy(each -> each.origin() instanceof Origin.OfLayer of
                        && each.role() == Role.STRUCTURE
                        && !of.layer().fillsCavity()
                        && each.material().equals(material));
    }
}
