package coldseam.audit;

import coldseam.conduction.Interval;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One thing that is missing, broken, pinched or beyond a limit.
 *
 * @param number as in the drawing and the list, from 1
 * @param severity how grave
 * @param breaches of rules by it, the leading one first; at least one
 * @param subject what it is about
 * @param sheet of the worst bridge or corner it is about; empty where it is about none, or nothing could be computed
 * @param loss W/K lost against the best option of the catalogue; empty where that cannot be said
 * @param moneyPerYear where a price is given
 */
public record Finding(
        int number,
        Severity severity,
        ImmutableList<Breach> breaches,
        Subject subject,
        Optional<? extends Sheet> sheet,
        Optional<Interval> loss,
        OptionalDouble moneyPerYear) {

    /** Id of the leading rule. */
    public String rule() {
        return breaches.getFirst().rule();
    }

    /** How grave a finding is. */
    public enum Severity {
        /** A layer is open or broken. */
        GAP,
        /** Nobody has said how the layer passes. */
        UNKNOWN,
        /** A layer is pinched, or a limit is missed. */
        WEAK
    }
}
