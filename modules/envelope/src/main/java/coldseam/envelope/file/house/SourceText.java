package coldseam.envelope.file.house;

import coldseam.files.BadValueException;

/** What a file gives as a source: enough that somebody could ask for it. */
public final class SourceText {

    /** Fewer letters and digits than this name nothing (judgement). */
    private static final int LEAST = 3;

    static final String ASKED = "a source is a document, a test or a person that can be asked";

    static final String NEXT = "write which; an honest guess says guess";

    private SourceText() {}

    /** Whether a text is too short to name anything. */
    static boolean isNone(String text) {
        return text.codePoints().filter(Character::isLetterOrDigit).count() < LEAST;
    }

    /**
     * Refuses a source of a letter or two, which stands there only because the key is asked for.
     *
     * @param component of the record, as Java writes it
     * @throws BadValueException at that key
     */
    public static void require(String component, String text) {
        if (isNone(text)) {
            throw new BadValueException(component, ASKED, '"' + text + '"', "", NEXT);
        }
    }
}
