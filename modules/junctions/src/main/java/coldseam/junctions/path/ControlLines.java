package coldseam.junctions.path;

import coldseam.conduction.Point;
import coldseam.envelope.Control;
import coldseam.envelope.Material;
import coldseam.junctions.ControlLine;
import coldseam.junctions.PenLine;
import coldseam.junctions.detail.Connection;
import coldseam.junctions.detail.Detail;
import coldseam.junctions.language.DrawingNames;
import coldseam.junctions.plan.PlanarSubdivision;
import coldseam.junctions.plan.SectionEnd;
import coldseam.junctions.plan.SectionPlan;
import coldseam.junctions.plan.SectionPlan.Origin;
import coldseam.junctions.plan.SectionPlan.Zone;
import coldseam.junctions.section.Composer;
import coldseam.junctions.section.Composition;
import coldseam.junctions.section.Shapes;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.set.primitive.ImmutableIntSet;
import org.eclipse.collections.impl.factory.Lists;
import org.eclipse.collections.impl.factory.primitive.IntSets;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * Follows air, water and vapour control through a section's faces.
 *
 * <p>A face can control where its material can (by its source) and it does not insulate; what insulates counts only where a
 * surface names that very layer for it, since boards have joints. From a face the line goes on into another across a common
 * edge, and over what cannot control along edges, as a strip. The way with the least of strips is sought (Dijkstra). Strips
 * against water stay on the outer side of the pen line, unless a surface has its water control indoors of the insulation.
 * Through the pen line only a sheet leads that the detail draws for that control.
 */
public final class ControlLines {

    /** m; a face this near to a surface's end lies on it. */
    private static final double TOUCHING = 1e-5;

    /** m; a longer strip is a layer of its own, which must be drawn. */
    private static final double LONGEST = 1.5;

    /** m, of the same in a detail that nobody has looked at: the layer of a surface may not stop before it has to (judgement). */
    private static final double OWN = 0.5;

    private final SectionPlan plan;
    private final ImmutableList<Geometry> ends;
    private final Detail detail;
    private final PenLine penLine;
    private final boolean secondIsBand;
    private final boolean framed;
    private final ImmutableList<Geometry> faces;
    /** What is drawn beside strips, and a strip's width around it; null before it is asked for. */
    private Geometry beside;

    private ControlLines(Composition composition, Detail detail, PenLine penLine) {
        this.plan = composition.plan();
        this.ends = composition.ends();
        this.detail = detail;
        this.penLine = penLine;
        this.secondIsBand =
                plan.pieces().anySatisfy(piece -> piece.origin() instanceof Origin.OfLayer layer && !layer.first());
        this.framed = plan.pieces().anySatisfy(piece -> piece.origin() instanceof Origin.OfFrame);
        this.faces = plan.seen().faces().collect(ControlLines::area);
    }

    /** The lines of a section, in the order air, water, vapour. */
    public static ImmutableList<ControlLine> of(Composition composition, Detail detail, PenLine penLine) {
        if (composition.plan().pieces().anySatisfy(piece -> piece.origin() instanceof Origin.ByHand)) {
            return DrawingNames.CONTROLS.collect(
                    control -> new ControlLine.NotShown(control, ControlLine.NotShown.Reason.BY_HAND));
        }
        ControlLines lines = new ControlLines(composition, detail, penLine);
        return DrawingNames.CONTROLS.collect(lines::line);
    }

    private ControlLine line(Control control) {
        ImmutableList<Integer> from = named(control, true, ends.getFirst());
        ImmutableList<Integer> to = framed
                ? indices(face -> piece(face).origin() instanceof Origin.OfFrame)
                : named(control, !secondIsBand, ends.getLast());
        if (from.isEmpty() || to.isEmpty()) {
            return new ControlLine.NotShown(control, ControlLine.NotShown.Reason.NO_LAYER);
        }
        Connection how = detail.connections().get(control);
        if (how == null || how == Connection.NOT_SHOWN) {
            return new ControlLine.NotShown(control, ControlLine.NotShown.Reason.DETAIL_SILENT);
        }
        if (how == Connection.BROKEN) {
            return new ControlLine.Broken(control, beginning(control, from, to), ControlLine.Broken.Reason.SAID);
        }
        Zone first = zone(from.getFirst());
        Zone second = framed ? first : zone(to.getFirst());
        boolean outdoors = control == Control.WATER && first != Zone.INSIDE && second != Zone.INSIDE;
        ImmutableIntSet able =
                IntSets.immutable.ofAll(IntStream.range(0, faces.size()).filter(face -> able(face, control)));
        StripWays ways = new StripWays(
                plan,
                able::contains,
                from,
                to,
                edge -> isBarred(edge) || outdoors && penLine.unbroken() && indoors(edge.middle()),
                detail.own() ? OWN : LONGEST);
        // Taped joints alone lead nowhere through the insulation; a sheet that is drawn does, and may be taped at its
        // ends.
        boolean through = first.opposite(second);
        return ways.way(through && !carries(control) ? StripWays.Strips.NONE : StripWays.Strips.ALONG_EDGES)
                .filter(way -> !through || way.strips().isEmpty() || sheets(way).notEmpty())
                .<ControlLine>map(
                        way -> new ControlLine.Continuous(control, drawn(way, control), way.strips(), sheets(way)))
                .orElseGet(() ->
                        through || ways.way(StripWays.Strips.ACROSS_THE_BAR).isPresent()
                                ? new ControlLine.ChangesSide(control, beginning(control, from, to), first, second)
                                : new ControlLine.Broken(
                                        control, beginning(control, from, to), ControlLine.Broken.Reason.OUT_OF_REACH));
    }

