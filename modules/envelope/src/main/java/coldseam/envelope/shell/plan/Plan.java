package coldseam.envelope.shell.plan;

import coldseam.envelope.Point2;
import coldseam.envelope.shell.lattice.Ring;
import coldseam.envelope.shell.lattice.Vertex;
import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * All storeys' outer footprints laid over one another on the lattice: cells, and the bounds between them.
 *
 * <p>Every storey is noded with every other at once, so that a wall has the same corners at its foot and at its head. Which
 * storeys cover a cell is counted over the bounds from outdoors inwards, by the sense of the sides that run there; no point
 * is looked for in a polygon.
 */
public final class Plan {

    public static final GeometryFactory GEOMETRY = new GeometryFactory(new PrecisionModel(1));

    static final GeometryFactory IN_METRES = new GeometryFactory();

    /** Index of the plane outside every footprint. */
    public static final int OUTSIDE = -1;

    /** What a line of the plan is. */
    public enum Kind {
        /** A storey's side. */
        SIDE,
        /** A jog between two sides of one line. */
        JOG,
        /** The end of a step of the walls: parts it from what else lies open there. */
        STEP_END,
        /** A cut through what lies open above a storey, so that no part of it has a hole; it cuts nothing else. */
        CUT_OPEN,
        /** The same through what hangs over the storey below. */
        CUT_OVER,
        /** Where two planes of the roof meet, or one ends. */
        ROOF,
        /** Where the area of a lower roof ends. */
        AREA,
        /** Where what ends two stacks above or below crosses. */
        CROSSING
    }

    /**
     * Where a line comes from.
     *
     * @param kind of line
     * @param storey index; the lower of two for what lies between them
     * @param number of the side; other lines are counted
     */
    public record Tag(Kind kind, int storey, int number) implements Comparable<Tag> {

        private static final Comparator<Tag> ORDER =
                Comparator.comparingInt(Tag::storey).thenComparing(Tag::kind).thenComparingInt(Tag::number);

        public static Tag cut(int storey, boolean openAbove, int number) {
            return new Tag(openAbove ? Kind.CUT_OPEN : Kind.CUT_OVER, storey, number);
        }

        public boolean bounds(int which) {
            return storey == which && (kind == Kind.SIDE || kind == Kind.JOG);
        }

        public boolean cuts() {
            return kind != Kind.SIDE && kind != Kind.JOG;
        }

        @Override
        public int compareTo(Tag other) {
            return ORDER.compare(this, other);
        }
    }

    /** A straight line laid into the plan; a storey's sides run counterclockwise around it. */
    public record Line(Vertex from, Vertex to, Tag tag) {}

    /**
     * A part of the plan that no line crosses.
     *
     * @param polygon in lattice units
     * @param storeys that cover it
     */
    public record Cell(Polygon polygon, BitSet storeys) {}

    /**
     * A line that runs along a bound.
     *
     * @param tag where it comes from
     * @param forward whether it runs as the bound does
     */
    public record Run(Tag tag, boolean forward) {}

    /**
     * A piece of line between two cells.
     *
     * @param from one end
     * @param to the other end
     * @param left index of the cell on the left, {@link #OUTSIDE} for none
     * @param right the same on the right
     * @param runs all lines that run here, in order
     */
    public record Bound(Vertex from, Vertex to, int left, int right, ImmutableList<Run> runs) {

        public boolean borders(int cell) {
            return left == cell || right == cell;
        }

        public boolean cuts(int storey, boolean openAbove) {
            Kind kind = openAbove ? Kind.CUT_OPEN : Kind.CUT_OVER;
            return runs.anySatisfy(run -> run.tag().kind() == kind && run.tag().storey() == storey);
        }

        /** The side or jog of a storey that runs here with the storey on the given hand. */
        public Optional<Tag> side(int storey, boolean onLeft) {
            return runs.detectOptional(
                            run -> run.forward() == onLeft && run.tag().bounds(storey))
                    .map(Run::tag);
        }

        /** The first line of all that merely cuts here. */
        public Optional<Tag> cut() {
            return runs.detectOptional(run -> run.tag().cuts()).map(Run::tag);
        }
    }

    private final ImmutableList<Cell> cells;
    private final ImmutableList<Bound> bounds;
    private final ImmutableList<ImmutableList<Bound>> beside;
    private final ImmutableList<ImmutableList<ImmutableList<Vertex>>> walks;

