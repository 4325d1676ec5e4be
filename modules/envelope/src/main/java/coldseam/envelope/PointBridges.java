package coldseam.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * Like things that go through the insulation of one surface, each a point thermal bridge.
 *
 * @param name unique
 * @param surface name of the surface they go through
 * @param kind given where no detail is chosen; else the detail's own
 * @param detail id of a point detail, or the path of a point file beside the house file; empty where none is chosen
 * @param parameters m, lengths of the detail that are other here, by their names
 */
public record PointBridges(
        String name,
        String surface,
        Optional<PointKind> kind,
        Optional<String> detail,
        Count count,
        ImmutableMap<String, Double> parameters) {

    /** How many there are. */
    public sealed interface Count {

        /** Counted. */
        record Number(int number) implements Count {}

        /**
         * So many on each area of the surface, openings left out.
         *
         * @param perSquareMetre 1/m²
         */
        record PerArea(double perSquareMetre) implements Count {}

        /**
         * In a row, one at each end.
         *
         * @param spacing m, largest distance between neighbours
         * @param length m, of the row; empty where it runs along a neighbour
         * @param along name of a surface or opening beside the surface, whose common edges are the row; empty where the
         *     length is given
         */
        record InRow(double spacing, OptionalDouble length, Optional<String> along) implements Count {}
    }
}
