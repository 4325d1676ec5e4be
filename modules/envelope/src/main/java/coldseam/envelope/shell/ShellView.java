package coldseam.envelope.shell;

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
import org.locationtech.jts.geom.Location;
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
 */
public record ShellView(
        double azimuth,
        double elevation,
        ImmutableList<Patch> patches,
        ImmutableList<Trace> traces,
        ImmutableList<Rim> rims) {

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
            return PointLocation.locateInRing(at, ring) != Location.EXTERIOR;
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
     * A part of an edge that is not shared.
     *
     * @param from one end
     * @param to the other end
     * @param visible whether it shows
     */
    public record Rim(Point2 from, Point2 to, boolean visible) {}

    /** A part of a line in the picture, and whether it shows. */
    private record Stretch(Point2 from, Point2 to, boolean visible) {}

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
                Geometry picture = polygon(pane.outline().collect(axes::picture));
                patches.addAllIterable(patches(
                        one.surface(), Optional.of(pane.opening()), areas(picture, shown, OverlayNG.INTERSECTION)));
            }
        }
        MutableList<Trace> traces = Lists.mutable.empty();
        shell.edges()
                .forEach(edge -> traces.addAllIterable(stretches(edge.from(), edge.to(), facing, axes)
                        .collect(s -> new Trace(edge, s.from(), s.to(), s.visible()))));
        MutableList<Rim> rims = Lists.mutable.empty();
        shell.openEdges()
                .forEach(edge -> rims.addAllIterable(stretches(edge.from(), edge.to(), facing, axes)
                        .collect(s -> new Rim(s.from(), s.to(), s.visible()))));
        return new ShellView(azimuth, elevation, patches.toImmutable(), traces.toImmutable(), rims.toImmutable());
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

    /** An opening's rim in space. */
    private record Pane(Opening opening, ImmutableList<Point3> outline) {}

    private static ImmutableList<Pane> panes(Shell shell, Surface surface) {
        ImmutableList<Edge> rims = shell.edges()
                .select(e -> e.opening().isPresent()
                        && (e.first().name().equals(surface.name())
                                || e.second()
                                        .filter(s -> s.name().equals(surface.name()))
                                        .isPresent()));
        ImmutableList<Opening> openings = rims.collect(e -> e.opening().get()).distinct();
        return openings.collect(opening -> {
            // The four sides come as head, left jamb, right jamb, then sill or threshold; head and sill have all
            // corners.
            ImmutableList<Edge> own = rims.select(e -> e.opening().get().equals(opening));
            Edge head = own.getFirst();
            Edge foot = own.getLast();
            return new Pane(opening, Lists.immutable.of(foot.from(), foot.to(), head.from(), head.to()));
        });
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
