package coldseam.report.pdf;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Canvas;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Pen;
import coldseam.report.drawing.Spot;
import coldseam.report.drawing.Tag;
import coldseam.report.drawing.TextMetrics;
import coldseam.report.drawing.Type;
import java.io.IOException;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.eclipse.collections.api.list.ImmutableList;

/** Draws onto a page of a PDF. */
final class PdfCanvas implements Canvas {

    /** Control points of a quarter circle, as a share of its radius. */
    private static final double QUARTER = 0.5522847498;

    private final PDPageContentStream stream;
    private final Map<Face, PDFont> fonts;
    private final StructureTree structure;
    private final PDPage page;
    private Pen pen;
    private Ink fillInk;
    private boolean inPart;

    PdfCanvas(PDPageContentStream stream, Map<Face, PDFont> fonts, StructureTree structure, PDPage page) {
        this.stream = stream;
        this.fonts = fonts;
        this.structure = structure;
        this.page = page;
    }

    @Override
    public void tagged(Tag tag, String alternative, Runnable drawing) {
        if (inPart) {
            drawing.run();
            return;
        }
        structure.open(tag, alternative);
        if (tag.holdsParts()) {
            drawing.run();
        } else {
            PdfDocument.attempt(() -> stream.beginMarkedContent(StructureTree.type(tag), structure.mark(page)));
            inPart = true;
            drawing.run();
            inPart = false;
            PdfDocument.attempt(stream::endMarkedContent);
        }
        structure.close();
    }

    /** Draws; outside every part as decoration. */
    private void paint(PdfDocument.Step step) {
        PdfDocument.attempt(() -> {
            if (!inPart) {
                stream.beginMarkedContent(COSName.ARTIFACT);
            }
            step.run();
            if (!inPart) {
                stream.endMarkedContent();
            }
        });
    }

    @Override
    public void fill(ImmutableList<Spot> outline, Ink ink) {
        paint(() -> {
            use(ink);
            trace(outline);
            stream.closePath();
            stream.fill();
        });
    }

    @Override
    public void patch(ImmutableList<Spot> outline, Ink ink) {
        paint(() -> {
            use(ink);
            use(Pen.of(HAIR, ink));
            trace(outline);
            stream.closeAndFillAndStroke();
        });
    }

    @Override
    public void strokes(ImmutableList<ImmutableList<Spot>> lines, Pen wanted) {
        ImmutableList<ImmutableList<Spot>> drawn = lines.select(line -> line.size() > 1);
        if (drawn.isEmpty()) {
            return;
        }
        paint(() -> {
            use(wanted);
            for (ImmutableList<Spot> line : drawn) {
                trace(line);
            }
            stream.stroke();
        });
    }

    @Override
    public void outline(ImmutableList<Spot> corners, Pen wanted) {
        paint(() -> {
            use(wanted);
            trace(corners);
            stream.closePath();
            stream.stroke();
        });
    }

    @Override
    public void disc(Spot centre, double radius, Ink ink) {
        paint(() -> {
            use(ink);
            ring(centre, radius);
            stream.fill();
        });
    }

    @Override
    public void circle(Spot centre, double radius, Pen wanted) {
        paint(() -> {
            use(wanted);
            ring(centre, radius);
            stream.stroke();
        });
    }

    @Override
    public void text(String text, Spot at, Type type, Align align, double turn) {
        String set = metrics().settable(text);
        if (set.isBlank()) {
            return;
        }
        double width = metrics().width(set, type);
        double back = align == Align.LEFT ? 0 : align == Align.CENTRE ? width / 2 : width;
        double radians = Math.toRadians(turn);
        paint(() -> {
            use(type.ink());
            stream.beginText();
            stream.setFont(fonts.get(type.face()), (float) type.size());
            if (turn == 0) {
                command(at.x() - back, at.y(), "Td");
            } else {
                stream.setTextMatrix(
                        Matrix.getRotateInstance(radians, (float) (at.x() - back * Math.cos(radians)), (float)
                                (at.y() - back * Math.sin(radians))));
            }
            stream.showText(set);
            stream.endText();
        });
    }

    @Override
    public void clipped(ImmutableList<Spot> outline, Runnable drawing) {
        PdfDocument.attempt(() -> {
            stream.saveGraphicsState();
            trace(outline);
            stream.closePath();
            stream.clip();
        });
        Pen penBefore = pen;
        Ink inkBefore = fillInk;
        drawing.run();
        PdfDocument.attempt(stream::restoreGraphicsState);
        pen = penBefore;
        fillInk = inkBefore;
    }

    @Override
    public TextMetrics metrics() {
        return FontMetrics.shared();
    }

    /** To a hundredth of a point: finer than any printer, and short in the file. */
    private static float rounded(double value) {
        return Math.round(value * 100) / 100f;
    }

    private void trace(ImmutableList<Spot> spots) throws IOException {
        String operator = "m";
        for (Spot spot : spots) {
            command(spot.x(), spot.y(), operator);
            operator = "l";
        }
    }

    /**
     * An operator with a place, to a hundredth of a point. PDFBox would write five digits behind the point of each number, and no
     * {@code float} is so near to 441.98 that the last three are none: a tenth of all that is drawn.
     */
    @SuppressWarnings("deprecation")
    private void command(double x, double y, String operator) throws IOException {
        StringBuilder out = new StringBuilder();
        hundredths(Math.round(x * 100), out);
        hundredths(Math.round(y * 100), out);
        stream.appendRawCommands(out.append(operator).append('\n').toString());
    }

    /** (Output) A number of hundredths as a decimal, and a space. */
    static void hundredths(long count, StringBuilder out) {
        long size = Math.abs(count);
        if (count < 0) {
            out.append('-');
        }
        out.append(size / 100);
        long rest = size % 100;
        if (rest > 0) {
            out.append('.').append(rest / 10);
        }
        if (rest % 10 > 0) {
            out.append(rest % 10);
        }
        out.append(' ');
    }

    private void ring(Spot centre, double radius) throws IOException {
        float x = rounded(centre.x());
        float y = rounded(centre.y());
        float r = rounded(radius);
        float k = rounded(radius * QUARTER);
        stream.moveTo(x + r, y);
        stream.curveTo(x + r, y + k, x + k, y + r, x, y + r);
        stream.curveTo(x - k, y + r, x - r, y + k, x - r, y);
        stream.curveTo(x - r, y - k, x - k, y - r, x, y - r);
        stream.curveTo(x + k, y - r, x + r, y - k, x + r, y);
        stream.closePath();
    }

    private void use(Ink ink) throws IOException {
        if (!ink.equals(fillInk)) {
            stream.setNonStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
            fillInk = ink;
        }
    }

    private void use(Pen wanted) throws IOException {
        if (wanted.equals(pen)) {
            return;
        }
        stream.setStrokingColor(
                wanted.ink().red() / 255f,
                wanted.ink().green() / 255f,
                wanted.ink().blue() / 255f);
        stream.setLineWidth((float) wanted.width());
        stream.setLineCapStyle(wanted.round() ? 1 : 0);
        stream.setLineJoinStyle(wanted.round() ? 1 : 0);
        float[] dash = new float[wanted.dash().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) wanted.dash().get(i);
        }
        stream.setLineDashPattern(dash, 0);
        pen = wanted;
    }
}
