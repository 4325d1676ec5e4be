package coldseam.assemblies.load;

import coldseam.assemblies.internal.Arguments;

/**
 * A concentrated load on a large slab that lies on insulation.
 *
 * <p>D = E·h³/(12·(1 − ν²)); l = (D/k)^¼; under the load p = P/(8·l²) = (P/8)·√(k/D) and w = p/k. Limits: an infinite plate, a load
 * far from its edges (a radius of stiffness l and more away; at edges and corners the pressure is several times as high). Source: H.
 * Hertz 1884 and H. M. Westergaard 1926, interior load (from memory).
 *
 * @param load P, N
 * @param stiffness D, N·m
 * @param modulus k, N/m³, of the base: a board's modulus of elasticity over its thickness; 1/k adds for boards on one another
 */
public record PlateOnElasticBase(double load, double stiffness, double modulus) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException where one is outside its range
     */
    public PlateOnElasticBase {
        Arguments.positive("a load on a slab", load, "N");
        Arguments.positive("the stiffness of a slab", stiffness, "N·m");
        Arguments.positive("the modulus of the base under a slab", modulus, "N/m³");
    }

    /**
     * The stiffness of a slab.
     *
     * @param elasticity E, Pa
     * @param thickness h, m
     * @param poisson ν, 0 to 0.5
     * @return D, N·m
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static double stiffness(double elasticity, double thickness, double poisson) {
        Arguments.positive("the modulus of elasticity of a slab", elasticity, "Pa");
        Arguments.positive("the thickness of a slab", thickness, "m");
        Arguments.within("Poisson's ratio of a slab", poisson, 0, 0.5, "");
        return elasticity * thickness * thickness * thickness / (12 * (1 - poisson * poisson));
    }

    /** l, m, the radius of relative stiffness. */
    public double radius() {
        return Math.sqrt(Math.sqrt(stiffness / modulus));
    }

    /** p, Pa, the greatest pressure on the base. */
    public double pressure() {
        return load / 8 * Math.sqrt(modulus / stiffness);
    }

    /** w, m, under the load. */
    public double deflection() {
        return load / (8 * Math.sqrt(modulus * stiffness));
    }
}