    /** The line with its two ends on the section's ends, straight pieces that leave their face bent to stay in it. */
    private ImmutableList<Point> drawn(StripWays.Way way, Control control) {
        MutableList<Point> line = Lists.mutable.empty();
        Point begins = onEnd(way.firstFace(), ends.getFirst());
        Point arrives = onEnd(way.lastFace(), ends.getLast());
        if (way.steps().isEmpty()) {
            return inFace(way.firstFace(), begins, arrives, control);
        }
        line.addAllIterable(
                inFace(way.firstFace(), begins, way.steps().getFirst().from(), control));
        for (StripWays.Step step : way.steps()) {
            line.addAllIterable(
                    step.face() == PlanarSubdivision.NOTHING
                            ? Lists.immutable.of(step.from(), step.to())
                            : inFace(step.face(), step.from(), step.to(), control));
        }
        line.addAllIterable(inFace(way.lastFace(), way.steps().getLast().to(), arrives, control));
        return distinct(line);
    }

    private static ImmutableList<Point> distinct(MutableList<Point> line) {
        MutableList<Point> out = Lists.mutable.empty();
        line.forEach(point -> {
            if (out.isEmpty() || !out.getLast().equals(point)) {
                out.add(point);
            }
        });
        return out.toImmutable();
    }

    private ImmutableList<Point> inFace(int face, Point from, Point to, Control control) {
        Geometry straight = Shapes.line(from, to);
        ImmutableList<Point> taut = straight.getLength() < TOUCHING
                        || faces.get(face).isEmpty()
                        || faces.get(face).buffer(TOUCHING).covers(straight)
                ? Lists.immutable.of(from, to)
                : ClearWay.through(faces.get(face), point(from), point(to));
        return FaceWays.along(
                        faces.get(face),
                        taut,
                        plan.ends(),
                        at -> penLine.unbroken() && indoors(at) == (control == Control.WATER))
                .orElse(taut);
    }

    /** From the first surface's end to where its layer comes nearest to the other's. */
    private ImmutableList<Point> beginning(Control control, ImmutableList<Integer> from, ImmutableList<Integer> to) {
        Geometry rest = Shapes.union(to.collect(faces::get));
        int face = from.getFirst();
        Point nearest = Shapes.point(DistanceOp.nearestPoints(faces.get(face), rest)[0]);
        return inFace(face, onEnd(face, ends.getFirst()), nearest, control);
    }

    private Point onEnd(int face, Geometry end) {
        Geometry met = faces.get(face).intersection(end);
        return Shapes.point(
                met.isEmpty()
                        ? DistanceOp.nearestPoints(faces.get(face), end)[0]
                        : met.getCentroid().getCoordinate());
    }

    private static Geometry point(Point at) {
        return Shapes.FACTORY.createPoint(Shapes.coordinate(at));
    }

    private SectionPlan.Piece piece(int face) {
        return plan.pieces().get(plan.seen().faces().get(face).painted());
    }

    /** Faces; what is too thin to have an area, as rounding leaves between two pieces, is none. */
    private ImmutableList<Integer> indices(IntPredicate which) {
        MutableList<Integer> found = Lists.mutable.empty();
        for (int face = 0; face < faces.size(); face++) {
            if (!faces.get(face).isEmpty() && which.test(face)) {
                found.add(face);
            }
        }
        return found.toImmutable();
    }

    /** The faces at a surface's end of the layers it names for a control that their material can do. */
    private ImmutableList<Integer> named(Control control, boolean first, Geometry end) {
        return indices(face -> piece(face).origin() instanceof Origin.OfLayer layer
                && layer.first() == first
                && names(layer, control)
                && faces.get(face).distance(end) < TOUCHING);
    }

