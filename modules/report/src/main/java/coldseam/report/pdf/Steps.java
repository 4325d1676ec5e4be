package coldseam.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * Steps that are taken later, in the order in which they were added, whenever what they wait for was done: so drawings are made
 * on all cores and the document is the same, byte for byte.
 */
final class Steps implements AutoCloseable {

    private final Optional<ExecutorService> others;
    private List<Runnable> waiting = new ArrayList<>();
    private int depth;

    /** Without another thread. */
    Steps() {
        this(Optional.empty());
    }

    private Steps(Optional<ExecutorService> others) {
        this.others = others;
    }

    /** With as many other threads as there are other cores, one at least; they end with {@link #close}. */
    static Steps onAllCores() {
        return new Steps(Optional.of(
                Executors.newFixedThreadPool(Math.max(1, Runtime.getRuntime().availableProcessors() - 1), work -> {
                    Thread thread = new Thread(work, "drawing");
                    thread.setDaemon(true);
                    return thread;
                })));
    }

    void add(Runnable step) {
        waiting.add(step);
    }

    /**
     * Adds one step of all that some work adds.
     *
     * @param adding done now
     * @param step takes what was added, once it is its turn
     */
    void around(Runnable adding, Consumer<Runnable> step) {
        List<Runnable> before = waiting;
        List<Runnable> inner = new ArrayList<>();
        waiting = inner;
        depth++;
        adding.run();
        depth--;
        waiting = before;
        waiting.add(() -> step.accept(() -> inner.forEach(Runnable::run)));
    }

    /**
     * Begins work that needs nothing of the steps before it.
     *
     * @return waits for its end, and fails as it did; the work itself where there is no other thread
     */
    Runnable beside(Runnable work) {
        if (others.isEmpty()) {
            return work;
        }
        Future<?> begun = others.get().submit(work);
        return () -> await(begun);
    }

    private static void await(Future<?> begun) {
        try {
            begun.get();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a drawing was made", ended);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) failed.getCause();
        }
    }

    /** Takes all that wait, but for the inner ones of what is being added. */
    void take() {
        if (depth > 0) {
            return;
        }
        List<Runnable> now = waiting;
        waiting = new ArrayList<>();
        now.forEach(Runnable::run);
    }

    @Override
    public void close() {
        others.ifPresent(ExecutorService::shutdownNow);
    }
}
