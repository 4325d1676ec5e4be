package coldseam.envelope.shell;

import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * All storeys' outer footprints laid over one another on the lattice: cells, and the bounds between them.
 *
 * <p>Every storey is noded with every other at once, so that a wall has the same corners at its foot and at its head.
 */
final class Plan {

    /** Whole lattice units. */
    static final PrecisionModel LATTICE = new PrecisionModel(1);

    static final GeometryFactory GEOMETRY = new GeometryFactory(LATTICE);

    /** Index of the plane outside every footprint. */
    static final int OUTSIDE = -1;

    /**
     * Where a line comes from.
     *
     * @param storey index
     * @param side of that storey, or {@link Footprint#STEP}, or less for a cut
     */
    record Tag(int storey, int side) {

        private static final int CUT_OPEN = -2;
        private static final int CUT_OVER = -3;

        /**
         * A cut through what lies open above a storey, or through what its upper neighbour hangs over. It cuts nothing
         * else: another storey's terrace that happens to lie over or under it stays whole.
         */
        static Tag cut(int storey, boolean openAbove) {
            return new Tag(storey, openAbove ? CUT_OPEN : CUT_OVER);
        }

        boolean isSideOf(int which) {
            return storey == which && side > CUT_OPEN;
        }
    }

    /**
     * A part of the plan that no line crosses.
     *
     * @param polygon in lattice units
     * @param storeys that cover it
     */
    record Cell(Polygon polygon, BitSet storeys) {}

    /**
     * A piece of line between two cells.
     *
     * @param from one end
     * @param to the other end
     * @param left index of the cell on the left, {@link #OUTSIDE} for none
     * @param right the same on the right
     * @param tags of all lines that run here, in order
     */
    record Bound(Vertex from, Vertex to, int left, int right, ImmutableList<Tag> tags) {

        boolean cuts(int storey, boolean openAbove) {
            return tags.contains(Tag.cut(storey, openAbove));
        }

        /** The side of a storey that runs here; {@link Footprint#STEP} where none is known. */
        int side(int storey) {
            return tags.detectOptional(tag -> tag.isSideOf(storey))
                    .map(Tag::side)
                    .orElse(Footprint.STEP);
        }
    }

    /** A straight line laid into the plan. */
    record Line(Vertex from, Vertex to, Tag tag) {}

    private final ImmutableList<Cell> cells;
    private final ImmutableList<Bound> bounds;

    private Plan(ImmutableList<Cell> cells, ImmutableList<Bound> bounds) {
        this.cells = cells;
        this.bounds = bounds;
    }

    ImmutableList<Cell> cells() {
        return cells;
    }

    ImmutableList<Bound> bounds() {
        return bounds;
    }

    boolean in(int cell, int storey) {
        return cell != OUTSIDE && cells.get(cell).storeys().get(storey);
    }

