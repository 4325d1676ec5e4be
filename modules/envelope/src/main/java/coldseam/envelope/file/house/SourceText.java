package coldseam.envelope.file.house;

import coldseam.files.BadValueException;

/** What a file gives as a source: enough that somebody could ask for it. */
final class SourceText {

    /** Fewer letters and digits than this name nothing (judgement). */
    private static final int LEAST = 3;

    private SourceText() {}

    /**
     * Refuses a source of a letter or two, which stands there only because the key is asked for.
     *
     * @param component of the record, as Java writes it
     * @throws BadValueException at that key
     */
    static void require(String component, String text) {
        if (text.codePoints().filter(Character::isLetterOrDigit).count() < LEAST) {
            throw new BadValueException(
                    component,
                    "a source is a document, a test or a person that can be asked",
                    '"' + text + '"',
                    "",
                    "write which; an honest guess says guess");
        }
    }
}
