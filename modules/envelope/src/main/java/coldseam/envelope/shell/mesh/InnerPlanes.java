package coldseam.envelope.shell.mesh;

import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * From the outer shell to the inner: every corner moved to where the inner planes meet.
 *
 * <p>At a corner each facet's inner plane lies its inset behind its outer plane, so the corner's move d satisfies
 * n·d = −inset for every facet there. A facet's own corner takes its own plane first, then those of the two neighbours
 * beside the corner, then any other there, as long as they are independent; along directions that no plane fixes the
 * corner does not move (the least move). Where the walls of two storeys take over from one another in one plane, the
 * body says how far the line moves up or down.
 */
public final class InnerPlanes {

    /** Sine of the angle below which a plane adds nothing to those already taken. */
    private static final double INDEPENDENT = 0.02;

    /** A condition n·d = move. */
    private record Condition(Point3 normal, double move) {}

    private final FacetMesh mesh;
    private final ImmutableList<BodyFacets.Above> storeys;
    private final ImmutableList<Point3> normals;
    private final double[] insets;
    private final Map<Vertex, MutableList<Condition>> takeOvers = new TreeMap<>();
    private final Map<Vertex, MutableList<Condition>> alongCuts = new TreeMap<>();
    private final TreeSet<Vertex> stopped = new TreeSet<>();

    public InnerPlanes(FacetMesh mesh, ImmutableList<BodyFacets.Above> storeys) {
        this.mesh = mesh;
        this.storeys = storeys;
        this.normals = mesh.facets().collect(Facet::normal);
        this.insets = mesh.facets().collectDouble(Facet::inset).toArray();
        followWalls();
        for (FacetMesh.Line line : mesh.lines()) {
            if (line.shared()
                    && takesOver(line.forward().get(0), line.backward().get(0), line)) {
                Condition condition =
                        takeOver(line.forward().get(0), line.backward().get(0), line);
                takeOvers.computeIfAbsent(line.a(), v -> Lists.mutable.empty()).add(condition);
                takeOvers.computeIfAbsent(line.b(), v -> Lists.mutable.empty()).add(condition);
            }
        }
        while (mesh.lines().anySatisfy(this::stopAtCorner) || mesh.lines().anySatisfy(this::keepParallel)) {
            // One line at a time: what follows a fixed end fixes the next.
        }
    }

    /** An upright step in the plane of a wall's outer face, facing either way, follows that wall's inner face. */
    private void followWalls() {
        MutableList<Integer> following = Lists.mutable.empty();
        for (int f = 0; f < insets.length; f++) {
            if (mesh.facets().get(f).step() && Math.abs(normals.get(f).z()) < INDEPENDENT && followsWall(f)) {
                following.add(f);
            }
        }
        for (int i = 0; i < following.size(); i++) {
            int ahead = following.get(i);
            for (FacetMesh.Line line :
                    mesh.lines().select(line -> line.shared() && line.facets().contains(ahead))) {
                int behind = line.facets().detect(f -> f != ahead);
                if (mesh.facets().get(behind).step() && alike(ahead, behind) && !following.contains(behind)) {
                    insets[behind] = insets[ahead];
                    following.add(behind);
                }
            }
        }
    }

    private boolean followsWall(int step) {
        Point3 normal = normals.get(step);
        for (Vertex corner : mesh.facets().get(step).outline()) {
            for (int wall : mesh.around(corner)) {
                boolean parallel = Vectors.length(Vectors.cross(normal, normals.get(wall))) < INDEPENDENT;
                if (parallel && !mesh.facets().get(wall).step()) {
                    double way = Math.signum(Vectors.dot(normal, normals.get(wall)));
                    insets[step] = way * mesh.facets().get(wall).inset();
                    return true;
                }
            }
        }
        return false;
    }

    /** A cut line in a plane has no plane of its own to follow: where one end is fixed across it, the other end moves alike. */
    private boolean keepParallel(FacetMesh.Line line) {
        if (!line.shared()) {
            return false;
        }
        int one = line.forward().get(0);
        int other = line.backward().get(0);
        if (!alike(one, other) || takesOver(one, other, line)) {
            return false;
        }
        Point3 across = inward(one, line.a(), line.b());
        boolean fixedAtA = fixes(line.a(), across);
        if (fixedAtA == fixes(line.b(), across)) {
            return false;
        }
        Vertex fixed = fixedAtA ? line.a() : line.b();
        Vertex loose = fixedAtA ? line.b() : line.a();
        double move = Vectors.dot(sum(basis(everyPlane(fixed))), across);
        alongCuts.computeIfAbsent(loose, v -> Lists.mutable.empty()).add(new Condition(across, move));
        return true;
    }

