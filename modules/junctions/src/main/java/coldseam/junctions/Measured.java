package coldseam.junctions;

/** What an expression of a detail file measures. */
enum Measured {
    /** A plain number. */
    NUMBER("a number"),
    /** A length, m. */
    LENGTH("a length"),
    /** A line across the first band: its distance from that band's inner face, m. */
    FIRST("a line of the first band"),
    /** A line across the second band, likewise. */
    SECOND("a line of the second band");

    private final String noun;

    Measured(String noun) {
        this.noun = noun;
    }

    String noun() {
        return noun;
    }

    boolean isLine() {
        return this == FIRST || this == SECOND;
    }
}
