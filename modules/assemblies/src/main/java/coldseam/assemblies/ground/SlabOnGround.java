package coldseam.assemblies.ground;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Body.EdgeInsulation;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A slab on the ground: U = U0 + 2·ψg,e/B'.
 *
 * <p>U0 for dt &lt; B': 2λ/(πB' + dt)·ln(πB'/dt + 1); otherwise λ/(0.457B' + dt). Source: ISO 13370:2017 clause 7.2 (from memory).
 *
 * <p>What insulation along the edge saves: R' = Rn − dn/λ, d' = R'·λ; flat, of width D: ψg,e = −(λ/π)·(ln(D/dt + 1) −
 * ln(D/(dt + d') + 1)); downwards, of depth D: the same with 2D. Source: the same, annex B (from memory).
 *
 * @param floor area, perimeter, walls and ground
 * @param equivalentThickness dt, m
 * @param unedgedTransmittance U0, W/(m²·K), without edge insulation
 * @param edgePsi ψg,e, W/(m·K), negative or zero: of several the one that saves most, as the standard asks
 */
public record SlabOnGround(GroundFloor floor, double equivalentThickness, double unedgedTransmittance, double edgePsi)
        implements FloorOnGround {

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
        double psi = edges.collectDouble(each -> psi(each, floor.groundConductivity(), dt))
                .minIfEmpty(0);
        return new SlabOnGround(floor, dt, floor.transmittance(dt), psi);
    }

    private static double psi(EdgeInsulation insulation, double groundConductivity, double dt) {
        double extent = Arguments.positive("the width or depth of edge insulation", insulation.extent(), "m");
        double thickness = Arguments.positive("the thickness of edge insulation", insulation.thickness(), "m");
        double conductivity = Arguments.positive(
                "the conductivity of edge insulation", insulation.material().conductivity(), "W/(m·K)");
        // A board that conducts better than the ground would add a negative thickness: it saves nothing.
        double additional = Math.max(0, thickness / conductivity - thickness / groundConductivity);
        double dPrime = additional * groundConductivity;
        double reach = insulation.vertical() ? 2 * extent : extent;
        return -groundConductivity / Math.PI * (Math.log1p(reach / dt) - Math.log1p(reach / (dt + dPrime)));
    }

    @Override
    public double transmittance() {
        return unedgedTransmittance + 2 * edgePsi / floor.characteristicDimension();
    }
}
