package coldseam.report;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;

/** The key of a section's materials under an SVG picture, in two columns. */
final class SvgKeys {

    private static final double ROW = 15;

    private static final double TITLE = 12;

    /** How much wider another typeface may set a line where a viewer lacks ours (judgement). */
    private static final double WIDER = 1.25;

    private SvgKeys() {}

    static double height(SectionDrawing drawing) {
        return (drawing.keys().size() + 1) / 2 * ROW + 14;
    }

    /** In one line, smaller where it is long. */
    static void title(Canvas canvas, String title, double x, double y, double room) {
        double usual = canvas.metrics().width(title, Type.of(TITLE).with(Face.SEMIBOLD));
        double size = Math.min(TITLE, TITLE * room / (usual * WIDER));
        canvas.text(title, x, y, Type.of(size).with(Face.SEMIBOLD).with(Palette.DEEP), Align.LEFT);
    }

    static void draw(Canvas canvas, SectionDrawing drawing, UnitSystem units, Box box) {
        int half = (drawing.keys().size() + 1) / 2;
        double column = box.width() / 2;
        drawing.keys().forEachWithIndex((key, i) -> {
            double x = box.x0() + (i < half ? 0 : column);
            double y = box.y1() - ROW * (i < half ? i : i - half) - 8;
            row(canvas, key, units, x, y, column - 20);
        });
    }

    private static void row(Canvas canvas, SectionPicture.Key key, UnitSystem units, double x, double y, double width) {
        canvas.ringed(key.number(), new Spot(x + 6, y));
        key.look().sample(canvas, new Box(x + 16, y - 5, x + 40, y + 5));
        String conductivity = key.says(number -> units.format(number, Dimension.CONDUCTIVITY));
        double room = width - 46 - canvas.metrics().width(conductivity, Type.of(8)) - 8;
        String name = key.material();
        while (name.length() > 4 && canvas.metrics().width(name, Type.of(8)) > room) {
            name = name.substring(0, name.length() - 2).strip() + "…";
        }
        canvas.text(name, x + 46, y - 2.8, Type.of(8), Align.LEFT);
        canvas.text(conductivity, x + width, y - 2.8, Type.of(8).with(Palette.SLATE), Align.RIGHT);
    }
}
