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
 * @param sheet id of their sheet; empty where nothing could be computed
 * @param chi W/K, of one
 * @param factor temperature factor b that weighs it
 * @param source "computed", or why there is nothing
 * @param unknown whether its chi is a stand-in, so that the verdict cannot be unbroken
 */
public record PointRow(
        PointBridges points,
        PointKind kind,
        Surface surface,
        int number,
        Optional<String> sheet,
        Interval chi,
        double factor,
        String source,
        boolean unknown) {

    /** chi times number times factor, W/K. */
    public Interval loss() {
        return chi.times(number * factor);
    }

    /** Where they are, in words. */
    public String place() {
        return points.name() + ", " + surface.name();
    }
}
