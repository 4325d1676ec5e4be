package coldseam.report.section;

import coldseam.envelope.Control;
import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.ControlLine;
import coldseam.junctions.PenLine;
import coldseam.junctions.WeakestPath;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The pen line, its neck, the weakest path and the coldest point. */
record Overlays(SectionPicture picture, View view, Occupied occupied) {

    static final Pen PEN_LINE = Pen.of(2.4, Palette.DEEP).dashed(9, 3.5);
    static final Pen PATH = Pen.of(1.3, Palette.EMBER).dashed(2.6, 1.8);
    private static final Pen VAPOUR = Pen.of(3.2, Palette.HEATHER);
    private static final Pen AIR = Pen.of(1.1, Palette.FERN);
    private static final Pen WATER = Pen.of(1.3, Palette.RAIN).dashed(7, 1.5, 1.5, 1.5);
    private static final Pen HALO = Pen.of(4, Palette.WHITE).rounded();

    /** Keeps labels off the lines. */
    void reserve() {
        picture.penLine().ifPresent(line -> reserve(view.at(line.path())));
        picture.weakestPath().ifPresent(path -> reserve(view.at(path.path())));
        picture.controls().forEach(line -> reserve(view.at(line.path())));
        picture.coldest().ifPresent(c -> occupied.take(Box.about(view.at(c.at()), 6, 6)));
    }

    private void reserve(ImmutableList<Spot> line) {
        for (int i = 1; i < line.size(); i++) {
            ImmutableList<Spot> shown = view.page().clipped(line.get(i - 1), line.get(i));
            if (shown.notEmpty()) {
                occupied.take(shown.get(0), shown.get(1), 2.5);
            }
        }
    }

    /** How the line of a control layer is drawn: one may lie upon the other. */
    static Pen pen(Control control) {
        return switch (control) {
            case HEAT -> PEN_LINE;
            case AIR -> AIR;
            case WATER -> WATER;
            case VAPOUR -> VAPOUR;
        };
    }

    /** The control layers' lines, the widest first. */
    private void controls(Canvas canvas) {
        picture.controls()
                .toSortedListBy(line -> -pen(line.control()).width())
                .forEach(line ->
                        canvas.stroke(view.at(line.path()), pen(line.control()).rounded()));
    }

    void drawPaths(Canvas canvas) {
        controls(canvas);
        picture.weakestPath().ifPresent(path -> weakest(canvas, path));
        picture.penLine().ifPresent(line -> {
            canvas.stroke(view.at(line.path()), HALO);
            canvas.stroke(view.at(line.path()), PEN_LINE);
        });
    }

    private void weakest(Canvas canvas, WeakestPath path) {
        ImmutableList<Spot> line = view.at(path.path());
        canvas.stroke(line, Pen.of(2.6, Palette.WHITE).rounded());
        canvas.stroke(line, PATH);
        if (line.size() > 1) {
            arrow(canvas, line.get(line.size() - 2), line.getLast());
        }
    }

    private static void arrow(Canvas canvas, Spot from, Spot to) {
        double length = from.distance(to);
        if (length < 1e-9) {
            return;
        }
        double dx = (to.x() - from.x()) / length;
        double dy = (to.y() - from.y()) / length;
        canvas.fill(
                Lists.immutable.of(
                        to,
                        to.plus(-7 * dx + 2.6 * dy, -7 * dy - 2.6 * dx),
                        to.plus(-7 * dx - 2.6 * dy, -7 * dy + 2.6 * dx)),
                Palette.EMBER);
    }

    void drawMarks(Canvas canvas) {
        picture.penLine().ifPresent(line -> penMarks(canvas, line));
        picture.controls().forEach(line -> controlMarks(canvas, line));
        picture.coldest().ifPresent(c -> coldest(canvas, c));
    }

    /** Where a control layer does not reach the other surface. */
    private void controlMarks(Canvas canvas, ControlLine line) {
        String word = Words.word(line.control());
        Optional<String> says = line.match(
                continuous -> Optional.empty(),
                broken -> Optional.of(word + " stops here"),
                changesSide -> Optional.of(word + " changes side"),
                notShown -> Optional.empty());
        says.ifPresent(words -> {
            Spot at = view.at(line.path().getLast());
            if (shown(at)) {
                canvas.disc(at, 2.2, pen(line.control()).ink());
            }
            beside(
                    canvas,
                    said(words, at),
                    inside(at),
                    9,
                    Type.of(7).with(Face.SEMIBOLD).with(Palette.EMBER));
        });
    }

