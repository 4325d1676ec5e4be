package coldseam.files;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.QuantityParser;
import java.util.Optional;

/**
 * The range of a number, from {@link Bounds}.
 *
 * @param least NaN where open
 * @param leastIsIn whether the least is allowed itself
 * @param most NaN where open
 * @param mostIsIn whether the most is allowed itself
 * @param shown for messages
 */
record Range(double least, boolean leastIsIn, double most, boolean mostIsIn, Phrase shown) {

    static Range of(Bounds bounds, Optional<Dimension> dimension) {
        boolean leastIsIn = bounds.above().isEmpty();
        boolean mostIsIn = bounds.below().isEmpty();
        String least = leastIsIn ? bounds.atLeast() : bounds.above();
        String most = mostIsIn ? bounds.atMost() : bounds.below();
        Phrase shown = Phrase.of("");
        if (!least.isEmpty()) {
            shown = said(shown.and(leastIsIn ? "at least " : "more than "), least, dimension);
        }
        if (!most.isEmpty()) {
            shown = shown.and(least.isEmpty() ? "" : " and ").and(mostIsIn ? "at most " : "less than ");
            shown = said(shown, most, dimension);
        }
        return new Range(value(least, dimension), leastIsIn, value(most, dimension), mostIsIn, shown);
    }

    private static Phrase said(Phrase before, String text, Optional<Dimension> dimension) {
        return dimension
                .map(each -> before.and(text, value(text, dimension), each))
                .orElseGet(() -> before.and(text));
    }

    private static double value(String text, Optional<Dimension> dimension) {
        if (text.isEmpty()) {
            return Double.NaN;
        }
        return dimension.isPresent() ? QuantityParser.parse(text, dimension.get()) : Double.parseDouble(text);
    }

    boolean holds(double value) {
        boolean above = Double.isNaN(least) || value > least || leastIsIn && value == least;
        boolean below = Double.isNaN(most) || value < most || mostIsIn && value == most;
        return above && below;
    }
}
