package coldseam.envelope.file.house;

import coldseam.files.quantity.Format;
import coldseam.files.quantity.Price;
import java.util.Optional;
import org.eclipse.collections.api.set.ImmutableSet;
import org.eclipse.collections.impl.factory.Sets;

/**
 * What prices there are, by judgement, no source: so wide that only another unit, or a slip of the point, lies outside.
 *
 * <p>Held to it are currencies of which one buys about as much as one of the others; what others buy changes too much to be known
 * here, and they are not checked.
 */
enum PriceRange {
    HEAT(Price.Per.HEAT, "the price of heat is one that is paid somewhere", "kWh", 0.01, 1, "0.05 to 0.4"),
    METRE(Price.Per.METRE, "a price of length is one that is paid for building", "m", 0, 2000, "5 to 200"),
    SQUARE_METRE(
            Price.Per.SQUARE_METRE, "a price of area is one that is paid for building", "m²", 0, 5000, "20 to 800"),
    PIECE(Price.Per.PIECE, "a price of one is one that is paid for building", "each", 0, 20000, "5 to 500");

    private static final ImmutableSet<String> ALIKE =
            Sets.immutable.of("EUR", "€", "USD", "$", "GBP", "£", "CHF", "CAD", "AUD", "NZD");

    private final Price.Per of;
    private final String asked;
    private final String per;
    private final double least;
    private final double most;
    private final String usual;

    PriceRange(Price.Per of, String asked, String per, double least, double most, String usual) {
        this.of = of;
        this.asked = asked;
        this.per = per;
        this.least = least;
        this.most = most;
        this.usual = usual;
    }

    /** What is asked. */
    String asked() {
        return asked;
    }

    /** @throws coldseam.files.quantity.UnreadableException where it is no such price */
    Price price(String written) {
        return of.parse(written);
    }

    /** What is allowed, where a price is not; else empty. */
    Optional<String> unless(Price price) {
        return ALIKE.contains(price.currency()) && !(price.each() >= least && price.each() <= most)
                ? Optional.of(
                        Format.of("%s to %s %s; usual: %s", number(least), number(most), unit(price.currency()), usual))
                : Optional.empty();
    }

    private String unit(String currency) {
        return per.equals("each") ? currency + " each" : currency + "/" + per;
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
