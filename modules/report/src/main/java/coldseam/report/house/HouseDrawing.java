package coldseam.report.house;

import coldseam.audit.Audit;
import coldseam.audit.Finding;
import coldseam.envelope.Body;
import coldseam.envelope.Opening;
import coldseam.envelope.Point3;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.OpenEdge;
import coldseam.envelope.shell.Surface;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Hatch;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The house from two opposite corners above, each finding numbered where it is. */
public final class HouseDrawing {

    private static final ImmutableList<Viewpoint> EYES = Lists.immutable.of(
            new Viewpoint("seen from the south-east", -58, 28), new Viewpoint("seen from the north-west", 122, 28));

    private static final double GAP = 16;
    private static final double RIM = 16;

    private final Audit audit;
    private final ImmutableList<Scene> scenes;

    public HouseDrawing(Audit audit) {
        this.audit = audit;
        this.scenes = EYES.collect(eye -> new Scene(audit.shell().surfaces(), eye));
    }

    /** Findings that neither view shows, because something lies in front of them. */
    public ImmutableList<Finding> hidden() {
        return audit.findings().reject(f -> scenes.anySatisfy(scene -> sees(scene, f.at())));
    }

    /** The height at which both views fill a width, points. */
    public double height(double width) {
        double room = (width - GAP) / 2 - 2 * RIM;
        return EYES.collectDouble(eye -> size(eye).height() * room / size(eye).width())
                        .max()
                + 2 * RIM
                + 12;
    }

    /** Draws both views side by side. */
    public void draw(Canvas canvas, Box box) {
        double width = (box.width() - GAP) / 2;
        double scale = Double.POSITIVE_INFINITY;
        for (Viewpoint eye : EYES) {
            Box size = size(eye);
            scale = Math.min(
                    scale, Math.min((width - 2 * RIM) / size.width(), (box.height() - 2 * RIM - 12) / size.height()));
        }
        for (int i = 0; i < EYES.size(); i++) {
            double x = box.x0() + i * (width + GAP);
            view(canvas, new Box(x, box.y0(), x + width, box.y1()), i, scale);
        }
    }

    private Box size(Viewpoint eye) {
        ImmutableList<Point3> all = audit.shell().surfaces().flatCollect(Surface::outline);
        return Box.around(all.collect(p -> new Spot(eye.x(p), eye.y(p))));
    }

    /** A view's way from metres to the page. */
    private record Placing(Viewpoint eye, double scale, double x, double y) {
        Spot at(Point3 p) {
            return new Spot(x + scale * eye.x(p), y + scale * eye.y(p));
        }
    }

    private void view(Canvas canvas, Box box, int which, double scale) {
        Viewpoint eye = EYES.get(which);
        Box size = size(eye);
        Placing placing = new Placing(
                eye, scale, box.middleX() - scale * size.middleX(), (box.middleY() + 6) - scale * size.middleY());
        Scene scene = scenes.get(which);
        for (Surface surface : scene.surfaces()) {
            surface(canvas, placing, surface);
        }
        for (Finding finding : audit.findings().toReversed()) {
            trace(canvas, placing, scene, finding);
        }
        holes(canvas, placing, scene);
        canvas.text(eye.name(), box.middleX(), box.y0() + 2, Type.of(8).with(Palette.SLATE), Align.CENTRE);
        north(canvas, placing, new Spot(box.x0() + 16, box.y0() + 22));
        badges(canvas, placing, scene, box);
    }

    private void surface(Canvas canvas, Placing placing, Surface surface) {
        ImmutableList<Spot> outline = surface.outline().collect(placing::at);
        Box box = Box.around(outline);
        canvas.fill(outline, surface.assembly().isPresent() ? tint(surface) : Palette.EMBER.tint(0.7));
        if (surface.assembly().isEmpty()) {
            Hatch.DIAGONALS.draw(canvas, outline, box);
        } else if (surface.use() == Body.Use.TERRACE) {
            Hatch.CROSSES.draw(canvas, outline, box);
        } else if (surface.use() == Body.Use.ROOF || surface.use() == Body.Use.CEILING) {
            Hatch.FINE_GRAIN.draw(canvas, outline, box);
        }
        canvas.outline(outline, Pen.of(0.8, Palette.INK).rounded());
        for (Opening opening : audit.house().openings().select(o -> o.surface().equals(surface.name()))) {
            opening(canvas, placing, opening);
        }
    }

