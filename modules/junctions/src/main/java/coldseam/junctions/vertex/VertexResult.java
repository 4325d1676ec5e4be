package coldseam.junctions.vertex;

import coldseam.conduction.Interval;
import coldseam.conduction.solid.BodySolution;
import coldseam.conduction.solid.Place;
import coldseam.envelope.DimensionSystem;
import coldseam.envelope.Material;
import coldseam.junctions.detail.Detail;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A vertex, computed.
 *
 * <p>chi = L3D − Σ psi·l − Σ U·A (ISO 10211:2017, 3.4, from memory) with the psi of the body's own cut planes, so that it is
 * what the corner alone adds; its lengths and areas are those of one dimension system, and it may be added only to psi and
 * areas of the same.
 *
 * @param setup what it was computed for
 * @param corner its own detail that it is built by; empty where its edges' sections say it all
 * @param heat what it adds to the heat loss; empty on and in the ground, where the U by ISO 13370 holds corners, and where layers
 *     change in the plane of a wall
 * @param surface the solution that temperatures are read from, with 0.25 m²·K/W indoors
 * @param temperatureFactor fRsi (ISO 13788); an estimate
 * @param coldest where it is lowest: m along each axis from where the inner faces meet
 * @param notes what was simplified, in plain words
 * @param inDoubt where the details leave open which of two materials goes on past the other, which was counted, in plain words
 */
public record VertexResult(
        VertexSetup setup,
        Optional<Own> corner,
        Optional<Heat> heat,
        BodySolution surface,
        double temperatureFactor,
        Place coldest,
        ImmutableList<String> notes,
        ImmutableList<String> inDoubt) {

    /**
     * A corner's own detail with what it is made of.
     *
     * @param detail of a corner
     * @param materials that its boxes are filled with, in their order
     */
    public record Own(Detail detail, ImmutableList<Material> materials) {}

    /**
     * What a vertex adds to the heat loss.
     *
     * @param coupling L3D of what is drawn, W/K: of the rooms with each space outside, by its temperature factor
     * @param external chi in external dimensions, W/K
     * @param internal chi in internal dimensions, W/K
     */
    public record Heat(BodySolution solution, Interval coupling, Sloped external, Sloped internal) {

        /** chi in external dimensions, W/K. */
        public Interval chiExternal() {
            return external.value();
        }

        /** chi in internal dimensions, W/K. */
        public Interval chiInternal() {
            return internal.value();
        }

        /** chi in a dimension system, W/K. */
        public Interval chi(DimensionSystem system) {
            return sloped(system).value();
        }

        /** chi in a dimension system, W/K, with how it follows the conductivities. */
        public Sloped sloped(DimensionSystem system) {
            return system == DimensionSystem.EXTERNAL ? external : internal;
        }
    }

    /** chi in a dimension system, W/K; nothing where only temperatures are computed. */
    public Interval chi(DimensionSystem system) {
        return heat.map(each -> each.chi(system)).orElse(Interval.of(0));
    }
}
