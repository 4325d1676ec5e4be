package coldseam.conduction;

import java.util.concurrent.locks.ReentrantLock;

/** A solve's turn at being large: at most one at a time is, so that memory suffices for it. */
public final class Turn implements AutoCloseable {

    private static final ReentrantLock LARGE = new ReentrantLock(true);
    private static final Budget SMALL =
            Budget.ofThisJvm().ofEachThread(Runtime.getRuntime().availableProcessors());

    private final int small;

    private Turn(int small) {
        this.small = small;
    }

    public static Turn ofSection() {
        return new Turn(SMALL.section());
    }

    public static Turn ofBody() {
        return new Turn(SMALL.body());
    }

    /** Waits for it, where the next solve is of so many unknowns that it is large. */
    public void before(double unknowns) {
        if (unknowns > small && !LARGE.isHeldByCurrentThread()) {
            LARGE.lock();
        }
    }

    /** Whether this solve is the large one. */
    public boolean isLarge() {
        return LARGE.isHeldByCurrentThread();
    }

    /** Lets the next one be large. */
    @Override
    public void close() {
        if (isLarge()) {
            LARGE.unlock();
        }
    }
}
