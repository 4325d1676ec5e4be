package coldseam.audit.rules;

import coldseam.audit.Breach.Evidence;
import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionRow;
import coldseam.audit.Subject;
import coldseam.audit.Touching;
import coldseam.audit.Touching.Pair;
import coldseam.audit.Value;
import coldseam.files.quantity.Dimension;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/** No two computed seams of one surface touch ({@link Touching}). */
public final class SeamsTouchRule implements Rule {

    /**
     * Seams of one surface that touch.
     *
     * @param surface its name
     * @param pairs how many there are of them
     * @param distance m, the least
     * @param decay m, in which a disturbance falls to 1/e along the surface; zero where no layers say so
     * @param length m, of all pairs
     */
    public record Found(String surface, int pairs, double distance, double decay, double length) implements Evidence {
        @Override
        public ImmutableList<Value> values() {
            return Lists.immutable.of(
                    Value.of("distance", distance, Dimension.LENGTH),
                    Value.of("decay", decay, Dimension.LENGTH),
                    Value.of("length", length, Dimension.LENGTH));
        }
    }

    @Override
    public int gravity() {
        return 40;
    }

    @Override
    public ImmutableList<Draft> find(Facts facts) {
        return Touching.of(facts.shell(), facts.rows().selectInstancesOf(JunctionRow.class))
                .collect(this::draft);
    }

    private Draft draft(Touching touching) {
        Found found = new Found(
                touching.surface().name(),
                touching.pairs().size(),
                touching.pairs().collectDouble(Pair::distance).min(),
                touching.decay(),
                touching.pairs().sumOfDouble(Pair::length));
        return new Draft(
                this,
                "touch " + found.surface(),
                Severity.WEAK,
                found,
                new Subject.Bridges(touching.pairs()
                        .flatCollect(pair -> Lists.immutable.of(pair.one(), pair.other()))
                        .distinctBy(JunctionRow::name)));
    }
}
