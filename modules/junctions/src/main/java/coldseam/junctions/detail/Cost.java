package coldseam.junctions.detail;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.UnitSystem;

/**
 * What a detail costs.
 *
 * @param amount for each metre of a junction, or for each point
 * @param per what it is for
 * @param currency such as "EUR"; empty where nobody gave one
 * @param source where the number comes from
 */
public record Cost(double amount, Per per, String currency, String source) {

    /** What an amount is for. */
    public enum Per {
        METRE,
        POINT
    }

    /** For each metre of junction. */
    public static Cost perMetre(double amount, String currency, String source) {
        return new Cost(amount, Per.METRE, currency, source);
    }

    /** The same amount in a currency. */
    public Cost in(String other) {
        return new Cost(amount, per, other, source);
    }

    /** Such as {@code 35.00 EUR/m}, or {@code 12.00 EUR each}. */
    public String text(UnitSystem units) {
        if (per == Per.POINT) {
            return Format.of(currency.isEmpty() ? "%.2f each, no currency given" : "%.2f %s each", amount, currency);
        }
        return Format.of(
                currency.isEmpty() ? "%.2f per %3$s, no currency given" : "%.2f %s/%s",
                amount / units.value(1, Dimension.LENGTH),
                currency,
                units.label(Dimension.LENGTH));
    }

    /** The same with its source: {@code 35.00 EUR/m (quotation of 3 October)}. */
    public String sourced(UnitSystem units) {
        return text(units) + " (" + source + ")";
    }
}
