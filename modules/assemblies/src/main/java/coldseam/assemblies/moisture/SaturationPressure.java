package coldseam.assemblies.moisture;

import coldseam.assemblies.internal.Arguments;

/**
 * Saturation vapour pressure over water (θ ≥ 0 °C) and ice.
 *
 * <p>p = 610.5·exp(17.269·θ/(237.3 + θ)) from 0 °C, 610.5·exp(21.875·θ/(265.5 + θ)) below. Source: ISO 13788:2012 annex E (from
 * memory).
 */
public final class SaturationPressure {

    /** Pa, at 0 °C. */
    private static final double AT_ZERO = 610.5;

    private static final double WATER = 17.269;
    private static final double WATER_POLE = 237.3;
    private static final double ICE = 21.875;
    private static final double ICE_POLE = 265.5;

    private SaturationPressure() {}

    /**
     * The pressure at which air is saturated.
     *
     * @param temperature °C, −100 to 100
     * @return Pa
     * @throws IllegalArgumentException outside this range
     */
    public static double at(double temperature) {
        Arguments.within("a temperature", temperature, -100, 100, "°C");
        return temperature >= 0
                ? AT_ZERO * Math.exp(WATER * temperature / (WATER_POLE + temperature))
                : AT_ZERO * Math.exp(ICE * temperature / (ICE_POLE + temperature));
    }

    /**
     * The temperature at which a vapour pressure saturates: the dew point.
     *
     * @param pressure Pa, greater than zero
     * @return °C
     * @throws IllegalArgumentException where the pressure is not positive
     */
    public static double dewPoint(double pressure) {
        double log = Math.log(Arguments.positive("a vapour pressure", pressure, "Pa") / AT_ZERO);
        return log >= 0 ? WATER_POLE * log / (WATER - log) : ICE_POLE * log / (ICE - log);
    }
}
