package coldseam.audit;

import coldseam.envelope.shell.Surface;
import coldseam.junctions.detail.Upkeep;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What somebody looks after once the house stands.
 *
 * @param upkeep what to do, and when
 * @param surfaces whose layers ask for it
 * @param sheets whose chosen details ask for it
 */
public record UpkeepItem(Upkeep upkeep, ImmutableList<Surface> surfaces, ImmutableList<BridgeSheet<?>> sheets) {

    /** Names of the build-ups that ask for it. */
    public ImmutableList<String> assemblies() {
        return surfaces.collect(each -> each.assembly().orElseThrow().name()).distinct();
    }

    /** Names of the surfaces, seams and points where it is asked for. */
    public ImmutableList<String> places() {
        return surfaces.collect(Surface::name).newWithAll(sheets.flatCollect(BridgeSheet::places));
    }
}
