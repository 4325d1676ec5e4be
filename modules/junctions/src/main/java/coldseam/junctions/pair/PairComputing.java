package coldseam.junctions.pair;

/** Computes pairs of seams; equal questions are answered once. Asked from several threads at once. */
@FunctionalInterface
public interface PairComputing {

    /** Computes a pair, or says why it cannot be one section. */
    PairAnswer compute(PairSetup setup);

    /** What stands in the way of one section, which it costs nothing to know; {@link PairObstacle#NOT_ASKED} where nothing does. */
    default PairAnswer hindrance(PairSetup setup) {
        return PairAnswer.not(PairObstacle.NOT_ASKED);
    }

    /** Solves none, and says what would stand in the way. */
    default PairComputing unsolved() {
        return this::hindrance;
    }
}
