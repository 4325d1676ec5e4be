package coldseam.audit.engine;

import coldseam.audit.Work;

/** Hears how far long work has come; called from several threads, one at a time. */
@FunctionalInterface
public interface Progress {

    /** Hears nothing. */
    Progress SILENT = (step, done, of) -> {};

    /**
     * Work went on.
     *
     * @param step what is being done, such as "junctions"
     * @param done parts of it that are done
     * @param of all parts
     */
    void at(String step, int done, int of);

    /** Work is about to begin. */
    default void begins(Work work) {
        // Whoever only shows how far it has come need not know.
        return;
    }
}