    private static Ink tint(Surface surface) {
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

    /** An opening's rim, from the edges around it. */
    private void opening(Canvas canvas, Placing placing, Opening opening) {
        ImmutableList<Edge> rim = audit.shell()
                .edges()
                .select(e -> e.opening().filter(opening::equals).isPresent());
        ImmutableList<Edge> level = rim.select(e -> Math.abs(e.from().z() - e.to().z()) < 1e-6);
        if (level.size() == 2) {
            Edge low = level.minBy(e -> e.from().z());
            Edge high = level.maxBy(e -> e.from().z());
            boolean same = Math.hypot(
                            low.from().x() - high.from().x(),
                            low.from().y() - high.from().y())
                    < 1e-3;
            ImmutableList<Spot> pane = Lists.immutable
                    .of(low.from(), low.to(), same ? high.to() : high.from(), same ? high.from() : high.to())
                    .collect(placing::at);
            canvas.fill(pane, Ink.of(0xC9DBE2));
            canvas.outline(pane, Pen.of(0.5, Palette.INK));
        }
    }

    /** The edge or surface a finding is about, in its colour. */
    private void trace(Canvas canvas, Placing placing, Scene scene, Finding finding) {
        Pen pen = finding.severity() == Finding.Severity.WEAK
                ? Pen.of(2, FindingMark.ink(finding.severity())).dashed(4, 2)
                : Pen.of(2.6, FindingMark.ink(finding.severity())).rounded();
        for (Edge edge : edges(finding)) {
            if (scene.sees(middle(edge))) {
                canvas.stroke(Lists.immutable.of(edge.from(), edge.to()).collect(placing::at), pen);
            }
        }
    }

    private ImmutableList<Edge> edges(Finding finding) {
        return audit.shell().edges().select(edge -> finding.edges().contains(edge.name()));
    }

    /** Whether a point is seen: on a surface, or in a hole with nothing in front. */
    private boolean sees(Scene scene, Point3 p) {
        return scene.sees(p) || !audit.shell().closed() && !scene.hidden(p);
    }

    /** The rims of holes in the shell. */
    private void holes(Canvas canvas, Placing placing, Scene scene) {
        for (OpenEdge edge : audit.shell().openEdges()) {
            Point3 middle = new Point3(
                    (edge.from().x() + edge.to().x()) / 2,
                    (edge.from().y() + edge.to().y()) / 2,
                    (edge.from().z() + edge.to().z()) / 2);
            if (sees(scene, middle)) {
                canvas.stroke(
                        Lists.immutable.of(edge.from(), edge.to()).collect(placing::at),
                        Pen.of(2.6, Palette.EMBER).rounded());
            }
        }
    }

    private static Point3 middle(Edge e) {
        return new Point3(
                (e.from().x() + e.to().x()) / 2,
                (e.from().y() + e.to().y()) / 2,
                (e.from().z() + e.to().z()) / 2);
    }

    private void badges(Canvas canvas, Placing placing, Scene scene, Box box) {
        double radius = audit.findings().size() > 30 ? 5 : 6.4;
        List<Spot> taken = new ArrayList<>();
        ImmutableList<Finding> seen = audit.findings().select(f -> sees(scene, f.at()));
        for (Finding finding : seen) {
            Spot place = placing.at(finding.at());
            Spot free = free(place, taken, box, radius);
            taken.add(free);
            if (free.distance(place) > radius) {
                canvas.line(place.x(), place.y(), free.x(), free.y(), Pen.of(0.5, Palette.INK));
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
        canvas.line(at.x() - 9 * dx, at.y() - 9 * dy, at.x() + 6 * dx, at.y() + 6 * dy, Pen.of(0.8, Palette.INK));
        canvas.fill(
                Lists.immutable.of(
                        at.plus(10 * dx, 10 * dy),
                        at.plus(4 * dx + 2.6 * dy, 4 * dy - 2.6 * dx),
                        at.plus(4 * dx - 2.6 * dy, 4 * dy + 2.6 * dx)),
                Palette.INK);
        canvas.text("N", at.x() + 16 * dx, at.y() + 16 * dy - 2.5, Type.of(7.5).with(Face.SEMIBOLD), Align.CENTRE);
    }
}
