package coldseam.audit.engine;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.Touching;
import coldseam.envelope.shell.Hole;
import coldseam.envelope.shell.Shell;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What of a house's heat loss nobody knows, so that its coefficient is a least value only.
 *
 * @param bridges without a value and without an option that could stand in
 * @param holes where a surface is missing
 * @param touching seams that disturb one another
 * @param together W/K that such seams may lose less together than the table's lower end says
 * @param without W/K that bridges without a value and the edges of holes may take off, for which the table has nothing
 */
public record Unknown(
        ImmutableList<BridgeRow> bridges,
        ImmutableList<Hole> holes,
        ImmutableList<Touching> touching,
        double together,
        double without) {

    public static Unknown of(Audit audit) {
        ImmutableList<Touching> touching = Touching.unknown(audit.pairs());
        ImmutableList<BridgeRow> bridges = audit.bridges().select(Unknown::isUnknown);
        ImmutableList<Hole> holes = Hole.of(audit.shell());
        if (bridges.isEmpty() && holes.isEmpty() && touching.isEmpty()) {
            return new Unknown(bridges, holes, touching, 0, 0);
        }
        LeastPsi least = new LeastPsi(audit.house(), audit.shell());
        return new Unknown(
                bridges, holes, touching, together(touching, least), without(audit.shell(), bridges, holes, least));
    }

    /** A value of no width and no source is none: what an option came to is proven from two sides and has a width. */
    private static boolean isUnknown(BridgeRow row) {
        return row.source() instanceof BridgeSource.None && row.transmittance().width() == 0 && row.factor() > 0;
    }

    /** W/K by which the coefficient may lie under the lower end of the table's sum. */
    public double below() {
        return together + without;
    }

    /** Whether nothing is missing. */
    public boolean none() {
        return bridges.isEmpty() && holes.isEmpty() && touching.isEmpty();
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

    /**
     * W/K by which such seams may lose less than the lower end of the sum says.
     *
     * <p>With an adiabatic cut halfway between, each loses alone what it would there; together they lose no less. What lies before
     * the lengths that {@link LeastPsi} takes off loses at least nothing, as with one seam, so that a seam's part is at most psi
     * over its least; with undisturbed layers between those lengths, the share of it that {@link Touching#share} has. What they
     * may lose more than the upper end says nobody knows. Worked out apart.
     */
    private static double together(ImmutableList<Touching> touching, LeastPsi least) {
        Map<JunctionRow, Double> parts = new LinkedHashMap<>();
        for (Touching each : touching) {
            for (Touching.Pair pair : each.pairs()) {
                double between = pair.distance()
                        - least.disturbed(pair.one().edge(), each.surface())
                        - least.disturbed(pair.other().edge(), each.surface());
                double part = pair.length() * Touching.share(between, each.decay());
                parts.merge(pair.one(), part, Double::sum);
                parts.merge(pair.other(), part, Double::sum);
            }
        }
        double sum = 0;
        for (Map.Entry<JunctionRow, Double> part : parts.entrySet()) {
            JunctionRow row = part.getKey();
            double more = row.psi().lower() * row.factor() - least.weighed(row.edge());
            sum += Math.min(row.length(), part.getValue()) * Math.max(0, more);
        }
        return sum;
    }

    /** Edges may take off what {@link LeastPsi} says; of a hole's, what is there beside it. Points take off nothing. */
    private static double without(
            Shell shell, ImmutableList<BridgeRow> bridges, ImmutableList<Hole> holes, LeastPsi least) {
        double seams = bridges.selectInstancesOf(JunctionRow.class)
                .sumOfDouble(row -> -least.weighed(row.edge()) * row.length());
        double open = holes.flatCollect(Hole::edges)
                .sumOfDouble(edge -> edge.length()
                        * shell.surfaces()
                                .select(surface -> edge.surfaces().contains(surface.name()))
                                .sumOfDouble(least::atAnEnd));
        return seams + open;
    }
}
