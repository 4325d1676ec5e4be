package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.PointBridges;
import coldseam.envelope.PointKind;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.PointResult;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

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
 * @param misfits why the detail chosen for it does not fit, or none that might stand in; empty where one does
 */
public record PointRow(
        PointBridges points,
        PointKind kind,
        Surface surface,
        int number,
        Optional<BridgeSheet<PointResult>> sheet,
        Interval chi,
        double factor,
        BridgeSource source,
        ImmutableList<Phrase> misfits)
        implements BridgeRow {

    @Override
    public String name() {
        return points.name();
    }

    @Override
    public String kindLabel() {
        return kind.label();
    }

    @Override
    public ImmutableList<Surface> surfaces() {
        return Lists.immutable.of(surface);
    }

    @Override
    public Interval transmittance() {
        return chi;
    }

    @Override
    public double size() {
        return number;
    }
}
