package coldseam.conduction;

import org.eclipse.collections.api.list.ImmutableList;

/** A section that cannot be solved as drawn; carries every fault with its place. */
public final class SectionException extends RuntimeException {

    private final transient ImmutableList<String> faults;

    /** @param faults at least one: what was asked, the value with its unit, the allowed range, the next step */
    public SectionException(ImmutableList<String> faults) {
        super(faults.makeString("\n"));
        this.faults = faults;
    }

    /** Every fault, in the order of the section. */
    public ImmutableList<String> faults() {
        return faults;
    }
}
