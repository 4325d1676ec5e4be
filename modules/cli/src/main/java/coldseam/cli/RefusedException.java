package coldseam.cli;

import org.eclipse.collections.api.list.ImmutableList;

/** Input that is refused, with every fault found. */
final class RefusedException extends RuntimeException {

    private final transient ImmutableList<String> faults;

    RefusedException(ImmutableList<String> faults) {
        super(faults.makeString("\n"));
        this.faults = faults;
    }

    /** One line each. */
    ImmutableList<String> faults() {
        return faults;
    }
}
