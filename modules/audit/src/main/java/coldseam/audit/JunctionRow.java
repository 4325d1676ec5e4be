package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.shell.Edge;
import java.util.Optional;

/**
 * One edge in the audit.
 *
 * @param edge of the shell
 * @param sheet of its junction; empty where nothing could be computed
 * @param psi W/(m·K), in the site's dimension system
 * @param length m, in the site's dimension system
 * @param factor temperature factor b that weighs it
 * @param source of psi
 */
public record JunctionRow(
        Edge edge, Optional<JunctionSheet> sheet, Interval psi, double length, double factor, BridgeSource source) {

    /** psi times length times factor, W/K. */
    public Interval loss() {
        return psi.times(length * factor);
    }

    /** Whether it is one of the edges that a sheet stands for. */
    public boolean isOn(JunctionSheet other) {
        return sheet.filter(own -> own.id().equals(other.id())).isPresent();
    }
}
