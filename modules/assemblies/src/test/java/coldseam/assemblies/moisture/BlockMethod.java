package coldseam.assemblies.moisture;

import coldseam.assemblies.internal.Arguments;

/**
 * Condensation by one block of winter and one of drying: the quick check of DIN 4108-3 (from memory), here to hold the stack and
 * the profile against published examples; the audit follows the months.
 *
 * <p>Winter: 20 °C and 50 % indoors, −5 °C and 80 % outdoors, 90 days, usually with Rsi 0.25. Drying: 1200 Pa on both sides and a
 * fixed saturation pressure in the wet planes, 90 days.
 *
 * @param wetted kg/m² that condenses in winter
 * @param evaporated kg/m² that could dry afterwards; infinite where nothing condenses
 * @param planeTemperature °C, of the plane that gains most; NaN where nothing condenses
 * @param plane its name; empty where nothing condenses
 */
public record BlockMethod(double wetted, double evaporated, double planeTemperature, String plane) {

    /** kg/m², the most that may condense on a layer that does not absorb water: DIN 4108-3 (from memory). */
    static final double MOST_NOT_ABSORBING = 0.5;

    /** Pa, in a wall's wet plane while it dries. */
    public static final double DRYING_WALL = 1700;

    /** Pa, in a roof's wet plane while it dries. */
    public static final double DRYING_ROOF = 2000;

    private static final double SECONDS = 90 * 86400.0;
    private static final double INDOOR = 20;
    private static final double INDOOR_HUMIDITY = 0.5;
    private static final double OUTDOOR = -5;
    private static final double OUTDOOR_HUMIDITY = 0.8;
    private static final double DRYING_AIR = 1200;

    /**
     * Both blocks of a stack.
     *
     * @param dryingSaturation Pa, in the wet planes, more than 1200: {@link #DRYING_WALL} or {@link #DRYING_ROOF}
     * @throws IllegalArgumentException where the pressure is too low to dry
     */
    public static BlockMethod of(VapourStack stack, double dryingSaturation) {
        Arguments.between("the saturation pressure while drying", dryingSaturation, DRYING_AIR, 1e5, "Pa");
        double[] temperatures = stack.temperatures(INDOOR, OUTDOOR);
        double[] saturation = new double[temperatures.length];
        for (int i = 0; i < saturation.length; i++) {
            saturation[i] = SaturationPressure.at(temperatures[i]);
        }
        double[] x = stack.positions();
        VapourProfile winter = VapourProfile.of(
                x,
                saturation,
                new boolean[x.length],
                SurfaceHumidity.vapourPressure(INDOOR, INDOOR_HUMIDITY),
                SurfaceHumidity.vapourPressure(OUTDOOR, OUTDOOR_HUMIDITY));
        double sum = 0;
        int wettest = -1;
        int innermost = -1;
        int outermost = -1;
        for (int i = 1; i < x.length - 1; i++) {
            double gain = winter.gain(i);
            if (gain > 0) {
                sum += gain;
                innermost = innermost < 0 ? i : innermost;
                outermost = i;
                wettest = wettest < 0 || gain > winter.gain(wettest) ? i : wettest;
            }
        }
        if (wettest < 0) {
            return new BlockMethod(0, Double.POSITIVE_INFINITY, Double.NaN, "");
        }
        double drying = VapourProfile.AIR_PERMEABILITY
                * (dryingSaturation - DRYING_AIR)
                * (1 / x[innermost] + 1 / (x[x.length - 1] - x[outermost]));
        return new BlockMethod(sum * SECONDS, drying * SECONDS, temperatures[wettest], stack.plane(wettest));
    }

    /** Whether no more condenses than the limit and all of it dries. */
    public boolean passes(double limit) {
        return wetted <= limit && evaporated >= wetted;
    }
}
