package coldseam.assemblies.moisture;

import coldseam.assemblies.internal.Arguments;
import coldseam.envelope.Climate;
import java.time.Month;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A year of outdoor air.
 *
 * @param name place or source
 * @param months January to December
 */
public record MonthlyClimate(String name, ImmutableList<Air> months) {

    /**
     * Checks the months.
     *
     * @throws IllegalArgumentException where there are not twelve, in order
     */
    public MonthlyClimate {
        boolean ordered = months.size() == 12;
        for (int i = 0; ordered && i < 12; i++) {
            ordered = months.get(i).month() == Month.of(i + 1);
        }
        if (!ordered) {
            throw new IllegalArgumentException("the climate \"" + name + "\" has the months "
                    + months.collect(Air::month) + "; allowed are the twelve of a year from JANUARY on");
        }
    }

    /** The climate of a house file. */
    public static MonthlyClimate of(Climate climate) {
        return new MonthlyClimate(
                climate.source(),
                climate.months()
                        .collectWithIndex((mean, i) -> new Air(Month.of(i + 1), mean.temperature(), mean.humidity())));
    }

    /**
     * The mean of a month.
     *
     * @param month of the year
     * @param temperature °C
     * @param humidity relative, more than 0, up to 1
     */
    public record Air(Month month, double temperature, double humidity) {

        /**
         * Checks the values.
         *
         * @throws IllegalArgumentException where one is outside its range
         */
        public Air {
            Arguments.within("the mean temperature of " + month, temperature, -60, 60, "°C");
            Arguments.between("the mean relative humidity of " + month, humidity, 0, 1 + 1e-12, "");
        }

        /** pe, Pa. */
        public double vapourPressure() {
            return SurfaceHumidity.vapourPressure(temperature, humidity);
        }

        /** Seconds in the month, February with 28 days. */
        double seconds() {
            return month.length(false) * 86400.0;
        }
    }
}
