package coldseam.report.data;

import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** A corner where three or more edges meet. */
record VertexData(
        String name,
        String place,
        @Says("on the outer shell: east, north, up") ImmutableList<Double> at_m,

        @Says("names of the edges, one that goes on past it twice")
        ImmutableList<String> edges,

        @Says("between the surfaces of each, measured indoors")
        ImmutableList<Double> angles_deg,

        @Says("id of its sheet; left out where it is not computed")
        Optional<String> sheet,

        @Says("computed, or why not") String status) {}
