package coldseam.report.compare;

import coldseam.audit.JunctionRow;
import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Renovation;
import coldseam.options.Renovation.Cold;
import coldseam.options.Renovation.Stage;
import coldseam.report.atlas.Axis;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import coldseam.report.words.CompareWords;
import coldseam.report.words.HonestWords;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The house as found and at each stage, a bar of heat loss each: solid what it still loses, hatched what the stage takes
 * away, dotted outlines what it adds; below it what is open or cold meanwhile. Patterns tell them apart, not colours.
 */
final class StagesDrawing {

    private static final double BAR = 17;
    private static final double LINE = 10;

    /** From a bar's last line to the next bar. */
    private static final double GAP = 9;

    private static final double AXIS = 30;
    private static final double LEGEND = 24;
    private static final double NAMES = 112;
    private static final Type SMALL = Type.of(7.6);

    private final UnitSystem units;
    private final ImmutableList<Bar> bars;
    private final String label;

    /**
     * A bar.
     *
     * @param name of what is built
     * @param before what the house lost before, in the printed unit
     * @param now what it loses
     * @param says lines below the bar: the difference, and kinds of seams that are open meanwhile
     * @param mould kinds of seams on which mould may grow; may be empty
     */
    private record Bar(String name, double before, double now, ImmutableList<String> says, String mould) {

        double height() {
            return BAR + LINE * (says.size() + (mould.isEmpty() ? 0 : 1)) + GAP;
        }
    }

    StagesDrawing(Renovation renovation, UnitSystem units) {
        this.units = units;
        MutableList<Bar> all = Lists.mutable.empty();
        double last = value(without(renovation));
        all.add(new Bar("as found", last, last, Lists.immutable.empty(), kinds(renovation.cold())));
        for (Stage stage : renovation.stages()) {
            double now = value(stage.audit().heatLoss().total());
            all.add(new Bar(stage.name(), last, now, says(stage), kinds(stage.cold())));
            last = now;
        }
        if (renovation.stages().isEmpty()) {
            double now = last + value(renovation.more());
            all.add(new Bar(
                    "after", last, now, Lists.immutable.of(new CompareWords(units).heat(renovation.more())), ""));
        }
        this.bars = all.toImmutable();
        this.label = HonestWords.axis(
                renovation
                        .stages()
                        .collect(Stage::audit)
                        .newWith(renovation.before())
                        .newWith(renovation.after()),
                units);
    }

    /** The first house without its corners, which no stage counts. */
    private static Interval without(Renovation renovation) {
        return renovation
                .before()
                .heatLoss()
                .total()
                .plus(renovation.before().heatLoss().vertices().times(-1));
    }

