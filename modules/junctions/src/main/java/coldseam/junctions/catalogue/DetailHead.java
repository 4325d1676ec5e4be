package coldseam.junctions.catalogue;

import coldseam.files.Words;
import coldseam.junctions.detail.Rank;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;

/**
 * What of a built-in detail must be known of each, told from its file without reading that as YAML: most runs need a quarter of
 * the catalogue.
 *
 * <p>It knows files only that write these keys plainly, each on a line of its own, as all built-in ones do. A file that it cannot
 * tell them from is read whole.
 *
 * @param kinds plain names, that of its key {@code kind} first
 * @param takesDown parts of an old house that must come down for it
 */
record DetailHead(String id, ImmutableList<String> kinds, Rank rank, ImmutableList<String> takesDown) {

    private static final String ALSO = "also";
    private static final String TAKES_DOWN = "takes-down";

    /**
     * The head of a file.
     *
     * @param sort the key that the id stands under, such as {@code detail}
     * @return empty where it does not say all of it plainly
     */
    static Optional<DetailHead> of(String sort, String text) {
        Optional<String> id = line(sort, text).filter(DetailHead::isPlain);
        Optional<String> kind = line("kind", text).filter(DetailHead::isPlain);
        Optional<Rank> rank = line("rank", text).flatMap(DetailHead::rank);
        Optional<ImmutableList<String>> also = list(ALSO, text);
        Optional<ImmutableList<String>> parts = list(TAKES_DOWN, text);
        return id.isPresent() && kind.isPresent() && also.isPresent() && rank.isPresent() && parts.isPresent()
                ? Optional.of(new DetailHead(
                        id.get(), Lists.immutable.of(kind.get()).newWithAll(also.get()), rank.get(), parts.get()))
                : Optional.empty();
    }

    /** What follows a key that begins a line. */
    private static Optional<String> line(String key, String text) {
        String begins = key + ": ";
        int before = text.startsWith(begins) ? 0 : text.indexOf('\n' + begins) + 1;
        if (!text.startsWith(begins, before)) {
            return Optional.empty();
        }
        int from = before + begins.length();
        int end = text.indexOf('\n', from);
        return end < 0 ? Optional.empty() : Optional.of(text.substring(from, end));
    }

    /** The list after a key; none of a text in which no line begins with that key, however it goes on. */
    private static Optional<ImmutableList<String>> list(String key, String text) {
        return begins(key, text) ? line(key, text).flatMap(DetailHead::list) : Optional.of(Lists.immutable.empty());
    }

    /** Whether a word is the first of any line. */
    private static boolean begins(String word, String text) {
        for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
            int end = at + word.length();
            int before = at;
            while (before > 0 && !isWord(text.charAt(before - 1)) && text.charAt(before - 1) != '\n') {
                before--;
            }
            boolean first = before == 0 || text.charAt(before - 1) == '\n';
            if (first && (end == text.length() || !isWord(text.charAt(end)))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWord(char c) {
        return c == '_' || c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
    }

    private static Optional<ImmutableList<String>> list(String value) {
        if (!value.startsWith("[") || !value.endsWith("]")) {
            return Optional.empty();
        }
        ImmutableList<String> items =
                Lists.immutable.with(value.substring(1, value.length() - 1).split(", ", -1));
        return items.allSatisfy(DetailHead::isPlain) ? Optional.of(items) : Optional.empty();
    }

    /** Letters, digits, hyphens, apostrophes and single spaces: nothing that YAML reads as anything else. */
    private static boolean isPlain(String value) {
        boolean inside = false;
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            boolean plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
            if (!plain && !(inside && "' -".indexOf(c) >= 0)) {
                return false;
            }
            inside = c != ' ';
        }
        return inside;
    }

    private static Optional<Rank> rank(String word) {
        return Lists.immutable
                .with(Rank.values())
                .detectOptional(rank -> Words.word(rank).equals(word));
    }
}
