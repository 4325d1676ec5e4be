package coldseam.junctions.detail;

/** Where an option stands among the options of its kind, in the trade's judgement; the computed psi has the last word. */
public enum Rank {
    WORST,
    MIDDLE,
    BEST
}
