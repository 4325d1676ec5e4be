package coldseam.audit;

import coldseam.conduction.Interval;
import coldseam.files.quantity.Dimension;

/**
 * A value with its dimension.
 *
 * @param name what it is of, such as "psi" or "limit"
 * @param value in the dimension's inside unit; of no width where it is no interval
 * @param dimension of it
 */
public record Value(String name, Interval value, Dimension dimension) {

    /** A value that is no interval. */
    public static Value of(String name, double value, Dimension dimension) {
        return new Value(name, Interval.of(value), dimension);
    }
}
