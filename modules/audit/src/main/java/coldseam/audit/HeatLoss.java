package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import java.util.OptionalDouble;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The heat-loss coefficient by transmission, ISO 13789, as an interval of the discretisation; formulas of standards count as
 * exact.
 *
 * @param system of dimensions
 * @param lines every part, in the order of the table; their sum is the total
 * @param total H_T, W/K
 * @param surfaces W/K, plane surfaces to outdoors and openings
 * @param ground W/K
 * @param unheated W/K, through unheated spaces
 * @param positiveJunctions W/K, of the junctions with psi above zero
 * @param negativeJunctions W/K, of the junctions with psi below zero
 * @param points W/K, of posts, brackets, pipes and fasteners that the house file lists
 * @param junctionShare of the junctions' sum in the total, 0 to 1, may be negative
 * @param otherSystemTotal H_T in the other dimension system, W/K
 * @param vertexRemainder W/K, of the total in the site's system minus the total in the other: what neither counts where
 *     three edges meet
 * @param correctionRemainder W/K, the rest of that difference: fasteners, gaps and rain are in the U of a surface and in
 *     no section, so the strips that only one system counts as surface differ by them; zero where U needs no correction
 * @param ventilation W/K, where asked for
 * @param designLoad W, at the design temperatures
 * @param annualLoss kWh, by degree days, without gains; empty without degree days
 */
public record HeatLoss(
        DimensionSystem system,
        ImmutableList<Line> lines,
        Interval total,
        double surfaces,
        double ground,
        double unheated,
        Interval positiveJunctions,
        Interval negativeJunctions,
        Interval points,
        Interval junctionShare,
        Interval otherSystemTotal,
        Interval vertexRemainder,
        double correctionRemainder,
        OptionalDouble ventilation,
        Interval designLoad,
        OptionalDouble annualLoss) {

    /**
     * Decimals of a W/K to which every line's loss is rounded before it is added: print the table with as many, and it adds
     * up exactly.
     */
    public static final int DECIMALS = 3;

    /**
     * One line of the table.
     *
     * @param group surfaces, openings, ground, unheated, junctions or points
     * @param name what it is
     * @param size m², m or a count
     * @param sizeUnit "m²", "m" or ""
     * @param transmittance W/(m²·K), W/(m·K) or W/K
     * @param factor temperature factor b
     * @param loss W/K
     */
    public record Line(
            Group group,
            String name,
            double size,
            String sizeUnit,
            Interval transmittance,
            double factor,
            Interval loss) {}

    /** Groups of the table. */
    public enum Group {
        SURFACES,
        OPENINGS,
        GROUND,
        UNHEATED,
        JUNCTIONS,
        POINTS
    }
}
