package coldseam.report;

import coldseam.conduction.Solution;
import coldseam.files.quantity.UnitSystem;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.SvgCanvas;
import coldseam.report.pdf.FontMetrics;
import coldseam.report.section.GapDrawing;
import coldseam.report.section.Legend;
import coldseam.report.section.SectionDrawing;
import coldseam.report.section.SectionPicture;
import java.util.Optional;

/** A solved section as an SVG picture, with its materials and isotherms, and where its intervals' width comes from. */
public final class SectionSvg {

    private static final double WIDTH = 560;
    private static final double GAP_HEIGHT = 260;

    private SectionSvg() {}

    /** The picture's text. */
    public static String text(Solution solution, UnitSystem units) {
        return picture(
                SectionPicture.of(solution, units),
                solution.section().name(),
                Optional.of(new GapDrawing(solution, units, WIDTH, GAP_HEIGHT)));
    }

    /** @param gap drawn below the section */
    static String picture(SectionPicture picture, String title, Optional<GapDrawing> gap) {
        double width = WIDTH;
        double height = 460;
        double below = gap.map(g -> g.height() + 16).orElse(0.0);
        SectionDrawing drawing = new SectionDrawing(picture, width, height);
        double keys = SvgKeys.height(drawing);
        SvgCanvas canvas = new SvgCanvas(width + 24, height + Legend.HEIGHT + keys + below + 42, FontMetrics.shared());
        Box all = new Box(12, 12 + below, width + 12, height + Legend.HEIGHT + keys + below + 12);
        SvgKeys.title(canvas, title, all.x0(), all.y1() + 8, width);
        drawing.draw(canvas, new Box(all.x0(), all.y1() - height, all.x1(), all.y1()));
        Legend.draw(canvas, new Box(all.x0(), all.y0() + keys, all.x1(), all.y1() - height), picture, drawing);
        SvgKeys.draw(canvas, drawing, picture.system(), new Box(all.x0(), all.y0(), all.x1(), all.y0() + keys - 10));
        gap.ifPresent(g -> g.draw(canvas, new Box(all.x0(), 12, all.x1(), all.y0() - 16)));
        return canvas.document(title);
    }
}
