package coldseam.report.atlas;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * Curves with their intervals.
 *
 * @param across what the level scale is
 * @param curves in the order of their marks
 * @param given where on the level scale the layers as given lie
 * @param limit a line across, such as the limit of fRsi; empty without
 * @param limitName what stands on that line
 */
record CurveChart(
        String title,
        String across,
        ImmutableList<ImmutableList<Value>> curves,
        double given,
        OptionalDouble limit,
        String limitName) {

    private static final double LEFT = 36;
    private static final double RIGHT = 16;
    private static final double TOP = 18;
    private static final double BOTTOM = 28;
    private static final Type SMALL = Type.of(7);

    /**
     * A value with its bounds.
     *
     * @param x on the level scale
     * @param low on the upright scale
     * @param high not below low
     */
    record Value(double x, double low, double high) {}

    void draw(Canvas canvas, Box box) {
        Box field = new Box(box.x0() + LEFT, box.y0() + BOTTOM, box.x1() - RIGHT, box.y1() - TOP);
        canvas.text(title, box.x0(), box.y1() - 9, Type.of(8.4).with(Face.SEMIBOLD), Align.LEFT);
        ImmutableList<Value> all = curves.flatCollect(curve -> curve);
        if (all.isEmpty()) {
            canvas.text("no option fits", field.middleX(), field.middleY(), SMALL, Align.CENTRE);
            return;
        }
        Axis x = Axis.around(0, Math.max(given, all.collectDouble(Value::x).max()), 4);
        double least = Math.min(all.collectDouble(Value::low).min(), limit.orElse(Double.POSITIVE_INFINITY));
        double most = Math.max(all.collectDouble(Value::high).max(), limit.orElse(Double.NEGATIVE_INFINITY));
        // A span of nothing would show rounding as mountains.
        double middle = (least + most) / 2;
        Axis y = most - least < 0.02 ? Axis.around(middle - 0.01, middle + 0.01, 5) : Axis.around(least, most, 5);
        Plot plot = new Plot(canvas, field, x, y, SMALL);
        plot.rules();
        plot.numbers();
        plot.across(across);
        double here = plot.spot(given, y.least()).x();
        canvas.line(
                here, field.y0(), here, field.y1(), Pen.of(0.6, Palette.SLATE).dashed(1, 2));
        canvas.text("as given", here + 3, field.y1() + 2.5, SMALL.with(Palette.SLATE), Align.CENTRE);
        limit.ifPresent(value -> {
            double at = plot.spot(given, value).y();
            canvas.line(field.x0(), at, field.x1(), at, Pen.of(0.7, Palette.INK).dashed(8, 2, 2, 2));
            canvas.text(limitName, field.x1() - 2, at + 2.5, SMALL, Align.RIGHT);
        });
        curves(plot);
    }

    private void curves(Plot plot) {
        Canvas canvas = plot.canvas();
        MutableList<Label> labels = Lists.mutable.empty();
        for (int i = 0; i < curves.size(); i++) {
            ImmutableList<Value> curve = curves.get(i);
            if (curve.isEmpty()) {
                continue;
            }
            Mark mark = Mark.of(i);
            ImmutableList<Spot> spots = curve.collect(value -> plot.spot(value.x(), middle(value)));
            canvas.stroke(spots, mark.pen());
            curve.forEach(value -> plot.interval(value.x(), value.low(), value.high(), mark.ink()));
            spots.forEach(spot -> mark.draw(canvas, spot));
            labels.add(new Label(Mark.letter(i), spots.getLast()));
        }
        labels(canvas, labels);
    }

    /** A letter at a curve's end. */
    private record Label(String letter, Spot end) {}

    /** Letters beside the ends, from below upwards, pushed apart where they would touch. */
    private static void labels(Canvas canvas, MutableList<Label> labels) {
        double last = Double.NEGATIVE_INFINITY;
        for (Label label : labels.toSortedListBy(each -> each.end().y())) {
            double at = Math.max(label.end().y() - 2.6, last + 8.2);
            canvas.text(label.letter(), label.end().x() + 6, at, Type.of(8).with(Face.SEMIBOLD), Align.LEFT);
            last = at;
        }
    }

    private static double middle(Value value) {
        return (value.low() + value.high()) / 2;
    }
}
