package coldseam.envelope;

/**
 * Where a value comes from.
 *
 * @param source document, edition, clause or table; or the words of the house file
 * @param sureness how well it is known
 */
public record Provenance(String source, Sureness sureness) {

    /** How well a value is known. */
    public enum Sureness {
        /** Read in the source named. */
        READ,
        /** Remembered from the source named, not read. */
        FROM_MEMORY,
        /** Usual in the trade, without a source. */
        COMMON_PRACTICE,
        /** Given by the house file. */
        DECLARED
    }
}
