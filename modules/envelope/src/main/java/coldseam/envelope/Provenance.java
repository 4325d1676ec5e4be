package coldseam.envelope;

import java.util.regex.Pattern;

/**
 * Where a value comes from.
 *
 * @param source document, edition, clause or table; or the words of the house file
 * @param sureness how well it is known
 */
public record Provenance(String source, Sureness sureness) {

    private static final Pattern GUESS = Pattern.compile(
            "\\b(guess(ed|es)?|estimate[ds]?|assum(ed?|ptions?)|hearsay|unknown|not known|no source|from memory|rule of thumb"
                    + "|tbd|todo|to be (done|found|confirmed|defined)|not yet|somewhere|own (opinion|experience))\\b",
            Pattern.CASE_INSENSITIVE);

    /** Whether a source says of itself that it is none. */
    public static boolean isGuess(String source) {
        return GUESS.matcher(source).find();
    }

    /** Whether the house file names a source of the product for it. */
    public boolean isDeclared() {
        return sureness == Sureness.DECLARED && !isGuess(source);
    }

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
