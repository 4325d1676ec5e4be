package coldseam.files.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A price.
 *
 * @param each currency units for each kWh, m or m², or for one thing
 * @param currency as written
 */
public record Price(double each, String currency) {

    private static final String AMOUNT = "(" + QuantityParser.DIGITS + ")\\s*([^\\d\\s/]{1,4})";
    private static final Pattern BY_MEASURE = Pattern.compile(AMOUNT + "\\s*/\\s*(\\S+)");
    private static final Pattern BY_PIECE = Pattern.compile(AMOUNT + "\\s+each");

    public enum Per {
        /** Of energy; of a kWh and a therm thousandths are paid. */
        HEAT("a price of heat", "an energy, such as 0.12 EUR/kWh or 1.40 USD/therm", Dimension.ENERGY),
        METRE("a price of length", "a length, such as 35 EUR/m or 11 USD/ft", Dimension.LENGTH),
        SQUARE_METRE("a price of area", "an area, such as 90 EUR/m² or 8 USD/ft²", Dimension.AREA),
        PIECE("a price of one", "the word each, such as 85 EUR each", null);

        private final String noun;
        private final String allowed;
        private final Dimension of;

        Per(String noun, String measured, Dimension of) {
            this.noun = noun;
            this.allowed = "an amount, a currency and " + measured;
            this.of = of;
        }

        /**
         * Reads a price such as {@code 35 EUR/m}.
         *
         * @throws UnreadableException where it is none of these
         */
        public Price parse(String written) {
            QuantityParser.refuseLong(written, noun, () -> allowed);
            Matcher match = (this == PIECE ? BY_PIECE : BY_MEASURE).matcher(QuantityParser.plain(written));
            if (match.matches()) {
                if (this != HEAT) {
                    QuantityParser.refusePointed(match.group(1), written, noun, () -> allowed);
                }
                double amount = Double.parseDouble(match.group(1));
                Optional<Double> each = this == PIECE ? Optional.of(amount) : each(amount, match.group(3));
                if (each.filter(Double::isFinite).isPresent()) {
                    return new Price(each.get(), match.group(2));
                }
            }
            throw new UnreadableException(noun + " is needed", written, allowed, "write it so");
        }

        private Optional<Double> each(double amount, String unit) {
            return UnitExpression.tryParse(unit)
                    .filter(measure -> measure.sameKindAs(of.inside()))
                    .map(measure -> amount * of.inside().factor() / measure.factor());
        }
    }
}
