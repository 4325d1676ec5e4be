package coldseam.envelope.file;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one most likely meant. */
public final class Nearest {

    private Nearest() {}

    /** The nearest known word, where it is near enough: a third of the letters may differ, and at least two. */
    public static Optional<String> to(String word, Iterable<String> known) {
        String asked = word.toLowerCase(Locale.ROOT);
        int most = Math.max(2, asked.length() / 3);
        String best = null;
        int least = most + 1;
        for (String each : sorted(known)) {
            int distance = distance(asked, each.toLowerCase(Locale.ROOT));
            if (distance < least && distance < Math.max(asked.length(), each.length())) {
                least = distance;
                best = each;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Iterable<String> sorted(Iterable<String> known) {
        return org.eclipse.collections.api.factory.Lists.mutable.withAll(known).sortThis(Comparator.naturalOrder());
    }

    /** Insertions, deletions, changes and swaps of neighbours (optimal string alignment). */
    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                int least = Math.min(cost[i - 1][j], cost[i][j - 1]) + 1;
                least = Math.min(least, cost[i - 1][j - 1] + (same ? 0 : 1));
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                cost[i][j] = swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
            }
        }
        return cost[a.length()][b.length()];
    }
}
