package coldseam.junctions.language;

import coldseam.files.Faults;
import coldseam.files.Located;
import coldseam.files.quantity.Dimension;
import coldseam.files.quantity.Format;
import coldseam.files.quantity.Phrase;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;
import org.eclipse.collections.impl.factory.Lists;

/**
 * What a detail's drawing needs: one side at least, or at most, the other.
 *
 * @param text as written
 * @param left of the sign
 * @param atLeast whether left must be at least right, or at most
 * @param right of the sign
 */
public record Condition(String text, Expression left, boolean atLeast, Expression right) {

    /** m; lengths this close count as equal. */
    private static final double SLACK = 1e-9;

    /**
     * Reads {@code a >= b} or {@code a <= b}.
     *
     * @param expression reads a side; adds its faults itself
     * @param alike what the two sides may be, in words
     * @return empty where it is faulty
     */
    public static Optional<Condition> read(
            Located<String> text, Function<String, Optional<Expression>> expression, String alike, Faults faults) {
        boolean atLeast = text.value().contains(">=");
        String[] sides = text.value().split(atLeast ? ">=" : "<=", -1);
        if (sides.length != 2) {
            faults.add(
                    text.place(), "a condition is needed", '"' + text.value() + '"', "a >= b or a <= b", "write it so");
            return Optional.empty();
        }
        Optional<Expression> left = expression.apply(sides[0].strip());
        Optional<Expression> right = expression.apply(sides[1].strip());
        if (left.isEmpty() || right.isEmpty()) {
            return Optional.empty();
        }
        if (left.get().measures() != right.get().measures()) {
            faults.add(
                    text.place(),
                    "a condition compares like with like",
                    left.get().measures().noun() + " and "
                            + right.get().measures().noun(),
                    alike,
                    "take the difference of two lines to get a length");
            return Optional.empty();
        }
        return Optional.of(new Condition(text.value(), left.get(), atLeast, right.get()));
    }

    /** Where a window or door stands follows from its own keys in the house file. */
    private static final Pattern OF_AN_OPENING = Pattern.compile("\\b(door|frame)\\.");

    private static final String SILL = "door.sill";

    /** A length or a number by itself. */
    private static final Pattern LITERAL = Pattern.compile("-?[0-9.]+( ?m?m)?");

    private String mend(ImmutableList<String> parameters) {
        if (text.contains(SILL)) {
            return ". Raise the opening's sill, lay less on the deck, or choose another detail.";
        }
        MutableList<String> keys = Lists.mutable.empty();
        if (OF_AN_OPENING.matcher(text).find()) {
            keys.add("give the opening another set-back or frame-depth");
        }
        if (text.contains(DrawingNames.STOREY_FLOOR)) {
            keys.add("correct the floor-thickness of the storey");
        }
        if (names(DrawingNames.UPSTAND)) {
            keys.add("correct the roof's parapet-height");
        }
        parameters.select(this::names).forEach(each -> keys.add("set another \"" + each + "\" under its parameters"));
        return ". Choose another detail" + keys.collect(each -> ", or " + each).makeString("") + ".";
    }

    /** Whether a length stands in it by its whole name, which may be of several words. */
    private boolean names(String length) {
        return Pattern.compile("(?<!\\w )(?<![\\w.])" + Pattern.quote(length) + "(?! ?[\\w.])")
                .matcher(text)
                .find();
    }

    /**
     * Why a detail does not fit by this; empty where it does.
     *
     * @param who the detail in words
     * @param value of an expression: m, or a number
     * @param parameters names of the lengths that the house file may set for the detail
     */
    public Optional<Phrase> missed(String who, ToDoubleFunction<Expression> value, ImmutableList<String> parameters) {
        double one = value.applyAsDouble(left);
        double other = value.applyAsDouble(right);
        if (atLeast ? one >= other - SLACK : one <= other + SLACK) {
            return Optional.empty();
        }
        boolean lines = left.measures().isLine();
        String sign = lines
                ? (atLeast ? " lies no farther in than " : " lies no farther out than ")
                : (atLeast ? " is at least " : " is at most ");
        Phrase limit = said(other, one);
        boolean literal = LITERAL.matcher(side(1)).matches();
        Phrase asked = Phrase.of(who + " fits where ")
                .and(Phrase.quoted(Spoken.of(side(0))))
                .and(sign)
                .and(literal ? limit : Phrase.quoted(Spoken.of(side(1))));
        Phrase here = Phrase.of(lines ? "; here it lies " : "; here it is ").and(said(one, other));
        return Optional.of(asked.and(here)
                .and(lines ? " from the inner face" : "")
                .and(literal ? Phrase.of("") : Phrase.of(", the other ").and(limit))
                .and(mend(parameters)));
    }

    /** A side as the file has it: 0 the left, 1 the right. */
    private String side(int index) {
        return text.split("[<>]=", -1)[index].strip();
    }

    private Phrase said(double value, double other) {
        boolean number = left.measures() == Measured.NUMBER;
        String written = written(number, number ? value : 1000 * value, number ? other : 1000 * other);
        return number ? Phrase.of(written) : Phrase.of(written + " mm", value, Dimension.LENGTH);
    }

    /** As short as it may be without looking like the other side. */
    private static String written(boolean number, double value, double other) {
        for (int digits = 0; digits < 4; digits++) {
            String format = number ? "%." + (3 + digits) + "g" : "%." + digits + "f";
            String said = Format.of(format, value);
            if (!said.equals(Format.of(format, other))) {
                return said;
            }
        }
        return Double.toString(value);
    }
}
