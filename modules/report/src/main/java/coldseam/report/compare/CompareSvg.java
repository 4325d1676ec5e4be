package coldseam.report.compare;

import coldseam.files.quantity.UnitSystem;
import coldseam.options.Comparison;
import coldseam.options.Renovation;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.SvgCanvas;
import coldseam.report.drawing.Type;
import coldseam.report.pdf.FontMetrics;
import coldseam.report.words.FrontWords;
import java.util.function.BiConsumer;

/** A comparison as an SVG picture: the front of one house's sets, or the stages from one house to another. */
public final class CompareSvg {

    private static final double WIDTH = 560;
    private static final double HEIGHT = 380;
    private static final double MARGIN = 12;

    /** Above the drawing, for title and subtitle. */
    private static final double HEAD = 38;

    private CompareSvg() {}

    /** The front. */
    public static String text(Comparison comparison, UnitSystem units) {
        FrontWords words = new FrontWords(comparison, units);
        return picture(
                comparison.described().house().name() + ": what more money buys in heat",
                comparison
                        .chosen()
                        .flatMap(Comparison.Answer::best)
                        .map(best -> "Chosen: " + words.set(best.set()))
                        .orElse(""),
                HEIGHT,
                new FrontDrawing(comparison, units)::draw);
    }

    /** The stages. */
    public static String text(Renovation renovation, UnitSystem units) {
        StagesDrawing stages = new StagesDrawing(renovation, units);
        return picture(
                renovation.after().house().name() + ": from as found to as it is to become",
                "Loss of heat through surfaces, seams and points, stage by stage",
                stages.height(),
                stages::draw);
    }

    private static String picture(String title, String subtitle, double height, BiConsumer<Canvas, Box> painter) {
        SvgCanvas canvas = new SvgCanvas(WIDTH + 2 * MARGIN, height + 2 * MARGIN + HEAD, FontMetrics.shared());
        canvas.text(
                title,
                MARGIN,
                height + 2 * MARGIN + 18,
                Type.of(12).with(Face.SEMIBOLD).with(Palette.DEEP),
                Align.LEFT);
        canvas.text(
                shortened(subtitle), MARGIN, height + 2 * MARGIN, Type.of(8.4).with(Palette.SLATE), Align.LEFT);
        painter.accept(canvas, new Box(MARGIN, MARGIN, WIDTH + MARGIN, height + MARGIN));
        return canvas.document(title);
    }

    private static String shortened(String text) {
        int most = 125;
        return text.length() <= most ? text : text.substring(0, most - 1) + "…";
    }
}