    /**
     * An upright cut in a wall so near a corner that it lies within the thickness of what stands there moves on to where that
     * has its inner face: nothing is left indoors between them.
     */
    private boolean stopAtCorner(FacetMesh.Line line) {
        boolean upright = runs(line.a(), line.b(), Vectors.UP) || runs(line.b(), line.a(), Vectors.UP);
        if (!line.shared() || !upright) {
            return false;
        }
        int one = line.forward().get(0);
        if (line.facets().anySatisfy(f -> mesh.facets().get(f).step())
                || !alike(one, line.backward().get(0))) {
            return false;
        }
        Point3 across = inward(one, line.a(), line.b());
        return Lists.immutable
                .of(line.a(), line.b())
                .anySatisfy(cut -> !fixes(cut, across)
                        && (stopsAtCorner(cut, across) || stopsAtCorner(cut, Vectors.times(across, -1))));
    }

    private boolean stopsAtCorner(Vertex cut, Point3 direction) {
        double past = 0;
        for (int f : mesh.around(cut)) {
            ImmutableList<Vertex> outline = mesh.facets().get(f).outline();
            int n = outline.size();
            int i = outline.indexOf(cut);
            Vertex before = outline.get((i + n - 1) % n);
            Vertex after = outline.get((i + 1) % n);
            if (runs(cut, before, direction)) {
                Point3 corner = corner(f, (i + n - 1) % n).leaving();
                past = Math.min(past, Vectors.dot(Vectors.minus(corner, cut.point()), direction));
            }
            if (runs(cut, after, direction)) {
                Point3 corner = corner(f, (i + 1) % n).arriving();
                past = Math.min(past, Vectors.dot(Vectors.minus(corner, cut.point()), direction));
            }
        }
        if (past > -Corner.APART) {
            return false;
        }
        alongCuts.computeIfAbsent(cut, v -> Lists.mutable.empty()).add(new Condition(direction, past));
        stopped.add(cut);
        return true;
    }

    /** Whether a facet was cut within the thickness of what it meets, so that nothing need be left of it indoors. */
    public boolean endsInThickness(int facet) {
        return mesh.facets().get(facet).outline().anySatisfy(stopped::contains);
    }

    private static boolean runs(Vertex from, Vertex to, Point3 direction) {
        Point3 along = Vectors.unit(to.minus(from).point());
        return Vectors.dot(along, direction) > 0 && Vectors.length(Vectors.cross(along, direction)) < INDEPENDENT;
    }

    /** Whether the planes at a corner say how far it moves in a direction. */
    private boolean fixes(Vertex corner, Point3 direction) {
        MutableList<Condition> planes = everyPlane(corner);
        return basis(planes).size()
                == basis(planes.with(new Condition(direction, 0))).size();
    }

    private MutableList<Condition> everyPlane(Vertex corner) {
        MutableList<Condition> conditions =
                mesh.around(corner).collect(this::plane).toList();
        conditions.addAllIterable(takeOvers.getOrDefault(corner, Lists.mutable.empty()));
        conditions.addAllIterable(alongCuts.getOrDefault(corner, Lists.mutable.empty()));
        return conditions;
    }

    public Point3 normal(int facet) {
        return normals.get(facet);
    }

    /** Whether two facets face the same way; two that share an edge then lie in one plane. */
    public boolean alike(int one, int other) {
        Point3 a = normals.get(one);
        Point3 b = normals.get(other);
        return Vectors.dot(a, b) > 0 && Vectors.length(Vectors.cross(a, b)) < INDEPENDENT;
    }

    /**
     * The inner corner that belongs to an outer one.
     *
     * @param arriving where the side before the corner ends indoors
     * @param leaving where the side after it begins; elsewhere only where both sides run in one line along neighbours whose
     *     inner planes differ
     */
    public record Corner(Point3 arriving, Point3 leaving) {

        /** m, below which both are one. */
        private static final double APART = 1e-7;

        public boolean doubled() {
            return Vectors.length(Vectors.minus(arriving, leaving)) > APART;
        }
    }

    /** Inner corners of a facet, one for each corner of its split outline. */
    public ImmutableList<Corner> corners(int facet) {
        return mesh.facets().get(facet).outline().collectWithIndex((corner, i) -> corner(facet, i));
    }

