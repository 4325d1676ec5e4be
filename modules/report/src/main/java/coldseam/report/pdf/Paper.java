package coldseam.report.pdf;

/** Paper sizes, in points (1/72 in). */
public enum Paper {
    /** 210 mm × 297 mm (ISO 216). */
    A4(210 / 25.4 * 72, 297 / 25.4 * 72),
    /** 8 1/2 in × 11 in. */
    LETTER(8.5 * 72, 11 * 72);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Points. */
    public double width() {
        return width;
    }

    /** Points. */
    public double height() {
        return height;
    }
}
