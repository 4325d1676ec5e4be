package coldseam.report.atlas;

import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.factory.Lists;

/** How a curve is told from the others without colour: its dashes, its marker and its letter. */
enum Mark {
    DISC(Palette.EMBER, new double[0]),
    SQUARE(Palette.OCHRE, new double[] {5, 2.4}),
    TRIANGLE(Palette.DEEP, new double[] {1.4, 1.8}),
    RING(Palette.MOSS, new double[] {7, 2, 1.4, 2}),
    DIAMOND(Palette.SLATE, new double[] {3, 3}),
    CROSS(Palette.INK, new double[] {9, 3});

    private static final double SIZE = 2.6;

    private final Ink ink;
    private final double[] dash;

    Mark(Ink ink, double[] dash) {
        this.ink = ink;
        this.dash = dash;
    }

    /** The n-th curve's; the seventh has the first's again, told apart by its letter alone. */
    static Mark of(int n) {
        return values()[n % values().length];
    }

    /** The letter beside the n-th curve. */
    static String letter(int n) {
        return String.valueOf((char) ('a' + n % 26));
    }

    Ink ink() {
        return ink;
    }

    Pen pen() {
        Pen pen = Pen.of(1.1, ink);
        return dash.length == 0 ? pen : pen.dashed(dash);
    }

    /** The marker about a place. */
    void draw(Canvas canvas, Spot at) {
        Pen thin = Pen.of(0.9, ink);
        switch (this) {
            case DISC -> canvas.disc(at, SIZE, ink);
            case RING -> {
                canvas.disc(at, SIZE, Palette.WHITE);
                canvas.circle(at, SIZE, thin);
            }
            case CROSS -> canvas.cross(at, SIZE, thin);
            default -> {
                canvas.fill(corners(at), this == SQUARE ? Palette.WHITE : ink);
                canvas.outline(corners(at), thin);
            }
        }
    }

    private ImmutableList<Spot> corners(Spot at) {
        return switch (this) {
            case SQUARE -> Box.about(at, SIZE, SIZE).corners();
            case TRIANGLE ->
                Lists.immutable.of(at.plus(-SIZE, -0.8 * SIZE), at.plus(SIZE, -0.8 * SIZE), at.plus(0, 1.2 * SIZE));
            default -> at.diamond(1.2 * SIZE);
        };
    }
}
