package coldseam.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class SameNamesTest {

    @Test
    void saysWhatIsMissingWhatIsLeftAndWhatToDo() {
        AssertionError apart = assertThrows(
                AssertionError.class,
                () -> SameNames.check(List.of("d", "b", "a"), List.of("a", "e", "c"), "write them anew"));
        assertEquals("missing: b, d; too many: c, e; write them anew", apart.getMessage());
        SameNames.check(List.of("b", "a"), List.of("a", "b", "a"), "nothing to do");
    }
}
