package coldseam.report.pdf;

import coldseam.report.drawing.Canvas;

/** Something that is set into a column of a page. */
public interface Block {

    /**
     * How high it is.
     *
     * @param width points, of the column
     */
    double height(double width);

    /**
     * Draws it.
     *
     * @param left of the column
     * @param top of the block
     * @param width of the column
     */
    void draw(Canvas canvas, double left, double top, double width);
}
