package coldseam.envelope.shell.fault;

import org.eclipse.collections.api.list.ImmutableList;

/** A house whose shell cannot be built; carries every fault found, not the first. */
public final class ShellException extends RuntimeException {

    private final transient ImmutableList<ShellFault> found;

    public ShellException(ImmutableList<ShellFault> found) {
        super(found.collect(ShellFault::message).makeString("\n"));
        this.found = found;
    }

    /** Every fault with the part it lies in. */
    public ImmutableList<ShellFault> found() {
        return found;
    }

    /** One sentence or two for each fault: what was asked, the value, what is allowed, the place, the next step. */
    public ImmutableList<String> faults() {
        return found.collect(ShellFault::message);
    }
}
