package coldseam.audit.engine;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.audit.JunctionSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.House;
import coldseam.envelope.OwnPsi;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/**
 * The junctions of a house, computed: a sheet for each different one and a row for each edge.
 *
 * @param sheets in the order of their first edge
 * @param rows in the shell's order
 */
record ComputedJunctions(ImmutableList<JunctionSheet> sheets, ImmutableList<JunctionRow> rows) {

    /** What makes two edges one junction: the result (a detail and a setup) and whether somebody chose it. */
    private record Key(Detail detail, JunctionSetup setup, boolean chosen) {}

    /** Gathers what was computed. */
    static ComputedJunctions of(House house, ImmutableList<PlannedEdge> edges, JunctionRun run) {
        Map<Key, MutableList<PlannedEdge>> groups = new LinkedHashMap<>();
        for (PlannedEdge planned : edges) {
            key(planned, run)
                    .ifPresent(key -> groups.computeIfAbsent(key, none -> Lists.mutable.empty())
                            .add(planned));
        }
        Map<Key, JunctionSheet> sheets = new LinkedHashMap<>();
        groups.forEach((key, group) -> sheets.put(key, sheet(house, "J" + (sheets.size() + 1), group, run)));
        ImmutableList<JunctionRow> rows = edges.collect(planned -> row(
                house,
                planned,
                key(planned, run).map(sheets::get),
                planned.chosen() ? run.misfits(planned) : Lists.immutable.empty()));
        return new ComputedJunctions(Lists.immutable.ofAll(sheets.values()), rows);
    }

    private static Optional<Key> key(PlannedEdge planned, JunctionRun run) {
        return run.result(planned).map(found -> new Key(found.detail(), found.setup(), planned.chosen()));
    }

    private static JunctionSheet sheet(House house, String id, MutableList<PlannedEdge> edges, JunctionRun run) {
        JunctionResult result = run.result(edges.getFirst()).orElseThrow();
        Optional<JunctionResult> best = run.better(result);
        double indoors = house.site().indoorTemperature();
        double outdoors = house.site().outdoorTemperature();
        SurfaceHumidity humidity = SurfaceHumidity.of(Math.min(1, result.temperatureFactor()), indoors, outdoors);
        return new JunctionSheet(
                id,
                result,
                best,
                run.options(result.setup()),
                edges.collect(planned -> planned.edge().name()).toImmutable(),
                edges.sumOfDouble(planned -> length(planned.edge(), house.site().dimensions())),
                edges.getFirst().chosen(),
                Math.min(1, humidity.humidityAtDewPoint()),
                Math.min(1, humidity.humidityAtMouldLimit()));
    }

    private static JunctionRow row(
            House house, PlannedEdge planned, Optional<JunctionSheet> sheet, ImmutableList<String> misfits) {
        Edge edge = planned.edge();
        DimensionSystem system = house.site().dimensions();
        double length = length(edge, system);
        if (planned.own().isPresent()) {
            OwnPsi own = planned.own().get();
            return new JunctionRow(
                    edge,
                    sheet,
                    Interval.of(own.psi()),
                    length,
                    factorOfOwnPsi(edge),
                    new BridgeSource.Own(own.source()),
                    misfits);
        }
        return sheet.map(found -> new JunctionRow(
                        edge,
                        sheet,
                        found.result().psi(system),
                        length,
                        1,
                        planned.chosen() ? new BridgeSource.Computed() : new BridgeSource.StandIn(),
                        misfits))
                .orElseGet(() -> new JunctionRow(
                        edge, sheet, Interval.of(0), length, 1, new BridgeSource.None(whyNothing(planned)), misfits));
    }

    private static BridgeSource.Reason whyNothing(PlannedEdge planned) {
        if (planned.setup().isEmpty()) {
            return BridgeSource.Reason.NO_ASSEMBLY;
        }
        return planned.candidates().isEmpty()
                ? BridgeSource.Reason.NO_DETAIL_OF_THE_KIND
                : planned.chosen() ? BridgeSource.Reason.CHOSEN_DOES_NOT_FIT : BridgeSource.Reason.NONE_FITS;
    }

    /** m, in a dimension system. */
    static double length(Edge edge, DimensionSystem system) {
        return system == DimensionSystem.EXTERNAL ? edge.externalLength() : edge.internalLength();
    }

    /**
     * The temperature factor that weighs an own psi: the colder neighbour's. A computed psi is of the whole difference
     * between indoors and outdoors and holds the factors of its spaces already.
     */
    private static double factorOfOwnPsi(Edge edge) {
        double first = edge.first().exposure().factor();
        return edge.second()
                .map(Surface::exposure)
                .map(exposure -> Math.max(first, exposure.factor()))
                .orElse(first);
    }
}
