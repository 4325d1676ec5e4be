package coldseam.assemblies.moisture;

import coldseam.assemblies.internal.Arguments;
import java.time.Month;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The temperature factor that keeps surfaces free of mould all year.
 *
 * <p>Month by month: pi = pe + Δp; the surface's air may reach 80 %, so psat(θsi,min) = pi/0.8 and fRsi,min = (θsi,min − θe)/(θi − θe).
 * The month that needs most is the critical one. Source: ISO 13788:2012 clause 5 (from memory).
 *
 * @param months January to December
 * @param critical the month that needs most
 */
public record MonthlyTemperatureFactor(ImmutableList<Need> months, Need critical) {

    /**
     * What a month needs.
     *
     * @param month of the year
     * @param outdoorPressure pe, Pa
     * @param excess Δp, Pa
     * @param indoorPressure pi, Pa
     * @param indoorHumidity relative, 0 to 1
     * @param leastSaturation psat(θsi,min), Pa
     * @param leastTemperature θsi,min, °C
     * @param temperatureFactor fRsi,min; negative where a surface may be colder than outdoors
     */
    public record Need(
            Month month,
            double outdoorPressure,
            double excess,
            double indoorPressure,
            double indoorHumidity,
            double leastSaturation,
            double leastTemperature,
            double temperatureFactor) {}

    /**
     * The need of each month.
     *
     * @param climate outdoors
     * @param indoors how humid the rooms are
     * @param indoorTemperature θi, °C, above every month's
     * @throws IllegalArgumentException where a month is as warm as indoors
     */
    public static MonthlyTemperatureFactor of(MonthlyClimate climate, HumidityClass indoors, double indoorTemperature) {
        Arguments.within("the indoor temperature", indoorTemperature, -20, 60, "°C");
        ImmutableList<Need> months = climate.months().collect(air -> need(air, indoors, indoorTemperature));
        return new MonthlyTemperatureFactor(months, months.maxBy(Need::temperatureFactor));
    }

    private static Need need(MonthlyClimate.Air air, HumidityClass indoors, double indoor) {
        if (!(air.temperature() < indoor)) {
            throw new IllegalArgumentException("the mean temperature of " + air.month() + " is " + air.temperature()
                    + " °C; allowed is less than the indoor temperature, " + indoor + " °C");
        }
        double outdoorPressure = air.vapourPressure();
        double excess = indoors.excess(air.temperature());
        double pressure = outdoorPressure + excess;
        double saturation = pressure / SurfaceHumidity.MOULD_LIMIT;
        double least = SaturationPressure.dewPoint(saturation);
        return new Need(
                air.month(),
                outdoorPressure,
                excess,
                pressure,
                pressure / SaturationPressure.at(indoor),
                saturation,
                least,
                (least - air.temperature()) / (indoor - air.temperature()));
    }
}
