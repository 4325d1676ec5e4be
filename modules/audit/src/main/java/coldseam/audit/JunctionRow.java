package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.shell.Edge;
import java.util.Optional;

/**
 * One edge in the audit.
 *
 * @param edge of the shell
 * @param sheet id of its sheet; empty where nothing could be computed
 * @param psi W/(m·K), in the site's dimension system
 * @param length m, in the site's dimension system
 * @param factor temperature factor b that weighs it
 * @param source "computed", or the source of an own psi, or why there is none
 * @param unknown whether its psi is a stand-in, so that the verdict cannot be unbroken
 */
public record JunctionRow(
        Edge edge, Optional<String> sheet, Interval psi, double length, double factor, String source, boolean unknown) {

    /** psi times length times factor, W/K. */
    public Interval loss() {
        return psi.times(length * factor);
    }
}
