package coldseam.audit.rules;

import coldseam.audit.Breach;
import coldseam.audit.BridgeSheet;
import coldseam.audit.Finding.Severity;
import coldseam.audit.Subject;
import coldseam.conduction.Interval;
import coldseam.envelope.shell.Surface;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A finding before it is numbered and joined with others of the same cause.
 *
 * @param cause drafts with one cause become one finding
 * @param severity how grave
 * @param evidence what was found
 * @param subject what it is about
 * @param sheets of bridges it is about, the worst first; empty where there are none
 * @param loss W/K lost against the best there is; empty where that cannot be said
 */
public record Draft(
        String cause,
        Severity severity,
        Breach.Evidence evidence,
        Subject subject,
        ImmutableList<BridgeSheet<?>> sheets,
        Optional<Interval> loss) {

    /** About what has no sheet, and whose loss nobody can tell. */
    Draft(String cause, Severity severity, Breach.Evidence evidence, Subject subject) {
        this(cause, severity, evidence, subject, Lists.immutable.empty(), Optional.empty());
    }

    /** About surfaces of one assembly, whose faults have one cause. */
    static Draft ofAssembly(
            Severity severity, Breach.Evidence evidence, ImmutableList<Surface> surfaces, Optional<Interval> loss) {
        return new Draft(
                "assembly " + Facts.assembly(surfaces.getFirst()),
                severity,
                evidence,
                new Subject.Surfaces(surfaces),
                Lists.immutable.empty(),
                loss);
    }
}
