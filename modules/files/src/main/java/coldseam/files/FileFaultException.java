package coldseam.files;

import org.eclipse.collections.api.list.ImmutableList;

/** A file that is refused, with every fault found in it. */
public final class FileFaultException extends RuntimeException {
    private final transient ImmutableList<Fault> faults;

    /** With these faults, at least one, by position. */
    public FileFaultException(ImmutableList<Fault> faults) {
        super(faults.collect(Fault::message).makeString("\n"));
        this.faults = faults;
    }

    /** Every fault, by position. */
    public ImmutableList<Fault> faults() {
        return faults;
    }
}
