package coldseam.report.pdf;

import coldseam.junctions.Keeping;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Sketch;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Tag;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** A page that is drawn on later: each step waits in a queue for the page's own canvas. */
final class DeferredCanvas extends Sketch.Recording {

    private final Steps steps;
    private final Keeping keeping;
    private final Supplier<Canvas> page;

    /**
     * @param steps where they wait
     * @param keeping what earlier runs drew
     * @param page asked when they are taken
     */
    DeferredCanvas(Steps steps, Keeping keeping, Supplier<Canvas> page) {
        super(FontMetrics.shared());
        this.steps = steps;
        this.keeping = keeping;
        this.page = page;
    }

    @Override
    protected void add(Sketch.Mark step) {
        steps.add(() -> step.draw(page.get()));
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
        steps.add(() -> {
            Canvas canvas = page.get();
            canvas.tagged(Tag.FIGURE, alternative, () -> sketch.get().draw(canvas));
        });
    }
}