    private Corner corner(int facet, int i) {
        ImmutableList<Vertex> outer = mesh.facets().get(facet).outline();
        int n = outer.size();
        Vertex corner = outer.get(i);
        ImmutableList<Condition> before = across(facet, outer.get((i + n - 1) % n), corner);
        ImmutableList<Condition> after = across(facet, corner, outer.get((i + 1) % n));
        return new Corner(moved(facet, corner, before, after), moved(facet, corner, after, before));
    }

    private Point3 moved(int facet, Vertex corner, ImmutableList<Condition> nearer, ImmutableList<Condition> other) {
        MutableList<Condition> conditions = Lists.mutable.of(plane(facet));
        conditions.addAllIterable(nearer);
        conditions.addAllIterable(other);
        conditions.addAllIterable(everyPlane(corner));
        return Vectors.plus(corner.point(), sum(basis(conditions)));
    }

    /** How far a facet's inner edge is set back from its outer edge, m, in its own plane; positive where shorter inside. */
    public double setBack(int facet, Vertex from, Vertex to) {
        MutableList<Condition> conditions = Lists.mutable.of(plane(facet));
        conditions.addAllIterable(across(facet, from, to));
        return Vectors.dot(sum(basis(conditions)), inward(facet, from, to));
    }

    /** Unit vector in a facet's plane, square to one of its directed sides, into the facet. */
    Point3 inward(int facet, Vertex from, Vertex to) {
        Point3 along = Vectors.unit(to.minus(from).point());
        return Vectors.unit(Vectors.cross(normals.get(facet), along));
    }

    /** Degrees between two facets measured indoors; {@code from → to} runs with the first. */
    public double angle(int first, int second, Vertex from, Vertex to) {
        if (alike(first, second)) {
            return Vectors.STRAIGHT;
        }
        Point3 a = inward(first, from, to);
        Point3 b = inward(second, to, from);
        double between = Math.toDegrees(Math.atan2(Vectors.length(Vectors.cross(a, b)), Vectors.dot(a, b)));
        return Vectors.dot(b, normals.get(first)) < 0 ? between : 360 - between;
    }

    private Condition plane(int facet) {
        return new Condition(normals.get(facet), -insets[facet]);
    }

    private ImmutableList<Condition> across(int facet, Vertex from, Vertex to) {
        FacetMesh.Line line = mesh.line(facet, from, to);
        MutableList<Condition> conditions = Lists.mutable.empty();
        for (int other : line.facets()) {
            if (other == facet) {
                continue;
            }
            if (alike(facet, other)) {
                if (takesOver(facet, other, line)) {
                    conditions.add(takeOver(facet, other, line));
                }
            } else {
                conditions.add(plane(other));
            }
        }
        return conditions.toImmutable();
    }

    private boolean takesOver(int one, int other, FacetMesh.Line line) {
        return mesh.facets().get(one).stacked(mesh.facets().get(other))
                && line.a().z() == line.b().z()
                && alike(one, other);
    }

    /** Walls of two build-ups take over from one another at the floor, indoors as outdoors. */
    private Condition takeOver(int one, int other, FacetMesh.Line line) {
        Facet first = mesh.facets().get(one);
        Facet second = mesh.facets().get(other);
        int below = Math.min(first.traits().level(), second.traits().level());
        boolean atFloor = !first.isAs(second)
                && line.a().z() == Vertex.height(storeys.get(below + 1).floor());
        return new Condition(Vectors.UP, atFloor ? 0 : storeys.get(below).takeOver());
    }

    /** The first independent conditions, in their order, made square to one another (Gram and Schmidt). */
    private static MutableList<Condition> basis(MutableList<Condition> conditions) {
        MutableList<Condition> basis = Lists.mutable.empty();
        for (Condition condition : conditions) {
            Point3 rest = condition.normal();
            double move = condition.move();
            for (Condition taken : basis) {
                double share = Vectors.dot(condition.normal(), taken.normal());
                rest = Vectors.minus(rest, Vectors.times(taken.normal(), share));
                move -= share * taken.move();
            }
            double left = Vectors.length(rest);
            if (left > INDEPENDENT) {
                basis.add(new Condition(Vectors.times(rest, 1 / left), move / left));
            }
        }
        return basis;
    }

    /** The least move that meets square conditions. */
    private static Point3 sum(MutableList<Condition> basis) {
        return basis.injectInto(
                Vectors.ZERO, (sum, taken) -> Vectors.plus(sum, Vectors.times(taken.normal(), taken.move())));
    }
}
