package coldseam.report.solid;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Type;

/**
 * Colours for temperatures, from dark cold to light warm, so that they stay in order in black and white.
 *
 * @param coldest °C
 * @param warmest °C
 */
record Warmth(double coldest, double warmest) {

    private static final int STEPS = 10;

    private static final Ink[] STOPS = {
        Ink.of(0x14505C), Ink.of(0x4C8490), Ink.of(0x9CC3C4), Ink.of(0xE9DDB8), Ink.of(0xFBF4E3)
    };

    /** The colour of a temperature, in one of ten steps. */
    Ink ink(double temperature) {
        double share = warmest > coldest ? (temperature - coldest) / (warmest - coldest) : 1;
        double step = Math.min(STEPS - 1, Math.max(0, Math.floor(share * STEPS)));
        return mixed((step + 0.5) / STEPS);
    }

    private static Ink mixed(double share) {
        double at = share * (STOPS.length - 1);
        int i = (int) Math.min(STOPS.length - 2, Math.floor(at));
        double t = at - i;
        return new Ink(
                mixed(STOPS[i].red(), STOPS[i + 1].red(), t),
                mixed(STOPS[i].green(), STOPS[i + 1].green(), t),
                mixed(STOPS[i].blue(), STOPS[i + 1].blue(), t));
    }

    private static int mixed(int from, int to, double t) {
        return (int) Math.round(from + t * (to - from));
    }

    /** Draws the scale with its temperatures. */
    void draw(Canvas canvas, double x, double y, double width, UnitSystem units) {
        Type type = Type.of(7.2);
        double step = width / STEPS;
        for (int i = 0; i < STEPS; i++) {
            Box field = new Box(x + i * step, y, x + (i + 1) * step, y + 7);
            canvas.fill(field.corners(), mixed((i + 0.5) / STEPS));
            canvas.outline(field.corners(), Pen.of(0.3, Palette.SLATE));
        }
        for (int i = 0; i <= STEPS; i += STEPS / 2) {
            double value = coldest + i * (warmest - coldest) / STEPS;
            canvas.text(units.format(value, Dimension.TEMPERATURE), x + i * step, y - 9, type, Align.CENTRE);
        }
    }
}
