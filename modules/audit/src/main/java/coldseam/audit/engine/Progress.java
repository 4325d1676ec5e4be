package coldseam.audit.engine;

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
}
