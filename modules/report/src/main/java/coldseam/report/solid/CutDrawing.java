package coldseam.report.solid;

import coldseam.conduction.solid.BodyCut;
import coldseam.conduction.solid.BodyEnvironment;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.Cuboid;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.list.primitive.DoubleList;
import org.eclipse.collections.impl.factory.Lists;

/** One cut through a body: its materials, and lines of equal temperature. */
final class CutDrawing {

    private static final double[] STEPS = {0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20};
    private static final int MOST = 14;
    /** Points between two labels. */
    private static final double APART = 20;

    private static final Pen ISOTHERM = Pen.of(0.4, Palette.MIST);
    private static final Pen LINE = Pen.of(0.4, Palette.INK);
    private static final Pen SURFACE = Pen.of(0.9, Palette.INK);

    private final BodySolution solution;
    private final UnitSystem units;
    private final int direction;
    private final double at;
    private final BodyCut cut;
    /** The part of the body that is shown. */
    private final Cuboid shown;

    private final int across;
    private final int up;

    /**
     * @param direction 0, 1 or 2 for a cut at right angles to x, y or z
     * @param at where, m
     * @param shown the part of the body that is drawn
     */
    CutDrawing(BodySolution solution, UnitSystem units, int direction, double at, Cuboid shown) {
        this.solution = solution;
        this.units = units;
        this.direction = direction;
        this.at = at;
        this.cut = solution.field().cut(direction, at);
        this.shown = shown;
        this.across = direction == 0 ? 1 : 0;
        this.up = direction == 2 ? 1 : 2;
    }

    /** Draws it as large as a box allows, its title on top. */
    void draw(Canvas canvas, Box box, Palettes palettes) {
        title(canvas, box, "cut at " + "xyz".charAt(direction) + " = " + units.format(at, Dimension.THICKNESS));
        Box room = new Box(box.x0() + 14, box.y0() + 12, box.x1() - 4, box.y1() - 16);
        double scale = Math.min(room.width() / shown.size(across), room.height() / shown.size(up));
        double dx = room.x0() - scale * shown.low(across);
        double dy = room.y1() - scale * shown.high(up);
        for (BodyCut.Filled each : cut.filled()) {
            Box area = new Box(
                    dx + scale * within(each.x0(), across),
                    dy + scale * within(each.y0(), up),
                    dx + scale * within(each.x1(), across),
                    dy + scale * within(each.y1(), up));
            if (area.width() <= 0 || area.height() <= 0) {
                continue;
            }
            Look look = palettes.of(each.piece());
            canvas.fill(area.corners(), look.tint());
            look.hatch().draw(canvas, area.corners(), area);
        }
        isotherms(canvas, dx, dy, scale);
        canvas.strokes(lines(cut.seams(), dx, dy, scale), LINE);
        canvas.strokes(lines(cut.surfaces(), dx, dy, scale), SURFACE);
        axes(canvas, room, dy + scale * shown.low(up));
    }

    /** Sets what is drawn in a box above it. */
    static void title(Canvas canvas, Box box, String text) {
        canvas.text(
                text, box.x0(), box.y1() - 9, Type.of(8.5).with(Face.SEMIBOLD).with(Palette.DEEP), Align.LEFT);
    }

    private double within(double at, int direction) {
        return Math.max(shown.low(direction), Math.min(shown.high(direction), at));
    }

    /** Lines along the axes, as far as they are shown. */
    private ImmutableList<ImmutableList<Spot>> lines(
            ImmutableList<BodyCut.Line> all, double dx, double dy, double scale) {
        return all.collect(each -> new BodyCut.Line(
                        within(each.x0(), across),
                        within(each.y0(), up),
                        within(each.x1(), across),
                        within(each.y1(), up)))
                .select(each -> each.x0() != each.x1() || each.y0() != each.y1())
                .collect(each -> line(each, dx, dy, scale));
    }

