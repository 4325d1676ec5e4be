package coldseam.report.compare;

import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Alternative;
import coldseam.options.Comparison;
import coldseam.options.front.Choice;
import coldseam.report.atlas.Axis;
import coldseam.report.atlas.Plot;
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
record FrontDrawing(Comparison comparison, UnitSystem units) {

    private static final double DOT = 1.7;
    private static final double LEFT = 44;
    private static final double BOTTOM = 34;
    private static final double LEGEND = 30;
    private static final Type SMALL = Type.of(7.6);

    /** Most sets of the front that are drawn one by one; of more every so many-th is, the staircase being whole. */
    private static final int MOST_DRAWN = 300;

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
        Plot plot = new Plot(canvas, field, x, y, SMALL);
        scales(plot);
        alone.forEach(point -> cross(canvas, spot(plot, point)));
        stairs(plot);
        int step = 1 + front.size() / MOST_DRAWN;
        front.forEachWithIndex((point, i) -> {
            if (i % step == 0) {
                plot.interval(point.cost(), point.low(), point.high(), Palette.INK);
                canvas.disc(spot(plot, point), DOT, Palette.INK);
            }
        });
        named(plot, described);
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

    private void scales(Plot plot) {
        plot.rules();
        if (comparison.priced()) {
            plot.numbers();
            plot.across("costs more than as described, "
                    + comparison.described().house().prices().currency());
        } else {
            plot.across("not every option has a cost: the front is of heat alone");
        }
        plot.canvas()
                .text(
                        HonestWords.axis(Lists.immutable.of(comparison.described()), units),
                        new Spot(plot.field().x0() - 34, plot.field().middleY()),
                        SMALL.with(Palette.SLATE),
                        Align.CENTRE,
                        90);
    }

    /** What is proven for each cost: level from each set to the next better one. */
    private void stairs(Plot plot) {
        MutableList<Spot> stairs = Lists.mutable.empty();
        for (Choice choice : comparison.front().steps()) {
            Point point = point(choice);
            Spot at = plot.spot(point.cost(), point.high());
            if (stairs.notEmpty()) {
                stairs.add(new Spot(at.x(), stairs.getLast().y()));
            }
            stairs.add(at);
        }
        if (stairs.notEmpty()) {
            stairs.add(new Spot(plot.field().x1(), stairs.getLast().y()));
            plot.canvas().stroke(stairs.toImmutable(), Pen.of(0.9, Palette.DEEP));
        }
    }

    private void named(Plot plot, Point described) {
        Canvas canvas = plot.canvas();
        Box field = plot.field();
        Spot asIs = spot(plot, described);
        square(canvas, asIs, 4);
        boolean asIsRight = asIs.x() > field.x1() - 80;
        label(canvas, asIs.plus(asIsRight ? -8 : 8, 9), "as described", asIsRight);
        comparison.next().map(next -> point(next.choice())).ifPresent(next -> {
            Spot at = spot(plot, next);
            diamond(canvas, at, 5.5);
            boolean right = at.x() > field.x1() - 80;
            label(canvas, at.plus(right ? -8 : 8, right ? 20 : 10), "next best step", right);
        });
        Optional<Point> chosen =
                comparison.chosen().flatMap(Comparison.Answer::best).map(best -> point(best.choice()));
        chosen.ifPresent(point -> {
            Spot at = spot(plot, point);
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

    private static Spot spot(Plot plot, Point point) {
        return plot.spot(point.cost(), (point.low() + point.high()) / 2);
    }
}
