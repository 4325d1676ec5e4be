package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Spot;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Painted parts as they are seen: the later part covers the earlier one, and what looks alike is one. */
final class PaintedParts {

    /** Nothing is painted here. */
    static final int NOTHING = PlanarSubdivision.NOTHING;

    private final ImmutableList<PaintedPart> parts;
    private final ImmutableList<Seen> all;
    private final ImmutableList<Seen> seen;

    /** A piece of an outline with the parts that are seen on its two sides. */
    record Seen(Point from, Point to, int left, int right) {
        double length() {
            return from.distance(to);
        }

        Point middle() {
            return from.middle(to);
        }
    }

    /** @param subdivision of the parts' outlines */
    PaintedParts(ImmutableList<PaintedPart> parts, PlanarSubdivision subdivision) {
        this.parts = parts;
        this.all = subdivision
                .edges()
                .collect(edge -> new Seen(
                        edge.from(), edge.to(), part(subdivision, edge.left()), part(subdivision, edge.right())));
        this.seen = all.reject(edge -> alike(edge.left(), edge.right()));
    }

    private static int part(PlanarSubdivision subdivision, int face) {
        return face == NOTHING ? NOTHING : subdivision.faces().get(face).painted();
    }

    static Box box(PaintedPart part) {
        return Box.around(part.outline().corners().collect(corner -> new Spot(corner.x(), corner.y())));
    }

    ImmutableList<PaintedPart> parts() {
        return parts;
    }

    Box bounds() {
        return parts.collect(PaintedParts::box).reduce(Box::joinedWith).orElseThrow();
    }

    /** Whether two parts look alike, so that no line is drawn between them. */
    private boolean alike(int i, int j) {
        if (i == j) {
            return true;
        }
        if (i == NOTHING || j == NOTHING) {
            return false;
        }
        return parts.get(i).material().equals(parts.get(j).material())
                && parts.get(i).look() == parts.get(j).look();
    }

    /** Those of them that reach into a window. */
    ImmutableList<Seen> seen(Box window) {
        return seen.select(edge -> meets(window, edge));
    }

    /** The parts of which something is seen in a window, in painting order. */
    ImmutableList<Integer> visible(Box window) {
        return Lists.mutable
                .withAll(all.select(edge -> meets(window, edge))
                        .flatCollect(edge -> Lists.immutable.of(edge.left(), edge.right())))
                .with(along(new Point(window.middleX(), window.middleY()), 1, 0)
                        .detectOptional(run -> run.from() <= 0 && run.to() > 0)
                        .map(Run::part)
                        .orElse(NOTHING))
                .reject(part -> part == NOTHING)
                .distinct()
                .sortThis()
                .toImmutable();
    }

    private static boolean meets(Box window, Seen edge) {
        return window.clipped(
                        new Spot(edge.from().x(), edge.from().y()),
                        new Spot(edge.to().x(), edge.to().y()))
                .notEmpty();
    }

    /**
     * What a straight line meets of one part.
     *
     * @param from m along the line
     * @param to m along the line
     * @param square whether the part's two ends there are at right angles to the line
     */
    record Run(int part, double from, double to, boolean square) {}

    /** Where a line passes from one part into another. */
    private record Crossing(double at, int into, boolean square) {}

    /** Cosine between a line and what it crosses, up to which they are at right angles; a tenth of a millimetre in 100 mm. */
    private static final double SQUARE = 1e-3;

    /** m; a run shorter than this is where the line passes a corner. */
    private static final double CORNER = 1e-7;

    /** What a line meets, in order, without the gaps; its direction is a unit vector. */
    ImmutableList<Run> along(Point origin, double dx, double dy) {
        ImmutableList<Crossing> crossings = seen.collect(edge -> crossing(edge, origin, dx, dy))
                .reject(crossing -> crossing == null)
                .toImmutableSortedListBy(Crossing::at);
        return crossings
                .collectWithIndex((crossing, i) -> {
                    Crossing next = crossings.get(Math.min(i + 1, crossings.size() - 1));
                    return new Run(crossing.into(), crossing.at(), next.at(), crossing.square() && next.square());
                })
                .reject(run -> run.part() == NOTHING || run.to() - run.from() < CORNER);
    }

    private static Crossing crossing(Seen edge, Point origin, double dx, double dy) {
        double from = dx * (edge.from().y() - origin.y()) - dy * (edge.from().x() - origin.x());
        double to = dx * (edge.to().y() - origin.y()) - dy * (edge.to().x() - origin.x());
        if (from >= 0 == to >= 0) {
            return null;
        }
        double share = from / (from - to);
        double ex = edge.to().x() - edge.from().x();
        double ey = edge.to().y() - edge.from().y();
        double at = dx * (edge.from().x() + share * ex - origin.x())
                + dy * (edge.from().y() + share * ey - origin.y());
        // Going up across the line, the edge has what comes next on its right.
        return new Crossing(
                at, to > from ? edge.right() : edge.left(), Math.abs(dx * ex + dy * ey) <= SQUARE * edge.length());
    }
}
