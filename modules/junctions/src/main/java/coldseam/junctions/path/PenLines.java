package coldseam.junctions.path;

import coldseam.conduction.Point;
import coldseam.junctions.PenLine;
import coldseam.junctions.section.Shapes;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * Draws the pen line: from one end of the insulation to the other without leaving it, as far from its edges as can be.
 *
 * <p>The insulation eroded by w/2 is what the centre of a disc of diameter w can reach. The neck is the largest w for which
 * some part of it touches both ends; bisection narrows it, then the two places of the outline between which it lies give it
 * exactly: two corners, or a corner and an edge, or two edges.
 */
public final class PenLines {

    /** m; the bisection ends here, the outline's own corners say the rest. */
    private static final double RESOLVED = 2e-6;

    /** Corners of a quarter circle: a radius of 150 mm is met within 0.01 mm. */
    private static final int QUADRANT = 48;

    /** m; as the bisection's, with the error of the circles. */
    private static final double ALIKE = 1e-4;

    /** m; two parts this near touch. */
    private static final double TOUCHING = 1e-5;

    private final Geometry insulation;
    private final Geometry from;
    private final Geometry to;
    private final double thinner;

    private PenLines(Geometry insulation, Geometry from, Geometry to, double thinner) {
        this.insulation = insulation;
        this.from = from;
        this.to = to;
        this.thinner = thinner;
    }

    /**
     * The pen line through an area.
     *
     * @param insulation everything that insulates
     * @param from where the line begins
     * @param to where it must arrive
     * @param thinner m, insulation thickness of the thinner surface; zero where one has none
     */
    public static PenLine of(Geometry insulation, Geometry from, Geometry to, double thinner) {
        return new PenLines(insulation, from, to, thinner).drawn();
    }

    private PenLine drawn() {
        // Layers apart may each run from end to end, as wool between battens inside a panel does: the widest way
        // counts.
        ImmutableList<Way> ways = Shapes.parts(insulation).select(this::joins).collect(this::way);
        if (ways.isEmpty()) {
            return new PenLine(false, asFar(), 0, Lists.immutable.empty(), 0);
        }
        Way widest = ways.maxBy(Way::enough);
        Geometry whole = widest.whole();
        double enough = widest.enough();
        LineSegment neck = neck(whole, enough, widest.tooMuch());
        double width = neck == null ? enough : neck.getLength();
        ImmutableList<Point> at = neck == null
                ? Lists.immutable.empty()
                : Lists.immutable.of(Shapes.point(neck.p0), Shapes.point(neck.p1));
        double share = thinner > 0 ? Math.min(1, width / thinner) : 0;
        return new PenLine(true, path(whole, width), width, at, share);
    }

    /** A part that joins the ends, and the widths between which its neck lies. */
    private record Way(Geometry whole, double enough, double tooMuch) {}

    private Way way(Geometry whole) {
        double enough = 0;
        double tooMuch = 2 * Math.sqrt(whole.getArea());
        while (tooMuch - enough > RESOLVED) {
            double w = (enough + tooMuch) / 2;
            if (joining(eroded(whole, w)) != null) {
                enough = w;
            } else {
                tooMuch = w;
            }
        }
        return new Way(whole, enough, tooMuch);
    }

    private static Geometry eroded(Geometry area, double w) {
        return new BufferOp(
                        area,
                        new BufferParameters(QUADRANT, BufferParameters.CAP_ROUND, BufferParameters.JOIN_ROUND, 10))
                .getResultGeometry(-w / 2);
    }

    /** A part of an area that touches both ends; null where none does. */
    private Geometry joining(Geometry area) {
        return Shapes.parts(area).detect(this::joins);
    }

    private boolean joins(Geometry part) {
        return part.distance(from) < TOUCHING && part.distance(to) < TOUCHING;
    }

    // Where the neck is: a short bridge between two places of the outline, across what joins the ends.

