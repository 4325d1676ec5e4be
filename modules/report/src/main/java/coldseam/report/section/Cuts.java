package coldseam.report.section;

import coldseam.conduction.Boundary;
import coldseam.conduction.Point;
import coldseam.conduction.Section;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Look;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Finds the lines along which the drawing stops and the house goes on. */
final class Cuts {

    private static final double ON = 1e-4;
    private static final double STEP = 0.0005;

    private final Arrangement arrangement;
    private final Section section;
    private final Box window;

    Cuts(Arrangement arrangement, Section section, Box window) {
        this.arrangement = arrangement;
        this.section = section;
        this.window = window;
    }

    /**
     * A cut line with what it cuts.
     *
     * @param origin where its coordinate is zero
     * @param dx direction, unit
     * @param dy direction, unit
     * @param outX away from the drawing, unit
     * @param outY away from the drawing, unit
     * @param layers what is cut, in order along the line
     * @param square whether the layers are cut at right angles, so that their lengths are thicknesses
     */
    record Cut(
            Point origin, double dx, double dy, double outX, double outY, ImmutableList<Layer> layers, boolean square) {
        Point at(double s) {
            return new Point(origin.x() + s * dx, origin.y() + s * dy);
        }

        double from() {
            return layers.getFirst().from();
        }

        double to() {
            return layers.getLast().to();
        }
    }

    /**
     * A part cut from one coordinate of the line to another, m.
     *
     * @param whole whether both its ends are its own, and not the window's
     */
    record Layer(int part, double from, double to, boolean whole) {
        double thickness() {
            return to - from;
        }
    }

    /** All cuts: at the window's rim, and where the section itself ends inside the window. */
    ImmutableList<Cut> all(ImmutableList<Arrangement.Seen> seen) {
        List<Cut> out = new ArrayList<>();
        Box bounds = arrangement.bounds();
        if (bounds.x0() < window.x0() - ON) {
            rim(out, new Point(window.x0(), window.y0()), 0, 1, -1, 0, window.height());
        }
        if (bounds.x1() > window.x1() + ON) {
            rim(out, new Point(window.x1(), window.y0()), 0, 1, 1, 0, window.height());
        }
        if (bounds.y0() < window.y0() - ON) {
            rim(out, new Point(window.x0(), window.y0()), 1, 0, 0, -1, window.width());
        }
        if (bounds.y1() > window.y1() + ON) {
            rim(out, new Point(window.x0(), window.y1()), 1, 0, 0, 1, window.width());
        }
        for (Arrangement.Seen edge : seen) {
            if (ends(edge) && out.stream().noneMatch(cut -> holds(cut, edge.middle()))) {
                along(out, edge);
            }
        }
        return Lists.immutable.ofAll(out);
    }

    private void rim(List<Cut> out, Point origin, double dx, double dy, double outX, double outY, double length) {
        walk(out, origin, dx, dy, outX, outY, 0, length);
    }

    /** Whether an edge bounds the section without facing an environment. */
    private boolean ends(Arrangement.Seen edge) {
        if (edge.left() != Arrangement.NOTHING && edge.right() != Arrangement.NOTHING) {
            return false;
        }
        Point m = edge.middle();
        return window.contains(m.x(), m.y()) && isSolved(edge) && !faces(m) && supports(edge);
    }

    /** Whether the whole solved section lies on one side of the edge's line, as it does of a cut plane. */
    private boolean supports(Arrangement.Seen edge) {
        double side = edge.left() == Arrangement.NOTHING ? 1 : -1;
        double nx = -(edge.to().y() - edge.from().y()) / edge.length() * side;
        double ny = (edge.to().x() - edge.from().x()) / edge.length() * side;
        Point m = edge.middle();
        return section.regions()
                .allSatisfy(region ->
                        region.outline().corners().allSatisfy(p -> (p.x() - m.x()) * nx + (p.y() - m.y()) * ny < 1e-3));
    }

    private boolean isSolved(Arrangement.Seen edge) {
        Point m = edge.middle();
        return section.regions().anySatisfy(region -> {
            ImmutableList<Point> c = region.outline().corners();
            for (int i = 0; i < c.size(); i++) {
                if (distance(m, c.get(i), c.get((i + 1) % c.size())) < ON) {
                    return true;
                }
            }
            return false;
        });
    }

    private boolean faces(Point m) {
        for (Boundary boundary : section.boundaries()) {
            for (int i = 1; i < boundary.path().size(); i++) {
                if (distance(m, boundary.path().get(i - 1), boundary.path().get(i)) < ON) {
                    return true;
                }
            }
        }
        return false;
    }

    static double distance(Point p, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
        t = Math.max(0, Math.min(1, t));
        return Math.hypot(p.x() - a.x() - t * dx, p.y() - a.y() - t * dy);
    }

