package coldseam.cli;

import com.sun.management.HotSpotDiagnosticMXBean;
import java.lang.management.ManagementFactory;
import java.util.Optional;

/**
 * How much of the heap is left free when all of it is collected, which is done on one core while all else stands, and the sooner
 * again the less was free: of a house of 500 walls an eighth of the time with what {@link Restart} gives, half as much with this.
 *
 * <p>A small house is told soon, and is to need little memory; asking the JVM costs as much as some collections. So it is asked where
 * there is much to solve. It may be asked later than at the start, when nobody knows yet how much that is.
 */
final class HeapRoom {

    private static final String OPTION = "MinHeapFreeRatio";

    /** Unknowns from which on a house is a large one, and those from which on so much lives that a share of it would be too much. */
    private static final double LARGE = 5e6;

    private static final double LARGEST = 15e6;

    private static final int PERCENT = 45;

    private HeapRoom() {}

    /**
     * Gives the JVM that was started for a command the room that suits what there is to solve.
     *
     * @param unknowns of all that is to be solved
     */
    static void suit(double unknowns) {
        int percent = percent(unknowns);
        if (percent > 0 && Boolean.getBoolean(Restart.MARK)) {
            leave(percent);
        }
    }

    /** What another machine than the usual one says of it changes nothing but the time. */
    static void leave(int percent) {
        try {
            Optional.ofNullable(ManagementFactory.getPlatformMXBean(HotSpotDiagnosticMXBean.class))
                    .ifPresent(jvm -> jvm.setVMOption(OPTION, Integer.toString(percent)));
        } catch (IllegalArgumentException unknown) {
            return;
        }
    }

    /** % of the heap to be left free; 0 for what the JVM was started with. */
    static int percent(double unknowns) {
        return unknowns >= LARGE && unknowns < LARGEST ? PERCENT : 0;
    }
}
