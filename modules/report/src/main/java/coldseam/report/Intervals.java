package coldseam.report;

import coldseam.conduction.Interval;
import coldseam.files.Csv;
import coldseam.files.quantity.Dimension;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** Columns of intervals, which are not rounded. */
public final class Intervals {

    private Intervals() {}

    /**
     * The lower and the upper bound; values in the dimension's inside unit.
     *
     * @param value empty in rows that have none
     */
    public static <R> UnaryOperator<Csv<R>> of(
            String name, Dimension dimension, Function<R, Optional<Interval>> value) {
        return csv -> csv.some(
                        name + " lower", dimension, row -> value.apply(row).map(Interval::lower))
                .some(name + " upper", dimension, row -> value.apply(row).map(Interval::upper));
    }

    /** The same, of what every row has. */
    static <R> UnaryOperator<Csv<R>> always(String name, Dimension dimension, Function<R, Interval> value) {
        return of(name, dimension, value.andThen(Optional::of));
    }
}
