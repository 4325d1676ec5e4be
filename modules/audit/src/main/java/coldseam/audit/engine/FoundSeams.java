package coldseam.audit.engine;

import coldseam.audit.AsFound;
import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.HeatLoss;
import coldseam.audit.JunctionRow;
import coldseam.envelope.House;
import coldseam.envelope.Retrofit;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Shell;
import coldseam.envelope.shell.Surface;
import coldseam.files.Groups;
import coldseam.files.quantity.Phrase;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.catalogue.Catalogue;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * The seams of a house as they were found, from what its file says under {@code retrofit}.
 *
 * <p>They are those of the house with its old build-ups, windows and details, matched by the edges' names. What stands there
 * need not be buildable today, so nothing is asked of it but that the drawing fits its layers.
 */
final class FoundSeams {

    /** What was found at an edge: all that are alike and planned alike are told together. */
    private record Key(
            Optional<BridgeSheet<JunctionResult>> sheet,
            Optional<BridgeSource> source,
            ImmutableList<Phrase> misfits,
            boolean builtNew) {}

    private final Retrofit retrofit;
    private final House house;
    private final Shell shell;
    private final ImmutableList<PlannedEdge> edges;

    /**
     * Those of which the house file says what was found.
     *
     * @param planned the house as planned, which says it
     * @param edges of the planned shell
     * @param shell of the house as found
     */
    FoundSeams(House planned, ImmutableList<PlannedEdge> edges, Shell shell, Catalogue catalogue) {
        this.retrofit = planned.retrofit().orElseThrow();
        Retrofit.Found known = retrofit.found().orElseThrow();
        ImmutableList<String> said = edges.collect(PlannedEdge::edge)
                .select(edge -> knows(known, edge))
                .collect(Edge::name);
        this.house = planned.asFound().orElseThrow();
        this.shell = shell;
        this.edges = new JunctionPlan(house, shell, catalogue)
                .planAsFound()
                .select(each -> said.contains(each.edge().name()));
    }

    /** How many different details are to be solved. */
    int count() {
        return ComputedBridges.questions(edges.collect(PlannedEdge::bridge)).size();
    }

    /** Whether it is said what was found beside an edge of the planned shell. */
    private static boolean knows(Retrofit.Found known, Edge edge) {
        return edge.opening()
                        .filter(each -> !known.windows().containsKey(each.name()))
                        .isEmpty()
                && edge.surfaces().allSatisfy(each -> knows(known, each));
    }

    private static boolean knows(Retrofit.Found known, Surface surface) {
        return surface.assembly()
                .filter(each -> known.assemblies().containsKey(each.name()))
                .isPresent();
    }

    /**
     * Computes them.
     *
     * @param planned junctions in their places
     */
    AsFound compute(ComputedJunctions planned, BridgeComputer computer, Progress progress) {
        ImmutableList<JunctionRow> rows = ComputedJunctions.of("found seams", house, edges, computer, progress)
                .rows();
        HeatLoss loss = new HeatLossTable(
                        house,
                        new SurfaceHeats(house, shell, Auditor.rimsComputed(rows)).compute(),
                        rows,
                        Lists.immutable.empty(),
                        Lists.immutable.empty(),
                        Lists.immutable.empty())
                .compute();
        return new AsFound(seams(planned, rows.toImmutableMap(JunctionRow::name, row -> row)), rows, loss);
    }

    private ImmutableList<AsFound.Seam> seams(ComputedJunctions planned, ImmutableMap<String, JunctionRow> found) {
        MutableList<AsFound.Seam> seams = Lists.mutable.empty();
        for (BridgeSheet<JunctionResult> sheet : planned.sheets()) {
            ImmutableList<JunctionRow> rows = planned.rows().select(row -> row.isOn(sheet));
            for (ImmutableList<JunctionRow> alike : Groups.by(rows, row -> key(row, found))) {
                Key key = key(alike.getFirst(), found);
                seams.add(new AsFound.Seam(
                        sheet.id(),
                        key.sheet(),
                        key.source(),
                        key.misfits(),
                        key.builtNew(),
                        alike.collect(JunctionRow::name),
                        alike.sumOfDouble(JunctionRow::length)));
            }
        }
        return seams.toImmutable();
    }

    private Key key(JunctionRow row, ImmutableMap<String, JunctionRow> found) {
        Optional<JunctionRow> before = Optional.ofNullable(found.get(row.name()));
        return new Key(
                before.flatMap(JunctionRow::sheet),
                before.map(JunctionRow::source),
                before.filter(each -> !each.noneFits())
                        .map(JunctionRow::misfits)
                        .orElse(Lists.immutable.empty()),
                row.surfaces().anySatisfy(each -> !each.staysIn(retrofit)));
    }
}
