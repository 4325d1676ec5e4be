package coldseam.cli;

import coldseam.audit.Audit;

/** The exit codes, all of them. */
enum Exit {
    /** Nothing was found. */
    UNBROKEN(0, "unbroken: nothing was found"),
    /** Gaps or weak spots were found; every document asked for is written. */
    FOUND(1, "gaps or weak spots were found; the documents are written"),
    /** The input is refused: a file, an option, or a place that cannot be written. */
    REFUSED(2, "the input is refused; every fault is named"),
    /** Our own fault. */
    FAULT(3, "a fault of coldseam itself; please report it");

    private final int code;
    private final String meaning;

    Exit(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    /** What an audit means for the exit code. */
    static Exit of(Audit audit) {
        return audit.findings().isEmpty() ? UNBROKEN : FOUND;
    }

    /** What the process returns. */
    int code() {
        return code;
    }

    /** In a line of help. */
    String meaning() {
        return meaning;
    }
}
