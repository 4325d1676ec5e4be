package coldseam.audit;

import coldseam.envelope.shell.Hole;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What of a house's heat loss nobody knows, so that its coefficient is a least value only.
 *
 * @param bridges without a value and without an option that could stand in
 * @param holes where a surface is missing
 */
public record Unknown(ImmutableList<BridgeRow> bridges, ImmutableList<Hole> holes) {

    /** Of an audit. */
    public static Unknown of(Audit audit) {
        return new Unknown(audit.bridges().select(Unknown::isUnknown), Hole.of(audit.shell()));
    }

    /** A value of no width and no source is none: what an option came to is proven from two sides and has a width. */
    private static boolean isUnknown(BridgeRow row) {
        return row.source() instanceof BridgeSource.None && row.transmittance().width() == 0 && row.factor() > 0;
    }

    /** Whether nothing is missing. */
    public boolean none() {
        return bridges.isEmpty() && holes.isEmpty();
    }

    /** m, of the edges among the bridges. */
    public double length() {
        return bridges.selectInstancesOf(JunctionRow.class).sumOfDouble(JunctionRow::length);
    }

    /** How many points are among the bridges. */
    public int points() {
        return (int) bridges.selectInstancesOf(PointRow.class).sumOfInt(PointRow::number);
    }

    /** m², of the holes as far as their edges close. */
    public double area() {
        return holes.sumOfDouble(Hole::area);
    }
}