    private boolean isShown(BodyCut.Line line) {
        double x = (line.x0() + line.x1()) / 2;
        double y = (line.y0() + line.y1()) / 2;
        return within(x, across) == x && within(y, up) == y;
    }

    private static ImmutableList<Spot> line(BodyCut.Line line, double dx, double dy, double scale) {
        return Lists.immutable.of(
                new Spot(dx + scale * line.x0(), dy + scale * line.y0()),
                new Spot(dx + scale * line.x1(), dy + scale * line.y1()));
    }

    private void axes(Canvas canvas, Box room, double bottom) {
        Type type = Type.of(7).with(Palette.SLATE);
        Pen pen = Pen.of(0.6, Palette.SLATE);
        double x = room.x0() - 10;
        double y = bottom - 6;
        canvas.line(x, y, x + 18, y, pen);
        canvas.line(x, y, x, y + 18, pen);
        canvas.text("xyz".substring(across, across + 1), x + 20, y - 2, type, Align.LEFT);
        canvas.text("xyz".substring(up, up + 1), x, y + 20, type, Align.CENTRE);
    }

    private void isotherms(Canvas canvas, double dx, double dy, double scale) {
        DoubleList all = solution.body()
                .environments()
                .collectDouble(each -> units.value(each.temperature(), Dimension.TEMPERATURE));
        double low = all.min();
        double high = all.max();
        MutableList<Spot> taken = Lists.mutable.empty();
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && (high - low) / STEPS[i] <= MOST; i--) {
            step = STEPS[i];
        }
        for (double t = Math.ceil(low / step + 1e-9) * step; t < high - 1e-9; t += step) {
            MutableList<ImmutableList<Spot>> lines = Lists.mutable.empty();
            for (BodyCut.Line each : cut.isotherm(units.inside(t, Dimension.TEMPERATURE))) {
                if (isShown(each)) {
                    lines.add(line(each, dx, dy, scale));
                }
            }
            canvas.strokes(lines.toImmutable(), ISOTHERM);
            label(canvas, lines, plain(t) + "°", taken);
        }
    }

    /** Sets a line's temperature where no other stands near. */
    private static void label(
            Canvas canvas, MutableList<ImmutableList<Spot>> lines, String text, MutableList<Spot> taken) {
        for (int i = 0; i < lines.size(); i++) {
            ImmutableList<Spot> piece = lines.get((lines.size() / 2 + i) % lines.size());
            Spot at = piece.getFirst().middle(piece.getLast());
            if (taken.allSatisfy(other -> other.distance(at) > APART)) {
                taken.add(at);
                canvas.label(text, at, Type.of(5.6).with(Palette.MIST));
                return;
            }
        }
    }

    /**
     * Where a cut at right angles to a direction shows most: through the coldest place of the warmest environment's surface;
     * where nothing but one material lies on that plane, in the middle of the slab that shows the most materials.
     */
    static double at(BodySolution solution, int direction) {
        String warmest = solution.body()
                .environments()
                .maxBy(BodyEnvironment::temperature)
                .name();
        double coldest = solution.surface(warmest).at().along(direction);
        if (materials(solution, direction, coldest) > 1) {
            return coldest;
        }
        double best = coldest;
        int most = 1;
        double[] planes = solution.field().drawnPlanes(direction);
        for (int i = 0; i + 1 < planes.length; i++) {
            double middle = (planes[i] + planes[i + 1]) / 2;
            int materials = materials(solution, direction, middle);
            if (materials > most) {
                most = materials;
                best = middle;
            }
        }
        return best;
    }

    static int materials(BodySolution solution, int direction, double at) {
        return solution.field()
                .cut(direction, at)
                .filled()
                .collect(BodyCut.Filled::piece)
                .distinct()
                .size();
    }

    /** To a hundredth, without zeros at its end. */
    private static String plain(double value) {
        return new BigDecimal(value)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
