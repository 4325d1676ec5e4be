package coldseam.report.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** A finding. */
record FindingData(
        @Says("as in the drawing") int number,
        @Says("the leading one") String rule,
        String severity,
        String title,
        String what,
        @Says("where a person finds it") String place,
        @Says("on the outer shell: east, north, up") ImmutableList<Double> at_m,
        @Says("zero where it has none") double length_m,

        @Says("names of all the edges it stands for, the longest first")
        ImmutableList<String> edges,

        @Says("names of all the corners it stands for, the coldest first")
        ImmutableList<String> corners,

        Optional<String> surface,
        @Says("of the worst junction, point or corner") Optional<String> sheet,
        @Says("against the best option of the catalogue") Optional<BoundsData> loss_W_per_K,
        @Says("in the house's currency") OptionalDouble moneyPerYear,
        String toDo,

        @Says("of rules by it, the leading one first") ImmutableList<BreachData> breaches) {

    record BreachData(String rule, ImmutableList<ValueData> values) {}

    record ValueData(
            @Says("what it is of") String name,
            double lower,

            @Says("the same as lower where it is no interval")
            double upper,

            @Says("empty for plain numbers") String unit) {}
}
