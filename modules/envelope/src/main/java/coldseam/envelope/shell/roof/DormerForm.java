package coldseam.envelope.shell.roof;

import coldseam.envelope.Body;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.plan.Plan;
import coldseam.envelope.shell.plan.StepZones;
import coldseam.files.quantity.Format;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * A dormer in plan: its own planes, its front and its cheeks, on the slope over one side of an outline.
 *
 * <p>Along that side runs u, from its left end seen from outdoors; inwards from it v, both in m. The slope under the dormer has the
 * height v·tan p over the eaves. The front stands at v = f; its top lies h over the slope there. A shed's plane goes on from there
 * with its own, lesser pitch to where it meets the slope; a gabled one's two planes rise from the cheeks to a level ridge, and
 * meet the slope in two valleys.
 */
public final class DormerForm {

    /** Millimetres: what a dormer is told apart by from the ridges and hips around it. */
    static final PrecisionModel COARSE = new PrecisionModel(1e5);

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** Degrees by which a shed's pitch is less than that of the slope under it, so that the two meet within reach. */
    private static final double FLATTER = 1;

    /** What runs along one of a dormer's lines. */
    public enum Kind {
        FRONT,
        CHEEK,
        /** Where two planes meet. */
        MEETING,
        /** Parts the slope under the dormer, so that no part of it has a hole. */
        CUT
    }

    /**
     * A line of a dormer, with the heights of its own planes.
     *
     * @param kind what runs there
     * @param line in plan
     */
    public record Edge(Kind kind, RoofSkeleton.Line line) {}

    private final Body.Dormer dormer;
    private final Point2 origin;
    private final Point2 along;
    private final double length;
    private final double slope;
    private final double left;
    private final double right;
    private final double top;

    /**
     * @param dormer on a side whose slope begins at the eaves
     * @param from the side's start, outer faces
     * @param to its end
     * @param slope tangent of the pitch of the slope under it
     */
    DormerForm(Body.Dormer dormer, Point2 from, Point2 to, double slope) {
        this.dormer = dormer;
        this.origin = from;
        this.length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        this.along = new Point2((to.x() - from.x()) / length, (to.y() - from.y()) / length);
        this.slope = slope;
        this.left = dormer.left().orElse((length - dormer.width()) / 2 + dormer.offMiddle());
        this.right = left + dormer.width();
        this.top = dormer.setBack() * slope + dormer.height();
    }

    public Body.Dormer dormer() {
        return dormer;
    }

    private double tangent() {
        return Math.tan(Math.toRadians(dormer.pitch()));
    }

    private double middle() {
        return (left + right) / 2;
    }

    /** m over the eaves, of a gabled dormer's ridge. */
    private double crest() {
        return top + dormer.width() / 2 * tangent();
    }

    /** v at which the cheeks end. */
    private double end() {
        return dormer.gabled() ? top / slope : (top - dormer.setBack() * tangent()) / (slope - tangent());
    }

    private Point2 plan(double u, double v) {
        return new Point2(origin.x() + u * along.x() - v * along.y(), origin.y() + u * along.y() + v * along.x());
    }

    private double u(Point2 p) {
        return (p.x() - origin.x()) * along.x() + (p.y() - origin.y()) * along.y();
    }

    private double v(Point2 p) {
        return (p.y() - origin.y()) * along.x() - (p.x() - origin.x()) * along.y();
    }

    /** Corners in plan, counterclockwise: the front's left end first. */
    private ImmutableList<Point2> corners() {
        double front = dormer.setBack();
        ImmutableList<Point2> fronts = Lists.immutable.of(plan(left, front), plan(right, front));
        return dormer.gabled()
                ? fronts.newWith(plan(right, end()))
                        .newWith(plan(middle(), crest() / slope))
                        .newWith(plan(left, end()))
                : fronts.newWith(plan(right, end())).newWith(plan(left, end()));
    }

    private Polygon polygon() {
        return Plan.outline(corners());
    }

    /** What lies under each of its planes. */
    ImmutableList<Polygon> parts() {
        ImmutableList<Point2> all = corners();
        if (!dormer.gabled()) {
            return Lists.immutable.of(Plan.outline(all));
        }
        Point2 crown = plan(middle(), dormer.setBack());
        return Lists.immutable.of(
                Plan.outline(Lists.immutable.of(all.get(0), crown, all.get(3), all.get(4))),
                Plan.outline(Lists.immutable.of(crown, all.get(1), all.get(2), all.get(3))));
    }

    /** Whether a point of the plan lies under the dormer's own planes. */
    boolean covers(Point2 point) {
        return polygon().covers(GEOMETRY.createPoint(new Coordinate(point.x(), point.y())));
    }

    /** Whether a point of the plan lies on the line of the front. */
    boolean infront(Point2 point) {
        return Math.abs(v(point) - dormer.setBack()) <= StepZones.HAIR && u(point) >= left && u(point) <= right;
    }

    /** m over the eaves, of the slope under it. */
    double under(Point2 point) {
        return v(point) * slope;
    }

    /** Whether a unit vector points out of its front. */
    public boolean faces(Point3 out) {
        return out.x() * along.y() - out.y() * along.x() > 0.5;
    }

    /** Which of its planes lies over a point: zero from the left cheek, one from the right. */
    int plane(Point2 point) {
        return dormer.gabled() && u(point) > middle() ? 1 : 0;
    }

    /** m over the eaves. */
    double height(int plane, Point2 point) {
        if (!dormer.gabled()) {
            return top + (v(point) - dormer.setBack()) * tangent();
        }
        return top + (plane == 0 ? u(point) - left : right - u(point)) * tangent();
    }

