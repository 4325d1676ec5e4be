package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.impl.list.primitive.IntInterval;
import org.junit.jupiter.api.Test;

class NearestTest {

    @Test
    void findsTheWordThatWasMeant() {
        assertEquals(Optional.of("thickness"), Nearest.to("thikness", Lists.immutable.of("role", "thickness")));
        assertEquals(Optional.of("kind"), Nearest.to("knid", Lists.immutable.with("king of hearts", "kind")));
        assertEquals(Optional.of("wall"), Nearest.to("wlal", Lists.immutable.of("wall", "roof")));
        assertEquals(Optional.empty(), Nearest.to("parapet", Lists.immutable.of("wall", "roof")));
        // As many changes as there are letters are no slip.
        assertEquals(Optional.empty(), Nearest.to("x", Lists.immutable.with("y")));
        assertEquals(Optional.empty(), Nearest.to("ab", Lists.immutable.of("cd")));
    }

    @Test
    void aShorterNameMeansTheOnlyLongerOneAndNoneOfMany() {
        ImmutableList<String> materials = Lists.immutable.of(
                "wood fibre insulation board", "wood fibre sheathing board", "wood wool board", "cellulose, blown in");
        assertEquals(Optional.of("cellulose, blown in"), Nearest.to("cellulose", materials));
        assertEquals(Optional.empty(), Nearest.to("wood fibre board", materials));
        assertEquals(Optional.of("wood wool board"), Nearest.to("wood wol board", materials));
        ImmutableList<String> kinds = Lists.immutable.of("slab on ground", "suspended", "heated cellar");
        assertEquals(Optional.of("slab on ground"), Nearest.to("slab", kinds));
        assertEquals(Optional.of("heated cellar"), Nearest.to("heatedcellar", kinds));
        assertEquals(Optional.of("assemblies"), Nearest.to("assembly", Lists.immutable.of("assemblies", "materials")));
        assertEquals(Optional.empty(), Nearest.to("wood", materials), "two begin so");
    }

    @Test
    void whatIsNotIsNeverMeantByWhatIs() {
        ImmutableList<String> kinds = Lists.immutable.of("suspended", "heated cellar", "over unheated");
        assertEquals(Optional.empty(), Nearest.to("unheated cellar", kinds));
        assertEquals(Optional.of("heated cellar"), Nearest.to("heated celar", kinds));
        assertEquals(Optional.of("heated cellar"), Nearest.to("heated", kinds), "the other is unheated");
    }

    @Test
    void aLongListIsCutToTheNamesAlike() {
        ImmutableList<String> walls = IntInterval.oneTo(40).collect(i -> "south wall " + i);
        assertEquals("a, b", Nearest.among("c", Lists.immutable.of("a", "b")));
        assertEquals(walls.take(24).makeString(), Nearest.among("south wall 41", walls.take(24)));
        assertEquals(
                "south wall 1, south wall 2, south wall 3, south wall 4, south wall 5, south wall 6, south wall 7,"
                        + " south wall 8, south wall 9, south wall 10, south wall 11, south wall 12 and 29 more",
                Nearest.among("south wall 41", Lists.immutable.of("roof").newWithAll(walls)));
    }

    /** The band of the table is as good as the whole. */
    @Property(seed = "2026")
    void isTheNearestByTheWholeTable(
            @ForAll @CharRange(from = 'a', to = 'c') @StringLength(max = 14) String word,
            @ForAll @Size(max = 6) List<@CharRange(from = 'a', to = 'c') @StringLength(max = 14) String> known) {
        int most = Math.max(2, word.length() / 3);
        Optional<String> best = Optional.empty();
        int least = most + 1;
        for (String each : Lists.immutable.withAll(known).toSortedList()) {
            int distance = distance(word, each);
            if (distance < least && distance < Math.max(word.length(), each.length())) {
                least = distance;
                best = Optional.of(each);
            }
        }
        assertEquals(best, Nearest.to(word, known));
    }

    /** Optimal string alignment by its definition. */
    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                cost[i][j] = Math.min(
                        Math.min(cost[i - 1][j], cost[i][j - 1]) + 1,
                        cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
