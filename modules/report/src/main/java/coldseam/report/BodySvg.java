package coldseam.report;

import coldseam.conduction.solid.BodySolution;
import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.SvgCanvas;
import coldseam.report.pdf.FontMetrics;
import coldseam.report.solid.BodyPicture;
import java.io.IOException;
import java.nio.file.Path;

/** A solved body as an SVG picture. */
public final class BodySvg {

    private BodySvg() {}

    /**
     * Writes the picture whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(BodySolution solution, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, text(solution, units));
    }

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
