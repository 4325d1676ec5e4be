package coldseam.envelope.shell;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The top of a body by storeys.
 *
 * <p>A pitched roof's structure has its top at the storey's height over the inner face of the eaves' wall. Its outer plane
 * lies higher by the layers outside the structure, measured plumb, and falls with the pitch to the outer plane of that
 * wall: where the two meet is the eaves. With walls of different thickness the thickest sets the eaves' height, so that
 * all eaves of a gable or hip roof run level. A cold loft has its insulation on the top ceiling, which is flat whatever
 * roof stands over it.
 */
final class RoofShape {

    /** Cosine between two sides above which they are not square to one another. */
    private static final double SQUARE = 1e-3;

    /**
     * A plane of the roof.
     *
     * @param outline counterclockwise seen from outdoors
     * @param wall for a gable the index of the rectangle's side it stands on; −1 for a slope
     */
    record Plane(ImmutableList<Vertex> outline, int wall) {}

    private final ImmutableList<Vertex> corners;
    private final Body.Roof roof;
    private final long eaves;
    private final double slope;
    private final boolean flat;

    private RoofShape(ImmutableList<Vertex> corners, Body.Roof roof, long eaves, double slope, boolean flat) {
        this.corners = corners;
        this.roof = roof;
        this.eaves = eaves;
        this.slope = slope;
        this.flat = flat;
    }

    /**
     * @param outline of the top storey, plan, counterclockwise
     * @param low a point on the low side; ignored where the outline is no rectangle
     * @param wall m, thickness of the thickest wall that carries eaves
     * @param top z to which the top storey's height runs
     */
    static RoofShape of(
            ImmutableList<Vertex> outline,
            Body.Roof roof,
            Optional<Assembly> assembly,
            Vertex low,
            double wall,
            long top) {
        double outside = Footprint.beyondStructure(assembly);
        if (flatTop(roof)) {
            ImmutableList<Vertex> corners = rectangle(outline) ? turned(outline, low) : outline;
            return new RoofShape(corners, roof, top + Vertex.height(outside), 0, true);
        }
        double slope = Math.tan(Math.toRadians(roof.pitch()));
        double cosine = Math.cos(Math.toRadians(roof.pitch()));
        long eaves = top + Vertex.height(outside / cosine - wall * slope);
        return new RoofShape(turned(outline, low), roof, eaves, slope, false);
    }

    static boolean flatTop(Body.Roof roof) {
        return roof.insulatedAtCeiling() || roof.form() == Body.Roof.Form.FLAT;
    }

    /** Whether the outline is a rectangle. */
    static boolean rectangle(ImmutableList<Vertex> outline) {
        if (outline.size() != 4) {
            return false;
        }
        for (int i = 0; i < 4; i++) {
            Vertex a = outline.get((i + 1) % 4).minus(outline.get(i));
            Vertex b = outline.get((i + 2) % 4).minus(outline.get((i + 1) % 4));
            if (Math.abs(a.dot(b)) > SQUARE * a.length() * b.length()) {
                return false;
            }
        }
        return true;
    }

    /** The index of the rectangle's side, after turning the low side to 0, on which a plan point lies. */
    int side(Vertex point) {
        int best = 0;
        for (int i = 1; i < corners.size(); i++) {
            if (distance(i, point) < distance(best, point)) {
                best = i;
            }
        }
        return best;
    }

    /** Height at which a wall of the top storey ends over a plan point. */
    long wallTop(Vertex point) {
        if (flat || roof.form() != Body.Roof.Form.MONO_PITCH) {
            return eaves;
        }
        return eaves + Math.round(slope * distance(0, point));
    }

    /** Whether the wall on this side of the rectangle carries a verge, a gable or a mono-pitch's high end. */
    boolean gableSide(int side) {
        return switch (roof.form()) {
            case FLAT, HIP -> false;
            case GABLE -> side % 2 == 1;
            case MONO_PITCH -> side != 0;
        };
    }

    /** The roof's planes and gables. */
    ImmutableList<Plane> planes() {
        if (flat) {
            return Lists.immutable.of(slope(corners.collect(corner -> corner.at(eaves))));
        }
        return switch (roof.form()) {
            case FLAT -> throw new IllegalStateException("a flat roof has no pitch");
            case MONO_PITCH -> Lists.immutable.of(slope(corners.collect(corner -> corner.at(wallTop(corner)))));
            case GABLE -> gable();
            case HIP -> hip();
        };
    }

    private ImmutableList<Plane> gable() {
        ImmutableList<Vertex> c = corners.collect(corner -> corner.at(eaves));
        long ridge = eaves + rise(distance(0, corners.get(2)) / 2);
        Vertex a = between(corners.get(0), corners.get(3), 0.5).at(ridge);
        Vertex b = between(corners.get(1), corners.get(2), 0.5).at(ridge);
        return Lists.immutable.of(
                slope(Lists.immutable.of(c.get(0), c.get(1), b, a)),
                slope(Lists.immutable.of(c.get(2), c.get(3), a, b)),
                new Plane(Lists.immutable.of(c.get(1), c.get(2), b), 1),
                new Plane(Lists.immutable.of(c.get(3), c.get(0), a), 3));
    }

    private ImmutableList<Plane> hip() {
        double along = corners.get(1).minus(corners.get(0)).length();
        double across = corners.get(2).minus(corners.get(1)).length();
        int start = along >= across ? 0 : 1;
        double width = Math.min(along, across);
        double share = width / Math.max(along, across) / 2;
        ImmutableList<Vertex> c = Lists.immutable.fromStream(java.util.stream.IntStream.range(0, 4)
                .mapToObj(i -> corners.get((i + start) % 4).at(eaves)));
        long ridge = eaves + rise(width / 2);
        Vertex west = between(c.get(0), c.get(3), 0.5);
        Vertex east = between(c.get(1), c.get(2), 0.5);
        Vertex a = between(west, east, share).at(ridge);
        Vertex b = between(west, east, 1 - share).at(ridge);
        MutableList<Plane> planes = Lists.mutable.empty();
        planes.add(slope(Lists.immutable.of(c.get(0), c.get(1), b, a)));
        planes.add(slope(Lists.immutable.of(c.get(1), c.get(2), b)));
        planes.add(slope(Lists.immutable.of(c.get(2), c.get(3), a, b)));
        planes.add(slope(Lists.immutable.of(c.get(3), c.get(0), a)));
        return planes.toImmutable();
    }

    private static Plane slope(ImmutableList<Vertex> outline) {
        return new Plane(Facet.tidy(outline), -1);
    }

    private static Vertex between(Vertex a, Vertex b, double share) {
        return new Vertex(
                Math.round(a.x() + share * (b.x() - a.x())), Math.round(a.y() + share * (b.y() - a.y())), a.z());
    }

    /** How far a ridge lies over the eaves. */
    private long rise(double run) {
        return Vertex.height(slope * run / Vertex.PER_METRE);
    }

    /** Distance of a plan point from the line of a side, lattice units. */
    private double distance(int side, Vertex point) {
        Vertex a = corners.get(side).at(0);
        Vertex along = corners.get((side + 1) % corners.size()).at(0).minus(a);
        return Math.abs(along.cross(point.at(0).minus(a)).z() / along.length());
    }

    private static ImmutableList<Vertex> turned(ImmutableList<Vertex> outline, Vertex low) {
        RoofShape asGiven = new RoofShape(outline, null, 0, 0, true);
        int first = asGiven.side(low);
        return Lists.immutable.fromStream(java.util.stream.IntStream.range(0, outline.size())
                .mapToObj(i -> outline.get((i + first) % outline.size())));
    }
}
