package coldseam.junctions.pair;

import coldseam.conduction.Finite;
import coldseam.conduction.Interval;
import coldseam.conduction.Point;
import coldseam.conduction.Solution;
import coldseam.junctions.JunctionResult;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * Two seams beside each other, computed in one section.
 *
 * @param setup what it was computed for
 * @param solution of the heat-flow section
 * @param coupling L2D of both, W/(m·K)
 * @param common W/(m·K), what the undisturbed surface loses in the two sections of each seam alone and not in this one: its b·U
 *     times the length that those two have of it more
 * @param temperatureFactor fRsi with Rsi 0.25 m²·K/W (ISO 13788), the lowest of both; an estimate
 * @param coldest where it is lowest, in the section
 * @param seams in the section, where each one's line meets the inner and the outer face of the surface
 * @param notes what was simplified, in plain words
 */
public record PairResult(
        PairSetup setup,
        Solution solution,
        Interval coupling,
        double common,
        double temperatureFactor,
        Point coldest,
        ImmutableList<Point> seams,
        ImmutableList<String> notes) {

    /** @throws IllegalStateException where a result is no number */
    public PairResult {
        Finite.bounds(coupling, "W/(m·K)", () -> "the coupling of a pair");
        Finite.number(common, "W/(m·K)", () -> "what a pair's surface loses");
        Finite.number(temperatureFactor, "", () -> "fRsi of a pair");
    }

    /**
     * W/(m·K) that both lose together more than the sum of their psi: the same in either system of dimensions, since both
     * measure one distance between them.
     *
     * @param one the first seam, computed alone
     * @param other the second
     */
    public Interval interaction(JunctionResult one, JunctionResult other) {
        return coupling.plus(one.coupling().times(-1))
                .plus(other.coupling().times(-1))
                .plus(common);
    }
}
