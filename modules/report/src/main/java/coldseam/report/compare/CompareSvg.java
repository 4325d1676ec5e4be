package coldseam.report.compare;

import coldseam.files.AtomicFiles;
import coldseam.files.quantity.UnitSystem;
import coldseam.options.Comparison;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.SvgCanvas;
import coldseam.report.drawing.Type;
import coldseam.report.pdf.FontMetrics;
import coldseam.report.words.CompareWords;
import java.io.IOException;
import java.nio.file.Path;

/** The front as an SVG picture. */
public final class CompareSvg {

    private static final double WIDTH = 560;
    private static final double HEIGHT = 380;

    private CompareSvg() {}

    /**
     * Writes the picture whole or not at all.
     *
     * @throws IOException where the file cannot be written; an old one is then untouched
     */
    public static void write(Comparison comparison, Path path, UnitSystem units) throws IOException {
        AtomicFiles.write(path, text(comparison, units));
    }

    /** The picture's text. */
    public static String text(Comparison comparison, UnitSystem units) {
        String title = comparison.described().house().name() + ": what more money buys in heat";
        SvgCanvas canvas = new SvgCanvas(WIDTH + 24, HEIGHT + 62, FontMetrics.shared());
        canvas.text(title, 12, HEIGHT + 42, Type.of(12).with(Face.SEMIBOLD).with(Palette.DEEP), Align.LEFT);
        comparison
                .chosen()
                .flatMap(Comparison.Answer::best)
                .ifPresent(best -> canvas.text(
                        "Chosen: " + shortened(CompareWords.set(comparison, best.set())),
                        12,
                        HEIGHT + 24,
                        Type.of(8.4).with(Palette.SLATE),
                        Align.LEFT));
        new FrontDrawing(comparison, units).draw(canvas, new Box(12, 12, WIDTH + 12, HEIGHT + 12));
        return canvas.document(title);
    }

    private static String shortened(String text) {
        int most = 125;
        return text.length() <= most ? text : text.substring(0, most - 1) + "…";
    }
}
