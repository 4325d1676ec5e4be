package coldseam.files;

import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Phrase;
import coldseam.files.quantity.QuantityParser;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

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

    /** A number, and its unit where that stands behind it. */
    private static final Pattern VALUE = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: (?!to )([^,]+))?");

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

    /**
     * What is usual, its values in the reader's units.
     *
     * @param text SI, such as "wood 0.13, concrete 2 W/(m·K)": of values in a row the last may name the unit of all
     */
    static Phrase usual(String text, Dimension dimension) {
        ImmutableList<MatchResult> values =
                Lists.immutable.fromStream(VALUE.matcher(text).results());
        Phrase said = Phrase.of("");
        int end = 0;
        for (int i = 0; i < values.size(); i++) {
            MatchResult value = values.get(i);
            String unit = values.drop(i).collect(each -> each.group(2)).detectIfNone(Objects::nonNull, () -> "");
            said = said.and(text.substring(end, value.start()))
                    .and(value.group(), QuantityParser.parse(value.group(1) + " " + unit, dimension), dimension);
            end = value.end();
        }
        return said.and(text.substring(end));
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
