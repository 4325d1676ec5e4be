package coldseam.audit.engine;

import coldseam.audit.PsiLimit;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Limits;
import coldseam.junctions.BridgeResult;
import coldseam.junctions.ControlLine;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.detail.Rank;
import java.util.Comparator;

/**
 * Which option closes a gap best: the one of which least would be found, then the one that loses least; of those that lose the same
 * the one that is ranked better.
 */
record Merit(Limits limits, DimensionSystem system) {

    /** W/(m·K); what differs by less is as good: no drawing holds on site so closely (judgement). */
    private static final double ALIKE = 0.001;

    /** W/K, of a point, of which there may be many (judgement). */
    private static final double ALIKE_POINTS = 0.0001;

    /**
     * How good something is, the less the better: unbroken insulation goes first, then the fewest broken lines of air, water and
     * vapour control, then the fewest of which its detail says nothing, then the fewest limits missed, then the least loss, then the better rank.
     *
     * @param cut how many are without a pen line
     * @param broken lines
     * @param unsaid layers of which the detail does not say how they pass
     * @param missed limits
     * @param loss psi or chi, or W/K of several
     * @param lesser how far their ranks are from the best
     */
    record Score(int cut, int broken, int unsaid, int missed, double loss, int lesser) implements Comparable<Score> {

        static final Score NOTHING = new Score(0, 0, 0, 0, 0, 0);

        private static final Comparator<Score> FLAWS = Comparator.comparingInt(Score::cut)
                .thenComparingInt(Score::broken)
                .thenComparingInt(Score::unsaid)
                .thenComparingInt(Score::missed);

        private static final Comparator<Score> ORDER =
                FLAWS.thenComparingDouble(Score::loss).thenComparingInt(Score::lesser);

        /** Of both together. */
        Score plus(Score other) {
            return new Score(
                    cut + other.cut,
                    broken + other.broken,
                    unsaid + other.unsaid,
                    missed + other.missed,
                    loss + other.loss,
                    lesser + other.lesser);
        }

        /** With as many more limits missed. */
        Score missing(int more) {
            return new Score(cut, broken, unsaid, missed + more, loss, lesser);
        }

        /** Whether something is cut, broken or missed that more insulation might mend. */
        boolean flawed() {
            return cut + broken + missed > 0;
        }

        /** How it compares with another by its flaws, whatever both lose. */
        int flaws(Score other) {
            return FLAWS.compare(this, other);
        }

        @Override
        public int compareTo(Score other) {
            return ORDER.compare(this, other);
        }
    }

    /** Of a result; its loss is that of so many metres or points. */
    Score score(BridgeResult result, double size) {
        double alike = result instanceof JunctionResult ? ALIKE : ALIKE_POINTS;
        double each = result.psiOrChi(DimensionSystem.EXTERNAL).middle();
        double loss = size * alike * Math.rint(each / alike);
        int lesser = Rank.BEST.ordinal() - result.detail().rank().ordinal();
        return result instanceof JunctionResult junction
                ? new Score(
                        junction.penLine().unbroken() ? 0 : 1,
                        broken(junction),
                        result.detail().unsaid().size(),
                        missed(result),
                        loss,
                        lesser)
                : new Score(0, 0, 0, missed(result), loss, lesser);
    }

    private static int broken(JunctionResult junction) {
        return junction.controls()
                .count(line -> line instanceof ControlLine.Broken || line instanceof ControlLine.ChangesSide);
    }

    /** How many limits a result misses that rules would hold it to. */
    private int missed(BridgeResult result) {
        int missed = Limits.under(result.temperatureFactor(), limits.temperatureFactor()) ? 1 : 0;
        if (result instanceof JunctionResult junction) {
            missed += Limits.under(junction.penLine().share(), limits.neckShare()) ? 1 : 0;
            missed += Limits.under(junction.weakestPath().ratio(), limits.pathShare()) ? 1 : 0;
            missed += Limits.over(junction.psiOrChi(system).middle(), PsiLimit.of(junction, limits, system)) ? 1 : 0;
        }
        return missed;
    }
}
