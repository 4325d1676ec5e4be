package coldseam.envelope.file.house;

import coldseam.files.BadValueException;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.collections.api.map.ImmutableMap;

/** What a file gives as a source: enough that somebody could ask for it. */
public final class SourceText {

    /** Fewer letters and digits than this name nothing (judgement). */
    private static final int LEAST = 3;

    static final String ASKED = "a source is a document, a test or a person that can be asked";

    static final String NEXT = "write which; an honest guess says guess";

    /** What people write where they have none; whole, since "none of the above" may go on. */
    private static final Pattern NOTHING = Pattern.compile(
            "\\W*(none|nothing|nobody|no one|nil|null|n\\W?a|not available|not applicable|no|yes|true|false|source|see above"
                    + "|see below|idem|ditto|dummy|placeholder|lorem ipsum.*|(\\w)\\2*|asdf?g?h?|qwertz?y?)\\W*",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

    private SourceText() {}

    /** Whether a text names nothing: too short, or a word for nothing. */
    static boolean isNone(String text) {
        return text.codePoints().filter(Character::isLetterOrDigit).count() < LEAST
                || NOTHING.matcher(text).matches();
    }

    /**
     * Refuses a source of a letter or two, which stands there only because the key is asked for.
     *
     * @param component of the record, as Java writes it
     * @throws BadValueException at that key
     */
    public static void require(String component, String text) {
        if (isNone(text)) {
            throw new BadValueException(component, ASKED, '"' + text + '"', NEXT);
        }
    }

    /** The same where one is given. */
    static void require(String component, Optional<String> text) {
        text.ifPresent(given -> require(component, given));
    }

    /** Those that are given, by what each is of. */
    static <K> ImmutableMap<K, String> given(ImmutableMap<K, Optional<String>> sources) {
        return sources.select((of, source) -> source.isPresent()).collectValues((of, source) -> source.orElseThrow());
    }
}
