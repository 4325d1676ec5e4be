package coldseam.envelope.shell.mesh;

import coldseam.envelope.Assembly;
import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Comparator;
import java.util.Optional;

/**
 * Which kind of junction an edge is, by its geometry and what its two surfaces are to the house.
 *
 * <p>No junction: an edge between two party walls (heated on all sides), and a mere cut line, that is an edge in one plane
 * between surfaces of the same assembly and exposure, unless the walls of two storeys meet there and a floor bears in.
 */
record JunctionRules(FacetMesh mesh, InnerPlanes planes) {

    /** Cosine to the horizontal above which an edge runs level. */
    private static final double LEVEL = 0.02;

    /** Degrees below which a slope meets the wall under it at its upper edge. */
    private static final double RIGHT = 89.9;

    /** z of a unit normal above which a surface lies flat. */
    private static final double FLAT = 0.999;

    private static final Comparator<Facet> NATURE = Comparator.comparing(
                    (Facet facet) -> facet.exposure().kind())
            .thenComparing(facet -> facet.exposure().neighbour())
            .thenComparing(facet -> facet.assembly().map(Assembly::name).orElse(""));

    /**
     * An edge's kind with its surfaces in the kind's order.
     *
     * @param first facet of the first band, index
     * @param second facet of the second band, index
     */
    public record Found(JunctionKind kind, int first, int second) {}

    /** The junction along a shared edge that runs {@code from → to} with facet {@code one}; empty for a mere cut line. */
    public Optional<Found> find(int one, int other, Vertex from, Vertex to) {
        Facet a = mesh.facets().get(one);
        Facet b = mesh.facets().get(other);
        boolean partyA = a.faces(Exposure.Kind.PARTY);
        boolean partyB = b.faces(Exposure.Kind.PARTY);
        if (partyA || partyB) {
            boolean inOnePlane = a.use() == Body.Use.WALL
                    && b.use() == Body.Use.WALL
                    && planes.angle(one, other, from, to) == Vectors.STRAIGHT;
            Facet party = partyA ? a : b;
            boolean overIt = rank(party.use()) <= rank(Body.Use.OVERHANG) && (partyA ? b : a).use() == Body.Use.WALL;
            JunctionKind kind = inOnePlane
                    ? JunctionKind.WALL_PAST_NEIGHBOUR
                    : overIt ? JunctionKind.FLOOR_OVER_NEIGHBOUR : JunctionKind.PARTY_WALL;
            return partyA && partyB ? Optional.empty() : ordered(kind, one, other, partyA);
        }
        double angle = planes.angle(one, other, from, to);
        // The facet of lower rank is the first band: floors and decks before roofs before walls.
        boolean turn = rank(b.use()) != rank(a.use()) ? rank(b.use()) < rank(a.use()) : isLater(one, other);
        Facet first = turn ? b : a;
        Facet second = turn ? a : b;
        if (first.use() == Body.Use.WALL) {
            return walls(one, other, from, to, angle);
        }
        Optional<JunctionKind> kind = second.use() == Body.Use.WALL
                ? Optional.of(withWall(first, second, angle, from, to))
                : withoutWall(first, second, angle, from, to);
        return kind.flatMap(k -> ordered(k, one, other, turn));
    }

    private static Optional<Found> ordered(JunctionKind kind, int one, int other, boolean turn) {
        return Optional.of(new Found(kind, turn ? other : one, turn ? one : other));
    }

    /**
     * Whether of two facets of one rank the first is the later band: by what they face and are built of, so that a mirrored
     * house has the same junctions; of two alike by their order.
     */
    boolean isLater(int one, int other) {
        int byNature = NATURE.compare(mesh.facets().get(one), mesh.facets().get(other));
        return byNature != 0 ? byNature > 0 : other < one;
    }

    private static int rank(Body.Use use) {
        return switch (use) {
            case FLOOR -> 0;
            case OVERHANG -> 1;
            case TERRACE -> 2;
            case ROOF -> 3;
            case CEILING -> 4;
            case WALL -> 5;
        };
    }

    private Optional<Found> walls(int one, int other, Vertex from, Vertex to, double angle) {
        Facet a = mesh.facets().get(one);
        Facet b = mesh.facets().get(other);
        boolean unheatedA = a.faces(Exposure.Kind.UNHEATED);
        boolean unheatedB = b.faces(Exposure.Kind.UNHEATED);
        boolean spaces = unheatedA != unheatedB;
        boolean later = isLater(one, other);
        if (angle != Vectors.STRAIGHT) {
            return ordered(
                    angle < Vectors.STRAIGHT ? JunctionKind.OUTSIDE_CORNER : JunctionKind.INSIDE_CORNER,
                    one,
                    other,
                    later);
        }
        boolean sameBuild = a.builtAs(b);
        boolean level = level(from, to);
        // Those of two stacks have no floor in common.
        boolean storeys = Math.abs(a.traits().level() - b.traits().level()) == 1 && level;
        Point3 intoOne = planes.inward(one, from, to);
        boolean oneIsAbove = intoOne.z() > 0;
        Facet lower = oneIsAbove ? b : a;
        Facet upper = oneIsAbove ? a : b;
        if (storeys) {
            boolean foundation = lower.marked(Facet.Mark.CELLAR) && !upper.marked(Facet.Mark.CELLAR);
            boolean oneWall = a.assembly()
                    .flatMap(wall -> b.assembly().map(wall::isBuiltLike))
                    .orElse(sameBuild);
            JunctionKind floor =
                    oneWall && !spaces ? JunctionKind.INTERMEDIATE_FLOOR : JunctionKind.WALL_CHANGE_AT_FLOOR;
            return ordered(foundation ? JunctionKind.FOUNDATION_WALL_TOP : floor, one, other, oneIsAbove);
        }
        if (spaces) {
            return ordered(JunctionKind.UNHEATED_NEIGHBOUR, one, other, unheatedA);
        }
        boolean outOfGround = lower.faces(Exposure.Kind.GROUND) && !upper.faces(Exposure.Kind.GROUND);
        if (level && outOfGround && !sameBuild) {
            return ordered(JunctionKind.FOUNDATION_WALL_TOP, one, other, oneIsAbove);
        }
        return sameBuild ? Optional.empty() : ordered(JunctionKind.WALL_THICKNESS_CHANGE, one, other, later);
    }

