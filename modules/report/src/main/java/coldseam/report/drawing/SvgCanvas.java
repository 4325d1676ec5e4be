package coldseam.report.drawing;

import coldseam.files.quantity.Format;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.eclipse.collections.api.list.ImmutableList;

/** Draws into an SVG 1.1 picture; the same drawing gives the same text. */
public final class SvgCanvas implements Canvas {

    private final double width;
    private final double height;
    private final TextMetrics metrics;
    private final StringBuilder body = new StringBuilder();
    private final StringBuilder clips = new StringBuilder();
    private int clipCount;

    /**
     * @param width points
     * @param height points
     */
    public SvgCanvas(double width, double height, TextMetrics metrics) {
        this.width = width;
        this.height = height;
        this.metrics = metrics;
    }

    @Override
    public void fill(ImmutableList<Spot> outline, Ink ink) {
        drawn(path(outline) + "Z", hex(ink), "");
    }

    @Override
    public void patch(ImmutableList<Spot> outline, Ink ink) {
        drawn(path(outline) + "Z", hex(ink), stroke(Pen.of(HAIR, ink)));
    }

    @Override
    public void strokes(ImmutableList<ImmutableList<Spot>> lines, Pen pen) {
        StringBuilder path = new StringBuilder();
        lines.select(line -> line.size() > 1).forEach(line -> path.append(path(line)));
        if (path.length() > 0) {
            drawn(path, "none", stroke(pen));
        }
    }

    @Override
    public void outline(ImmutableList<Spot> corners, Pen pen) {
        drawn(path(corners) + "Z", "none", stroke(pen));
    }

    private void drawn(CharSequence path, String fill, String stroke) {
        body.append("<path d=\"").append(path).append("\" fill=\"").append(fill);
        body.append('"').append(stroke).append("/>\n");
    }

    @Override
    public void disc(Spot centre, double radius, Ink ink) {
        body.append(circle(centre, radius)).append(" fill=\"").append(hex(ink)).append("\"/>\n");
    }

    @Override
    public void circle(Spot centre, double radius, Pen pen) {
        body.append(circle(centre, radius))
                .append(" fill=\"none\"")
                .append(stroke(pen))
                .append("/>\n");
    }

    private String circle(Spot centre, double radius) {
        return "<circle cx=\"" + number(centre.x()) + "\" cy=\"" + number(height - centre.y()) + "\" r=\""
                + number(radius) + "\"";
    }

    @Override
    public void text(String text, Spot at, Type type, Align align, double turn) {
        body.append("<text x=\"").append(number(at.x())).append("\" y=\"").append(number(height - at.y()));
        body.append("\" font-size=\"").append(number(type.size())).append('"');
        body.append(" fill=\"").append(hex(type.ink())).append('"');
        if (type.face() == Face.SEMIBOLD) {
            body.append(" font-weight=\"600\"");
        }
        if (type.face() == Face.ITALIC) {
            body.append(" font-style=\"italic\"");
        }
        if (align != Align.LEFT) {
            body.append(" text-anchor=\"")
                    .append(align == Align.CENTRE ? "middle" : "end")
                    .append('"');
        }
        if (turn != 0) {
            body.append(" transform=\"rotate(")
                    .append(number(-turn))
                    .append(' ')
                    .append(number(at.x()));
            body.append(' ').append(number(height - at.y())).append(")\"");
        }
        body.append('>').append(escaped(metrics.settable(text))).append("</text>\n");
    }

    @Override
    public void clipped(ImmutableList<Spot> outline, Runnable drawing) {
        clipCount++;
        clips.append("<clipPath id=\"clip")
                .append(clipCount)
                .append("\"><path d=\"")
                .append(path(outline));
        clips.append("Z\"/></clipPath>\n");
        body.append("<g clip-path=\"url(#clip").append(clipCount).append(")\">\n");
        drawing.run();
        body.append("</g>\n");
    }

    @Override
    public TextMetrics metrics() {
        return metrics;
    }

    /**
     * The whole document.
     *
     * @param title read out and shown by browsers
     */
    public String document(String title) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + Format.of(
                                "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"%spt\" height=\"%spt\""
                                        + " viewBox=\"0 0 %s %s\" role=\"img\""
                                        + " font-family=\"'Source Sans 3', sans-serif\">%n",
                                number(width), number(height), number(width), number(height))
                        .replace("\r\n", "\n")
                + "<title>" + escaped(metrics.settable(title)) + "</title>\n"
                + (clipCount > 0 ? "<defs>\n" + clips + "</defs>\n" : "")
                + "<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n"
                + body
                + "</svg>\n";
    }

    private String path(ImmutableList<Spot> spots) {
        StringBuilder out = new StringBuilder();
        spots.forEachWithIndex((spot, i) -> out.append(i == 0 ? 'M' : 'L')
                .append(number(spot.x()))
                .append(' ')
                .append(number(height - spot.y())));
        return out.toString();
    }

    private static String stroke(Pen pen) {
        StringBuilder out = new StringBuilder(" stroke=\"").append(hex(pen.ink()));
        out.append("\" stroke-width=\"").append(number(pen.width())).append('"');
        if (pen.dash().notEmpty()) {
            out.append(" stroke-dasharray=\"")
                    .append(pen.dash().collect(SvgCanvas::number).makeString(" "))
                    .append('"');
        }
        if (pen.round()) {
            out.append(" stroke-linecap=\"round\" stroke-linejoin=\"round\"");
        }
        return out.toString();
    }

    private static String hex(Ink ink) {
        return Format.of("#%02x%02x%02x", ink.red(), ink.green(), ink.blue());
    }

    /** Two digits after the point: 1/7000 in. */
    private static String number(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
