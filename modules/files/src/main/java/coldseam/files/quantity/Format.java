package coldseam.files.quantity;

import java.util.Locale;

/** Values set into text, alike on every machine: whatever its language, decimals have a point. */
public final class Format {

    private Format() {}

    /**
     * The text of a pattern.
     *
     * @param pattern as {@link java.util.Formatter} reads it
     * @throws java.util.IllegalFormatException if the values are not what it asks for
     */
    public static String of(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
