package coldseam.conduction;

/**
 * A value known to lie between two bounds.
 *
 * @param lower the lower bound
 * @param upper the upper bound, not below the lower one
 */
public record Interval(double lower, double upper) {

    /**
     * @throws IllegalStateException where a bound is not a number
     * @throws IllegalArgumentException where the bounds are crossed
     */
    public Interval {
        Finite.known(lower, () -> "the lower bound beside " + upper);
        Finite.known(upper, () -> "the upper bound beside " + lower);
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("interval needs lower <= upper, got " + lower + " and " + upper);
        }
    }

    /** The interval of one exactly known value. */
    public static Interval of(double value) {
        return new Interval(value, value);
    }

    /** Halfway between the bounds. */
    public double middle() {
        return lower + (upper - lower) / 2;
    }

    /** The distance between the bounds. */
    public double width() {
        return upper - lower;
    }

    /** All sums of a value of this and a value of the other. */
    public Interval plus(Interval other) {
        return new Interval(lower + other.lower, upper + other.upper);
    }

    /** All values of this moved by a constant. */
    public Interval plus(double constant) {
        return new Interval(lower + constant, upper + constant);
    }

    /** All values of this times a factor of either sign. */
    public Interval times(double factor) {
        return factor >= 0
                ? new Interval(lower * factor, upper * factor)
                : new Interval(upper * factor, lower * factor);
    }

    /** Whether a value lies between the bounds or on one. */
    public boolean contains(double value) {
        return lower <= value && value <= upper;
    }
}
