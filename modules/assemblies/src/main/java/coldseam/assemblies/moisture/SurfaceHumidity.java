package coldseam.assemblies.moisture;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Climate;

/**
 * What a surface of a given temperature factor bears at given temperatures.
 *
 * @param surfaceTemperature °C, θe + fRsi·(θi − θe)
 * @param humidityAtDewPoint indoor relative humidity, 0 to 1, from which the surface is wet
 * @param humidityAtMouldLimit indoor relative humidity, 0 to 1, from which the air at the surface is at 80 %, where mould grows
 */
public record SurfaceHumidity(double surfaceTemperature, double humidityAtDewPoint, double humidityAtMouldLimit) {

    /** Relative humidity at a surface above which mould grows (ISO 13788:2012 5.3, from memory). */
    public static final double MOULD_LIMIT = 0.8;

    /**
     * The indoor humidity a surface bears.
     *
     * @param temperatureFactor fRsi, at most 1
     * @param indoorTemperature °C
     * @param outdoorTemperature °C, below the indoor temperature
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static SurfaceHumidity of(double temperatureFactor, double indoorTemperature, double outdoorTemperature) {
        // Round-off of a solved field may carry a factor a hair above 1; more is a mistake.
        Arguments.within("a temperature factor", temperatureFactor, -10, 1 + 1e-9, "");
        colder(outdoorTemperature, indoorTemperature);
        double surface = outdoorTemperature + temperatureFactor * (indoorTemperature - outdoorTemperature);
        double dew = Math.min(1, SaturationPressure.at(surface) / SaturationPressure.at(indoorTemperature));
        return new SurfaceHumidity(surface, dew, MOULD_LIMIT * dew);
    }

    /**
     * The temperature factor a surface needs.
     *
     * @param indoorTemperature °C
     * @param outdoorTemperature °C, below the indoor temperature
     * @param indoorHumidity relative, 0 to 1
     * @param limit relative humidity allowed at the surface: {@link #MOULD_LIMIT}, or 1 for condensation, 0.6 for corrosion
     * @return fRsi, negative where the surface may be colder than outdoors
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static double temperatureFactorNeeded(
            double indoorTemperature, double outdoorTemperature, double indoorHumidity, double limit) {
        colder(outdoorTemperature, indoorTemperature);
        double pressure = vapourPressure(indoorTemperature, indoorHumidity);
        Arguments.between("the humidity allowed at a surface", limit, 0, 1 + 1e-12, "");
        double least = SaturationPressure.dewPoint(pressure / limit);
        return (least - outdoorTemperature) / (indoorTemperature - outdoorTemperature);
    }

    /**
     * The dew point of air.
     *
     * @param temperature °C
     * @param humidity relative, more than 0, up to 1
     * @return °C
     * @throws IllegalArgumentException where a value is outside its range
     */
    public static double dewPoint(double temperature, double humidity) {
        return SaturationPressure.dewPoint(vapourPressure(temperature, humidity));
    }

    /** Pa, of air of a temperature in °C and a relative humidity above 0, up to 1. */
    public static double vapourPressure(double temperature, double humidity) {
        Arguments.between("a relative humidity", humidity, 0, 1 + 1e-12, "");
        return humidity * SaturationPressure.at(temperature);
    }

    /** Pa, of a month's air. */
    static double vapourPressure(Climate.Mean air) {
        return vapourPressure(air.temperature(), air.humidity());
    }

    private static void colder(double outdoor, double indoor) {
        if (!(outdoor < indoor)) {
            throw new IllegalArgumentException("the outdoor temperature is " + outdoor + " °C; allowed is less than the"
                    + " indoor temperature, " + indoor + " °C. Correct the site's temperatures.");
        }
    }
}
