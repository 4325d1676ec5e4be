package coldseam.junctions.language;

import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.map.ImmutableMap;

/**
 * A line, length or number of a detail file, with its kind known before any house is.
 *
 * <p>A line plus a length is a line, a line minus a line of the same band is a length; lines of two bands never mix.
 */
public sealed interface Expression {

    Measured measures();

    /**
     * Its value: m, or a plain number.
     *
     * @param scope the value of every name
     */
    double value(ImmutableMap<String, Double> scope);

    /** A number or length as written. */
    record Constant(Measured measures, double amount) implements Expression {
        @Override
        public double value(ImmutableMap<String, Double> scope) {
            return amount;
        }
    }

    /** A named line, parameter or constant. */
    record Name(Measured measures, String name) implements Expression {
        @Override
        public double value(ImmutableMap<String, Double> scope) {
            Double found = scope.get(name);
            if (found == null) {
                throw new IllegalStateException("the line " + name + " has no value in this junction");
            }
            return found;
        }
    }

    /** Two operands. */
    record Binary(Measured measures, char operator, Expression left, Expression right) implements Expression {
        @Override
        public double value(ImmutableMap<String, Double> scope) {
            double a = left.value(scope);
            double b = right.value(scope);
            return switch (operator) {
                case '+' -> a + b;
                case '-' -> a - b;
                case '*' -> a * b;
                default -> a / b;
            };
        }
    }

    /** The least, greatest or mean of its operands. */
    record Pick(Measured measures, Function function, ImmutableList<Expression> of) implements Expression {
        @Override
        public double value(ImmutableMap<String, Double> scope) {
            ImmutableList<Double> values = of.collect(each -> each.value(scope));
            return switch (function) {
                case MIN -> values.min();
                case MAX -> values.max();
                case HALFWAY -> (values.getFirst() + values.getLast()) / 2;
            };
        }
    }

    /** Functions of lines, lengths or numbers of one kind. */
    enum Function {
        MIN,
        MAX,
        HALFWAY
    }
}