    private void penMarks(Canvas canvas, PenLine line) {
        Type type = Type.of(7).with(Face.SEMIBOLD).with(Palette.DEEP);
        if (!line.unbroken()) {
            if (line.path().notEmpty()) {
                Spot at = view.at(line.path().getLast());
                if (shown(at)) {
                    Pen pen = Pen.of(1.8, Palette.EMBER).rounded();
                    canvas.line(at.plus(-5, -5), at.plus(5, 5), pen);
                    canvas.line(at.plus(-5, 5), at.plus(5, -5), pen);
                }
                beside(canvas, said("broken here", at), inside(at), 9, type.with(Palette.EMBER));
            }
            return;
        }
        if (line.neckAt().size() == 2) {
            Spot a = view.at(line.neckAt().get(0));
            Spot b = view.at(line.neckAt().get(1));
            if (shown(a) && shown(b)) {
                canvas.line(a, b, Pen.of(1.1, Palette.DEEP));
                cap(canvas, a, b);
                cap(canvas, b, a);
                beside(
                        canvas,
                        "neck " + picture.system().format(line.leastNeck(), Dimension.THICKNESS),
                        a.middle(b),
                        8,
                        type);
            }
        }
    }

    private static void cap(Canvas canvas, Spot at, Spot other) {
        double length = at.distance(other);
        if (length > 1e-9) {
            double nx = -(other.y() - at.y()) / length * 3;
            double ny = (other.x() - at.x()) / length * 3;
            canvas.line(at.plus(-nx, -ny), at.plus(nx, ny), Pen.of(1.1, Palette.DEEP));
        }
    }

    private void coldest(Canvas canvas, SectionPicture.Coldest coldest) {
        Spot at = view.at(coldest.at());
        if (!shown(at)) {
            beside(canvas, said(words(coldest), at), inside(at), 11, Type.of(7));
            return;
        }
        canvas.disc(at, 4.6, Palette.WHITE);
        canvas.circle(at, 4.2, Pen.of(1.1, Palette.INK));
        canvas.line(at.plus(-6.5, 0), at.plus(6.5, 0), Pen.of(0.7, Palette.INK));
        canvas.line(at.plus(0, -6.5), at.plus(0, 6.5), Pen.of(0.7, Palette.INK));
        beside(canvas, words(coldest), at, 11, Type.of(7).with(Face.SEMIBOLD));
    }

    private String words(SectionPicture.Coldest coldest) {
        return "coldest " + picture.system().format(coldest.temperature(), Dimension.TEMPERATURE);
    }

    private boolean shown(Spot at) {
        return view.page().contains(at.x(), at.y());
    }

    /** A mark's words; where its place lies outside the window, that it does. */
    private String said(String words, Spot at) {
        return shown(at) ? words : words.replace(" here", "") + ", beyond this drawing";
    }

    /** The nearest place of the page. */
    private Spot inside(Spot at) {
        Box page = view.page();
        return new Spot(
                Math.max(page.x0(), Math.min(page.x1(), at.x())), Math.max(page.y0(), Math.min(page.y1(), at.y())));
    }

    /** Sets a label near a place, on the first side where there is room. */
    private void beside(Canvas canvas, String text, Spot at, double off, Type type) {
        double half = canvas.metrics().width(text, type) / 2 + 2;
        double tall = type.size() / 2 + 1;
        Spot best = at.plus(off + half, 0);
        for (double far = off; far < off + 60; far += 6) {
            for (int turn = 0; turn < 8; turn++) {
                double a = turn * Math.PI / 4;
                Spot middle = at.plus(
                        (far + half) * Math.signum(Math.round(Math.cos(a) * 10) / 10.0) * Math.abs(Math.cos(a)),
                        (far + tall) * Math.sin(a));
                Box box = Box.about(middle, half, tall);
                boolean fits = view.page().grown(30).contains(box.x0(), box.y0())
                        && view.page().grown(30).contains(box.x1(), box.y1());
                if (fits && occupied.tryTake(box)) {
                    if (far > off) {
                        canvas.line(at, middle, Pen.of(0.35, type.ink()));
                    }
                    canvas.label(text, middle, type);
                    return;
                }
            }
        }
        canvas.text(text, best.x() - half + 2, best.y() - 2, type, Align.LEFT);
    }
}
