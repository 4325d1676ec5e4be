package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.JunctionResult;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * One edge in the audit.
 *
 * @param sheet of its junction; empty where nothing could be computed
 * @param psi W/(m·K), in the site's dimension system
 * @param length m, in the site's dimension system
 * @param factor temperature factor b that weighs it
 * @param source of psi
 * @param misfits why the detail chosen for it does not fit, or none that might stand in; empty where one does
 */
public record JunctionRow(
        Edge edge,
        Optional<BridgeSheet<JunctionResult>> sheet,
        Interval psi,
        double length,
        double factor,
        BridgeSource source,
        ImmutableList<Phrase> misfits)
        implements BridgeRow {

    /** Whether its factor is 1 since what it multiplies, a computed psi, holds those of its surfaces already. */
    public boolean factorInPsi() {
        return !(source instanceof BridgeSource.Own)
                && surfaces().anySatisfy(each -> each.exposure().factor() < 1);
    }

    @Override
    public String name() {
        return edge.name();
    }

    @Override
    public String kindLabel() {
        return edge.kind().label();
    }

    @Override
    public ImmutableList<Surface> surfaces() {
        return edge.surfaces();
    }

    @Override
    public Interval transmittance() {
        return psi;
    }

    @Override
    public double size() {
        return length;
    }
}
