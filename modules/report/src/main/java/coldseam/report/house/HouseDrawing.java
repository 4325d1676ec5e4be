package coldseam.report.house;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.envelope.Body;
import coldseam.envelope.Point2;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.ShellView;
import coldseam.envelope.shell.Surface;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Hatch;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The house from two opposite corners above, each finding numbered where it is. */
public record HouseDrawing(Audit audit, HouseDrawing.Views views) {

    /** Of the eye above the horizon, degrees. */
    private static final double ELEVATION = 28;

    /** Of the line of the ground. */
    private static final Ink EARTH = Ink.of(0x6B5637);

    private static final double GAP = 16;
    private static final double RIM = 16;

    /** The house's shell from both viewpoints, which nothing need be solved for. */
    public record Views(ImmutableList<View> all) {

        public static Views of(Shell shell) {
            return new Views(Lists.immutable.of(
                    new View("seen from the south-east", ShellView.of(shell, 148, ELEVATION)),
                    new View("seen from the north-west", ShellView.of(shell, 328, ELEVATION))));
        }
    }

    /** What one eye sees, and where from. */
    private record View(String name, ShellView shown) {
        Box size() {
            return Box.around(
                    shown.patches().flatCollect(ShellView.Patch::outline).collect(p -> new Spot(p.x(), p.y())));
        }
    }

    /** Findings that neither view shows, because something lies in front of them. */
    public ImmutableList<Finding> hidden() {
        return audit.findings()
                .reject(finding -> views.all.anySatisfy(
                        view -> place(view.shown(), finding).isPresent()));
    }

    /** Whether either view shows a wall in the ground. */
    public boolean showsGround() {
        return views.all.anySatisfy(
                view -> view.shown().patches().anySatisfy(patch -> ShellView.isInTheGround(patch.surface())));
    }

    /** The height at which both views fill a width, points. */
    public double height(double width) {
        double room = (width - GAP) / 2 - 2 * RIM;
        return views.all
                        .collect(View::size)
                        .collectDouble(size -> size.height() * room / size.width())
                        .max()
                + 2 * RIM
                + 12;
    }

    /** Draws both views side by side. */
    public void draw(Canvas canvas, Box box) {
        double width = (box.width() - GAP) / 2;
        double scale = views.all
                .collect(View::size)
                .collectDouble(size ->
                        Math.min((width - 2 * RIM) / size.width(), (box.height() - 2 * RIM - 12) / size.height()))
                .min();
        views.all.forEachWithIndex((view, i) -> {
            double x = box.x0() + i * (width + GAP);
            view(canvas, new Box(x, box.y0(), x + width, box.y1()), view, scale);
        });
    }

    /** A view's way from metres to the page. */
    private record Placing(ShellView shown, double scale, double x, double y) {
        Spot at(Point2 p) {
            return new Spot(x + scale * p.x(), y + scale * p.y());
        }

        Spot at(Point3 p) {
            return at(shown.picture(p));
        }
    }

    private void view(Canvas canvas, Box box, View view, double scale) {
        ShellView shown = view.shown();
        Box size = view.size();
        Placing placing = new Placing(
                shown, scale, box.middleX() - scale * size.middleX(), (box.middleY() + 6) - scale * size.middleY());
        shown.patches().forEach(patch -> patch(canvas, placing, patch));
        shown.traces()
                .select(trace -> trace.visible() && drawn(trace.edge()))
                .forEach(trace -> canvas.stroke(
                        Lists.immutable.of(placing.at(trace.from()), placing.at(trace.to())),
                        Pen.of(trace.edge().opening().isPresent() ? 0.5 : 0.8, Palette.INK)
                                .rounded()));
        shown.ground()
                .select(ShellView.Stretch::visible)
                .forEach(line -> canvas.stroke(
                        Lists.immutable.of(placing.at(line.from()), placing.at(line.to())),
                        Pen.of(2, EARTH).rounded()));
        for (Finding finding : audit.findings().toReversed()) {
            trace(canvas, placing, finding);
        }
        shown.rims()
                .select(ShellView.Stretch::visible)
                .forEach(rim -> canvas.stroke(
                        Lists.immutable.of(placing.at(rim.from()), placing.at(rim.to())),
                        Pen.of(2.6, Palette.EMBER).rounded()));
        canvas.text(view.name(), box.middleX(), box.y0() + 2, Type.of(8).with(Palette.SLATE), Align.CENTRE);
        north(canvas, placing, new Spot(box.x0() + 16, box.y0() + 22));
        badges(canvas, placing, box);
    }

    /** Seams that the house file names lie anywhere on their surface: no line of the house. */
    private static boolean drawn(Edge edge) {
        return edge.second().isPresent() || edge.opening().isPresent();
    }

