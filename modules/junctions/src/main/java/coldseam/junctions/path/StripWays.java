package coldseam.junctions.path;

import coldseam.conduction.Point;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionPlan;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.MutableIntList;
import org.eclipse.collections.api.set.primitive.MutableIntSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.IntLists;
import org.eclipse.collections.impl.factory.primitive.IntSets;

/** The ways from some faces of a section to others, through faces that may be used and along edges between the rest. */
final class StripWays {

    /** What a metre inside a face weighs against a metre of strip: only enough to keep the way short. */
    private static final double INSIDE = 1e-3;

    private final IntPredicate usable;
    private final ImmutableList<Integer> to;
    private final MutableList<Point> nodes = Lists.mutable.empty();
    private final Map<Point, Integer> numbers = new HashMap<>();
    private final MutableList<MutableIntList> onFace = Lists.mutable.empty();
    private final MutableList<MutableIntList> facesOf = Lists.mutable.empty();
    private final MutableList<MutableList<Strip>> strips = Lists.mutable.empty();
    private final ImmutableList<Integer> from;
    private final double longest;

    /** Middles of edges where two usable faces touch. */
    private final MutableIntSet portals = IntSets.mutable.empty();

    /** An edge along which a strip may run, to another node. */
    private record Strip(int to, double length, boolean barred) {}

    /** Whether strips may be used. */
    enum Strips {
        NONE,
        ALONG_EDGES,
        /** Also along edges that are barred. */
        ACROSS_THE_BAR
    }

    /**
     * A straight step of a way.
     *
     * @param face it runs in; {@link PlanarSubdivision#NOTHING} for a strip
     */
    record Step(Point from, Point to, int face) {}

    /**
     * A way.
     *
     * @param firstFace where it begins
     * @param lastFace where it arrives
     * @param steps between them; none where both are one
     */
    record Way(int firstFace, int lastFace, ImmutableList<Step> steps) {

        /** The faces it runs in, in its order. */
        ImmutableList<Integer> faces() {
            return steps.collect(Step::face)
                    .select(face -> face != PlanarSubdivision.NOTHING)
                    .newWith(lastFace)
                    .distinct();
        }

        /** Each run of strip, as a line. */
        ImmutableList<ImmutableList<Point>> strips() {
            MutableList<ImmutableList<Point>> runs = Lists.mutable.empty();
            MutableList<Point> run = Lists.mutable.empty();
            for (Step step : steps) {
                if (step.face() == PlanarSubdivision.NOTHING) {
                    if (run.isEmpty()) {
                        run.add(step.from());
                    }
                    run.add(step.to());
                } else if (run.notEmpty()) {
                    runs.add(run.toImmutable());
                    run.clear();
                }
            }
            if (run.notEmpty()) {
                runs.add(run.toImmutable());
            }
            return runs.toImmutable();
        }
    }

    /**
     * @param usable faces
     * @param from faces it may begin in
     * @param to faces it must arrive in
     * @param barred edges that no strip may use
     * @param longest m, of all strips of a way together
     */
    StripWays(
            SectionPlan plan,
            IntPredicate usable,
            ImmutableList<Integer> from,
            ImmutableList<Integer> to,
            Predicate<PlanarSubdivision.Edge> barred,
            double longest) {
        this.longest = longest;
        this.usable = usable;
        this.from = from;
        this.to = to;
        plan.seen().faces().forEach(face -> onFace.add(IntLists.mutable.empty()));
        for (PlanarSubdivision.Edge edge : plan.seen().edges()) {
            int a = node(edge.from());
            int b = node(edge.to());
            boolean bar = barred.test(edge);
            strips.get(a).add(new Strip(b, edge.length(), bar));
            strips.get(b).add(new Strip(a, edge.length(), bar));
            lieOn(edge.left(), a, b);
            lieOn(edge.right(), a, b);
            if (usable(edge.left()) && usable(edge.right())) {
                // Where two faces touch, the line goes through the middle; a common corner does not join them.
                int portal = node(edge.middle());
                lieOn(edge.left(), portal, portal);
                lieOn(edge.right(), portal, portal);
                portals.add(portal);
            }
        }
    }