    /** Lays the storeys' outlines and the cuts over one another. */
    static Plan of(ImmutableList<Polygon> storeys, ImmutableList<Line> lines) {
        Map<Segment, MutableList<Tag>> segments = node(lines);
        Polygonizer polygonizer = new Polygonizer();
        segments.keySet().forEach(segment -> polygonizer.add(line(segment.a(), segment.b())));
        MutableList<Polygon> polygons = Lists.mutable.empty();
        for (Object polygon : polygonizer.getPolygons()) {
            // The polygonizer goes by hashed sets: where a ring begins differs from run to run.
            polygons.add((Polygon) ((Polygon) polygon).norm());
        }
        polygons.sortThis((p, q) -> vertex(p.getInteriorPoint().getCoordinate())
                .compareTo(vertex(q.getInteriorPoint().getCoordinate())));

        MutableList<Cell> cells = Lists.mutable.empty();
        Map<Segment, Integer> leftOf = new TreeMap<>();
        for (Polygon polygon : polygons) {
            BitSet covered = new BitSet();
            Geometry inside = polygon.getInteriorPoint();
            for (int k = 0; k < storeys.size(); k++) {
                covered.set(k, storeys.get(k).covers(inside));
            }
            int index = cells.size();
            ring(polygon.getExteriorRing(), true).forEach(segment -> leftOf.put(segment, index));
            for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                ring(polygon.getInteriorRingN(h), false).forEach(segment -> leftOf.put(segment, index));
            }
            cells.add(new Cell(polygon, covered));
        }
        MutableList<Bound> bounds = Lists.mutable.empty();
        segments.forEach((segment, tags) -> bounds.add(new Bound(
                segment.a(),
                segment.b(),
                leftOf.getOrDefault(segment, OUTSIDE),
                leftOf.getOrDefault(segment.reversed(), OUTSIDE),
                tags.toImmutableList())));
        return new Plan(cells.toImmutable(), bounds.toImmutable());
    }

    /** Connected parts of the plan that {@code upper} covers or leaves, beside storey pair k, k + 1. */
    ImmutableList<ImmutableList<Integer>> regions(int storey, boolean openAbove) {
        MutableList<Integer> waiting = Lists.mutable.empty();
        for (int c = 0; c < cells.size(); c++) {
            if (in(c, openAbove ? storey : storey + 1) && !in(c, openAbove ? storey + 1 : storey)) {
                waiting.add(c);
            }
        }
        MutableList<ImmutableList<Integer>> regions = Lists.mutable.empty();
        while (waiting.notEmpty()) {
            MutableList<Integer> region = Lists.mutable.of(waiting.remove(0));
            for (int i = 0; i < region.size(); i++) {
                int cell = region.get(i);
                for (Bound bound : bounds) {
                    if (!bound.cuts(storey, openAbove) && (bound.left() == cell || bound.right() == cell)) {
                        Integer other = bound.left() == cell ? bound.right() : bound.left();
                        if (waiting.remove(other)) {
                            region.add(other);
                        }
                    }
                }
            }
            regions.add(region.toSortedList().toImmutable());
        }
        return regions.toImmutable();
    }

    /** The union of cells, lattice units. */
    Geometry union(ImmutableList<Integer> which) {
        Geometry sum = GEOMETRY.createPolygon();
        for (int cell : which) {
            sum = OverlayNG.overlay(sum, cells.get(cell).polygon(), OverlayNG.UNION, LATTICE);
        }
        return sum;
    }

    /** Corners of a polygon's outer ring, counterclockwise from the least one on, at a height. */
    static ImmutableList<Vertex> outline(Polygon polygon, long height) {
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        MutableList<Vertex> corners = Lists.mutable.empty();
        for (int i = 0; i + 1 < ring.length; i++) {
            corners.add(vertex(ring[i]).at(height));
        }
        if (!Orientation.isCCW(ring)) {
            corners.reverseThis();
        }
        ImmutableList<Vertex> tidy = Facet.tidy(corners.toImmutable());
        int start = tidy.indexOf(tidy.min());
        return tidy.drop(start).newWithAll(tidy.take(start));
    }

    static LineString line(Vertex a, Vertex b) {
        return GEOMETRY.createLineString(new Coordinate[] {coordinate(a), coordinate(b)});
    }

    static Polygon polygon(ImmutableList<Vertex> corners) {
        MutableList<Coordinate> ring = Lists.mutable.empty();
        corners.forEach(corner -> ring.add(coordinate(corner)));
        ring.add(ring.getFirst().copy());
        return GEOMETRY.createPolygon(ring.toArray(new Coordinate[0]));
    }

    static Vertex vertex(Coordinate coordinate) {
        return new Vertex(Math.round(coordinate.x), Math.round(coordinate.y), 0);
    }

    private static Coordinate coordinate(Vertex vertex) {
        return new Coordinate(vertex.x(), vertex.y());
    }

    private static Map<Segment, MutableList<Tag>> node(ImmutableList<Line> lines) {
        MutableList<SegmentString> strings = Lists.mutable.empty();
        for (Line line : lines) {
            strings.add(new NodedSegmentString(
                    new Coordinate[] {coordinate(line.from()), coordinate(line.to())}, line.tag()));
        }
        SnapRoundingNoder noder = new SnapRoundingNoder(LATTICE);
        noder.computeNodes(strings);
        Map<Segment, MutableList<Tag>> segments = new TreeMap<>();
        for (Object noded : noder.getNodedSubstrings()) {
            SegmentString string = (SegmentString) noded;
            for (int i = 0; i + 1 < string.size(); i++) {
                Vertex a = vertex(string.getCoordinate(i));
                Vertex b = vertex(string.getCoordinate(i + 1));
                if (!a.equals(b)) {
                    Segment segment = a.compareTo(b) < 0 ? new Segment(a, b) : new Segment(b, a);
                    MutableList<Tag> tags = segments.computeIfAbsent(segment, s -> Lists.mutable.empty());
                    if (!tags.contains(string.getData())) {
                        tags.add((Tag) string.getData());
                        tags.sortThisBy(tag -> tag.storey() * 10_000 + tag.side());
                    }
                }
            }
        }
        return segments;
    }

    /** A ring's segments, directed so that the ring's polygon lies on their left. */
    private static ImmutableList<Segment> ring(LineString ring, boolean counterclockwise) {
        Coordinate[] points = ring.getCoordinates();
        boolean forward = Orientation.isCCW(points) == counterclockwise;
        MutableList<Segment> segments = Lists.mutable.empty();
        for (int i = 0; i + 1 < points.length; i++) {
            Vertex a = vertex(points[forward ? i : i + 1]);
            Vertex b = vertex(points[forward ? i + 1 : i]);
            segments.add(new Segment(a, b));
        }
        return segments.toImmutable();
    }

    private record Segment(Vertex a, Vertex b) implements Comparable<Segment> {

        Segment reversed() {
            return new Segment(b, a);
        }

        @Override
        public int compareTo(Segment other) {
            int first = a.compareTo(other.a);
            return first != 0 ? first : b.compareTo(other.b);
        }
    }
}
