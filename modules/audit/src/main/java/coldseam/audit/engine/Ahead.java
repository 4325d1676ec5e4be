package coldseam.audit.engine;

import java.util.concurrent.Executor;

/**
 * Questions that are begun before they are asked, on cores that have nothing else to do: what comes of them is remembered by
 * whoever answers, and told when they are asked in their turn, be it a fault.
 */
final class Ahead implements AutoCloseable {

    private final Executor cores;
    private volatile boolean over;

    /** @param cores do what is begun */
    Ahead(Executor cores) {
        this.cores = cores;
    }

    /** Begins one as soon as a core is free; never once this is closed. */
    void begin(Runnable question) {
        cores.execute(() -> {
            if (!over) {
                ask(question);
            }
        });
    }

    private static void ask(Runnable question) {
        try {
            question.run();
        } catch (RuntimeException | Error toldInItsTurn) {
            return;
        }
    }

    /** Drops those that have not begun. */
    @Override
    public void close() {
        over = true;
    }
}
