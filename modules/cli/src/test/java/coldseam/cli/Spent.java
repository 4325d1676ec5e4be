package coldseam.cli;

import com.sun.management.OperatingSystemMXBean;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

/**
 * What a piece of work took of the thread that did it, however busy the machine is.
 *
 * @param seconds of processor time
 * @param megabytes of memory that were asked for, freed again or not
 */
record Spent(double seconds, double megabytes) {

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    /** What came of it, and what it took. */
    record On<T>(T result, Spent spent) {}

    static <T> On<T> on(Callable<T> work) throws Exception {
        long time = THREADS.getCurrentThreadCpuTime();
        long bytes = THREADS.getCurrentThreadAllocatedBytes();
        T result = work.call();
        return new On<>(
                result,
                new Spent(
                        1e-9 * (THREADS.getCurrentThreadCpuTime() - time),
                        1e-6 * (THREADS.getCurrentThreadAllocatedBytes() - bytes)));
    }

    /** The same of all threads, for work that uses several: processor time, and the most that the heap held at once. */
    static <T> On<T> byAll(Callable<T> work) throws Exception {
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        List<MemoryPoolMXBean> heap = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(each -> each.getType() == MemoryType.HEAP)
                .toList();
        heap.forEach(MemoryPoolMXBean::resetPeakUsage);
        long time = system.getProcessCpuTime();
        T result = work.call();
        return new On<>(
                result,
                new Spent(
                        1e-9 * (system.getProcessCpuTime() - time),
                        1e-6
                                * heap.stream()
                                        .mapToLong(each -> each.getPeakUsage().getUsed())
                                        .sum()));
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f s, %.0f MB", seconds, megabytes);
    }
}
