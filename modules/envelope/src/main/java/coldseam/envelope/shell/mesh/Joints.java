package coldseam.envelope.shell.mesh;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.JunctionKind;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Vertex;
import coldseam.envelope.shell.plan.StepZones;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * All junctions between facets.
 *
 * <p>A step between two outer planes is a strip with two long edges, but one junction: a change of wall thickness from the
 * wall on its one side to the wall on its other; a jog of floors, decks or flat roofs of unequal thickness likewise. What is no
 * longer than the house's widest step, such as the step's ends, belongs to the corner it lies in and is no junction.
 *
 * @param widestStep m, of the house
 */
public record Joints(
        FacetMesh mesh, InnerPlanes planes, ImmutableList<ImmutableList<InnerPlanes.Corner>> inner, double widestStep) {

    /** m, by which snapping may move a corner: lengths that differ by less are alike. */
    private static final double ROUNDING = 3e-4;

    /** z of a unit normal. */
    private static final double LEVEL = 0.999;

    public ImmutableList<Joint> all() {
        JunctionRules rules = new JunctionRules(mesh, planes);
        MutableList<Joint> pieces = Lists.mutable.empty();
        MutableList<Joint> atSteps = Lists.mutable.empty();
        for (FacetMesh.Line line : mesh.lines()) {
            if (!line.shared()) {
                continue;
            }
            int one = line.forward().get(0);
            int other = line.backward().get(0);
            Facet a = mesh.facets().get(one);
            Facet b = mesh.facets().get(other);
            if (a.missing() || b.missing()) {
                continue;
            }
            if (a.step() != b.step()) {
                boolean turn = a.step();
                if (stepped(turn ? other : one, turn ? one : other)) {
                    atSteps.add(
                            turn
                                    ? joint(JunctionKind.WALL_THICKNESS_CHANGE, other, one, line.b(), line.a())
                                    : joint(JunctionKind.WALL_THICKNESS_CHANGE, one, other, line.a(), line.b()));
                }
            } else if (!a.step()) {
                Optional<JunctionRules.Found> found = rules.find(one, other, line.a(), line.b());
                found.ifPresent(f -> pieces.add(
                        f.first() == one
                                ? joint(f.kind(), one, other, line.a(), line.b())
                                : joint(f.kind(), other, one, line.b(), line.a())));
            }
        }
        ImmutableList<Integer> whole = wholes();
        MutableList<Joint> joints = merge(pieces, whole::get);
        joints.addAllIterable(overSteps(merge(atSteps.collect(this::ofWholeStep), facet -> facet)));
        return joints.sortThisBy(joint -> joint.kind().ordinal()).toImmutable();
    }

    /** Whether a step parts a facet from its like: a wall, or a level face beside a jog of level faces. */
    private boolean stepped(int face, int step) {
        return mesh.facets().get(face).use() == Body.Use.WALL
                || Math.abs(planes.normal(face).z()) > LEVEL
                        && Math.abs(planes.normal(step).z()) < 1 - LEVEL;
    }

    /** The same joint, its step named by the first of all step facets that run on from one another in one plane. */
    private Joint ofWholeStep(Joint joint) {
        MutableList<Integer> step = Lists.mutable.of(joint.second());
        for (int i = 0; i < step.size(); i++) {
            for (FacetMesh.Line line : mesh.lines()) {
                if (line.shared() && line.facets().contains(step.get(i))) {
                    int here = step.get(i);
                    line.facets()
                            .select(f -> mesh.facets().get(f).step() && !step.contains(f) && planes.alike(f, here))
                            .forEach(step::add);
                }
            }
        }
        return joint.across(step.min());
    }

    private Joint joint(JunctionKind kind, int first, int second, Vertex from, Vertex to) {
        ImmutableList<Vertex> outline = mesh.facets().get(first).outline();
        int i = outline.indexOf(from);
        while (!outline.get((i + 1) % outline.size()).equals(to)) {
            i = (i + 1) % outline.size();
        }
        Point3 a = inner.get(first).get(i).leaving();
        Point3 b = inner.get(first).get((i + 1) % outline.size()).arriving();
        Point3 along = Vectors.unit(to.minus(from).point());
        return new Joint(
                kind,
                first,
                second,
                from,
                to,
                Vertex.metres(1) * to.minus(from).length(),
                Vectors.dot(Vectors.minus(b, a), along),
                planes.angle(first, second, from, to),
                planes.setBack(first, from, to),
                planes.setBack(second, to, from));
    }

    /**
     * For each facet the first of those that only the plan's cuts part from it. A terrace all round is cut open where its
     * inner ring lies westernmost; that is our own doing, and a junction along its rim is one however the house is turned.
     */
    private ImmutableList<Integer> wholes() {
        MutableList<Integer> whole =
                mesh.facets().collectWithIndex((facet, f) -> f).toList();
        boolean changed = true;
        while (changed) {
            changed = false;
            for (FacetMesh.Line line : mesh.lines()) {
                if (line.shared()
                        && merelyCut(line.forward().get(0), line.backward().get(0))) {
                    int one = line.forward().get(0);
                    int other = line.backward().get(0);
                    int least = Math.min(whole.get(one), whole.get(other));
                    changed |= whole.set(one, least) != least;
                    changed |= whole.set(other, least) != least;
                }
            }
        }
        return whole.toImmutable();
    }

    /** Surfaces of an explicit body are the user's own and stay apart; so do walls, which only their storeys part. */
    private boolean merelyCut(int one, int other) {
        Facet a = mesh.facets().get(one);
        Facet b = mesh.facets().get(other);
        return a.use() != Body.Use.WALL
                && a.use() == b.use()
                && a.traits().level() >= 0
                && a.traits().equals(b.traits())
                && a.assembly().equals(b.assembly())
                && a.exposure().equals(b.exposure())
                && planes.alike(one, other);
    }

    /** Makes pieces that run on from one another one; each looks only among those that begin or end where it does. */
    private static MutableList<Joint> merge(MutableList<Joint> pieces, IntUnaryOperator whole) {
        Map<Vertex, MutableList<Joint>> beginning = new TreeMap<>();
        Map<Vertex, MutableList<Joint>> ending = new TreeMap<>();
        pieces.forEach(piece -> {
            beginning.computeIfAbsent(piece.from(), v -> Lists.mutable.empty()).add(piece);
            ending.computeIfAbsent(piece.to(), v -> Lists.mutable.empty()).add(piece);
        });
        MutableList<Joint> merged = Lists.mutable.empty();
        for (Joint piece : pieces) {
            if (!take(piece, beginning, ending)) {
                continue;
            }
            Joint joint = piece;
            boolean grown = true;
            while (grown) {
                Joint sofar = joint;
                Joint after = beginning
                        .getOrDefault(sofar.to(), Lists.mutable.empty())
                        .detect(next -> sofar.continues(next, whole));
                Joint before = ending.getOrDefault(sofar.from(), Lists.mutable.empty())
                        .detect(next -> next.continues(sofar, whole));
                if (after != null) {
                    take(after, beginning, ending);
                    joint = sofar.joined(after);
                } else if (before != null) {
                    take(before, beginning, ending);
                    joint = before.joined(sofar);
                }
                grown = after != null || before != null;
            }
            merged.add(joint);
        }
        return merged;
    }

    /** Takes a piece from those that wait; false where it is taken already. */
    private static boolean take(
            Joint piece, Map<Vertex, MutableList<Joint>> beginning, Map<Vertex, MutableList<Joint>> ending) {
        ending.get(piece.to()).remove(piece);
        return beginning.get(piece.from()).remove(piece);
    }

    /** Pairs the edges on both sides of each step: the lower or earlier wall first. */
    private MutableList<Joint> overSteps(MutableList<Joint> edges) {
        MutableList<Joint> joints = Lists.mutable.empty();
        for (Joint edge : edges) {
            MutableList<Joint> across = edges.select(other -> other.second() == edge.second()
                    && other.first() != edge.first()
                    && planes.alike(edge.first(), other.first())
                    && opposite(edge, other));
            if (across.isEmpty() && mesh.facets().get(edge.first()).use() == Body.Use.WALL) {
                joints.add(edge);
            }
            across.select(other -> before(edge, other))
                    .forEach(other -> kind(edge, other).ifPresent(found -> joints.add(part(found, edge, other))));
        }
        return joints.select(joint -> joint.externalLength() > widestStep + ROUNDING);
    }

    /**
     * The kind of junction over a step. The walls of two storeys of one build-up that are a hair out of line still meet in
     * an intermediate floor, and a cellar's wall in the foundation's top, however wide the step.
     */
    private Optional<JunctionRules.Found> kind(Joint edge, Joint other) {
        Optional<JunctionRules.Found> found =
                new JunctionRules(mesh, planes).find(edge.first(), other.first(), edge.from(), edge.to());
        Facet a = mesh.facets().get(edge.first());
        Facet b = mesh.facets().get(other.first());
        boolean hair = a.builtAs(b) && apart(edge, other) <= StepZones.HAIR;
        boolean party = a.faces(Exposure.Kind.PARTY) && b.faces(Exposure.Kind.PARTY);
        if (hair || party || a.use() != Body.Use.WALL) {
            return found;
        }
        return Optional.of(found.orElseGet(
                () -> new JunctionRules.Found(JunctionKind.WALL_THICKNESS_CHANGE, edge.first(), other.first())));
    }

    /** m between the lines of two edges. */
    private static double apart(Joint edge, Joint other) {
        Vertex one = edge.to().minus(edge.from());
        return Vertex.metres(1) * other.from().minus(edge.from()).cross(one).length() / one.length();
    }

    private boolean before(Joint edge, Joint other) {
        int level = mesh.facets().get(edge.first()).traits().level();
        int otherLevel = mesh.facets().get(other.first()).traits().level();
        return level != otherLevel
                ? level < otherLevel
                : !new JunctionRules(mesh, planes).isLater(edge.first(), other.first());
    }

    /** m along an edge to the foot of a point. */
    private static double place(Joint edge, Vertex point) {
        Vertex along = edge.to().minus(edge.from());
        return Vertex.metres(1) * point.minus(edge.from()).dot(along) / along.length();
    }

    /** Whether two edges of one step and of walls that face alike lie across it from one another: they run opposite ways. */
    private boolean opposite(Joint edge, Joint other) {
        double overlap =
                Math.min(place(edge, other.from()), edge.externalLength()) - Math.max(place(edge, other.to()), 0);
        return apart(edge, other) < widestStep + ROUNDING && overlap > 0;
    }

    /** The stretch two edges run along together; at their ends, up to a step's width further along the longer. */
    private Joint part(JunctionRules.Found found, Joint edge, Joint other) {
        double start = end(0, place(edge, other.to()), -1);
        double end = end(edge.externalLength(), place(edge, other.from()), 1);
        Point3 along = Vectors.unit(edge.to().minus(edge.from()).point());
        Vertex from = Vertex.of(Vectors.plus(edge.from().point(), Vectors.times(along, start)));
        Vertex to = Vertex.of(Vectors.plus(edge.from().point(), Vectors.times(along, end)));
        // What goes on along the other wall past this one's end has no inner face of this one's.
        double share = (Math.min(end, edge.externalLength()) - Math.max(start, 0)) / edge.externalLength();
        boolean turn = found.first() != edge.first();
        return new Joint(
                found.kind(),
                found.first(),
                found.second(),
                turn ? to : from,
                turn ? from : to,
                end - start,
                share * edge.internalLength(),
                Vectors.STRAIGHT,
                (turn ? other : edge).firstSetBack(),
                (turn ? edge : other).firstSetBack());
    }

    private double end(double one, double other, int outwards) {
        boolean corner = Math.abs(one - other) < widestStep + ROUNDING;
        return (outwards > 0) == corner ? Math.max(one, other) : Math.min(one, other);
    }
}
