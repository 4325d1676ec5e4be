package coldseam.report.drawing;

import java.util.function.Consumer;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** What sections, houses and charts are drawn on, so that each is drawn once for PDF and SVG. */
public interface Canvas {

    /** Points, the radius of a ring. */
    double RING = 5.2;

    /** Points, the width of the line round a patch. */
    double HAIR = 0.2;

    /** Fills an outline; one that crosses itself is filled where its winding is not zero. */
    void fill(ImmutableList<Spot> outline, Ink ink);

    /** Fills an outline and a hair beyond it, which closes the seam to a neighbour that is drawn so, too. */
    void patch(ImmutableList<Spot> outline, Ink ink);

    /** Draws lines of one kind in one go. */
    void strokes(ImmutableList<ImmutableList<Spot>> lines, Pen pen);

    /** Draws a closed outline. */
    void outline(ImmutableList<Spot> corners, Pen pen);

    /** Fills a disc. */
    void disc(Spot centre, double radius, Ink ink);

    /** Draws a circle. */
    void circle(Spot centre, double radius, Pen pen);

    /**
     * Sets one line of text.
     *
     * @param at where its baseline stands, by the alignment
     * @param turn degrees, anticlockwise
     */
    void text(String text, Spot at, Type type, Align align, double turn);

    /** Draws with everything outside an outline left away. */
    void clipped(ImmutableList<Spot> outline, Runnable drawing);

    /** Widths of text. */
    TextMetrics metrics();

    /**
     * Draws a part and says what it is, where the canvas can say so; what is drawn outside every part is decoration.
     *
     * @param alternative what a figure shows, in words; empty for other parts
     */
    default void tagged(Tag tag, String alternative, Runnable drawing) {
        drawing.run();
    }

    /**
     * Draws a figure that depends on nothing drawn before; a canvas may have it drawn beside what follows, or know it.
     *
     * @param alternative what it shows, in words
     * @param question all that decides what is drawn, and where
     * @param painter draws it, in a thread of its own where the canvas wants it so
     */
    default void figure(String alternative, Record question, Consumer<Canvas> painter) {
        tagged(Tag.FIGURE, alternative, () -> painter.accept(this));
    }

    /** Draws one polyline. */
    default void stroke(ImmutableList<Spot> line, Pen pen) {
        strokes(Lists.immutable.of(line), pen);
    }

    /** Draws one straight line. */
    default void line(Spot from, Spot to, Pen pen) {
        stroke(Lists.immutable.of(from, to), pen);
    }

    /** Draws one straight line. */
    default void line(double x0, double y0, double x1, double y1, Pen pen) {
        line(new Spot(x0, y0), new Spot(x1, y1), pen);
    }

    /** Draws a cross that lies on its side, reaching so far in each direction. */
    default void cross(Spot at, double half, Pen pen) {
        strokes(
                Lists.immutable.of(
                        Lists.immutable.of(at.plus(-half, -half), at.plus(half, half)),
                        Lists.immutable.of(at.plus(-half, half), at.plus(half, -half))),
                pen);
    }

    /** Sets one level line of text. */
    default void text(String text, double x, double y, Type type, Align align) {
        text(text, new Spot(x, y), type, align, 0);
    }

    /** Sets a number in a ring, as drawings and their keys have those of materials. */
    default void ringed(int number, Spot middle) {
        circle(middle, RING, Pen.of(0.6, Palette.INK));
        text(
                Integer.toString(number),
                middle.x(),
                middle.y() - 2.2,
                Type.of(6.6).with(Face.SEMIBOLD),
                Align.CENTRE);
    }

    /** Sets text on a white strip, so that it can be read over lines. */
    default void label(String text, Spot middle, Type type) {
        double half = metrics().width(text, type) / 2;
        fill(
                new Box(
                                middle.x() - half - 1.5,
                                middle.y() - 0.45 * type.size(),
                                middle.x() + half + 1.5,
                                middle.y() + 0.5 * type.size())
                        .corners(),
                Palette.WHITE);
        text(text, middle.plus(0, -0.33 * type.size()), type, Align.CENTRE, 0);
    }
}
