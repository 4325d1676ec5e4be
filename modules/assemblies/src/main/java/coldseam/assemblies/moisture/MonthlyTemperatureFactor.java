package coldseam.assemblies.moisture;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Climate;
import java.time.Month;
import java.util.Optional;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * The temperature factor that keeps surfaces free of mould all year.
 *
 * <p>Month by month: pi = pe + Δp; the surface's air may reach 80 %, so psat(θsi,min) = pi/0.8 and fRsi,min = (θsi,min − θe)/(θi − θe).
 * The month that needs most is the critical one. Source: ISO 13788:2012 clause 5 (from memory).
 *
 * @param months those that count, in order
 * @param critical the month that needs most
 */
public record MonthlyTemperatureFactor(ImmutableList<Need> months, Need critical) {

    /**
     * K below the indoor temperature, from which a month counts as heated (judgement: nearer than that every surface is
     * about as warm as the room, and what the outdoor air brings along decides).
     */
    public static final double HEATED_BELOW = 5;

    /**
     * What a month needs.
     *
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
    public static MonthlyTemperatureFactor of(Climate climate, IndoorAir indoors, double indoorTemperature) {
        Arguments.within("the indoor temperature", indoorTemperature, -20, 60, "°C");
        ImmutableList<Need> months = climate.months().collect(air -> need(air, indoors, indoorTemperature));
        return new MonthlyTemperatureFactor(months, months.maxBy(Need::temperatureFactor));
    }

    /**
     * The need of the months in which the house is heated: those at least {@link #HEATED_BELOW} colder than indoors.
     *
     * @param climate outdoors
     * @param indoors how humid the rooms are
     * @param indoorTemperature θi, °C
     * @return empty where no month is so cold
     */
    public static Optional<MonthlyTemperatureFactor> ofHeated(
            Climate climate, IndoorAir indoors, double indoorTemperature) {
        Arguments.within("the indoor temperature", indoorTemperature, -20, 60, "°C");
        ImmutableList<Need> months = climate.months()
                .select(air -> air.temperature() <= indoorTemperature - HEATED_BELOW)
                .collect(air -> need(air, indoors, indoorTemperature));
        return months.maxByOptional(Need::temperatureFactor)
                .map(critical -> new MonthlyTemperatureFactor(months, critical));
    }

    private static Need need(Climate.Mean air, IndoorAir indoors, double indoor) {
        if (!(air.temperature() < indoor)) {
            throw new IllegalArgumentException("the mean temperature of " + air.month() + " is " + air.temperature()
                    + " °C; allowed is less than the indoor temperature, " + indoor + " °C");
        }
        double outdoorPressure = SurfaceHumidity.vapourPressure(air);
        double pressure = indoors.vapourPressure(air, indoor);
        double excess = pressure - outdoorPressure;
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
