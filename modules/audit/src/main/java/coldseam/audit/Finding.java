package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.Point3;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One thing that is missing, broken, pinched or beyond a limit.
 *
 * @param number as in the drawing and the list, from 1
 * @param rule id of the rule that found it, such as "open-edge"
 * @param severity how grave
 * @param title short
 * @param what was found, with the values and their units
 * @param place a person can walk to
 * @param at a point for the drawing, on the outer shell
 * @param length m; zero where it has none
 * @param edges names of all the edges it stands for, the longest first; empty for surfaces and holes
 * @param surface name of the surface; empty for edges
 * @param sheet id of the junction's sheet
 * @param loss W/K lost against the best option of the catalogue; empty where that cannot be said
 * @param moneyPerYear where a price is given
 * @param toDo what closes it
 */
public record Finding(
        int number,
        String rule,
        Severity severity,
        String title,
        String what,
        String place,
        Point3 at,
        double length,
        ImmutableList<String> edges,
        Optional<String> surface,
        Optional<String> sheet,
        Optional<Interval> loss,
        OptionalDouble moneyPerYear,
        String toDo) {

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
