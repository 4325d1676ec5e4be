package coldseam.envelope.shell.fault;

import coldseam.files.quantity.Format;
import org.eclipse.collections.api.factory.Lists;
import org.eclipse.collections.api.list.ImmutableList;
import org.eclipse.collections.api.list.MutableList;

/** Collects faults of the shape, so that all are reported at once. */
public final class ShellFaults {

    private final MutableList<ShellFault> list = Lists.mutable.empty();

    public void add(ShellFault.Part part, String name, String format, Object... values) {
        list.add(new ShellFault(part, name, Format.of(format, values)));
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }

    public boolean notEmpty() {
        return list.notEmpty();
    }

    public ImmutableList<ShellFault> all() {
        return list.toImmutable();
    }
}
