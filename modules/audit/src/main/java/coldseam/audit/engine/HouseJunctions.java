package coldseam.audit.engine;

import coldseam.envelope.House;
import coldseam.envelope.shell.Shell;
import coldseam.files.Groups;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The different junctions of a house, before any detail is computed.
 *
 * @param setup what a detail depends on
 * @param chosen details that the house chooses there, with the lengths it gives them
 * @param edges names of the edges that share it
 */
public record HouseJunctions(JunctionSetup setup, ImmutableList<Detail> chosen, ImmutableList<String> edges) {

    /** In the order of their first edge; edges beside a surface without assembly are left out. */
    public static ImmutableList<HouseJunctions> of(House house, Shell shell, Catalogue catalogue) {
        ImmutableList<PlannedBridge<JunctionSetup>> planned = new JunctionPlan(house, shell, catalogue)
                .plan()
                .collect(PlannedEdge::bridge)
                .select(each -> each.setup().isPresent());
        return Groups.by(planned, each -> each.setup().orElseThrow())
                .collect(alike -> new HouseJunctions(
                        alike.getFirst().setup().orElseThrow(),
                        alike.select(PlannedBridge::chosen)
                                .flatCollect(PlannedBridge::candidates)
                                .distinct(),
                        alike.collect(PlannedBridge::name)));
    }
}
