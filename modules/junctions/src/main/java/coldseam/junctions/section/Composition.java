package coldseam.junctions.section;

import coldseam.conduction.Section;
import coldseam.junctions.JunctionResult;
import coldseam.junctions.plan.SectionPlan;
import java.util.OptionalDouble;
import org.eclipse.collections.api.block.function.primitive.DoubleFunction;
import org.eclipse.collections.api.list.ImmutableList;
import org.locationtech.jts.geom.Geometry;

/**
 * A detail's section, ready to be solved.
 *
 * @param heatFlow section with the surface resistances of ISO 6946
 * @param surfaceTemperature section with 0.25 m²·K/W indoors (ISO 13788)
 * @param plan as drawn
 * @param legs the plane parts, first band first
 * @param factors temperature factor b of what each leg faces
 * @param surroundings the environments
 * @param faces the arrangement: what is seen of each conducting piece
 * @param insulation all that insulates, also past the section's ends
 * @param ends of the pen line: where it must begin and arrive
 * @param weakestNeighbour m²·K/W, the smaller of the plane parts' resistances
 * @param frameSetBack m, from the outer face of the wall that the frame stands in to the frame's; empty where the section has none,
 *     or does not draw that wall
 * @param notes what was simplified
 */
public record Composition(
        Section heatFlow,
        Section surfaceTemperature,
        SectionPlan plan,
        ImmutableList<JunctionResult.Leg> legs,
        ImmutableList<Double> factors,
        Surroundings surroundings,
        ImmutableList<Face> faces,
        Geometry insulation,
        ImmutableList<Geometry> ends,
        double weakestNeighbour,
        OptionalDouble frameSetBack,
        ImmutableList<String> notes) {

    /**
     * What is seen of a piece.
     *
     * @param area not empty
     * @param conductivity W/(m·K)
     * @param insulates whether it counts as insulation
     */
    public record Face(Geometry area, double conductivity, boolean insulates) {}

    /**
     * W/(m·K), what the plane parts lose by themselves, each by the temperature factor of what it faces.
     *
     * @param length m, which one of a part counts
     */
    public double ofLegs(DoubleFunction<JunctionResult.Leg> length) {
        double sum = 0;
        for (int i = 0; i < legs.size(); i++) {
            JunctionResult.Leg leg = legs.get(i);
            sum += factors.get(i) * leg.transmittance() * length.doubleValueOf(leg);
        }
        return sum;
    }
}
