package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class TimingsTest {

    private final AtomicLong wall = new AtomicLong(7_000_000_000L);
    private final AtomicLong processor = new AtomicLong(3_000_000_000L);

    @Test
    void phasesAddUpInTheOrderTheyBegan() {
        Timings timings = new Timings(wall::get, processor::get);
        timings.begin("read");
        pass(250, 400);
        timings.begin("junctions");
        pass(1000, 1900);
        timings.begin("read");
        pass(50, 40);
        assertEquals("""
                timing: read                     0.300 s     0.440 s of processors
                timing: junctions                1.000 s     1.900 s of processors
                timing: in all                   1.300 s     2.340 s of processors
                """, timings.text().replace(System.lineSeparator(), "\n"));
    }

    private void pass(long wallMilliseconds, long processorMilliseconds) {
        wall.addAndGet(wallMilliseconds * 1_000_000L);
        processor.addAndGet(processorMilliseconds * 1_000_000L);
    }
}
