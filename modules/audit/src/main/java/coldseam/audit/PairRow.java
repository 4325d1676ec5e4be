package coldseam.audit;

import coldseam.audit.Touching.Pair;
import coldseam.conduction.Interval;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.pair.PairObstacle;
import java.util.Optional;

/**
 * Two seams that touch, in the audit.
 *
 * @param surface that both are on
 * @param decay m, in which a disturbance falls to 1/e along it; zero in the ground
 * @param pair of seams
 * @param sheet of both in one section; empty where they are not solved together
 * @param obstacle why they are not; empty where they are
 * @param lacking m, by which they would have to be farther apart, where one's section reaches into the other's; zero for others
 */
public record PairRow(
        Surface surface,
        double decay,
        Pair pair,
        Optional<PairSheet> sheet,
        Optional<PairObstacle> obstacle,
        double lacking) {

    /** W/K that both lose together more than apart; none where they are not solved together. */
    public Interval loss() {
        return sheet.map(each -> each.interaction().times(pair.length())).orElse(Interval.of(0));
    }

    /** Whether they disturb each other by nobody knows how much. */
    public boolean unknown() {
        return obstacle.filter(each -> each != PairObstacle.NOT_ASKED).isPresent();
    }
}
