package coldseam.envelope;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Climate, ground and conventions.
 *
 * @param indoorTemperature °C, design
 * @param outdoorTemperature °C, design
 * @param indoorHumidity relative, 0 to 1, at the design condition
 * @param heatingDegreeDays K·d
 * @param groundName for the report, such as "clay or silt"
 * @param groundConductivity W/(m·K)
 * @param dimensions in use
 * @param ventilationHeatLoss W/K, where ventilation is asked for
 * @param climate by months; empty where the house file gives none
 */
public record Site(
        double indoorTemperature,
        double outdoorTemperature,
        double indoorHumidity,
        OptionalDouble heatingDegreeDays,
        String groundName,
        double groundConductivity,
        DimensionSystem dimensions,
        OptionalDouble ventilationHeatLoss,
        Optional<Climate> climate) {

    private static final double HOURS_PER_DAY = 24;
    private static final double WATTS_PER_KILOWATT = 1000;

    /** kWh that a heat loss comes to in a year by degree days, gains left out; empty without them. */
    public OptionalDouble yearly(double wattsPerKelvin) {
        return heatingDegreeDays.isPresent()
                ? OptionalDouble.of(
                        wattsPerKelvin * heatingDegreeDays.getAsDouble() * HOURS_PER_DAY / WATTS_PER_KILOWATT)
                : OptionalDouble.empty();
    }
}
