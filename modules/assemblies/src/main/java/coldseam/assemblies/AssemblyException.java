package coldseam.assemblies;

import org.eclipse.collections.api.list.ImmutableList;

/** An assembly that cannot be computed: every fault of it at once. */
public final class AssemblyException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient ImmutableList<String> faults;

    AssemblyException(String assembly, ImmutableList<String> faults) {
        super("assembly \"" + assembly + "\": " + faults.makeString("; "));
        this.faults = faults;
    }

    /** One sentence for each fault: the place, the value, what is allowed. */
    public ImmutableList<String> faults() {
        return faults;
    }
}
