package coldseam.junctions.path;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.section.Shapes;
import coldseam.junctions.section.Surroundings;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import org.eclipse.collections.api.RichIterable;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.MutableIntList;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.DoubleLists;
import org.eclipse.collections.impl.factory.primitive.IntLists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * Finds the way from indoors to outdoors along which the integral of ds/λ is least.
 *
 * <p>In a piecewise constant section the way is a chain of straight pieces that bend where they pass from one conductivity to
 * another, as light does (Snell). It is sought on points along the triangles' edges, from indoors and from outdoors ({@link LeastWays}),
 * which tells for each point the least of the ways that lead over it. The points are coarse, so the least of those ways need
 * not be the least of all: others that come near it, each away from those before, are starts too. Along each start points are
 * added closer and closer to where it crosses, until its resistance changes by less than a millionth; the least counts. What is
 * found is the resistance of a real way, never less than the least one, and beside the points' last spacing a few
 * hundred-thousandths more at most where the starts hold it.
 */
public final class WeakestPaths {

    private static final double SPACING = 0.04;
    private static final int MOST_POINTS = 12;
    private static final int CLOSER_POINTS = 4;
    private static final int MOST_ROUNDS = 8;
    private static final double SETTLED = 1e-6;

    /** Ways that cost no more than so many times the least on the coarse points are starts (judgement). */
    private static final double NEARLY = 1.03;

    private static final int MOST_STARTS = 5;
    private static final double TOUCHING = 1e-6;

    private final MutableList<Coordinate> nodes = Lists.mutable.empty();
    private final Map<Coordinate, Integer> index = new HashMap<>();
    private final MutableList<Edge> edges = Lists.mutable.empty();
    private final MutableList<Cell> cells = Lists.mutable.empty();
    private final int lasting;

    /** The cells that each lasting node lies on. */
    private final MutableList<MutableList<Cell>> around;

    /** A triangle's edge; which nodes lie on it, how many triangles share it, and what it faces. */
    private static final class Edge {
        private final Coordinate from;
        private final Coordinate to;
        private final MutableIntList on = IntLists.mutable.empty();
        private int shared;
        private boolean indoor;
        private boolean outdoor;
        private double spacing;

        /** Of its lasting points, as a share of its length. */
        private double coarse;

        private int lasting;

        private Edge(Coordinate from, Coordinate to) {
            this.from = from;
            this.to = to;
        }

        private Coordinate at(double share) {
            return new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
        }
    }

    /** What tells an edge from another. */
    private record Ends(Coordinate first, Coordinate second) {}

    private record Cell(ImmutableList<Edge> edges, double conductivity) {}

    private WeakestPaths(PathQuestion question) {
        Map<Ends, Edge> known = new LinkedHashMap<>();
        for (Triangles.Triangle triangle :
                Triangles.of(question.faces(), question.boundaries()).triangles()) {
            ImmutableList<Edge> three = Lists.immutable.of(
                    edge(known, triangle.a(), triangle.b()),
                    edge(known, triangle.b(), triangle.c()),
                    edge(known, triangle.c(), triangle.a()));
            three.each(each -> each.shared++);
            cells.add(new Cell(three, triangle.conductivity()));
        }
        edges.addAll(known.values());
        for (Edge edge : edges) {
            if (edge.shared == 1) {
                face(edge, question);
            }
            int parts = Math.min(MOST_POINTS, (int) (edge.from.distance(edge.to) / SPACING)) + 1;
            edge.coarse = 1.0 / parts;
            edge.spacing = edge.coarse;
            for (int i = 0; i <= parts; i++) {
                put(edge, i * edge.coarse);
            }
            edge.lasting = edge.on.size();
        }
        lasting = nodes.size();
        around = around();
    }

    private static Edge edge(Map<Ends, Edge> known, Coordinate a, Coordinate b) {
        boolean ordered = a.compareTo(b) <= 0;
        Coordinate first = ordered ? a : b;
        Coordinate second = ordered ? b : a;
        return known.computeIfAbsent(new Ends(first, second), none -> new Edge(first, second));
    }

