package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/** One bridge of the house as it is counted: an edge, or a set of points. */
public sealed interface BridgeRow permits JunctionRow, PointRow {

    /** Of the edge, or of the set in the house file. */
    String name();

    /** What kind of bridge it is, in plain words. */
    String kindLabel();

    /** Surfaces that it joins or goes through. */
    ImmutableList<Surface> surfaces();

    /** Its sheet; empty where nothing could be computed. */
    Optional<? extends BridgeSheet<?>> sheet();

    /** psi, W/(m·K), in the site's dimension system, or chi, W/K. */
    Interval transmittance();

    /** m, or how many. */
    double size();

    /** Temperature factor b that weighs it. */
    double factor();

    /** Where its transmittance comes from. */
    BridgeSource source();

    /** Why the detail chosen for it does not fit, or none that might stand in; empty where one does. */
    ImmutableList<Phrase> misfits();

    /** Whether nobody chose a detail for it, and none of the catalogue fits. */
    default boolean noneFits() {
        return source().equals(new BridgeSource.None(BridgeSource.Reason.NONE_FITS));
    }

    /** Transmittance times size times factor, W/K. */
    default Interval loss() {
        return transmittance().times(size() * factor());
    }

    /** Whether it is one of those that a sheet stands for. */
    default boolean isOn(BridgeSheet<?> other) {
        return sheet().filter(own -> own.id().equals(other.id())).isPresent();
    }

    /** The different sheets of rows, in the rows' order. */
    static ImmutableList<BridgeSheet<?>> sheets(ImmutableList<? extends BridgeRow> rows) {
        return rows.flatCollect(row -> row.sheet().stream().toList())
                .<BridgeSheet<?>>collect(sheet -> sheet)
                .distinctBy(BridgeSheet::id);
    }
}
