package coldseam.report.compare;

import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Comparison;
import coldseam.options.front.Choice;
import coldseam.report.atlas.Axis;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import coldseam.report.words.HonestWords;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The front of cost against heat loss: every set of the front with its interval, the staircase of what is proven, the house
 * as described, the chosen set and the next best step. Shapes tell them apart, not colours.
 */
final class FrontDrawing {

    private static final double DOT = 1.7;
    private static final double LEFT = 44;
    private static final double BOTTOM = 34;
    private static final double LEGEND = 30;
    private static final Type SMALL = Type.of(7.6);

    /** Most sets of the front that are drawn one by one; of more every so many-th is, the staircase being whole. */
    private static final int MOST_DRAWN = 300;

    private final Comparison comparison;
    private final UnitSystem units;

    FrontDrawing(Comparison comparison, UnitSystem units) {
        this.comparison = comparison;
        this.units = units;
    }

    /** A set as a point: what it costs more, and the bounds of H_T in the printed unit. */
    private record Point(double cost, double low, double high) {}

    private Point point(Choice choice) {
        Interval loss = Comparison.loss(choice);
        return new Point(choice.cost(), value(loss.lower()), value(loss.upper()));
    }

    private double value(double wattsPerKelvin) {
        return units.value(wattsPerKelvin, Dimension.HEAT_LOSS_COEFFICIENT);
    }

    private Point described() {
        var total = comparison.described().heatLoss().total();
        return new Point(0, value(total.lower()), value(total.upper()));
    }

    void draw(Canvas canvas, Box box) {
        ImmutableList<Point> front = comparison.front().choices().collect(this::point);
        Point described = described();
        ImmutableList<Point> alone = comparison
                .alternatives()
                .select(each -> each.built().isPresent())
                .collect(each -> alone(each, described));
        ImmutableList<Point> all = front.newWith(described).newWithAll(alone);
        Box field = new Box(box.x0() + LEFT, box.y0() + BOTTOM + LEGEND, box.x1() - 16, box.y1() - 10);
        double least = all.collectDouble(Point::cost).min();
        double most = all.collectDouble(Point::cost).max();
        // Of sets that all cost the same the picture is one column.
        Axis x = most > least ? Axis.around(least, most, 6) : new Axis(least - 1, most + 1, 1);
        Axis y = Axis.around(
                all.collectDouble(Point::low).min(),
                all.collectDouble(Point::high).max(),
                6);
        scales(canvas, field, x, y);
        alone.forEach(point -> cross(canvas, spot(field, x, y, point)));
        stairs(canvas, field, x, y);
        int step = 1 + front.size() / MOST_DRAWN;
        front.forEachWithIndex((point, i) -> {
            if (i % step == 0) {
                interval(canvas, field, x, y, point);
                canvas.disc(spot(field, x, y, point), DOT, Palette.INK);
            }
        });
        named(canvas, field, x, y, described);
        double widest = front.collectDouble(point -> point.high() - point.low()).maxIfEmpty(0);
        boolean narrow = widest / (y.most() - y.least()) * field.height() < 2 * DOT;
        legend(canvas, new Box(box.x0() + LEFT, box.y0(), box.x1(), box.y0() + LEGEND), narrow);
    }

    /** One option alone beside the house as described. */
    private Point alone(Alternative alternative, Point described) {
        Alternative.Built built = alternative.built().orElseThrow();
        return new Point(
                comparison.priced() ? built.cost().orElse(0) : 0,
                described.low() + value(built.more().lower()),
                described.high() + value(built.more().upper()));
    }

    private void scales(Canvas canvas, Box field, Axis x, Axis y) {
        Pen rule = Pen.of(0.4, Palette.RULE);
        for (double number : y.numbers()) {
            double at = field.y0() + y.share(number) * field.height();
            canvas.line(field.x0(), at, field.x1(), at, rule);
            canvas.text(y.text(number), field.x0() - 4, at - 2.6, SMALL, Align.RIGHT);
        }
        for (double number : comparison.priced() ? x.numbers() : Lists.mutable.<Double>empty()) {
            double at = field.x0() + x.share(number) * field.width();
            canvas.line(at, field.y0(), at, field.y0() - 3, Pen.of(0.6, Palette.INK));
            canvas.text(x.text(number), at, field.y0() - 12, SMALL, Align.CENTRE);
        }
        canvas.line(field.x0(), field.y0(), field.x1(), field.y0(), Pen.of(0.7, Palette.INK));
        String currency = comparison.described().house().prices().currency();
        canvas.text(
                comparison.priced()
                        ? "costs more than as described, " + currency
                        : "not every option has a cost: the front is of heat alone",
                field.middleX(),
                field.y0() - 24,
                SMALL.with(Palette.SLATE),
                Align.CENTRE);
        canvas.text(
                HonestWords.axis(Lists.immutable.of(comparison.described()), units),
                new Spot(field.x0() - 34, field.middleY()),
                SMALL.with(Palette.SLATE),
                Align.CENTRE,
                90);
    }

