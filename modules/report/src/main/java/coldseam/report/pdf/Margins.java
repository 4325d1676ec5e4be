package coldseam.report.pdf;

/** What is left free around the text, points. */
record Margins(double left, double right, double top, double bottom) {

    static final Margins STANDARD = new Margins(54, 54, 62, 58);
}
