package coldseam.junctions.path;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.junctions.DetailDoesNotFit;
import coldseam.junctions.WeakestPath;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import coldseam.junctions.section.Surroundings;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.PriorityQueue;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * Finds the way from indoors to outdoors along which the integral of ds/λ is least.
 *
 * <p>In a piecewise constant section the way is a chain of straight pieces that bend where they pass from one conductivity to
 * another, as light does (Snell). It is sought on points along the triangles' edges (Dijkstra); then points are added closer
 * and closer to where the way crosses, until its resistance changes by less than a millionth. What is found is the
 * resistance of a real way, never less than the least one. Beside the points' last spacing, a few hundred-thousandths, it is more
 * where the first, coarse search takes one of two ways that are nearly alike: up to 0.7 % in the sections that were searched apart
 * with a finer spacing.
 */
public final class WeakestPaths {

    private static final double SPACING = 0.04;
    private static final int MOST_POINTS = 12;
    private static final int CLOSER_POINTS = 4;
    private static final int MOST_ROUNDS = 8;
    private static final double SETTLED = 1e-6;
    private static final double TOUCHING = 1e-6;

    private final MutableList<Coordinate> nodes = Lists.mutable.empty();
    private final Map<Coordinate, Integer> index = new HashMap<>();
    private final MutableList<Edge> edges = Lists.mutable.empty();
    private final MutableList<Cell> cells = Lists.mutable.empty();
    private final int lasting;

    /** A triangle's edge; which nodes lie on it, how many triangles share it, and what it faces. */
    private static final class Edge {
        private final Coordinate from;
        private final Coordinate to;
        private final MutableList<Integer> on = Lists.mutable.empty();
        private int shared;
        private boolean indoor;
        private boolean outdoor;
        private double spacing;
        private int lasting;

        private Edge(Coordinate from, Coordinate to) {
            this.from = from;
            this.to = to;
        }

        private Coordinate at(double share) {
            return new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
        }
    }

    private record Cell(ImmutableList<Edge> edges, double conductivity) {}

    private WeakestPaths(Composition composition) {
        Map<String, Edge> known = new LinkedHashMap<>();
        for (Triangles.Triangle triangle : Triangles.of(
                        composition.faces(), composition.heatFlow().boundaries())
                .triangles()) {
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
                face(edge, composition);
            }
            int parts = Math.min(MOST_POINTS, (int) (edge.from.distance(edge.to) / SPACING)) + 1;
            edge.spacing = 1.0 / parts;
            for (int i = 0; i <= parts; i++) {
                put(edge, i * edge.spacing);
            }
            edge.lasting = edge.on.size();
        }
        lasting = nodes.size();
    }

    private static Edge edge(Map<String, Edge> known, Coordinate a, Coordinate b) {
        boolean ordered = a.compareTo(b) <= 0;
        Coordinate first = ordered ? a : b;
        Coordinate second = ordered ? b : a;
        String key = first.x + " " + first.y + " " + second.x + " " + second.y;
        return known.computeIfAbsent(key, none -> new Edge(first, second));
    }

    private static void face(Edge edge, Composition composition) {
        Coordinate middle = edge.at(0.5);
        for (Boundary boundary : composition.heatFlow().boundaries()) {
            for (int i = 0; i + 1 < boundary.path().size(); i++) {
                LineSegment part = new LineSegment(
                        Shapes.coordinate(boundary.path().get(i)),
                        Shapes.coordinate(boundary.path().get(i + 1)));
                if (part.distance(middle) < TOUCHING) {
                    edge.indoor |= boundary.environment().equals(Surroundings.INDOOR);
                    edge.outdoor |= colder(boundary.environment(), composition.surroundings());
                }
            }
        }
    }

    private static boolean colder(String environment, Surroundings surroundings) {
        return surroundings.spaces().anySatisfy(each -> each.name().equals(environment) && each.factor() > 0);
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

    /** The weakest path of a composition. */
    public static WeakestPath of(Composition composition) {
        WeakestPaths search = new WeakestPaths(composition);
        Way way = search.least();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double last = way.resistance();
            search.closer(way);
            way = search.least();
            if (round > 1 && last - way.resistance() < SETTLED * last) {
                break;
            }
        }
        double neighbour = composition.weakestNeighbour();
        return new WeakestPath(
                straightened(way.places()), way.resistance(), neighbour, Math.min(1, way.resistance() / neighbour));
    }

    private record Way(ImmutableList<Integer> nodes, ImmutableList<Coordinate> places, double resistance) {}

    private record Step(int node, double resistance) {}

    private Way least() {
        MutableList<MutableList<Cell>> around = Lists.mutable.empty();
        nodes.each(each -> around.add(Lists.mutable.empty()));
        boolean[] ends = new boolean[nodes.size()];
        double[] least = new double[nodes.size()];
        int[] before = new int[nodes.size()];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(before, -1);
        PriorityQueue<Step> queue = new PriorityQueue<>((a, b) -> a.resistance() != b.resistance()
                ? Double.compare(a.resistance(), b.resistance())
                : Integer.compare(a.node(), b.node()));
        for (Cell cell : cells) {
            for (Edge edge : cell.edges()) {
                for (int node : edge.on) {
                    if (!around.get(node).contains(cell)) {
                        around.get(node).add(cell);
                    }
                    ends[node] |= edge.outdoor;
                    if (edge.indoor && least[node] > 0) {
                        least[node] = 0;
                        queue.add(new Step(node, 0));
                    }
                }
            }
        }
        while (!queue.isEmpty()) {
            Step here = queue.poll();
            if (here.resistance() > least[here.node()]) {
                continue;
            }
            if (ends[here.node()]) {
                return way(here, before);
            }
            for (Cell cell : around.get(here.node())) {
                for (Edge edge : cell.edges()) {
                    for (int next : edge.on) {
                        double total = here.resistance()
                                + nodes.get(here.node()).distance(nodes.get(next)) / cell.conductivity();
                        if (total < least[next]) {
                            least[next] = total;
                            before[next] = here.node();
                            queue.add(new Step(next, total));
                        }
                    }
                }
            }
        }
        throw new DetailDoesNotFit(Lists.immutable.of("no way leads from indoors to outdoors through what is drawn;"
                + " join its parts, or give outdoors a boundary"));
    }

    private Way way(Step end, int[] before) {
        MutableList<Integer> chain = Lists.mutable.empty();
        for (int at = end.node(); at >= 0; at = before[at]) {
            chain.add(at);
        }
        ImmutableList<Integer> ordered = chain.reverseThis().toImmutable();
        return new Way(ordered, ordered.collect(nodes::get), end.resistance());
    }

    /** Moves the additional points of the edges the way touches to around where it touches them. */
    private void closer(Way way) {
        ImmutableList<Coordinate> places = way.places();
        for (int node = nodes.size() - 1; node >= lasting; node--) {
            index.remove(nodes.remove(node));
        }
        for (Edge edge : edges) {
            while (edge.on.size() > edge.lasting) {
                edge.on.remove(edge.on.size() - 1);
            }
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
