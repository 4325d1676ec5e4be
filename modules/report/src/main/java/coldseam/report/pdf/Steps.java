package coldseam.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Steps that are taken later, in the order in which they were added, whenever what they wait for was done: so drawings are made
 * on all cores, pages are written while others are set, and the document is the same, byte for byte.
 */
final class Steps implements AutoCloseable {

    /** s; a step is done long before. */
    private static final int ENDS = 60;

    /** Does what steps wait for. */
    private final ExecutorService drawing;

    /** One thread, which takes the steps. */
    private final ExecutorService taking;

    private List<Runnable> waiting = new ArrayList<>();
    private int depth;

    /** The end of the steps that are being taken. */
    private Runnable taken = () -> {};

    /**
     * With a thread that takes them, and as many to draw as there are cores, since who adds them waits for drawings as well; they end with
     * {@link #close}.
     */
    Steps() {
        drawing = threads(Runtime.getRuntime().availableProcessors(), "drawing");
        taking = threads(1, "writing");
    }

    private static ExecutorService threads(int count, String name) {
        return Executors.newFixedThreadPool(count, work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        });
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
     * @return waits for what it gives, and fails as it did
     */
    <T> Supplier<T> beside(Callable<T> work) {
        Future<T> begun = drawing.submit(work);
        return () -> await(begun);
    }

    private static <T> T await(Future<T> begun) {
        try {
            return begun.get();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a page was made", ended);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) failed.getCause();
        }
    }

    /**
     * Takes all that wait, but for the inner ones of what is being added, beside what follows, as soon as those before are taken.
     *
     * @throws RuntimeException what a step failed with that was taken before
     */
    void take() {
        if (depth > 0) {
            return;
        }
        List<Runnable> now = waiting;
        waiting = new ArrayList<>();
        taken.run();
        Future<?> begun = taking.submit(() -> now.forEach(Runnable::run));
        taken = () -> await(begun);
    }

    /** Takes all that wait, and waits until they are taken. */
    void finish() {
        take();
        taken.run();
    }

    /** Ends all threads; nothing is taken any more once this returns. */
    @Override
    public void close() {
        drawing.shutdownNow();
        taking.shutdownNow();
        try {
            taking.awaitTermination(ENDS, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
