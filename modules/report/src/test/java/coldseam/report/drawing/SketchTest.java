package coldseam.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldseam.report.pdf.FontMetrics;
import org.eclipse.collections.impl.factory.Lists;
import org.junit.jupiter.api.Test;

class SketchTest {

    /** Every call there is, also inside one another. */
    private static void all(Canvas canvas) {
        Spot a = new Spot(1, 2);
        Spot b = new Spot(30, 4.5);
        Spot c = new Spot(12, 40);
        Pen pen = Pen.of(0.7, Palette.DEEP).dashed(3, 1.5).rounded();
        canvas.fill(Lists.immutable.of(a, b, c), Palette.FROST);
        canvas.patch(Lists.immutable.of(a, b, c), Palette.EMBER);
        canvas.clipped(Lists.immutable.of(a, b, c), () -> {
            canvas.strokes(Lists.immutable.of(Lists.immutable.of(a, b), Lists.immutable.of(b, c)), pen);
            canvas.tagged(Tag.FIGURE, "inside", () -> canvas.outline(Lists.immutable.of(a, b, c), pen));
            canvas.disc(c, 3, Palette.EMBER);
        });
        canvas.circle(b, 2, pen);
        canvas.text("ψ 0.1", c, Type.of(8).with(Face.SEMIBOLD), Align.RIGHT, 30);
        canvas.label("12°", a, Type.of(6));
    }

    @Test
    void whatIsDrawnAgainIsTheSame() {
        SvgCanvas drawn = new SvgCanvas(50, 50, FontMetrics.shared());
        all(drawn);
        SvgCanvas again = new SvgCanvas(50, 50, FontMetrics.shared());
        Sketch sketch = Sketch.of(FontMetrics.shared(), SketchTest::all);
        assertEquals(sketch, Sketch.of(FontMetrics.shared(), SketchTest::all));
        sketch.draw(again);
        assertEquals(drawn.document("all"), again.document("all"));
        assertTrue(drawn.document("all").contains("12°"));
    }
}
