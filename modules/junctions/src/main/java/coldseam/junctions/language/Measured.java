package coldseam.junctions.language;

/** What an expression of a detail file measures. */
public enum Measured {
    /** A plain number. */
    NUMBER("a number"),
    /** A length, m. */
    LENGTH("a length"),
    /** A line across the first band: its distance from that band's inner face, m. */
    FIRST("a line of the first band"),
    /** A line across the second band, likewise. */
    SECOND("a line of the second band"),
    /** A line across the third surface of a corner, likewise. */
    THIRD("a line of the third surface"),
    /** A line across the surface a point goes through: its distance from that surface's inner face, m. */
    DEPTH("a line across the surface");

    private final String noun;

    Measured(String noun) {
        this.noun = noun;
    }

    /** With its article. */
    public String noun() {
        return noun;
    }

    /** Whether it is a place, not a length or a number. */
    public boolean isLine() {
        return this == FIRST || this == SECOND || this == THIRD || this == DEPTH;
    }
}
