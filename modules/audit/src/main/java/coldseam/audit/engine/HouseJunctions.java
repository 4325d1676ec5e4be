package coldseam.audit.engine;

import coldseam.envelope.House;
import coldseam.envelope.shell.Shell;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.catalogue.Catalogue;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.multimap.list.MutableListMultimap;
import org.eclipse.collections.impl.factory.Multimaps;

/**
 * The different junctions of a house, before any detail is chosen or computed.
 *
 * @param setup what a detail depends on
 * @param edges names of the edges that share it
 */
public record HouseJunctions(JunctionSetup setup, ImmutableList<String> edges) {

    /** In the order of their first edge; edges beside a surface without assembly are left out. */
    public static ImmutableList<HouseJunctions> of(House house, Shell shell) {
        MutableListMultimap<JunctionSetup, String> edges = Multimaps.mutable.list.empty();
        ImmutableList<PlannedEdge> planned =
                new JunctionPlan(house, shell, new Catalogue(Lists.immutable.empty())).plan();
        planned.forEach(each ->
                each.setup().ifPresent(setup -> edges.put(setup, each.edge().name())));
        return planned.flatCollect(each -> each.setup().stream().toList())
                .distinct()
                .collect(setup -> new HouseJunctions(setup, edges.get(setup).toImmutable()));
    }
}
