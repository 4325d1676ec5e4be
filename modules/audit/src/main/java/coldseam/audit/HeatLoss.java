package coldseam.audit;

import coldseam.conduction.Finite;
import coldseam.conduction.Interval;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Opening;
import coldseam.envelope.shell.Surface;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The heat-loss coefficient by transmission, ISO 13789, as an interval of the discretisation; formulas of standards count as
 * exact.
 *
 * @param lines every part, in the order of the table; their sum is the total
 * @param total H_T, W/K
 * @param surfaces W/K, plane surfaces to outdoors and openings
 * @param ground W/K
 * @param unheated W/K, through unheated spaces
 * @param positiveJunctions W/K, of the junctions with psi above zero
 * @param negativeJunctions W/K, of the junctions with psi below zero
 * @param pairs W/K, that seams which touch lose more than each alone, as far as they are computed together; below zero for less
 * @param points W/K, of posts, brackets, pipes and fasteners that the house file lists
 * @param vertices W/K, of the corners where three or more edges meet, as far as they are computed
 * @param junctionShare of the junctions' sum in the total, 0 to 1, may be negative
 * @param otherSystemTotal H_T in the other dimension system, W/K
 * @param vertexRemainder W/K, of the total in the site's system minus the total in the other: what neither counts at
 *     those vertices that are not computed
 * @param correctionRemainder W/K, the rest of that difference: fasteners, gaps and rain are in the U of a surface and in
 *     no section, so the strips that only one system counts as surface differ by them, as they do in the
 *     ground at seams that are drawn without soil; zero where U needs no correction and nothing is in the ground
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
        Interval pairs,
        Interval points,
        Interval vertices,
        Interval junctionShare,
        Interval otherSystemTotal,
        Interval vertexRemainder,
        double correctionRemainder,
        OptionalDouble ventilation,
        Interval designLoad,
        OptionalDouble annualLoss) {

    /** @throws IllegalStateException where a sum is no number */
    public HeatLoss {
        Finite.bounds(total, "W/K", () -> "H_T");
        Finite.bounds(otherSystemTotal, "W/K", () -> "H_T in the other dimensions");
        Finite.bounds(designLoad, "W", () -> "the design load");
    }

    /**
     * Decimals of a W/K to which every line's loss is rounded before it is added: print the table with as many, and it adds
     * up exactly.
     */
    public static final int DECIMALS = 3;

    /**
     * One line of the table.
     *
     * @param group that it belongs to, which says its dimensions
     * @param part of the house that loses it
     * @param size m², m or a count, by the group
     * @param transmittance W/(m²·K), W/(m·K) or W/K, by the group
     * @param factor temperature factor b
     * @param loss W/K, rounded as {@link #DECIMALS} says
     */
    public record Line(Group group, Part part, double size, Interval transmittance, double factor, Interval loss) {

        /** @throws IllegalStateException where the loss is no number, naming the part */
        public Line {
            Finite.bounds(loss, "W/K", () -> "the loss of " + part);
        }

        /** Whether its factor is 1 since a computed psi holds those of its surfaces already. */
        public boolean factorInPsi() {
            return part instanceof Part.OfJunction junction && junction.edges().anySatisfy(JunctionRow::factorInPsi);
        }

        /** W/K, before it is rounded: size times transmittance times factor. */
        public Interval unrounded() {
            return transmittance.times(size * factor);
        }
    }

    /** What a line is about. */
    public sealed interface Part {

        /** A plane surface. */
        record OfSurface(Surface surface) implements Part {}

        /** A window or a door. */
        record OfOpening(Opening opening) implements Part {}

        /** Edges of one kind with one psi from one source, at least one. */
        record OfJunction(ImmutableList<JunctionRow> edges) implements Part {}

        /** What two seams that touch lose more than each alone, at all places of one sheet. */
        record OfPairs(PairSheet sheet) implements Part {}

        /** A set of points. */
        record OfPoints(PointRow points) implements Part {}

        /** Vertices of one sheet. */
        record OfVertices(VertexSheet sheet) implements Part {}

        /** What its alternative makes of it. */
        default <T> T match(
                Function<OfSurface, T> plane,
                Function<OfOpening, T> window,
                Function<OfJunction, T> junction,
                Function<OfPairs, T> pairs,
                Function<OfPoints, T> points,
                Function<OfVertices, T> vertices) {
            if (this instanceof OfSurface it) {
                return plane.apply(it);
            }
            if (this instanceof OfOpening it) {
                return window.apply(it);
            }
            if (this instanceof OfJunction it) {
                return junction.apply(it);
            }
            if (this instanceof OfPairs it) {
                return pairs.apply(it);
            }
            return this instanceof OfPoints it ? points.apply(it) : vertices.apply((OfVertices) this);
        }
    }

    /** Groups of the table. */
    public enum Group {
        SURFACES(Optional.of(Dimension.AREA), Dimension.TRANSMITTANCE),
        OPENINGS(Optional.of(Dimension.AREA), Dimension.TRANSMITTANCE),
        GROUND(Optional.of(Dimension.AREA), Dimension.TRANSMITTANCE),
        UNHEATED(Optional.of(Dimension.AREA), Dimension.TRANSMITTANCE),
        JUNCTIONS(Optional.of(Dimension.LENGTH), Dimension.LINEAR_TRANSMITTANCE),
        PAIRS(Optional.of(Dimension.LENGTH), Dimension.LINEAR_TRANSMITTANCE),
        POINTS(Optional.empty(), Dimension.POINT_TRANSMITTANCE),
        VERTICES(Optional.empty(), Dimension.POINT_TRANSMITTANCE);

        private final Optional<Dimension> size;
        private final Dimension transmittance;

        Group(Optional<Dimension> size, Dimension transmittance) {
            this.size = size;
            this.transmittance = transmittance;
        }

        /** Of what its lines count; empty where they are counted by the piece. */
        public Optional<Dimension> size() {
            return size;
        }

        /** Of what each unit of size loses. */
        public Dimension transmittance() {
            return transmittance;
        }
    }
}
