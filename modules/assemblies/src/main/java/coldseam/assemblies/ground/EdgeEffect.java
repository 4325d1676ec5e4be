package coldseam.assemblies.ground;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Body.EdgeInsulation;

/**
 * What insulation along the edge of a slab saves.
 *
 * <p>R' = Rn − dn/λ, d' = R'·λ; flat, of width D: ψ = −(λ/π)·(ln(D/dt + 1) − ln(D/(dt + d') + 1)); downwards, of depth D: the same
 * with 2D. Source: ISO 13370:2017 annex B (from memory).
 *
 * @param insulation that is meant
 * @param additionalResistance R', m²·K/W
 * @param additionalThickness d', m
 * @param psi ψg,e, W/(m·K), negative or zero
 */
public record EdgeEffect(
        EdgeInsulation insulation, double additionalResistance, double additionalThickness, double psi) {

    static EdgeEffect of(EdgeInsulation insulation, double groundConductivity, double dt) {
        double extent = Arguments.positive("the width or depth of edge insulation", insulation.extent(), "m");
        double thickness = Arguments.positive("the thickness of edge insulation", insulation.thickness(), "m");
        double conductivity = Arguments.positive(
                "the conductivity of edge insulation", insulation.material().conductivity(), "W/(m·K)");
        // A board that conducts better than the ground would add a negative thickness: it saves nothing.
        double additional = Math.max(0, thickness / conductivity - thickness / groundConductivity);
        double dPrime = additional * groundConductivity;
        double reach = insulation.vertical() ? 2 * extent : extent;
        double psi = -groundConductivity / Math.PI * (Math.log1p(reach / dt) - Math.log1p(reach / (dt + dPrime)));
        return new EdgeEffect(insulation, additional, dPrime, psi);
    }
}
