package coldseam.options;

import coldseam.audit.Audit;
import coldseam.conduction.Interval;
import coldseam.envelope.Alternatives.Decision;
import coldseam.envelope.Alternatives.Option;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One option alone, all else as the house file describes it.
 *
 * @param decision what is decided
 * @param option how
 * @param detail that is chosen, at its lengths where it can be built; empty of anything else
 * @param built what it comes to; empty where the house cannot be built so
 * @param misfits why not; empty where it can
 * @param asGood names of the decision's other options whose loss the intervals cannot tell from its own
 * @param onFront whether some set of the front has it
 * @param described whether it is what the house file describes
 */
public record Alternative(
        Decision decision,
        Option option,
        Optional<Detail> detail,
        Optional<Built> built,
        ImmutableList<Phrase> misfits,
        ImmutableList<String> asGood,
        boolean onFront,
        boolean described) {

    /** Steps of building of the detail that is chosen; empty of anything else. */
    public ImmutableList<String> order() {
        return detail.filter(chosen -> built.isPresent()).map(Detail::order).orElse(Lists.immutable.empty());
    }

    /**
     * The house with it.
     *
     * @param audit of the whole house
     * @param worst of the junctions or points that are decided, of a build-up or an opening of the seams that it meets;
     *     empty where none is computed
     * @param size m of junction, m² of surface or opening, or how many points
     * @param more W/K that the house loses more than as described; below zero for less
     * @param cost more than what is described, in the house's currency, whole; empty where it is not known
     * @param elsewhere of that cost, what other decisions' described parts have, since their size changes with it
     * @param thicker m, that the build-up is thicker; zero of anything else
     * @param floor m², that the rooms have more; below zero where thicker walls stand in them
     * @param changes to the findings
     */
    public record Built(
            Audit audit,
            Optional<Worst> worst,
            double size,
            Interval more,
            OptionalDouble cost,
            ImmutableList<Elsewhere> elsewhere,
            double thicker,
            double floor,
            Changes changes,
            UpkeepChange upkeep) {

        /**
         * What an option makes of another decision's described part.
         *
         * @param decision name of the other
         * @param cost more, in the house's currency, whole; never zero
         */
        public record Elsewhere(String decision, double cost) {}

        /** Against what is described. */
        public Standing standing() {
            return Standing.of(more);
        }

        /** kWh a year that it saves; empty without degree days. */
        public Optional<Interval> saves() {
            return Yearly.energy(more.times(-1), audit.house());
        }

        /** Money a year that it saves; empty without degree days or a price. */
        public Optional<Interval> savesMoney() {
            return Yearly.money(more.times(-1), audit.house());
        }

        /** Years until what it costs more is saved, at today's price and without interest; empty where it never is. */
        public Optional<Interval> payback() {
            if (cost.isEmpty() || cost.getAsDouble() <= 0) {
                return Optional.empty();
            }
            return savesMoney()
                    .filter(saved -> saved.lower() > 0)
                    .map(saved -> new Interval(cost.getAsDouble() / saved.upper(), cost.getAsDouble() / saved.lower()));
        }
    }
}