    private boolean usable(int face) {
        return face != PlanarSubdivision.NOTHING && usable.test(face);
    }

    private int node(Point at) {
        return numbers.computeIfAbsent(at, none -> {
            nodes.add(at);
            strips.add(Lists.mutable.empty());
            facesOf.add(IntLists.mutable.empty());
            return nodes.size() - 1;
        });
    }

    private void lieOn(int face, int a, int b) {
        if (usable(face)) {
            for (int node : new int[] {a, b}) {
                if (!facesOf.get(node).contains(face)) {
                    facesOf.get(node).add(face);
                    onFace.get(face).add(node);
                }
            }
        }
    }

    /** The way with the least of strips. */
    Optional<Way> way(Strips allowed) {
        return from.asLazy()
                .detectOptional(to::contains)
                .map(both -> new Way(both, both, Lists.immutable.empty()))
                .or(() -> new Search(allowed).way());
    }

    /**
     * Dijkstra's. A state is a node together with the face it was reached in, so that a common corner of two faces is passed only
     * by a strip, of no length: state = node * (faces + 1) + face + 1, face -1 on a strip.
     */
    private final class Search {

        private final Strips allowed;
        private final int wide = onFace.size() + 1;
        private final double[] cost = new double[nodes.size() * wide];
        private final double[] taped = new double[cost.length];
        private final int[] before = new int[cost.length];
        private final PriorityQueue<double[]> queue =
                new PriorityQueue<>((a, b) -> a[0] != b[0] ? Double.compare(a[0], b[0]) : Double.compare(a[1], b[1]));

        Search(Strips allowed) {
            this.allowed = allowed;
            Arrays.fill(cost, Double.POSITIVE_INFINITY);
            Arrays.fill(before, -1);
        }

        Optional<Way> way() {
            for (int face : from) {
                onFace.get(face).forEach(node -> {
                    int state = node * wide + face + 1;
                    cost[state] = 0;
                    queue.add(new double[] {0, state});
                });
            }
            while (!queue.isEmpty()) {
                double[] top = queue.poll();
                int state = (int) top[1];
                if (top[0] <= cost[state]) {
                    int face = state % wide - 1;
                    if (face >= 0 && to.contains(face)) {
                        return Optional.of(way(state));
                    }
                    goOn(state, state / wide, face);
                }
            }
            return Optional.empty();
        }

        private void goOn(int state, int node, int face) {
            if (face >= 0) {
                onFace.get(face)
                        .forEach(next -> relax(state, next * wide + face + 1, INSIDE * distance(node, next), 0));
            } else {
                for (Strip strip : strips.get(node)) {
                    if (!strip.barred || allowed == Strips.ACROSS_THE_BAR) {
                        relax(state, strip.to * wide, strip.length, strip.length);
                    }
                }
            }
            if (face < 0 || portals.contains(node)) {
                facesOf.get(node).forEach(other -> relax(state, node * wide + other + 1, 0, 0));
            } else if (allowed != Strips.NONE) {
                relax(state, node * wide, 0, 0);
            }
        }

        private void relax(int state, int next, double length, double tape) {
            double total = cost[state] + length;
            double strip = taped[state] + tape;
            if (total < cost[next] && strip <= longest) {
                cost[next] = total;
                taped[next] = strip;
                before[next] = state;
                queue.add(new double[] {total, next});
            }
        }

        private Way way(int last) {
            MutableList<Step> steps = Lists.mutable.empty();
            int at = last;
            while (before[at] >= 0) {
                int previous = before[at];
                if (previous / wide != at / wide) {
                    steps.add(new Step(nodes.get(previous / wide), nodes.get(at / wide), at % wide - 1));
                }
                at = previous;
            }
            if (steps.isEmpty()) {
                Point there = nodes.get(last / wide);
                steps.add(new Step(there, there, last % wide - 1));
            }
            return new Way(at % wide - 1, last % wide - 1, steps.reverseThis().toImmutable());
        }
    }

    private double distance(int a, int b) {
        return Math.hypot(
                nodes.get(a).x() - nodes.get(b).x(),
                nodes.get(a).y() - nodes.get(b).y());
    }
}
