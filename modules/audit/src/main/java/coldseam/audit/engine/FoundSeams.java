package coldseam.audit.engine;

import coldseam.audit.AsFound;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.envelope.House;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.catalogue.Catalogue;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.multimap.list.MutableListMultimap;
import org.eclipse.collections.impl.factory.Multimaps;

/**
 * The seams of a house as they were found, from what its file says under {@code retrofit}.
 *
 * <p>They are those of the house with its old build-ups, windows and details, matched by the edges' names. What stands there
 * need not be buildable today, so nothing is asked of it but that the drawing fits its layers.
 */
final class FoundSeams {

    /** What was found at an edge: all that are alike and planned alike are told together. */
    private record Key(Optional<BridgeSheet<JunctionResult>> sheet, Optional<BridgeSource> source) {}

    private final ComputedJunctions planned;
    private final ImmutableMap<String, JunctionRow> found;

    /**
     * Computes them.
     *
     * @param house as planned, which says what was found
     * @param planned its junctions
     * @param shell of the house as found
     */
    FoundSeams(
            House house,
            ComputedJunctions planned,
            Shell shell,
            Catalogue catalogue,
            BridgeComputer computer,
            Progress progress) {
        this.planned = planned;
        Retrofit.Found known = house.retrofit().flatMap(Retrofit::found).orElseThrow();
        ImmutableList<String> said = planned.rows()
                .collect(JunctionRow::edge)
                .select(edge -> knows(known, edge))
                .collect(edge -> edge.name());
        House before = house.asFound().orElseThrow();
        ImmutableList<PlannedEdge> edges = new JunctionPlan(before, shell, catalogue)
                .plan()
                .select(each -> said.contains(each.edge().name()))
                .collect(PlannedEdge::asFound);
        this.found = ComputedJunctions.of("found seams", before, edges, computer, progress)
                .rows()
                .toImmutableMap(JunctionRow::name, row -> row);
    }

    /** Whether it is said what was found beside an edge of the planned shell. */
    private static boolean knows(Retrofit.Found known, Edge edge) {
        return edge.opening()
                        .filter(each -> !known.windows().containsKey(each.name()))
                        .isEmpty()
                && knows(known, edge.first())
                && edge.second().filter(each -> !knows(known, each)).isEmpty();
    }

    private static boolean knows(Retrofit.Found known, Surface surface) {
        return surface.assembly()
                .filter(each -> known.assemblies().containsKey(each.name()))
                .isPresent();
    }

    AsFound compute() {
        MutableList<AsFound.Seam> seams = Lists.mutable.empty();
        for (BridgeSheet<JunctionResult> sheet : planned.sheets()) {
            MutableListMultimap<Key, JunctionRow> alike = Multimaps.mutable.list.empty();
            ImmutableList<JunctionRow> rows = planned.rows().select(row -> row.isOn(sheet));
            rows.forEach(row -> alike.put(key(row), row));
            rows.collect(this::key)
                    .distinct()
                    .forEach(key -> seams.add(new AsFound.Seam(
                            sheet.id(),
                            key.sheet(),
                            key.source(),
                            alike.get(key).collect(JunctionRow::name).toImmutable(),
                            alike.get(key).sumOfDouble(JunctionRow::length))));
        }
        return new AsFound(seams.toImmutable());
    }

    private Key key(JunctionRow row) {
        Optional<JunctionRow> before = Optional.ofNullable(found.get(row.name()));
        return new Key(before.flatMap(JunctionRow::sheet), before.map(JunctionRow::source));
    }
}
