package coldseam.report.section;

import coldseam.conduction.Environment;
import coldseam.conduction.Point;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Bends;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** Lines of equal temperature, the limits' own among them. */
final class Isotherms {

    /** Steps people can count in. */
    private static final double[] STEPS = {0.5, 1, 2, 5, 10, 20};

    private static final int MOST = 16;

    /** Points beyond the window as far as which isotherms are kept. */
    private static final double NEAR = 20;

    /** Points between two corners of a line, at least. */
    private static final double APART = 0.8;

    private static final Pen PLAIN = Pen.of(0.35, Palette.MIST);
    private static final ImmutableList<Pen> LIMITS = Lists.immutable.of(
            Pen.of(1.1, Palette.DEEP).dashed(6, 1.6, 1.2, 1.6),
            Pen.of(1.1, Palette.OCHRE).dashed(1.2, 1.8).rounded());

    private final SectionPicture picture;
    private final View view;
    private final Occupied occupied;
    /** What is thinner than a label and would look parted under one. */
    private final Occupied slender;

    private final List<Drawn> drawn = new ArrayList<>();

    /** An isotherm on the page. */
    private record Drawn(String label, Type type, Pen pen, ImmutableList<ImmutableList<Spot>> lines, boolean limit) {}

    Isotherms(SectionPicture picture, View view, Occupied occupied, Occupied slender) {
        this.picture = picture;
        this.view = view;
        this.occupied = occupied;
        this.slender = slender;
        collect();
    }

    private void collect() {
        ImmutableList<Environment> all = picture.section().environments();
        double low = all.collectDouble(Environment::temperature).min();
        double high = all.collectDouble(Environment::temperature).max();
        UnitSystem system = picture.system();
        double shownLow = system.value(low, Dimension.TEMPERATURE);
        double shownHigh = system.value(high, Dimension.TEMPERATURE);
        double step = STEPS[STEPS.length - 1];
        for (double candidate : STEPS) {
            if ((shownHigh - shownLow) / candidate <= MOST) {
                step = candidate;
                break;
            }
        }
        Type type = Type.of(6).with(Palette.MIST);
        for (double shown = Math.ceil(shownLow / step + 1e-9) * step; shown < shownHigh - 1e-9; shown += step) {
            double t = system.inside(shown, Dimension.TEMPERATURE);
            String text = step >= 1 ? Long.toString(Math.round(shown)) : system.number(t, Dimension.TEMPERATURE);
            drawn.add(new Drawn(
                    text + "°", type, PLAIN, onPage(picture.isotherms().apply(t)), false));
        }
        picture.limits().forEachWithIndex((limit, i) -> {
            if (limit.temperature() > low && limit.temperature() < high) {
                Pen pen = pen(i);
                drawn.add(new Drawn(
                        limit.name() + " " + system.format(limit.temperature(), Dimension.TEMPERATURE),
                        Type.of(6.6).with(Face.SEMIBOLD).with(pen.ink()),
                        pen,
                        onPage(picture.isotherms().apply(limit.temperature())),
                        true));
            }
        });
    }

    /** How the i-th limit's line is drawn. */
    static Pen pen(int i) {
        return LIMITS.get(i % LIMITS.size());
    }

    static Pen plain() {
        return PLAIN;
    }

    /** The lines as far as they are near the window, without points the eye cannot tell apart. */
    private ImmutableList<ImmutableList<Spot>> onPage(ImmutableList<ImmutableList<Point>> lines) {
        Box near = view.page().grown(NEAR);
        List<ImmutableList<Spot>> out = new ArrayList<>();
        for (ImmutableList<Point> line : lines) {
            List<Spot> run = new ArrayList<>();
            for (int i = 1; i < line.size(); i++) {
                Spot from = view.at(line.get(i - 1));
                Spot to = view.at(line.get(i));
                // A long piece may cross the window with both its ends outside.
                boolean meets =
                        Box.around(Lists.immutable.of(from, to)).grown(0.01).overlaps(near);
                if (meets && run.isEmpty()) {
                    run.add(from);
                }
                boolean last = i == line.size() - 1;
                if (meets && (last || to.distance(run.get(run.size() - 1)) > APART)) {
                    run.add(to);
                } else if (!meets && !run.isEmpty()) {
                    run.add(from);
                    out.add(Lists.immutable.ofAll(run));
                    run.clear();
                }
            }
            if (run.size() > 1) {
                out.add(Lists.immutable.ofAll(run));
            }
        }
        return Lists.immutable.ofAll(out);
    }

    void drawLines(Canvas canvas) {
        drawn.forEach(d -> canvas.strokes(d.lines.collect(Bends::of), d.pen));
    }

    void drawLabels(Canvas canvas) {
        drawn.stream().filter(d -> d.limit).forEach(d -> label(canvas, d));
        drawn.stream().filter(d -> !d.limit).forEach(d -> label(canvas, d));
    }

    private void label(Canvas canvas, Drawn d) {
        List<Spot> candidates = new ArrayList<>();
        for (ImmutableList<Spot> line : d.lines) {
            for (int i = 1; i < line.size(); i++) {
                Spot from = line.get(i - 1);
                Spot to = line.get(i);
                int pieces = Math.max(1, (int) (from.distance(to) / 7));
                for (int k = 0; k < pieces; k++) {
                    candidates.add(from.towards(to, (k + 0.5) / pieces));
                }
            }
        }
        if (!label(canvas, d, candidates, true)) {
            label(canvas, d, candidates, false);
        }
    }

    /** From the middle of the line outwards. */
    private boolean label(Canvas canvas, Drawn d, List<Spot> candidates, boolean offSlender) {
        double half = canvas.metrics().width(d.label, d.type) / 2 + 2;
        double tall = d.type.size() / 2 + 1;
        Box inside = view.page().grown(-4);
        int n = candidates.size();
        for (int i = 0; i < n; i++) {
            Spot at = candidates.get(
                    i % 2 == 0 ? n / 2 + i / 2 - (i / 2 + n / 2 >= n ? n : 0) : Math.max(0, n / 2 - (i + 1) / 2));
            Box box = Box.about(at, half, tall);
            boolean fits = inside.contains(box.x0(), box.y0()) && inside.contains(box.x1(), box.y1());
            if (fits && !(offSlender && !slender.free(box)) && occupied.tryTake(box)) {
                canvas.label(d.label, at, d.type);
                return true;
            }
        }
        return false;
    }
}
