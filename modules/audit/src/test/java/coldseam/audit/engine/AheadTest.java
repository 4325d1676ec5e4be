package coldseam.audit.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is begun ahead is nobody's trouble: faults are told when it is asked in its turn, and nothing is left behind. */
class AheadTest {

    @Test
    void questionsAreAskedWhoeverFails() {
        List<String> asked = new ArrayList<>();
        try (Ahead ahead = new Ahead(Runnable::run)) {
            ahead.begin(() -> {
                asked.add("first");
                throw new IllegalStateException("of a question");
            });
            ahead.begin(() -> asked.add("second"));
        }
        assertEquals(List.of("first", "second"), asked);
    }

    @Test
    void whatHasNotBegunIsDropped() {
        List<Runnable> waiting = new ArrayList<>();
        List<String> asked = new ArrayList<>();
        try (Ahead ahead = new Ahead(waiting::add)) {
            ahead.begin(() -> asked.add("first"));
            ahead.begin(() -> asked.add("second"));
            waiting.get(0).run();
        }
        waiting.get(1).run();
        assertEquals(List.of("first"), asked);
    }
}
