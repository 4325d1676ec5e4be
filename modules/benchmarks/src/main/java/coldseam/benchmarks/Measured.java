package coldseam.benchmarks;

import com.sun.management.ThreadMXBean;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.Supplier;

/**
 * What a piece of work took the thread it ran on.
 *
 * @param seconds of a processor
 * @param megabytes that it allocated in all
 */
record Measured<T>(T result, double seconds, double megabytes) {

    private static final ThreadMXBean CLOCK = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    static <T> Measured<T> of(Supplier<T> work) {
        long allocated = CLOCK.getCurrentThreadAllocatedBytes();
        long start = CLOCK.getCurrentThreadCpuTime();
        T result = work.get();
        double seconds = 1e-9 * (CLOCK.getCurrentThreadCpuTime() - start);
        return new Measured<>(result, seconds, 1e-6 * (CLOCK.getCurrentThreadAllocatedBytes() - allocated));
    }

    /** Works again and again, at least once, until the JVM has had so many seconds to compile. */
    static void warm(String seconds, Runnable work) {
        long until = System.nanoTime() + Long.parseLong(seconds) * 1_000_000_000L;
        do {
            work.run();
        } while (System.nanoTime() < until);
    }

    static double median(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return 0.5 * (sorted[(n - 1) / 2] + sorted[n / 2]);
    }

    static double least(double... values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    /** Standard output or error in UTF-8, as the tables need it. */
    static PrintStream printing(FileDescriptor to) {
        return new PrintStream(new FileOutputStream(to), true, StandardCharsets.UTF_8);
    }
}
