package coldseam.junctions.language;

import coldseam.files.Faults;
import coldseam.files.Located;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

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

    /**
     * Why a detail does not fit by this; empty where it does.
     *
     * @param who the detail in words
     * @param value of an expression: m, or a number
     */
    public Optional<String> missed(String who, ToDoubleFunction<Expression> value) {
        double one = value.applyAsDouble(left);
        double other = value.applyAsDouble(right);
        if (atLeast ? one >= other - SLACK : one <= other + SLACK) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "%s needs %s; here the left side is %s and the right side %s. %s.",
                who,
                text,
                said(one, other),
                said(other, one),
                OF_AN_OPENING.matcher(text).find()
                        ? "Choose another detail, or give the opening another set-back or frame-depth"
                        : "Choose another detail"));
    }

    /** As short as it may be without looking like the other side. */
    private String said(double value, double other) {
        boolean number = left.measures() == Measured.NUMBER;
        for (int digits = 0; digits < 4; digits++) {
            String format = number ? "%." + (3 + digits) + "g" : "%." + digits + "f mm";
            String said = String.format(Locale.ROOT, format, number ? value : 1000 * value);
            if (!said.equals(String.format(Locale.ROOT, format, number ? other : 1000 * other))) {
                return said;
            }
        }
        return number ? Double.toString(value) : 1000 * value + " mm";
    }
}
