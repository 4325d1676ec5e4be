package coldseam.audit.engine;

import coldseam.audit.Audit;
import coldseam.audit.BridgeRow;
import coldseam.audit.BridgeSource;
import coldseam.audit.JunctionRow;
import coldseam.audit.PointRow;
import coldseam.audit.Touching;
import coldseam.envelope.shell.Hole;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What of a house's heat loss nobody knows, so that its coefficient is a least value only.
 *
 * @param bridges without a value and without an option that could stand in
 * @param holes where a surface is missing
 * @param touching seams that disturb one another
 * @param below W/K by which the coefficient may lie under the table's lower end, since such seams may lose less together
 */
public record Unknown(
        ImmutableList<BridgeRow> bridges, ImmutableList<Hole> holes, ImmutableList<Touching> touching, double below) {

    /** Of an audit. */
    public static Unknown of(Audit audit) {
        ImmutableList<Touching> touching = Touching.of(audit.shell(), audit.junctions());
        return new Unknown(
                audit.bridges().select(Unknown::isUnknown), Hole.of(audit.shell()), touching, below(audit, touching));
    }

    /** A value of no width and no source is none: what an option came to is proven from two sides and has a width. */
    private static boolean isUnknown(BridgeRow row) {
        return row.source() instanceof BridgeSource.None && row.transmittance().width() == 0 && row.factor() > 0;
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
     * <p>What lies between cuts outside both of two seams loses at least nothing, as with one seam ({@link LeastPsi}): so their
     * psi together is no less than −(U d and what is beyond them on either side), d between them. That is no less than the sum of
     * the least psi of each, which takes off half the surface's thickness on either side of each, t in all between them, while d is
     * less than {@link Touching#REACH} t. What they may lose more than the upper end says nobody knows. Worked out apart.
     */
    private static double below(Audit audit, ImmutableList<Touching> touching) {
        if (touching.isEmpty()) {
            return 0;
        }
        LeastPsi least = new LeastPsi(audit.house(), audit.shell());
        ImmutableList<Touching.Pair> all = touching.flatCollect(Touching::pairs);
        return all.flatCollect(pair -> Lists.immutable.of(pair.one(), pair.other()))
                .distinctBy(JunctionRow::name)
                .sumOfDouble(row -> {
                    double beside = all.select(pair -> isOf(pair, row)).sumOfDouble(Touching.Pair::length);
                    double more = row.psi().lower() * row.factor() - least.weighed(row.edge());
                    return Math.min(row.length(), beside) * Math.max(0, more);
                });
    }

    private static boolean isOf(Touching.Pair pair, JunctionRow row) {
        return pair.one().name().equals(row.name()) || pair.other().name().equals(row.name());
    }
}
