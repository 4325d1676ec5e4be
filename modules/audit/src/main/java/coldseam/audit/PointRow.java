package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.PointBridges;
import coldseam.envelope.PointKind;
import coldseam.envelope.shell.Surface;
import java.util.Optional;

/**
 * One set of points in the audit.
 *
 * @param points as the house file has it
 * @param kind of thing they are
 * @param surface they go through
 * @param number of them
 * @param sheet of them; empty where nothing could be computed
 * @param chi W/K, of one
 * @param factor temperature factor b that weighs it
 * @param source of chi
 */
public record PointRow(
        PointBridges points,
        PointKind kind,
        Surface surface,
        int number,
        Optional<PointSheet> sheet,
        Interval chi,
        double factor,
        BridgeSource source) {

    /** chi times number times factor, W/K. */
    public Interval loss() {
        return chi.times(number * factor);
    }

    /** Whether it is one of the sets that a sheet stands for. */
    public boolean isOn(PointSheet other) {
        return sheet.filter(own -> own.id().equals(other.id())).isPresent();
    }
}
