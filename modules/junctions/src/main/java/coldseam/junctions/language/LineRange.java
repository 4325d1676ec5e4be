package coldseam.junctions.language;

import coldseam.junctions.kind.Chart;
import java.util.Optional;

/**
 * From one line to another, or to a cut.
 *
 * @param from one end
 * @param to the other
 */
public record LineRange(End from, End to) {

    /**
     * An end of a range: a line, or the section's cut on a side.
     *
     * @param line the line; empty for a cut
     * @param cut the cut; empty for a line
     */
    public record End(Optional<Expression> line, Optional<Chart.Cut> cut) {

        public static End at(Expression line) {
            return new End(Optional.of(line), Optional.empty());
        }

        public static End cut(Chart.Cut cut) {
            return new End(Optional.empty(), Optional.of(cut));
        }
    }
}