    private JunctionKind withWall(Facet first, Facet wall, double angle, Vertex from, Vertex to) {
        boolean convex = angle < Vectors.STRAIGHT;
        boolean level = level(from, to);
        return switch (first.use()) {
            case FLOOR -> floorKind(first, wall, convex);
            case OVERHANG -> convex ? JunctionKind.OVERHANG_EDGE : JunctionKind.WALL_UNDER_OVERHANG;
            case TERRACE -> convex ? JunctionKind.TERRACE_EDGE : JunctionKind.WALL_TO_TERRACE;
            case CEILING ->
                !convex && level
                        ? wall.faces(Exposure.Kind.UNHEATED) ? JunctionKind.KNEE_WALL_FOOT : JunctionKind.ROOF_STEP
                        : wall.marked(Facet.Mark.UNDER_GABLE)
                                ? JunctionKind.GABLE_COLD_LOFT
                                : JunctionKind.EAVES_COLD_LOFT;
            case ROOF -> roofKind(first, wall, angle, level);
            case WALL -> throw new IllegalStateException("two walls");
        };
    }

    private static JunctionKind floorKind(Facet floor, Facet wall, boolean convex) {
        return switch (floor.exposure().kind()) {
            case GROUND -> {
                boolean buried = wall.faces(Exposure.Kind.GROUND);
                if (!convex && !floor.marked(Facet.Mark.CELLAR)) {
                    yield JunctionKind.STEPPED_FOOTING;
                }
                // A cellar's wall that stands free stands as one on a slab does.
                boolean free = convex && wall.faces(Exposure.Kind.OUTDOORS);
                yield floor.marked(Facet.Mark.CELLAR) && !free || buried
                        ? JunctionKind.CELLAR_SLAB_EDGE
                        : JunctionKind.SLAB_EDGE;
            }
            // A lower wing's wall under the floor beside it meets that as a wall does what hangs over it.
            case CRAWL_SPACE -> convex ? JunctionKind.CRAWL_SPACE_EDGE : JunctionKind.WALL_UNDER_OVERHANG;
            case UNHEATED, PARTY -> convex ? JunctionKind.UNHEATED_BELOW_EDGE : JunctionKind.WALL_UNDER_OVERHANG;
            case OUTDOORS -> convex ? JunctionKind.OVERHANG_EDGE : JunctionKind.WALL_UNDER_OVERHANG;
        };
    }

    private static JunctionKind roofKind(Facet roof, Facet wall, double angle, boolean level) {
        boolean convex = angle < Vectors.STRAIGHT;
        boolean flat = roof.normal().z() > FLAT;
        if (flat) {
            JunctionKind edge = roof.marked(Facet.Mark.PARAPET) ? JunctionKind.PARAPET : JunctionKind.FLAT_ROOF_EDGE;
            return convex ? edge : JunctionKind.ROOF_STEP;
        }
        if (convex) {
            boolean knee = wall.faces(Exposure.Kind.UNHEATED);
            JunctionKind eaves = angle < RIGHT ? JunctionKind.HIGH_EAVES : JunctionKind.EAVES;
            return knee && level ? JunctionKind.KNEE_WALL : level ? eaves : JunctionKind.VERGE;
        }
        return wall.marked(Facet.Mark.DORMER) && !level ? JunctionKind.DORMER_CHEEK : JunctionKind.ABUTMENT;
    }

    private Optional<JunctionKind> withoutWall(Facet first, Facet second, double angle, Vertex from, Vertex to) {
        boolean sameBuild = first.isAs(second) && first.use() == second.use();
        if (angle == Vectors.STRAIGHT && sameBuild) {
            return Optional.empty();
        }
        boolean decked = first.use() == Body.Use.TERRACE;
        if (decked && second.use() != Body.Use.TERRACE) {
            return Optional.of(JunctionKind.TERRACE_TO_ROOF);
        }
        if (first.use() == Body.Use.FLOOR || first.use() == Body.Use.OVERHANG) {
            boolean floors = second.use() == Body.Use.FLOOR || second.use() == Body.Use.OVERHANG;
            return Optional.of(
                    floors
                            ? JunctionKind.FLOOR_CHANGE
                            : first.faces(Exposure.Kind.GROUND) ? JunctionKind.SLAB_EDGE : JunctionKind.OVERHANG_EDGE);
        }
        if (angle == Vectors.STRAIGHT) {
            return Optional.of(JunctionKind.WALL_THICKNESS_CHANGE);
        }
        if (angle > Vectors.STRAIGHT) {
            return Optional.of(JunctionKind.VALLEY);
        }
        if (first.use() == Body.Use.ROOF && second.use() == Body.Use.CEILING) {
            return Optional.of(JunctionKind.COLLAR);
        }
        return Optional.of(level(from, to) ? JunctionKind.RIDGE : JunctionKind.HIP);
    }

    private static boolean level(Vertex from, Vertex to) {
        Vertex along = to.minus(from);
        return Math.abs(along.z()) <= LEVEL * along.length();
    }
}
