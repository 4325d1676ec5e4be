package coldseam.report.section;

import coldseam.conduction.Point;
import coldseam.junctions.plan.SectionEnd;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Spot;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Finds the lines along which the drawing stops and the house goes on. */
record CutLines(PaintedParts parts, ImmutableList<SectionEnd> ends, Box window) {

    private static final double ON = 1e-4;

    /** m, how far inside the drawing a cut is read, so that it runs along no outline. */
    private static final double INSIDE = 5e-5;

    /** m; a layer whose end lies this near beyond the window is cut whole. */
    private static final double WHOLE = 4e-4;

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
    ImmutableList<Cut> all() {
        List<Cut> out = new ArrayList<>();
        Box bounds = parts.bounds();
        if (bounds.x0() < window.x0() - ON) {
            walk(out, new Point(window.x0(), window.y0()), 0, 1, -1, 0);
        }
        if (bounds.x1() > window.x1() + ON) {
            walk(out, new Point(window.x1(), window.y0()), 0, 1, 1, 0);
        }
        if (bounds.y0() < window.y0() - ON) {
            walk(out, new Point(window.x0(), window.y0()), 1, 0, 0, -1);
        }
        if (bounds.y1() > window.y1() + ON) {
            walk(out, new Point(window.x0(), window.y1()), 1, 0, 0, 1);
        }
        for (SectionEnd end : ends) {
            Spot from = new Spot(end.from().x(), end.from().y());
            ImmutableList<Spot> shown =
                    window.clipped(from, new Spot(end.to().x(), end.to().y()));
            if (shown.notEmpty() && out.stream().noneMatch(cut -> holds(cut, end.middle()))) {
                double length = end.length();
                double dx = (end.to().x() - end.from().x()) / length;
                double dy = (end.to().y() - end.from().y()) / length;
                // Along an end, from → to, the section lies on the left.
                walk(out, end.from(), dx, dy, dy, -dx);
            }
        }
        return Lists.immutable.ofAll(out);
    }

    private boolean holds(Cut cut, Point p) {
        double off = (p.x() - cut.origin.x()) * cut.outX + (p.y() - cut.origin.y()) * cut.outY;
        double s = (p.x() - cut.origin.x()) * cut.dx + (p.y() - cut.origin.y()) * cut.dy;
        return Math.abs(off) < 1e-3 && s > cut.from() - ON && s < cut.to() + ON;
    }

    /** Notes what a line meets in the window; each run without a gap is one cut. */
    private void walk(List<Cut> out, Point o, double dx, double dy, double outX, double outY) {
        Point inside = new Point(o.x() - INSIDE * outX, o.y() - INSIDE * outY);
        double reach = window.width() + window.height();
        ImmutableList<Spot> shown = window.grown(ON)
                .clipped(
                        new Spot(inside.x() - reach * dx, inside.y() - reach * dy),
                        new Spot(inside.x() + reach * dx, inside.y() + reach * dy));
        if (shown.isEmpty()) {
            return;
        }
        double from = (shown.get(0).x() - inside.x()) * dx + (shown.get(0).y() - inside.y()) * dy;
        double to = (shown.get(1).x() - inside.x()) * dx + (shown.get(1).y() - inside.y()) * dy;
        MutableList<PaintedParts.Run> together = Lists.mutable.empty();
        for (PaintedParts.Run run : parts.along(inside, dx, dy).select(run -> run.to() > from && run.from() < to)) {
            if (together.notEmpty() && run.from() > together.getLast().to() + ON) {
                close(out, together, o, dx, dy, outX, outY, from, to);
                together.clear();
            }
            together.add(run);
        }
        close(out, together, o, dx, dy, outX, outY, from, to);
    }

    private void close(
            List<Cut> out,
            MutableList<PaintedParts.Run> together,
            Point o,
            double dx,
            double dy,
            double outX,
            double outY,
            double from,
            double to) {
        boolean onlyAir =
                together.allSatisfy(run -> parts.parts().get(run.part()).look() == Look.AIR);
        if (onlyAir) {
            return;
        }
        ImmutableList<Layer> layers = together.collect(run -> new Layer(
                        run.part(),
                        Math.max(from, run.from()),
                        Math.min(to, run.to()),
                        run.from() >= from - WHOLE && run.to() <= to + WHOLE))
                .toImmutable();
        boolean square = together.zip(layers)
                .select(each -> each.getTwo().whole())
                .allSatisfy(each -> each.getOne().square());
        out.add(new Cut(o, dx, dy, outX, outY, layers, square));
    }
}
