package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.collections.api.factory.Lists;
import org.junit.jupiter.api.Test;

class ColumnsTest {

    @Test
    void breaksAtTheLastSpaceBeforeTheEightyFirstColumn() {
        String forty = "x".repeat(40);
        assertEquals(
                Lists.immutable.of(forty + " " + "y".repeat(39)), Columns.fold(forty + " " + "y".repeat(39), "", ""));
        assertEquals(
                Lists.immutable.of("1 " + forty, "  " + "y".repeat(38)),
                Columns.fold(forty + " " + "y".repeat(38), "1 ", "  "));
    }

    @Test
    void countsCharactersNotBytes() {
        String word = "°".repeat(79);
        assertEquals(Lists.immutable.of(word, "K"), Columns.fold(word + " K", "", ""));
    }

    @Test
    void aPercentSignStaysWithItsNumber() {
        String word = "x".repeat(77);
        assertEquals(Lists.immutable.of(word, "86 %"), Columns.fold(word + " 86 %", "", ""));
    }

    @Test
    void aFractionStaysWithItsWholeNumber() {
        String word = "x".repeat(77);
        assertEquals(Lists.immutable.of(word, "7 3/4 in"), Columns.fold(word + " 7 3/4 in", "", ""));
        assertEquals(Lists.immutable.of(word + " of", "3/4 in"), Columns.fold(word + " of 3/4 in", "", ""));
    }

    @Test
    void aWordLongerThanALineStandsAlone() {
        String word = "x".repeat(90);
        assertEquals(Lists.immutable.of("a", word, "b"), Columns.fold("a " + word + " b", "", ""));
    }
}
