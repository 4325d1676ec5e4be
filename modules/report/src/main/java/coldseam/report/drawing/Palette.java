package coldseam.report.drawing;

/** The report's colours; each meaning has a shape or a pattern too, so that nothing is lost in black and white. */
public final class Palette {

    /** Text and outlines. */
    public static final Ink INK = Ink.of(0x1D2B33);
    /** Titles and the pen line. */
    public static final Ink DEEP = Ink.of(0x14505C);
    /** Secondary text. */
    public static final Ink SLATE = Ink.of(0x55666E);
    /** Thin rules. */
    public static final Ink RULE = Ink.of(0xB5C3C6);
    /** Panels. */
    public static final Ink FROST = Ink.of(0xEAF1F0);
    /** Gaps and the weakest path. */
    public static final Ink EMBER = Ink.of(0xB0432B);
    /** Weak spots. */
    public static final Ink OCHRE = Ink.of(0xB97F14);
    /** What is in order. */
    public static final Ink MOSS = Ink.of(0x3F7352);
    /** Isotherms. */
    public static final Ink MIST = Ink.of(0x6E8CA0);

    /** Air control. */
    public static final Ink FERN = Ink.of(0x2E7D4B);
    /** Water control. */
    public static final Ink RAIN = Ink.of(0x2B6CB0);
    /** Vapour control. */
    public static final Ink HEATHER = Ink.of(0xC7A4D4);

    public static final Ink WHITE = Ink.of(0xFFFFFF);

    private Palette() {}
}
