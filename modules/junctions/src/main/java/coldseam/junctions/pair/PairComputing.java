package coldseam.junctions.pair;

/** Computes pairs of seams; equal questions are answered once. Asked from several threads at once. */
@FunctionalInterface
public interface PairComputing {

    /** Computes a pair, or says why it cannot be one section. */
    PairAnswer compute(PairSetup setup);
}
