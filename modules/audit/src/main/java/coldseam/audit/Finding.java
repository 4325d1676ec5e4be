package coldseam.audit;

import coldseam.conduction.Interval;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that is missing, broken, pinched or beyond a limit.
 *
 * @param number as in the drawing and the list, from 1
 * @param rule id of the rule that found it, such as "open-edge"
 * @param severity how grave
 * @param title short
 * @param what was found, with the values and their units
 * @param place a person can walk to
 * @param subject what it is about
 * @param sheet of the worst junction it is about; empty where it is about none, or nothing could be computed
 * @param pointSheet the same of points
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
        Subject subject,
        Optional<JunctionSheet> sheet,
        Optional<PointSheet> pointSheet,
        Optional<Interval> loss,
        OptionalDouble moneyPerYear,
        String toDo) {

    /** Id of the sheet it is about. */
    public Optional<String> sheetId() {
        return sheet.map(JunctionSheet::id).or(() -> pointSheet.map(PointSheet::id));
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