    private Plan(
            ImmutableList<Cell> cells,
            ImmutableList<Bound> bounds,
            ImmutableList<ImmutableList<Bound>> beside,
            ImmutableList<ImmutableList<ImmutableList<Vertex>>> walks) {
        this.cells = cells;
        this.bounds = bounds;
        this.beside = beside;
        this.walks = walks;
    }

    public ImmutableList<Cell> cells() {
        return cells;
    }

    public ImmutableList<Bound> bounds() {
        return bounds;
    }

    public ImmutableList<Bound> beside(int cell) {
        return beside.get(cell);
    }

    /** Every node around a storey's outline, counterclockwise from its first corner on; then those around its courts. */
    public ImmutableList<ImmutableList<Vertex>> walks(int storey) {
        return walks.get(storey);
    }

    public boolean in(int cell, int storey) {
        return cell != OUTSIDE && cells.get(cell).storeys().get(storey);
    }

    /** Indices of the cells a storey covers. */
    public ImmutableList<Integer> cellsOf(int storey) {
        MutableList<Integer> covered = Lists.mutable.empty();
        for (int c = 0; c < cells.size(); c++) {
            if (in(c, storey)) {
                covered.add(c);
            }
        }
        return covered.toImmutable();
    }

    /** Lays the storeys' outlines and the cuts over one another. */
    public static Plan of(int storeys, ImmutableList<Line> lines) {
        ImmutableList<Line> pieces = PlanNoder.pieces(lines);
        Map<Segment, MutableList<Run>> segments = segments(storeys, pieces);
        Polygonizer polygonizer = new Polygonizer();
        segments.keySet().forEach(segment -> polygonizer.add(line(segment.a(), segment.b())));
        // The polygonizer goes by hashed sets: where a ring begins and which comes first differs from run to run.
        MutableList<Polygon> polygons = Lists.mutable.empty();
        Map<Polygon, Vertex> middles = new IdentityHashMap<>();
        for (Object found : polygonizer.getPolygons()) {
            Polygon polygon = (Polygon) ((Polygon) found).norm();
            polygons.add(polygon);
            middles.put(polygon, vertex(polygon.getInteriorPoint().getCoordinate()));
        }
        Comparator<Polygon> byPlace = Comparator.comparing(middles::get);
        polygons.sortThis(byPlace.thenComparing((p, q) -> p.compareTo(q)));
        Map<Segment, Integer> leftOf = new TreeMap<>();
        polygons.forEachWithIndex((polygon, index) -> {
            ring(polygon.getExteriorRing(), true).forEach(segment -> leftOf.put(segment, index));
            for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                ring(polygon.getInteriorRingN(h), false).forEach(segment -> leftOf.put(segment, index));
            }
        });
        MutableList<Bound> bounds = Lists.mutable.empty();
        segments.forEach((segment, runs) -> {
            int left = leftOf.getOrDefault(segment, OUTSIDE);
            int right = leftOf.getOrDefault(segment.reversed(), OUTSIDE);
            if (left != right) {
                bounds.add(new Bound(segment.a(), segment.b(), left, right, runs.toImmutableList()));
            }
        });
        ImmutableList<ImmutableList<Bound>> beside = beside(polygons.size(), bounds);
        ImmutableList<BitSet> covered = covered(storeys, bounds, beside);
        return new Plan(
                polygons.collectWithIndex((polygon, c) -> new Cell(polygon, covered.get(c)))
                        .toImmutable(),
                bounds.toImmutable(),
                beside,
                Lists.immutable.fromStream(java.util.stream.IntStream.range(0, storeys)
                        .mapToObj(k -> rounds(pieces.select(piece -> piece.tag().bounds(k))))));
    }

    /** Pieces that follow one another, parted where they come back to where they began. */
    private static ImmutableList<ImmutableList<Vertex>> rounds(ImmutableList<Line> pieces) {
        MutableList<ImmutableList<Vertex>> rounds = Lists.mutable.empty();
        MutableList<Vertex> round = Lists.mutable.empty();
        for (Line piece : pieces) {
            round.add(piece.from());
            if (piece.to().equals(round.getFirst())) {
                rounds.add(round.toImmutable());
                round.clear();
            }
        }
        return rounds.toImmutable();
    }

    private static ImmutableList<ImmutableList<Bound>> beside(int cells, MutableList<Bound> bounds) {
        MutableList<MutableList<Bound>> beside = Lists.mutable.empty();
        for (int c = 0; c < cells; c++) {
            beside.add(Lists.mutable.empty());
        }
        for (Bound bound : bounds) {
            for (int cell : new int[] {bound.left(), bound.right()}) {
                if (cell != OUTSIDE) {
                    beside.get(cell).add(bound);
                }
            }
        }
        return beside.collect(list -> list.toImmutableList()).toImmutable();
    }

    /** 1 where a storey lies on the left of these sides only, −1 on their right only, 0 on both hands or on none. */
    private static int net(ImmutableList<Run> runs, int storey) {
        return Long.signum(runs.select(run -> run.tag().bounds(storey)).sumOfInt(run -> run.forward() ? 1 : -1));
    }

    /** Which storeys cover each cell: one more on the left of a side than on its right, none outdoors. */
    private static ImmutableList<BitSet> covered(
            int storeys, MutableList<Bound> bounds, ImmutableList<ImmutableList<Bound>> beside) {
        BitSet[] covered = new BitSet[beside.size()];
        ArrayDeque<Integer> reached = new ArrayDeque<>();
        bounds.select(bound -> bound.left() == OUTSIDE || bound.right() == OUTSIDE)
                .forEach(bound -> reach(bound, new BitSet(), bound.left() == OUTSIDE, storeys, covered, reached));
        while (!reached.isEmpty()) {
            int cell = reached.poll();
            for (Bound bound : beside.get(cell)) {
                reach(bound, covered[cell], bound.left() == cell, storeys, covered, reached);
            }
        }
        return Lists.immutable.of(covered);
    }

    private static void reach(
            Bound bound, BitSet here, boolean fromLeft, int storeys, BitSet[] covered, ArrayDeque<Integer> reached) {
        int there = fromLeft ? bound.right() : bound.left();
        BitSet counted = new BitSet();
        for (int k = 0; k < storeys; k++) {
            int net = net(bound.runs(), k);
            counted.set(k, net == 0 ? here.get(k) : (net > 0) != fromLeft);
        }
        if (there == OUTSIDE) {
            if (!counted.isEmpty()) {
                throw new IllegalStateException("a storey has no end in the plan at " + bound.from());
            }
        } else if (covered[there] == null) {
            covered[there] = counted;
            reached.add(there);
        } else if (!covered[there].equals(counted)) {
            throw new IllegalStateException("the storeys' sides contradict one another at " + bound.from());
        }
    }

    private static Map<Segment, MutableList<Run>> segments(int storeys, ImmutableList<Line> pieces) {
        Map<Segment, MutableList<Run>> segments = new TreeMap<>();
        for (Line piece : pieces) {
            boolean forward = piece.from().compareTo(piece.to()) < 0;
            Segment segment = forward ? new Segment(piece.from(), piece.to()) : new Segment(piece.to(), piece.from());
            segments.computeIfAbsent(segment, s -> Lists.mutable.empty()).add(new Run(piece.tag(), forward));
        }
        // Where a storey folds back on itself there is nothing between its two sides.
        segments.values()
                .removeIf(runs -> runs.noneSatisfy(run -> run.tag().cuts())
                        && java.util.stream.IntStream.range(0, storeys).allMatch(k -> net(runs.toImmutable(), k) == 0));
        segments.values().forEach(runs -> runs.sortThisBy(Run::tag));
        return segments;
    }

    public static LineString line(Vertex a, Vertex b) {
        return GEOMETRY.createLineString(new Coordinate[] {coordinate(a), coordinate(b)});
    }

    /** An outline in metres. */
    public static Polygon outline(ImmutableList<Point2> corners) {
        return Ring.polygon(IN_METRES, corners.collect(corner -> new Coordinate(corner.x(), corner.y())));
    }

    public static Polygon polygon(ImmutableList<Vertex> corners) {
        return Ring.polygon(GEOMETRY, corners.collect(Plan::coordinate));
    }

    public static Point point(Vertex at) {
        return GEOMETRY.createPoint(coordinate(at));
    }

    /** A point in plan, m. */
    public static Point point(Point2 at) {
        return IN_METRES.createPoint(new Coordinate(at.x(), at.y()));
    }

    public static Vertex vertex(Coordinate coordinate) {
        return new Vertex(Math.round(coordinate.x), Math.round(coordinate.y), 0);
    }

    private static Coordinate coordinate(Vertex vertex) {
        return new Coordinate(vertex.x(), vertex.y());
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
