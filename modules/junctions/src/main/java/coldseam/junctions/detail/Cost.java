package coldseam.junctions.detail;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.UnitSystem;
import java.util.Locale;

/**
 * What a detail costs.
 *
 * @param perMetre for each metre of junction
 * @param currency such as "EUR"; empty where nobody gave one
 * @param source where the number comes from
 */
public record Cost(double perMetre, String currency, String source) {

    /** Such as {@code 35.00 EUR/m}. */
    public String text(UnitSystem units) {
        return String.format(
                Locale.ROOT,
                currency.isEmpty() ? "%.2f per %3$s, no currency given" : "%.2f %s/%s",
                perMetre / units.value(1, Dimension.LENGTH),
                currency,
                units.label(Dimension.LENGTH));
    }

    /** The same with its source: {@code 35.00 EUR/m (quotation of 3 October)}. */
    public String sourced(UnitSystem units) {
        return text(units) + " (" + source + ")";
    }
}
