package coldseam.envelope.file.house;

import coldseam.files.BadValueException;
import java.util.regex.Pattern;

/** What of a house file stands beside the verdict: one line that does not speak in the verdict's place. */
final class PageText {

    private static final int LONGEST = 120;

    private static final Pattern VERDICT = Pattern.compile("\\b(un-?broken|verdict)\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern LINE = Pattern.compile("[\\r\\n\\u2028\\u2029]");

    private PageText() {}

    /**
     * Refuses a text of several lines, a long one, and one that reads like a verdict.
     *
     * @param component of the record, as Java writes it
     * @throws BadValueException at that key
     */
    static void require(String component, String text) {
        boolean lines = LINE.matcher(text.strip()).find();
        if (lines || text.length() > LONGEST) {
            throw new BadValueException(
                    component,
                    "what stands over the verdict is one line",
                    lines ? "several lines" : text.length() + " characters",
                    "one line of up to " + LONGEST + " characters",
                    lines ? "write it on one line" : "shorten it");
        }
        if (VERDICT.matcher(text).find()) {
            throw new BadValueException(
                    component,
                    "what stands over the verdict says nothing of it",
                    '"' + text + '"',
                    "a name, a place or a person",
                    "take the words unbroken and verdict out: the audit says what it finds");
        }
    }
}
