package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.audit.PointSheet;
import coldseam.audit.Subject;
import coldseam.conduction.Interval;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A finding before it is numbered and joined with others about the same subject.
 *
 * @param rule that found it
 * @param cause drafts with one cause become one finding
 * @param severity how grave
 * @param title short
 * @param what was found, a sentence without its full stop, with values and units
 * @param subject what it is about
 * @param sheets it is about, the worst first; empty where there are none
 * @param pointSheet the worst point's sheet it is about; empty where it is about no point
 * @param loss W/K lost against the best there is; empty where that cannot be said
 * @param toDo what closes it
 */
public record Draft(
        Rule rule,
        String cause,
        Severity severity,
        String title,
        String what,
        Subject subject,
        ImmutableList<JunctionSheet> sheets,
        Optional<PointSheet> pointSheet,
        Optional<Interval> loss,
        String toDo) {}