    private boolean holds(Cut cut, Point p) {
        double off = (p.x() - cut.origin.x()) * cut.outX + (p.y() - cut.origin.y()) * cut.outY;
        double s = (p.x() - cut.origin.x()) * cut.dx + (p.y() - cut.origin.y()) * cut.dy;
        return Math.abs(off) < 1e-3 && s > cut.from() - ON && s < cut.to() + ON;
    }

    private void along(List<Cut> out, Arrangement.Seen edge) {
        double length = edge.length();
        double dx = (edge.to().x() - edge.from().x()) / length;
        double dy = (edge.to().y() - edge.from().y()) / length;
        // The painted side lies left of the edge or right of it; outwards is the other way.
        double side = edge.left() == Arrangement.NOTHING ? 1 : -1;
        double outX = -dy * side;
        double outY = dx * side;
        double reach = Math.max(window.width(), window.height()) * 1.5;
        walk(out, edge.middle(), dx, dy, outX, outY, -reach, reach);
    }

    /** Steps along a line just inside the drawing and notes what is met; each run without a hole is one cut. */
    private void walk(List<Cut> out, Point o, double dx, double dy, double outX, double outY, double from, double to) {
        List<Layer> layers = new ArrayList<>();
        int before = Arrangement.NOTHING;
        double start = from;
        for (double s = from; s <= to + STEP; s += STEP) {
            int part = s > to ? Arrangement.NOTHING : part(o, dx, dy, outX, outY, s);
            if (part != before && !arrangement.alike(part, before)) {
                double change = s > to || s == from ? Math.min(s, to) : refined(o, dx, dy, outX, outY, s - STEP, s);
                if (before != Arrangement.NOTHING) {
                    boolean whole = ownEnd(o, dx, dy, outX, outY, start, -1, before)
                            && ownEnd(o, dx, dy, outX, outY, change, 1, before);
                    layers.add(new Layer(before, start, change, whole));
                }
                if (part == Arrangement.NOTHING) {
                    close(out, layers, o, dx, dy, outX, outY);
                    layers = new ArrayList<>();
                }
                start = change;
                before = part;
            }
        }
    }

    /** Whether a layer's end is its own: just beyond it, even outside the window, something else is seen. */
    private boolean ownEnd(Point o, double dx, double dy, double outX, double outY, double s, int way, int layer) {
        double beyond = s + way * 4e-4;
        int met = arrangement.topAt(o.x() + beyond * dx - outX * 5e-5, o.y() + beyond * dy - outY * 5e-5);
        return !arrangement.alike(met, layer);
    }

    private int part(Point o, double dx, double dy, double outX, double outY, double s) {
        double x = o.x() + s * dx - outX * 5e-5;
        double y = o.y() + s * dy - outY * 5e-5;
        boolean seen = x >= window.x0() - ON && x <= window.x1() + ON && y >= window.y0() - ON && y <= window.y1() + ON;
        return seen ? arrangement.topAt(x, y) : Arrangement.NOTHING;
    }

    private double refined(Point o, double dx, double dy, double outX, double outY, double low, double high) {
        double a = low;
        double b = high;
        int first = part(o, dx, dy, outX, outY, a);
        for (int i = 0; i < 20; i++) {
            double m = (a + b) / 2;
            if (arrangement.alike(part(o, dx, dy, outX, outY, m), first)) {
                a = m;
            } else {
                b = m;
            }
        }
        return (a + b) / 2;
    }

    private void close(List<Cut> out, List<Layer> layers, Point o, double dx, double dy, double outX, double outY) {
        if (layers.isEmpty()) {
            return;
        }
        ImmutableList<Layer> sorted = Lists.immutable
                .ofAll(layers)
                .toSortedList(Comparator.comparingDouble(Layer::from))
                .toImmutable();
        boolean square = true;
        for (Layer layer : sorted.select(Layer::whole)) {
            square &= leavesSquare(o, dx, dy, outX, outY, layer.from())
                    && leavesSquare(o, dx, dy, outX, outY, layer.to());
        }
        boolean onlyAir =
                sorted.allSatisfy(l -> arrangement.parts().get(l.part()).look() == Look.AIR);
        if (!onlyAir) {
            out.add(new Cut(o, dx, dy, outX, outY, sorted, square));
        }
    }

    /** A line that leaves the cut at a right angle is met again a little further in. */
    private boolean leavesSquare(Point o, double dx, double dy, double outX, double outY, double s) {
        for (double depth : new double[] {0.01, 0.03}) {
            int below = deep(o, dx, dy, outX, outY, s - 4e-4, depth);
            int above = deep(o, dx, dy, outX, outY, s + 4e-4, depth);
            if (arrangement.alike(below, above)) {
                return false;
            }
        }
        return true;
    }

    private int deep(Point o, double dx, double dy, double outX, double outY, double s, double depth) {
        return arrangement.topAt(o.x() + s * dx - outX * depth, o.y() + s * dy - outY * depth);
    }
}
