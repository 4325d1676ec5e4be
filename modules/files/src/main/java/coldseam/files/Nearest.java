package coldseam.files;

import java.util.Locale;
import java.util.Optional;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.ListIterable;
import org.eclipse.collections.api.list.MutableList;

/** Finds the known word that a misspelt one most likely meant. */
public final class Nearest {

    /** Longer words are not mistyped but wrong. */
    private static final int LONGEST = 200;

    /** Letters that may differ at most, however long the word is. */
    private static final int MOST = 12;

    /** From more words than these none is suggested: looking through them for each fault would take too long. */
    private static final int MOST_KNOWN = 2000;

    /** As many words are all listed: one who has none of them right has them all before him. */
    private static final int ALL_LISTED = 24;

    /** Of more words than those only so many are listed, first those that share some with the one asked for. */
    private static final int MOST_LISTED = 12;

    /** Letters of a word by which others that hold it are found: fewer are in too many. */
    private static final int LEAST_PART = 5;

    /** Letters with which a name begins: with fewer, too many do. */
    private static final int LEAST_BEGUN = 4;

    /** As few letters are a slip of the pen, whatever other names hold the word. */
    private static final int SLIP = 2;

    private Nearest() {}

    /** The known words for a message; a long list is cut to those that share most words with the one asked for. */
    public static String among(String asked, ListIterable<String> known) {
        if (known.size() <= ALL_LISTED) {
            return listed(known);
        }
        ImmutableList<String> words = words(asked);
        MutableList<String> alike =
                Lists.mutable.withAll(known).select(each -> words.anySatisfy(each::contains) || begins(each, asked));
        alike.sortThisByInt(each -> -words.count(each::contains));
        ListIterable<String> shown = (alike.isEmpty() ? Lists.mutable.withAll(known) : alike).take(MOST_LISTED);
        return listed(shown) + " and " + (known.size() - shown.size()) + " more";
    }

    /** A name that holds a comma is quoted, or it would be taken for two. */
    private static String listed(ListIterable<String> names) {
        return names.collect(each -> each.contains(",") ? '"' + each + '"' : each)
                .makeString(", ");
    }

    private static ImmutableList<String> words(String asked) {
        return Lists.immutable.with(asked.split("[^\\p{L}]+")).select(word -> word.length() > 2);
    }

    /**
     * The nearest known word, where it is near enough: a third of the letters may differ, and at least two. Where more than two
     * differ and known names of several words hold all that was asked for, it is that one if it is alone, and none if they are many.
     *
     * <p>Takes time in proportion to the known words' letters.
     */
    public static Optional<String> to(String word, Iterable<String> known) {
        ImmutableList<String> all = Lists.immutable.withAll(known);
        if (word.length() > LONGEST || all.size() > MOST_KNOWN) {
            return Optional.empty();
        }
        String asked = word.toLowerCase(Locale.ROOT);
        ImmutableList<String> words = all.reject(each -> opposite(asked, each));
        int least = Math.min(MOST, Math.max(2, asked.length() / 3)) + 1;
        String best = null;
        for (String each : words.toSortedList()) {
            int distance = distance(asked, each.toLowerCase(Locale.ROOT), least);
            if (distance < least && distance < Math.max(asked.length(), each.length())) {
                least = distance;
                best = each;
            }
        }
        ImmutableList<String> parts = words(asked);
        if (least > SLIP && parts.anySatisfy(part -> part.length() >= LEAST_PART)) {
            ImmutableList<String> longer = words.select(each -> words(each).size() > 1
                    && each.length() > asked.length()
                    && parts.allSatisfy(each.toLowerCase(Locale.ROOT)::contains));
            if (longer.notEmpty()) {
                return longer.size() == 1 ? longer.getFirstOptional() : Optional.empty();
            }
        }
        if (best == null) {
            ImmutableList<String> begun = words.select(each ->
                    begins(each, asked) || each.endsWith("ies") && asked.equals(each.replaceFirst("ies$", "y")));
            return begun.size() == 1 ? begun.getFirstOptional() : Optional.empty();
        }
        return Optional.of(best);
    }

    /** Whether one says of something what the other says it is not: "unheated" is no slip for "heated". */
    private static boolean opposite(String asked, String name) {
        ImmutableList<String> here = words(asked);
        ImmutableList<String> there = words(name.toLowerCase(Locale.ROOT));
        return here.anySatisfy(word -> there.contains("un" + word))
                || there.anySatisfy(word -> here.contains("un" + word));
    }

    /** Whether a name begins with what was asked for, spaces and hyphens apart. */
    private static boolean begins(String name, String asked) {
        return asked.length() >= LEAST_BEGUN && squeezed(name).startsWith(squeezed(asked));
    }

    private static String squeezed(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
    }

    /** The question whether the nearest known word was meant. */
    public static Optional<String> meant(String word, Iterable<String> known) {
        return to(word, known).map(Nearest::question);
    }

    static String question(String name) {
        return "did you mean \"" + name + "\"?";
    }

    /**
     * Insertions, deletions, changes and swaps of neighbours (optimal string alignment), as far as they are fewer than a
     * limit: only a band of the table as wide as twice the limit is looked at (Ukkonen, Algorithms for approximate string
     * matching, Information and Control 64, 1985).
     *
     * @return the distance, or any number not less than the limit
     */
    private static int distance(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) >= limit) {
            return limit;
        }
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int from = Math.max(1, i - limit);
            int to = Math.min(b.length(), i + limit);
            now[from - 1] = from == 1 ? i : limit;
            int leastOfRow = now[from - 1];
            for (int j = from; j <= to; j++) {
                int above = j == i + limit ? limit : last[j];
                int least = Math.min(above, now[j - 1]) + 1;
                least = Math.min(least, last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1));
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                now[j] = swapped ? Math.min(least, beforeLast[j - 2] + 1) : least;
                leastOfRow = Math.min(leastOfRow, now[j]);
            }
            // A swap reaches back two rows, so that this row alone is no bound yet; its successor adds at least one.
            if (leastOfRow > limit) {
                return limit;
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = now;
            now = spare;
        }
        return last[b.length()];
    }
}
