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
 * Facets split at one another's corners, and every edge matched with its twin.
 *
 * <p>A corner of any facet that lies on another's side, to within a reach, becomes a corner of that facet too. Then
 * two facets share an edge exactly where one runs a → b and the other b → a, in whole numbers.
 */
public final class FacetMesh {

    /**
     * An undirected edge.
     *
     * @param a its lesser end
     * @param b its greater end
     * @param forward facets that run a → b
     * @param backward facets that run b → a
     */
    public record Line(Vertex a, Vertex b, ImmutableList<Integer> forward, ImmutableList<Integer> backward) {

        public boolean shared() {
            return forward.size() == 1 && backward.size() == 1;
        }

        public ImmutableList<Integer> facets() {
            return forward.newWithAll(backward).toImmutableSortedList();
        }
    }

    private final ImmutableList<Facet> facets;
    private final ImmutableList<Line> lines;
    private final Map<Vertex, MutableList<Integer>> around = new TreeMap<>();
    private final Map<Vertex, Map<Vertex, MutableList<Line>>> index = new TreeMap<>();

    private FacetMesh(ImmutableList<Facet> facets) {
        this.facets = facets;
        Map<Vertex, Map<Vertex, MutableList<Integer>>> directed = new TreeMap<>();
        for (int f = 0; f < facets.size(); f++) {
            ImmutableList<Vertex> outline = facets.get(f).outline();
            for (int i = 0; i < outline.size(); i++) {
                Vertex a = outline.get(i);
                Vertex b = outline.get((i + 1) % outline.size());
                directed.computeIfAbsent(a, v -> new TreeMap<>())
                        .computeIfAbsent(b, v -> Lists.mutable.empty())
                        .add(f);
                MutableList<Integer> here = around.computeIfAbsent(a, v -> Lists.mutable.empty());
                if (!here.contains(f)) {
                    here.add(f);
                }
            }
        }
        MutableList<Line> all = Lists.mutable.empty();
        directed.forEach((from, ends) -> ends.forEach((to, list) -> {
            boolean ordered = from.compareTo(to) < 0;
            boolean alone = !directed.getOrDefault(to, Map.of()).containsKey(from);
            if (ordered || alone) {
                Vertex a = ordered ? from : to;
                Vertex b = ordered ? to : from;
                ImmutableList<Line> lines = paired(new Line(a, b, at(directed, a, b), at(directed, b, a)));
                all.addAllIterable(lines);
                index.computeIfAbsent(a, v -> new TreeMap<>())
                        .computeIfAbsent(b, v -> Lists.mutable.empty())
                        .addAllIterable(lines);
            }
        }));
        this.lines = all.toImmutable();
    }

    /**
     * @param reach lattice units, within which a corner lies on a side
     */
    public static FacetMesh of(ImmutableList<Facet> facets, long reach) {
        TreeSet<Vertex> corners = new TreeSet<>();
        facets.forEach(facet -> facet.outline().forEach(corners::add));
        return new FacetMesh(facets.collect(facet -> facet.withOutline(split(facet.outline(), corners, reach))));
    }

    /** The facets, split. */
    public ImmutableList<Facet> facets() {
        return facets;
    }

    public ImmutableList<Line> lines() {
        return lines;
    }

    /** The line between two corners on which a facet lies. */
    public Line line(int facet, Vertex a, Vertex b) {
        MutableList<Line> lines =
                a.compareTo(b) < 0 ? index.get(a).get(b) : index.get(b).get(a);
        return lines.detect(line -> line.facets().contains(facet));
    }

    /**
     * Where a shell touches itself along a line, as many facets run one way as the other: each is paired with the one it
     * encloses the least room with, indoors. Other lines stay whole.
     */
    private ImmutableList<Line> paired(Line line) {
        if (line.forward().size() < 2
                || line.forward().size() != line.backward().size()) {
            return Lists.immutable.of(line);
        }
        MutableList<Integer> rest = line.backward().toList();
        return line.forward().collect(f -> {
            Integer partner = rest.minBy(g -> roomBetween(f, g, line));
            rest.remove(partner);
            return new Line(line.a(), line.b(), Lists.immutable.of(f), Lists.immutable.of(partner));
        });
    }

    /** The angle indoors from a facet that runs a → b to one that runs b → a. */
    private double roomBetween(int forward, int backward, Line line) {
        Point3 along = Vectors.unit(line.b().minus(line.a()).point());
        Point3 normal = facets.get(forward).normal();
        Point3 into = Vectors.cross(normal, along);
        Point3 intoOther = Vectors.cross(along, facets.get(backward).normal());
        double angle = Math.atan2(-Vectors.dot(intoOther, normal), Vectors.dot(intoOther, into));
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    /** Indices of the facets that have this corner, in order. */
    public ImmutableList<Integer> around(Vertex corner) {
        return around.get(corner).toImmutable();
    }

    private static ImmutableList<Integer> at(
            Map<Vertex, Map<Vertex, MutableList<Integer>>> directed, Vertex from, Vertex to) {
        MutableList<Integer> list = directed.getOrDefault(from, Map.of()).get(to);
        return list == null ? Lists.immutable.empty() : list.toImmutable();
    }

    private static ImmutableList<Vertex> split(ImmutableList<Vertex> outline, TreeSet<Vertex> corners, long reach) {
        MutableList<Vertex> result = Lists.mutable.empty();
        for (int i = 0; i < outline.size(); i++) {
            Vertex a = outline.get(i);
            Vertex b = outline.get((i + 1) % outline.size());
            Vertex along = b.minus(a);
            double length = along.length();
            MutableList<Vertex> between = Lists.mutable.empty();
            for (Vertex corner : corners) {
                Vertex off = corner.minus(a);
                double t = off.dot(along) / (length * length);
                if (t > 0 && t < 1 && !corner.equals(b)) {
                    double distance = off.cross(along).length() / length;
                    if (distance <= reach) {
                        between.add(corner);
                    }
                }
            }
            between.sortThisByDouble(corner -> corner.minus(a).dot(along));
            result.add(a);
            result.addAll(between);
        }
        return result.toImmutable();
    }
}
