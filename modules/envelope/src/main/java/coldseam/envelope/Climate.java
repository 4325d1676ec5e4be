package coldseam.envelope;

import java.time.Month;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * A year of outdoor air by monthly means, and how humid the rooms are meanwhile.
 *
 * @param source place or source, for the report
 * @param indoors how humid the rooms are
 * @param months January to December
 */
public record Climate(String source, Indoors indoors, ImmutableList<Mean> months) {

    private static final double DAYS_OF_A_MONTH = 365.25 / 12;

    /**
     * Checks the months.
     *
     * @throws IllegalArgumentException where there are not twelve, in order
     */
    public Climate {
        ImmutableList<Month> given = months.collect(Mean::month);
        if (!given.equals(Lists.immutable.with(Month.values()))) {
            throw new IllegalArgumentException("the climate \"" + source + "\" has the months " + given
                    + "; allowed are the twelve of a year from JANUARY on");
        }
    }

    /** K·d of a year by the months' means, below a base in °C. */
    public double degreeDays(double base) {
        return months.sumOfDouble(month -> Math.max(0, base - month.temperature())) * DAYS_OF_A_MONTH;
    }

    /**
     * The mean of a month.
     *
     * @param temperature °C
     * @param humidity relative, more than 0, up to 1
     */
    public record Mean(Month month, double temperature, double humidity) {}

    /** How humid the rooms are: a humidity class of ISO 13788:2012 annex A (from memory), or what the site says. */
    public enum Indoors {
        /** Class 1. */
        STORAGE,
        /** Class 2: offices, shops, dwellings that are known to be well ventilated. */
        WELL_VENTILATED,
        /** Class 3: dwellings of unknown occupancy. */
        DWELLING,
        /** Class 4: sports halls, kitchens, canteens. */
        KITCHEN,
        /** Class 5: laundries, breweries, swimming pools. */
        POOL,
        /** The site's indoor humidity, all year. */
        SITE_HUMIDITY
    }
}