    private double value(Interval wattsPerKelvin) {
        return units.value(wattsPerKelvin.middle(), Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private ImmutableList<String> says(Stage stage) {
        String change = new CompareWords(units).heat(stage.more()) + CompareWords.share(stage.share());
        return stage.open().isEmpty()
                ? Lists.immutable.of(change)
                : Lists.immutable.of(
                        change,
                        "open: "
                                + stage.open()
                                        .collect(JunctionRow::kindLabel)
                                        .distinct()
                                        .makeString(", "));
    }

    private static String kinds(ImmutableList<Cold> cold) {
        return cold.select(Cold::mould)
                .collect(each -> each.row().kindLabel())
                .distinct()
                .makeString(", ");
    }

    /** Points that it needs. */
    double height() {
        return bars.sumOfDouble(Bar::height) + AXIS + LEGEND;
    }

    void draw(Canvas canvas, Box box) {
        Box field = new Box(box.x0() + NAMES, box.y0() + AXIS + LEGEND, box.x1() - 8, box.y1());
        Axis axis = Axis.around(
                0, bars.collectDouble(bar -> Math.max(bar.before(), bar.now())).max(), 6);
        scale(canvas, field, axis);
        double top = field.y1();
        for (Bar bar : bars) {
            bar(canvas, field, axis, bar, top);
            top -= bar.height();
        }
        canvas.line(field.x0(), field.y0(), field.x0(), field.y1(), Pen.of(0.8, Palette.INK));
        legend(canvas, field, box.y0() + 6);
    }

    private void scale(Canvas canvas, Box field, Axis axis) {
        for (double number : axis.numbers()) {
            double at = x(field, axis, number);
            canvas.line(at, field.y0(), at, field.y1(), Pen.of(0.4, Palette.RULE));
            canvas.text(axis.text(number), at, field.y0() - 10, SMALL, Align.CENTRE);
        }
        canvas.text(label, field.middleX(), field.y0() - 21, SMALL.with(Palette.SLATE), Align.CENTRE);
    }

    private void bar(Canvas canvas, Box field, Axis axis, Bar bar, double top) {
        double y1 = top;
        double y0 = y1 - BAR;
        double now = x(field, axis, bar.now());
        double before = x(field, axis, bar.before());
        Type bold = SMALL.with(Face.SEMIBOLD);
        canvas.text(fitted(canvas, bar.name(), NAMES), field.x0() - 6, y0 + 5.5, bold, Align.RIGHT);
        solid(canvas, new Box(field.x0(), y0, Math.min(now, before), y1));
        if (before > now + 0.5) {
            taken(canvas, new Box(now, y0, before, y1));
        } else if (now > before + 0.5) {
            added(canvas, new Box(before, y0, now, y1));
        }
        canvas.text(Format.of("%.1f", bar.now()), Math.min(now, before) - 4, y0 + 5.5, bold, Align.RIGHT);
        double y = y0 - LINE + 1;
        for (String line : bar.says()) {
            canvas.text(fitted(canvas, line, field.width()), field.x0() + 4, y, SMALL, Align.LEFT);
            y -= LINE;
        }
        if (!bar.mould().isEmpty()) {
            triangle(canvas, new Spot(field.x0() + 7.6, y));
            canvas.text(
                    fitted(canvas, "mould may grow: " + bar.mould(), field.width() - 10),
                    field.x0() + 14,
                    y,
                    SMALL,
                    Align.LEFT);
        }
    }

    private static String fitted(Canvas canvas, String text, double width) {
        String shown = text;
        while (canvas.metrics().width(shown, SMALL) > width - 8 && shown.length() > 4) {
            shown = shown.substring(0, shown.length() - 2) + "…";
        }
        return shown;
    }

    private void legend(Canvas canvas, Box field, double y) {
        double column = field.width() / 3;
        double x = field.x0();
        solid(canvas, new Box(x, y - 1, x + 12, y + 7));
        canvas.text("still lost", x + 16, y, SMALL, Align.LEFT);
        x += 0.55 * column;
        taken(canvas, new Box(x, y - 1, x + 12, y + 7));
        canvas.text("taken away by the stage", x + 16, y, SMALL, Align.LEFT);
        x += 1.05 * column;
        if (bars.anySatisfy(bar -> bar.now() > bar.before())) {
            added(canvas, new Box(x, y - 1, x + 12, y + 7));
            canvas.text("added by it", x + 16, y, SMALL, Align.LEFT);
            x += 0.6 * column;
        }
        if (bars.anySatisfy(bar -> !bar.mould().isEmpty())) {
            triangle(canvas, new Spot(x + 5, y));
            canvas.text("mould may grow", x + 16, y, SMALL, Align.LEFT);
        }
    }

    private static void solid(Canvas canvas, Box box) {
        canvas.fill(box.corners(), Palette.RULE);
        canvas.outline(box.corners(), Pen.of(0.7, Palette.INK));
    }

    private static void taken(Canvas canvas, Box box) {
        canvas.fill(box.corners(), Palette.WHITE);
        hatch(canvas, box, Pen.of(0.5, Palette.DEEP));
        canvas.outline(box.corners(), Pen.of(0.7, Palette.INK));
    }

    private static void added(Canvas canvas, Box box) {
        canvas.fill(box.corners(), Palette.WHITE);
        canvas.outline(box.corners(), Pen.of(1.6, Palette.EMBER).dashed(1.6, 1.6));
    }

    private static void hatch(Canvas canvas, Box box, Pen pen) {
        MutableList<ImmutableList<Spot>> lines = Lists.mutable.empty();
        double lean = box.height();
        for (double x = box.x0() - lean + 4; x < box.x1(); x += 4) {
            ImmutableList<Spot> line = box.clipped(new Spot(x, box.y0()), new Spot(x + lean, box.y1()));
            if (line.size() > 1) {
                lines.add(line);
            }
        }
        canvas.strokes(lines.toImmutable(), pen);
    }

    private static void triangle(Canvas canvas, Spot at) {
        canvas.fill(Lists.immutable.of(at.plus(-3.6, 0), at.plus(3.6, 0), at.plus(0, 6.4)), Palette.INK);
    }

    private static double x(Box field, Axis axis, double number) {
        return field.x0() + axis.share(number) * field.width();
    }
}
