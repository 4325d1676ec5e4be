package coldseam.options.front;

/**
 * One way to decide a group, or what is fixed in a scenario.
 *
 * @param id by which choices name it; unique in its group
 * @param cost whole units, such as of a currency; may be negative
 * @param lower bound of its heat loss, µW/K; may be negative
 * @param upper bound, not below the lower one
 */
public record Item(int id, long cost, long lower, long upper) {

    /** Sums of any number of items that fits a house stay far from overflow. */
    private static final long LARGEST = 1L << 50;

    /** @throws IllegalArgumentException where the bounds are crossed, or a number is too large to be added up */
    public Item {
        if (!(lower <= upper)) {
            throw new IllegalArgumentException("an item needs lower <= upper; got " + lower + " and " + upper);
        }
        if (Math.abs(cost) > LARGEST || Math.abs(lower) > LARGEST || Math.abs(upper) > LARGEST) {
            throw new IllegalArgumentException(
                    "an item's numbers are at most 2^50; got " + cost + ", " + lower + ", " + upper);
        }
    }
}
