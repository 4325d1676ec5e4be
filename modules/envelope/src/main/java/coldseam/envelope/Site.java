package coldseam.envelope;

import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.collections.api.set.ImmutableSet;

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
 * @param source of the outdoor design temperature and the degree days
 * @param climate by months; empty where the house file gives none
 * @param usual of which of these nobody says anything, so that what is usual stands for them
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
        Optional<String> source,
        Optional<Climate> climate,
        ImmutableSet<Usual> usual) {

    /** What a house file may leave out. */
    public enum Usual {
        INDOOR_HUMIDITY,
        HUMIDITY_BY_MONTHS,
        GROUND
    }

    private static final double HOURS_PER_DAY = 24;
    private static final double WATTS_PER_KILOWATT = 1000;

    /** °C, of the degree days that codes go by. */
    private static final double BASE = 18;

    /** Degree days for each K that the design temperature lies below {@link #BASE} (common practice, no source). */
    private static final double DAYS_PER_KELVIN = 100;

    /** K·d; limits of a climate that nobody tells are no laxer (judgement). */
    private static final double MODERATE = 2500;

    /** K·d, that limits of U go by: those given, those of the months, or as many as such a winter usually has. */
    public double daysOfLimits() {
        return heatingDegreeDays.orElseGet(() -> climate.isPresent() ? usualDays() : Math.max(MODERATE, usualDays()));
    }

    /** K·d, of the months, or that a place of such an outdoor temperature usually has. */
    public double usualDays() {
        return climate.map(year -> year.degreeDays(BASE)).orElseGet(this::daysOfTheCold);
    }

    /** K·d, that a place of such an outdoor temperature usually has, whatever its months are said to be. */
    public double daysOfTheCold() {
        return DAYS_PER_KELVIN * (BASE - outdoorTemperature);
    }

    /** kWh that a heat loss comes to in a year by degree days, gains left out; empty without them. */
    public OptionalDouble yearly(double wattsPerKelvin) {
        return heatingDegreeDays.isPresent()
                ? OptionalDouble.of(
                        wattsPerKelvin * heatingDegreeDays.getAsDouble() * HOURS_PER_DAY / WATTS_PER_KILOWATT)
                : OptionalDouble.empty();
    }
}
