package coldseam.report.pdf;

import coldseam.report.drawing.Align;
import coldseam.report.drawing.Face;
import coldseam.report.drawing.Ink;
import coldseam.report.drawing.Palette;
import coldseam.report.drawing.Type;

/**
 * How a paragraph is set.
 *
 * @param type base type
 * @param leading points from baseline to baseline
 * @param align of its lines
 */
public record Style(Type type, double leading, Align align) {

    public static final Style BODY = of(Face.REGULAR, 9.4, 12.6, Palette.INK);
    public static final Style LEAD = of(Face.REGULAR, 11.5, 15.5, Palette.INK);
    public static final Style SMALL = of(Face.REGULAR, 8, 10.4, Palette.SLATE);
    public static final Style CELL = of(Face.REGULAR, 8.6, 10.8, Palette.INK);
    public static final Style COLUMN = of(Face.SEMIBOLD, 7.8, 9.6, Palette.DEEP);
    public static final Style TITLE = of(Face.SEMIBOLD, 30, 34, Palette.DEEP);
    public static final Style SECTION = of(Face.SEMIBOLD, 17, 21, Palette.DEEP);
    public static final Style SUBSECTION = of(Face.SEMIBOLD, 11, 14, Palette.DEEP);
    public static final Style FIGURE = of(Face.SEMIBOLD, 17, 20, Palette.INK);

    private static Style of(Face face, double size, double leading, Ink ink) {
        return new Style(new Type(face, size, ink), leading, Align.LEFT);
    }

    public Style aligned(Align other) {
        return new Style(type, leading, other);
    }

    public Style with(Ink ink) {
        return new Style(type.with(ink), leading, align);
    }

    public Style with(Face face) {
        return new Style(type.with(face), leading, align);
    }

    public Style sized(double size, double newLeading) {
        return new Style(type.sized(size), newLeading, align);
    }
}
