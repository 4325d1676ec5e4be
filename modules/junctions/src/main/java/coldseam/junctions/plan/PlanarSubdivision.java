package coldseam.junctions.plan;

import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;

/**
 * What is seen of polygons painted one over another: faces that do not overlap, and the edges between them.
 *
 * <p>All outlines are cut at each other once. What is seen on the two sides of an edge follows from the outlines that run
 * along it and from the polygons its middle lies in, so no place beside it is looked at; edges that are covered fall away. The
 * faces are the circuits of what is left (de Berg, Cheong, van Kreveld, Overmars, Computational Geometry, 3rd edition 2008,
 * section 2.2, from memory), a hole's circuit with the smallest circuit of the same polygon around it.
 *
 * <p>Cost: for n outlines and e edges, n·e tests of a point against a box, few of them against an outline.
 *
 * @param faces in the order of their polygons
 * @param edges each once; none between two parts of one face
 */
public record PlanarSubdivision(ImmutableList<Face> faces, ImmutableList<Edge> edges) {

    /** No face: nothing is painted there. */
    public static final int NOTHING = -1;

    /** m; corners and sides nearer than this are one. */
    private static final double TOUCHING = 3e-7;

    /**
     * A connected part of what is seen of one polygon.
     *
     * @param painted index of the polygon in painting order
     * @param rings outer circuit first, anticlockwise; then its holes, clockwise; m, the first corner not repeated
     */
    public record Face(int painted, ImmutableList<ImmutableList<Point>> rings) {

        /** m². */
        public double area() {
            return rings.sumOfDouble(PlanarSubdivision::area);
        }
    }

    /**
     * A straight piece between two faces.
     *
     * @param from m
     * @param to m
     * @param left face on the left of the way from → to, or {@link #NOTHING}
     * @param right likewise
     */
    public record Edge(Point from, Point to, int left, int right) {

        /** m. */
        public double length() {
            return from.distance(to);
        }

        /** Halfway. */
        public Point middle() {
            return from.middle(to);
        }
    }

    /**
     * The subdivision of polygons.
     *
     * @param outlines in painting order, a later one covers an earlier one
     */
    public static PlanarSubdivision of(ImmutableList<Polygon> outlines) {
        return new Builder(outlines).built();
    }

    /** The face at a place, or {@link #NOTHING}; on an edge, one of the faces beside it. */
    public int faceAt(double x, double y) {
        return faces.detectIndex(face -> face.rings().count(ring -> inside(ring, x, y)) % 2 == 1);
    }

    private static double area(ImmutableList<Point> ring) {
        double sum = 0;
        Point before = ring.getLast();
        for (Point point : ring) {
            sum += before.x() * point.y() - point.x() * before.y();
            before = point;
        }
        return sum / 2;
    }

