package coldseam.envelope.shell;

import org.eclipse.collections.api.list.ImmutableList;

/** A house whose shell cannot be built; carries every fault found, not the first. */
public final class ShellException extends RuntimeException {

    private final transient ImmutableList<String> faults;

    ShellException(ImmutableList<String> faults) {
        super(faults.makeString("\n"));
        this.faults = faults;
    }

    /** One sentence or two for each fault: what was asked, the value, what is allowed, the place, the next step. */
    public ImmutableList<String> faults() {
        return faults;
    }
}
