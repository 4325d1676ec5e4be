package coldseam.report.section;

import coldseam.files.Words;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.junctions.ControlLine;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** What the lines of a section mean, and its scale with a bar. */
public final class Legend {

    /** Height it takes, points. */
    public static final double HEIGHT = 34;

    /** Height of the scale bar alone, points. */
    public static final double BAR = 20;

    /** Length of a control layer's sample, points. */
    private static final double SAMPLE = 14;

    private static final Type TYPE = Type.of(7.2);

    private Legend() {}

    private record Entry(String words, BiConsumer<Canvas, Spot> sample) {}

    /** Draws it into the lower part of a box. */
    public static void draw(Canvas canvas, Box box, SectionPicture picture, SectionDrawing drawing) {
        bar(canvas, box.x0(), box.y0() + 20, picture.system(), drawing, true);
        controls(canvas, box.x1(), box.y0() + 20, picture);
        double x = box.x0();
        double y = box.y0() + 4;
        for (Entry entry : entries(picture)) {
            double width = 22 + canvas.metrics().width(entry.words, TYPE) + 14;
            if (x + width > box.x1() + 14 && x > box.x0()) {
                break;
            }
            entry.sample.accept(canvas, new Spot(x, y + 2.4));
            canvas.text(entry.words, x + 22, y, TYPE, Align.LEFT);
            x += width;
        }
    }

    /** The control layers' lines, beside the scale, from the right. */
    private static void controls(Canvas canvas, double x1, double y, SectionPicture picture) {
        double x = x1;
        for (ControlLine line : picture.controls().toReversed()) {
            String word = Words.word(line.control());
            x -= canvas.metrics().width(word, TYPE);
            canvas.text(word, x, y - 0.5, TYPE, Align.LEFT);
            x -= SAMPLE + 3;
            canvas.line(x, y + 1.9, x + SAMPLE, y + 1.9, Overlays.pen(line.control()));
            x -= 8;
        }
    }

    /** Draws the scale bar alone into the lower part of a box. */
    public static void drawBar(Canvas canvas, Box box, UnitSystem system, SectionDrawing drawing) {
        bar(canvas, box.x0(), box.y0() + 3, system, drawing, false);
    }

    private static List<Entry> entries(SectionPicture picture) {
        List<Entry> out = new ArrayList<>();
        picture.penLine().ifPresent(p -> out.add(line("pen line", Overlays.PEN_LINE)));
        picture.weakestPath().ifPresent(p -> out.add(line("weakest path", Overlays.PATH)));
        out.add(line("isotherm, °" + (picture.system() == UnitSystem.SI ? "C" : "F"), Isotherms.plain()));
        for (int i = 0; i < picture.limits().size(); i++) {
            SectionPicture.Limit limit = picture.limits().get(i);
            out.add(line(limit.name(), Isotherms.pen(i)));
        }
        return out;
    }

    private static Entry line(String words, Pen pen) {
        return new Entry(words, (canvas, at) -> canvas.line(at.x(), at.y(), at.x() + 18, at.y(), pen));
    }

    private static void bar(
            Canvas canvas, double x0, double y, UnitSystem system, SectionDrawing drawing, boolean inFull) {
        double k = drawing.pointsPerMetre();
        boolean si = system == UnitSystem.SI;
        double unit = si ? 0.1 : 0.1524;
        // Four fields, each a round length and at least 16 points wide.
        double field = unit;
        for (double factor : new double[] {0.1, 0.2, 0.5, 1, 2, 5, 10, 20}) {
            field = unit * factor;
            if (field * k >= 18) {
                break;
            }
        }
        for (int i = 0; i < 4; i++) {
            Box part = new Box(x0 + i * field * k, y, x0 + (i + 1) * field * k, y + 3.4);
            canvas.fill(part.corners(), i % 2 == 0 ? Palette.INK : Palette.WHITE);
            canvas.outline(part.corners(), Pen.of(0.5, Palette.INK));
        }
        double end = x0 + 4 * field * k;
        String length = system.format(4 * field, Dimension.LENGTH);
        canvas.text("0", x0, y + 5.5, Type.of(6.4), Align.LEFT);
        canvas.text(length, end, y + 5.5, Type.of(6.4), Align.CENTRE);
        String words = "Scale " + drawing.scale()
                + (inFull ? " printed without scaling; dimensions in " + (si ? "mm" : "inches") : "");
        canvas.text(words, end + 18, y - 0.5, TYPE.with(Palette.SLATE), Align.LEFT);
    }
}
