package coldseam.junctions.pair;

import java.util.Optional;

/**
 * What came of two seams in one section.
 *
 * @param result solved; empty where something stands in the way
 * @param obstacle what does; empty where nothing
 * @param lacking m, by which they would have to be farther apart, where one reaches into the other; zero otherwise
 */
public record PairAnswer(Optional<PairResult> result, Optional<PairObstacle> obstacle, double lacking) {

    /** Solved. */
    public static PairAnswer of(PairResult result) {
        return new PairAnswer(Optional.of(result), Optional.empty(), 0);
    }

    /** Not solved. */
    public static PairAnswer not(PairObstacle obstacle) {
        return new PairAnswer(Optional.empty(), Optional.of(obstacle), 0);
    }

    /** Not solved, since one reaches so far into the other, m. */
    static PairAnswer reaches(double lacking) {
        return new PairAnswer(Optional.empty(), Optional.of(PairObstacle.REACHES), lacking);
    }
}
