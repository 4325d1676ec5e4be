package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressLinesTest {

    private static final long SECOND = 1_000_000_000L;

    private final StringWriter err = new StringWriter();
    private final AtomicLong clock = new AtomicLong();

    private ProgressLines lines(boolean interactive) {
        Terminal terminal = new Terminal(new PrintWriter(new StringWriter()), new PrintWriter(err, true), interactive);
        return new ProgressLines(terminal, clock::get);
    }

    @Test
    void quickWorkSaysNothing() {
        ProgressLines lines = lines(false);
        clock.set(SECOND - 1);
        lines.at("junctions", 5, 5);
        lines.close();
        assertEquals("", err.toString());
    }

    @Test
    void longWorkSpeaksAfterASecondAndThenEveryFive() {
        ProgressLines lines = lines(false);
        for (int tenths = 0; tenths <= 70; tenths++) {
            clock.set(tenths * SECOND / 10);
            lines.at("junctions", tenths, 70);
        }
        lines.close();
        assertEquals(
                "junctions: 10 of 70\njunctions: 60 of 70\n", err.toString().replace(System.lineSeparator(), "\n"));
    }

    @Test
    void onATerminalOneLineIsWrittenOverAndClearedAtTheEnd() {
        ProgressLines lines = lines(true);
        clock.set(2 * SECOND);
        lines.at("junctions", 1, 2);
        clock.set(3 * SECOND);
        lines.at("junctions", 2, 2);
        lines.close();
        assertTrue(err.toString().startsWith("\rjunctions: 1 of 2   \rjunctions: 2 of 2"), err::toString);
        assertTrue(err.toString().endsWith("\r"), err::toString);
        assertEquals(-1, err.toString().indexOf('\n'));
    }

    @Test
    void muchWorkIsSaidBeforeItBegins() {
        ProgressLines lines = lines(false);
        lines.at("junctions", 0, 99);
        assertEquals("", err.toString());
        lines.at("junctions", 0, 100);
        lines.close();
        assertEquals(
                "100 junctions to compute: the first time this may take minutes",
                err.toString().strip());
    }
}
