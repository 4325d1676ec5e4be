package coldseam.options;

import coldseam.conduction.Interval;
import coldseam.envelope.House;
import java.util.Optional;
import java.util.OptionalDouble;

/** What heat losses come to in a year by degree days, and in money at the house's price: no promise, gains are left out. */
public final class Yearly {

    private static final double HOURS_PER_DAY = 24;
    private static final double WATTS_PER_KILOWATT = 1000;

    private Yearly() {}

    /** kWh a year; empty without degree days. */
    public static Optional<Interval> energy(Interval wattsPerKelvin, House house) {
        OptionalDouble days = house.site().heatingDegreeDays();
        return days.isPresent()
                ? Optional.of(wattsPerKelvin.times(days.getAsDouble() * HOURS_PER_DAY / WATTS_PER_KILOWATT))
                : Optional.empty();
    }

    /** In the house's currency, a year; empty without degree days or a price of heat. */
    public static Optional<Interval> money(Interval wattsPerKelvin, House house) {
        OptionalDouble price = house.prices().heat();
        return price.isPresent()
                ? energy(wattsPerKelvin, house).map(kilowattHours -> kilowattHours.times(price.getAsDouble()))
                : Optional.empty();
    }
}
