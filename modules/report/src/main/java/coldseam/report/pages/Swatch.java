package coldseam.report.pages;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Look;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import coldseam.report.pdf.Table;

/** Small drawings in the keys of sections. */
final class Swatch {

    private Swatch() {}

    /** A number in a ring, as on the drawing. */
    static Table.Cell number(int number) {
        return Table.Cell.drawn(11, (canvas, box) -> {
            Spot at = new Spot(box.x0() + 5.5, box.y1() - 5.5);
            canvas.circle(at, 5.2, Pen.of(0.6, Palette.INK));
            canvas.text(
                    Integer.toString(number), at.x(), at.y() - 2.2, Type.of(6.6).with(Face.SEMIBOLD), Align.CENTRE);
        });
    }

    /** A material's pattern. */
    static Table.Cell look(Look look) {
        return Table.Cell.drawn(11, (canvas, box) -> {
            Box area = new Box(box.x0(), box.y1() - 10.5, box.x0() + 24, box.y1() - 0.5);
            canvas.fill(area.corners(), look.tint());
            look.hatch().draw(canvas, area.corners(), area);
            canvas.outline(area.corners(), Pen.of(0.5, Palette.INK));
        });
    }
}
