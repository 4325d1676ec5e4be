package coldseam.report.section;

import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** The jagged lines where the drawing stops and the house goes on. */
record Breaks(View view, ImmutableList<CutLines.Cut> cuts) {

    private static final Pen PEN = Pen.of(0.6, Palette.INK);

    void draw(Canvas canvas) {
        for (CutLines.Cut cut : cuts) {
            Spot from = view.at(cut.at(cut.from())).plus(-4 * cut.dx(), -4 * cut.dy());
            Spot to = view.at(cut.at(cut.to())).plus(4 * cut.dx(), 4 * cut.dy());
            double length = from.distance(to);
            Spot middle = new Spot((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
            double tooth = Math.min(4, length / 4);
            canvas.stroke(
                    Lists.immutable.of(
                            from,
                            middle.plus(-tooth * cut.dx(), -tooth * cut.dy()),
                            middle.plus(
                                    -tooth / 2 * cut.dx() + tooth * cut.outX(),
                                    -tooth / 2 * cut.dy() + tooth * cut.outY()),
                            middle.plus(
                                    tooth / 2 * cut.dx() - tooth * cut.outX(),
                                    tooth / 2 * cut.dy() - tooth * cut.outY()),
                            middle.plus(tooth * cut.dx(), tooth * cut.dy()),
                            to),
                    PEN);
        }
    }
}
