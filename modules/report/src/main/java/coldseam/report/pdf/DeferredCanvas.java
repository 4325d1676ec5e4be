package coldseam.report.pdf;

import coldseam.junctions.Keeping;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Sketch;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Tag;
import coldseam.report.drawing.TextMetrics;
import coldseam.report.drawing.Type;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A page that is drawn on later: each step waits in a queue for the page's own canvas. */
final class DeferredCanvas implements Canvas {

    private final Steps steps;
    private final Keeping keeping;
    private final Supplier<Canvas> page;

    /**
     * @param steps where they wait
     * @param keeping what earlier runs drew
     * @param page asked when they are taken
     */
    DeferredCanvas(Steps steps, Keeping keeping, Supplier<Canvas> page) {
        this.steps = steps;
        this.keeping = keeping;
        this.page = page;
    }

    private void later(Consumer<Canvas> step) {
        steps.add(() -> step.accept(page.get()));
    }

    @Override
    public void fill(ImmutableList<Spot> outline, Ink ink) {
        later(canvas -> canvas.fill(outline, ink));
    }

    @Override
    public void strokes(ImmutableList<ImmutableList<Spot>> lines, Pen pen) {
        later(canvas -> canvas.strokes(lines, pen));
    }

    @Override
    public void outline(ImmutableList<Spot> corners, Pen pen) {
        later(canvas -> canvas.outline(corners, pen));
    }

    @Override
    public void disc(Spot centre, double radius, Ink ink) {
        later(canvas -> canvas.disc(centre, radius, ink));
    }

    @Override
    public void circle(Spot centre, double radius, Pen pen) {
        later(canvas -> canvas.circle(centre, radius, pen));
    }

    @Override
    public void text(String text, Spot at, Type type, Align align, double turn) {
        later(canvas -> canvas.text(text, at, type, align, turn));
    }

    @Override
    public void clipped(ImmutableList<Spot> outline, Runnable drawing) {
        steps.around(drawing, inner -> page.get().clipped(outline, inner));
    }

    @Override
    public void tagged(Tag tag, String alternative, Runnable drawing) {
        steps.around(drawing, inner -> page.get().tagged(tag, alternative, inner));
    }

    /** Draws at once on another core, unless an earlier run has, and sets it where it stands. */
    @Override
    public void figure(String alternative, Record question, Consumer<Canvas> painter) {
        Supplier<Sketch> sketch =
                steps.beside(() -> keeping.answer(Lists.immutable.of(question), () -> Sketch.of(metrics(), painter)));
        later(canvas ->
                canvas.tagged(Tag.FIGURE, alternative, () -> sketch.get().draw(canvas)));
    }

    @Override
    public TextMetrics metrics() {
        return FontMetrics.shared();
    }
}
