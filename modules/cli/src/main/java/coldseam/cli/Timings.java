package coldseam.cli;

import coldseam.audit.Work;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.LongSupplier;

/** Where one run's wall time went, by phases that follow one another. */
final class Timings {

    private static final double NANOSECONDS = 1e-9;

    private final LongSupplier clock;
    private final Map<String, Long> phases = new LinkedHashMap<>();
    private final long start;
    private long last;
    private String now = "begin";
    private String planned = "";

    Timings() {
        this(System::nanoTime);
    }

    /** @param clock nanoseconds from any beginning */
    Timings(LongSupplier clock) {
        this.clock = clock;
        this.start = clock.getAsLong();
        this.last = start;
    }

    /** Ends the phase before and begins one; a phase that comes again goes on. */
    void begin(String phase) {
        long at = clock.getAsLong();
        phases.merge(now, at - last, Long::sum);
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
        return text.append(line("in all", last - start)).toString();
    }

    private static String line(String phase, long nanoseconds) {
        return String.format(Locale.ROOT, "timing: %-20s %9.3f s%n", phase, nanoseconds * NANOSECONDS);
    }
}
