package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class TimingsTest {

    @Test
    void phasesAddUpInTheOrderTheyBegan() {
        AtomicLong clock = new AtomicLong(7_000_000_000L);
        Timings timings = new Timings(clock::get);
        timings.begin("read");
        clock.addAndGet(250_000_000L);
        timings.begin("junctions");
        clock.addAndGet(1_000_000_000L);
        timings.begin("read");
        clock.addAndGet(50_000_000L);
        assertEquals("""
                timing: read                     0.300 s
                timing: junctions                1.000 s
                timing: in all                   1.300 s
                """, timings.text().replace(System.lineSeparator(), "\n"));
    }
}
