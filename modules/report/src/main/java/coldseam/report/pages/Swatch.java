package coldseam.report.pages;

import coldseam.report.drawing.Box;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Spot;
import coldseam.report.pdf.Table;

/** Small drawings in the keys of sections. */
final class Swatch {

    private Swatch() {}

    /** A number in a ring, as on the drawing. */
    static Table.Cell number(int number) {
        return Table.Cell.drawn(11, (canvas, box) -> canvas.ringed(number, new Spot(box.x0() + 5.5, box.y1() - 5.5)));
    }

    /** A material's pattern. */
    static Table.Cell look(Look look) {
        return Table.Cell.drawn(
                11,
                (canvas, box) ->
                        look.sample(canvas, new Box(box.x0(), box.y1() - 10.5, box.x0() + 24, box.y1() - 0.5)));
    }
}
