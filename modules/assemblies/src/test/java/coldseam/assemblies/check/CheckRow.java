package coldseam.assemblies.check;

/**
 * One value computed and published.
 *
 * @param area what it is about, such as "ISO 6946, air layers"; rows of one area stand together
 * @param what the case and the quantity
 * @param source document, edition, clause or table; or what was done instead
 * @param sureness of the published value
 * @param published value
 * @param computed value
 * @param tolerance allowed difference, zero or more, in the unit
 * @param reason why the tolerance is no tighter
 * @param unit of both values; empty for plain numbers
 */
public record CheckRow(
        String area,
        String what,
        String source,
        Sureness sureness,
        double published,
        double computed,
        double tolerance,
        String reason,
        String unit) {

    /** How sure a published value is. */
    public enum Sureness {
        /** Seen in the source named. */
        READ("read"),
        /** Remembered from the source named. */
        FROM_MEMORY("from memory"),
        /** Usual in the trade, without a source. */
        COMMON_PRACTICE("common practice, no source"),
        /** Worked out from the stated inputs apart from this code: an independent program, a closed formula, an integral. */
        COMPUTED("worked out apart");

        private final String words;

        Sureness(String words) {
            this.words = words;
        }

        /** Whether the value comes from outside the project; what we worked out ourselves does not. */
        public boolean fromOutside() {
            return this != COMPUTED;
        }

        /** As printed. */
        public String words() {
            return words;
        }
    }

    /** Computed less published, in the unit. */
    public double difference() {
        return computed - published;
    }

    /** Whether the difference is within the tolerance; a computed NaN is not. */
    public boolean passes() {
        return Math.abs(difference()) <= tolerance;
    }
}