    private static void patch(Canvas canvas, Placing placing, ShellView.Patch patch) {
        ImmutableList<Spot> outline = outline(patch).collect(placing::at);
        Surface surface = patch.surface();
        if (patch.opening().isPresent()) {
            canvas.fill(outline, Ink.of(0xC9DBE2));
            return;
        }
        Box box = Box.around(outline);
        canvas.fill(outline, surface.assembly().isPresent() ? tint(surface) : Palette.EMBER.tint(0.7));
        if (surface.assembly().isEmpty()) {
            Hatch.DIAGONALS.draw(canvas, outline, box);
        } else if (ShellView.isInTheGround(surface)) {
            Look.GROUND.hatch().draw(canvas, outline, box);
        } else if (surface.use() == Body.Use.TERRACE) {
            Hatch.CROSSES.draw(canvas, outline, box);
        } else if (surface.use() == Body.Use.ROOF || surface.use() == Body.Use.CEILING) {
            Hatch.FINE_GRAIN.draw(canvas, outline, box);
        }
    }

    /** One outline with its holes, each joined to it there and back and wound the other way, so that they stay empty. */
    private static ImmutableList<Point2> outline(ShellView.Patch patch) {
        Point2 start = patch.outline().getFirst();
        return patch.holes()
                .injectInto(
                        patch.outline(),
                        (all, hole) ->
                                all.newWith(start).newWithAll(hole.toReversed()).newWith(hole.getLast()))
                .newWithAll(patch.holes().isEmpty() ? Lists.immutable.empty() : Lists.immutable.of(start));
    }

    private static Ink tint(Surface surface) {
        if (ShellView.isInTheGround(surface)) {
            return Ink.of(0xD3C6AE);
        }
        return switch (surface.use()) {
            case ROOF, CEILING -> Ink.of(0xE3D5C8);
            case TERRACE -> Ink.of(0xE6EBDD);
            case FLOOR, OVERHANG -> Ink.of(0xDDE2E4);
            case WALL ->
                switch (surface.side()) {
                    case SOUTH, NORTH -> Ink.of(0xF7F4EE);
                    default -> Ink.of(0xECE7DE);
                };
        };
    }

    /** The edges a finding is about, in its colour. */
    private static void trace(Canvas canvas, Placing placing, Finding finding) {
        Pen pen = finding.severity() == Finding.Severity.WEAK
                ? Pen.of(2, FindingMark.ink(finding.severity())).dashed(4, 2)
                : Pen.of(2.6, FindingMark.ink(finding.severity())).rounded();
        placing.shown()
                .traces()
                .select(trace -> trace.visible() && finding.subject().isAbout(trace.edge()))
                .forEach(trace ->
                        canvas.stroke(Lists.immutable.of(placing.at(trace.from()), placing.at(trace.to())), pen));
    }

    /** Where a view shows a finding: at the largest of its parts that nothing stands before. */
    private static Optional<Point3> place(ShellView shown, Finding finding) {
        return finding.subject().places().detectOptional(shown::shows);
    }

    private void badges(Canvas canvas, Placing placing, Box box) {
        double radius = audit.findings().size() > 30 ? 5 : 6.4;
        List<Spot> taken = new ArrayList<>();
        ImmutableList<Finding> seen = audit.findings()
                .select(finding -> place(placing.shown(), finding).isPresent());
        for (Finding finding : seen) {
            Spot place = placing.at(place(placing.shown(), finding).orElseThrow());
            Spot free = free(place, taken, box, radius);
            taken.add(free);
            if (free.distance(place) > radius) {
                canvas.line(place, free, Pen.of(0.5, Palette.INK));
                canvas.disc(place, 1.4, Palette.INK);
            }
        }
        seen.forEachWithIndex(
                (finding, i) -> FindingMark.draw(canvas, taken.get(i), finding.severity(), finding.number(), radius));
    }

    /** The nearest place on growing rings where no badge stands. */
    private static Spot free(Spot place, List<Spot> taken, Box box, double radius) {
        for (int ring = 0; ring < 40; ring++) {
            int turns = ring == 0 ? 1 : 8 + 4 * ring;
            for (int k = 0; k < turns; k++) {
                double a = 2 * Math.PI * k / turns + Math.PI / 2;
                Spot at = place.plus(ring * 5 * Math.cos(a), ring * 5 * Math.sin(a));
                boolean inside = box.grown(-radius - 1).contains(at.x(), at.y());
                if (inside && taken.stream().noneMatch(t -> t.distance(at) < 2.6 * radius)) {
                    return at;
                }
            }
        }
        return place;
    }

    /** An arrow to the north. */
    private static void north(Canvas canvas, Placing placing, Spot at) {
        Spot origin = placing.at(new Point3(0, 0, 0));
        Spot tip = placing.at(new Point3(0, 1, 0));
        double length = origin.distance(tip);
        double dx = (tip.x() - origin.x()) / length;
        double dy = (tip.y() - origin.y()) / length;
        canvas.line(at.plus(-9 * dx, -9 * dy), at.plus(6 * dx, 6 * dy), Pen.of(0.8, Palette.INK));
        canvas.fill(
                Lists.immutable.of(
                        at.plus(10 * dx, 10 * dy),
                        at.plus(4 * dx + 2.6 * dy, 4 * dy - 2.6 * dx),
                        at.plus(4 * dx - 2.6 * dy, 4 * dy + 2.6 * dx)),
                Palette.INK);
        canvas.text("N", at.x() + 16 * dx, at.y() + 16 * dy - 2.5, Type.of(7.5).with(Face.SEMIBOLD), Align.CENTRE);
    }
}