    private static boolean names(Origin.OfLayer layer, Control control) {
        return layer.layer().controls().contains(control)
                && layer.layer().material().canControl(control);
    }

    private Zone zone(int face) {
        return ((Origin.OfLayer) piece(face).origin()).zone();
    }

    /** Whether the detail draws a strip for a control. */
    private boolean carries(Control control) {
        return plan.pieces()
                .anySatisfy(piece -> piece.origin() instanceof Origin.OfStrip strip
                        && strip.carries().contains(control));
    }

    private ImmutableList<String> sheets(StripWays.Way way) {
        return way.faces()
                .collect(face -> piece(face).origin())
                .selectInstancesOf(Origin.OfStrip.class)
                .collect(Origin.OfStrip::what)
                .distinct();
    }

    /** Whether a strip lies in or on what is drawn, over its whole length: one that hangs in the air is fixed to nothing. */
    private boolean held(int face) {
        if (beside == null) {
            beside = Shapes.union(indices(other -> !(piece(other).origin() instanceof Origin.OfStrip))
                            .collect(faces::get))
                    .buffer(2 * Composer.STRIP);
        }
        return beside.covers(faces.get(face));
    }

    private boolean able(int face, Control control) {
        SectionPlan.Piece piece = piece(face);
        if (piece.origin() instanceof Origin.OfStrip strip) {
            return strip.carries().contains(control) && piece.material().canControl(control) && held(face);
        }
        if (piece.origin() instanceof Origin.OfFrame) {
            return true;
        }
        Material material = piece.material();
        return material.canControl(control)
                && (!material.insulates()
                        || plan.pieces()
                                .anySatisfy(each -> each.material().name().equals(material.name())
                                        && each.origin() instanceof Origin.OfLayer layer
                                        && names(layer, control)));
    }

    /** Whether a strip along an edge would run through the pen line, or along where the section stops. */
    private boolean isBarred(PlanarSubdivision.Edge edge) {
        return crosses(edge) || plan.ends().anySatisfy(end -> along(end, edge.middle()));
    }

    private boolean crosses(PlanarSubdivision.Edge edge) {
        if (!penLine.unbroken()) {
            return false;
        }
        RobustLineIntersector met = new RobustLineIntersector();
        ImmutableList<Point> path = penLine.path();
        for (int i = 1; i < path.size(); i++) {
            met.computeIntersection(
                    Shapes.coordinate(edge.from()),
                    Shapes.coordinate(edge.to()),
                    Shapes.coordinate(path.get(i - 1)),
                    Shapes.coordinate(path.get(i)));
            if (met.hasIntersection()) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether a place lies on the room side of the pen line: on the side of the nearest piece of it on which the first
     * surface's inner face begins.
     */
    private boolean indoors(Point at) {
        Coordinate inner = ends.getFirst().getCoordinates()[0];
        return (side(Shapes.coordinate(at)) > 0) == (side(inner) > 0);
    }

    /** Positive on the left of the pen line, by its nearest piece; at a bend, by the two pieces that meet there. */
    private double side(Coordinate at) {
        ImmutableList<Point> path = penLine.path();
        double nearest = Double.POSITIVE_INFINITY;
        double side = 0;
        for (int i = 1; i < path.size(); i++) {
            LineSegment piece = new LineSegment(Shapes.coordinate(path.get(i - 1)), Shapes.coordinate(path.get(i)));
            double distance = piece.distance(at);
            double across =
                    (piece.p1.x - piece.p0.x) * (at.y - piece.p0.y) - (piece.p1.y - piece.p0.y) * (at.x - piece.p0.x);
            double share = across / piece.getLength();
            if (distance < nearest - TOUCHING) {
                nearest = distance;
                side = share;
            } else if (distance < nearest + TOUCHING && Math.abs(share) > Math.abs(side)) {
                // The same corner is nearest of both: the piece that is seen less aslant tells the side.
                side = share;
            }
        }
        return side;
    }

    private static boolean along(SectionEnd end, Point point) {
        return new LineSegment(Shapes.coordinate(end.from()), Shapes.coordinate(end.to()))
                        .distance(Shapes.coordinate(point))
                < TOUCHING;
    }

    private static Geometry area(PlanarSubdivision.Face face) {
        LinearRing[] rings = face.rings()
                .collect(ring -> Shapes.FACTORY.createLinearRing(ring.newWith(ring.getFirst())
                        .collect(Shapes::coordinate)
                        .toArray(new Coordinate[0])))
                .toArray(new LinearRing[0]);
        LinearRing[] holes = new LinearRing[rings.length - 1];
        System.arraycopy(rings, 1, holes, 0, holes.length);
        Geometry area = Shapes.FACTORY.createPolygon(rings[0], holes);
        return area.isValid() ? area : area.buffer(0);
    }
}
