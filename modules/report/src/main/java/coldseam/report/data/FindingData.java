package coldseam.report.data;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/** A finding. */
record FindingData(
        @Says("as in the drawing") int number,
        String rule,
        String severity,
        String title,
        String what,
        @Says("where a person finds it") String place,
        @Says("on the outer shell: east, north, up") ImmutableList<Double> at_m,
        @Says("zero where it has none") double length_m,

        @Says("names of all the edges it stands for, the longest first")
        ImmutableList<String> edges,

        Optional<String> surface,
        Optional<String> junctionSheet,
        @Says("against the best option of the catalogue") Optional<Bounds> loss_W_per_K,
        @Says("in the house's currency") OptionalDouble moneyPerYear,
        String toDo) {}
