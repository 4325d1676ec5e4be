package coldseam.cli;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Text folded into columns of a terminal. */
final class Columns {

    /** Between words: a percent sign stays with its number, and a fraction with the whole before it. */
    private static final String APART = "\\s+(?!%)(?!(?<=\\d\\s)\\d+/\\d)";

    private Columns() {}

    /**
     * Folds a text at its spaces.
     *
     * @param text in one line
     * @param first what the first line begins with
     * @param next what the others begin with
     * @return lines of at most {@link Terminal#WIDTH} characters, words longer than that excepted
     */
    static ImmutableList<String> fold(String text, String first, String next) {
        MutableList<String> lines = Lists.mutable.empty();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : text.strip().split(APART)) {
            if (!empty && width(line) + 1 + word.codePointCount(0, word.length()) > Terminal.WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(next);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        return lines.with(line.toString()).toImmutable();
    }

    private static int width(StringBuilder line) {
        return line.codePointCount(0, line.length());
    }
}
