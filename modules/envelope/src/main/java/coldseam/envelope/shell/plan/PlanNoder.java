package coldseam.envelope.shell.plan;

import coldseam.envelope.shell.lattice.Vertex;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * Cuts the lines of a plan at one another, so that two pieces are the same piece or share no more than an end.
 *
 * <p>Snap rounding with a reach: every end and every crossing becomes a node, or is taken by one within
 * {@link Vertex#ONE}; every line then runs through each node within that reach of it. Pieces move by no more than the
 * reach and never over a node, so none cross. Lines that were meant to be one (the walls of two storeys, flush and at any
 * angle) have rounded ends far nearer to one another than the reach: they become the same pieces, and each keeps its tag.
 *
 * <p>Orientations are signs of whole numbers and cannot be wrong. Reference: J. D. Hobby, Practical segment intersection with finite
 * precision output, Computational Geometry 13 (1999); differs in taking a reach wider than the lattice.
 */
final class PlanNoder {

    private static final int ROUNDS = 8;

    private final ImmutableList<Plan.Line> lines;
    private final Nodes nodes = new Nodes();

    private PlanNoder(ImmutableList<Plan.Line> lines) {
        this.lines = lines;
    }

    /** The pieces of all lines, each with its line's tag and sense. */
    public static ImmutableList<Plan.Line> pieces(ImmutableList<Plan.Line> lines) {
        ImmutableList<Plan.Line> pieces = lines;
        for (int round = 0; round < ROUNDS; round++) {
            ImmutableList<Plan.Line> next = new PlanNoder(pieces).once();
            if (next.equals(pieces)) {
                return pieces;
            }
            pieces = next;
        }
        return pieces;
    }

    private ImmutableList<Plan.Line> once() {
        lines.forEach(line -> {
            nodes.add(line.from());
            nodes.add(line.to());
        });
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                crossing(lines.get(i), lines.get(j));
            }
        }
        MutableList<Plan.Line> pieces = Lists.mutable.empty();
        for (Plan.Line line : lines) {
            ImmutableList<Vertex> way = way(line);
            for (int i = 0; i + 1 < way.size(); i++) {
                pieces.add(new Plan.Line(way.get(i), way.get(i + 1), line.tag()));
            }
        }
        return pieces.toImmutable();
    }

    private void crossing(Plan.Line one, Plan.Line other) {
        if (apart(one.from().x(), one.to().x(), other.from().x(), other.to().x())
                || apart(
                        one.from().y(),
                        one.to().y(),
                        other.from().y(),
                        other.to().y())) {
            return;
        }
        Vertex a = one.from();
        Vertex along = one.to().minus(a);
        long c = along.cross(other.from().minus(a)).z();
        long d = along.cross(other.to().minus(a)).z();
        Vertex across = other.to().minus(other.from());
        long e = across.cross(a.minus(other.from())).z();
        long f = across.cross(one.to().minus(other.from())).z();
        if (Long.signum(c) * Long.signum(d) < 0 && Long.signum(e) * Long.signum(f) < 0) {
            double share = (double) e / ((double) e - f);
            nodes.add(new Vertex(a.x() + Math.round(share * along.x()), a.y() + Math.round(share * along.y()), 0));
        }
    }

    private static boolean apart(long a, long b, long c, long d) {
        return Math.max(a, b) < Math.min(c, d) || Math.max(c, d) < Math.min(a, b);
    }

    /** The nodes a line runs through, in order. */
    private ImmutableList<Vertex> way(Plan.Line line) {
        Vertex start = nodes.at(line.from());
        Vertex end = nodes.at(line.to());
        if (start.equals(end)) {
            return Lists.immutable.empty();
        }
        Vertex along = line.to().minus(line.from());
        double length = along.length();
        double first = start.minus(line.from()).dot(along);
        double last = end.minus(line.from()).dot(along);
        MutableList<Vertex> between = nodes.near(line).select(node -> {
            Vertex off = node.minus(line.from());
            double place = off.dot(along);
            return place > first
                    && place < last
                    && Math.abs((double) along.cross(off).z()) <= Vertex.ONE * length;
        });
        between.sortThisBy(node -> node.minus(line.from()).dot(along));
        return Lists.mutable.of(start).withAll(between).with(end).toImmutable();
    }

    /** Nodes, no two within the reach of one another, by their x. */
    private static final class Nodes {

        private final TreeMap<Long, MutableList<Vertex>> byX = new TreeMap<>();

        void add(Vertex point) {
            if (nearest(point) == null) {
                byX.computeIfAbsent(point.x(), x -> Lists.mutable.empty()).add(point);
            }
        }

        Vertex at(Vertex point) {
            return nearest(point);
        }

        private Vertex nearest(Vertex point) {
            Vertex best = null;
            for (MutableList<Vertex> column : columns(point.x(), point.x()).values()) {
                for (Vertex node : column) {
                    double distance = node.minus(point).length();
                    if (distance <= Vertex.ONE
                            && (best == null || distance < best.minus(point).length())) {
                        best = node;
                    }
                }
            }
            return best;
        }

        MutableList<Vertex> near(Plan.Line line) {
            long low = Math.min(line.from().y(), line.to().y()) - Vertex.ONE;
            long high = Math.max(line.from().y(), line.to().y()) + Vertex.ONE;
            MutableList<Vertex> near = Lists.mutable.empty();
            columns(
                            Math.min(line.from().x(), line.to().x()),
                            Math.max(line.from().x(), line.to().x()))
                    .values()
                    .forEach(column -> near.addAllIterable(column.select(node -> node.y() >= low && node.y() <= high)));
            return near;
        }

        private Map<Long, MutableList<Vertex>> columns(long from, long to) {
            return byX.subMap(from - Vertex.ONE, true, to + Vertex.ONE, true);
        }
    }
}