    private static void face(Edge edge, PathQuestion question) {
        Coordinate middle = edge.at(0.5);
        for (Boundary boundary : question.boundaries()) {
            for (int i = 0; i + 1 < boundary.path().size(); i++) {
                LineSegment part = new LineSegment(
                        Shapes.coordinate(boundary.path().get(i)),
                        Shapes.coordinate(boundary.path().get(i + 1)));
                if (part.distance(middle) < TOUCHING) {
                    edge.indoor |= boundary.environment().equals(Surroundings.INDOOR);
                    edge.outdoor |= question.colder().contains(boundary.environment());
                }
            }
        }
    }

    private void put(Edge edge, double share) {
        Coordinate place = share <= 0 ? edge.from : share >= 1 ? edge.to : edge.at(share);
        int node = index.computeIfAbsent(place, none -> {
            nodes.add(place);
            return nodes.size() - 1;
        });
        if (!edge.on.contains(node)) {
            edge.on.add(node);
        }
    }

    /**
     * The weakest path.
     *
     * @throws DetailDoesNotFit where no way leads from indoors to outdoors
     */
    public static WeakestPath of(PathQuestion question) {
        WeakestPaths search = new WeakestPaths(question);
        Way weakest = null;
        for (Way start : search.starts()) {
            Way way = search.refined(start);
            if (weakest == null || way.resistance() < weakest.resistance() * (1 - SETTLED)) {
                weakest = way;
            }
        }
        double neighbour = question.neighbour();
        return new WeakestPath(
                straightened(weakest.places()),
                weakest.resistance(),
                neighbour,
                Math.min(1, weakest.resistance() / neighbour));
    }

    private record Way(ImmutableList<Integer> nodes, ImmutableList<Coordinate> places, double resistance) {}

    /** The least way on the coarse points, then those that come near it, each away from the ones before. */
    private ImmutableList<Way> starts() {
        LeastWays ways = ways(cells);
        boolean[] indoor = on(cells, edge -> edge.indoor);
        boolean[] outdoor = on(cells, edge -> edge.outdoor);
        LeastWays.Reach in = ways.reach(indoor, outdoor, NEARLY);
        if (in.end() < 0) {
            throw DetailDoesNotFit.of("no way leads from indoors to outdoors through what is drawn;"
                    + " join its parts, or give outdoors a boundary");
        }
        LeastWays.Reach out = ways.reach(outdoor, indoor, NEARLY);
        double most = NEARLY * in.least()[in.end()];
        boolean[] passed = new boolean[nodes.size()];
        MutableList<Way> starts = Lists.mutable.empty();
        for (int node = in.end(); node >= 0 && starts.size() < MOST_STARTS; node = next(in, out, passed, most)) {
            ImmutableList<Integer> chain =
                    in.to(node).newWithAll(out.to(node).toReversed().drop(1));
            starts.add(way(chain, in.least()[node] + out.least()[node]));
            chain.flatCollect(around::get)
                    .forEach(cell -> cell.edges().forEach(edge -> edge.on.each(each -> passed[each] = true)));
        }
        return starts.toImmutable();
    }

    /** The node that the least way leads over, of those no start has come by; negative where it costs too much. */
    private static int next(LeastWays.Reach in, LeastWays.Reach out, boolean[] passed, double most) {
        int found = -1;
        double least = most;
        for (int node = 0; node < passed.length; node++) {
            double through = in.least()[node] + out.least()[node];
            if (!passed[node] && through < least) {
                least = through;
                found = node;
            }
        }
        return found;
    }

