package coldseam.report;

import coldseam.conduction.solid.BodySolution;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.SvgCanvas;
import coldseam.report.pdf.FontMetrics;
import coldseam.report.solid.BodyPicture;

/** A solved body as an SVG picture. */
public final class BodySvg {

    private BodySvg() {}

    /** The picture's text. */
    public static String text(BodySolution solution, UnitSystem units) {
        return text(new BodyPicture(solution, units), solution.body().name());
    }

    static String text(BodyPicture picture, String title) {
        SvgCanvas canvas = new SvgCanvas(BodyPicture.WIDTH, picture.height(), FontMetrics.shared());
        picture.draw(canvas);
        return canvas.document(title);
    }
}
