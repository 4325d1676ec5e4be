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

    /** Adds one of a storey: what is wrong, after its name. */
    public void storey(String name, String format, Object... values) {
        named(ShellFault.Part.STOREY, "Storey", name, format, values);
    }

    /** Adds one of a wall: what is wrong, after its name. */
    public void wall(String name, String format, Object... values) {
        named(ShellFault.Part.WALL, "Wall", name, format, values);
    }

    /** Adds one of an opening: what is wrong, after its name. */
    public void opening(String name, String format, Object... values) {
        named(ShellFault.Part.OPENING, "Opening", name, format, values);
    }

    /** Adds one of a seam: what is wrong, after its name. */
    public void seam(String name, String format, Object... values) {
        named(ShellFault.Part.SEAM, "Seam", name, format, values);
    }

    /** Adds one of a surface: what is wrong, after its name. */
    public void surface(String name, String format, Object... values) {
        named(ShellFault.Part.SURFACE, "Surface", name, format, values);
    }

    private void named(ShellFault.Part part, String word, String name, String format, Object... values) {
        list.add(new ShellFault(part, name, word + " \"" + name + '"' + Format.of(format, values)));
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