    /** What is proven for each cost: level from each set to the next better one. */
    private void stairs(Canvas canvas, Box field, Axis x, Axis y) {
        MutableList<Spot> stairs = Lists.mutable.empty();
        for (Choice choice : comparison.front().steps()) {
            Point point = point(choice);
            Spot at = spot(field, x, y, new Point(point.cost(), point.high(), point.high()));
            if (stairs.notEmpty()) {
                stairs.add(new Spot(at.x(), stairs.getLast().y()));
            }
            stairs.add(at);
        }
        if (stairs.notEmpty()) {
            stairs.add(new Spot(field.x1(), stairs.getLast().y()));
            canvas.stroke(stairs.toImmutable(), Pen.of(0.9, Palette.DEEP));
        }
    }

    private static void interval(Canvas canvas, Box field, Axis x, Axis y, Point point) {
        Spot low = spot(field, x, y, new Point(point.cost(), point.low(), point.low()));
        Spot high = spot(field, x, y, new Point(point.cost(), point.high(), point.high()));
        canvas.line(low, high, Pen.of(0.8, Palette.INK));
        canvas.line(low.x() - 2, low.y(), low.x() + 2, low.y(), Pen.of(0.5, Palette.INK));
        canvas.line(high.x() - 2, high.y(), high.x() + 2, high.y(), Pen.of(0.5, Palette.INK));
    }

    private void named(Canvas canvas, Box field, Axis x, Axis y, Point described) {
        Spot asIs = spot(field, x, y, described);
        square(canvas, asIs, 4);
        boolean asIsRight = asIs.x() > field.x1() - 80;
        label(canvas, asIs.plus(asIsRight ? -8 : 8, 9), "as described", asIsRight);
        comparison.next().map(next -> point(next.choice())).ifPresent(next -> {
            Spot at = spot(field, x, y, next);
            diamond(canvas, at, 5.5);
            boolean right = at.x() > field.x1() - 80;
            label(canvas, at.plus(right ? -8 : 8, right ? 20 : 10), "next best step", right);
        });
        Optional<Point> chosen =
                comparison.chosen().flatMap(Comparison.Answer::best).map(best -> point(best.choice()));
        chosen.ifPresent(point -> {
            Spot at = spot(field, x, y, point);
            canvas.circle(at, 6.5, Pen.of(1.2, Palette.INK));
            canvas.disc(at, 3.4, Palette.INK);
            boolean left = at.x() < field.x0() + 60;
            label(canvas, at.plus(left ? 9 : -9, -9), "chosen", !left);
        });
    }

    /** Begins at a place, or ends there. */
    private static void label(Canvas canvas, Spot at, String text, boolean ends) {
        Type type = SMALL.with(Face.SEMIBOLD);
        double half = canvas.metrics().width(text, type) / 2;
        canvas.label(text, at.plus(ends ? -half : half, 0), type);
    }

    private void legend(Canvas canvas, Box box, boolean narrow) {
        double y = box.y1() - 12;
        double second = y - 13;
        double column = box.width() / 3;
        canvas.disc(new Spot(box.x0() + 5, y + 2.5), DOT, Palette.INK);
        canvas.text(
                narrow ? "set of the front, interval within the dot" : "set of the front, bar: its proven interval",
                box.x0() + 14,
                y,
                SMALL,
                Align.LEFT);
        canvas.line(box.x0(), second + 2.5, box.x0() + 10, second + 2.5, Pen.of(0.9, Palette.DEEP));
        canvas.text("least loss that is proven for each cost", box.x0() + 14, second, SMALL, Align.LEFT);
        double x = box.x0() + 1.25 * column;
        square(canvas, new Spot(x + 5, y + 2.5), 3.2);
        canvas.text("as described", x + 14, y, SMALL, Align.LEFT);
        cross(canvas, new Spot(x + 5, second + 2.5));
        canvas.text("one option alone", x + 14, second, SMALL, Align.LEFT);
        x = box.x0() + 2.1 * column;
        Spot chosen = new Spot(x + 5, y + 2.5);
        canvas.circle(chosen, 4.6, Pen.of(1, Palette.INK));
        canvas.disc(chosen, 2.4, Palette.INK);
        canvas.text("chosen set", x + 14, y, SMALL, Align.LEFT);
        diamond(canvas, new Spot(x + 5, second + 2.5), 4);
        canvas.text("next best step", x + 14, second, SMALL, Align.LEFT);
    }

    private static void square(Canvas canvas, Spot at, double half) {
        open(canvas, Box.about(at, half, half).corners());
    }

    private static void diamond(Canvas canvas, Spot at, double half) {
        open(canvas, at.diamond(half));
    }

    private static void open(Canvas canvas, ImmutableList<Spot> corners) {
        canvas.fill(corners, Palette.WHITE);
        canvas.outline(corners, Pen.of(1.2, Palette.INK));
    }

    private static void cross(Canvas canvas, Spot at) {
        canvas.cross(at, 2.4, Pen.of(0.8, Palette.SLATE));
    }

    private static Spot spot(Box field, Axis x, Axis y, Point point) {
        return new Spot(
                field.x0() + x.share(point.cost()) * field.width(),
                field.y0() + y.share((point.low() + point.high()) / 2) * field.height());
    }
}
