package coldseam.cli;

import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Input that is refused, with every fault found. */
final class RefusedException extends RuntimeException {

    private final transient ImmutableList<String> faults;

    RefusedException(ImmutableList<String> faults) {
        super(faults.makeString("\n"));
        this.faults = faults;
    }

    RefusedException(String fault) {
        this(Lists.immutable.of(fault));
    }

    static void throwIfAny(MutableList<String> faults) {
        if (faults.notEmpty()) {
            throw new RefusedException(faults.toImmutable());
        }
    }

    /** One line each. */
    ImmutableList<String> faults() {
        return faults;
    }
}
