package coldseam.audit;

import coldseam.assemblies.moisture.SurfaceHumidity;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.pair.PairResult;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Two seams that touch, computed in one section, for all the places where they do.
 *
 * @param id such as "T1", in the order of the report
 * @param result computed
 * @param one sheet of the first seam alone
 * @param other sheet of the second
 * @param interaction W/(m·K) that both lose together more than the sum of their psi; below zero for less
 * @param length m, for which they run beside each other at all of the places
 * @param places of each pair, in words
 * @param chosen whether the house file chose the details of both
 * @param humidity that its coldest point bears at the design temperatures
 */
public record PairSheet(
        String id,
        PairResult result,
        BridgeSheet<JunctionResult> one,
        BridgeSheet<JunctionResult> other,
        Interval interaction,
        double length,
        ImmutableList<String> places,
        boolean chosen,
        SurfaceHumidity humidity)
        implements Sheet {

    @Override
    public String kind() {
        return one.kind() + " beside " + other.kind();
    }

    @Override
    public double temperatureFactor() {
        return result.temperatureFactor();
    }

    /** psi of both together, W/(m·K), in a dimension system. */
    public Interval psi(DimensionSystem system) {
        return one.result().psi(system).plus(other.result().psi(system)).plus(interaction);
    }

    /** Whether a seam's sheet is one of the two. */
    public boolean isOf(BridgeSheet<?> sheet) {
        return one.id().equals(sheet.id()) || other.id().equals(sheet.id());
    }
}
