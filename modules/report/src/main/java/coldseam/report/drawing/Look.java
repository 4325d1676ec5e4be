package coldseam.report.drawing;

/** How a class of materials looks in a section: a light tint and a pattern that tells it apart without colour. */
public enum Look {
    INSULATION_BOARD(0xF7EBC8, Hatch.CROSSES),
    INSULATION_WOOL(0xFAEFD3, Hatch.WAVES),
    CONCRETE(0xDFE3E4, Hatch.AGGREGATE),
    MASONRY(0xEFD9CC, Hatch.DIAGONALS),
    TIMBER(0xEBDAC0, Hatch.GRAIN),
    BOARD(0xF3E9DA, Hatch.FINE_GRAIN),
    METAL(0x39454B, Hatch.NONE),
    PLASTER(0xF0F0EC, Hatch.DOTS),
    GLASS(0xDCEBF0, Hatch.STROKES),
    GROUND(0xE7E0D2, Hatch.TICKS),
    MEMBRANE(0x4A5A61, Hatch.NONE),
    AIR(0xFFFFFF, Hatch.NONE),
    OTHER(0xE9E6EC, Hatch.STEEP_DIAGONALS);

    private final Ink tint;
    private final Hatch hatch;

    Look(int tint, Hatch hatch) {
        this.tint = Ink.of(tint);
        this.hatch = hatch;
    }

    /** Its ground. */
    public Ink tint() {
        return tint;
    }

    /** Its pattern. */
    public Hatch hatch() {
        return hatch;
    }

    /** Draws a sample, as keys have it. */
    public void sample(Canvas canvas, Box box) {
        canvas.fill(box.corners(), tint);
        hatch.draw(canvas, box.corners(), box);
        canvas.outline(box.corners(), Pen.of(0.5, Palette.INK));
    }
}
