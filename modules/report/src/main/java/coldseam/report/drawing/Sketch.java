package coldseam.report.drawing;

import java.util.function.Consumer;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What was drawn, to be drawn again on any canvas.
 *
 * @param marks in the order in which they were drawn
 */
public record Sketch(ImmutableList<Mark> marks) {

    /** One call of a canvas. */
    public sealed interface Mark {

        void draw(Canvas canvas);
    }

    /** A canvas whose calls become marks. */
    public abstract static class Recording implements Canvas {

        private final TextMetrics metrics;

        protected Recording(TextMetrics metrics) {
            this.metrics = metrics;
        }

        /** Takes the next call. */
        protected abstract void add(Mark mark);

        @Override
        public void fill(ImmutableList<Spot> outline, Ink ink) {
            add(new Filled(outline, ink));
        }

        @Override
        public void patch(ImmutableList<Spot> outline, Ink ink) {
            add(new Patch(outline, ink));
        }

        @Override
        public void strokes(ImmutableList<ImmutableList<Spot>> lines, Pen pen) {
            add(new Stroked(lines, pen));
        }

        @Override
        public void outline(ImmutableList<Spot> corners, Pen pen) {
            add(new Outlined(corners, pen));
        }

        @Override
        public void disc(Spot centre, double radius, Ink ink) {
            add(new Disc(centre, radius, ink));
        }

        @Override
        public void circle(Spot centre, double radius, Pen pen) {
            add(new Circle(centre, radius, pen));
        }

        @Override
        public void text(String text, Spot at, Type type, Align align, double turn) {
            add(new Text(text, at, type, align, turn));
        }

        @Override
        public TextMetrics metrics() {
            return metrics;
        }
    }

    private record Filled(ImmutableList<Spot> outline, Ink ink) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.fill(outline, ink);
        }
    }

    private record Patch(ImmutableList<Spot> outline, Ink ink) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.patch(outline, ink);
        }
    }

    private record Stroked(ImmutableList<ImmutableList<Spot>> lines, Pen pen) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.strokes(lines, pen);
        }
    }

    private record Outlined(ImmutableList<Spot> corners, Pen pen) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.outline(corners, pen);
        }
    }

    private record Disc(Spot centre, double radius, Ink ink) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.disc(centre, radius, ink);
        }
    }

    private record Circle(Spot centre, double radius, Pen pen) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.circle(centre, radius, pen);
        }
    }

    private record Text(String text, Spot at, Type type, Align align, double turn) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.text(text, at, type, align, turn);
        }
    }

    private record Clipped(ImmutableList<Spot> outline, Sketch drawing) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.clipped(outline, () -> drawing.draw(canvas));
        }
    }

    private record Tagged(Tag tag, String alternative, Sketch drawing) implements Mark {
        @Override
        public void draw(Canvas canvas) {
            canvas.tagged(tag, alternative, () -> drawing.draw(canvas));
        }
    }

    /** What a painter draws. */
    public static Sketch of(TextMetrics metrics, Consumer<Canvas> painter) {
        Recorder recorder = new Recorder(metrics);
        painter.accept(recorder);
        return new Sketch(recorder.marks.toImmutable());
    }

    public void draw(Canvas canvas) {
        marks.forEach(mark -> mark.draw(canvas));
    }

    private static final class Recorder extends Recording {

        private MutableList<Mark> marks = Lists.mutable.empty();

        Recorder(TextMetrics metrics) {
            super(metrics);
        }

        @Override
        protected void add(Mark mark) {
            marks.add(mark);
        }

        private Sketch inner(Runnable drawing) {
            MutableList<Mark> before = marks;
            marks = Lists.mutable.empty();
            drawing.run();
            Sketch inner = new Sketch(marks.toImmutable());
            marks = before;
            return inner;
        }

        @Override
        public void clipped(ImmutableList<Spot> outline, Runnable drawing) {
            marks.add(new Clipped(outline, inner(drawing)));
        }

        @Override
        public void tagged(Tag tag, String alternative, Runnable drawing) {
            marks.add(new Tagged(tag, alternative, inner(drawing)));
        }
    }
}
