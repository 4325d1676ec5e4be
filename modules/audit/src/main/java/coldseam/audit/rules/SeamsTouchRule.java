package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.PairRow;
import coldseam.audit.Subject;
import coldseam.audit.Touching;
import coldseam.audit.Touching.Pair;
import coldseam.audit.Value;
import coldseam.envelope.JunctionKind;
import coldseam.files.quantity.Dimension;
import coldseam.junctions.pair.PairObstacle;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** No two computed seams of one surface touch ({@link Touching}) that are not computed in one section. */
public final class SeamsTouchRule implements Rule {

    /**
     * Seams of one surface that touch.
     *
     * @param distance m, the least
     * @param decay m, in which a disturbance falls to 1/e along the surface; zero where no layers say so
     * @param length m, of all pairs
     * @param obstacles why they are not computed in one section, each once
     * @param lacking m, by which they would have to be farther apart, where that is why; zero for others
     * @param coupled whether what so little lies between is two windows or doors each time
     * @param deckBelowFloor whether a deck before the wall ends just below a floor behind it
     */
    public record Found(
            String surface,
            int pairs,
            double distance,
            double decay,
            double length,
            ImmutableList<PairObstacle> obstacles,
            double lacking,
            boolean coupled,
            boolean deckBelowFloor)
            implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("distance", distance, Dimension.LENGTH),
                    Value.of("decay", decay, Dimension.LENGTH),
                    Value.of("length", length, Dimension.LENGTH));
        }
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return Touching.unknown(facts.pairs()).collect(touching -> draft(touching, facts));
    }

    private static boolean deckBelowFloor(Pair pair) {
        return isDeckBelowFloor(pair.one(), pair.other()) || isDeckBelowFloor(pair.other(), pair.one());
    }

    private static boolean isDeckBelowFloor(JunctionRow deck, JunctionRow floor) {
        return deck.edge().kind() == JunctionKind.WALL_TO_TERRACE
                && floor.edge().kind().storeyFloor().isPresent()
                && deck.edge().from().z() < floor.edge().from().z();
    }

    private Draft draft(Touching touching, Facts facts) {
        ImmutableList<PairRow> rows = facts.pairs()
                .select(row -> row.unknown()
                        && row.surface().name().equals(touching.surface().name()));
        Found found = new Found(
                touching.surface().name(),
                touching.pairs().size(),
                touching.pairs().collectDouble(Pair::distance).min(),
                touching.decay(),
                touching.pairs().sumOfDouble(Pair::length),
                rows.collect(row -> row.obstacle().orElseThrow()).distinct(),
                rows.collectDouble(PairRow::lacking).max(),
                rows.select(row -> row.obstacle().equals(Optional.of(PairObstacle.NARROW)))
                        .allSatisfy(row -> Lists.immutable
                                .of(row.pair().one(), row.pair().other())
                                .allSatisfy(each -> each.edge().opening().isPresent())),
                touching.pairs().anySatisfy(SeamsTouchRule::deckBelowFloor));
        return new Draft(
                "touch " + found.surface(),
                Severity.WEAK,
                found,
                new Subject.Bridges(touching.pairs()
                        .flatCollect(pair -> Lists.immutable.of(pair.one(), pair.other()))
                        .distinctBy(JunctionRow::name)));
    }
}
