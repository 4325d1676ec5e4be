package coldseam.cli;

import coldseam.audit.Work;
import coldseam.files.quantity.Format;
import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/** Where one run's time went, on the wall's clock and on the processors', by phases that follow one another. */
final class Timings {

    private static final double NANOSECONDS = 1e-9;

    /**
     * Time of both clocks.
     *
     * @param wall nanoseconds
     * @param processor nanoseconds, of all threads
     */
    private record Time(long wall, long processor) {

        Time plus(Time more) {
            return new Time(wall + more.wall, processor + more.processor);
        }

        Time since(Time earlier) {
            return new Time(wall - earlier.wall, processor - earlier.processor);
        }
    }

    private final LongSupplier wall;
    private final LongSupplier processor;
    private final Map<String, Time> phases = new LinkedHashMap<>();
    private final Time start;
    private Time last;
    private String now = "begin";
    private String planned = "";

    /** @param told whether anybody is told of them: to find out who counts the processors' time takes some of it */
    static Timings when(boolean told) {
        return new Timings(System::nanoTime, told ? processor() : () -> 0);
    }

    /**
     * @param wall nanoseconds from any beginning
     * @param processor likewise, of all threads; always 0 where nobody counts them
     */
    Timings(LongSupplier wall, LongSupplier processor) {
        this.wall = wall;
        this.processor = processor;
        this.start = now();
        this.last = start;
    }

    private static LongSupplier processor() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean counting
                ? () -> Math.max(0, counting.getProcessCpuTime())
                : () -> 0;
    }

    private Time now() {
        return new Time(wall.getAsLong(), processor.getAsLong());
    }

    /** Ends the phase before and begins one; a phase that comes again goes on. */
    void begin(String phase) {
        Time at = now();
        phases.merge(now, at.since(last), Time::plus);
        last = at;
        now = phase;
    }

    /** What is to be done, known before it begins. */
    void plans(Work work) {
        planned = ProgressLines.text(work) + System.lineSeparator();
    }

    /** What was planned, then a line for each phase in the order of their beginnings, and their sum; seconds. */
    String text() {
        begin("end");
        StringBuilder text = new StringBuilder(planned);
        phases.remove("begin");
        phases.forEach((phase, time) -> text.append(line(phase, time)));
        return text.append(line("in all", last.since(start))).toString();
    }

    private static String line(String phase, Time time) {
        return Format.of(
                "timing: %-20s %9.3f s %9.3f s of processors%n",
                phase, time.wall * NANOSECONDS, time.processor * NANOSECONDS);
    }
}
