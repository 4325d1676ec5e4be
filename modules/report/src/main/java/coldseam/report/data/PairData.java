package coldseam.report.data;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** Two seams that touch. */
record PairData(
        @Says("names of the edges") ImmutableList<String> edges,
        @Says("that both are on") String surface,
        @Says("between them, on the outer face") double distance_m,
        @Says("for which they run beside each other") double length_m,

        @Says("id of its sheet; left out where they are not computed in one section")
        Optional<String> sheet,

        @Says("computed, or why not") String status) {}
