package coldseam.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.HotSpotDiagnosticMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

class HeapRoomTest {

    @Test
    void machineTakesItWhileItRuns() {
        String before = now();
        try {
            HeapRoom.leave(41);
            assertEquals("41", now());
        } finally {
            HeapRoom.leave(Integer.parseInt(before));
        }
        assertEquals(before, now());
    }

    private static String now() {
        return ManagementFactory.getPlatformMXBean(HotSpotDiagnosticMXBean.class)
                .getVMOption("MinHeapFreeRatio")
                .getValue();
    }

    @Test
    void smallHousesAndTheLargestKeepWhatTheyStartedWith() {
        assertEquals(0, HeapRoom.percent(1.8e6), "the demo house");
        assertTrue(HeapRoom.percent(9e6) > 20, "a house of 500 walls: more than what the machine is started with");
        assertEquals(0, HeapRoom.percent(27.4e6), "a house of 1,000 walls in 28 build-ups, which takes 473 MB of 512");
    }
}