    private static boolean inside(ImmutableList<Point> ring, double x, double y) {
        boolean in = false;
        Point b = ring.getLast();
        for (Point a : ring) {
            if (a.y() > y != b.y() > y && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
            b = a;
        }
        return in;
    }

    /** Cuts, names the sides, walks the circuits. */
    private static final class Builder {

        private final ImmutableList<Polygon> outlines;
        private final ImmutableList<Envelope> boxes;
        private final Map<Coordinate, Integer> numbers = new HashMap<>();
        private final List<Coordinate> vertices = new ArrayList<>();
        private final Map<Long, Cut> cuts = new LinkedHashMap<>();

        /** Half an edge: its twin is at the index with the last bit changed. */
        private record Half(int from, int to, int painted) {}

        /** An edge before its sides are known: for each outline along it, +1 where the polygon lies on its left, else −1. */
        private static final class Cut {
            private final int from;
            private final int to;
            private final Map<Integer, Integer> sides = new HashMap<>();

            private Cut(int from, int to) {
                this.from = from;
                this.to = to;
            }
        }

        private Builder(ImmutableList<Polygon> outlines) {
            this.outlines = outlines;
            this.boxes = outlines.collect(Builder::box);
        }

        private static Envelope box(Polygon outline) {
            Envelope box = new Envelope();
            outline.corners().forEach(corner -> box.expandToInclude(corner.x(), corner.y()));
            return box;
        }

        private PlanarSubdivision built() {
            cut();
            List<Half> halves = halves();
            int[] next = next(halves);
            // 1. Circuits.
            int[] circuitOf = new int[halves.size()];
            Arrays.fill(circuitOf, -1);
            MutableList<ImmutableList<Point>> circuits = Lists.mutable.empty();
            MutableList<Integer> painted = Lists.mutable.empty();
            for (int h = 0; h < circuitOf.length; h++) {
                if (circuitOf[h] < 0) {
                    MutableList<Point> ring = Lists.mutable.empty();
                    for (int at = h; circuitOf[at] < 0; at = next[at]) {
                        circuitOf[at] = circuits.size();
                        ring.add(point(halves.get(at).from()));
                    }
                    circuits.add(ring.toImmutable());
                    painted.add(halves.get(h).painted());
                }
            }
            // 2. Faces: each outer circuit, with the holes whose nearest one it is.
            double[] areas = new double[circuits.size()];
            Arrays.setAll(areas, c -> area(circuits.get(c)));
            MutableList<Integer> outer = Lists.mutable.empty();
            for (int c = 0; c < areas.length; c++) {
                if (painted.get(c) != NOTHING && areas[c] > 0) {
                    outer.add(c);
                }
            }
            outer.sortThisByInt(painted::get);
            int[] faceOf = new int[areas.length];
            Arrays.fill(faceOf, NOTHING);
            outer.forEachWithIndex((c, face) -> faceOf[c] = face);
            MutableList<MutableList<ImmutableList<Point>>> rings = outer.collect(
                    c -> Lists.mutable.<ImmutableList<Point>>empty().with(circuits.get(c)));
            for (int c = 0; c < areas.length; c++) {
                if (painted.get(c) != NOTHING && areas[c] <= 0) {
                    int around = around(circuits, painted, areas, outer, c);
                    if (around >= 0) {
                        faceOf[c] = faceOf[around];
                        rings.get(faceOf[c]).add(circuits.get(c));
                    }
                }
            }
            ImmutableList<Face> faces = outer.collectWithIndex((c, face) ->
                            new Face(painted.get(c), rings.get(face).toImmutable()))
                    .toImmutable();
            MutableList<Edge> edges = Lists.mutable.empty();
            for (int h = 0; h < circuitOf.length; h += 2) {
                edges.add(new Edge(
                        point(halves.get(h).from()),
                        point(halves.get(h).to()),
                        faceOf[circuitOf[h]],
                        faceOf[circuitOf[h + 1]]));
            }
            return new PlanarSubdivision(
                    faces, edges.reject(edge -> edge.left() == edge.right()).toImmutable());
        }

        /** The smallest outer circuit of the same polygon that a hole's circuit lies in; -1 where there is none. */
        private static int around(
                MutableList<ImmutableList<Point>> circuits,
                MutableList<Integer> painted,
                double[] areas,
                MutableList<Integer> outer,
                int hole) {
            int best = -1;
            ImmutableList<Point> ring = circuits.get(hole);
            for (int c : outer) {
                boolean smaller = best < 0 || areas[c] < areas[best];
                if (smaller && painted.get(c).equals(painted.get(hole)) && areas[c] > -areas[hole]) {
                    Point a = ring.getFirst();
                    Point b = ring.get(1);
                    if (inside(circuits.get(c), (a.x() + b.x()) / 2, (a.y() + b.y()) / 2)) {
                        best = c;
                    }
                }
            }
            return best;
        }

        private void cut() {
            List<SegmentString> strings = new ArrayList<>();
            int[] turns = new int[outlines.size()];
            outlines.forEachWithIndex((outline, i) -> {
                Coordinate[] ring = ring(outline);
                if (ring.length >= 4) {
                    turns[i] = Orientation.isCCW(ring) ? 1 : -1;
                    strings.add(new NodedSegmentString(ring, i));
                }
            });
            SnapNoder noder = new SnapNoder(TOUCHING);
            noder.computeNodes(strings);
            List<SegmentString> noded = new ArrayList<>();
            for (Object each : noder.getNodedSubstrings()) {
                SegmentString string = (SegmentString) each;
                noded.add(string);
                for (Coordinate at : string.getCoordinates()) {
                    number(at);
                }
            }
            for (SegmentString string : noded) {
                int outline = (Integer) string.getData();
                Coordinate[] along = string.getCoordinates();
                for (int i = 1; i < along.length; i++) {
                    pieces(number(along[i - 1]), number(along[i]), outline, turns[outline]);
                }
            }
        }

        /**
         * A segment cut at every vertex on it: of two sides that run in one line but for rounding, the noder may cut one alone, in
         * the middle of both.
         */
        private void pieces(int from, int to, int outline, int turn) {
            LineSegment segment = new LineSegment(vertices.get(from), vertices.get(to));
            List<Integer> on = new ArrayList<>();
            Envelope near = new Envelope(segment.p0, segment.p1);
            near.expandBy(TOUCHING);
            for (int v = 0; v < vertices.size(); v++) {
                Coordinate at = vertices.get(v);
                if (!near.contains(at)) {
                    continue;
                }
                double share = segment.projectionFactor(at);
                if (v != from && v != to && share > 0 && share < 1 && segment.distance(at) < TOUCHING) {
                    on.add(v);
                }
            }
            on.sort(Comparator.comparingDouble(v -> segment.projectionFactor(vertices.get(v))));
            int before = from;
            for (int v : on) {
                piece(before, v, outline, turn);
                before = v;
            }
            piece(before, to, outline, turn);
        }

        private static Coordinate[] ring(Polygon outline) {
            List<Coordinate> ring = new ArrayList<>();
            for (Point corner : outline.corners().newWith(outline.corners().getFirst())) {
                Coordinate at = new Coordinate(corner.x(), corner.y());
                if (ring.isEmpty() || !ring.get(ring.size() - 1).equals2D(at)) {
                    ring.add(at);
                }
            }
            return ring.toArray(new Coordinate[0]);
        }

        private void piece(int from, int to, int outline, int turn) {
            if (from != to) {
                long key = ((long) Math.min(from, to) << 32) | Math.max(from, to);
                Cut cut = cuts.computeIfAbsent(key, none -> new Cut(Math.min(from, to), Math.max(from, to)));
                cut.sides.merge(outline, from < to ? turn : -turn, Integer::sum);
            }
        }

        private int number(Coordinate at) {
            return numbers.computeIfAbsent(new Coordinate(at.x, at.y), none -> {
                vertices.add(at);
                return vertices.size() - 1;
            });
        }

        private Point point(int vertex) {
            Coordinate at = vertices.get(vertex);
            return new Point(at.x + 0.0, at.y + 0.0);
        }

        /** Edges with different polygons on their two sides, each as two halves that follow one another. */
        private List<Half> halves() {
            List<Half> halves = new ArrayList<>();
            for (Cut cut : cuts.values()) {
                Coordinate a = vertices.get(cut.from);
                Coordinate b = vertices.get(cut.to);
                double x = (a.x + b.x) / 2;
                double y = (a.y + b.y) / 2;
                int left = seen(cut, x, y, 1);
                int right = seen(cut, x, y, -1);
                if (left != right) {
                    halves.add(new Half(cut.from, cut.to, left));
                    halves.add(new Half(cut.to, cut.from, right));
                }
            }
            return halves;
        }

        /** The topmost polygon beside an edge with this middle. */
        private int seen(Cut cut, double x, double y, int side) {
            for (int i = boxes.size() - 1; i >= 0; i--) {
                int along = cut.sides.getOrDefault(i, 0);
                if (along == 0 ? contains(i, x, y) : along == side) {
                    return i;
                }
            }
            return NOTHING;
        }

        private boolean contains(int outline, double x, double y) {
            return boxes.get(outline).contains(x, y)
                    && inside(outlines.get(outline).corners(), x, y);
        }

        /** For each half, the one after it around the face on its left: at its end, the next clockwise from its twin. */
        private int[] next(List<Half> halves) {
            Map<Integer, List<Integer>> leaving = new HashMap<>();
            for (int h = 0; h < halves.size(); h++) {
                leaving.computeIfAbsent(halves.get(h).from(), none -> new ArrayList<>())
                        .add(h);
            }
            int[] next = new int[halves.size()];
            for (List<Integer> star : leaving.values()) {
                star.sort((g, h) -> Double.compare(angle(halves.get(g)), angle(halves.get(h))));
                for (int i = 0; i < star.size(); i++) {
                    int twin = star.get(i) ^ 1;
                    next[twin] = star.get((i + star.size() - 1) % star.size());
                }
            }
            return next;
        }

        private double angle(Half half) {
            Coordinate a = vertices.get(half.from());
            Coordinate b = vertices.get(half.to());
            return Math.atan2(b.y - a.y, b.x - a.x);
        }
    }
}