    private LineSegment neck(Geometry whole, double enough, double tooMuch) {
        Geometry apart = eroded(whole, tooMuch + ALIKE);
        double w = (enough + tooMuch) / 2;
        MutableList<LineSegment> edges = edges(whole);
        MutableList<LineSegment> candidates = Lists.mutable.empty();
        for (int i = 0; i < edges.size(); i++) {
            for (int j = i + 1; j < edges.size(); j++) {
                LineSegment bridge = bridge(edges.get(i), edges.get(j));
                if (bridge != null && Math.abs(bridge.getLength() - w) < 5 * ALIKE) {
                    candidates.add(bridge);
                }
            }
        }
        candidates.sortThisByDouble(each -> Math.abs(each.getLength() - w));
        for (LineSegment bridge : candidates) {
            if (inside(whole, bridge) && separates(whole, bridge)) {
                return bridge;
            }
        }
        return apart.isEmpty() || candidates.isEmpty() ? null : candidates.getFirst();
    }

    private static MutableList<LineSegment> edges(Geometry area) {
        MutableList<LineSegment> edges = Lists.mutable.empty();
        var polygon = (org.locationtech.jts.geom.Polygon) area;
        for (int r = -1; r < polygon.getNumInteriorRing(); r++) {
            Coordinate[] ring = (r < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(r)).getCoordinates();
            for (int i = 0; i + 1 < ring.length; i++) {
                edges.add(new LineSegment(ring[i], ring[i + 1]));
            }
        }
        return edges;
    }

    /** The shortest way between two edges that do not touch; between parallel ones in the middle of where they face. */
    private static LineSegment bridge(LineSegment a, LineSegment b) {
        if (a.distance(b) < TOUCHING) {
            return null;
        }
        Coordinate[] nearest = a.closestPoints(b);
        LineSegment facing = a.project(b);
        double cross = (a.p1.x - a.p0.x) * (b.p1.y - b.p0.y) - (a.p1.y - a.p0.y) * (b.p1.x - b.p0.x);
        if (facing != null && Math.abs(cross) < 1e-9 * a.getLength() * b.getLength()) {
            Coordinate middle = facing.midPoint();
            return new LineSegment(middle, b.closestPoint(middle));
        }
        return new LineSegment(nearest[0], nearest[1]);
    }

    private static boolean inside(Geometry area, LineSegment bridge) {
        Geometry middle = Shapes.FACTORY.createPoint(bridge.midPoint());
        return area.contains(middle) && area.buffer(TOUCHING).covers(bridge.toGeometry(Shapes.FACTORY));
    }

    /** Whether the ends are no longer joined where the bridge is taken out. */
    private boolean separates(Geometry area, LineSegment bridge) {
        Geometry bar = bridge.toGeometry(Shapes.FACTORY).buffer(2 * TOUCHING, 1, BufferParameters.CAP_SQUARE);
        return joining(area.difference(bar)) == null;
    }

    // The line itself.

    /** A taut line that keeps nearly half the neck away from the insulation's edges. */
    private ImmutableList<Point> path(Geometry whole, double neck) {
        for (double share : new double[] {0.45, 0.4, 0.3, 0.2}) {
            Geometry room = joining(ClearWay.inset(whole, share * neck));
            if (room != null) {
                return ClearWay.through(room, from, to);
            }
        }
        return ClearWay.through(whole, from, to);
    }

    /** Where it breaks, the line goes as far as the insulation at its beginning comes towards the rest. */
    private ImmutableList<Point> asFar() {
        Geometry part = Shapes.parts(insulation).detect(each -> each.distance(from) < TOUCHING);
        if (part == null) {
            return Lists.immutable.empty();
        }
        Coordinate end = DistanceOp.nearestPoints(part, rest(part))[0];
        return ClearWay.through(reaching(part), from, Shapes.FACTORY.createPoint(end))
                .newWith(Shapes.point(end));
    }

    /** The middle of a part, as far from its edges as it still reaches its beginning. */
    private Geometry reaching(Geometry part) {
        double across = part.intersection(from).getLength();
        Geometry inset = ClearWay.inset(part, 0.4 * across);
        return Shapes.parts(inset).detectIfNone(each -> each.distance(from) < TOUCHING, () -> part);
    }

    /** The insulation the other end lies in; the end itself where there is none. */
    private Geometry rest(Geometry part) {
        return Shapes.parts(insulation).detectIfNone(other -> other != part && other.distance(to) < TOUCHING, () -> to);
    }
}