    /** All its lines; of the slope under it the heights where they are no meetings. */
    ImmutableList<Edge> edges() {
        double front = dormer.setBack();
        double back = dormer.gabled() ? top : end() * slope;
        MutableList<Edge> edges = Lists.mutable.of(
                edge(Kind.CHEEK, left, front, top, left, end(), back),
                edge(Kind.CHEEK, right, front, top, right, end(), back));
        if (dormer.gabled()) {
            double ridge = crest() / slope;
            edges.add(edge(Kind.FRONT, left, front, top, middle(), front, crest()));
            edges.add(edge(Kind.FRONT, middle(), front, crest(), right, front, top));
            edges.add(edge(Kind.MEETING, middle(), front, crest(), middle(), ridge, crest()));
            edges.add(edge(Kind.MEETING, left, end(), top, middle(), ridge, crest()));
            edges.add(edge(Kind.MEETING, middle(), ridge, crest(), right, end(), top));
        } else {
            edges.add(edge(Kind.FRONT, left, front, top, right, front, top));
            edges.add(edge(Kind.MEETING, left, end(), back, right, end(), back));
        }
        return edges.toImmutable();
    }

    private Edge edge(Kind kind, double u, double v, double z, double otherU, double otherV, double otherZ) {
        return new Edge(kind, new RoofSkeleton.Line(plan(u, v), plan(otherU, otherV), z, otherZ, -1));
    }

    /**
     * Lines that part the slope under it beside its left cheek, down to the eaves and up to where the slope ends; none where the
     * dormer itself stands at the eaves.
     *
     * @param under the slope in plan
     */
    ImmutableList<Edge> cuts(Geometry under) {
        double front = dormer.setBack();
        if (front == 0) {
            return Lists.immutable.empty();
        }
        LineString up = GEOMETRY.createLineString(
                new Coordinate[] {coordinate(plan(left, end())), coordinate(plan(left, end() + 1e3))});
        double far = Double.POSITIVE_INFINITY;
        for (Coordinate hit : under.getBoundary().intersection(up).getCoordinates()) {
            double at = v(new Point2(hit.x, hit.y));
            far = at > end() + StepZones.HAIR / 2 ? Math.min(far, at) : far;
        }
        return Lists.immutable.of(
                edge(Kind.CUT, left, 0, 0, left, front, front * slope),
                edge(Kind.CUT, left, end(), end() * slope, left, far, far * slope));
    }

    private static Coordinate coordinate(Point2 p) {
        return new Coordinate(p.x(), p.y());
    }

    /** m over the eaves between which a level section through it has one formula each. */
    ImmutableList<Double> levels() {
        double foot = dormer.setBack() * slope;
        double most = dormer.gabled() ? crest() : end() * slope;
        return Lists.immutable.of((foot + top) / 2, (2 * top + most) / 3, (top + 2 * most) / 3);
    }

    /** m², by which the dormer widens a level section: where its planes lie over a height and the slope does not. */
    double widens(double height) {
        double slopeEnds = Math.max(dormer.setBack(), height / slope);
        double over = Math.max(0, height - top);
        if (dormer.gabled()) {
            double narrower = over == 0 ? 0 : 2 * over / tangent();
            return Math.max(0, dormer.width() - narrower) * (slopeEnds - dormer.setBack());
        }
        double begins = dormer.setBack() + (over == 0 ? 0 : over / tangent());
        return dormer.width() * Math.max(0, Math.min(slopeEnds, end()) - begins);
    }

    /** Why it does not stand on its slope; empty where it does. */
    Optional<String> misfit(Geometry under) {
        double steepest = Math.toDegrees(Math.atan(slope)) - FLATTER;
        if (!dormer.gabled() && dormer.pitch() > steepest) {
            return Optional.of(Format.of(
                    "its pitch is %.1f°; that of a shed may be %.1f° at most, or it never meets the roof under it, of %.1f°. Lower"
                            + " the pitch, or make it gabled",
                    dormer.pitch(), steepest, steepest + FLATTER));
        }
        double back = corners().collectDouble(this::v).max();
        Geometry wanted = polygon().buffer(StepZones.HAIR).intersection(rectangle(left - 1, 0, right + 1, back + 1));
        Geometry missing = OverlayNG.overlay(wanted, under, OverlayNG.DIFFERENCE, COARSE);
        return missing.getArea() < 1e-6
                ? Optional.empty()
                : Optional.of(Format.of(
                        "it would reach from %.3f m to %.3f m from the left end of a side %.3f m long and from %.3f m to %.3f m behind"
                                + " its outer face, where its roof meets the slope; %.3f m² of that is no part of the slope%s. Make it"
                                + " narrower or lower, or move it",
                        left, right, length, dormer.setBack(), back, missing.getArea(), deep(under, back)));
    }

    /** How deep the slope is behind it, where that is what it lacks. */
    private String deep(Geometry under, double back) {
        double deepest = Lists.immutable
                .of(under.intersection(rectangle(left, 0, right, back + 1)).getCoordinates())
                .collectDouble(at -> v(new Point2(at.x, at.y)))
                .maxIfEmpty(0);
        return deepest < back - StepZones.HAIR ? Format.of(", which ends %.3f m behind that face there", deepest) : "";
    }

    private Polygon rectangle(double fromU, double fromV, double toU, double toV) {
        Coordinate first = coordinate(plan(fromU, fromV));
        return GEOMETRY.createPolygon(new Coordinate[] {
            first, coordinate(plan(toU, fromV)), coordinate(plan(toU, toV)), coordinate(plan(fromU, toV)), first.copy()
        });
    }

    /** Whether two dormers come closer than a hair. */
    boolean meets(DormerForm other) {
        return polygon().isWithinDistance(other.polygon(), StepZones.HAIR);
    }
}
