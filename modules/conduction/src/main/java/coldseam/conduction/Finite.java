package coldseam.conduction;

import java.util.function.Supplier;

/**
 * The one place that refuses what is no number: every result passes it on its way out of a computation, so that NaN and infinities
 * leave none unnoticed, and whoever reports the fault can say where it was.
 *
 * <p>Temperatures pass it in {@link Solution}, bounds in {@link Interval}; further on, transmittances, psi, chi and fRsi do, and
 * every line of a table that adds them up.
 */
public final class Finite {

    private Finite() {}

    /**
     * The value, if it is finite.
     *
     * @param unit of it, for the message; empty for a number without one
     * @param what it is, and of what: the layer, the surface or the place
     * @throws IllegalStateException where it is NaN or infinite
     */
    public static double number(double value, String unit, Supplier<String> what) {
        if (!Double.isFinite(value)) {
            throw refused(value, unit, what);
        }
        return value;
    }

    /**
     * Both bounds of an interval, if they are finite.
     *
     * @throws IllegalStateException where one is infinite
     */
    public static Interval bounds(Interval value, String unit, Supplier<String> what) {
        number(value.lower(), unit, what);
        number(value.upper(), unit, what);
        return value;
    }

    /**
     * The value, if it is a number or infinite: a flow is infinite where two given temperatures meet.
     *
     * @throws IllegalStateException where it is NaN
     */
    static double known(double value, Supplier<String> what) {
        if (Double.isNaN(value)) {
            throw refused(value, "", what);
        }
        return value;
    }

    private static IllegalStateException refused(double value, String unit, Supplier<String> what) {
        return new IllegalStateException("internal error, please report: " + what.get() + " came out as " + value
                + (unit.isEmpty() ? "" : " " + unit));
    }
}
