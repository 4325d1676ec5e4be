package coldseam.envelope.file;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Collects faults, so that all are reported at once. */
public final class Faults {
    private final MutableList<Fault> list = Lists.mutable.empty();

    /** Adds one. */
    public void add(Fault fault) {
        list.add(fault);
    }

    /** Adds one from its parts; see {@link Fault}. */
    public void add(Position place, String asked, String got, String allowed, String next) {
        add(new Fault(place, asked, got, allowed, next));
    }

    /** Whether there are none. */
    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** How many. */
    public int count() {
        return list.size();
    }

    /** All, each once, by position. */
    public ImmutableList<Fault> sorted() {
        return list.distinct().toSortedList().toImmutable();
    }

    /**
     * Ends the reading if there is any fault.
     *
     * @throws FileFaultException with all of them
     */
    public void throwIfAny() {
        if (!isEmpty()) {
            throw new FileFaultException(sorted());
        }
    }
}
