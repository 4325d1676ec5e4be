package coldseam.conduction.solve;

import java.lang.ref.SoftReference;

/**
 * The large arrays of a solve, kept for the next one on the same thread: filling fresh memory would cost as much as the
 * arithmetic. They hold nothing between solves that the next one reads. The collector may take them when memory is short.
 */
final class Workspace {

    private static final ThreadLocal<SoftReference<Workspace>> OF_THREAD = new ThreadLocal<>();

    final Dissection dissection = new Dissection();
    final Fronts fronts = new Fronts();
    final FrontalSolver solver = new FrontalSolver(fronts);
    final Residuals residuals = new Residuals();

    private Workspace() {}

    /** Gives the thread's own up, for want of memory. */
    static void drop() {
        OF_THREAD.remove();
    }

    static Workspace ofThread() {
        SoftReference<Workspace> held = OF_THREAD.get();
        Workspace workspace = held == null ? null : held.get();
        if (workspace == null) {
            workspace = new Workspace();
            OF_THREAD.set(new SoftReference<>(workspace));
        }
        return workspace;
    }
}
