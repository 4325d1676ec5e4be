package coldseam.junctions.plan;

import coldseam.conduction.Point;
import coldseam.conduction.Polygon;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.ImmutableIntList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * What is seen of polygons painted one over another: faces that do not overlap, and the edges between them.
 *
 * <p>All outlines are cut at each other once. What is seen on the two sides of an edge follows from the outlines that run
 * along it and from the polygons its middle lies in, so no place beside it is looked at; edges that are covered fall away,
 * and what is left bounds the faces.
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

    private static final GeometryFactory LINES = new GeometryFactory();

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

    /** Cuts, names the sides, lets faces be made of what is left. */
    private static final class Builder {

        private final ImmutableList<Polygon> outlines;
        private final ImmutableList<Envelope> boxes;
        private final Map<Coordinate, Integer> numbers = new HashMap<>();
        private final List<Coordinate> vertices = new ArrayList<>();

        /** Of each edge, from its lower vertex: for each outline along it, +1 where the polygon lies on its left, else −1. */
        private final Map<Way, Map<Integer, Integer>> sides = new LinkedHashMap<>();

        /** From a vertex to another. */
        private record Way(int from, int to) {}

        /** Half an edge, with what is painted on its left: its twin is at the index with the last bit changed. */
        private record Half(Way way, int painted) {}

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
            Polygonizer polygonizer = new Polygonizer();
            Map<Way, Integer> numbered = new HashMap<>();
            for (int h = 0; h < halves.size(); h++) {
                Way way = halves.get(h).way();
                numbered.put(way, h);
                if (h % 2 == 0) {
                    polygonizer.add(LINES.createLineString(
                            new Coordinate[] {vertices.get(way.from()), vertices.get(way.to())}));
                }
            }
            // The polygonizer goes by hashed sets: rings begin at their first half, and rings and faces come in their
            // order.
            MutableList<ImmutableList<ImmutableIntList>> found = Lists.mutable.empty();
            for (Object each : polygonizer.getPolygons()) {
                Geometry bounds = ((Geometry) each).getBoundary();
                MutableList<ImmutableIntList> holes = Lists.mutable.empty();
                for (int ring = 1; ring < bounds.getNumGeometries(); ring++) {
                    holes.add(circuit(bounds.getGeometryN(ring), numbered));
                }
                holes.sortThisByInt(ImmutableIntList::getFirst);
                found.add(Lists.immutable
                        .of(circuit(bounds.getGeometryN(0), numbered))
                        .newWithAll(holes));
            }
            found.removeIf(rings -> painted(rings, halves) == NOTHING);
            found.sortThisByInt(rings -> rings.getFirst().getFirst()).sortThisByInt(rings -> painted(rings, halves));
            int[] faceOf = new int[halves.size()];
            Arrays.fill(faceOf, NOTHING);
            found.forEachWithIndex((rings, face) -> rings.forEach(ring -> ring.forEach(h -> faceOf[h] = face)));
            MutableList<Edge> edges = Lists.mutable.empty();
            for (int h = 0; h < faceOf.length; h += 2) {
                Way way = halves.get(h).way();
                edges.add(new Edge(point(way.from()), point(way.to()), faceOf[h], faceOf[h + 1]));
            }
            return new PlanarSubdivision(
                    found.collect(rings -> new Face(
                                    painted(rings, halves),
                                    rings.collect(ring -> ring.collect(
                                            h -> point(halves.get(h).way().from())))))
                            .toImmutable(),
                    edges.reject(edge -> edge.left() == edge.right()).toImmutable());
        }

        private static int painted(ImmutableList<ImmutableIntList> rings, List<Half> halves) {
            return halves.get(rings.getFirst().getFirst()).painted();
        }

        /** The halves along a ring, the first of them first; the polygonizer's rings have their face on the right. */
        private ImmutableIntList circuit(Geometry ring, Map<Way, Integer> numbered) {
            Coordinate[] at = ring.reverse().getCoordinates();
            MutableList<Integer> halves = Lists.mutable.empty();
            for (int i = 1; i < at.length; i++) {
                halves.add(numbered.get(new Way(number(at[i - 1]), number(at[i]))));
            }
            Collections.rotate(halves, -halves.indexOf(halves.min()));
            return halves.collectInt(h -> h).toImmutable();
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
            CoordinateList ring = new CoordinateList();
            outline.corners().forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y()), false));
            ring.closeRing();
            return ring.toCoordinateArray();
        }

        private void piece(int from, int to, int outline, int turn) {
            if (from != to) {
                sides.computeIfAbsent(new Way(Math.min(from, to), Math.max(from, to)), none -> new HashMap<>())
                        .merge(outline, from < to ? turn : -turn, Integer::sum);
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
            sides.forEach((way, along) -> {
                Coordinate middle = LineSegment.midPoint(vertices.get(way.from()), vertices.get(way.to()));
                int left = seen(along, middle, 1);
                int right = seen(along, middle, -1);
                if (left != right) {
                    halves.add(new Half(way, left));
                    halves.add(new Half(new Way(way.to(), way.from()), right));
                }
            });
            return halves;
        }

        /** The topmost polygon beside an edge with this middle. */
        private int seen(Map<Integer, Integer> along, Coordinate at, int side) {
            for (int i = boxes.size() - 1; i >= 0; i--) {
                int turned = along.getOrDefault(i, 0);
                if (turned == 0 ? contains(i, at.x, at.y) : turned == side) {
                    return i;
                }
            }
            return NOTHING;
        }

        private boolean contains(int outline, double x, double y) {
            return boxes.get(outline).contains(x, y)
                    && inside(outlines.get(outline).corners(), x, y);
        }
    }
}
