package coldseam.audit.engine;

import coldseam.envelope.House;
import coldseam.envelope.shell.Shell;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.Catalogue;
import coldseam.junctions.detail.Detail;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.multimap.list.MutableListMultimap;
import org.eclipse.collections.impl.factory.Multimaps;

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
        MutableListMultimap<JunctionSetup, PlannedEdge> edges = Multimaps.mutable.list.empty();
        ImmutableList<PlannedEdge> planned = new JunctionPlan(house, shell, catalogue).plan();
        planned.forEach(each -> each.setup().ifPresent(setup -> edges.put(setup, each)));
        return planned.flatCollect(each -> each.setup().stream().toList())
                .distinct()
                .collect(setup -> new HouseJunctions(
                        setup,
                        edges.get(setup)
                                .select(PlannedEdge::chosen)
                                .flatCollect(PlannedEdge::candidates)
                                .distinct()
                                .toImmutable(),
                        edges.get(setup).collect(each -> each.edge().name()).toImmutable()));
    }
}
