package coldseam.audit.engine;

import coldseam.audit.BridgeSheet;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.House;
import coldseam.envelope.OwnPsi;
import coldseam.envelope.shell.Edge;
import coldseam.envelope.shell.Surface;
import coldseam.junctions.BridgeComputer;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.JunctionSetup;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The junctions of a house, computed: a sheet for each different one and a row for each edge.
 *
 * @param sheets in the order of their first edge
 * @param rows in the shell's order
 */
record ComputedJunctions(ImmutableList<BridgeSheet<JunctionResult>> sheets, ImmutableList<JunctionRow> rows) {

    /**
     * Computes every edge, with its kind's other options beside it.
     *
     * @param what they are, for the progress; its first letter begins the sheets' ids
     */
    static ComputedJunctions of(
            String what, House house, ImmutableList<PlannedEdge> edges, BridgeComputer computer, Progress progress) {
        DimensionSystem system = house.site().dimensions();
        ComputedBridges<JunctionSetup, JunctionResult> computed = new ComputedBridges<>(
                what,
                house,
                edges.collect(PlannedEdge::bridge),
                computer::compute,
                computer.comparing()::compute,
                progress);
        return new ComputedJunctions(computed.sheets(), edges.collect(edge -> row(edge, computed, system)));
    }

    private static JunctionRow row(
            PlannedEdge edge, ComputedBridges<JunctionSetup, JunctionResult> computed, DimensionSystem system) {
        PlannedBridge<JunctionSetup> planned = edge.bridge();
        Optional<BridgeSheet<JunctionResult>> sheet = computed.sheet(planned);
        Optional<OwnPsi> own = edge.own();
        return new JunctionRow(
                edge.edge(),
                sheet,
                own.map(each -> Interval.of(each.psi()))
                        .or(() -> sheet.map(found -> found.result().psi(system)))
                        .or(() -> computed.range(planned, result -> result.psi(system)))
                        .orElse(Interval.of(0)),
                planned.size(),
                own.isPresent() ? factorOfOwnPsi(edge.edge()) : 1,
                own.<BridgeSource>map(each -> new BridgeSource.Own(each.source()))
                        .orElseGet(() -> computed.source(planned)),
                computed.misfits(planned));
    }

    /** m, in a dimension system. */
    static double length(Edge edge, DimensionSystem system) {
        return system == DimensionSystem.EXTERNAL ? edge.externalLength() : edge.internalLength();
    }

    /**
     * The temperature factor that weighs an own psi: the colder neighbour's. A computed psi is of the whole difference
     * between indoors and outdoors and holds the factors of its spaces already.
     */
    static double factorOfOwnPsi(Edge edge) {
        double first = edge.first().exposure().factor();
        return edge.second()
                .map(Surface::exposure)
                .map(exposure -> Math.max(first, exposure.factor()))
                .orElse(edge.opening().filter(edge.first()::underSkylight).isPresent() ? 1 : first);
    }
}
