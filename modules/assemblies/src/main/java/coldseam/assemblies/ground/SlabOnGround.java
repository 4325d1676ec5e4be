package coldseam.assemblies.ground;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Body.EdgeInsulation;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A slab on the ground: U = U0 + 2·ψg,e/B'.
 *
 * <p>U0 for dt &lt; B': 2λ/(πB' + dt)·ln(πB'/dt + 1); otherwise λ/(0.457B' + dt). Source: ISO 13370:2017 clause 7.2 (from memory).
 *
 * @param floor area, perimeter, walls and ground
 * @param floorResistance Rf, m²·K/W, of the build-up without surfaces
 * @param equivalentThickness dt, m
 * @param unedgedTransmittance U0, W/(m²·K), without edge insulation
 * @param edge insulation that counts: of several the one that saves most, as the standard asks
 */
public record SlabOnGround(
        GroundFloor floor,
        double floorResistance,
        double equivalentThickness,
        double unedgedTransmittance,
        Optional<EdgeEffect> edge) {

    /**
     * The heat loss of a slab.
     *
     * @param floor area, perimeter, walls and ground
     * @param floorResistance Rf, m²·K/W, zero or more; thin covers and dense concrete may be left out of it
     * @param edges insulation along the edge; may be empty
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static SlabOnGround of(GroundFloor floor, double floorResistance, ImmutableList<EdgeInsulation> edges) {
        Arguments.notNegative("the resistance of a floor on ground", floorResistance, "m²·K/W");
        double dt = floor.equivalentThickness(floorResistance);
        Optional<EdgeEffect> edge = edges.collect(each -> EdgeEffect.of(each, floor.groundConductivity(), dt))
                .minByOptional(EdgeEffect::psi);
        return new SlabOnGround(floor, floorResistance, dt, floor.transmittance(dt), edge);
    }

    /** U, W/(m²·K), of the floor. */
    public double transmittance() {
        return unedgedTransmittance + 2 * edge.map(EdgeEffect::psi).orElse(0.0) / floor.characteristicDimension();
    }
}
