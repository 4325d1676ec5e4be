package coldseam.audit.rules;

import coldseam.audit.Finding.Severity;
import coldseam.audit.JunctionSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.Point3;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A finding before it is numbered and joined with others about the same subject.
 *
 * @param rule that found it
 * @param subject what it is about: drafts with one subject become one finding
 * @param severity how grave
 * @param title short
 * @param what was found, a sentence without its full stop, with values and units
 * @param place a person can walk to
 * @param at a point on the outer shell
 * @param length m; zero where it has none
 * @param edges names of all the edges it is about, the longest first; empty for surfaces and holes
 * @param surface name; empty for edges
 * @param sheets it is about, the worst first; empty where there are none
 * @param pointSheet id of the worst point's sheet it is about; empty where it is about no point
 * @param loss W/K lost against the best there is; empty where that cannot be said
 * @param toDo what closes it
 */
public record Draft(
        Rule rule,
        String subject,
        Severity severity,
        String title,
        String what,
        String place,
        Point3 at,
        double length,
        ImmutableList<String> edges,
        Optional<String> surface,
        ImmutableList<JunctionSheet> sheets,
        Optional<String> pointSheet,
        Optional<Interval> loss,
        String toDo) {}
