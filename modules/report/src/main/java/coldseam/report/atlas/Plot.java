package coldseam.report.atlas;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;

/**
 * A field of a drawing in which values stand by two scales.
 *
 * @param canvas on which it is drawn
 * @param field on it, without the numbers beside it
 * @param x level scale
 * @param y upright scale
 * @param type of its numbers
 */
public record Plot(Canvas canvas, Box field, Axis x, Axis y, Type type) {

    /** Where a value stands. */
    public Spot spot(double across, double up) {
        return new Spot(field.x0() + x.share(across) * field.width(), field.y0() + y.share(up) * field.height());
    }

    /** Draws a rule for each number of the upright scale, that of zero heavier, and the line on which the field stands. */
    public void rules() {
        for (double number : y.numbers()) {
            double at = spot(x.least(), number).y();
            boolean zero = Math.abs(number) < y.step() / 1e6;
            Pen pen = zero ? Pen.of(0.8, Palette.SLATE) : Pen.of(0.4, Palette.RULE);
            canvas.line(field.x0(), at, field.x1(), at, pen);
            canvas.text(y.text(number), field.x0() - 4, at - 0.34 * type.size(), type, Align.RIGHT);
        }
        canvas.line(field.x0(), field.y0(), field.x1(), field.y0(), Pen.of(0.6, Palette.INK));
    }

    /** Sets the numbers of the level scale below the field. */
    public void numbers() {
        for (double number : x.numbers()) {
            double at = spot(number, y.least()).x();
            canvas.line(at, field.y0(), at, field.y0() - 3, Pen.of(0.6, Palette.INK));
            canvas.text(x.text(number), at, field.y0() - 1.57 * type.size(), type, Align.CENTRE);
        }
    }

    /** Says below the numbers what the level scale is. */
    public void across(String what) {
        canvas.text(what, field.middleX(), field.y0() - 3.1 * type.size(), type.with(Palette.SLATE), Align.CENTRE);
    }

    /** Draws an interval as an upright bar with its two ends. */
    public void interval(double across, double low, double high, Ink ink) {
        Spot from = spot(across, low);
        Spot to = spot(across, high);
        canvas.line(from, to, Pen.of(0.8, ink));
        canvas.line(from.x() - 2, from.y(), from.x() + 2, from.y(), Pen.of(0.5, ink));
        canvas.line(to.x() - 2, to.y(), to.x() + 2, to.y(), Pen.of(0.5, ink));
    }
}
