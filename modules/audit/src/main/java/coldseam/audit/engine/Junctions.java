package coldseam.audit.engine;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.audit.JunctionRow;
import coldseam.audit.JunctionSheet;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.House;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.factory.Maps;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.api.map.ImmutableMap;
import org.eclipse.collections.api.map.MutableMap;

/**
 * The junctions of a house, computed: a sheet for each different one and a row for each edge.
 *
 * @param sheets in the order of their first edge
 * @param rows in the shell's order
 * @param misfits why the detail chosen for an edge does not fit, by the edge's name; only edges with such reasons
 */
record Junctions(
        ImmutableList<JunctionSheet> sheets,
        ImmutableList<JunctionRow> rows,
        ImmutableMap<String, ImmutableList<String>> misfits) {

    /** What makes two edges one junction: the result (a detail and a setup) and whether somebody chose it. */
    private record Key(Detail detail, JunctionSetup setup, boolean chosen) {}

    /** Gathers what was computed. */
    static Junctions of(House house, ImmutableList<PlannedEdge> edges, JunctionRun run) {
        MutableMap<Key, String> ids = Maps.mutable.empty();
        MutableList<Key> order = Lists.mutable.empty();
        MutableList<JunctionRow> rows = Lists.mutable.empty();
        MutableMap<Key, MutableList<PlannedEdge>> groups = Maps.mutable.empty();
        MutableMap<String, ImmutableList<String>> misfits = Maps.mutable.empty();
        for (PlannedEdge planned : edges) {
            Optional<JunctionResult> result = run.result(planned);
            Optional<String> sheet = result.map(found -> {
                Key key = new Key(found.detail(), found.setup(), planned.chosen());
                if (!ids.containsKey(key)) {
                    ids.put(key, "J" + (ids.size() + 1));
                    order.add(key);
                }
                groups.getIfAbsentPut(key, Lists.mutable::empty).add(planned);
                return ids.get(key);
            });
            rows.add(row(house, planned, result, sheet));
            ImmutableList<String> reasons = run.misfits(planned);
            if (planned.chosen() && reasons.notEmpty()) {
                misfits.put(planned.edge().name(), reasons);
            }
        }
        ImmutableList<JunctionSheet> sheets = order.collect(key -> sheet(house, ids.get(key), groups.get(key), run))
                .toImmutable();
        return new Junctions(sheets, rows.toImmutable(), misfits.toImmutable());
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
            House house, PlannedEdge planned, Optional<JunctionResult> result, Optional<String> sheet) {
        Edge edge = planned.edge();
        DimensionSystem system = house.site().dimensions();
        double length = length(edge, system);
        if (planned.own().isPresent()) {
            Interval psi = Interval.of(planned.own().get().psi());
            return new JunctionRow(
                    edge,
                    sheet,
                    psi,
                    length,
                    factorOfOwnPsi(edge),
                    planned.own().get().source(),
                    false);
        }
        if (result.isPresent()) {
            String source = planned.chosen() ? "computed" : "computed; the worst option stands in for one not chosen";
            return new JunctionRow(edge, sheet, result.get().psi(system), length, 1, source, !planned.chosen());
        }
        return new JunctionRow(edge, sheet, Interval.of(0), length, 1, whyNothing(planned), true);
    }

    private static String whyNothing(PlannedEdge planned) {
        if (planned.setup().isEmpty()) {
            return "not computed: a surface beside it has no assembly";
        }
        return planned.candidates().isEmpty()
                ? "not computed: the catalogue has no detail of this kind"
                : planned.chosen()
                        ? "not computed: the detail does not fit these layers"
                        : "not computed: no detail of the catalogue fits these layers";
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