    /** A start, followed on closer and closer points among the triangles beside it. */
    private Way refined(Way start) {
        ImmutableList<Cell> beside = start.nodes()
                .flatCollect(around::get)
                .distinct()
                .flatCollect(Cell::edges)
                .flatCollect(edge -> edge.on.collect(around::get))
                .distinct()
                .flatCollect(each -> each)
                .distinct();
        ImmutableList<Edge> touched = beside.flatCollect(Cell::edges).distinct();
        Way way = start;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double last = way.resistance();
            closer(way, touched);
            LeastWays.Reach reach =
                    ways(beside).reach(on(beside, edge -> edge.indoor), on(beside, edge -> edge.outdoor), 1);
            way = way(reach.to(reach.end()), reach.least()[reach.end()]);
            if (round > 1 && last - way.resistance() < SETTLED * last) {
                break;
            }
        }
        forget(touched);
        touched.forEach(edge -> edge.spacing = edge.coarse);
        return way;
    }

    /** The cells that each node lies on. */
    private MutableList<MutableList<Cell>> around() {
        MutableList<MutableList<Cell>> around = Lists.mutable.empty();
        nodes.each(each -> around.add(Lists.mutable.empty()));
        for (Cell cell : cells) {
            for (Edge edge : cell.edges()) {
                for (int i = 0; i < edge.on.size(); i++) {
                    MutableList<Cell> on = around.get(edge.on.get(i));
                    if (on.isEmpty() || on.getLast() != cell) {
                        on.add(cell);
                    }
                }
            }
        }
        return around;
    }

    /** The ways through some cells. */
    private LeastWays ways(RichIterable<Cell> some) {
        return new LeastWays(
                nodes.toImmutable(),
                some.collect(WeakestPaths::on, Lists.mutable.empty()).toImmutable(),
                some.collectDouble(Cell::conductivity, DoubleLists.mutable.empty())
                        .toImmutable());
    }

    private static int[] on(Cell cell) {
        MutableIntList on = IntLists.mutable.empty();
        cell.edges().each(edge -> on.addAll(edge.on));
        return on.distinct().toArray();
    }

    /** Which nodes lie on edges of some cells. */
    private boolean[] on(Iterable<Cell> some, Predicate<Edge> which) {
        boolean[] on = new boolean[nodes.size()];
        for (Cell cell : some) {
            cell.edges().select(which::test).each(edge -> edge.on.each(node -> on[node] = true));
        }
        return on;
    }

    private Way way(ImmutableList<Integer> chain, double resistance) {
        return new Way(chain, chain.collect(nodes::get), resistance);
    }

    /** Takes all but the lasting points off edges. */
    private void forget(Iterable<Edge> some) {
        for (int node = nodes.size() - 1; node >= lasting; node--) {
            index.remove(nodes.remove(node));
        }
        for (Edge edge : some) {
            while (edge.on.size() > edge.lasting) {
                edge.on.removeAtIndex(edge.on.size() - 1);
            }
        }
    }

    /** Moves the additional points of the edges the way touches to around where it touches them. */
    private void closer(Way way, ImmutableList<Edge> some) {
        ImmutableList<Coordinate> places = way.places();
        forget(some);
        for (Edge edge : some) {
            LineSegment segment = new LineSegment(edge.from, edge.to);
            ImmutableList<Coordinate> touched = places.select(place -> segment.distance(place) < 1e-9);
            if (touched.isEmpty()) {
                continue;
            }
            double length = edge.from.distance(edge.to);
            // Where the way follows an edge, only its first and last place on it matter.
            touched = touched.size() > 2 ? Lists.immutable.of(touched.getFirst(), touched.getLast()) : touched;
            for (Coordinate place : touched) {
                double share = place.distance(edge.from) / length;
                for (int i = -CLOSER_POINTS; i <= CLOSER_POINTS; i++) {
                    double closer = share + edge.spacing * i / (CLOSER_POINTS + 1);
                    if (closer > 0 && closer < 1) {
                        put(edge, closer);
                    }
                }
            }
            edge.spacing /= CLOSER_POINTS - 1;
        }
    }

    private static ImmutableList<Point> straightened(ImmutableList<Coordinate> places) {
        MutableList<Coordinate> kept = Lists.mutable.empty();
        for (Coordinate place : places) {
            while (kept.size() > 1 && straight(kept.get(kept.size() - 2), kept.getLast(), place)) {
                kept.remove(kept.size() - 1);
            }
            kept.add(place);
        }
        return kept.collect(Shapes::point).toImmutable();
    }

    private static boolean straight(Coordinate a, Coordinate b, Coordinate c) {
        return new LineSegment(a, c).distance(b) < 1e-5;
    }
}
