package coldseam.assemblies;

import coldseam.assemblies.internal.Arguments;

/** A field cut to falls that no house file describes: ISO 6946:2017 annex E (from memory). */
public final class TaperedTriangle {

    private TaperedTriangle() {}

    /**
     * U of a triangle whose corners have three different thicknesses, the least of them none.
     *
     * @param rest R0, m²·K/W, greater than zero
     * @param middle R1, m²·K/W, greater than zero
     * @param greatest R2, m²·K/W, more than R1
     * @return W/(m²·K)
     * @throws IllegalArgumentException outside these ranges
     */
    public static double transmittance(double rest, double middle, double greatest) {
        double r0 = Arguments.positive("the resistance beside a tapered layer", rest, "m²·K/W");
        double r2 = Arguments.positive("the greatest resistance of a tapered layer", greatest, "m²·K/W");
        double r1 = Arguments.between("the middle resistance of a tapered layer", middle, 0, r2, "m²·K/W");
        double sum = r0 * r1 * Math.log1p(r2 / r0)
                - r0 * r2 * Math.log1p(r1 / r0)
                + r1 * r2 * Math.log((r0 + r2) / (r0 + r1));
        return 2 * sum / (r1 * r2 * (r2 - r1));
    }
}
