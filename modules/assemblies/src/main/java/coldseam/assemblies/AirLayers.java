package coldseam.assemblies;

import coldseam.assemblies.internal.Arguments;

/**
 * Resistance of an unventilated air layer: R = 1/(ha + E·hr0).
 *
 * <p>ha: convection and conduction, W/(m²·K), from the layer's thickness d (m): upwards max(1.95, 0.025/d), horizontal
 * max(1.25, 0.025/d), downwards max(0.12·d^−0.44, 0.025/d). E = 1/(1/ε1 + 1/ε2 − 1). hr0 = 4σT³, the black-body radiation
 * coefficient at the mean temperature. Source: ISO 6946:2017 annex D (from memory).
 *
 * <p>Limits: thickness up to 0.3 m and less than a tenth of the layer's other two dimensions; thicker spaces are taken as 0.3 m
 * thick, which the transmittance reports as a warning.
 */
public final class AirLayers {

    /** m; beyond it the standard asks for a heat balance of the space. */
    static final double THICKEST = 0.3;

    /** Emissivity of an ordinary building surface. */
    public static final double DULL = 0.9;

    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** K, the mean temperature of 10 °C at which the standard tabulates. */
    private static final double MEAN_TEMPERATURE = 283.15;

    private AirLayers() {}

    /**
     * The resistance of an unventilated air layer between one dull surface and another.
     *
     * @param thickness m, greater than zero
     * @param emissivity of the other surface, greater than 0 up to 1; 0.9 where both are dull
     * @return m²·K/W
     * @throws IllegalArgumentException outside these ranges
     */
    public static double resistance(double thickness, HeatFlow direction, double emissivity) {
        Arguments.positive("the thickness of an air layer", thickness, "m");
        if (!(emissivity > 0)) {
            Arguments.positive("the emissivity of an air layer's face", emissivity, "");
        }
        Arguments.within("the emissivity of an air layer's face", emissivity, 0, 1, "");
        double d = Math.min(thickness, THICKEST);
        double radiation = 4 * STEFAN_BOLTZMANN * Math.pow(MEAN_TEMPERATURE, 3);
        double exchange = 1 / (1 / DULL + 1 / emissivity - 1);
        return 1 / (convection(d, direction) + exchange * radiation);
    }

    private static double convection(double d, HeatFlow direction) {
        double moving = switch (direction) {
            case UPWARDS -> 1.95;
            case HORIZONTAL -> 1.25;
            case DOWNWARDS -> 0.12 * Math.pow(d, -0.44);
        };
        return Math.max(moving, 0.025 / d);
    }
}
