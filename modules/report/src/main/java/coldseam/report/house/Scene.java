package coldseam.report.house;

import coldseam.envelope.Point3;
import coldseam.envelope.shell.Surface;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The surfaces that face the eye, from back to front. */
final class Scene {

    /** Heights over a plane below this, m, count as in it. */
    private static final double FLAT = 1e-3;

    private final Viewpoint eye;
    private final ImmutableList<Surface> ordered;

    Scene(ImmutableList<Surface> surfaces, Viewpoint eye) {
        this.eye = eye;
        this.ordered = order(surfaces.select(this::faces));
    }

    private boolean faces(Surface surface) {
        return eye.depth(surface.normal()) > 1e-6;
    }

    /** Back to front. */
    ImmutableList<Surface> surfaces() {
        return ordered;
    }

    /**
     * A surface comes after those it may hide. Where two hide one another in turn, the farther middle goes first; plane
     * surfaces of a house do that only in freak shapes.
     */
    private ImmutableList<Surface> order(ImmutableList<Surface> facing) {
        List<Surface> rest = new ArrayList<>(
                facing.toSortedListBy(s -> s.outline().collectDouble(eye::depth).average()));
        List<Surface> out = new ArrayList<>();
        while (!rest.isEmpty()) {
            Surface next = rest.get(0);
            for (Surface candidate : rest) {
                if (rest.stream().noneMatch(other -> other != candidate && hides(candidate, other))) {
                    next = candidate;
                    break;
                }
            }
            rest.remove(next);
            out.add(next);
        }
        return Lists.immutable.ofAll(out);
    }

    /** Whether the first may hide a part of the second. */
    private boolean hides(Surface front, Surface back) {
        if (!overlap(front, back)) {
            return false;
        }
        // The eye is on the outer side of both planes.
        boolean frontIsOver = heights(back, front) >= -FLAT && highest(back, front) > FLAT;
        boolean backIsUnder = highest(front, back) <= FLAT && heights(front, back) < -FLAT;
        boolean backIsOver = heights(front, back) >= -FLAT && highest(front, back) > FLAT;
        boolean frontIsUnder = highest(back, front) <= FLAT && heights(back, front) < -FLAT;
        return (frontIsOver || backIsUnder) && !(backIsOver || frontIsUnder);
    }

    /** The least height of a surface's corners over another's plane. */
    private static double heights(Surface plane, Surface other) {
        return other.outline().collectDouble(p -> height(plane, p)).min();
    }

    private static double highest(Surface plane, Surface other) {
        return other.outline().collectDouble(p -> height(plane, p)).max();
    }

    private static double height(Surface plane, Point3 p) {
        Point3 o = plane.outline().getFirst();
        return (p.x() - o.x()) * plane.normal().x()
                + (p.y() - o.y()) * plane.normal().y()
                + (p.z() - o.z()) * plane.normal().z();
    }

    private boolean overlap(Surface a, Surface b) {
        return a.outline().collectDouble(eye::x).max()
                        > b.outline().collectDouble(eye::x).min() + FLAT
                && b.outline().collectDouble(eye::x).max()
                        > a.outline().collectDouble(eye::x).min() + FLAT
                && a.outline().collectDouble(eye::y).max()
                        > b.outline().collectDouble(eye::y).min() + FLAT
                && b.outline().collectDouble(eye::y).max()
                        > a.outline().collectDouble(eye::y).min() + FLAT;
    }

    /** Whether nothing lies between a point of the shell and the eye. */
    boolean sees(Point3 p) {
        boolean onFacing = ordered.anySatisfy(s -> Math.abs(height(s, p)) < 0.05 && reaches(s, p));
        return onFacing && !hidden(p);
    }

    /** Whether a surface lies between a point and the eye. */
    boolean hidden(Point3 p) {
        return ordered.anySatisfy(s -> height(s, p) < -0.05 && covers(s, p));
    }

    /** Whether a point lies within a surface's outline or close to it, as seen. */
    private boolean reaches(Surface surface, Point3 p) {
        if (covers(surface, p)) {
            return true;
        }
        ImmutableList<Point3> c = surface.outline();
        for (int i = 0; i < c.size(); i++) {
            if (distance(p, c.get(i), c.get((i + 1) % c.size())) < 0.1) {
                return true;
            }
        }
        return false;
    }

    private double distance(Point3 p, Point3 a, Point3 b) {
        double dx = eye.x(b) - eye.x(a);
        double dy = eye.y(b) - eye.y(a);
        double px = eye.x(p) - eye.x(a);
        double py = eye.y(p) - eye.y(a);
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
        return Math.hypot(px - t * dx, py - t * dy);
    }

    private boolean covers(Surface surface, Point3 p) {
        double x = eye.x(p);
        double y = eye.y(p);
        boolean in = false;
        ImmutableList<Point3> c = surface.outline();
        for (int i = 0, j = c.size() - 1; i < c.size(); j = i++) {
            double yi = eye.y(c.get(i));
            double yj = eye.y(c.get(j));
            double xi = eye.x(c.get(i));
            double xj = eye.x(c.get(j));
            if (yi > y != yj > y && x < (xj - xi) * (y - yi) / (yj - yi) + xi) {
                in = !in;
            }
        }
        return in;
    }
}
