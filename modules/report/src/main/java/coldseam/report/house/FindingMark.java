package coldseam.report.house;

import coldseam.audit.Finding;
import coldseam.report.drawing.Align;
import coldseam.report.drawing.Box;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Type;
import org.eclipse.collections.api.list.ImmutableList;

/** A finding's number; its shape tells how grave it is, also in black and white. */
public final class FindingMark {

    private FindingMark() {}

    /** The colour of a severity. */
    public static Ink ink(Finding.Severity severity) {
        return switch (severity) {
            case GAP -> Palette.EMBER;
            case UNKNOWN -> Palette.DEEP;
            case WEAK -> Palette.OCHRE;
        };
    }

    /** The word for a severity. */
    public static String word(Finding.Severity severity) {
        return switch (severity) {
            case GAP -> "gap";
            case UNKNOWN -> "unknown";
            case WEAK -> "weak spot";
        };
    }

    /** Findings as the drawing of the house and the list number them: "gap 3, weak spot 6"; empty where there are none. */
    public static String named(ImmutableList<Finding> findings) {
        return findings.collect(finding -> word(finding.severity()) + " " + finding.number())
                .makeString(", ");
    }

    /** Gap: full disc. Unknown: full square. Weak spot: open diamond. */
    public static void draw(Canvas canvas, Spot at, Finding.Severity severity, int number, double radius) {
        Ink ink = ink(severity);
        canvas.disc(at, radius + 1.2, Palette.WHITE);
        Type type = Type.of(radius * 1.25).with(Face.SEMIBOLD).with(Palette.WHITE);
        switch (severity) {
            case GAP -> canvas.disc(at, radius, ink);
            case UNKNOWN ->
                canvas.fill(Box.about(at, radius * 0.9, radius * 0.9).corners(), ink);
            case WEAK -> {
                var diamond = at.diamond(radius * 1.28);
                canvas.fill(diamond, Palette.WHITE);
                canvas.outline(diamond, Pen.of(1.3, ink));
                type = type.with(Palette.INK);
            }
        }
        canvas.text(Integer.toString(number), at.x(), at.y() - 0.42 * type.size() * 0.82, type, Align.CENTRE);
    }
}
