package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.report.drawing.Box;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Painted parts as they are seen: the later part covers the earlier one. */
final class Arrangement {

    /** Nothing is painted here. */
    static final int NOTHING = -1;

    /** How far beside an edge its two sides are looked at, m. */
    private static final double BESIDE = 2e-5;

    private final ImmutableList<Part> parts;
    private final Box[] boxes;

    /** A piece of an outline with what is seen on its two sides. */
    record Seen(Point from, Point to, int left, int right) {
        double length() {
            return Math.hypot(to.x() - from.x(), to.y() - from.y());
        }

        Point middle() {
            return new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        }
    }

    Arrangement(ImmutableList<Part> parts) {
        this.parts = parts;
        this.boxes = new Box[parts.size()];
        parts.forEachWithIndex((part, i) -> boxes[i] = box(part));
    }

    static Box box(Part part) {
        ImmutableList<Point> c = part.outline().corners();
        return new Box(
                c.collectDouble(Point::x).min(),
                c.collectDouble(Point::y).min(),
                c.collectDouble(Point::x).max(),
                c.collectDouble(Point::y).max());
    }

    ImmutableList<Part> parts() {
        return parts;
    }

    Box bounds() {
        Box all = boxes[0];
        for (Box box : boxes) {
            all = all.joinedWith(box);
        }
        return all;
    }

    /** Index of the part that is seen at a place. */
    int topAt(double x, double y) {
        for (int i = boxes.length - 1; i >= 0; i--) {
            if (boxes[i].contains(x, y) && inside(parts.get(i).outline().corners(), x, y)) {
                return i;
            }
        }
        return NOTHING;
    }

    private static boolean inside(ImmutableList<Point> corners, double x, double y) {
        boolean in = false;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            Point a = corners.get(i);
            Point b = corners.get(j);
            if (a.y() > y != b.y() > y && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
        }
        return in;
    }

    /** Whether two parts look alike, so that no line is drawn between them. */
    boolean alike(int i, int j) {
        if (i == j) {
            return true;
        }
        if (i == NOTHING || j == NOTHING) {
            return false;
        }
        return parts.get(i).material().equals(parts.get(j).material())
                && parts.get(i).look() == parts.get(j).look();
    }

    /** The outlines that are seen, each piece once. */
    ImmutableList<Seen> seen(Box window) {
        List<Point[]> edges = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            ImmutableList<Point> c = parts.get(p).outline().corners();
            for (int i = 0; i < c.size(); i++) {
                Point a = c.get(i);
                Point b = c.get((i + 1) % c.size());
                if (Math.hypot(b.x() - a.x(), b.y() - a.y()) > 1e-9 && near(a, b, window)) {
                    edges.add(new Point[] {a, b});
                }
            }
        }
        List<Seen> out = new ArrayList<>();
        Set<String> known = new HashSet<>();
        for (Point[] edge : edges) {
            split(edge, edges, out, known);
        }
        return Lists.immutable.ofAll(out);
    }

    private static boolean near(Point a, Point b, Box w) {
        return Math.max(a.x(), b.x()) >= w.x0()
                && Math.min(a.x(), b.x()) <= w.x1()
                && Math.max(a.y(), b.y()) >= w.y0()
                && Math.min(a.y(), b.y()) <= w.y1();
    }

    private void split(Point[] edge, List<Point[]> edges, List<Seen> out, Set<String> known) {
        Point a = edge[0];
        Point b = edge[1];
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double length = Math.hypot(dx, dy);
        TreeSet<Double> cuts = new TreeSet<>();
        cuts.add(0.0);
        cuts.add(1.0);
        for (Point[] other : edges) {
            cut(a, dx, dy, length, other, cuts);
        }
        Double before = null;
        for (double t : cuts) {
            if (before != null && (t - before) * length > 1e-6) {
                Point from = new Point(a.x() + before * dx, a.y() + before * dy);
                Point to = new Point(a.x() + t * dx, a.y() + t * dy);
                double mx = (from.x() + to.x()) / 2;
                double my = (from.y() + to.y()) / 2;
                double nx = -dy / length * BESIDE;
                double ny = dx / length * BESIDE;
                int left = topAt(mx + nx, my + ny);
                int right = topAt(mx - nx, my - ny);
                String key = Math.round(mx * 1e5) + ":" + Math.round(my * 1e5);
                if (!alike(left, right) && known.add(key)) {
                    out.add(new Seen(from, to, left, right));
                }
            }
            before = t;
        }
    }

    private static void cut(Point a, double dx, double dy, double length, Point[] other, TreeSet<Double> cuts) {
        double ex = other[1].x() - other[0].x();
        double ey = other[1].y() - other[0].y();
        double gx = other[0].x() - a.x();
        double gy = other[0].y() - a.y();
        double across = dx * ey - dy * ex;
        if (Math.abs(across) > 1e-12 * length * Math.hypot(ex, ey)) {
            double t = (gx * ey - gy * ex) / across;
            double u = (gx * dy - gy * dx) / across;
            if (t > 0 && t < 1 && u > -1e-6 && u < 1 + 1e-6) {
                cuts.add(t);
            }
        } else if (Math.abs(gx * dy - gy * dx) < 1e-6 * length) {
            for (Point end : other) {
                double t = ((end.x() - a.x()) * dx + (end.y() - a.y()) * dy) / (length * length);
                if (t > 0 && t < 1) {
                    cuts.add(t);
                }
            }
        }
    }
}
