package coldseam.envelope.shell;

import coldseam.envelope.Body;
import coldseam.envelope.Exposure;
import coldseam.envelope.Opening;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.Vectors;
import coldseam.envelope.shell.lattice.Ring;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * A shell seen from a direction without perspective: what shows of each surface and opening, and of each edge.
 *
 * <p>Only surfaces that face the eye can show. Where two of them overlap in the picture, the one whose plane is nearer to
 * the eye there hides the other; surfaces of a shell do not pierce one another, so one point of each overlap decides it.
 * What shows is a surface's picture less all that hides it, so patches never overlap and may be drawn in any order. Two
 * views from opposite directions show every surface that nothing stands before, except those seen edge-on.
 *
 * @param azimuth degrees, of the eye: 0 from the north, 90 from the east
 * @param elevation degrees, of the eye above the horizon
 * @param patches in the surfaces' order, each surface's openings after it; x to the right and y up in the picture, m
 * @param traces in the edges' order, cut where an edge passes behind a surface
 * @param rims of holes in the shell, in the open edges' order, cut in the same way
 * @param ground where walls come out of it, cut in the same way
 */
public record ShellView(
        double azimuth,
        double elevation,
        ImmutableList<Patch> patches,
        ImmutableList<Trace> traces,
        ImmutableList<Stretch> rims,
        ImmutableList<Stretch> ground) {

    /** Overlaps smaller than this, m², are round-off. */
    private static final double SPECK = 1e-6;

    /** m, by which a plane must be nearer to hide an edge: more than the lattice and the pictures' rounding. */
    private static final double NEARER = 1e-3;

    /** Pictures are rounded to a micrometre, so that overlays are exact. */
    private static final PrecisionModel PICTURE = new PrecisionModel(1e6);

    private static final GeometryFactory GEOMETRY = new GeometryFactory(PICTURE);

    /**
     * A part of a surface that shows.
     *
     * @param surface it is part of
     * @param opening whose pane it is; empty for the surface itself
     * @param outline counterclockwise
     * @param holes where something nearer stands in its midst
     */
    public record Patch(
            Surface surface,
            Optional<Opening> opening,
            ImmutableList<Point2> outline,
            ImmutableList<ImmutableList<Point2>> holes) {

        /** Whether a point of the picture lies within its outline, the rim included; what stands in its holes is nearer. */
        private boolean surrounds(Coordinate at) {
            Coordinate[] ring = outline.newWith(outline.getFirst())
                    .collect(p -> new Coordinate(p.x(), p.y()))
                    .toArray(new Coordinate[0]);
            return PointLocation.isInRing(at, ring);
        }
    }

    /**
     * A part of an edge.
     *
     * @param edge it is part of
     * @param from one end
     * @param to the other end
     * @param visible whether it shows
     */
    public record Trace(Edge edge, Point2 from, Point2 to, boolean visible) {}

    /**
     * A part of a line in the picture.
     *
     * @param from one end
     * @param to the other end
     * @param visible whether it shows
     */
    public record Stretch(Point2 from, Point2 to, boolean visible) {}

    /** A surface that faces the eye, its picture, and its place among them. */
    private record Facing(Surface surface, Polygon picture, int order) {}

    /** Those that face the eye, found by where their pictures lie. */
    private static final class Faces {
        private final ImmutableList<Facing> all;
        private final STRtree tree = new STRtree();

        Faces(ImmutableList<Facing> all) {
            this.all = all;
            all.forEach(each -> tree.insert(each.picture().getEnvelopeInternal(), each));
        }

        /** In their order: those whose picture may lie over another. */
        ImmutableList<Facing> over(Geometry picture) {
            MutableList<Facing> found = Lists.mutable.empty();
            tree.query(picture.getEnvelopeInternal(), each -> found.add((Facing) each));
            return found.sortThisByInt(Facing::order).toImmutable();
        }
    }

    /** The picture's axes in space. */
    private record Axes(Point3 right, Point3 up, Point3 eye) {

        static Axes of(double azimuth, double elevation) {
            double a = Math.toRadians(azimuth);
            double e = Math.toRadians(elevation);
            Point3 eye = new Point3(Math.cos(e) * Math.sin(a), Math.cos(e) * Math.cos(a), Math.sin(e));
            Point3 right = new Point3(-Math.cos(a), Math.sin(a), 0);
            return new Axes(right, Vectors.cross(eye, right), eye);
        }

        Coordinate picture(Point3 point) {
            Coordinate c = new Coordinate(Vectors.dot(point, right), Vectors.dot(point, up));
            PICTURE.makePrecise(c);
            return c;
        }

        /** How near a surface's plane comes to the eye at a point of the picture. */
        double depth(Surface surface, Coordinate at) {
            Point3 n = surface.normal();
            double offset = Vectors.dot(n, surface.outline().getFirst());
            return (offset - at.x * Vectors.dot(n, right) - at.y * Vectors.dot(n, up)) / Vectors.dot(n, eye);
        }
    }

    /**
     * A view of a shell.
     *
     * @param azimuth degrees, of the eye: 0 from the north, 90 from the east
     * @param elevation degrees, of the eye above the horizon; less than 90 either way
     */
    public static ShellView of(Shell shell, double azimuth, double elevation) {
        Axes axes = Axes.of(azimuth, elevation);
        Faces facing = new Faces(shell.surfaces()
                .newWithAll(shell.steps())
                .select(s -> Vectors.dot(s.normal(), axes.eye()) > 1e-6)
                .collectWithIndex((s, i) -> new Facing(s, polygon(s.outline().collect(axes::picture)), i)));
        MutableList<Patch> patches = Lists.mutable.empty();
        for (Facing one : facing.all) {
            Geometry shown = one.picture();
            for (Facing other : facing.over(one.picture())) {
                if (other != one) {
                    shown = without(shown, hidden(one, other, axes));
                }
            }
            patches.addAllIterable(patches(one.surface(), Optional.empty(), shown));
            for (Pane pane : panes(shell, one.surface())) {
                Geometry picture = GEOMETRY.createMultiPointFromCoords(
                                pane.ends().collect(axes::picture).toArray(new Coordinate[0]))
                        .convexHull();
                // A wall under a door has its threshold alone.
                if (picture instanceof Polygon) {
                    patches.addAllIterable(patches(
                            one.surface(), Optional.of(pane.opening()), areas(picture, shown, OverlayNG.INTERSECTION)));
                }
            }
        }
        MutableList<Trace> traces = Lists.mutable.empty();
        shell.edges()
                .forEach(edge -> traces.addAllIterable(stretches(edge.from(), edge.to(), facing, axes)
                        .collect(s -> new Trace(edge, s.from(), s.to(), s.visible()))));
        return new ShellView(
                azimuth,
                elevation,
                patches.toImmutable(),
                traces.toImmutable(),
                shell.openEdges().flatCollect(edge -> stretches(edge.from(), edge.to(), facing, axes)),
                groundLines(shell).flatCollect(line -> stretches(line.from(), line.to(), facing, axes)));
    }

    /** A line in space. */
    private record Line(Point3 from, Point3 to) {}

    /** Upper ends of what walls have in the ground, but under floors that lie on it there. */
    private static ImmutableList<Line> groundLines(Shell shell) {
        return shell.surfaces().select(ShellView::isInTheGround).flatCollect(wall -> {
            // Seen from outdoors the outline runs to the left along its top.
            Point3 left = Vectors.cross(wall.normal(), Vectors.UP);
            ImmutableList<Point3> corners = wall.outline();
            ImmutableList<Edge> besideFloors = shell.edges()
                    .select(edge ->
                            edge.isAt(wall) && edge.surfaces().anySatisfy(each -> each.use() == Body.Use.FLOOR));
            return corners.zip(corners.drop(1).newWith(corners.getFirst()))
                    .collect(pair -> new Line(pair.getOne(), pair.getTwo()))
                    .select(line -> Vectors.dot(Vectors.minus(line.to(), line.from()), left) > NEARER
                            && besideFloors.noneSatisfy(edge -> lies(line, edge)));
        });
    }

    /** Whether a wall has the ground before it. */
    public static boolean isInTheGround(Surface surface) {
        return surface.use() == Body.Use.WALL && surface.faces(Exposure.Kind.GROUND);
    }

    /** Whether a line's middle lies on an edge. */
    private static boolean lies(Line line, Edge edge) {
        Point3 middle = Vectors.times(Vectors.plus(line.from(), line.to()), 0.5);
        return Vectors.length(Vectors.minus(middle, edge.from())) + Vectors.length(Vectors.minus(edge.to(), middle))
                < Vectors.length(Vectors.minus(edge.to(), edge.from())) + NEARER;
    }

    /** Where a point of space lies in the picture, m. */
    public Point2 picture(Point3 point) {
        Coordinate c = Axes.of(azimuth, elevation).picture(point);
        return new Point2(c.x, c.y);
    }

    /** Whether nothing stands before a point of the shell. */
    public boolean shows(Point3 point) {
        Axes axes = Axes.of(azimuth, elevation);
        Coordinate at = axes.picture(point);
        double depth = Vectors.dot(point, axes.eye());
        return patches.select(patch -> patch.opening().isEmpty() && patch.surrounds(at))
                .noneSatisfy(patch -> axes.depth(patch.surface(), at) > depth + NEARER);
    }

    /** An opening, which is convex, by its sides' ends in space: whatever seam a side is parted by, and wherever it begins. */
    private record Pane(Opening opening, ImmutableList<Point3> ends) {}

    private static ImmutableList<Pane> panes(Shell shell, Surface surface) {
        ImmutableList<Edge> rims = shell.edges().select(e -> e.opening().isPresent() && e.isAt(surface));
        return rims.collect(e -> e.opening().get())
                .distinct()
                .collect(opening -> new Pane(
                        opening,
                        rims.select(e -> e.opening().get().equals(opening))
                                .flatCollect(e -> Lists.immutable.of(e.from(), e.to()))));
    }

    private static Geometry hidden(Facing one, Facing other, Axes axes) {
        Geometry hidden = GEOMETRY.createPolygon();
        Geometry overlap = areas(one.picture(), other.picture(), OverlayNG.INTERSECTION);
        for (int i = 0; i < overlap.getNumGeometries(); i++) {
            Geometry part = overlap.getGeometryN(i);
            if (part.getArea() > SPECK) {
                Coordinate at = part.getInteriorPoint().getCoordinate();
                if (axes.depth(other.surface(), at) > axes.depth(one.surface(), at)) {
                    hidden = areas(hidden, part, OverlayNG.UNION);
                }
            }
        }
        return hidden;
    }

    private static Geometry without(Geometry whole, Geometry part) {
        return part.isEmpty() || whole.isEmpty() ? whole : areas(whole, part, OverlayNG.DIFFERENCE);
    }

    /** Areas alone: slivers that fall to lines on the picture's grid are left out. */
    private static Geometry areas(Geometry a, Geometry b, int operation) {
        OverlayNG overlay = new OverlayNG(a, b, PICTURE, operation);
        overlay.setStrictMode(true);
        return overlay.getResult();
    }

    private static ImmutableList<Patch> patches(Surface surface, Optional<Opening> opening, Geometry shown) {
        MutableList<Patch> patches = Lists.mutable.empty();
        for (int i = 0; i < shown.getNumGeometries(); i++) {
            if (shown.getGeometryN(i) instanceof Polygon
                    && shown.getGeometryN(i).getArea() > SPECK) {
                Polygon polygon = (Polygon) shown.getGeometryN(i).norm();
                MutableList<ImmutableList<Point2>> holes = Lists.mutable.empty();
                for (int h = 0; h < polygon.getNumInteriorRing(); h++) {
                    holes.add(points(polygon.getInteriorRingN(h)));
                }
                // A normalised ring runs clockwise.
                patches.add(new Patch(
                        surface, opening, points(polygon.getExteriorRing()).toReversed(), holes.toImmutable()));
            }
        }
        return patches.toImmutable();
    }

    private static ImmutableList<Point2> points(LinearRing ring) {
        return Lists.immutable
                .of(ring.getCoordinates())
                .take(ring.getNumPoints() - 1)
                .collect(c -> new Point2(c.x, c.y));
    }

    private static ImmutableList<Stretch> stretches(Point3 from, Point3 to, Faces facing, Axes axes) {
        Coordinate a = axes.picture(from);
        Coordinate b = axes.picture(to);
        if (a.distance(b) < 1e-5) {
            return Lists.immutable.empty();
        }
        LineString whole = GEOMETRY.createLineString(new Coordinate[] {a, b});
        double depthA = Vectors.dot(from, axes.eye());
        double depthB = Vectors.dot(to, axes.eye());
        // Stretches of the edge, 0 at its start to 1 at its end, that pass behind a surface.
        MutableList<double[]> behind = Lists.mutable.empty();
        for (Facing front : facing.over(whole)) {
            // A plane that is nearer at neither end is so nowhere between.
            if (axes.depth(front.surface(), a) <= depthA && axes.depth(front.surface(), b) <= depthB) {
                continue;
            }
            Geometry covered = OverlayNG.overlay(whole, front.picture(), OverlayNG.INTERSECTION, PICTURE);
            for (int i = 0; i < covered.getNumGeometries(); i++) {
                if (covered.getGeometryN(i) instanceof LineString
                        && !covered.getGeometryN(i).isEmpty()) {
                    Coordinate[] ends = covered.getGeometryN(i).getCoordinates();
                    double s = a.distance(ends[0]) / a.distance(b);
                    double t = a.distance(ends[ends.length - 1]) / a.distance(b);
                    double middle = (s + t) / 2;
                    Coordinate at = new Coordinate(a.x + middle * (b.x - a.x), a.y + middle * (b.y - a.y));
                    if (axes.depth(front.surface(), at) > depthA + middle * (depthB - depthA) + NEARER) {
                        behind.add(new double[] {Math.min(s, t), Math.max(s, t)});
                    }
                }
            }
        }
        return cut(a, b, behind);
    }

    private static ImmutableList<Stretch> cut(Coordinate a, Coordinate b, MutableList<double[]> behind) {
        MutableList<Stretch> traces = Lists.mutable.empty();
        double hiddenFrom = 0;
        double hiddenTo = 0;
        for (double[] stretch : behind.sortThisByDouble(s -> s[0]).with(new double[] {1, 1})) {
            if (stretch[0] > hiddenTo + 1e-9 || stretch[0] == 1) {
                add(traces, a, b, hiddenFrom, hiddenTo, false);
                add(traces, a, b, hiddenTo, stretch[0], true);
                hiddenFrom = stretch[0];
            }
            hiddenTo = Math.max(hiddenTo, stretch[1]);
        }
        return traces.toImmutable();
    }

    private static void add(
            MutableList<Stretch> traces, Coordinate a, Coordinate b, double s, double t, boolean visible) {
        if (t - s > 1e-6) {
            traces.add(new Stretch(
                    new Point2(a.x + s * (b.x - a.x), a.y + s * (b.y - a.y)),
                    new Point2(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)),
                    visible));
        }
    }

    private static Polygon polygon(ImmutableList<Coordinate> corners) {
        return Ring.polygon(GEOMETRY, corners);
    }
}
